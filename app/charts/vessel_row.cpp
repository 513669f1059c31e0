// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/vessel_row.h"

#include "charts/picture_copy.h"
#include "charts/spoken_chart.h"
#include "charts/spoken_vessels.h"
#include "style/numbers.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QFocusEvent>
#include <QFontMetricsF>
#include <QHelpEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QScrollArea>
#include <QToolTip>

#include <algorithm>

namespace ullage {
namespace {

constexpr double widest_cell_lines = 11; // in heights of a line of text
constexpr double widest_body_px = 76;
constexpr double focus_line_px = 2;

QFont name_font(const ChartLook& look) {
    QFont font = look.font;
    font.setBold(true);
    return font;
}

// Centred in `cell`, set smaller (to two thirds) and then shortened to fit.
void draw_centred(QPainter& painter, const QRectF& cell, double top, const QString& text) {
    const QFont font = painter.font();
    const double height = QFontMetricsF(font).height();
    const double room = cell.width() - spacing::half_px;
    // By steps: a font of a smaller size may come out wider than its share, as sizes are rounded to pixels.
    constexpr double least_scale = 0.66, step = 0.04;
    for (double scale = 1 - step; scale >= least_scale && QFontMetricsF(painter.font()).horizontalAdvance(text) > room; scale -= step)
        painter.setFont(scaled_font(font, scale));
    const QString shown = QFontMetricsF(painter.font()).elidedText(text, Qt::ElideRight, room);
    painter.drawText(QRectF(cell.left(), top, cell.width(), height), Qt::AlignHCenter | Qt::AlignVCenter, shown);
    painter.setFont(font);
}

} // namespace

QString vessel_rated_text(const VesselData& vessel) {
    if (!(vessel.rated_wh > 0)) return VesselRow::tr("rating not known");
    return VesselRow::tr("rated %1 Wh").arg(shown_number(vessel.rated_wh, 0));
}

QString vessel_value_text(const VesselColumn& column) {
    if (!column.value_text.isEmpty()) return column.value_text;
    const VesselData& v = column.vessel;
    std::optional<double> half_width;
    if (v.lower_wh && v.upper_wh) half_width = (*v.upper_wh - *v.lower_wh) / 2;
    return shown_value(v.delivered_wh, half_width, QStringLiteral("Wh"), 0).plain();
}

QStringList vessel_facts(const VesselColumn& column) {
    QStringList facts{vessel_rated_text(column.vessel), VesselRow::tr("delivered: %1").arg(vessel_value_text(column))};
    if (column.vessel.no_load_taken_wh)
        facts << VesselRow::tr("taken by the no-load draw: %1 Wh").arg(shown_number(column.vessel.no_load_taken_wh, 0));
    return facts;
}

VesselRowLayout vessel_row_layout(const VesselRowContent& content, const QRectF& area, const ChartLook& look) {
    VesselRowLayout layout;
    if (content.columns.empty()) return layout;
    const double axis_line = QFontMetricsF(axis_font(look)).height();
    const double text_line = QFontMetricsF(look.font).height();
    const double cell_width = std::min(widest_cell_lines * text_line, area.width() / static_cast<double>(content.columns.size()));
    const double left = area.left() + (area.width() - cell_width * static_cast<double>(content.columns.size())) / 2;
    const double floor_y = area.bottom() - 2 * text_line - 1.5 * spacing::grid_px;
    const double room = std::max(8.0, floor_y - area.top() - axis_line - spacing::grid_px);
    double top_wh = 0;
    double widest_rated = 0;
    for (const VesselColumn& column : content.columns) {
        top_wh = std::max(top_wh, vessel_top_wh(column.vessel));
        widest_rated = std::max(widest_rated, column.vessel.rated_wh);
    }
    const double body_width = std::min(widest_body_px, std::max(10.0, cell_width - 2 * vessel_margin(cell_width * 0.6) - 8));
    for (std::size_t n = 0; n < content.columns.size(); ++n) {
        const QRectF cell(left + cell_width * static_cast<double>(n), area.top(), cell_width, area.height());
        const double rated = content.columns[n].vessel.rated_wh;
        // Without a rating there is nothing to scale: a vessel of half height says so by its dashed rim.
        const double height = rated > 0 && top_wh > 0 ? std::max(6.0, room * rated / top_wh) : room / 2;
        layout.cells.push_back(cell);
        layout.bodies.emplace_back(cell.center().x() - body_width / 2, floor_y - height, body_width, height);
    }
    return layout;
}

void paint_vessel_row(QPainter& painter, const VesselRowContent& content, const QRectF& area, const ChartLook& look) {
    const VesselRowLayout layout = vessel_row_layout(content, area, look);
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    if (content.columns.empty()) {
        painter.setFont(look.font);
        painter.setPen(look.palette.soft);
        painter.drawText(area, Qt::AlignCenter | Qt::TextWordWrap, content.empty_text);
    }
    const QFontMetricsF axis_metrics(axis_font(look));
    const double text_line = QFontMetricsF(look.font).height();
    for (std::size_t n = 0; n < layout.bodies.size(); ++n) {
        const VesselColumn& column = content.columns[n];
        const QRectF& body = layout.bodies[n];
        const QRectF& cell = layout.cells[n];
        // Of very many only those in sight are drawn.
        if (painter.hasClipping() && !painter.clipBoundingRect().intersects(cell)) continue;
        paint_vessel(painter, column.vessel, body, look);
        const VesselGeometry g = vessel_geometry(column.vessel, body);
        const double highest =
            std::min({body.top(), g.fill_y.value_or(body.top()), g.no_load_y.value_or(body.top()), g.interval_upper_y.value_or(body.top())});
        painter.setFont(axis_font(look));
        painter.setPen(look.palette.soft);
        draw_centred(painter, cell, highest - axis_metrics.height() - spacing::half_px, vessel_rated_text(column.vessel));
        if (!column.vessel.delivered_wh && body.height() > axis_metrics.height() * 2.5)
            painter.drawText(body.adjusted(2, 0, -2, 0), Qt::AlignCenter | Qt::TextWordWrap, VesselRow::tr("not known"));
        painter.setFont(name_font(look));
        painter.setPen(look.palette.ink);
        draw_centred(painter, cell, body.bottom() + spacing::grid_px, column.name);
        painter.setFont(look.font);
        painter.setPen(column.vessel.delivered_wh ? look.palette.delivered : look.palette.soft);
        draw_centred(painter, cell, body.bottom() + spacing::grid_px + text_line, vessel_value_text(column));
    }
    painter.restore();
}

VesselRow::VesselRow(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("vessel_row"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&ThemeNotifier::instance(), &ThemeNotifier::themeChanged, this, qOverload<>(&QWidget::update));
    offer_copy(*this);
    speak_charts();
}

void VesselRow::setContent(VesselRowContent content) {
    content_ = std::move(content);
    setAccessibleName(content_.description);
    const int columns = static_cast<int>(content_.columns.size());
    setFocusPolicy(columns > 0 ? Qt::StrongFocus : Qt::NoFocus);
    current_ = std::min(std::max(current_, 0), columns - 1);
    updateGeometry();
    update();
}

QSize VesselRow::sizeHint() const {
    const auto line = fontMetrics().height();
    const int columns = std::max(1, static_cast<int>(content_.columns.size()));
    return {std::max(320, columns * 160), 16 * line};
}

QSize VesselRow::minimumSizeHint() const {
    const auto line = fontMetrics().height();
    const int columns = std::max(1, static_cast<int>(content_.columns.size()));
    return {std::max(160, columns * 6 * line), 8 * line};
}

VesselRowLayout VesselRow::layoutHere() const { return vessel_row_layout(content_, QRectF(rect()).adjusted(8, 8, -8, -8), screen_look(*this)); }

void VesselRow::paintEvent(QPaintEvent* event) {
    QPainter painter(this);
    painter.setClipRect(event->rect());
    const ChartLook look = screen_look(*this);
    paint_vessel_row(painter, content_, QRectF(rect()).adjusted(8, 8, -8, -8), look);
    if (!hasFocus() || !by_keys_ || current_ < 0) return;
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(look.palette.accent, focus_line_px));
    painter.drawRoundedRect(columnPlace(current_).adjusted(focus_line_px, focus_line_px, -focus_line_px, -focus_line_px), spacing::small_radius_px,
                            spacing::small_radius_px);
}

QRectF VesselRow::columnPlace(int column) const {
    const auto layout = layoutHere();
    const auto n = static_cast<std::size_t>(column);
    return column >= 0 && n < layout.cells.size() ? layout.cells[n] : QRectF();
}

int VesselRow::columnAt(const QPointF& place) const {
    const auto layout = layoutHere();
    for (std::size_t n = 0; n < layout.cells.size(); ++n)
        if (layout.cells[n].contains(place)) return static_cast<int>(n);
    return -1;
}

void VesselRow::setCurrent(int column) {
    if (column == current_ || column < 0 || column >= static_cast<int>(content_.columns.size())) return;
    current_ = column;
    const QRect place = columnPlace(column).toAlignedRect();
    for (QWidget* above = parentWidget(); above; above = above->parentWidget())
        if (auto* area = qobject_cast<QScrollArea*>(above)) { // many vessels scroll sideways
            const QPoint middle = mapTo(area->widget(), place.center());
            area->ensureVisible(middle.x(), middle.y(), place.width() / 2, 0);
            break;
        }
    speak_vessel(*this);
    update();
}

void VesselRow::choose(int column) {
    setCurrent(column);
    if (column >= 0) emit vesselClicked(column);
}

void VesselRow::tellFacts(const QPoint& global_place, int column) {
    const VesselColumn& told = content_.columns[static_cast<std::size_t>(column)];
    QToolTip::showText(global_place, (QStringList{told.name} + vessel_facts(told)).join(QLatin1Char('\n')), this);
}

void VesselRow::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton) choose(columnAt(event->position()));
    QWidget::mouseReleaseEvent(event);
}

void VesselRow::keyPressEvent(QKeyEvent* event) {
    by_keys_ = true;
    int to = current_;
    switch (event->key()) {
    case Qt::Key_Left: --to; break;
    case Qt::Key_Right: ++to; break;
    case Qt::Key_Home: to = 0; break;
    case Qt::Key_End: to = static_cast<int>(content_.columns.size()) - 1; break;
    case Qt::Key_Enter:
    case Qt::Key_Return:
    case Qt::Key_Space: choose(current_); return;
    default: QWidget::keyPressEvent(event); return;
    }
    setCurrent(to);
    if (current_ >= 0) tellFacts(mapToGlobal(columnPlace(current_).center().toPoint()), current_);
}

void VesselRow::focusInEvent(QFocusEvent* event) {
    QWidget::focusInEvent(event);
    // A window gives it to its first part too, when it comes to the front.
    const Qt::FocusReason reason = event->reason();
    if (reason == Qt::MouseFocusReason) by_keys_ = false;
    else if (reason != Qt::ActiveWindowFocusReason && reason != Qt::PopupFocusReason) by_keys_ = true;
    speak_vessel(*this);
    update();
}

void VesselRow::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

bool VesselRow::event(QEvent* event) {
    if (event->type() != QEvent::ToolTip) return QWidget::event(event);
    const auto* help = static_cast<QHelpEvent*>(event);
    const int at = columnAt(help->pos());
    if (at < 0) QToolTip::hideText();
    else tellFacts(help->globalPos(), at);
    return true;
}

} // namespace ullage
