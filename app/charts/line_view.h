// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to app/charts: this header names Qt Charts.

#include "charts/line_stage.h"

#include <QChartView>

#include <optional>

namespace ullage {

/// The view inside a LineChart: pointer and keys. It handles every mouse event itself and passes none to the scene:
/// Qt Charts 6.4.2 crashes on a click where no item of the chart lies.
class LineView : public QChartView {
    Q_OBJECT

public:
    explicit LineView(QWidget* parent);

    [[nodiscard]] LineStage& stage() { return stage_; }
    [[nodiscard]] const LineStage& stage() const { return stage_; }
    void applyWindow(const std::optional<ChartWindow>& window);
    void toggle(const QString& group);

signals:
    void clicked(const QString& series_id, int index);
    void hovered(const QString& series_id, int index);
    void spanChanged(double from, double to);
    void toggled(const QString& group, bool visible);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void hideEvent(QHideEvent* event) override;
    void paintEvent(QPaintEvent* event) override; ///< of a view painted without ever being shown too
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override; ///< left to the widget around
    void leaveEvent(QEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    enum class Drag { none, press, select, pan };

    void zoom(double factor, double share, double centre);
    void hover(const QPointF& place);
    [[nodiscard]] const ChartLabel* labelAt(const QPointF& place) const;

    LineStage stage_;
    Drag drag_ = Drag::none;
    QPointF pressed_at_;
    ChartWindow window_at_press_;
};

} // namespace ullage
