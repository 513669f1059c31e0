// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/decimation.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace ullage {
namespace {

/// The points of one pixel column that decide how it looks.
struct Column {
    std::size_t first = 0;
    std::size_t last = 0;
    std::optional<std::size_t> lowest;
    std::optional<std::size_t> highest;
    std::optional<std::size_t> gap;
};

void add_to(Column& column, const std::vector<ChartPoint>& points, std::size_t index) {
    column.last = index;
    const double y = points[index].y;
    if (!std::isfinite(y)) {
        column.gap = index;
        return;
    }
    if (!column.lowest || y < points[*column.lowest].y) column.lowest = index;
    if (!column.highest || y > points[*column.highest].y) column.highest = index;
}

void flush(const Column& column, std::vector<std::size_t>& kept) {
    std::array<std::size_t, 5> chosen{column.first, column.lowest.value_or(column.first), column.highest.value_or(column.first),
                                      column.gap.value_or(column.first), column.last};
    std::sort(chosen.begin(), chosen.end());
    const auto end = std::unique(chosen.begin(), chosen.end());
    kept.insert(kept.end(), chosen.begin(), end);
}

} // namespace

std::vector<std::size_t> visible_indices(const std::vector<ChartPoint>& points, double from, double to, int columns) {
    std::vector<std::size_t> kept;
    const auto by_x = [](const ChartPoint& point, double x) { return point.x < x; };
    const auto x_before = [](double x, const ChartPoint& point) { return x < point.x; };
    const auto begin = std::lower_bound(points.begin(), points.end(), from, by_x);
    const auto end = std::upper_bound(begin, points.end(), to, x_before);
    const auto first = static_cast<std::size_t>(begin - points.begin());
    const auto past = static_cast<std::size_t>(end - points.begin());
    if (first > 0) kept.push_back(first - 1);
    if (past - first <= decimation_limit || !(to > from)) {
        for (std::size_t n = first; n < past; ++n) kept.push_back(n);
    } else {
        const double per_column = (to - from) / std::max(1, columns);
        long long at = -1;
        Column column;
        for (std::size_t n = first; n < past; ++n) {
            const auto here = static_cast<long long>((points[n].x - from) / per_column);
            if (here != at) {
                if (at >= 0) flush(column, kept);
                at = here;
                column = Column{n, n, {}, {}, {}};
            }
            add_to(column, points, n);
        }
        flush(column, kept);
    }
    if (past < points.size()) kept.push_back(past);
    return kept;
}

} // namespace ullage
