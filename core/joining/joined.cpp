// SPDX-License-Identifier: GPL-3.0-or-later
// What came of joining: in words, and taken back.
#include "joining/join.h"

#include <vector>

namespace ullage {

namespace {

Result<void> in_turn(Logbook& logbook, const Joined& joined, bool forward) {
    return logbook.all_or_none([&]() -> Result<void> {
        const std::size_t count = joined.steps.size();
        for (std::size_t i = 0; i < count; ++i) {
            const Joined::Step& step = joined.steps[forward ? i : count - 1 - i];
            if (auto done = (forward ? step.redo : step.undo)(logbook); !done) return done;
        }
        return {};
    });
}

} // namespace

Result<void> undo_join(Logbook& logbook, const Joined& joined) { return in_turn(logbook, joined, false); }

Result<void> redo_join(Logbook& logbook, const Joined& joined) { return in_turn(logbook, joined, true); }

Message say_outcome(const Joined& joined) {
    const struct {
        std::size_t count;
        Phrase words;
    } kinds[] = {
        {joined.units, phrases("joining", "%n units", "%n unit")},
        {joined.meters, phrases("joining", "%n meters", "%n meter")},
        {joined.runs, phrases("joining", "%n runs", "%n run")},
        {joined.readings, phrases("joining", "%n readings", "%n reading")},
        {joined.photos, phrases("joining", "%n photos", "%n photo")},
        {joined.logs, phrases("joining", "%n logs", "%n log")},
        {joined.load_lists, phrases("joining", "%n load lists", "%n load list")},
        {joined.pv_sheets, phrases("joining", "%n PV sheets", "%n PV sheet")},
    };
    std::vector<Message> came;
    for (const auto& [count, words] : kinds)
        if (count > 0) came.push_back(say_count(count, words));
    std::vector<Message> clauses{came.empty() ? say(phrase("joining", "nothing came in"))
                                              : say(phrase("joining", "%1 came in"), say_joined(came, ", "))};
    if (joined.taken > 0)
        clauses.push_back(
            say_count(joined.taken, phrases("joining", "%n differences taken from the other logbook", "%n difference taken from the other logbook")));
    if (joined.kept > 0) clauses.push_back(say_count(joined.kept, phrases("joining", "%n differences stay as here", "%n difference stays as here")));
    return say_joined(clauses, "; ");
}

} // namespace ullage
