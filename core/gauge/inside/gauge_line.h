// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "gauge/gauge_analysis.h"

namespace ullage {

/// Fits delivered against gauge-implied energy with uncertainties in both (York et al. 2004): gauge step g/sqrt(12) on every
/// gauge-implied value, pairing and register step on every delivered one. The chi-square tells whether any linear gauge can
/// explain the readings. Errors: no rated energy, fewer than 4 paired points, a fall below 5 gauge steps.
[[nodiscard]] Result<GaugeLine> fit_gauge_line(const RunRecord& record, const EnergyAnalysis& energy);

} // namespace ullage
