// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/thinned_points.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace ullage {

std::vector<std::size_t> points_to_draw(const std::vector<ChartPoint>& points, std::size_t most) {
    std::vector<std::size_t> kept;
    if (points.size() <= most) {
        kept.resize(points.size());
        std::iota(kept.begin(), kept.end(), std::size_t{0});
        return kept;
    }
    const std::size_t spans = most / 2 - 1; // the first and the last point come beside them
    const double from = points.front().x, width = (points.back().x - from) / static_cast<double>(spans);
    const double last_span = static_cast<double>(spans - 1);
    kept.push_back(0);
    for (std::size_t i = 1; i + 1 < points.size();) {
        const std::size_t begin = i;
        const double span = width > 0 ? std::floor((points[i].x - from) / width) : last_span;
        const double end = span < last_span ? from + width * (span + 1) : std::numeric_limits<double>::infinity();
        std::size_t lowest = i, highest = i;
        for (; i + 1 < points.size() && (i == begin || points[i].x < end); ++i) {
            if (points[i].y < points[lowest].y) lowest = i;
            if (points[i].y > points[highest].y) highest = i;
        }
        kept.push_back(std::min(lowest, highest));
        if (lowest != highest) kept.push_back(std::max(lowest, highest));
    }
    kept.push_back(points.size() - 1);
    return kept;
}

} // namespace ullage
