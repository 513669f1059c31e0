// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/accounts.h"
#include "formats/json/quantity_json.h"

namespace ullage {

/// {as_of, cut_off: {lower, estimate, upper} | null, basis | null, reason, next_gauge_step: {gauge_percent, lower, estimate,
/// upper} | null, gauge_reason, overthrown, advice: [{at | null, sentence}]}; times in ISO 8601 with the offset of `zone`.
[[nodiscard]] Json forecast_json(const RunForecast& forecast, const std::string& zone);

/// {reason} where they are not told, else {right, wrong, decides, decide_from | null, idle_hour}; each account {ruled_out, evidence, sentence,
/// usable_fraction, no_load_draw_w, gauge_error_pt, to_come_wh, hours_left}, the last five as quantity_json().
[[nodiscard]] Json accounts_json(const TwoAccounts& accounts, const std::string& zone);

} // namespace ullage
