// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <QRectF>
#include <QWidget>

#include <memory>
#include <optional>
#include <utility>
#include <vector>

namespace ullage {

class LineView;

/// Curves over one x axis, following the theme and the widget's font.
///
/// Pointer: hovering over a point shows its reading; a click on it is announced; a click on a curve's name hides or
/// shows the curve; the wheel zooms in x around the pointer; dragging selects a span of x to zoom to; dragging with
/// Shift or the middle button moves a zoomed view; a double click shows all again. Keys: + and - zoom, Left and Right
/// move, Home shows all.
class LineChart : public QWidget {
    Q_OBJECT

public:
    explicit LineChart(QWidget* parent = nullptr);
    ~LineChart() override;

    /// Replaces everything shown. A zoomed view, hidden curves and highlights stay.
    void setContent(ChartContent content);
    [[nodiscard]] const ChartContent& content() const;

    /// Marks points of the series `series_id` (of any table selection, say); an empty list removes the marks. Indices
    /// out of range are ignored.
    void setHighlighted(const QString& series_id, const std::vector<int>& indices);

    /// Shows or hides all series of `group` (a series' group, or its id where it has none).
    void setGroupVisible(const QString& group, bool visible);
    [[nodiscard]] bool isGroupVisible(const QString& group) const;

    /// Zooms to [from, to] of x, cut to the data's span.
    void zoomTo(double from, double to);
    void resetZoom();
    /// The span of x in view.
    [[nodiscard]] std::pair<double, double> visibleSpan() const;

    /// Pixel of a value, in this widget's coordinates.
    [[nodiscard]] QPointF pixelOf(double x, double y) const;
    /// The plot without axes and names, in this widget's coordinates.
    [[nodiscard]] QRectF plotArea() const;
    /// Where the name of `group` stands; empty when it is not shown.
    [[nodiscard]] QRectF labelPlace(const QString& group) const;
    /// Text of the readout now shown, or empty.
    [[nodiscard]] QString readout() const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void pointClicked(const QString& series_id, int index);
    /// The pointer came over a point, or left the points (empty id, index -1).
    void pointHovered(const QString& series_id, int index);
    void visibleSpanChanged(double from, double to);
    void groupVisibilityChanged(const QString& group, bool visible);

protected:
    void changeEvent(QEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    /// The view with all that was set so far, made when it is first wanted: charts of tabs that nobody looks at cost their content alone.
    LineView& view() const;

    mutable LineView* view_ = nullptr;
    ChartContent waiting_; ///< until there is a view
};

} // namespace ullage
