// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/run_charts.h"
#include "forecast/near_moment.h"
#include "models/readings_model.h"
#include "pages/parts/run_figures.h"
#include "pages/parts/run_head.h"
#include "pages/run/findings_items.h"
#include "run_page_fixture.h"
#include "style/numbers.h"

#include <algorithm>
#include <cmath>
#include <tuple>

namespace ullage {

using test::RunPageTest;

namespace {

const StripFigure& figure(const std::vector<StripFigure>& figures, const char* key) {
    return *std::ranges::find(figures, QLatin1String(key), &StripFigure::key);
}

const ChartSeries* series(const RunChart& chart, const char* id) {
    const auto found = std::ranges::find(chart.content.series, QLatin1String(id), &ChartSeries::id);
    return found == chart.content.series.end() ? nullptr : &*found;
}

} // namespace

TEST_F(RunPageTest, the_strip_tells_the_state_of_a_running_drain) {
    recordSample();
    clock.advance_hours(0.2);
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms());
    EXPECT_EQ(figure(figures, "elapsed").value, QStringLiteral("14 h 48"));
    EXPECT_EQ(figure(figures, "gauge").value, QStringLiteral("18"));
    EXPECT_EQ(figure(figures, "delivered").value.left(2), QStringLiteral("93")); // 936 Wh, rounded to the interval
    EXPECT_TRUE(figure(figures, "delivered").rest.startsWith(QChar(0x00B1))) << figure(figures, "delivered").rest.toStdString();
    EXPECT_EQ(figure(figures, "load").value, QStringLiteral("64"));
    EXPECT_EQ(figure(figures, "load").rest, QStringLiteral("W, 65 W"));
    EXPECT_EQ(figure(figures, "age").value, QStringLiteral("12"));
    EXPECT_EQ(figure(figures, "age").rest, QStringLiteral("min ago"));
    EXPECT_TRUE(figure(figures, "usable").label.contains(QStringLiteral("projected")));
}

TEST_F(RunPageTest, the_strip_of_a_running_drain_tells_when_it_should_end) {
    recordSample();
    clock.advance_hours(0.2);
    const RunForecast& forecast = document.forecast(run.uuid, clock.now_ms());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&forecast, {}});
    ASSERT_EQ(figures.size(), 6U);
    const StripFigure& cut_off = figure(figures, "cutOff");
    EXPECT_EQ(cut_off.value + QLatin1Char(' ') + cut_off.rest,
              QString::fromStdString(expected_clock_text(*forecast.cut_off, clock.now_ms(), record().run.time_zone)));
    EXPECT_TRUE(cut_off.rest.startsWith(QStringLiteral("to "))) << cut_off.rest.toStdString();
    const std::string account(forecast_account_text(forecast.account));
    EXPECT_EQ(cut_off.label, QStringLiteral("cut-off, ") + QString::fromStdString(account));
    EXPECT_TRUE(cut_off.hint.contains(QString::fromStdString(expected_hours_text(*forecast.cut_off, clock.now_ms()))));
    RunForecast other = forecast;
    for (const ForecastAccount each : {ForecastAccount::whichever, ForecastAccount::right, ForecastAccount::wrong}) {
        other.account = each;
        const auto told = run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&other, {}});
        EXPECT_EQ(figure(told, "cutOff").label, QStringLiteral("cut-off, ") + text_of(forecast_account_text(each)));
    }
    EXPECT_TRUE(cut_off.hint.contains(QString::fromStdString(forecast.cut_off_reason)));
    EXPECT_EQ(figure(figures, "elapsed").label, QStringLiteral("elapsed; read 12 min ago"));
    EXPECT_EQ(figure(figures, "delivered").label, QStringLiteral("delivered; gauge +48 Wh")); // 82 points of 1200 Wh less 936 Wh
    EXPECT_EQ(figure(figures, "load").rest, QStringLiteral("W, 65 W"));
}

TEST_F(RunPageTest, a_cut_off_that_should_have_come_is_overdue_since_its_latest_moment) {
    recordSample();
    const RunForecast forecast = document.forecast(run.uuid, clock.now_ms());
    ASSERT_TRUE(forecast.cut_off) << forecast.cut_off_reason;
    clock.advance_hours(72);
    const StripFigure overdue = figure(run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&forecast, {}}), "cutOff");
    EXPECT_EQ(overdue.label, QStringLiteral("cut-off, overdue since"));
    EXPECT_EQ(overdue.value, QString::fromStdString(near_moment_text(forecast.cut_off->upper_ms, clock.now_ms(), record().run.time_zone)));
    EXPECT_EQ(overdue.value.size(), 9) << "another day: " << overdue.value.toStdString();
}

TEST_F(RunPageTest, the_next_reading_takes_the_place_of_the_projected_fraction) {
    recordSample();
    const RunForecast& forecast = document.forecast(run.uuid, clock.now_ms());
    const StripFigure due{QStringLiteral("due"), QStringLiteral("next reading"), QStringLiteral("in 30"), QStringLiteral("min"), {}};
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&forecast, due});
    EXPECT_EQ(figures.size(), 6U);
    EXPECT_EQ(std::ranges::count(figures, QStringLiteral("usable"), &StripFigure::key), 0);
    EXPECT_EQ(figure(figures, "due").value, QStringLiteral("in 30"));
}

TEST_F(RunPageTest, a_forecast_that_cannot_be_made_says_why_in_the_strip) {
    const RunForecast& forecast = document.forecast(run.uuid, clock.now_ms());
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&forecast, {}});
    EXPECT_EQ(figure(figures, "cutOff").value, QString(QChar(0x2013)));
    EXPECT_EQ(figure(figures, "cutOff").hint, QStringLiteral("there are no readings yet"));
    EXPECT_EQ(figure(figures, "delivered").label, QStringLiteral("delivered"));
}

TEST_F(RunPageTest, an_ended_run_has_no_forecast_in_its_strip) {
    recordSample();
    ullage::Run ended = record().run;
    ended.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(ended));
    const RunForecast& forecast = document.forecast(run.uuid, clock.now_ms());
    EXPECT_FALSE(forecast.cut_off);
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms(), {&forecast, {}});
    EXPECT_EQ(figures.size(), 6U);
    EXPECT_EQ(std::ranges::count(figures, QStringLiteral("cutOff"), &StripFigure::key), 0);
}

TEST_F(RunPageTest, a_forecast_is_made_anew_after_each_reading) {
    recordSample(9);
    const UtcMs now_ms = clock.now_ms();
    const UtcMs before = document.forecast(run.uuid, now_ms).last_reading_ms.value();
    ReadingValues values;
    values.gauge_percent = 40;
    values.register_wh = 5100;
    clock.advance_hours(0.01);
    values.time_ms = clock.now_ms();
    ASSERT_TRUE(document.record(run.uuid, values));
    EXPECT_EQ(document.forecast(run.uuid, clock.now_ms()).last_reading_ms, values.time_ms);
    EXPECT_LT(before, values.time_ms);
}

TEST_F(RunPageTest, the_strip_of_a_running_run_stands_in_one_line_at_1280_and_is_cut_nowhere) {
    recordSample();
    clock.advance_hours(0.2);
    showPage();
    const int line_y = find<QLabel>("elapsedFigureLabel")->mapTo(page, QPoint()).y();
    for (const char* name : {"elapsedFigureLabel", "gaugeFigureLabel", "deliveredFigureLabel", "loadFigureLabel", "cutOffFigureLabel",
                             "usableFigureLabel", "deliveredRestLabel", "loadRestLabel"}) {
        const auto* label = find<QLabel>(name);
        ASSERT_NE(label, nullptr);
        EXPECT_GE(label->width(), label->sizeHint().width()) << name;
        EXPECT_LE(label->mapTo(page, QPoint(label->width(), 0)).x(), page->width()) << name;
        if (QString::fromLatin1(name).endsWith(QStringLiteral("FigureLabel"))) {
            EXPECT_EQ(label->mapTo(page, QPoint()).y(), line_y) << name;
        }
    }
}

TEST_F(RunPageTest, the_strip_of_an_empty_run_shows_dashes_not_zeros) {
    const auto figures = run_figures(record(), document.analysis(run.uuid), clock.now_ms());
    for (const StripFigure& each : figures) EXPECT_EQ(each.value, QString(QChar(0x2013))) << each.key.toStdString();
}

TEST_F(RunPageTest, the_head_says_what_the_run_is) {
    recordSample(1);
    EXPECT_EQ(run_about(record()), QStringLiteral("drain, 14 May, socket meter A ±1 %, projector and work lights"));
}

TEST_F(RunPageTest, the_energy_chart_holds_both_curves_and_the_meters_band) {
    recordSample();
    const RunChart chart = energy_chart(record(), document.analysis(run.uuid));
    const ChartSeries* delivered = series(chart, "delivered");
    const ChartSeries* implied = series(chart, "gauge_implied");
    ASSERT_NE(delivered, nullptr);
    ASSERT_NE(implied, nullptr);
    ASSERT_EQ(delivered->points.size(), 11U);
    EXPECT_NEAR(delivered->points.back().x, 14.6, 1e-6);
    EXPECT_DOUBLE_EQ(delivered->points.back().y, 936.0);
    EXPECT_NEAR(implied->points.back().y, 984.0, 1e-9); // 82 points of 1200 Wh
    ASSERT_EQ(delivered->band.size(), 11U);
    EXPECT_GT(delivered->band.back().upper, 936.0);
    EXPECT_LT(delivered->band.back().lower, 936.0);
    EXPECT_NEAR(delivered->band.back().upper - 936.0, 9.36, 0.5); // the meter's ±1 %
    ASSERT_EQ(chart.content.horizontal_lines.size(), 1U);
    EXPECT_EQ(chart.content.horizontal_lines[0].value, 1200.0);
    const auto stuck = std::ranges::find(chart.content.regions, QStringLiteral("stuck"), &ChartRegion::label);
    ASSERT_NE(stuck, chart.content.regions.end());
    EXPECT_NEAR(stuck->from, 5.5, 1e-6);
    EXPECT_NEAR(stuck->to, 503 / 60.0, 1e-6);
}

TEST_F(RunPageTest, the_energy_chart_of_a_running_run_shades_where_the_cut_off_is_expected) {
    recordSample();
    const RunForecast& forecast = document.forecast(run.uuid, clock.now_ms());
    ASSERT_TRUE(forecast.cut_off);
    const RunChart chart = energy_chart(record(), document.analysis(run.uuid), &forecast);
    const auto region = std::ranges::find(chart.content.regions, QStringLiteral("cut-off expected"), &ChartRegion::label);
    ASSERT_NE(region, chart.content.regions.end());
    EXPECT_EQ(region->role, RegionRole::grey);
    const UtcMs start_ms = document.analysis(run.uuid).energy.start_ms;
    EXPECT_NEAR(region->from, hours_between(start_ms, forecast.cut_off->lower_ms), 1e-9);
    EXPECT_NEAR(region->to, hours_between(start_ms, forecast.cut_off->upper_ms), 1e-9);
    EXPECT_EQ(chart.content.x.maximum, region->to);
    const UtcMs halfway_ms = (forecast.cut_off->lower_ms + forecast.cut_off->upper_ms) / 2;
    const RunChart later = energy_chart(record(), document.analysis(run.uuid), &forecast, nullptr, halfway_ms);
    const auto rest = std::ranges::find(later.content.regions, QStringLiteral("cut-off expected"), &ChartRegion::label);
    ASSERT_NE(rest, later.content.regions.end());
    EXPECT_NEAR(rest->from, hours_between(start_ms, halfway_ms), 1e-9) << "no moment that has passed";
    const RunChart without = energy_chart(record(), document.analysis(run.uuid));
    EXPECT_EQ(std::ranges::count(without.content.regions, QStringLiteral("cut-off expected"), &ChartRegion::label), 0);
    EXPECT_FALSE(without.content.x.maximum);
}

TEST_F(RunPageTest, without_a_rated_energy_the_energy_chart_shows_what_was_measured) {
    recordSample();
    Unit unstated = unit;
    unstated.rated_energy_wh.reset();
    ASSERT_TRUE(document.updateUnit(unstated));
    const RunChart chart = energy_chart(record(), document.analysis(run.uuid));
    EXPECT_EQ(series(chart, "gauge_implied"), nullptr);
    EXPECT_NE(series(chart, "delivered"), nullptr);
    EXPECT_TRUE(chart.content.horizontal_lines.empty());
}

TEST_F(RunPageTest, the_error_chart_names_its_basis) {
    recordSample();
    const RunChart running = gauge_error_chart(record(), document.analysis(run.uuid), {});
    EXPECT_TRUE(running.content.y.title.contains(QStringLiteral("rated energy"))) << running.content.y.title.toStdString();
    ASSERT_NE(series(running, "error"), nullptr);
    EXPECT_EQ(series(running, "error")->band.size(), series(running, "error")->points.size());
    ullage::Run ended = record().run;
    ended.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(ended));
    const RunChart full = gauge_error_chart(record(), document.analysis(run.uuid), {});
    EXPECT_TRUE(full.content.y.title.contains(QStringLiteral("share delivered"))) << full.content.y.title.toStdString();
}

TEST_F(RunPageTest, before_the_end_the_error_chart_says_what_the_column_of_the_table_says) {
    recordSample();
    const auto forecast = document.casebook().forecast_at_last_reading(run.uuid);
    const auto whole = expected_whole(record(), document.analysis(run.uuid).energy, forecast.get());
    ASSERT_TRUE(whole);
    EXPECT_LT(whole->lower_wh, whole->estimate_wh);
    const RunChart chart = gauge_error_chart(record(), document.analysis(run.uuid), {}, whole);
    EXPECT_TRUE(chart.content.y.title.contains(QStringLiteral("if %1 Wh come out").arg(shown_number(whole->estimate_wh, 0))))
        << chart.content.y.title.toStdString();
    ReadingsModel model(document);
    model.setRun(run.uuid);
    EXPECT_TRUE(model.headerData(ReadingsRow::error, Qt::Horizontal, Qt::DisplayRole).toString().contains(shown_number(whole->estimate_wh, 0)));
    const ChartSeries& errors = *series(chart, "error");
    ASSERT_FALSE(errors.points.empty());
    for (int at = 0; at < static_cast<int>(errors.points.size()); ++at) {
        const QModelIndex cell = model.index(model.rowOf(chart.readingAt(errors.id, at)), ReadingsRow::error);
        const double y = errors.points[static_cast<std::size_t>(at)].y;
        EXPECT_EQ(cell.data().toString(), shown_difference(std::round(y * 10) / 10 + 0.0, 1)) << y;
        EXPECT_LE(errors.band[static_cast<std::size_t>(at)].lower, y);
        EXPECT_GE(errors.band[static_cast<std::size_t>(at)].upper, y);
    }
}

TEST_F(RunPageTest, the_error_against_stored_depth_is_a_curve_of_its_own_where_it_differs) {
    recordSample();
    ullage::Run ended = record().run;
    ended.end = RunEnd::cut_off_seen;
    ASSERT_TRUE(document.updateRun(ended));
    const RunAnalysis& analysis = document.analysis(run.uuid);
    auto depths = reference_depths(record(), analysis.energy, NoLoadDraw{10, 8, 12});
    ASSERT_TRUE(depths);
    EXPECT_EQ(series(gauge_error_chart(record(), analysis, depths.value()), "stored_error"), nullptr)
        << "under this steady load both depths are one curve, and the same curve twice tells nothing";
    for (ReferenceDepth& depth : depths.value())
        for (Banded* stored : {&*depth.stored_percent, &*depth.stored_error_pt}) *stored = {stored->value + 1, stored->lower + 1, stored->upper + 1};
    const RunChart both = gauge_error_chart(record(), analysis, depths.value());
    const ChartSeries* delivered = series(both, "error");
    const ChartSeries* stored = series(both, "stored_error");
    ASSERT_NE(stored, nullptr);
    EXPECT_EQ(stored->points.size(), delivered->points.size());
    EXPECT_EQ(stored->band.size(), stored->points.size());
    EXPECT_NE(stored->marker, delivered->marker);
    EXPECT_NE(stored->colour, delivered->colour);
    EXPECT_EQ(stored->name, QStringLiteral("by stored depth"));
    EXPECT_EQ(delivered->name, QStringLiteral("by share delivered"));
    EXPECT_EQ(both.content.y.title, QStringLiteral("gauge error / pt"));
}

TEST_F(RunPageTest, the_load_chart_steps_from_reading_to_reading) {
    recordSample(3);
    const RunChart chart = load_chart(record(), document.analysis(run.uuid));
    const ChartSeries* load = series(chart, "load");
    ASSERT_NE(load, nullptr);
    EXPECT_TRUE(load->steps);
    ASSERT_EQ(load->points.size(), 3U);
    EXPECT_NEAR(load->points[0].x, 0.0, 1e-9);
    EXPECT_NEAR(load->points[0].y, 71 / 1.1, 1e-6);
    EXPECT_NEAR(load->points[2].x, 2.6, 1e-6);
    EXPECT_EQ(load->points[1].y, load->points[2].y);
}

TEST_F(RunPageTest, charts_of_an_empty_run_say_what_to_do) {
    const RunAnalysis& analysis = document.analysis(run.uuid);
    for (const RunChart& chart : {energy_chart(record(), analysis), gauge_error_chart(record(), analysis, {}), load_chart(record(), analysis)}) {
        EXPECT_TRUE(chart.content.series.empty());
        EXPECT_FALSE(chart.content.empty_text.isEmpty());
    }
}

TEST_F(RunPageTest, what_is_not_known_stands_in_the_findings_with_its_reason) {
    recordSample(2); // five points of gauge: too few
    const auto items = finding_items(document.analysis(run.uuid));
    const auto unknown = std::ranges::find_if(items, [](const FindingItem& item) {
        return item.sort == FindingItem::Sort::not_known && item.sentence.startsWith(QStringLiteral("Usable fraction: "));
    });
    ASSERT_NE(unknown, items.end());
    EXPECT_TRUE(unknown->sentence.endsWith(QLatin1Char('.')));
}

TEST_F(RunPageTest, three_readings_that_give_a_bound_are_not_said_to_be_too_few_for_a_line) {
    for (const auto& [hours, gauge, register_wh] : {std::tuple(0.0, 100.0, 4310.0), std::tuple(4.0, 70.0, 4560.0), std::tuple(8.0, 40.0, 4810.0)}) {
        ReadingValues values;
        values.time_ms = clock.now_ms() + static_cast<UtcMs>(hours * ms_per_hour);
        values.gauge_percent = gauge;
        values.register_wh = register_wh;
        ASSERT_TRUE(document.record(run.uuid, values));
    }
    const RunAnalysis& analysis = document.analysis(run.uuid);
    ASSERT_NE(analysis.gauge.feasibility.least_error_pt.kind, Kind::not_known) << analysis.gauge.feasibility.sentence;
    for (const FindingItem& item : finding_items(analysis)) EXPECT_FALSE(item.sentence.contains("linear gauge fits")) << item.sentence.toStdString();
    EXPECT_TRUE(QString::fromStdString(analysis.gauge.line_reason).contains("here there are three"));
}

TEST_F(RunPageTest, what_only_a_drain_tells_is_one_line_for_a_charge) {
    auto charge = run;
    charge.kind = RunKind::charge;
    ASSERT_TRUE(document.updateRun(charge));
    recordSample();
    const auto items = finding_items(document.analysis(run.uuid), std::nullopt, RunKind::charge);
    EXPECT_EQ(std::ranges::count(items, FindingItem::Sort::not_known, &FindingItem::sort), 1);
    EXPECT_EQ(items.back().sentence.toStdString(),
              "Usable fraction, the gauge's errors and losses: this kind of run (charge) does not tell them; make a drain.");
}

TEST_F(RunPageTest, the_line_test_stands_in_the_findings_with_its_slope_and_chi_square) {
    recordSample();
    const RunAnalysis& analysis = document.analysis(run.uuid);
    ASSERT_TRUE(analysis.gauge.line);
    const auto items = finding_items(analysis);
    const auto line =
        std::ranges::find_if(items, [](const FindingItem& item) { return item.sentence.contains(QStringLiteral("linear gauge explains")); });
    ASSERT_NE(line, items.end());
    EXPECT_TRUE(line->sentence.contains(QStringLiteral("χ²"))) << line->sentence.toStdString();
    EXPECT_TRUE(line->evidence.startsWith(QStringLiteral("slope 1.05 ± "))) << line->evidence.toStdString();
    EXPECT_TRUE(line->evidence.contains(QStringLiteral(" Wh/pt end to end"))) << line->evidence.toStdString();
}

TEST_F(RunPageTest, where_the_energy_went_stands_below_the_findings_as_said_or_as_not_known) {
    recordSample();
    const RunAnalysis& analysis = document.analysis(run.uuid);
    LossSplit split;
    split.sentence = "Of 1200 Wh rated: 800 Wh delivered, about 100 Wh no-load draw, rest 300 Wh";
    split.rest_wh = known("rest_wh", "Wh", 300, 10.0, Kind::measured);
    const auto said = [](const std::vector<FindingItem>& items, const QString& sentence) {
        return std::ranges::find(items, sentence, &FindingItem::sentence);
    };
    const QString sentence = QString::fromStdString(split.sentence) + QLatin1Char('.');
    auto items = finding_items(analysis, split);
    auto at = said(items, sentence);
    ASSERT_NE(at, items.end());
    EXPECT_EQ(at->sort, FindingItem::Sort::note);
    split.rest_wh = not_known("rest_wh", "Wh", "no draw");
    items = finding_items(analysis, split);
    at = said(items, sentence);
    ASSERT_NE(at, items.end());
    EXPECT_EQ(at->sort, FindingItem::Sort::not_known);
    EXPECT_NE(said(items, QString::fromStdString(analysis.gauge.losses.sentence)), items.end());
    EXPECT_EQ(std::ranges::count(items, QString::fromStdString(analysis.gauge.feasibility.sentence), &FindingItem::sentence), 1);
}

TEST_F(RunPageTest, register_corrections_stand_in_the_findings_as_assumed) {
    recordSample();
    const Reading fifth = readings()[4];
    ReadingValues typo = fifth.values;
    typo.register_wh = 46640;
    ASSERT_TRUE(document.amend(fifth.uuid, typo, {}));
    const auto items = finding_items(document.analysis(run.uuid));
    const auto assumed = std::ranges::find(items, FindingItem::Sort::assumed, &FindingItem::sort);
    ASSERT_NE(assumed, items.end());
    EXPECT_EQ(assumed->readings, std::vector{fifth.uuid});
    EXPECT_TRUE(assumed->sentence.startsWith(QStringLiteral("Typing error: "))) << assumed->sentence.toStdString();
}

} // namespace ullage
