// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_view.h"

#include <QApplication>
#include <QContextMenuEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double reach_px = 14;    // how near a point the pointer must be
constexpr double wheel_step = 1.2; // zoom for one notch

} // namespace

LineView::LineView(QWidget* parent) : QChartView(new QChart, parent), stage_(*chart()) {
    setObjectName(QStringLiteral("line_view"));
    setFrameShape(QFrame::NoFrame);
    setRenderHint(QPainter::Antialiasing);
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    viewport()->setAutoFillBackground(false);
    setViewportUpdateMode(QGraphicsView::FullViewportUpdate);
    stage_.setInSight(isVisible());
}

void LineView::applyWindow(const std::optional<ChartWindow>& window) {
    stage_.setWindow(window);
    emit spanChanged(stage_.layout().x.minimum, stage_.layout().x.maximum);
}

void LineView::toggle(const QString& group) {
    const bool hide = !stage_.state().hidden.contains(group);
    stage_.setHidden(group, hide);
    emit toggled(group, !hide);
}

void LineView::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    stage_.setSize(QSizeF(viewport()->size()));
}

void LineView::showEvent(QShowEvent* event) {
    stage_.setInSight(true);
    QChartView::showEvent(event);
}

void LineView::hideEvent(QHideEvent* event) {
    stage_.setInSight(false);
    QChartView::hideEvent(event);
}

void LineView::paintEvent(QPaintEvent* event) {
    stage_.catchUp();
    QChartView::paintEvent(event);
}

void LineView::zoom(double factor, double share, double centre) {
    const LineLayout& layout = stage_.layout();
    if (layout.empty) return;
    applyWindow(zoomed_window({layout.x.minimum, layout.x.maximum}, layout.whole, centre, factor, share, layout.axes.x_logarithmic));
}

void LineView::wheelEvent(QWheelEvent* event) {
    const double notches = event->angleDelta().y() / 120.0;
    const bool out_of_whole = notches < 0 && !stage_.window();
    if (notches == 0 || out_of_whole || stage_.layout().empty) {
        event->ignore(); // lets a page around the chart scroll
        return;
    }
    const double x = std::clamp(event->position().x(), stage_.layout().plot.left(), stage_.layout().plot.right());
    zoom(std::pow(wheel_step, -notches), 0, stage_.layout().valueX(x));
    event->accept();
}

void LineView::mousePressEvent(QMouseEvent* event) {
    event->accept();
    pressed_at_ = event->position();
    window_at_press_ = {stage_.layout().x.minimum, stage_.layout().x.maximum};
    const bool left = event->button() == Qt::LeftButton;
    if (event->button() == Qt::MiddleButton || (left && event->modifiers().testFlag(Qt::ShiftModifier))) drag_ = Drag::pan;
    else if (left) drag_ = Drag::press;
}

void LineView::mouseMoveEvent(QMouseEvent* event) {
    event->accept();
    const QPointF place = event->position();
    const LineLayout& layout = stage_.layout();
    if (drag_ == Drag::press && !layout.empty && layout.plot.contains(pressed_at_) &&
        std::fabs(place.x() - pressed_at_.x()) >= QApplication::startDragDistance())
        drag_ = Drag::select;
    if (drag_ == Drag::select) {
        stage_.setHovered(std::nullopt);
        stage_.setSelecting(std::pair(pressed_at_.x(), std::clamp(place.x(), layout.plot.left(), layout.plot.right())));
    } else if (drag_ == Drag::pan && stage_.window()) {
        const double share = (pressed_at_.x() - place.x()) / layout.plot.width();
        applyWindow(zoomed_window(window_at_press_, layout.whole, window_at_press_.from, 1, share, layout.axes.x_logarithmic));
    } else if (drag_ == Drag::none) {
        hover(place);
    }
}

void LineView::mouseReleaseEvent(QMouseEvent* event) {
    event->accept();
    const Drag drag = drag_;
    drag_ = Drag::none;
    if (drag == Drag::select && stage_.state().selecting) {
        const auto [from, to] = std::minmax({stage_.state().selecting->first, stage_.state().selecting->second});
        stage_.setSelecting(std::nullopt);
        const LineLayout& layout = stage_.layout();
        const ChartWindow wanted{layout.valueX(from), layout.valueX(to)};
        if (to - from >= QApplication::startDragDistance())
            applyWindow(zoomed_window(wanted, layout.whole, wanted.from, 1, 0, layout.axes.x_logarithmic));
        return;
    }
    if (drag != Drag::press || event->button() != Qt::LeftButton) return;
    if (const ChartLabel* label = labelAt(event->position()); label && !label->group.isEmpty()) {
        toggle(QString(label->group)); // a copy: the layout is rebuilt meanwhile
        return;
    }
    if (const auto hit = stage_.nearest(event->position(), reach_px))
        emit clicked(stage_.content().series[hit->series].id, static_cast<int>(hit->index));
}

void LineView::mouseDoubleClickEvent(QMouseEvent* event) {
    event->accept();
    drag_ = Drag::none;
    if (event->button() == Qt::LeftButton) applyWindow(std::nullopt);
}

void LineView::contextMenuEvent(QContextMenuEvent* event) { event->ignore(); }

void LineView::leaveEvent(QEvent* event) {
    if (stage_.state().hovered) {
        stage_.setHovered(std::nullopt);
        emit hovered(QString(), -1);
    }
    QChartView::leaveEvent(event);
}

void LineView::keyPressEvent(QKeyEvent* event) {
    const LineLayout& layout = stage_.layout();
    const double middle = layout.valueX(layout.plot.center().x());
    switch (event->key()) {
    case Qt::Key_Plus:
    case Qt::Key_Equal: zoom(1 / wheel_step, 0, middle); break;
    case Qt::Key_Minus: zoom(wheel_step, 0, middle); break;
    case Qt::Key_Left: zoom(1, -0.1, middle); break;
    case Qt::Key_Right: zoom(1, 0.1, middle); break;
    case Qt::Key_Home: applyWindow(std::nullopt); break;
    default: event->ignore(); return;
    }
    event->accept();
}

void LineView::hover(const QPointF& place) {
    const ChartLabel* label = labelAt(place);
    setCursor(label && !label->group.isEmpty() ? Qt::PointingHandCursor : Qt::ArrowCursor);
    const auto hit = label ? std::nullopt : stage_.nearest(place, reach_px);
    const auto& before = stage_.state().hovered;
    const bool same = hit.has_value() == before.has_value() && (!hit || (hit->series == before->series && hit->index == before->index));
    if (same) return;
    stage_.setHovered(hit);
    if (hit) emit hovered(stage_.content().series[hit->series].id, static_cast<int>(hit->index));
    else emit hovered(QString(), -1);
}

const ChartLabel* LineView::labelAt(const QPointF& place) const {
    for (const ChartLabel& label : stage_.layout().labels)
        if (label.place.adjusted(-3, 0, 3, 0).contains(place)) return &label;
    return nullptr;
}

} // namespace ullage
