// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/join_table.h"

#include <algorithm>

namespace ullage {

namespace {

TableColumn join_column(const char* key, const char* title) { return {key, title, {}, TableColumn::Content::text, 0}; }

bool needs_are_met(const std::set<std::string>& needs, const std::set<std::string>& taken) { return std::ranges::includes(taken, needs); }

} // namespace

std::string short_id(const JoinDifference& difference, const JoinPlan& plan) {
    constexpr std::size_t usual = 8;
    std::size_t length = std::min(usual, difference.uuid.size());
    const auto shared = [&](const JoinDifference& other) {
        return other.key() != difference.key() && other.uuid.compare(0, length, difference.uuid, 0, length) == 0;
    };
    while (length < difference.uuid.size() && std::ranges::any_of(plan.differences, shared)) ++length;
    return difference.uuid.substr(0, length);
}

Result<std::set<std::string>> asked_keys(const std::vector<std::string>& asked, const JoinPlan& plan) {
    std::set<std::string> keys;
    for (const std::string& word : asked) {
        if (word == "all") {
            keys.merge(plan.all_keys());
            continue;
        }
        if (word == "newer") {
            keys.merge(plan.keys_changed_there_only());
            continue;
        }
        std::set<std::string> found;
        for (const JoinDifference& difference : plan.differences)
            if (!word.empty() && difference.uuid.starts_with(word)) found.insert(difference.key());
        if (found.empty())
            return Error{Failure::not_found, "no difference has the id `" + word + "`", "--take-other",
                         "use `all`, `newer` or an id that --dry-run shows"};
        if (found.size() > 1)
            return Error{Failure::bad_input, "several differences have an id that begins with `" + word + "`", "--take-other", "give more of it"};
        keys.merge(found);
    }
    return keys;
}

Table join_table(const JoinPlan& plan, const std::set<std::string>& taken_keys, const std::string& answer) {
    Table table;
    table.title = "Joining";
    table.columns = {join_column("outcome", "outcome"), join_column("record", "record"), join_column("id", "id"),
                     join_column("field", "what"),      join_column("here", "here"),     join_column("there", "there")};
    const auto add = [&table](std::string outcome, std::string record, std::string id, std::string field, std::string here, std::string there) {
        table.rows.push_back({std::move(outcome), std::move(record), std::move(id), std::move(field), std::move(here), std::move(there)});
    };
    for (const JoinArrival& arrival : plan.arrivals)
        add(needs_are_met(arrival.needs, taken_keys) ? "comes in" : "stays out", arrival.title, {}, arrival.known ? "more of it" : "all of it", {},
            arrival_text(arrival));
    for (const JoinDifference& difference : plan.differences) {
        const bool taken = taken_keys.contains(difference.key()) && needs_are_met(difference.needs, taken_keys);
        const std::string outcome = taken ? "taken from the other" : "stays as here", id = short_id(difference, plan);
        if (difference.fields.empty() || difference.matter != JoinMatter::differs)
            add(outcome, difference.title, id, std::string(join_matter_text(difference.matter)), {}, {});
        for (const JoinField& field : difference.fields) add(outcome, difference.title, id, field.name, field.here, field.there);
    }
    table.answer = {answer + "."};
    table.remarks = {plan.notices.begin(), plan.notices.end()};
    return table;
}

} // namespace ullage
