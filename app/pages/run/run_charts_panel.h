// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "chart_content/run_charts.h"
#include "pages/run/charted_run.h"

#include <QStringList>
#include <QTabWidget>
#include <QTimer>

#include <functional>
#include <set>

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

    /// Draws the run that `charted` gives; nothing where it gives no record. The tabs of a long run are drawn in turns of their own, that in sight
    /// first, for which it is asked again.
    void setRun(std::function<ChartedRun()> charted);
    /// What is to come of a running run counts from now on.
    void countDown();
    void setHighlighted(const std::vector<ReadingId>& readingUuids);
    /// Width from which the charts can be read beside a table, pixels.
    [[nodiscard]] int neededWidth() const;

signals:
    void readingsChosen(const std::vector<ReadingId>& readingUuids);

protected:
    void changeEvent(QEvent* event) override;

private:
    struct Plot {
        LineChart* chart = nullptr;
        RunChart run;
    };
    void addPlot(Plot& plot, const char* name, const QString& title);
    void addIntervals();
    void fill(int tab, const ChartedRun& run);
    void fillNext();
    void highlight(Plot& plot);
    void styleIntervals();

    Plot energy_, error_, load_;
    IntervalsModel* intervals_model_;
    QTableView* intervals_view_;
    BudgetView* budget_;
    std::vector<ReadingId> highlighted_;
    std::function<ChartedRun()> charted_;
    std::set<int> stale_; ///< tabs that still show what was before
    QTimer fill_timer_;
};

} // namespace ullage
