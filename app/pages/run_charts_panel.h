// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "pages/run_charts.h"

#include <QStringList>
#include <QTabWidget>

class QTableView;

namespace ullage {

class BudgetView;
class IntervalsModel;
class LineChart;

/// What a run says as pictures and tables, one a tab: energy, gauge error, load, intervals, budget. Clicking a point or an
/// interval announces its readings; readings chosen elsewhere are highlighted in every chart.
class RunChartsPanel final : public QTabWidget {
    Q_OBJECT
public:
    explicit RunChartsPanel(QWidget* parent = nullptr);

    /// `depths`: known_depths of the run; `forecast` of a running run, else null.
    void setRun(const RunRecord& record, const RunAnalysis& analysis, const std::vector<ReferenceDepth>& depths,
                const RunForecast* forecast = nullptr);
    void setHighlighted(const QStringList& readingUuids);
    /// Width from which the charts can be read beside a table, pixels.
    [[nodiscard]] int neededWidth() const;

signals:
    void readingsChosen(const QStringList& readingUuids);

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Plot {
        LineChart* chart = nullptr;
        RunChart run;
    };
    void addPlot(Plot& plot, const char* name, const QString& title);
    void addIntervals();
    void highlight(Plot& plot);
    void styleIntervals();

    Plot energy_, error_, load_;
    IntervalsModel* intervals_model_;
    QTableView* intervals_view_;
    BudgetView* budget_;
    std::vector<QString> highlighted_;
};

} // namespace ullage
