// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/energy_analysis.h"
#include "model/ids.h"

#include <optional>
#include <vector>

namespace ullage {

/// A charge that filled a unit from its cut-off: what went in bounds what comes out.
struct FullCharge {
    RunId run_uuid;
    double charged_wh = 0; ///< into the unit, by its meter
    /// E* of the unit lies within these: no unit gives back more than went in (conservation of energy), and one that is worth testing gives back half
    /// of what went in until its gauge showed full (common practice, no source). A charge that nobody watched beyond its gauge's first 100 % may have
    /// ended early, so that a full unit may have taken in a quarter more; where it went on at a fourth of its power or less, it was full. With the
    /// error limits of the charge's meter; of one without a stated limit `assumed_limit_percent`.
    double least_wh = 0, most_wh = 0;
};

/// Of the charges of one unit that ended with its gauge at full after a drain that had ended by cut-off, the one that bounds it most. Charges with
/// energy missing tell nothing. `records` in order of time, `energies` belong to them one by one. Absent without such a charge.
[[nodiscard]] std::optional<FullCharge> full_charge_of(const std::vector<const RunRecord*>& records, const std::vector<EnergyAnalysis>& energies);

} // namespace ullage
