// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "charts/chart_data.h"

#include <QRectF>
#include <QWidget>

namespace ullage {

class BarView;

/// Lying bars with asymmetric error bars before an expectation band, following the theme and the widget's font. A
/// tooltip carries each bar's full text where the row had to shorten it.
class BarChart : public QWidget {
    Q_OBJECT

public:
    explicit BarChart(QWidget* parent = nullptr);
    ~BarChart() override;

    void setContent(BarContent content);
    [[nodiscard]] const BarContent& content() const;

    /// The row of the bar at `row`, in this widget's coordinates. Precondition: 0 <= row < number of bars.
    [[nodiscard]] QRectF rowPlace(int row) const;

    [[nodiscard]] QSize sizeHint() const override;
    [[nodiscard]] QSize minimumSizeHint() const override;

signals:
    void barClicked(int row);

protected:
    void changeEvent(QEvent* event) override;

private:
    BarView* view_;
};

} // namespace ullage
