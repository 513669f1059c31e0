// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "live/live_field.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string_view>
#include <vector>

namespace ullage {

/// Payloads beyond this are not looked at.
inline constexpr std::size_t most_payload_bytes = std::size_t{1} << 20;

/// What a payload (of MQTT, or the body of an answer of HTTP) says for each field, in the unit of the field's role. A field without pointer takes the
/// payload itself for the number, with its unit behind it or without; one with a pointer takes the number, or the text that is one, at that place of
/// the JSON document (RFC 8259, RFC 6901). Absent where there is none, or the value is not finite. The document is read once for all fields; one
/// beyond most_payload_bytes is refused unread.
[[nodiscard]] std::vector<std::optional<double>> numbers_in(std::string_view payload, std::span<const LiveField* const> fields);

/// A number with an optional unit behind it: "431.5", "431,5 W", "4.315e2". Absent for any other text.
[[nodiscard]] std::optional<double> number_in_text(std::string_view text, const LiveField& field);

} // namespace ullage
