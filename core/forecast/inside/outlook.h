// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/inside/forecast_load.h"
#include "forecast/inside/forecast_trend.h"
#include "measure/energy_analysis.h"
#include "unit/between_runs.h"

namespace ullage {

/// What a run has shown so far, as a forecast needs it.
struct Outlook {
    TrendSetup trend; ///< at most 60 points; `points` empty without gauge readings
    FutureLoads loads;
    bool has_register = true; ///< else time stands for energy
    UtcMs base_ms = 0;        ///< the moment of trend.end
};

/// What is left lies within what the label allows and what an earlier charge of the unit put in, see FullCharge. Precondition: a reading that is not
/// withdrawn.
[[nodiscard]] Outlook outlook_of(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options);

} // namespace ullage
