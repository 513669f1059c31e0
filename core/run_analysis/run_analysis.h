// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/gauge_analysis.h"
#include "model/ids.h"

#include <string>
#include <vector>

namespace ullage {

/// Everything that one run says.
struct RunAnalysis {
    EnergyAnalysis energy;
    GaugeAnalysis gauge;

    /// All single results in a fixed order: delivered_wh, duration_h, mean_load_w, usable_fraction, wh_per_gauge_point,
    /// gauge_implied_wh, line_slope, line_chi_square, no_load_draw_w and zero_time_energy_wh (within this run, if the gauge is
    /// linear), least_gauge_error_pt. Each has a reason where it is not measured.
    std::vector<Quantity> quantities;

    /// The run whose gauge curve the usable fraction is projected through (project_through_curve); empty where it is the run's own.
    RunId curve_run_uuid;
};

/// Analyses one run: energy, then gauge.
[[nodiscard]] RunAnalysis analyse_run(const RunRecord& record, const MeasureOptions& options = {});

/// "drain 14 May, 64 W": how a run is called in lists; without a load known "drain 14 May", without readings "drain, no readings yet".
[[nodiscard]] Message run_title(const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
