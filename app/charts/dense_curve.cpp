// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/dense_curve.h"

#include <QPaintEngine>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

/// The strokes of a curve. Where more than three points crowd in one pixel column an upright stroke over all of them stands for those between, which
/// looks the same and takes half the time.
void add_segments(const QList<QPointF>& piece, QList<QLineF>& segments) {
    for (qsizetype next = 0; next < piece.size();) {
        const qsizetype first = next;
        const double column = std::floor(piece[first].x());
        double top = piece[first].y(), bottom = top;
        for (++next; next < piece.size() && std::floor(piece[next].x()) == column; ++next) {
            top = std::min(top, piece[next].y());
            bottom = std::max(bottom, piece[next].y());
        }
        if (first > 0) segments.append(QLineF(piece[first - 1], piece[first]));
        if (next - first > 3) segments.append(QLineF(column + 0.5, top, column + 0.5, bottom));
        else
            for (qsizetype n = first + 1; n < next; ++n) segments.append(QLineF(piece[n - 1], piece[n]));
    }
}

} // namespace

void paint_dense_curve(QPainter& painter, const DenseCurve& curve) {
    painter.setPen(curve.pen);
    const bool by_segment = painter.paintEngine()->type() == QPaintEngine::Raster && curve.pen.style() == Qt::SolidLine;
    QList<QLineF> segments;
    for (const QList<QPointF>& piece : curve.pieces) {
        if (!by_segment) {
            painter.drawPolyline(piece.constData(), static_cast<int>(piece.size()));
            continue;
        }
        segments.clear();
        segments.reserve(piece.size());
        add_segments(piece, segments);
        painter.drawLines(segments);
    }
}

} // namespace ullage
