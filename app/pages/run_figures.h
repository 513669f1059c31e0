// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "fleet/run_analysis.h"
#include "pages/result_strip.h"

#include <vector>

namespace ullage {

/// The strip of a run seen at `now_ms`: elapsed, gauge, delivered, mean load and load since the last reading, usable fraction, age of
/// the last reading (of an ended run: how it ended).
[[nodiscard]] std::vector<StripFigure> run_figures(const RunRecord& record, const RunAnalysis& analysis, UtcMs now_ms);

} // namespace ullage
