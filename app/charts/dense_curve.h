// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QList>
#include <QPainter>
#include <QPen>
#include <QPointF>

#include <vector>

namespace ullage {

/// A curve ready for the painter: unconnected pieces of it, in pixels of the chart.
struct DenseCurve {
    QPen pen;
    std::vector<QList<QPointF>> pieces;
};

/// Paints `curve` with the painter's transformation and clip. On pixels (a window, a PNG) a solid line goes segment by segment, whose cost grows
/// with the number of points, while that of one outlined path grows with the number of its crossings; elsewhere (SVG, PDF) each piece is one path.
void paint_dense_curve(QPainter& painter, const DenseCurve& curve);

} // namespace ullage
