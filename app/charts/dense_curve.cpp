// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/dense_curve.h"

#include <QPaintEngine>

namespace ullage {

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
        for (qsizetype n = 1; n < piece.size(); ++n) segments.append(QLineF(piece[n - 1], piece[n]));
        painter.drawLines(segments);
    }
}

} // namespace ullage
