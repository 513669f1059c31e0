// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "gauge/feasibility.h"
#include "gauge/finding.h"
#include "gauge/loss_fit.h"
#include "gauge/reference_depth.h"
#include "gauge/share_bounds.h"
#include "measure/energy_analysis.h"
#include "numerics/line_fit.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What a gauge error is measured against.
enum class ErrorBasis {
    delivered_depth, ///< gauge - 100 (1 - D/D_end): only for runs from full to cut-off; the meter's gain cancels
    rated_energy,    ///< gauge - (first gauge - 100 D/rated): for every other run, takes the label at its word
};

/// "share delivered", "rated energy".
[[nodiscard]] Message say_error_basis(ErrorBasis basis);

/// Gauge error at one paired point, percentage points; positive when the gauge shows more than there is.
struct GaugeErrorPoint {
    std::size_t point = 0; ///< index into EnergyAnalysis::points
    double hours = 0;
    double depth_percent = 0; ///< of the basis
    double error_pt = 0, lower_pt = 0, upper_pt = 0;
};

/// Straight line of delivered against gauge-implied energy with uncertainties in both (York et al. 2004).
struct GaugeLine {
    LineFit fit;           ///< x gauge-implied Wh, y delivered Wh
    double u_gauge_wh = 0; ///< rated x g / (100 sqrt(12)), on every gauge-implied value
    double p_value = 0;    ///< chance that reading resolution alone scatters as much
    bool straight = false; ///< p_value >= 0.01
    Message sentence;
};

/// Is the gauge right? As far as one run can tell.
struct GaugeAnalysis {
    ErrorBasis basis = ErrorBasis::rated_energy;
    std::vector<GaugeErrorPoint> errors; ///< drains only: without delivered energy there is no reference
    std::optional<GaugeLine> line;
    Message line_reason;                  ///< why there is no line, when there is none
    LossFit losses;                       ///< where the energy goes within this run, or why that cannot be told
    GaugeFeasibility feasibility;         ///< the least error that the gauge must have had of any linear gauge, whatever the losses are
    std::vector<ShareBound> share_bounds; ///< of a full drain: what an accurate gauge could have shown at each reading
    Quantity least_error_pt;              ///< "least_gauge_error_pt": the larger of the two bounds
    Quantity own_draw_w;                  ///< "no_load_draw_w": the fit where it tells, else the bracket from energy alone (own_draw.h)
    Quantity own_energy_wh;               ///< "zero_time_energy_wh": likewise
    /// Both reference depths at every paired point of a full drain; stored depth where this run's own fit gives the no-load draw.
    std::vector<ReferenceDepth> depths;
    std::vector<Finding> findings; ///< faults first, then by time
    Message verdict;               ///< few words for a table: "no fault found", "sticks (17 pt)", "not judged: …"
    Message sharpening;            ///< what further readings would sharpen, a sentence; empty where there are enough
    /// Of a full drain whose gauge was read twice or more: its largest error where it changed, pt, without sign.
    std::optional<double> worst_error_pt{};
};

/// Judges the gauge of one run on evidence. Where leaving out one gauge reading that a slip of the pen explains leaves nothing against the gauge,
/// that reading is doubted (`lone_reading`) and findings, losses and bounds are those of the rest.
[[nodiscard]] GaugeAnalysis analyse_gauge(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options = {});

} // namespace ullage
