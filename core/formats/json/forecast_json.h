// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"
#include "formats/json/quantity_json.h"

namespace ullage {

/// {as_of, cut_off: {lower, estimate, upper} | null, basis | null, reason, next_gauge_step: {gauge_percent, lower, estimate,
/// upper} | null, gauge_reason, advice: [{at | null, sentence}]}; times in ISO 8601 with the offset of `zone`.
[[nodiscard]] Json forecast_json(const RunForecast& forecast, const std::string& zone);

} // namespace ullage
