// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to app/charts: this header names Qt Charts.

#include <QChart>
#include <QGraphicsItem>
#include <QPainter>

#include <functional>

namespace ullage {

/// A layer of a chart that we paint ourselves. It takes no mouse events.
class PaintedItem : public QGraphicsItem {
public:
    /// `z` below 0.9 lies behind all curves, above 100 before them. The chart owns the item.
    PaintedItem(QChart& chart, double z, std::function<void(QPainter&)> paint) : QGraphicsItem(&chart), paint_(std::move(paint)) {
        setZValue(z);
        setAcceptedMouseButtons(Qt::NoButton);
    }

    void setSize(const QSizeF& size) {
        prepareGeometryChange();
        bounds_ = QRectF(QPointF(), size);
    }

    [[nodiscard]] QRectF boundingRect() const override { return bounds_; }
    void paint(QPainter* painter, const QStyleOptionGraphicsItem*, QWidget*) override { paint_(*painter); }

private:
    std::function<void(QPainter&)> paint_;
    QRectF bounds_;
};

/// Takes everything off a new chart that we draw ourselves.
inline void strip_chart(QChart& chart) {
    chart.setBackgroundVisible(false);
    chart.setPlotAreaBackgroundVisible(false);
    chart.setAnimationOptions(QChart::NoAnimation);
    chart.setMargins(QMargins());
    chart.setContentsMargins(0, 0, 0, 0);
    chart.setAcceptHoverEvents(false);
}

} // namespace ullage
