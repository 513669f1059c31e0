// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <cstdint>
#include <filesystem>
#include <span>

namespace ullage::store {

/// Marks an SQLite file as a logbook: ASCII "ULLG".
inline constexpr std::int32_t application_id = 0x554C4C47;

/// Length of the header of an SQLite file (SQLite, "Database File Format", 1.3).
inline constexpr std::size_t header_bytes = 100;

/// Judges a file by its first bytes (up to header_bytes of them) before SQLite touches it. Errors:
/// not_a_logbook (empty, another kind of file, another program's database), newer_version, damaged (cut off
/// within the header).
[[nodiscard]] Result<void> check_header(std::span<const unsigned char> head, const std::filesystem::path& path);

/// The change counter in the header of an SQLite file. Precondition: at least its first 28 bytes.
[[nodiscard]] std::uint32_t change_counter(std::span<const unsigned char> head);

/// The error for a file that a later version of the program wrote.
[[nodiscard]] Error newer_version_error(std::int64_t version, const std::filesystem::path& path);

} // namespace ullage::store
