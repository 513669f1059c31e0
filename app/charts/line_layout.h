// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "charts/chart_look.h"
#include "charts/polyline.h"
#include "charts/ticks.h"

#include <QRectF>
#include <QSet>
#include <QTransform>

#include <optional>
#include <vector>

namespace ullage {

/// The span of x in view.
struct ChartWindow {
    double from = 0;
    double to = 1;
};

/// A name beside the plot.
struct ChartLabel {
    QString group; ///< of the series it switches; empty for a line's or band's name
    QString text;  ///< shortened to its place
    QRectF place;
    QPointF anchor; ///< end of the curve or line that it names
    QColor colour;
    bool hidden = false; ///< its series is switched off
};

/// Where a line chart puts its parts, in pixels of the chart. Pure geometry.
struct LineLayout {
    QRectF plot;
    TickScale x;
    TickScale y;
    AxisMap axes;
    ChartWindow whole; ///< the span of x without zoom
    std::vector<ChartLabel> labels;
    bool empty = true; ///< no series has a point

    /// Pixel of a value; values that have no place on a logarithmic axis go to its lower end.
    [[nodiscard]] double pixelX(double x_value) const;
    [[nodiscard]] double pixelY(double y_value) const;
    /// Value at a pixel.
    [[nodiscard]] double valueX(double pixel) const;
    /// The plot's span in axis coordinates, y upwards.
    [[nodiscard]] QRectF axisWindow() const;
    /// From axis coordinates to pixels.
    [[nodiscard]] QTransform toPixels() const;
};

/// The group that `series` is shown and hidden with.
[[nodiscard]] const QString& group_of(const ChartSeries& series);

/// Lays `content` out in `size`. `window`: the zoomed span of x, or absent for all. `hidden`: groups switched off;
/// they keep their labels and do not count for the scales. Labels beside the plot never overlap one another as long
/// as the plot is high enough for all of them.
[[nodiscard]] LineLayout line_layout(const ChartContent& content, const ChartLook& look, const QSizeF& size, const std::optional<ChartWindow>& window,
                                     const QSet<QString>& hidden);

/// A span moved by `share` of its width, or scaled by `factor` around `centre`, on an axis that may be logarithmic;
/// kept within `whole` and not narrower than 1/10000 of it. Absent when the result is the whole.
[[nodiscard]] std::optional<ChartWindow> zoomed_window(const ChartWindow& from, const ChartWindow& whole, double centre, double factor, double share,
                                                       bool logarithmic);

} // namespace ullage
