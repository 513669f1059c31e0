// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to app/charts: this header names Qt Charts.

#include "charts/dense_curve.h"
#include "charts/line_layout.h"
#include "charts/line_overlay.h"

#include <QAreaSeries>
#include <QChart>
#include <QLineSeries>
#include <QValueAxis>

#include <functional>
#include <optional>
#include <vector>

namespace ullage {

class PaintedItem;

/// Brings a ChartContent onto a QChart: Qt Charts draws the bands and the curves of few points, we draw everything else and
/// decide every place, so that both agree at any size. Does not own the chart, which must outlive it.
class LineStage {
public:
    explicit LineStage(QChart& chart);

    void setContent(ChartContent content);
    void setLook(ChartLook look);
    void setSize(const QSizeF& size);
    void setWindow(const std::optional<ChartWindow>& window);
    /// While nobody sees the chart, changes only lay out; curves and axes follow once it is in sight. In sight at first.
    void setInSight(bool in_sight);
    /// Brings curves and axes up to date where a change out of sight left them behind.
    void catchUp();

    [[nodiscard]] const ChartContent& content() const { return content_; }
    [[nodiscard]] const LineLayout& layout() const { return layout_; }
    [[nodiscard]] const std::optional<ChartWindow>& window() const { return window_; }
    [[nodiscard]] const LineState& state() const { return state_; }
    [[nodiscard]] const VisibleIndices& visible() const { return visible_; }

    void setHidden(const QString& group, bool hidden);
    void setHighlighted(const QString& series_id, std::set<std::size_t> indices);
    void setHovered(const std::optional<ChartHit>& hit);
    void setSelecting(const std::optional<std::pair<double, double>>& pixels);

    /// The point in view nearest to `place`, at most `reach` pixels away.
    [[nodiscard]] std::optional<ChartHit> nearest(const QPointF& place, double reach) const;

private:
    void refresh();
    void draw();
    void drawCurve(const ChartSeries& series, const std::vector<std::size_t>& indices, bool ourselves, std::size_t& next_line);
    void paintCurves(QPainter& painter) const;
    void drawBand(const ChartSeries& series, std::size_t& next_area);
    QLineSeries& lineAt(std::size_t n);
    QAreaSeries& areaAt(std::size_t n);

    QChart& chart_;
    QValueAxis* x_axis_;
    QValueAxis* y_axis_;
    PaintedItem* behind_;
    PaintedItem* curves_;
    PaintedItem* before_;
    std::vector<DenseCurve> dense_; ///< curves that we draw ourselves
    std::vector<QLineSeries*> lines_;
    std::vector<QAreaSeries*> areas_;
    ChartContent content_;
    ChartLook look_;
    QSizeF size_{640, 400};
    std::optional<ChartWindow> window_;
    LineLayout layout_;
    LineState state_;
    VisibleIndices visible_;
    bool in_sight_ = true;
    bool behind_the_layout_ = false;
};

} // namespace ullage
