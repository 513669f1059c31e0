// SPDX-License-Identifier: GPL-3.0-or-later
#include "window_fixture.h"

#include "charts/line_chart.h"
#include "dialogs/log_form.h"
#include "pages/run/power_curve.h"

#include <QComboBox>
#include <QLabel>
#include <QTabWidget>
#include <QTableWidget>
#include <QUndoStack>

#include <algorithm>

namespace ullage {

using test::WindowTest;

namespace {

/// A running test in the window, and logs of its meter.
class LogsTest : public WindowTest {
protected:
    void SetUp() override {
        WindowTest::SetUp();
        new_logbook();
        add_unit();
        add_meter();
        start_run();
    }

    [[nodiscard]] RunId run_uuid() const { return document.runs().front()->run.uuid; }

    /// A load of 120 W that is on for half of each ten minutes, every ten seconds for three hours, with a register.
    [[nodiscard]] QByteArray log(const char* head = "time,power W,energy Wh\n", const char* date = "2027-05-14 ") const {
        QByteArray text(head);
        double energy_wh = 4310;
        for (int i = 0; i < 1080; ++i) {
            const double watts = i % 60 < 30 ? 120 : 20;
            energy_wh += watts * 10 / 3600;
            const int second = 10 * i;
            text += QByteArray(date) + QByteArray::number(18 + second / 3600) + ':' + QByteArray::number(second / 60 % 60).rightJustified(2, '0') +
                    ':' + QByteArray::number(second % 60).rightJustified(2, '0') + ',' + QByteArray::number(watts) + ',' +
                    QByteArray::number(energy_wh, 'f', 2) + '\n';
        }
        return text;
    }

    void ask_for(const QString& path) {
        prompts.to_open = {path};
        trigger("importLogAction");
    }
    void choose(const char* combo_name, int place) {
        auto* combo = find<QComboBox>(combo_name);
        combo->setCurrentIndex(place);
        emit combo->activated(place);
        QApplication::processEvents();
    }
    [[nodiscard]] bool form_open() const {
        QApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        const auto* form = window->findChild<LogForm*>();
        return form && form->isVisible();
    }
    [[nodiscard]] std::vector<Trace> traces() const { return document.traces(run_uuid()).value(); }
    void show_log_tab() {
        auto* tabs = find<QTabWidget>("chartsTabs");
        tabs->setCurrentWidget(find<QWidget>("logView"));
        QApplication::processEvents();
    }
};

} // namespace

TEST_F(LogsTest, a_log_is_shown_as_read_and_comes_into_the_run_and_out_again_by_undo) {
    ask_for(write("meter.csv", log()));
    ASSERT_TRUE(form_open());
    EXPECT_TRUE(find<QLabel>("foundLabel")->text().contains(QLatin1String("`power W` in W"))) << find<QLabel>("foundLabel")->text().toStdString();
    EXPECT_FALSE(find<QLabel>("questionsLabel")->isVisible());
    EXPECT_EQ(find<QComboBox>("role2Combo")->currentText().toStdString(), "power in W");
    EXPECT_EQ(find<QTableWidget>("logRowsTable")->item(1, 0)->text().toStdString(), "2027-05-14 18:00:00");
    click("submitButton");
    EXPECT_FALSE(form_open());
    ASSERT_EQ(traces().size(), 1U);
    EXPECT_EQ(traces()[0].samples, 1080);
    EXPECT_EQ(traces()[0].meter_uuid, document.meters().front().uuid);
    EXPECT_TRUE(message().contains(QLatin1String("1080 rows: 1080 taken"))) << message().toStdString();
    document.undoStack().undo();
    EXPECT_TRUE(traces().empty());
    document.undoStack().redo();
    EXPECT_EQ(traces().size(), 1U);
}

TEST_F(LogsTest, what_the_log_leaves_open_is_asked_at_its_field_and_nothing_is_imported_before_it_is_answered) {
    ask_for(write("meter.csv", log("time,power W,energy Wh\n", "05/06/2027 ")));
    EXPECT_TRUE(find<QLabel>("questionsLabel")->isVisible());
    click("submitButton");
    ASSERT_TRUE(form_open());
    EXPECT_TRUE(find<QLabel>("dateOrderErrorLabel")->isVisible());
    EXPECT_TRUE(traces().empty());
    choose("dateOrderCombo", 2);
    EXPECT_FALSE(find<QLabel>("questionsLabel")->isVisible());
    EXPECT_FALSE(find<QLabel>("dateOrderErrorLabel")->isVisible());
    click("submitButton");
    ASSERT_EQ(traces().size(), 1U);
    EXPECT_EQ(format_iso8601(traces()[0].first_ms, "UTC").substr(0, 7), "2027-05") << "the month came first";

    document.undoStack().undo();
    ask_for(write("next.csv", log("time,power W,energy Wh\n", "05/07/2027 ")));
    EXPECT_FALSE(find<QLabel>("questionsLabel")->isVisible()) << "the answer is remembered by the header";
}

TEST_F(LogsTest, a_column_is_corrected_in_the_row_above_the_data_and_one_set_aside_stays_unused) {
    ask_for(write("meter.csv", log("time,power W,energy Wh\n")));
    choose("role2Combo", 0);
    EXPECT_EQ(find<QComboBox>("role2Combo")->currentText().toStdString(), "unused");
    click("submitButton");
    ASSERT_EQ(traces().size(), 1U);
    bool power = false;
    ASSERT_TRUE(document.readSamples(traces()[0].uuid, traces()[0].first_ms, traces()[0].last_ms, [&power](std::span<const TraceSample> samples) {
        for (const TraceSample& sample : samples) power = power || sample.power_w.has_value();
        return true;
    }));
    EXPECT_FALSE(power);
}

TEST_F(LogsTest, rows_left_out_are_listed_with_line_and_reason_before_the_form_closes) {
    QByteArray text = log();
    text.insert(text.indexOf('\n', text.size() / 2) + 1, "garbled\n");
    ask_for(write("meter.csv", text));
    click("submitButton");
    ASSERT_TRUE(form_open());
    auto* rows = find<QTableWidget>("skippedRowsTable");
    ASSERT_EQ(rows->rowCount(), 1);
    EXPECT_TRUE(rows->item(0, 1)->text().startsWith(QLatin1String("left out: "))) << rows->item(0, 1)->text().toStdString();
    EXPECT_EQ(rows->item(0, 2)->text().toStdString(), "garbled");
    EXPECT_EQ(traces().size(), 1U);
    click("cancelButton");
    EXPECT_FALSE(form_open());
    EXPECT_EQ(traces().size(), 1U) << "closing takes nothing back";
}

TEST_F(LogsTest, the_same_file_again_is_refused_in_the_form) {
    const QString path = write("meter.csv", log());
    ask_for(path);
    click("submitButton");
    ask_for(path);
    click("submitButton");
    ASSERT_TRUE(form_open());
    EXPECT_TRUE(find<QLabel>("refusalLabel")->text().contains(QLatin1String("in the run already")))
        << find<QLabel>("refusalLabel")->text().toStdString();
    EXPECT_EQ(traces().size(), 1U);
    EXPECT_TRUE(find<QPushButton>("submitButton")->isEnabled());
}

TEST_F(LogsTest, a_cancelled_import_leaves_nothing_and_the_form_open) {
    QByteArray text("time,power W\n");
    for (int i = 0; i < 60'000; ++i) text += QByteArray::number(1'810'310'400LL + i) + ",50\n";
    ask_for(write("meter.csv", text));
    auto* form = window->findChild<LogForm*>();
    const TraceReadOptions options = form->options();
    form->reject();
    ASSERT_TRUE(form_open());
    EXPECT_FALSE(options.progress(1000));
    const auto imported = document.importTrace(run_uuid(), {}, form->path(), form->detection(), options);
    ASSERT_FALSE(imported);
    form->refuseImport(QString::fromStdString(imported.error().sentence()));
    EXPECT_TRUE(traces().empty());
    EXPECT_TRUE(find<QPushButton>("submitButton")->isEnabled());
}

TEST_F(LogsTest, a_dropped_log_goes_to_the_form_and_a_dropped_run_sheet_does_not) {
    drop({write("meter.csv", log())});
    EXPECT_TRUE(form_open());
    click("cancelButton");
    drop({write("sheet.csv", sheet())});
    EXPECT_FALSE(form_open());
    EXPECT_EQ(document.runs().size(), 2U);
}

TEST_F(LogsTest, a_file_that_is_no_log_is_refused_with_words) {
    ask_for(write("meter.csv", "no log at all"));
    ASSERT_TRUE(form_open());
    EXPECT_TRUE(find<QLabel>("refusalLabel")->isVisible());
    EXPECT_FALSE(find<QPushButton>("submitButton")->isEnabled());
}

TEST_F(LogsTest, the_log_tab_draws_the_power_and_states_the_load_and_makes_an_appliance_of_it) {
    show_log_tab();
    EXPECT_TRUE(find<QLabel>("noLogLabel")->isVisible());
    ask_for(write("meter.csv", log()));
    click("submitButton");
    EXPECT_FALSE(find<QLabel>("noLogLabel")->isVisible());
    auto* chart = find<LineChart>("logChart");
    ASSERT_EQ(chart->content().series.size(), 1U);
    EXPECT_EQ(chart->content().series[0].points.size(), 1080U);
    QStringList words;
    for (const auto* label : find<QWidget>("logView")->findChildren<QLabel*>()) words << label->text();
    EXPECT_TRUE(words.contains(QLatin1String("120.0 W"))) << words.join(QLatin1Char('|')).toStdString();
    EXPECT_TRUE(words.contains(QLatin1String("5.67 per h"))) << words.join(QLatin1Char('|')).toStdString();

    LoadList list;
    list.name = "Show night";
    ASSERT_TRUE(document.addLoadList(list));
    window->showRun(run_uuid());
    show_log_tab();
    click("logApplianceButton");
    type("nameEdit", QStringLiteral("projector"));
    type("hoursEdit", QStringLiteral("4"));
    click("submitButton");
    ASSERT_EQ(document.loadLists()[0].appliances.size(), 1U);
    const Appliance& appliance = document.loadLists()[0].appliances[0];
    EXPECT_NEAR(appliance.power_w.value_or(0), 120, 0.1);
    EXPECT_NEAR(mean_in_use_w(appliance), 70, 1);
}

TEST_F(LogsTest, the_unit_s_own_log_stands_beside_the_meter_s_is_drawn_apart_and_undone_in_one_step) {
    ask_for(write("meter.csv", log()));
    click("submitButton");
    QByteArray own("time,SoC (%),AC output (W)\n");
    for (int i = 0; i < 360; ++i) {
        const int second = 30 * i;
        own += QByteArray("2027-05-14 ") + QByteArray::number(18 + second / 3600) + ':' +
               QByteArray::number(second / 60 % 60).rightJustified(2, '0') + ':' + QByteArray::number(second % 60).rightJustified(2, '0') + ',' +
               QByteArray::number(100 - i / 18) + ",75\n";
    }
    ReadingValues start;
    start.time_ms = parse_iso8601("2027-05-14T18:00:00", document.run(run_uuid())->run.time_zone).value();
    ASSERT_TRUE(document.record(run_uuid(), start).ok());
    ask_for(write("unit.csv", own));
    ASSERT_TRUE(form_open());
    EXPECT_EQ(find<QComboBox>("role2Combo")->currentText().toStdString(), "gauge in %");
    EXPECT_EQ(find<QComboBox>("role3Combo")->currentText().toStdString(), "output in W");
    EXPECT_FALSE(find<QComboBox>("logMeterCombo")->isEnabled()) << "no meter writes what the unit says of itself";
    click("submitButton");
    ASSERT_EQ(traces().size(), 2U);
    show_log_tab();
    const auto& series = find<LineChart>("logChart")->content().series;
    ASSERT_EQ(series.size(), 2U);
    EXPECT_EQ(series[0].id.toStdString(), "log_power");
    EXPECT_EQ(series[1].id.toStdString(), "log_output");
    auto* gauge = find<LineChart>("gaugeLogChart");
    ASSERT_TRUE(gauge->isVisible());
    EXPECT_EQ(gauge->content().series.at(0).points.size(), 360U);
    EXPECT_EQ(document.run(run_uuid())->readings.size(), 1U) << "thousands of readings stay a log";
    ASSERT_TRUE(document.run(run_uuid())->gauge_log);
    EXPECT_EQ(document.run(run_uuid())->gauge_log->steps.size(), 19U);
    document.undoStack().undo();
    EXPECT_EQ(traces().size(), 1U);
    EXPECT_FALSE(document.run(run_uuid())->gauge_log);
}

TEST_F(LogsTest, a_power_beside_the_gauge_is_asked_about_in_the_row_above_the_data) {
    ask_for(write("both.csv", "time,SoC (%),power W\n2027-05-14 18:00:00,71,120\n2027-05-14 18:00:30,71,121\n"));
    EXPECT_TRUE(find<QLabel>("questionsLabel")->isVisible());
    click("submitButton");
    ASSERT_TRUE(form_open());
    EXPECT_TRUE(traces().empty());
    choose("role3Combo", static_cast<int>(ColumnRole::output));
    EXPECT_FALSE(find<QLabel>("questionsLabel")->isVisible());
    click("submitButton");
    ASSERT_EQ(traces().size(), 1U);
    EXPECT_EQ(traces()[0].holds, holds_gauge | holds_output);
}

TEST_F(LogsTest, a_log_is_withdrawn_in_its_tab) {
    ask_for(write("meter.csv", log()));
    click("submitButton");
    show_log_tab();
    click("withdrawLogButton");
    EXPECT_TRUE(traces().empty());
    EXPECT_TRUE(find<QLabel>("noLogLabel")->isVisible());
}

TEST_F(LogsTest, a_long_log_is_drawn_by_its_extremes_and_zooming_in_shows_every_sample) {
    QByteArray text("time,power W\n");
    for (int i = 0; i < 600'000; ++i)
        text += QByteArray::number(1'810'310'400LL + i) + ',' + QByteArray::number(i == 301'234 ? 900 : 50 + i % 7) + '\n';
    ask_for(write("long.csv", text));
    click("submitButton");
    show_log_tab();
    auto* chart = find<LineChart>("logChart");
    const auto& overview = chart->content().series[0].points;
    EXPECT_LE(overview.size(), 2 * PowerCurve::coarsest_spans + 2);
    EXPECT_EQ(std::ranges::max_element(overview, {}, &ChartPoint::y)->y, 900);
    const double from = overview.front().x, width = overview.back().x - from;
    // 0.502 of the whole is where the highest sample stands; finer curves keep it, and in the end it stands among all its neighbours.
    for (const double share : {0.5, 0.1, 0.02, 0.001}) {
        const double middle = from + 301'234.0 / 599'999 * width;
        chart->zoomTo(middle - share / 2 * width, middle + share / 2 * width);
        const auto& points = chart->content().series[0].points;
        const auto highest = std::ranges::max_element(points, {}, &ChartPoint::y);
        ASSERT_NE(highest, points.end());
        EXPECT_EQ(highest->y, 900) << share;
        EXPECT_NEAR(highest->x, middle, 1e-9) << share;
        const auto [left, right] = chart->visibleSpan();
        EXPECT_LT(points.front().x, left) << share;
        EXPECT_GT(points.back().x, right) << share;
    }
    const auto [left, right] = chart->visibleSpan();
    const auto seen =
        std::ranges::count_if(chart->content().series[0].points, [&](const ChartPoint& point) { return point.x >= left && point.x <= right; });
    EXPECT_NEAR(static_cast<double>(seen), 600, 2);
    chart->resetZoom();
    EXPECT_LE(chart->content().series[0].points.size(), 2 * PowerCurve::coarsest_spans + 2);
    EXPECT_EQ(chart->visibleSpan().first, from);
}

} // namespace ullage
