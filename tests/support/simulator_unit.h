// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <vector>

namespace ullage::test {

/// The physics of a simulated storage unit. While its output is on it takes from its battery
///     battery power = p0 + a·P + b·P²      (P: load at the socket, W)
/// (loss polynomial: H. Schmidt and D. U. Sauer, 1996; terms of IEC 61683) and switches off when the battery is empty.
/// Preconditions: battery_wh > 0, p0_w >= 0, a > 0, b_per_w >= 0.
struct SimulatedUnit {
    double battery_wh = 1000; ///< true energy of the full battery, E_b; may be less than the label says
    double p0_w = 12;         ///< battery power with nothing connected
    double a = 1.1;           ///< battery power per watt delivered
    double b_per_w = 0;       ///< quadratic part, 1/W

    /// E* = E_b/a: what would reach the socket before the unit's own consumption, Wh.
    [[nodiscard]] double deliverable_wh() const { return battery_wh / a; }
    /// P* = p0/a: the no-load draw seen from the socket, W.
    [[nodiscard]] double no_load_draw_w() const { return p0_w / a; }
    /// c = b/a, 1/W.
    [[nodiscard]] double curvature_per_w() const { return b_per_w / a; }
    [[nodiscard]] double battery_power_w(double load_w) const { return p0_w + a * load_w + b_per_w * load_w * load_w; }
    /// From full to cut-off under a constant load, h. Precondition: battery_power_w(load_w) > 0.
    [[nodiscard]] double run_time_h(double load_w) const { return battery_wh / battery_power_w(load_w); }
    /// Delivered at the socket from full to cut-off under a constant load, Wh.
    [[nodiscard]] double delivered_wh(double load_w) const { return load_w * run_time_h(load_w); }
};

struct LoadStep {
    double hours = 0;
    double watts = 0;
};

/// A load at the socket over time: constant between changes.
class LoadProfile {
public:
    [[nodiscard]] static LoadProfile constant(double watts);
    [[nodiscard]] static LoadProfile idle() { return constant(0); }
    /// `duty` (0 to 1) of each period at `on_w`, beginning with it, the rest at `off_w`.
    [[nodiscard]] static LoadProfile cycling(double on_w, double off_w, double period_h, double duty);
    /// One step after the other; then all over again where it `repeats`, else the last one goes on.
    /// Precondition: not empty, hours >= 0 with a positive sum.
    [[nodiscard]] static LoadProfile stepped(std::vector<LoadStep> steps, bool repeats = false);
    /// Both at once, e.g. lamps all the time and a cooling box that cycles.
    [[nodiscard]] static LoadProfile mixed(const LoadProfile& one, const LoadProfile& other);

    /// The profile as steps without end of its own, cut at `horizon_h` (which the last step reaches).
    [[nodiscard]] std::vector<LoadStep> steps_until(double horizon_h) const;

private:
    struct Layer {
        std::vector<LoadStep> steps;
        bool repeats = false;
    };
    std::vector<Layer> layers_;
};

/// The state of a unit at one moment of a drain.
struct DischargeState {
    double hours = 0;        ///< since the load was switched on
    double delivered_wh = 0; ///< at the socket
    double drawn_wh = 0;     ///< from the battery since it was full
    double squared_w2h = 0;  ///< ∫P² dt
    double load_w = 0;       ///< from this moment on; 0 after cut-off
};

/// A drain from `start_drawn_wh` to cut-off. Exact: all states are linear in time between changes of load, so nothing is
/// integrated numerically and no energy is lost whatever the load does.
class Discharge {
public:
    /// A unit that takes nothing would never stop: the drain then ends at `horizon_h` without a cut-off.
    Discharge(const SimulatedUnit& unit, const LoadProfile& load, double start_drawn_wh = 0, double horizon_h = 1000);

    [[nodiscard]] bool reaches_cut_off() const { return reaches_cut_off_; }
    /// Time of cut-off, or the horizon where there is none.
    [[nodiscard]] double end_hours() const { return nodes_.back().hours; }
    /// The state at any time; before the start that of the start, after the end that of the end with no load.
    [[nodiscard]] DischargeState at(double hours) const;
    /// When `delivered_wh` has been delivered; the end where it never is.
    [[nodiscard]] double hours_at_delivered(double delivered_wh) const;
    /// The start, every change of load, and the end.
    [[nodiscard]] const std::vector<DischargeState>& nodes() const { return nodes_; }

private:
    SimulatedUnit unit_;
    std::vector<DischargeState> nodes_;
    bool reaches_cut_off_ = false;
};

} // namespace ullage::test
