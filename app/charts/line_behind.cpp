// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_overlay.h"

#include "style/spacing.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace ullage {
namespace {

using spacing::half_px;

constexpr double mark_px = 4;

void paint_regions(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout) {
    const QRectF& plot = layout.plot;
    painter.setPen(Qt::NoPen);
    for (const ChartHorizontalBand& band : content.horizontal_bands) {
        const double upper = std::clamp(layout.pixelY(band.upper), plot.top(), plot.bottom());
        const double lower = std::clamp(layout.pixelY(band.lower), plot.top(), plot.bottom());
        painter.fillRect(QRectF(plot.left(), upper, plot.width(), lower - upper), expectation_colour(look));
    }
    for (const ChartRegion& region : content.regions) {
        const double from = std::clamp(layout.pixelX(region.from), plot.left(), plot.right());
        const double to = std::clamp(layout.pixelX(region.to), plot.left(), plot.right());
        if (to > from) painter.fillRect(QRectF(from, plot.top(), std::max(1.0, to - from), plot.height()), region_colour(region.role, look));
    }
}

void paint_grid(QPainter& painter, const ChartLook& look, const LineLayout& layout, const QFontMetricsF& metrics) {
    const QRectF& plot = layout.plot;
    painter.setRenderHint(QPainter::Antialiasing, false);
    for (const double value : layout.y.values) {
        const double y = layout.pixelY(value);
        painter.setPen(QPen(look.palette.line, 1));
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
        painter.setPen(look.palette.soft);
        const QString text = tick_text(value, layout.y.step);
        painter.drawText(QRectF(0, y - metrics.height() / 2, plot.left() - 2 * half_px, metrics.height()), Qt::AlignRight | Qt::AlignVCenter, text);
    }
    painter.setPen(QPen(look.palette.line, 1));
    painter.drawLine(plot.bottomLeft(), plot.bottomRight());
    double free_from = -1e9; // labels of a logarithmic axis stand at uneven distances
    for (const double value : layout.x.values) {
        const double x = layout.pixelX(value);
        painter.setPen(QPen(look.palette.soft, 1));
        painter.drawLine(QPointF(x, plot.bottom()), QPointF(x, plot.bottom() + mark_px));
        const QString text = tick_text(value, layout.x.step);
        const double width = metrics.horizontalAdvance(text);
        if (x - width / 2 < free_from) continue;
        free_from = x + width / 2 + metrics.averageCharWidth();
        painter.drawText(QRectF(x - width / 2 - 2, plot.bottom() + mark_px + 2, width + 4, metrics.height()), Qt::AlignCenter, text);
    }
    painter.setRenderHint(QPainter::Antialiasing, true);
}

void paint_titles(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout, const QFontMetricsF& metrics) {
    const QRectF& plot = layout.plot;
    painter.setPen(look.palette.soft);
    const double below = plot.bottom() + mark_px + 2 + metrics.height();
    painter.drawText(QRectF(plot.left(), below, plot.width(), metrics.height() + 2), Qt::AlignCenter,
                     metrics.elidedText(content.x.title, Qt::ElideRight, plot.width()));
    painter.save();
    painter.translate(half_px, plot.center().y());
    painter.rotate(-90);
    const double room = plot.height() + metrics.height();
    painter.drawText(QRectF(-room / 2, 0, room, metrics.height()), Qt::AlignCenter, metrics.elidedText(content.y.title, Qt::ElideRight, room));
    painter.restore();
}

/// What lies above 0 and what below it, in the corners; below the names of regions that would be in the way.
void paint_sides_of_zero(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout,
                         const QFontMetricsF& metrics) {
    const QRectF& plot = layout.plot;
    const double zero_y = layout.pixelY(0), inset = 2;
    painter.setPen(look.palette.soft);
    const QString above = QStringLiteral("▲ ") + content.y.above_zero, below = QStringLiteral("▼ ") + content.y.below_zero;
    const double width = metrics.horizontalAdvance(above) + 2 * half_px;
    const bool in_the_way =
        std::ranges::any_of(content.regions, [&](const ChartRegion& region) { return layout.pixelX(region.from) < plot.left() + 2 * width; });
    const double top = plot.top() + inset + (in_the_way ? 2 * metrics.height() : 0);
    if (!content.y.above_zero.isEmpty() && zero_y > top + metrics.height())
        painter.drawText(QRectF(plot.left() + half_px, top, plot.width(), metrics.height()), Qt::AlignLeft | Qt::AlignVCenter, above);
    if (!content.y.below_zero.isEmpty() && zero_y < plot.bottom() - inset - metrics.height())
        painter.drawText(QRectF(plot.left() + half_px, plot.bottom() - inset - metrics.height(), plot.width(), metrics.height()),
                         Qt::AlignLeft | Qt::AlignVCenter, below);
}

void paint_region_names(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout,
                        const QFontMetricsF& metrics) {
    const QRectF& plot = layout.plot;
    painter.setPen(look.palette.soft);
    // Neighbours whose names would touch take turns between two lines.
    double taken_until[2] = {-1e9, -1e9};
    std::vector<const ChartRegion*> ordered;
    for (const ChartRegion& region : content.regions) ordered.push_back(&region);
    std::stable_sort(ordered.begin(), ordered.end(), [](const auto* a, const auto* b) { return a->from < b->from; });
    for (const ChartRegion* region : ordered) {
        const double from = std::max(layout.pixelX(region->from), plot.left());
        const double to = std::min(layout.pixelX(region->to), plot.right());
        if (to <= from || region->label.isEmpty()) continue;
        const QString text = metrics.elidedText(region->label, Qt::ElideRight, plot.width() / 2);
        const double width = metrics.horizontalAdvance(text);
        const double left = std::clamp((from + to - width) / 2, plot.left(), std::max(plot.left(), plot.right() - width));
        const int row = left >= taken_until[0] ? 0 : left >= taken_until[1] ? 1 : -1;
        if (row < 0) continue;
        taken_until[row] = left + width + metrics.averageCharWidth();
        painter.drawText(QRectF(left, plot.top() + 2 + row * metrics.height(), width + 2, metrics.height()), Qt::AlignCenter, text);
    }
}

} // namespace

void paint_behind_lines(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout, const QSizeF& size) {
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.fillRect(QRectF(QPointF(), size), look.ground);
    if (layout.empty) {
        painter.setFont(look.font);
        painter.setPen(look.palette.soft);
        const double margin = 3.0 * spacing::grid_px;
        painter.drawText(QRectF(QPointF(), size).adjusted(margin, margin, -margin, -margin), Qt::AlignCenter | Qt::TextWordWrap, content.empty_text);
        painter.restore();
        return;
    }
    painter.setFont(axis_font(look));
    const QFontMetricsF metrics(painter.font());
    paint_regions(painter, content, look, layout);
    paint_grid(painter, look, layout, metrics);
    paint_titles(painter, content, look, layout, metrics);
    paint_region_names(painter, content, look, layout, metrics);
    paint_sides_of_zero(painter, content, look, layout, metrics);
    painter.restore();
}

} // namespace ullage
