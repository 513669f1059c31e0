// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_overlay.h"

#include "style/spacing.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using spacing::grid_px;
using spacing::half_px;

constexpr double tick_px = 4;

void paint_bands(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout) {
    const QRectF& plot = layout.plot;
    const QFontMetricsF metrics(painter.font());
    for (const ChartHorizontalBand& band : content.bands) {
        const double from = std::clamp(layout.pixelX(std::min(band.lower, band.upper)), plot.left(), plot.right());
        const double to = std::clamp(layout.pixelX(std::max(band.lower, band.upper)), plot.left(), plot.right());
        painter.fillRect(QRectF(from, plot.top(), std::max(1.0, to - from), plot.height()), expectation_colour(look));
        const QString text = metrics.elidedText(band.label, Qt::ElideRight, plot.width());
        const double width = metrics.horizontalAdvance(text) + 2;
        const double left = std::clamp((from + to - width) / 2, plot.left(), std::max(plot.left(), plot.right() - width));
        painter.setPen(look.palette.soft);
        painter.drawText(QRectF(left, plot.top() - metrics.height() - 2, width, metrics.height()), Qt::AlignCenter, text);
    }
}

void paint_axis(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout) {
    const QRectF& plot = layout.plot;
    const QFontMetricsF metrics(painter.font());
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const double value : layout.scale.values) {
        const double x = layout.pixelX(value);
        painter.setPen(QPen(value == 0 ? look.palette.soft : look.palette.line, 1));
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom() + tick_px));
        painter.setPen(look.palette.soft);
        const QString text = tick_text(value, layout.scale.step);
        const double width = metrics.horizontalAdvance(text) + 4;
        painter.drawText(QRectF(x - width / 2, plot.bottom() + tick_px + 2, width, metrics.height()), Qt::AlignCenter, text);
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
    painter.drawText(QRectF(plot.left(), plot.bottom() + tick_px + 2 + metrics.height(), plot.width(), metrics.height() + 2), Qt::AlignCenter,
                     metrics.elidedText(content.axis.title, Qt::ElideRight, plot.width()));
}

void paint_names(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout) {
    const QFontMetricsF names(look.font);
    const QFontMetricsF small(axis_font(look));
    const double width = layout.plot.left() - half_px - grid_px - half_px;
    for (std::size_t row = 0; row < content.bars.size(); ++row) {
        const ChartBar& bar = content.bars[row];
        const double middle = layout.rowMiddle(row);
        const bool note = layout.notes && !bar.note.isEmpty();
        const double top = note ? middle - (names.height() + small.height()) / 2 : middle - names.height() / 2;
        painter.setFont(look.font);
        painter.setPen(look.palette.ink);
        painter.drawText(QRectF(half_px, top, width, names.height()), Qt::AlignRight | Qt::AlignVCenter,
                         names.elidedText(bar.name, Qt::ElideRight, width));
        if (!note) continue;
        painter.setFont(axis_font(look));
        painter.setPen(look.palette.soft);
        painter.drawText(QRectF(half_px, top + names.height(), width, small.height()), Qt::AlignRight | Qt::AlignVCenter,
                         small.elidedText(bar.note, Qt::ElideRight, width));
    }
}

} // namespace

void paint_behind_bars(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout, const QSizeF& size) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), size), look.ground);
    if (content.bars.empty()) {
        painter.setFont(look.font);
        painter.setPen(look.palette.soft);
        const double margin = 3.0 * grid_px;
        painter.drawText(QRectF(QPointF(), size).adjusted(margin, margin, -margin, -margin), Qt::AlignCenter | Qt::TextWordWrap, content.empty_text);
    } else {
        painter.setFont(axis_font(look));
        paint_bands(painter, content, look, layout);
        paint_axis(painter, content, look, layout);
        paint_names(painter, content, look, layout);
    }
    painter.restore();
}

void paint_before_bars(QPainter& painter, const BarContent& content, const ChartLook& look, const BarLayout& layout, const QSizeF& size) {
    const QFontMetricsF metrics(look.font);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(look.font);
    for (std::size_t row = 0; row < content.bars.size(); ++row) {
        const ChartBar& bar = content.bars[row];
        const double middle = layout.rowMiddle(row);
        const double value = bar.value.value_or(0);
        double end = layout.pixelX(std::max(0.0, value));
        if (bar.value && bar.lower && bar.upper) {
            const double from = layout.pixelX(*bar.lower);
            const double to = layout.pixelX(*bar.upper);
            const double cap = std::clamp(layout.row_height * bar_share * 0.25, 3.0, 6.0);
            QPen pen(look.palette.ink, 1.6);
            pen.setCapStyle(Qt::FlatCap);
            painter.setPen(pen);
            painter.drawLine(QPointF(from, middle), QPointF(to, middle));
            for (const double x : {from, to}) painter.drawLine(QPointF(x, middle - cap), QPointF(x, middle + cap));
            end = std::max(end, to);
        }
        painter.setPen(bar.value ? look.palette.ink : look.palette.soft);
        const QString text = metrics.elidedText(layout.value_texts[row], Qt::ElideRight, size.width() - end - grid_px - 2);
        painter.drawText(QRectF(end + grid_px, middle - metrics.height() / 2, metrics.horizontalAdvance(text) + 2, metrics.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, text);
    }
    painter.restore();
}

} // namespace ullage
