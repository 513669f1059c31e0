// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/join_plan.h"

#include "base/number.h"
#include "joining/inside/comparing.h"

#include <fmt/format.h>

#include <system_error>
#include <utility>

namespace ullage {

std::string_view joined_kind_text(JoinedKind kind) {
    switch (kind) {
    case JoinedKind::unit: return "unit";
    case JoinedKind::meter: return "meter";
    case JoinedKind::run: return "run";
    case JoinedKind::reading: return "reading";
    case JoinedKind::photo: return "photo";
    case JoinedKind::log: return "log";
    case JoinedKind::load_list: return "load list";
    case JoinedKind::pv_sheet: return "PV sheet";
    }
    return {};
}

std::string_view join_matter_text(JoinMatter matter) {
    switch (matter) {
    case JoinMatter::differs: return "differs";
    case JoinMatter::withdrawn_here: return "withdrawn here";
    case JoinMatter::withdrawn_there: return "withdrawn there";
    case JoinMatter::same_readings: return "the same readings as a run here";
    case JoinMatter::overlapping: return "tells of the same time as a log here";
    }
    return {};
}

std::set<std::string> JoinPlan::all_keys() const {
    std::set<std::string> keys;
    for (const JoinDifference& difference : differences) keys.insert(difference.key());
    return keys;
}

std::set<std::string> JoinPlan::keys_changed_there_only() const {
    std::set<std::string> keys;
    for (const JoinDifference& difference : differences)
        if (difference.changed_there_only) keys.insert(difference.key());
    return keys;
}

std::string arrival_text(const JoinArrival& arrival) {
    std::string words;
    const auto add = [&words](std::size_t count, std::string_view one, std::string_view many) {
        if (count == 0) return;
        words += (words.empty() ? "" : ", ") + count_text(static_cast<long>(count), one, many);
    };
    add(arrival.readings, "reading", "readings");
    add(arrival.photos, "photo", "photos");
    add(arrival.logs, "log", "logs");
    return words;
}

std::optional<Error> same_file_error(const std::filesystem::path& here, const std::filesystem::path& there) {
    std::error_code unknown;
    if (!std::filesystem::equivalent(here, there, unknown)) return std::nullopt;
    return Error{Failure::refused, "this is the same logbook", there.string(), "name another logbook to be joined with it"};
}

Result<JoinPlan> plan_join(const Logbook& here, const Logbook& there) {
    Result<joining::Comparison> compared = joining::compare(here, there);
    if (!compared) return compared.error();
    return std::move(compared.value().plan);
}

} // namespace ullage
