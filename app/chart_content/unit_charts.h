// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "unit/between_runs_predict.h"
#include "unit/gauge_drift.h"

#include <functional>
#include <string>
#include <vector>

namespace ullage {

/// A drain from full to cut-off as the charts of a unit show it.
struct MeasuredDrain {
    QString title;
    double mean_load_w = 0;
    Quantity delivered_wh;    ///< "delivered_wh"
    Quantity usable_fraction; ///< "usable_fraction"
    Quantity duration_h;      ///< "duration_h"
};

/// The drains of a fit that are used, with what the analyses of their runs say. `energy_of` gives that of a run.
[[nodiscard]] std::vector<MeasuredDrain> measured_drains(const UnitFit& fit, const std::function<const EnergyAnalysis&(const RunId&)>& energy_of);

/// Loads at which a unit's curves are drawn: evenly on a logarithmic axis from 10 W to the rated output (without one: twice the
/// highest tested load, 200 W at least), with the ends of the tested loads among them. Ascending, W.
[[nodiscard]] std::vector<double> curve_loads(const UnitFit& fit, const Unit& unit);

/// Usable fraction (deliverable Wh where the rated energy is not stated) against a logarithmic load axis: "within" solid
/// between the tested loads, "below" and "above" dashed beyond them, each with its band; "measured": the drains as points with
/// error bars. The expectation band lies behind. `next_load_w`: where the next drain is proposed, a dotted line. A no-load
/// drain has no place on the axis.
[[nodiscard]] ChartContent usable_chart(const UnitFit& fit, const Unit& unit, const std::vector<MeasuredDrain>& drains,
                                        std::optional<double> next_load_w);

/// Run time against load, both axes logarithmic, with the same series.
[[nodiscard]] ChartContent run_time_chart(const UnitFit& fit, const Unit& unit, const std::vector<MeasuredDrain>& drains,
                                          std::optional<double> next_load_w);

/// Gauge error against share delivered, with bands, of the two drains that the gauge drift is told by: series "earlier" and
/// "later", and where they differ beyond chance a dotted line at that depth. Without two comparable drains the last one that
/// has a curve stands alone ("later").
[[nodiscard]] ChartContent gauge_drift_chart(const UnitFit& fit, const GaugeDrift& drift);

/// "Not on the charts: run 5, no-load drain 16 May …": used drains whose load lies below the charts' axis; they count in the
/// curves. Empty without any.
[[nodiscard]] QString off_chart_text(const UnitFit& fit);

} // namespace ullage
