// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <functional>
#include <set>
#include <string>
#include <vector>

namespace ullage::test {

/// What a process on a disk that fails (tests/core/store/faulty_disk.h) said until its end.
struct WatchedProcess {
    std::vector<std::string> lines;   ///< apart from those of the disk
    std::vector<std::string> actions; ///< what it did on the disk, as "step: write log"; only of one that came to its end
    std::string killed_in;            ///< the action in which it died; empty where it did not
    int code = -1;                    ///< with which it ended; -1 where it did not come to its end

    [[nodiscard]] bool said(const std::string& part) const; ///< part of a line
};

/// Runs a program with its arguments to its end.
[[nodiscard]] WatchedProcess watch(const std::vector<std::string>& words);

/// The numbers, from 1, of the actions in which a fault is tried: all of them, or `most` where there are more. Then the first of each kind of
/// action is among them, kinds being told apart by name, and the rest is spread evenly. Precondition: no more kinds than `most`.
[[nodiscard]] std::vector<long> numbered_faults(const std::vector<std::string>& actions, std::size_t most);

/// Kinds of actions, by name.
struct FaultsTried {
    std::set<std::string> kinds;   ///< that the task has where nothing disturbs it
    std::set<std::string> died_in; ///< that a process was killed in
};

/// Runs `task` with no fault, then with each fault ("killed", "full") in each of numbered_faults(), and calls `check` after every run with a name of
/// it and what the process said. `task` takes the fault and the number of the action. Ends early where `check` says false.
FaultsTried try_numbered_faults(const std::vector<std::string>& faults, std::size_t most,
                                const std::function<WatchedProcess(const std::string& fault, long action)>& task,
                                const std::function<bool(const std::string& name, const WatchedProcess& watched)>& check);

} // namespace ullage::test
