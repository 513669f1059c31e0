// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_unit.h"

#include <algorithm>
#include <cstddef>
#include <limits>
#include <utility>

namespace ullage::test {

namespace {

/// The state `hours` after `from` with the load unchanged.
DischargeState advanced(const SimulatedUnit& unit, const DischargeState& from, double hours) {
    DischargeState to = from;
    to.hours += hours;
    to.delivered_wh += from.load_w * hours;
    to.drawn_wh += unit.battery_power_w(from.load_w) * hours;
    to.squared_w2h += from.load_w * from.load_w * hours;
    return to;
}

} // namespace

LoadProfile LoadProfile::constant(double watts) { return stepped({{1, watts}}); }

LoadProfile LoadProfile::cycling(double on_w, double off_w, double period_h, double duty) {
    return stepped({{period_h * duty, on_w}, {period_h * (1 - duty), off_w}}, true);
}

LoadProfile LoadProfile::stepped(std::vector<LoadStep> steps, bool repeats) {
    LoadProfile profile;
    profile.layers_.push_back({std::move(steps), repeats});
    return profile;
}

LoadProfile LoadProfile::mixed(const LoadProfile& one, const LoadProfile& other) {
    LoadProfile profile = one;
    profile.layers_.insert(profile.layers_.end(), other.layers_.begin(), other.layers_.end());
    return profile;
}

std::vector<LoadStep> LoadProfile::steps_until(double horizon_h) const {
    constexpr double never = std::numeric_limits<double>::infinity();
    // Shorter steps come only from rounding where two layers change together.
    constexpr double shortest_h = 1e-9;
    struct Cursor {
        const Layer* layer = nullptr;
        std::size_t index = 0;
        double left_h = 0;
    };
    const auto enter = [](Cursor& cursor, std::size_t index) {
        const auto& steps = cursor.layer->steps;
        cursor.index = index;
        const bool stays = !cursor.layer->repeats && index + 1 == steps.size();
        cursor.left_h = stays ? never : steps[index].hours;
    };
    const auto settle = [&enter](Cursor& cursor) {
        while (cursor.left_h <= shortest_h) enter(cursor, (cursor.index + 1) % cursor.layer->steps.size());
    };
    std::vector<Cursor> cursors;
    for (const Layer& layer : layers_) {
        Cursor cursor;
        cursor.layer = &layer;
        enter(cursor, 0);
        settle(cursor);
        cursors.push_back(cursor);
    }
    std::vector<LoadStep> result;
    double hours = 0;
    while (hours < horizon_h) {
        LoadStep step{horizon_h - hours, 0};
        for (const Cursor& cursor : cursors) {
            step.hours = std::min(step.hours, cursor.left_h);
            step.watts += cursor.layer->steps[cursor.index].watts;
        }
        for (Cursor& cursor : cursors) {
            cursor.left_h -= step.hours;
            settle(cursor);
        }
        hours += step.hours;
        result.push_back(step);
    }
    return result;
}

Discharge::Discharge(const SimulatedUnit& unit, const LoadProfile& load, double start_drawn_wh, double horizon_h) : unit_(unit) {
    // With a standing draw the battery cannot last longer than idle: no need to lay out the load beyond that.
    if (unit.p0_w > 0) horizon_h = std::min(horizon_h, unit.battery_wh / unit.p0_w + 1);
    DischargeState state;
    state.drawn_wh = start_drawn_wh;
    for (const LoadStep& step : load.steps_until(horizon_h)) {
        state.load_w = step.watts;
        nodes_.push_back(state);
        const double power_w = unit.battery_power_w(step.watts);
        const double left_wh = unit.battery_wh - state.drawn_wh;
        if (power_w * step.hours >= left_wh) {
            state = advanced(unit, state, left_wh / power_w);
            state.drawn_wh = unit.battery_wh;
            reaches_cut_off_ = true;
            break;
        }
        state = advanced(unit, state, step.hours);
    }
    state.load_w = 0;
    nodes_.push_back(state);
}

DischargeState Discharge::at(double hours) const {
    if (hours <= nodes_.front().hours) return nodes_.front();
    if (hours >= nodes_.back().hours) return nodes_.back();
    const auto next = std::upper_bound(nodes_.begin(), nodes_.end(), hours, [](double h, const DischargeState& node) { return h < node.hours; });
    const DischargeState& node = *(next - 1);
    return advanced(unit_, node, hours - node.hours);
}

double Discharge::hours_at_delivered(double delivered_wh) const {
    for (std::size_t i = 0; i + 1 < nodes_.size(); ++i) {
        if (nodes_[i + 1].delivered_wh < delivered_wh || nodes_[i].load_w <= 0) continue;
        return nodes_[i].hours + std::max(0.0, delivered_wh - nodes_[i].delivered_wh) / nodes_[i].load_w;
    }
    return end_hours();
}

} // namespace ullage::test
