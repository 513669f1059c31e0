// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/file_header.h"

#include "store/migrations/migrations.h"

#include <algorithm>
#include <string_view>

namespace ullage::store {

namespace {

using namespace std::string_view_literals;

// SQLite, "Database File Format", 1.3: offsets of the big-endian fields.
constexpr auto magic = "SQLite format 3\0"sv;
constexpr std::size_t change_counter_at = 24;
constexpr std::size_t user_version_at = 60;
constexpr std::size_t application_id_at = 68;

std::int32_t big_endian(std::span<const unsigned char> head, std::size_t at) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < 4; ++i) value = value << 8 | head[at + i];
    return static_cast<std::int32_t>(value);
}

} // namespace

std::uint32_t change_counter(std::span<const unsigned char> head) { return static_cast<std::uint32_t>(big_endian(head, change_counter_at)); }

Error newer_version_error(std::int64_t version, const std::filesystem::path& path) {
    return {Failure::newer_version,
            say(phrase("store", "this logbook was written by a newer version of Ullage (file version %1, this program knows up to %2)"),
                say_number(version), say_number(newest_version())),
            path.string(), say(phrase("store", "open it with the newer program; nothing was changed"))};
}

Result<void> check_header(std::span<const unsigned char> head, const std::filesystem::path& path) {
    if (head.empty())
        return Error{Failure::not_a_logbook, say(phrase("store", "the file is empty")), path.string(),
                     say(phrase("store", "choose another file, or make a new logbook under another name"))};
    const std::size_t shown = std::min(head.size(), magic.size());
    const bool database = std::equal(head.begin(), head.begin() + static_cast<std::ptrdiff_t>(shown), magic.begin(),
                                     [](unsigned char a, char b) { return a == static_cast<unsigned char>(b); });
    if (!database)
        return Error{Failure::not_a_logbook, say(phrase("store", "the file is no logbook")), path.string(),
                     say(phrase("store", "choose a .ullage file; run sheets are imported into a logbook"))};
    if (head.size() < header_bytes)
        return Error{Failure::damaged, say(phrase("store", "the file is cut off after %1 bytes"), say_number(head.size())), path.string(),
                     say(phrase("store", "restore it from a copy"))};
    if (big_endian(head, application_id_at) != application_id)
        return Error{Failure::not_a_logbook, say(phrase("store", "the file is a database of another program")), path.string(),
                     say(phrase("store", "choose a .ullage file"))};
    const std::int32_t version = big_endian(head, user_version_at);
    if (version > newest_version()) return newer_version_error(version, path);
    return {};
}

} // namespace ullage::store
