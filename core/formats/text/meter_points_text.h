// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/meter.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// The points of a meter's correction as a person types them: "100 0.998 0.3 2; 500 1.001 0.25 2". A point is load in W and correction factor, then
/// its expanded uncertainty U in % and the coverage factor k, where they are stated. Empty for no points.
[[nodiscard]] std::string meter_points_text(const std::vector<MeterPoint>& points);

/// Reads that text; the points in any order, in lines or between semicolons, their numbers between blanks. Errors (bad_input) name the point: not two
/// to four numbers, out of range, one load twice, more than most_meter_points.
[[nodiscard]] Result<std::vector<MeterPoint>> meter_points_from(std::string_view text);

} // namespace ullage
