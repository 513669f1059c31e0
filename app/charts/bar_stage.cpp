// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_stage.h"

#include "charts/painted_item.h"

#include <QBarSet>
#include <QLegend>

#include <algorithm>
#include <cmath>
#include <map>

namespace ullage {

BarStage::BarStage(QChart& chart) : chart_(chart), values_(new QValueAxis), rows_(new QBarCategoryAxis), series_(new QHorizontalStackedBarSeries) {
    strip_chart(chart_);
    chart_.legend()->hide();
    chart_.addSeries(series_);
    chart_.addAxis(values_, Qt::AlignBottom);
    chart_.addAxis(rows_, Qt::AlignLeft);
    series_->attachAxis(values_);
    series_->attachAxis(rows_);
    values_->setVisible(false);
    rows_->setVisible(false);
    behind_ = new PaintedItem(chart_, 0.5, [this](QPainter& painter) { paint_behind_bars(painter, content_, look_, layout_, size_); });
    before_ = new PaintedItem(chart_, 200, [this](QPainter& painter) { paint_before_bars(painter, content_, look_, layout_, size_); });
}

void BarStage::setContent(BarContent content) {
    content_ = std::move(content);
    rebuildBars();
    refresh();
}

void BarStage::setLook(ChartLook look) {
    look_ = std::move(look);
    rebuildBars();
    refresh();
}

void BarStage::setSize(const QSizeF& size) {
    size_ = size;
    refresh();
}

int BarStage::rowAt(const QPointF& place) const {
    if (content_.bars.empty() || place.y() < layout_.plot.top() || place.y() >= layout_.plot.bottom()) return -1;
    const auto row = static_cast<int>((place.y() - layout_.plot.top()) / layout_.row_height);
    return std::min(row, static_cast<int>(content_.bars.size()) - 1);
}

void BarStage::rebuildBars() {
    series_->clear();
    rows_->clear();
    if (content_.bars.empty()) return;
    // A set has one colour, so there is a set for each colour, with nothing where a bar has another. Qt Charts counts
    // rows from the bottom, we from the top.
    std::map<CurveColour, QBarSet*> sets;
    const auto count = static_cast<int>(content_.bars.size());
    QStringList names;
    for (int row = 0; row < count; ++row) names << QString::number(row);
    for (const ChartBar& bar : content_.bars) {
        auto& set = sets[bar.colour];
        if (!set) {
            set = new QBarSet(QString());
            set->append(QList<qreal>(count, 0.0));
            set->setPen(Qt::NoPen);
            set->setBrush(blended(curve_colour(bar.colour, look_.palette), look_.ground, 0.86));
        }
    }
    for (int row = 0; row < count; ++row) {
        const ChartBar& bar = content_.bars[static_cast<std::size_t>(row)];
        if (bar.value && std::isfinite(*bar.value)) sets[bar.colour]->replace(count - 1 - row, *bar.value);
    }
    rows_->append(names);
    for (const auto& [colour, set] : sets) series_->append(set);
    rows_->setRange(names.first(), names.last());
}

void BarStage::refresh() {
    layout_ = bar_layout(content_, look_, size_);
    chart_.resize(size_);
    chart_.setPlotArea(layout_.plot);
    series_->setBarWidth(std::min(bar_share, thickest_bar_px / layout_.row_height));
    values_->setRange(layout_.scale.minimum, layout_.scale.maximum);
    for (PaintedItem* item : {behind_, before_}) {
        item->setSize(size_);
        item->update();
    }
}

} // namespace ullage
