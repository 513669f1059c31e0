// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_charts_panel.h"

#include "charts/line_chart.h"
#include "models/intervals_model.h"
#include "pages/run/budget_view.h"
#include "style/roles.h"

#include <QEvent>
#include <QHeaderView>
#include <QTabBar>
#include <QTableView>
#include <QVBoxLayout>

#include <utility>

namespace ullage {

namespace {

constexpr std::size_t most_filled_at_once = 20'000; ///< readings

} // namespace

RunChartsPanel::RunChartsPanel(QWidget* parent)
    : QTabWidget(parent), intervals_model_(new IntervalsModel(this)), intervals_view_(new QTableView(this)), budget_(new BudgetView(this)) {
    setObjectName(QStringLiteral("chartsTabs"));
    setAccessibleName(tr("Charts of the run"));
    setDocumentMode(false);
    setUsesScrollButtons(true);
    tabBar()->setExpanding(false);
    addPlot(energy_, "energyChart", tr("Energy"));
    addPlot(error_, "errorChart", tr("Gauge error"));
    addPlot(load_, "loadChart", tr("Load"));
    addIntervals();
    addTab(budget_, tr("Budget"));
    fill_timer_.setSingleShot(true);
    connect(&fill_timer_, &QTimer::timeout, this, &RunChartsPanel::fillNext);
    connect(this, &QTabWidget::currentChanged, this, [this](int tab) {
        if (stale_.contains(tab)) fillNext();
    });
}

void RunChartsPanel::addPlot(Plot& plot, const char* name, const QString& title) {
    plot.chart = new LineChart(this);
    plot.chart->setObjectName(QLatin1String(name));
    plot.chart->setAccessibleName(title);
    connect(plot.chart, &LineChart::pointClicked, this, [this, &plot](const QString& series_id, int index) {
        if (const ReadingId reading = plot.run.readingAt(series_id, index); !reading.empty()) emit readingsChosen({reading});
    });
    addTab(plot.chart, title);
}

void RunChartsPanel::addIntervals() {
    intervals_view_->setObjectName(QStringLiteral("intervalsView"));
    intervals_view_->setAccessibleName(tr("Intervals between readings"));
    intervals_view_->setModel(intervals_model_);
    intervals_view_->setTabKeyNavigation(false);
    intervals_view_->setSelectionMode(QAbstractItemView::SingleSelection);
    styleIntervals();
    connect(intervals_view_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& row) {
        if (row.isValid()) emit readingsChosen(row.data(IntervalsModel::ReadingsRole).value<std::vector<ReadingId>>());
    });
    addTab(intervals_view_, tr("Intervals"));
}

void RunChartsPanel::styleIntervals() {
    make_table(*intervals_view_);
    intervals_view_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    intervals_view_->horizontalHeader()->setSectionResizeMode(IntervalsModel::SpanColumn, QHeaderView::Stretch);
}

void RunChartsPanel::setRun(std::function<ChartedRun()> charted) {
    charted_ = std::move(charted);
    const ChartedRun now = charted_();
    if (!now.record) return;
    for (int tab = 0; tab < count(); ++tab) stale_.insert(tab);
    if (now.record->readings.size() > most_filled_at_once) return fill_timer_.start();
    while (!stale_.empty()) fill(*stale_.begin(), now);
}

void RunChartsPanel::countDown() {
    if (!charted_ || !isVisible()) return;
    const ChartedRun now = charted_();
    // A run of many readings is drawn anew when one comes.
    if (!now.record || now.forecast == nullptr || now.record->readings.size() > most_filled_at_once) return;
    const int energy = indexOf(energy_.chart);
    if (energy >= 0 && !stale_.contains(energy)) fill(energy, now);
}

void RunChartsPanel::fillNext() {
    if (stale_.empty()) return;
    const ChartedRun now = charted_();
    if (!now.record) return;
    fill(stale_.contains(currentIndex()) ? currentIndex() : *stale_.begin(), now);
    if (!stale_.empty()) fill_timer_.start();
}

void RunChartsPanel::fill(int tab, const ChartedRun& run) {
    stale_.erase(tab);
    const auto draw = [&](Plot& plot, RunChart chart) {
        plot.run = std::move(chart);
        plot.chart->setContent(plot.run.content);
        highlight(plot);
    };
    const QWidget* page = widget(tab);
    if (page == energy_.chart) draw(energy_, energy_chart(*run.record, *run.analysis, run.forecast, run.accounts, run.now_ms));
    else if (page == error_.chart)
        draw(error_, gauge_error_chart(*run.record, *run.analysis, run.depths, expected_whole(*run.record, run.analysis->energy, run.forecast)));
    else if (page == load_.chart) draw(load_, load_chart(*run.record, *run.analysis));
    else if (page == intervals_view_) intervals_model_->setRun(*run.record, *run.analysis);
    else if (page == budget_) budget_->setEnergy(run.analysis->energy);
}

void RunChartsPanel::setHighlighted(const std::vector<ReadingId>& readingUuids) {
    highlighted_ = readingUuids;
    for (Plot* plot : {&energy_, &error_, &load_}) highlight(*plot);
}

int RunChartsPanel::neededWidth() const { return QFontMetrics(text_font(TextSize::body)).averageCharWidth() * 54; }

void RunChartsPanel::highlight(Plot& plot) {
    for (const auto& [series_id, readings] : plot.run.readings) plot.chart->setHighlighted(series_id, plot.run.pointsOf(series_id, highlighted_));
}

void RunChartsPanel::changeEvent(QEvent* event) {
    QTabWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange && count() > 0) styleIntervals();
}

} // namespace ullage
