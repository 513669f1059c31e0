// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/marker.h"

#include <QPainter>
#include <QPolygonF>

namespace ullage {

void paint_marker(QPainter& painter, Marker marker, const QPointF& centre, double size, const QColor& outline, const QColor& fill) {
    if (marker == Marker::none) return;
    const double r = size / 2;
    QPen pen(outline, 1.8);
    pen.setJoinStyle(Qt::MiterJoin);
    painter.setPen(pen);
    painter.setBrush(fill);
    switch (marker) {
    case Marker::none: break;
    case Marker::circle: painter.drawEllipse(centre, r, r); break;
    case Marker::square: {
        const double half = r * 0.92;
        painter.drawRect(QRectF(centre.x() - half, centre.y() - half, 2 * half, 2 * half));
        break;
    }
    case Marker::triangle:
        painter.drawPolygon(QPolygonF({centre + QPointF(0, -1.25 * r), centre + QPointF(1.15 * r, 0.8 * r), centre + QPointF(-1.15 * r, 0.8 * r)}));
        break;
    case Marker::diamond:
        painter.drawPolygon(QPolygonF(
            {centre + QPointF(0, -1.25 * r), centre + QPointF(1.25 * r, 0), centre + QPointF(0, 1.25 * r), centre + QPointF(-1.25 * r, 0)}));
        break;
    }
}

} // namespace ullage
