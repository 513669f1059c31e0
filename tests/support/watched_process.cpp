// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/watched_process.h"

#include "support/child_process.h"

#include <algorithm>
#include <stdexcept>

namespace ullage::test {

bool WatchedProcess::said(const std::string& part) const {
    return std::ranges::any_of(lines, [&](const std::string& line) { return line.find(part) != std::string::npos; });
}

WatchedProcess watch(const std::vector<std::string>& words) {
    ChildProcess child(words);
    WatchedProcess watched;
    const auto rest = [](const std::string& line, const std::string& begin, std::string& out) {
        if (!line.starts_with(begin)) return false;
        out = line.substr(begin.size());
        return true;
    };
    while (const auto line = child.line()) {
        std::string text;
        if (rest(*line, "action ", text)) watched.actions.push_back(text);
        else if (rest(*line, "killed in ", text)) watched.killed_in = text;
        else if (rest(*line, "ended ", text)) watched.code = std::stoi(text);
        else watched.lines.push_back(*line);
    }
    return watched;
}

std::vector<long> numbered_faults(const std::vector<std::string>& actions, std::size_t most) {
    std::set<long> numbers;
    std::set<std::string> kinds;
    for (std::size_t i = 0; i < actions.size(); ++i)
        if (actions.size() <= most || kinds.insert(actions[i]).second) numbers.insert(static_cast<long>(i) + 1);
    if (numbers.size() > most) throw std::invalid_argument("more kinds of actions than faults");
    // The share of the rest that keeps within the bound, from each end alike.
    const std::size_t more = std::min(most, actions.size()) - numbers.size(), rest = actions.size() - numbers.size();
    std::size_t seen = 0, taken = 0;
    for (long number = 1; taken < more; ++number) {
        if (numbers.contains(number)) continue;
        ++seen;
        if (seen * more < (taken + 1) * rest) continue;
        numbers.insert(number);
        ++taken;
    }
    return {numbers.begin(), numbers.end()};
}

FaultsTried try_numbered_faults(const std::vector<std::string>& faults, std::size_t most,
                                const std::function<WatchedProcess(const std::string& fault, long action)>& task,
                                const std::function<bool(const std::string& name, const WatchedProcess& watched)>& check) {
    const WatchedProcess undisturbed = task("none", 0);
    FaultsTried tried{{undisturbed.actions.begin(), undisturbed.actions.end()}, {}};
    if (!check("undisturbed", undisturbed)) return tried;
    for (const std::string& fault : faults)
        for (const long action : numbered_faults(undisturbed.actions, most)) {
            const WatchedProcess watched = task(fault, action);
            if (!watched.killed_in.empty()) tried.died_in.insert(watched.killed_in);
            if (!check(fault + " in action " + std::to_string(action), watched)) return tried;
        }
    return tried;
}

} // namespace ullage::test
