// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/join_table.h"

#include <algorithm>

namespace ullage {

namespace {

TableColumn join_column(const char* key, const Phrase& title) { return {key, say(title), {}, TableColumn::Content::text, 0}; }

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
            return Error{Failure::not_found, say(phrase("joining", "no difference has the id `%1`"), word), "--take-other",
                         say(phrase("joining", "use `all`, `newer` or an id that --dry-run shows"))};
        if (found.size() > 1)
            return Error{Failure::bad_input, say(phrase("joining", "several differences have an id that begins with `%1`"), word), "--take-other",
                         say(phrase("joining", "give more of it"))};
        keys.merge(found);
    }
    return keys;
}

Table join_table(const JoinPlan& plan, const std::set<std::string>& taken_keys, const Message& answer) {
    Table table;
    table.title = say(phrase("joining", "Joining"));
    table.columns = {join_column("outcome", phrase("joining", "outcome")), join_column("record", phrase("joining", "record")),
                     join_column("id", phrase("joining", "id")),           join_column("field", phrase("joining", "what")),
                     join_column("here", phrase("joining", "here")),       join_column("there", phrase("joining", "there"))};
    const auto add = [&table](const Message& outcome, const Message& record, const Message& id, const Message& field, const Message& here,
                              const Message& there) {
        table.rows.push_back({outcome, record, id, field, here, there});
    };
    for (const JoinArrival& arrival : plan.arrivals)
        add(say(needs_are_met(arrival.needs, taken_keys) ? phrase("joining", "comes in") : phrase("joining", "stays out")), arrival.title, {},
            say(arrival.known ? phrase("joining", "more of it") : phrase("joining", "all of it")), {}, say_arrival(arrival));
    for (const JoinDifference& difference : plan.differences) {
        const bool taken = taken_keys.contains(difference.key()) && needs_are_met(difference.needs, taken_keys);
        const Message outcome = say(taken ? phrase("joining", "taken from the other") : phrase("joining", "stays as here"));
        const std::string id = short_id(difference, plan);
        if (difference.fields.empty() || difference.matter != JoinMatter::differs)
            add(outcome, difference.title, id, say_join_matter(difference.matter), {}, {});
        for (const JoinField& field : difference.fields) add(outcome, difference.title, id, field.name, field.here, field.there);
    }
    table.answer = {say(phrase("joining", "%1."), answer)};
    table.remarks = plan.notices;
    return table;
}

} // namespace ullage
