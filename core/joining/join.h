// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "joining/join_plan.h"

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace ullage {

/// What came of joining, and how it is taken back as one step.
struct Joined {
    std::size_t units = 0, meters = 0, runs = 0, readings = 0, photos = 0, logs = 0, load_lists = 0, pv_sheets = 0;
    std::size_t left_out = 0; ///< arrivals that stay out, as what they belong to is withdrawn here or their readings are here
    std::size_t taken = 0;    ///< differences that were taken from the other
    std::size_t kept = 0;     ///< differences that stay as they are here
    std::vector<Message> notices{};
    std::set<RunId> changed_runs{}; ///< that were here already, and have other readings, photos or logs now

    /// One change and what reverts it. Nothing is ever removed from a logbook: what came in is withdrawn, what was altered altered back.
    struct Step {
        std::function<Result<void>(Logbook&)> redo, undo;
    };
    std::vector<Step> steps{};

    [[nodiscard]] bool changed() const { return !steps.empty(); }
};

/// Brings in what the other logbook has and this one has not, and takes these differences (keys of JoinDifference) from the other; all of it or
/// nothing. The logbooks are compared anew, so that what changed since they were shown is heeded: an unknown key is passed over. `goes_on` as
/// Logbook::take_over. Errors: those of plan_join(), Logbook::take_over and of the single changes.
[[nodiscard]] Result<Joined> join(Logbook& here, const Logbook& there, const std::set<std::string>& taken_keys,
                                  const std::function<bool(double share)>& goes_on = {});

/// Reverts what join() did, and does it again: all of it or nothing.
[[nodiscard]] Result<void> undo_join(Logbook& logbook, const Joined& joined);
[[nodiscard]] Result<void> redo_join(Logbook& logbook, const Joined& joined);

/// "1 unit, 2 runs, 31 readings and 4 photos came in; 2 differences taken from the other logbook, 1 stays as here": for people; a sentence without
/// an end.
[[nodiscard]] Message say_outcome(const Joined& joined);

} // namespace ullage
