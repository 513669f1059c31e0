// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

// Private to app/charts: this header names Qt Charts.

#include "charts/bar_stage.h"

#include <QChartView>

namespace ullage {

/// The view inside a BarChart. It handles every mouse event itself and passes none to the scene, see LineView.
class BarView : public QChartView {
    Q_OBJECT

public:
    explicit BarView(QWidget* parent);

    [[nodiscard]] BarStage& stage() { return stage_; }
    [[nodiscard]] const BarStage& stage() const { return stage_; }

signals:
    void clicked(int row);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void wheelEvent(QWheelEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void mouseDoubleClickEvent(QMouseEvent* event) override;
    void contextMenuEvent(QContextMenuEvent* event) override; ///< left to the widget around
    bool viewportEvent(QEvent* event) override;

private:
    BarStage stage_;
};

} // namespace ullage
