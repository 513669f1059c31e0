// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <QList>
#include <QPointF>
#include <QRectF>

#include <cstddef>
#include <vector>

namespace ullage {

/// Axis coordinates: the values themselves, or their decimal logarithms on a logarithmic axis (absent for values
/// that are not positive).
struct AxisMap {
    bool x_logarithmic = false;
    bool y_logarithmic = false;

    /// Absent as well where x or y is not finite.
    [[nodiscard]] std::optional<QPointF> map(double x, double y) const;
};

/// The curve through points[indices] in axis coordinates, cut at `window` (axis coordinates, y upwards: top() is the
/// lower value) and broken where a point has no place. Cut here rather than by the painter, because an SVG painter
/// does not clip. `steps`: each value holds until the next point.
[[nodiscard]] std::vector<QList<QPointF>> curve_pieces(const std::vector<ChartPoint>& points, const std::vector<std::size_t>& indices, bool steps,
                                                       const AxisMap& axes, const QRectF& window);

} // namespace ullage
