// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/inside/register_path.h"

#include <algorithm>
#include <cmath>
#include <limits>

// Notation: cost[i] is the least cost of a sequence that keeps node i; a node left out between two kept ones is a typing
// error. The window bounds how many neighbouring typing errors are believed.

namespace ullage {
namespace {

constexpr double typing_error_cost = 3.0;
constexpr double reset_cost = 2.0;
constexpr double rollover_cost = 0.5;
constexpr std::size_t window = 6;
constexpr double impossible = std::numeric_limits<double>::infinity();

double load_w(double energy_wh, UtcMs from, UtcMs to, const PathRules& rules) { return energy_wh / (hours_between(from, to) + rules.moment_doubt_h); }

/// Whether the energy could have flowed in the time; a register step on either side is forgiven.
bool believable(double energy_wh, UtcMs from, UtcMs to, const PathRules& rules) {
    return energy_wh >= 0 && load_w(std::max(0.0, energy_wh - 2 * rules.step_wh), from, to, rules) <= rules.limit_w;
}

/// How far a load lies above what the run usually shows: 0 up to 1.5 times, then logarithmic, at most 2.
double surprise(double watts, const PathRules& rules) {
    if (rules.usual_w <= 0 || watts <= 1.5 * rules.usual_w) return 0;
    return std::min(2.0, std::log(watts / (1.5 * rules.usual_w)));
}

struct Transition {
    double cost = impossible;
    Step step = Step::plain;
};

/// The mark that applies between two kept nodes: the last one after `from` up to `to`.
const RegisterNode* marked_between(const std::vector<RegisterNode>& nodes, std::size_t from, std::size_t to) {
    for (std::size_t k = to; k > from; --k)
        if (nodes[k].mark) return &nodes[k];
    return nullptr;
}

Transition transition(const std::vector<RegisterNode>& nodes, std::size_t from, std::size_t to, const PathRules& rules) {
    const RegisterNode& a = nodes[from];
    const RegisterNode& b = nodes[to];
    if (const RegisterNode* marked = marked_between(nodes, from, to)) {
        if (*marked->mark == MarkKind::meter_swapped) return {0, Step::swapped};
        const bool fits = believable(b.register_wh, marked->mark_ms, b.time_ms, rules) || believable(b.register_wh, a.time_ms, b.time_ms, rules);
        return {fits ? 0 : impossible, Step::zeroed};
    }
    const double difference = b.register_wh - a.register_wh;
    if (difference >= 0) return {believable(difference, a.time_ms, b.time_ms, rules) ? 0 : impossible, Step::plain};
    Transition best;
    if (rules.span_wh) {
        const double rolled = difference + *rules.span_wh;
        if (believable(rolled, a.time_ms, b.time_ms, rules))
            best = {rollover_cost + surprise(load_w(rolled, a.time_ms, b.time_ms, rules), rules), Step::rollover};
    }
    if (believable(b.register_wh, a.time_ms, b.time_ms, rules)) {
        const double cost = reset_cost + surprise(load_w(b.register_wh, a.time_ms, b.time_ms, rules), rules);
        if (cost < best.cost) best = {cost, Step::reset};
    }
    return best;
}

} // namespace

std::vector<PathNode> plausible_path(const std::vector<RegisterNode>& nodes, const PathRules& rules) {
    const std::size_t n = nodes.size();
    if (n == 0) return {};
    std::vector<double> cost(n, impossible);
    std::vector<std::size_t> before(n, n);
    std::vector<Step> step(n, Step::first);
    for (std::size_t i = 0; i < n; ++i) {
        if (i < window) cost[i] = static_cast<double>(i) * typing_error_cost;
        // The nearest first: what it costs already rules out most of the farther ones before their transition is looked at.
        for (std::size_t j = i; j-- > (i > window ? i - window : 0);) {
            const double left_out = static_cast<double>(i - j - 1) * typing_error_cost;
            const bool from_start = before[i] == n;
            if (!std::isfinite(cost[j]) || cost[j] + left_out > cost[i] || (cost[j] + left_out == cost[i] && !from_start)) continue;
            Transition next = transition(nodes, j, i, rules);
            // A leap just before an apparent reset is rather a digit too many: it weighs against the reset.
            if (next.step == Step::reset && before[j] < n && step[j] == Step::plain)
                next.cost +=
                    surprise(load_w(nodes[j].register_wh - nodes[before[j]].register_wh, nodes[before[j]].time_ms, nodes[j].time_ms, rules), rules);
            // So does a leap back up just after it: rather a digit left out.
            if (next.step == Step::plain && step[j] == Step::reset)
                next.cost += surprise(load_w(nodes[i].register_wh - nodes[j].register_wh, nodes[j].time_ms, nodes[i].time_ms, rules), rules);
            const double total = cost[j] + next.cost + left_out;
            // At equal cost the nearer neighbour, and any before a fresh start, so that nothing is left out for free.
            if (total < cost[i] || (total == cost[i] && from_start)) {
                cost[i] = total;
                before[i] = j;
                step[i] = next.step;
            }
        }
    }
    std::size_t last = n;
    double least = impossible;
    for (std::size_t i = n > window ? n - window : 0; i < n; ++i) {
        const double total = cost[i] + static_cast<double>(n - 1 - i) * typing_error_cost;
        if (total <= least && std::isfinite(total)) {
            least = total;
            last = i;
        }
    }
    if (last == n) // A stretch of nonsense longer than the window: keep the longest path that reached anywhere.
        for (std::size_t i = 0; i < n; ++i)
            if (std::isfinite(cost[i])) last = i;
    std::vector<PathNode> path;
    for (std::size_t i = last; i < n; i = before[i]) path.push_back({i, before[i] < n ? step[i] : Step::first});
    std::ranges::reverse(path);
    return path;
}

double usual_load_w(const std::vector<RegisterPoint>& registers, const std::vector<RegisterMark>& marks, const PathRules& rules) {
    std::vector<double> loads;
    auto mark = marks.begin();
    for (std::size_t i = 1; i < registers.size(); ++i) {
        while (mark != marks.end() && mark->node < i) ++mark;
        const double difference = registers[i].register_wh - registers[i - 1].register_wh;
        const bool marked = mark != marks.end() && mark->node == i;
        if (marked || difference <= 0 || registers[i].time_ms <= registers[i - 1].time_ms) continue;
        const double watts = load_w(difference, registers[i - 1].time_ms, registers[i].time_ms, rules);
        if (watts <= rules.limit_w) loads.push_back(watts);
    }
    if (loads.empty()) return 0;
    const auto middle = loads.begin() + static_cast<std::ptrdiff_t>(loads.size() / 2);
    std::ranges::nth_element(loads, middle);
    return *middle;
}

bool only_grows(const std::vector<RegisterPoint>& registers, const std::vector<RegisterMark>& marks, const PathRules& rules) {
    // A mark before the first register reading separates no two of them.
    if (std::ranges::any_of(marks, [](const RegisterMark& mark) { return mark.node > 0; })) return false;
    for (std::size_t i = 1; i < registers.size(); ++i) {
        const double difference = registers[i].register_wh - registers[i - 1].register_wh;
        if (difference < 0 || !believable(difference, registers[i - 1].time_ms, registers[i].time_ms, rules)) return false;
    }
    return true;
}

} // namespace ullage
