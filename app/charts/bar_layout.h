// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"
#include "charts/chart_look.h"
#include "charts/ticks.h"

#include <QRectF>

#include <vector>

namespace ullage {

/// Where a bar chart puts its parts, in pixels of the chart. Bars lie, so that long names stay readable.
struct BarLayout {
    QRectF plot;
    TickScale scale;
    double row_height = 0;
    bool notes = false;               ///< whether a row has room for a note under the name
    std::vector<QString> value_texts; ///< one a bar

    [[nodiscard]] double pixelX(double value) const;
    /// Middle of the bar at `row`, counted from the top.
    [[nodiscard]] double rowMiddle(std::size_t row) const;
};

/// Share of a row's height that its bar takes.
inline constexpr double bar_share = 0.46;
inline constexpr double thickest_bar_px = 26;

[[nodiscard]] BarLayout bar_layout(const BarContent& content, const ChartLook& look, const QSizeF& size);

} // namespace ullage
