// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "chart_content/unit_charts.h"
#include "unit/unit_analysis.h"

#include <QFrame>

#include <vector>

class QBoxLayout;
class QGridLayout;
class QLabel;
class QScrollArea;
class QTabWidget;

namespace ullage {

class LineChart;

/// What all drains of a unit say together: three figures, the fit in a sentence, the next run worth making, ageing, the gauge
/// from run to run, and beside them the curves against load and the gauge's error curves. What is not known stands there with
/// its reason.
class UnitFitView final : public QFrame {
    Q_OBJECT
public:
    explicit UnitFitView(QWidget* parent = nullptr);

    /// `drains`: those of the fit that are used, as the charts show them.
    void setUnit(const UnitAnalysis& analysis, const std::vector<MeasuredDrain>& drains);
    /// Whether the curves stand below the words, where both beside one another have no room.
    void setStacked(bool stacked);

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void changeEvent(QEvent* event) override;

private:
    struct Figure {
        QLabel *name = nullptr, *value = nullptr, *interval = nullptr, *reason = nullptr;
    };
    QWidget* makeWords();
    void fitWords();
    Figure makeFigure(const QString& key, const QString& name, QGridLayout& grid, int row);
    static void fill(const Figure& figure, const Quantity& quantity, const QString& said);

    Figure draw_, energy_, endurance_;
    QLabel *repeats_, *sentence_, *next_, *drift_, *gauge_drift_, *off_chart_, *unused_;
    QBoxLayout* row_ = nullptr;
    QScrollArea* words_area_ = nullptr;
    QTabWidget* tabs_;
    LineChart *usable_chart_, *run_time_chart_, *gauge_chart_;
};

/// "Not taken together with the others: run 7, drain 16 May, 149 W (it was stopped before the cut-off)."; empty where every run
/// is used.
[[nodiscard]] QString unused_runs_text(const UnitFit& fit);

} // namespace ullage
