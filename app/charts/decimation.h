// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <cstddef>
#include <vector>

namespace ullage {

/// More points than this in view are thinned.
inline constexpr std::size_t decimation_limit = 4000;

/// Indices of the points that a plot `columns` pixels wide over [from, to] needs: one neighbour outside on each
/// side, and inside either all (up to decimation_limit) or of each pixel column the first, lowest, highest and last,
/// in ascending order without repeats. Points whose y is not finite are kept, at most one a column: they interrupt the
/// curve. Precondition: points ascend in x; columns >= 1.
[[nodiscard]] std::vector<std::size_t> visible_indices(const std::vector<ChartPoint>& points, double from, double to, int columns);

} // namespace ullage
