// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_stage.h"

#include "charts/decimation.h"
#include "charts/painted_item.h"

#include <QLegend>
#include <QPen>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

// Qt's dashing walks the whole line at every repaint, which is slow on long ones; nor can dashes be told there.
constexpr std::size_t longest_dashed = 1000;

// Qt Charts outlines each of its lines anew whenever it changes, to find it again below a pointer; it keeps those that have markers.
constexpr std::size_t longest_of_qt = most_markers;

std::vector<std::size_t> every_index(std::size_t count) {
    std::vector<std::size_t> indices(count);
    for (std::size_t n = 0; n < count; ++n) indices[n] = n;
    return indices;
}

} // namespace

LineStage::LineStage(QChart& chart) : chart_(chart), x_axis_(new QValueAxis), y_axis_(new QValueAxis) {
    strip_chart(chart_);
    chart_.legend()->hide();
    // The axes only carry the scale; grid, ticks and labels are ours.
    chart_.addAxis(x_axis_, Qt::AlignBottom);
    chart_.addAxis(y_axis_, Qt::AlignLeft);
    x_axis_->setVisible(false);
    y_axis_->setVisible(false);
    behind_ = new PaintedItem(chart_, 0.5, [this](QPainter& painter) { paint_behind_lines(painter, content_, look_, layout_, size_); });
    curves_ = new PaintedItem(chart_, 100, [this](QPainter& painter) { paintCurves(painter); });
    before_ =
        new PaintedItem(chart_, 200, [this](QPainter& painter) { paint_before_lines(painter, content_, look_, layout_, visible_, state_, size_); });
}

void LineStage::setContent(ChartContent content) {
    content_ = std::move(content);
    state_.hovered.reset();
    refresh();
}

void LineStage::setLook(ChartLook look) {
    look_ = std::move(look);
    refresh();
}

void LineStage::setSize(const QSizeF& size) {
    size_ = size;
    state_.hovered.reset();
    refresh();
}

void LineStage::setWindow(const std::optional<ChartWindow>& window) {
    window_ = window;
    state_.hovered.reset();
    refresh();
}

void LineStage::setHidden(const QString& group, bool hidden) {
    if (hidden) state_.hidden.insert(group);
    else state_.hidden.remove(group);
    state_.hovered.reset();
    refresh();
}

void LineStage::setHighlighted(const QString& series_id, std::set<std::size_t> indices) {
    if (indices.empty()) state_.highlighted.erase(series_id);
    else state_.highlighted[series_id] = std::move(indices);
    before_->update();
}

void LineStage::setHovered(const std::optional<ChartHit>& hit) {
    state_.hovered = hit;
    before_->update();
}

void LineStage::setSelecting(const std::optional<std::pair<double, double>>& pixels) {
    state_.selecting = pixels;
    before_->update();
}

std::optional<ChartHit> LineStage::nearest(const QPointF& place, double reach) const {
    std::optional<ChartHit> best;
    double best_distance = reach * reach;
    for (std::size_t s = 0; s < content_.series.size() && s < visible_.size(); ++s) {
        const ChartSeries& series = content_.series[s];
        if (state_.hidden.contains(group_of(series))) continue;
        for (const std::size_t index : visible_[s]) {
            const ChartPoint& point = series.points[index];
            if (!layout_.axes.map(point.x, point.y)) continue;
            const QPointF at(layout_.pixelX(point.x), layout_.pixelY(point.y));
            if (!layout_.plot.adjusted(-1, -1, 1, 1).contains(at)) continue;
            const QPointF away = at - place;
            const double distance = QPointF::dotProduct(away, away);
            // Of points at one place the later series lies on top.
            if (distance <= best_distance) {
                best_distance = distance;
                best = ChartHit{s, index};
            }
        }
    }
    return best;
}

void LineStage::setInSight(bool in_sight) {
    in_sight_ = in_sight;
    if (in_sight_) catchUp();
}

void LineStage::catchUp() {
    if (!std::exchange(behind_the_layout_, false)) return;
    draw();
}

void LineStage::refresh() {
    layout_ = line_layout(content_, look_, size_, window_, state_.hidden);
    visible_.assign(content_.series.size(), {});
    for (std::size_t n = 0; n < content_.series.size(); ++n)
        if (const ChartSeries& series = content_.series[n]; !state_.hidden.contains(group_of(series)))
            visible_[n] = visible_indices(series.points, layout_.x.minimum, layout_.x.maximum, std::max(1, static_cast<int>(layout_.plot.width())));
    behind_the_layout_ = true;
    if (in_sight_) catchUp();
}

void LineStage::draw() {
    chart_.resize(size_);
    chart_.setPlotArea(layout_.plot);
    const QRectF window = layout_.axisWindow();
    x_axis_->setRange(window.left(), window.right());
    y_axis_->setRange(window.top(), window.bottom());
    std::size_t next_line = 0;
    std::size_t next_area = 0;
    dense_.clear();
    // All or none, so that the curves of a chart lie on one another in their order.
    const bool any_dense = std::ranges::any_of(visible_, [](const auto& indices) { return indices.size() > longest_of_qt; });
    for (std::size_t n = 0; n < content_.series.size(); ++n) {
        const ChartSeries& series = content_.series[n];
        if (state_.hidden.contains(group_of(series))) continue;
        if (series.band_shape == BandShape::area) drawBand(series, next_area);
        if (series.line != CurveLine::none) drawCurve(series, visible_[n], any_dense, next_line);
    }
    for (; next_line < lines_.size(); ++next_line)
        if (lines_[next_line]->count() > 0) lines_[next_line]->clear();
    for (; next_area < areas_.size(); ++next_area) areas_[next_area]->setVisible(false);
    for (PaintedItem* item : {behind_, curves_, before_}) {
        item->setSize(size_);
        item->update();
    }
}

void LineStage::drawCurve(const ChartSeries& series, const std::vector<std::size_t>& indices, bool ourselves, std::size_t& next_line) {
    QPen pen(curve_colour(series.colour, look_.palette), indices.size() > longest_dashed ? 1.4 : 2);
    pen.setJoinStyle(Qt::RoundJoin);
    if (series.line == CurveLine::dashed && indices.size() <= longest_dashed) {
        pen.setDashPattern({2.4, 1.8});
        pen.setCapStyle(Qt::FlatCap);
    }
    std::vector<QList<QPointF>> pieces = curve_pieces(series.points, indices, series.steps, layout_.axes, layout_.axisWindow());
    if (ourselves) {
        const QTransform to_pixels = layout_.toPixels();
        for (QList<QPointF>& piece : pieces)
            for (QPointF& point : piece) point = to_pixels.map(point);
        dense_.push_back({pen, std::move(pieces)});
        return;
    }
    for (const QList<QPointF>& piece : pieces) {
        QLineSeries& line = lineAt(next_line++);
        line.setPen(pen);
        line.replace(piece);
    }
}

void LineStage::paintCurves(QPainter& painter) const {
    if (dense_.empty()) return;
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setClipRect(layout_.plot.adjusted(-0.5, -0.5, 0.5, 0.5), Qt::IntersectClip); // half a line on the plot's edge shows
    for (const DenseCurve& curve : dense_) paint_dense_curve(painter, curve);
    painter.restore();
}

void LineStage::drawBand(const ChartSeries& series, std::size_t& next_area) {
    // Upper and lower edge must have the same points, so the band is thinned by its upper edge and cut by hand.
    std::vector<ChartPoint> upper_edge;
    upper_edge.reserve(series.band.size());
    for (const ChartBandPoint& point : series.band) upper_edge.push_back({point.x, point.upper});
    const auto indices = upper_edge.size() > decimation_limit
                             ? visible_indices(upper_edge, layout_.x.minimum, layout_.x.maximum, std::max(1, static_cast<int>(layout_.plot.width())))
                             : every_index(upper_edge.size());
    const QRectF window = layout_.axisWindow();
    QList<QPointF> upper;
    QList<QPointF> lower;
    std::optional<std::pair<QPointF, QPointF>> before;
    const auto add = [&](QPointF high, QPointF low) {
        high.setY(std::clamp(high.y(), window.top(), window.bottom()));
        low.setY(std::clamp(low.y(), window.top(), window.bottom()));
        upper.append(high);
        lower.append(low);
    };
    const auto cut_at = [&](double x, const QPointF& high, const QPointF& low) {
        const double share = (x - before->first.x()) / (high.x() - before->first.x());
        add(before->first + share * (high - before->first), before->second + share * (low - before->second));
    };
    for (const std::size_t index : indices) {
        const ChartBandPoint& point = series.band[index];
        const auto high = layout_.axes.map(point.x, point.upper);
        const auto low = layout_.axes.map(point.x, point.lower);
        if (!high || !low) continue;
        if (before && high->x() > before->first.x()) {
            for (const double edge : {window.left(), window.right()})
                if (before->first.x() < edge && high->x() > edge) cut_at(edge, *high, *low);
        }
        if (high->x() >= window.left() && high->x() <= window.right()) add(*high, *low);
        before = {*high, *low};
    }
    if (upper.size() < 2) return;
    QAreaSeries& area = areaAt(next_area++);
    QColor fill = curve_colour(series.colour, look_.palette);
    fill.setAlphaF(look_.palette.dark ? 0.24F : 0.18F);
    area.setBrush(fill);
    area.upperSeries()->replace(upper);
    area.lowerSeries()->replace(lower);
    area.setVisible(true);
}

QLineSeries& LineStage::lineAt(std::size_t n) {
    while (lines_.size() <= n) {
        auto* line = new QLineSeries;
        chart_.addSeries(line);
        line->attachAxis(x_axis_);
        line->attachAxis(y_axis_);
        lines_.push_back(line);
    }
    return *lines_[n];
}

QAreaSeries& LineStage::areaAt(std::size_t n) {
    while (areas_.size() <= n) {
        auto* upper = new QLineSeries;
        auto* lower = new QLineSeries;
        auto* area = new QAreaSeries(upper, lower);
        upper->setParent(area);
        lower->setParent(area);
        area->setPen(Qt::NoPen);
        chart_.addSeries(area);
        area->attachAxis(x_axis_);
        area->attachAxis(y_axis_);
        areas_.push_back(area);
    }
    return *areas_[n];
}

} // namespace ullage
