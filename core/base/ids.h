// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <vector>

namespace ullage {

/// A new random UUID (RFC 4122 version 4) as 36 lower-case characters.
[[nodiscard]] std::string new_uuid();

/// The bytes of a UUID.
using Uuid = std::array<std::uint8_t, 16>;
/// So many new random UUIDs in rising order: an index that takes many at once is filled from one end to the other.
[[nodiscard]] std::vector<Uuid> sorted_uuids(std::size_t count);
/// As new_uuid() writes it.
[[nodiscard]] std::string uuid_text(const Uuid& uuid);

} // namespace ullage
