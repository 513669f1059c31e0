// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/vessel.h"

#include "style/theme.h"

#include <QApplication>
#include <QIconEngine>
#include <QPainter>
#include <QPainterPath>
#include <QPixmap>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

QPainterPath outline(const QRectF& body) {
    const double radius = std::min({body.width() * 0.14, body.height() * 0.4, 12.0});
    QPainterPath path;
    path.addRoundedRect(body, radius, radius);
    return path;
}

// Slanted stripes over `rect` as filled shapes: they can be intersected, which lines cannot.
QPainterPath stripes(const QRectF& rect, double pitch, double thickness) {
    QPainterPath path;
    for (double x = rect.left() - rect.height() - pitch; x < rect.right() + pitch; x += pitch) {
        path.moveTo(x, rect.bottom());
        path.lineTo(x + rect.height(), rect.top());
        path.lineTo(x + rect.height() + thickness, rect.top());
        path.lineTo(x + thickness, rect.bottom());
        path.closeSubpath();
    }
    return path;
}

// Between two heights, following the rounded body inside it and straight above the rim.
QPainterPath slab(const QRectF& body, double upper_y, double lower_y) {
    QPainterPath within;
    const double top = std::max(upper_y, body.top());
    if (top < lower_y) {
        QPainterPath cut;
        cut.addRect(QRectF(QPointF(body.left() - 1, top), QPointF(body.right() + 1, lower_y)));
        within = outline(body).intersected(cut);
    }
    if (upper_y < body.top()) {
        QPainterPath above;
        const double inset = body.width() * 0.14;
        above.addRect(QRectF(QPointF(body.left() + inset, upper_y), QPointF(body.right() - inset, std::min(body.top(), lower_y) + 0.5)));
        within = within.united(above);
    }
    return within;
}

void paint_bracket(QPainter& painter, const VesselGeometry& g, const QColor& ink, double reach) {
    const double x = g.body.right() + reach * 0.7;
    const double half = reach * 0.25;
    const double upper = *g.interval_upper_y;
    const double lower = *g.interval_lower_y;
    QPen pen(ink, 1.6);
    pen.setCapStyle(Qt::FlatCap);
    painter.setPen(pen);
    painter.drawLine(QPointF(x, upper), QPointF(x, lower));
    painter.drawLine(QPointF(x - half, upper), QPointF(x + half, upper));
    painter.drawLine(QPointF(x - half, lower), QPointF(x + half, lower));
}

class VesselEngine : public QIconEngine {
public:
    explicit VesselEngine(const VesselData& vessel) : vessel_(vessel) {}

    void paint(QPainter* painter, const QRect& rect, QIcon::Mode mode, QIcon::State) override {
        painter->save();
        painter->setRenderHint(QPainter::Antialiasing);
        if (mode == QIcon::Disabled) painter->setOpacity(painter->opacity() * 0.5);
        const double scale = std::min(rect.width() / 16.0, rect.height() / 24.0);
        const QSizeF size(9.5 * scale, 20 * scale);
        QRectF body(QPointF(), size);
        body.moveCenter(QRectF(rect).center());
        const Palette& palette = current_palette();
        paint_vessel(*painter, vessel_, body, {palette, palette.panel, QApplication::font()}, VesselDetail::small);
        painter->restore();
    }

    QPixmap pixmap(const QSize& size, QIcon::Mode mode, QIcon::State state) override {
        QPixmap map(size);
        map.fill(Qt::transparent);
        QPainter painter(&map);
        paint(&painter, QRect(QPoint(), size), mode, state);
        return map;
    }

    QIconEngine* clone() const override { return new VesselEngine(vessel_); }

    QSize actualSize(const QSize& size, QIcon::Mode, QIcon::State) override { return QSize(16, 24).scaled(size, Qt::KeepAspectRatio); }

private:
    VesselData vessel_;
};

} // namespace

double vessel_top_wh(const VesselData& vessel) {
    double top = std::max(0.0, vessel.rated_wh);
    const double delivered = vessel.delivered_wh.value_or(0);
    for (const double value : {delivered, delivered + vessel.no_load_taken_wh.value_or(0), vessel.upper_wh.value_or(0)})
        if (std::isfinite(value)) top = std::max(top, value);
    return top;
}

VesselGeometry vessel_geometry(const VesselData& vessel, const QRectF& body) {
    VesselGeometry g;
    g.body = body;
    if (!(vessel.rated_wh > 0) || !std::isfinite(vessel.rated_wh)) return g;
    const auto y_of = [&](double wh) { return body.bottom() - std::max(0.0, wh) / vessel.rated_wh * body.height(); };
    const auto known = [](const std::optional<double>& value) { return value && std::isfinite(*value); };
    if (known(vessel.delivered_wh)) {
        g.fill_y = y_of(*vessel.delivered_wh);
        if (known(vessel.no_load_taken_wh) && *vessel.no_load_taken_wh > 0) g.no_load_y = y_of(*vessel.delivered_wh + *vessel.no_load_taken_wh);
        if (known(vessel.lower_wh) && known(vessel.upper_wh)) {
            g.interval_lower_y = y_of(*vessel.lower_wh);
            g.interval_upper_y = y_of(*vessel.upper_wh);
        }
    }
    if (known(vessel.band_lower_fraction) && known(vessel.band_upper_fraction)) {
        g.band_lower_y = y_of(*vessel.band_lower_fraction * vessel.rated_wh);
        g.band_upper_y = y_of(*vessel.band_upper_fraction * vessel.rated_wh);
    }
    return g;
}

double vessel_margin(double width) { return std::clamp(width * 0.18, 6.0, 14.0); }

void paint_vessel(QPainter& painter, const VesselData& vessel, const QRectF& body, const ChartLook& look, VesselDetail detail) {
    const VesselGeometry g = vessel_geometry(vessel, body);
    const Palette& p = look.palette;
    const bool full = detail == VesselDetail::full;
    const QPainterPath shape = outline(body);
    painter.save();
    painter.setPen(Qt::NoPen);
    painter.fillPath(shape, full ? look.ground : p.panel);
    if (g.fill_y) painter.fillPath(slab(body, *g.fill_y, body.bottom()), blended(p.delivered, look.ground, 0.86));
    if (g.no_load_y) {
        const QPainterPath room = slab(body, *g.no_load_y, *g.fill_y);
        const double pitch = full ? 6.5 : 3.5;
        const double thickness = full ? 2.6 : 1.6;
        painter.fillPath(stripes(room.boundingRect(), pitch, thickness).intersected(room), p.gauge_implied);
    }
    if (full && g.band_lower_y) {
        const double reach = vessel_margin(body.width()) * 0.3;
        QPen dashes(p.dark ? blended(p.ink, p.soft, 0.5) : blended(p.ink, p.soft, 0.35), 1);
        dashes.setDashPattern({3, 2});
        painter.setPen(dashes);
        for (const double y : {*g.band_lower_y, *g.band_upper_y}) painter.drawLine(QPointF(body.left() - reach, y), QPointF(body.right() + reach, y));
    }
    QPen rim(p.ink, full ? 1.6 : 1.1);
    if (!g.fill_y) rim.setStyle(Qt::DashLine);
    painter.setBrush(Qt::NoBrush);
    if (!g.fill_y && !full) rim = QPen(p.soft, 1.1);
    painter.setPen(rim);
    painter.drawPath(shape);
    if (full && g.interval_lower_y) paint_bracket(painter, g, p.ink, vessel_margin(body.width()));
    painter.restore();
}

QIcon vessel_icon(const VesselData& vessel) { return QIcon(new VesselEngine(vessel)); }

} // namespace ullage
