// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "base/quantity.h"
#include "measure/energy_analysis.h"
#include "model/ids.h"

#include <string>
#include <vector>

namespace ullage {

/// What one panel (or string), with a meter and a run of its own, put in.
struct PanelShare {
    RunId run_uuid;
    int run_number = 0;
    std::string panel; ///< the tester's words for the source, Run::load; empty where none are noted
    Quantity charged_wh, peak_charge_w;
};

/// A charge of one unit from PV: of one panel, or of several that fed it at the same time.
struct PvCharge {
    std::vector<PanelShare> panels; ///< in the order of their runs
    Quantity charged_wh;            ///< "charged_wh", of all together
    Quantity peak_charge_w;         ///< "peak_charge_w", of all together: `at least`
    Message sentence;
};

/// The charges from PV among the runs of one unit (in order of time). Runs that overlap by more than half of the shorter one are panels of one
/// charge. `energies` belong to `records` one by one.
///
/// Energy: the sum of the panels. The gains of different meters are independent, one meter's is common to its panels: the largest rectangular gain is
/// convolved with all else (half_width_of_sum). Without an error limit of any of the meters there is no interval. Peak of several: the highest sum of
/// their mean powers between two moments at which any of them was read, while all ran; energy at such a moment is taken as straight between readings,
/// so only stretches between readings of every panel at nearly one time are sharp. Peaks of single panels are not added, as they need not fall
/// together.
[[nodiscard]] std::vector<PvCharge> pv_charges(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies);

} // namespace ullage
