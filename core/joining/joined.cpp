// SPDX-License-Identifier: GPL-3.0-or-later
// What came of joining: in words, and taken back.
#include "base/number.h"
#include "joining/join.h"

#include <string_view>

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

std::string joined_text(const Joined& joined) {
    std::string words;
    const auto add = [&words](std::size_t count, std::string_view one, std::string_view many) {
        if (count == 0) return;
        words += (words.empty() ? "" : ", ") + count_text(static_cast<long>(count), one, many);
    };
    add(joined.units, "unit", "units");
    add(joined.meters, "meter", "meters");
    add(joined.runs, "run", "runs");
    add(joined.readings, "reading", "readings");
    add(joined.photos, "photo", "photos");
    add(joined.logs, "log", "logs");
    add(joined.load_lists, "load list", "load lists");
    add(joined.pv_sheets, "PV sheet", "PV sheets");
    words = words.empty() ? "nothing came in" : words + " came in";
    if (joined.taken > 0) words += "; " + count_text(static_cast<long>(joined.taken), "difference", "differences") + " taken from the other logbook";
    if (joined.kept > 0) words += "; " + count_text(static_cast<long>(joined.kept), "difference stays", "differences stay") + " as here";
    return words;
}

} // namespace ullage
