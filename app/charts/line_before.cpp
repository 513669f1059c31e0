// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_overlay.h"

#include "charts/marker.h"
#include "style/numbers.h"
#include "style/spacing.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using spacing::half_px;

bool in_plot(const QRectF& plot, const QPointF& place) { return plot.adjusted(-0.5, -0.5, 0.5, 0.5).contains(place); }

std::optional<QPointF> place_of(const LineLayout& layout, const ChartPoint& point) {
    if (!layout.axes.map(point.x, point.y)) return std::nullopt;
    return QPointF(layout.pixelX(point.x), layout.pixelY(point.y));
}

void paint_error_bars(QPainter& painter, const ChartSeries& series, const QColor& colour, const LineLayout& layout) {
    const QRectF& plot = layout.plot;
    painter.setPen(QPen(colour, 1.4));
    for (const ChartBandPoint& point : series.band) {
        const double x = layout.pixelX(point.x);
        if (!layout.axes.map(point.x, point.upper) || x < plot.left() - 0.5 || x > plot.right() + 0.5) continue;
        const double upper = std::clamp(layout.pixelY(point.upper), plot.top(), plot.bottom());
        const double lower = std::clamp(layout.pixelY(point.lower), plot.top(), plot.bottom());
        painter.drawLine(QPointF(x, upper), QPointF(x, lower));
        for (const double y : {upper, lower}) painter.drawLine(QPointF(x - 3, y), QPointF(x + 3, y));
    }
}

void paint_points(QPainter& painter, const ChartSeries& series, const ChartLook& look, const LineLayout& layout,
                  const std::vector<std::size_t>& visible, const std::set<std::size_t>* highlighted) {
    const QColor colour = curve_colour(series.colour, look.palette);
    if (series.band_shape == BandShape::bars) paint_error_bars(painter, series, colour, layout);
    if (visible.size() <= most_markers)
        for (const std::size_t index : visible)
            if (const auto place = place_of(layout, series.points[index]); place && in_plot(layout.plot, *place))
                paint_marker(painter, series.marker, *place, marker_px, colour, look.ground);
    if (!highlighted) return;
    for (const std::size_t index : *highlighted) {
        if (index >= series.points.size()) continue;
        const auto place = place_of(layout, series.points[index]);
        if (!place || !in_plot(layout.plot, *place)) continue;
        painter.setPen(Qt::NoPen);
        QColor halo = colour;
        halo.setAlphaF(0.25F);
        painter.setBrush(halo);
        painter.drawEllipse(*place, marker_px * 1.3, marker_px * 1.3);
        const Marker shape = series.marker == Marker::none ? Marker::circle : series.marker;
        paint_marker(painter, shape, *place, marker_px * 1.15, colour, colour);
    }
}

void paint_lines_across(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout,
                        const QFontMetricsF& metrics) {
    const QRectF& plot = layout.plot;
    for (const ChartHorizontalLine& line : content.horizontal_lines) {
        const double y = layout.pixelY(line.value);
        if (y < plot.top() - 0.5 || y > plot.bottom() + 0.5) continue;
        QPen dots(look.palette.ink, 1.4);
        dots.setDashPattern({1.4, 2.2});
        dots.setCapStyle(Qt::FlatCap);
        painter.setPen(dots);
        painter.drawLine(QPointF(plot.left(), y), QPointF(plot.right(), y));
    }
    for (const ChartVerticalLine& line : content.vertical_lines) {
        const double x = layout.pixelX(line.value);
        if (x < plot.left() - 0.5 || x > plot.right() + 0.5) continue;
        const QColor colour = curve_colour(line.colour, look.palette);
        QPen dots(colour, 1.2);
        dots.setDashPattern({1.4, 2.4});
        dots.setCapStyle(Qt::FlatCap);
        painter.setPen(dots);
        painter.drawLine(QPointF(x, plot.top()), QPointF(x, plot.bottom()));
        const QString text = metrics.elidedText(line.label, Qt::ElideRight, plot.width() / 2);
        const double width = metrics.horizontalAdvance(text) + 2;
        const double left = x + half_px + width <= plot.right() ? x + half_px : x - half_px - width;
        painter.setPen(colour);
        painter.drawText(QRectF(left, plot.top() + 2, width, metrics.height()), Qt::AlignLeft | Qt::AlignVCenter, text);
    }
}

void paint_labels(QPainter& painter, const ChartLook& look, const LineLayout& layout) {
    const QFont plain = painter.font();
    for (const ChartLabel& label : layout.labels) {
        const double off_by = std::fabs(label.place.center().y() - label.anchor.y());
        if (off_by > label.place.height() * 0.8 && label.place.left() > label.anchor.x()) {
            painter.setPen(QPen(blended(label.colour, look.ground, 0.5), 1));
            painter.drawLine(label.anchor + QPointF(half_px + 1, 0), QPointF(label.place.left() - 2, label.place.center().y()));
        }
        QFont font = plain;
        font.setStrikeOut(label.hidden);
        painter.setFont(font);
        if (label.place.left() < layout.plot.right()) {
            // Curves and grid may run on behind a name inside the plot: it stands on ground of its own, so that none strikes it through.
            QColor ground = look.ground;
            ground.setAlphaF(0.9F);
            const QRectF letters(label.place.left() - 1, label.place.top(), QFontMetricsF(font).horizontalAdvance(label.text) + 2,
                                 label.place.height());
            painter.fillRect(letters, ground);
        }
        painter.setPen(label.colour);
        painter.drawText(label.place, Qt::AlignLeft | Qt::AlignVCenter, label.text);
    }
    painter.setFont(plain);
}

void paint_readout(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout, const ChartHit& hit,
                   const QSizeF& size) {
    const ChartSeries& series = content.series[hit.series];
    const auto place = place_of(layout, series.points[hit.index]);
    if (!place) return;
    const QColor colour = curve_colour(series.colour, look.palette);
    const Marker shape = series.marker == Marker::none ? Marker::circle : series.marker;
    paint_marker(painter, shape, *place, marker_px * 1.15, colour, colour);
    const QString text = readout_text(content, layout, hit);
    const QFontMetricsF metrics(painter.font());
    const QSizeF inner = metrics.boundingRect(QRectF(0, 0, size.width() * 0.6, size.height()), Qt::TextWordWrap, text).size();
    const QSizeF outer(inner.width() + 18, inner.height() + 10);
    double left = place->x() + 12;
    if (left + outer.width() > size.width() - 2) left = place->x() - 12 - outer.width();
    double top = place->y() - outer.height() - 10;
    if (top < 2) top = place->y() + 12;
    const QRectF box(std::max(2.0, left), std::clamp(top, 2.0, std::max(2.0, size.height() - outer.height() - 2)), outer.width(), outer.height());
    painter.setPen(QPen(look.palette.line, 1));
    painter.setBrush(blended(look.palette.ink, look.ground, look.palette.dark ? 0.06 : 0.02));
    painter.drawRoundedRect(box, spacing::small_radius_px, spacing::small_radius_px);
    painter.setPen(QPen(colour, 3));
    painter.drawLine(box.topLeft() + QPointF(4, 6), box.bottomLeft() + QPointF(4, -6));
    painter.setPen(look.palette.ink);
    painter.drawText(box.adjusted(11, 5, -4, -5), Qt::AlignLeft | Qt::AlignVCenter | Qt::TextWordWrap, text);
}

} // namespace

QString readout_text(const ChartContent& content, const LineLayout& layout, const ChartHit& hit) {
    const ChartSeries& series = content.series[hit.series];
    const ChartPoint& point = series.points[hit.index];
    // One digit more than the axis shows, so that neighbours can be told apart.
    const auto text = [](double value, const TickScale& scale, const QString& unit) {
        const double step = scale.step > 0 ? scale.step / 10 : std::pow(10.0, std::floor(std::log10(std::fabs(value) + 1e-12)) - 2);
        return unit.isEmpty() ? tick_text(value, step) : tick_text(value, step) + QLatin1Char(' ') + unit;
    };
    QString name = series.name;
    for (const ChartSeries& other : content.series)
        if (name.isEmpty() && group_of(other) == group_of(series)) name = other.name;
    QStringList lines;
    if (!name.isEmpty()) lines << name;
    lines << text(point.x, layout.x, content.x.unit) + QStringLiteral(",  ") + text(point.y, layout.y, content.y.unit);
    if (hit.index < series.notes.size() && !series.notes[hit.index].isEmpty()) lines << series.notes[hit.index];
    return lines.join(QLatin1Char('\n'));
}

void paint_before_lines(QPainter& painter, const ChartContent& content, const ChartLook& look, const LineLayout& layout,
                        const VisibleIndices& visible, const LineState& state, const QSizeF& size) {
    if (layout.empty) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setFont(axis_font(look));
    const QFontMetricsF metrics(painter.font());
    paint_lines_across(painter, content, look, layout, metrics);
    for (std::size_t n = 0; n < content.series.size() && n < visible.size(); ++n) {
        const ChartSeries& series = content.series[n];
        if (state.hidden.contains(group_of(series))) continue;
        const auto chosen = state.highlighted.find(series.id);
        paint_points(painter, series, look, layout, visible[n], chosen == state.highlighted.end() ? nullptr : &chosen->second);
    }
    paint_labels(painter, look, layout);
    if (state.selecting) {
        QColor wash = look.palette.accent;
        wash.setAlphaF(0.15F);
        const auto [a, b] = std::minmax(state.selecting->first, state.selecting->second);
        painter.fillRect(QRectF(a, layout.plot.top(), b - a, layout.plot.height()), wash);
    }
    if (state.hovered) paint_readout(painter, content, look, layout, *state.hovered, size);
    painter.restore();
}

} // namespace ullage
