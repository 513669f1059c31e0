// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to app/charts: this header names Qt Charts.

#include "charts/bar_overlay.h"

#include <QBarCategoryAxis>
#include <QChart>
#include <QHorizontalStackedBarSeries>
#include <QValueAxis>

namespace ullage {

class PaintedItem;

/// Brings a BarContent onto a QChart: Qt Charts draws the bars, we draw everything else. Does not own the chart, which
/// must outlive it.
class BarStage {
public:
    explicit BarStage(QChart& chart);

    void setContent(BarContent content);
    void setLook(ChartLook look);
    void setSize(const QSizeF& size);

    [[nodiscard]] const BarContent& content() const { return content_; }
    [[nodiscard]] const BarLayout& layout() const { return layout_; }
    /// The bar whose row `place` lies in, or -1.
    [[nodiscard]] int rowAt(const QPointF& place) const;

private:
    void rebuildBars();
    void refresh();

    QChart& chart_;
    QValueAxis* values_;
    QBarCategoryAxis* rows_;
    QHorizontalStackedBarSeries* series_;
    PaintedItem* behind_;
    PaintedItem* before_;
    BarContent content_;
    ChartLook look_;
    QSizeF size_{480, 300};
    BarLayout layout_;
};

} // namespace ullage
