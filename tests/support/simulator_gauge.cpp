// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_gauge.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

namespace ullage::test {

namespace {

/// Shares of energy and of charge taken from a lithium cell under constant current, cumulated from the NASA Ames
/// Prognostics Center Battery Data Set (B. Saha, K. Goebel, 2007), cell B0005, first discharge; straight between.
struct Shares {
    double energy;
    double charge;
};
constexpr Shares cell_shares[] = {
    {0, 0}, {0.00320, 0.00286}, {0.19230, 0.17821}, {0.38093, 0.36022}, {0.56607, 0.54436}, {0.75018, 0.73174}, {0.93359, 0.92334}, {1, 1}};

double charge_share(double energy_share) {
    for (std::size_t i = 1; i < std::size(cell_shares); ++i) {
        const Shares& low = cell_shares[i - 1];
        const Shares& high = cell_shares[i];
        if (energy_share > high.energy) continue;
        return low.charge + (high.charge - low.charge) * (energy_share - low.energy) / (high.energy - low.energy);
    }
    return 1;
}

/// The first time in [low, high] at which `falling` is at most `level`; high where it never is.
template <class Falling>
double first_time_at(const Falling& falling, double level, double low, double high) {
    if (falling(low) <= level) return low;
    if (falling(high) > level) return high;
    for (int i = 0; i < 60 && high - low > 1e-9; ++i) {
        const double middle = 0.5 * (low + high);
        (falling(middle) <= level ? high : low) = middle;
    }
    return high;
}

} // namespace

double in_steps(double value, double step, Steps steps) {
    // The nudge keeps a value that is a whole step but for rounding from being cut down by one.
    const double whole = steps == Steps::rounded ? std::floor(value / step + 0.5) : std::floor(value / step + 1e-9);
    return whole * step;
}

SimulatedGauge::SimulatedGauge(GaugeLaw law, const SimulatedUnit& unit, const Discharge& discharge)
    : law_(std::move(law)), unit_(unit), discharge_(&discharge) {
    if (law_.reserve_wh > 0) {
        const double total_wh = discharge.nodes().back().delivered_wh;
        const double from_hours = discharge.hours_at_delivered(total_wh - law_.reserve_wh);
        lingering_depth_ = discharge.at(from_hours).drawn_wh / unit_.battery_wh;
    }
    const auto& nodes = discharge.nodes();
    for (std::size_t i = 1; law_.rebound_pt != 0 && i + 1 < nodes.size(); ++i)
        if (nodes[i - 1].load_w - nodes[i].load_w >= law_.rebound_drop_w) drop_hours_.push_back(nodes[i].hours);
}

double SimulatedGauge::before_sticking(double hours) const {
    const DischargeState state = discharge_->at(hours);
    double depth = state.drawn_wh / unit_.battery_wh;
    if (law_.counts == GaugeCounts::delivered_energy)
        depth = discharge_->nodes().front().drawn_wh / unit_.battery_wh + state.delivered_wh / unit_.deliverable_wh();
    if (lingering_depth_ > 0) depth = std::clamp(depth / lingering_depth_, 0.0, 1.0);
    if (law_.counts == GaugeCounts::charge) depth = charge_share(depth);
    const double left = 1 - depth;
    const double percent = 100 * left + 4 * law_.bend_pt * left * depth;
    const double floor_percent = std::max(law_.ends_at_percent, law_.reserve_wh > 0 ? law_.linger_percent : 0.0);
    return floor_percent + (100 - floor_percent) * percent / 100;
}

double SimulatedGauge::after_sticking(double percent) const {
    for (const Stick& stick : law_.sticks) {
        const double free_percent = stick.at_percent - stick.hold_pt;
        const double right_percent = free_percent - stick.catch_up_pt;
        if (percent > stick.at_percent || percent <= right_percent) continue;
        if (percent > free_percent) return stick.at_percent;
        return stick.at_percent - (free_percent - percent) * (stick.hold_pt + stick.catch_up_pt) / stick.catch_up_pt;
    }
    return percent;
}

double SimulatedGauge::exact_percent(double hours) const {
    double percent = after_sticking(before_sticking(hours)) + law_.offset_pt;
    const auto after = std::upper_bound(drop_hours_.begin(), drop_hours_.end(), hours);
    if (after != drop_hours_.begin()) percent += law_.rebound_pt * std::exp(-(hours - *(after - 1)) / law_.rebound_fades_h);
    return std::clamp(percent, 0.0, 100.0);
}

double SimulatedGauge::shown_percent(double hours, Random& random) const {
    const double percent = exact_percent(hours) + random.normal(law_.noise_pt);
    return std::clamp(in_steps(percent, law_.step_percent, law_.steps), 0.0, 100.0);
}

double SimulatedGauge::hours_at_percent(double percent) const {
    return first_time_at([this](double hours) { return exact_percent(hours); }, percent, 0, discharge_->end_hours());
}

double SimulatedGauge::hours_before_sticking(double percent) const {
    return first_time_at([this](double hours) { return before_sticking(hours); }, percent, 0, discharge_->end_hours());
}

std::optional<double> SimulatedGauge::lingers_from_hours() const {
    if (law_.reserve_wh <= 0) return std::nullopt;
    const double total_wh = discharge_->nodes().back().delivered_wh;
    return discharge_->hours_at_delivered(total_wh - law_.reserve_wh);
}

std::vector<StuckSpan> SimulatedGauge::stuck_spans() const {
    std::vector<StuckSpan> spans;
    for (const Stick& stick : law_.sticks)
        spans.push_back(
            {stick.at_percent + law_.offset_pt, hours_before_sticking(stick.at_percent), hours_before_sticking(stick.at_percent - stick.hold_pt)});
    return spans;
}

} // namespace ullage::test
