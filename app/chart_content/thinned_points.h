// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// Which of many points to draw, so that the picture is the same: the first and the last, and of each of `most` / 2 equal spans of x the lowest and
/// the highest. Places in `points`, rising; all of them where there are no more than `most`. `points` are in ascending order of x, `most` is at
/// least 4.
[[nodiscard]] std::vector<std::size_t> points_to_draw(const std::vector<ChartPoint>& points, std::size_t most);

} // namespace ullage
