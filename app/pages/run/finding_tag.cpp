// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/finding_tag.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QEvent>
#include <QPainter>

namespace ullage {

namespace {

constexpr int padding_px = 6;
constexpr int gap_px = 5;

int shape_side(const QFontMetrics& metrics) { return metrics.ascent() * 6 / 10; }

void paint_shape(QPainter& painter, FindingItem::Sort sort, const QRectF& box, const QColor& colour) {
    painter.setPen(Qt::NoPen);
    painter.setBrush(colour);
    const QPointF centre = box.center();
    switch (sort) {
    case FindingItem::Sort::fault: painter.drawPolygon(QPolygonF({box.bottomLeft(), box.bottomRight(), QPointF(centre.x(), box.top())})); return;
    case FindingItem::Sort::doubt:
        painter.drawPolygon(QPolygonF(
            {QPointF(centre.x(), box.top()), QPointF(box.right(), centre.y()), QPointF(centre.x(), box.bottom()), QPointF(box.left(), centre.y())}));
        return;
    case FindingItem::Sort::note: painter.drawEllipse(box.adjusted(1, 1, -1, -1)); return;
    case FindingItem::Sort::assumed: painter.drawRect(QRectF(box.left(), centre.y() - box.height() / 6, box.width(), box.height() / 3)); return;
    case FindingItem::Sort::not_known:
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(colour, 1.4));
        painter.drawEllipse(box.adjusted(1, 1, -1, -1));
        return;
    }
}

} // namespace

FindingTag::FindingTag(FindingItem::Sort sort, QWidget* parent) : QWidget(parent), sort_(sort) {
    setSizePolicy(QSizePolicy::Fixed, QSizePolicy::Fixed);
    setAccessibleName(finding_word(sort));
}

QSize FindingTag::sizeHint() const {
    const QFontMetrics metrics(text_font(TextSize::caption));
    return {metrics.horizontalAdvance(finding_word(sort_)) + shape_side(metrics) + gap_px + 2 * padding_px, metrics.height() + 3};
}

QSize FindingTag::minimumSizeHint() const { return sizeHint(); }

void FindingTag::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) updateGeometry();
}

void FindingTag::paintEvent(QPaintEvent*) {
    const Palette& palette = current_palette();
    QColor ground = palette.selection;
    QColor ink = palette.ink;
    if (sort_ == FindingItem::Sort::fault) {
        ground = palette.fault;
        ink = palette.fault_ink;
    } else if (sort_ == FindingItem::Sort::doubt || sort_ == FindingItem::Sort::assumed) {
        ground = palette.doubt;
        ink = palette.doubt_ink;
    }
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(ground);
    painter.drawRoundedRect(rect(), spacing::small_radius_px - 1, spacing::small_radius_px - 1);
    const QFont font = text_font(TextSize::caption);
    const QFontMetrics metrics(font);
    const int side = shape_side(metrics);
    paint_shape(painter, sort_, QRectF(padding_px, (height() - side) / 2.0, side, side), ink);
    painter.setFont(font);
    painter.setPen(ink);
    painter.drawText(rect().adjusted(padding_px + side + gap_px, 0, -padding_px, 0), Qt::AlignVCenter | Qt::AlignLeft, finding_word(sort_));
}

} // namespace ullage
