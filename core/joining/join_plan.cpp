// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/join_plan.h"

#include "joining/inside/comparing.h"

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

Message say_join_matter(JoinMatter matter) {
    switch (matter) {
    case JoinMatter::differs: return say(phrase("joining", "differs"));
    case JoinMatter::withdrawn_here: return say(phrase("joining", "withdrawn here"));
    case JoinMatter::withdrawn_there: return say(phrase("joining", "withdrawn there"));
    case JoinMatter::same_readings: return say(phrase("joining", "the same readings as a run here"));
    case JoinMatter::overlapping: return say(phrase("joining", "tells of the same time as a log here"));
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

Message say_arrival(const JoinArrival& arrival) {
    std::vector<Message> parts;
    if (arrival.readings > 0) parts.push_back(say_count(arrival.readings, phrases("joining", "%n readings", "%n reading")));
    if (arrival.photos > 0) parts.push_back(say_count(arrival.photos, phrases("joining", "%n photos", "%n photo")));
    if (arrival.logs > 0) parts.push_back(say_count(arrival.logs, phrases("joining", "%n logs", "%n log")));
    return say_joined(parts, ", ");
}

std::optional<Error> same_file_error(const std::filesystem::path& here, const std::filesystem::path& there) {
    std::error_code unknown;
    if (!std::filesystem::equivalent(here, there, unknown)) return std::nullopt;
    return Error{Failure::refused, say(phrase("joining", "this is the same logbook")), there.string(),
                 say(phrase("joining", "name another logbook to be joined with it"))};
}

Result<JoinPlan> plan_join(const Logbook& here, const Logbook& there) {
    Result<joining::Comparison> compared = joining::compare(here, there);
    if (!compared) return compared.error();
    return std::move(compared.value().plan);
}

} // namespace ullage
