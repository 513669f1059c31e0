// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "models/unit_runs_model.h"
#include "pages/unit/unit_fit_view.h"
#include "pages/unit/unit_page.h"

#include <QAbstractItemModelTester>
#include <QLabel>
#include <QTabWidget>
#include <QTableView>

#include <algorithm>

namespace ullage::test {
namespace {

class UnitPageTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        Unit made;
        made.name = "Osk 1200";
        made.rated_energy_wh = 1200;
        made.rated_output_w = 1000;
        unit = document.addUnit(made).value();
        Meter bench;
        bench.name = "Socket meter A";
        bench.step_wh = 1;
        bench.limit_percent = 1;
        meter = document.addMeter(bench).value();
        page_ = find<UnitPage>("unitPage");
        page_->showUnit(unit.uuid);
    }

    ullage::Run drain(double delivered_wh, int hours, RunEnd end = RunEnd::cut_off_seen) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.meter_uuid = meter.uuid;
        run.started_full = true;
        run = document.addRun(run).value();
        for (int part = 0; part <= 4; ++part) {
            ReadingValues values;
            values.time_ms = clock.now_ms();
            values.gauge_percent = 100 - 25 * part;
            values.register_wh = delivered_wh * part / 4;
            EXPECT_TRUE(document.record(run.uuid, values));
            clock.advance_hours(hours / 4.0);
        }
        run.end = end;
        if (end == RunEnd::cut_off_seen) run.end_noticed_within_min = 0;
        EXPECT_TRUE(document.updateRun(run));
        clock.advance_hours(24);
        return run;
    }

    /// A full drain read at each twentieth of its depth; half way the gauge shows `bend_pt` more than a straight one.
    void read_often(double delivered_wh, int minutes, int bend_pt) {
        ullage::Run run;
        run.unit_uuid = unit.uuid;
        run.meter_uuid = meter.uuid;
        run.started_full = true;
        run = document.addRun(run).value();
        for (int part = 0; part <= 20; ++part) {
            ReadingValues values;
            values.time_ms = clock.now_ms();
            values.gauge_percent = 100 - 5 * part + bend_pt * part * (20 - part) / 100;
            values.register_wh = delivered_wh * part / 20;
            EXPECT_TRUE(document.record(run.uuid, values));
            clock.advance_ms(static_cast<UtcMs>(minutes) * 3000);
        }
        run.end = RunEnd::cut_off_seen;
        run.end_noticed_within_min = 0;
        EXPECT_TRUE(document.updateRun(run));
        clock.advance_hours(24 * 30);
    }

    [[nodiscard]] QString text(const char* name) const {
        const auto* label = page_->findChild<QLabel*>(QString::fromLatin1(name));
        return label ? label->text() : QStringLiteral("no such label");
    }
    [[nodiscard]] const ChartContent& chart(const char* name) const { return page_->findChild<LineChart*>(QString::fromLatin1(name))->content(); }
    [[nodiscard]] static const ChartSeries* series(const ChartContent& content, const char* id) {
        const auto found = std::ranges::find(content.series, QString::fromLatin1(id), &ChartSeries::id);
        return found == content.series.end() ? nullptr : &*found;
    }

    Unit unit;
    Meter meter;
    UnitPage* page_ = nullptr;
};

TEST_F(UnitPageTest, one_drain_shows_its_point_and_why_nothing_more_is_known) {
    drain(800, 16);
    EXPECT_EQ(text("noLoadDrawLabel"), QStringLiteral("not known"));
    EXPECT_TRUE(text("fitSentenceLabel").contains(QStringLiteral("there is one drain only, at 50 W"))) << text("fitSentenceLabel").toStdString();
    EXPECT_TRUE(text("nextRunLabel").startsWith(QStringLiteral("A drain near "))) << text("nextRunLabel").toStdString();
    const auto& content = chart("usableChart");
    ASSERT_EQ(content.series.size(), 1U);
    const auto* measured = series(content, "measured");
    ASSERT_NE(measured, nullptr);
    ASSERT_EQ(measured->points.size(), 1U);
    EXPECT_NEAR(measured->points[0].x, 50, 1e-6);
    EXPECT_NEAR(measured->points[0].y, 100 * 800.0 / 1200, 1e-9);
    EXPECT_EQ(measured->band_shape, BandShape::bars);
    EXPECT_EQ(measured->band.size(), 1U);
}

TEST_F(UnitPageTest, two_drains_give_the_draw_and_curves_that_follow_each_change) {
    drain(800, 16);
    const auto run = drain(950, 4);
    const auto& fit = document.unitFit(unit.uuid);
    ASSERT_TRUE(fit.no_load_draw_w.value);
    EXPECT_EQ(text("noLoadDrawLabel") + QLatin1Char(' ') + text("noLoadDrawIntervalLabel"),
              QString::fromStdString(quantity_text(fit.no_load_draw_w, 1)));
    EXPECT_EQ(text("fitSentenceLabel").toStdString(), fit.sentence);
    for (const char* name : {"usableChart", "runTimeChart"}) {
        const auto& content = chart(name);
        EXPECT_TRUE(content.x.logarithmic);
        for (const auto& [id, line] : {std::pair{"below", CurveLine::dashed}, {"within", CurveLine::solid}, {"above", CurveLine::dashed}}) {
            const auto* part = series(content, id);
            ASSERT_NE(part, nullptr) << name << ' ' << id;
            EXPECT_EQ(part->line, line);
            EXPECT_EQ(part->band.size(), part->points.size());
        }
        EXPECT_NEAR(series(content, "within")->points.front().x, 50, 1e-6);
        EXPECT_NEAR(series(content, "within")->points.back().x, 237.5, 1e-6);
        EXPECT_NEAR(series(content, "above")->points.back().x, 1000, 1e-6);
        EXPECT_EQ(series(content, "measured")->points.size(), 2U);
    }
    ASSERT_EQ(chart("usableChart").horizontal_bands.size(), 1U);
    EXPECT_EQ(chart("usableChart").horizontal_bands[0].lower, 75);
    EXPECT_EQ(chart("usableChart").horizontal_bands[0].upper, 80);
    ASSERT_TRUE(document.withdrawRun(run.uuid));
    EXPECT_EQ(text("noLoadDrawLabel"), QStringLiteral("not known"));
    EXPECT_EQ(chart("runTimeChart").series.size(), 1U);
}

TEST_F(UnitPageTest, a_gauge_that_moves_from_run_to_run_is_told_and_drawn) {
    read_often(1000, 960, 0);
    EXPECT_TRUE(text("gaugeDriftLabel").contains(QStringLiteral("it takes two drains"))) << text("gaugeDriftLabel").toStdString();
    EXPECT_EQ(chart("gaugeDriftChart").series.size(), 1U);
    read_often(1000, 960, 12);
    EXPECT_TRUE(text("gaugeDriftLabel").startsWith(QStringLiteral("The gauge's curve moves by +"))) << text("gaugeDriftLabel").toStdString();
    EXPECT_TRUE(text("gaugeDriftLabel").contains(QStringLiteral("Wh per gauge point from run 1 to run 2: 10.00 to 10.00")))
        << text("gaugeDriftLabel").toStdString();
    const auto& content = chart("gaugeDriftChart");
    const auto* earlier = series(content, "earlier");
    const auto* later = series(content, "later");
    ASSERT_NE(earlier, nullptr);
    ASSERT_NE(later, nullptr);
    EXPECT_EQ(earlier->name, QStringLiteral("run 1"));
    EXPECT_NE(earlier->marker, later->marker);
    EXPECT_EQ(later->band.size(), later->points.size());
    ASSERT_EQ(content.vertical_lines.size(), 1U);
    EXPECT_NEAR(content.vertical_lines[0].value, 50, 6);
}

TEST_F(UnitPageTest, a_no_load_drain_has_no_place_on_the_charts_and_is_named) {
    drain(800, 16);
    EXPECT_TRUE(text("offChartLabel").isEmpty());
    ullage::Run idle;
    idle.unit_uuid = unit.uuid;
    idle.kind = RunKind::no_load_drain;
    idle.started_full = true;
    idle = document.addRun(idle).value();
    ReadingValues values;
    values.time_ms = clock.now_ms();
    values.gauge_percent = 100;
    EXPECT_TRUE(document.record(idle.uuid, values));
    clock.advance_hours(90);
    values.time_ms = clock.now_ms();
    values.gauge_percent = 0;
    EXPECT_TRUE(document.record(idle.uuid, values));
    idle.end = RunEnd::cut_off_seen;
    EXPECT_TRUE(document.updateRun(idle));
    EXPECT_TRUE(text("offChartLabel").contains(QStringLiteral("run 2, no-load drain"))) << text("offChartLabel").toStdString();
}

TEST_F(UnitPageTest, a_run_that_is_not_used_is_named_with_its_reason) {
    drain(800, 16);
    EXPECT_TRUE(text("unusedRunsLabel").isEmpty());
    drain(300, 4, RunEnd::stopped_by_tester);
    EXPECT_TRUE(text("unusedRunsLabel").contains(QStringLiteral("run 2, "))) << text("unusedRunsLabel").toStdString();
    EXPECT_TRUE(text("unusedRunsLabel").contains(QStringLiteral("stopped before the cut-off")));
    auto* model = find<QTableView>("runsTable")->model();
    const QAbstractItemModelTester tester(model, QAbstractItemModelTester::FailureReportingMode::Fatal);
    EXPECT_TRUE(model->index(1, UnitRunsModel::RunColumn).data(Qt::ToolTipRole).toString().contains(QStringLiteral("stopped before the cut-off")));
    EXPECT_FALSE(model->index(0, UnitRunsModel::RunColumn).data(Qt::ToolTipRole).toString().contains(QStringLiteral("Not taken")));
}

TEST_F(UnitPageTest, a_unit_without_runs_or_rated_energy_says_what_to_do) {
    EXPECT_TRUE(chart("usableChart").series.empty());
    EXPECT_FALSE(chart("usableChart").empty_text.isEmpty());
    EXPECT_TRUE(text("nextRunLabel").contains(QStringLiteral("first")));
    drain(800, 16);
    auto bare = unit;
    bare.rated_energy_wh.reset();
    ASSERT_TRUE(document.updateUnit(bare));
    const auto* measured = series(chart("usableChart"), "measured");
    ASSERT_NE(measured, nullptr);
    EXPECT_NEAR(measured->points[0].y, 800, 1e-9);
    EXPECT_EQ(find<QTabWidget>("unitChartsTabs")->tabText(0), QStringLiteral("Deliverable energy"));
}

} // namespace
} // namespace ullage::test
