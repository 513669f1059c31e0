// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/gauge_analysis.h"

#include <vector>

namespace ullage {

/// Gauge error at every paired point. Against share delivered (full drains): e = s - 100 (1 - D/D_end); the band holds the gauge's own
/// step (rectangular, half-width g/2), pairing and register step; the meter's gain cancels. Against rated energy (other runs):
/// e = s - (s_0 - 100 D/rated), where the gain counts. Empty when there is no energy to divide by.
[[nodiscard]] std::vector<GaugeErrorPoint> gauge_error_curve(const RunRecord& record, const EnergyAnalysis& energy, ErrorBasis basis,
                                                             const MeasureOptions& options = {});

/// delivered_depth for a full drain that misses no energy, else rated_energy.
[[nodiscard]] ErrorBasis error_basis(const EnergyAnalysis& energy);

} // namespace ullage
