// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "support/simulator_random.h"
#include "support/simulator_unit.h"

#include <optional>
#include <vector>

namespace ullage::test {

/// What a simulated gauge counts.
enum class GaugeCounts {
    stored_energy,    ///< honest: linear in the energy left in the battery
    charge,           ///< linear in the charge left: honest, yet up to 2.2 points above the energy share
    delivered_energy, ///< blind to the unit's own consumption: full at the start, minus 100·D/E*
};

/// How a display or register makes steps of a value.
enum class Steps { rounded, truncated };

/// `value` in whole steps.
[[nodiscard]] double in_steps(double value, double step, Steps steps);

/// The gauge stays at `at_percent` while it ought to fall by `hold_pt`, then falls faster until it is right again when it
/// ought to have fallen by another `catch_up_pt` (0: it jumps). At 100 it is held at full.
struct Stick {
    double at_percent = 71;
    double hold_pt = 17;
    double catch_up_pt = 0;
};

/// The law of a gauge; every part may be combined with every other. Applied in the order of the members.
struct GaugeLaw {
    GaugeCounts counts = GaugeCounts::stored_energy;
    /// Bent: this many points too high (too low when negative) at half, as 4·bend·q·(1 − q). Monotone for |bend| <= 25.
    double bend_pt = 0;
    /// Ends early: what it shows at cut-off.
    double ends_at_percent = 0;
    /// Lingers: it has come down to `linger_percent` while this much will yet be delivered in the drain at hand.
    double reserve_wh = 0;
    double linger_percent = 1;
    std::vector<Stick> sticks = {};
    double offset_pt = 0;
    /// Recovers by this much when the load falls by at least `rebound_drop_w`; fades with a time constant.
    double rebound_pt = 0;
    double rebound_drop_w = 100;
    double rebound_fades_h = 2;
    double noise_pt = 0; ///< standard deviation of each look at it
    double step_percent = 1;
    Steps steps = Steps::rounded;
};

/// From when to when a gauge stood still by law.
struct StuckSpan {
    double at_percent = 0;
    double from_hours = 0;
    double to_hours = 0;
};

/// A gauge during one drain.
class SimulatedGauge {
public:
    SimulatedGauge(GaugeLaw law, const SimulatedUnit& unit, const Discharge& discharge);

    /// What the law gives at a time, without noise and steps, within 0 to 100; after cut-off that of the cut-off.
    [[nodiscard]] double exact_percent(double hours) const;
    /// What a tester sees.
    [[nodiscard]] double shown_percent(double hours, Random& random) const;
    /// When the law first gives `percent` or less; the end of the drain where it never does.
    [[nodiscard]] double hours_at_percent(double percent) const;
    /// When the gauge has come to its lingering value; absent without a reserve.
    [[nodiscard]] std::optional<double> lingers_from_hours() const;
    [[nodiscard]] std::vector<StuckSpan> stuck_spans() const;

private:
    [[nodiscard]] double before_sticking(double hours) const;
    [[nodiscard]] double after_sticking(double percent) const;
    [[nodiscard]] double hours_before_sticking(double percent) const;

    GaugeLaw law_;
    SimulatedUnit unit_;
    const Discharge* discharge_;
    double lingering_depth_ = 1; ///< share of the battery drawn where the reserve begins
    std::vector<double> drop_hours_;
};

} // namespace ullage::test
