// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/zone_table.h"

#include <date/tz.h>

#include <algorithm>
#include <array>
#include <cstdlib>
#include <exception>
#include <string>

namespace ullage::zone_table {

namespace {

/// What the last look-up of this thread found; runs ask for thousands of instants of one zone within one
/// offset.
struct LastZone {
    std::string name;
    const date::time_zone* zone = nullptr;
    std::int64_t begin = 0, end = 0; ///< UTC seconds between which `offset` holds; empty when equal
    long offset = 0;
};

LastZone& last_zone() {
    thread_local LastZone last;
    return last;
}

/// The zone of the database, or nullptr. The library throws for unknown names and for a missing database.
const date::time_zone* find(std::string_view name) {
    LastZone& last = last_zone();
    if (last.zone && last.name == name) return last.zone;
    // "localtime" is the machine's own setting under a name that means nothing elsewhere.
    if (name.empty() || name == "localtime") return nullptr;
    try {
        const date::time_zone* zone = date::locate_zone(name);
        last = LastZone{std::string(name), zone, 0, 0, 0};
        return zone;
    } catch (const std::exception&) {
        return nullptr;
    }
}

} // namespace

bool is_utc(std::string_view zone) noexcept {
    constexpr std::array<std::string_view, 8> names = {"UTC", "Etc/UTC", "UCT", "Etc/UCT", "Universal", "Etc/Universal", "Zulu", "Etc/Zulu"};
    return std::ranges::find(names, zone) != names.end();
}

bool is_known(std::string_view zone) noexcept { return is_utc(zone) || find(zone) != nullptr; }

std::optional<long> offset_at_utc(std::int64_t utc_seconds, std::string_view zone) noexcept {
    if (is_utc(zone)) return 0;
    const date::time_zone* found = find(zone);
    if (!found) return std::nullopt;
    LastZone& last = last_zone();
    if (utc_seconds >= last.begin && utc_seconds < last.end) return last.offset;
    try {
        const date::sys_info info = found->get_info(date::sys_seconds{std::chrono::seconds{utc_seconds}});
        last.begin = info.begin.time_since_epoch().count();
        last.end = info.end.time_since_epoch().count();
        last.offset = static_cast<long>(info.offset.count());
        return last.offset;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::optional<LocalOffsets> offsets_at_local(std::int64_t local_seconds, std::string_view zone) noexcept {
    if (is_utc(zone)) return LocalOffsets{};
    const date::time_zone* found = find(zone);
    if (!found) return std::nullopt;
    try {
        const date::local_info info = found->get_info(date::local_seconds{std::chrono::seconds{local_seconds}});
        LocalOffsets offsets;
        offsets.first = static_cast<long>(info.first.offset.count());
        offsets.second = static_cast<long>(info.second.offset.count());
        if (info.result == date::local_info::nonexistent) offsets.sort = LocalOffsets::Sort::skipped;
        if (info.result == date::local_info::ambiguous) offsets.sort = LocalOffsets::Sort::doubled;
        return offsets;
    } catch (const std::exception&) {
        return std::nullopt;
    }
}

std::string name_of_machine_zone() noexcept {
    if (const char* setting = std::getenv("TZ")) {
        std::string_view name = setting;
        if (name.starts_with(':')) name.remove_prefix(1);
        if (is_known(name)) return std::string(name);
    }
    try {
        const std::string name = date::current_zone()->name();
        return is_known(name) ? name : std::string();
    } catch (const std::exception&) {
        return {};
    }
}

} // namespace ullage::zone_table
