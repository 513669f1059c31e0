// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/accounts.h"
#include "forecast/forecast.h"
#include "run_analysis/run_analysis.h"

#include <memory>
#include <vector>

namespace ullage {

/// What the charts of a run are drawn from.
struct ChartedRun {
    std::shared_ptr<const RunRecord> record; ///< null where there is no run
    const RunAnalysis* analysis = nullptr;   ///< null where there is no run
    std::vector<ReferenceDepth> depths = {}; ///< known_depths() of the run
    const RunForecast* forecast = nullptr;   ///< of a running run, else null
    const TwoAccounts* accounts = nullptr;   ///< null where there is no run
    std::optional<UtcMs> now_ms{};           ///< of a running run, from which what is to come counts
};

} // namespace ullage
