// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/json/quantity_json.h"
#include "meters_in_series/meters_in_series.h"

#include <string>
#include <vector>

namespace ullage {

/// A list of pairs: {first, second, runs (how many), loads: [{load_w, first_wh, second_wh, gain_ratio, contradiction, first_error_percent,
/// second_error_percent, sentence}]}; an error is [low, high] or null.
[[nodiscard]] Json meters_in_series_json(const std::vector<MetersInSeries>& pairs);
/// A head for each pair and a sentence for each load; empty without pairs.
[[nodiscard]] std::string meters_in_series_text(const std::vector<MetersInSeries>& pairs);

} // namespace ullage
