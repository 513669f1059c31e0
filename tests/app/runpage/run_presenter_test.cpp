// SPDX-License-Identifier: GPL-3.0-or-later
// What the run page shows and does, without the page.
#include "pages/run/run_presenter.h"

#include "run_page_fixture.h"
#include "services/reminders.h"
#include "services/settings.h"

#include <algorithm>

namespace ullage {

namespace {

class RunPresenterTest : public test::RunPageTest {
protected:
    void SetUp() override {
        RunPageTest::SetUp();
        presenter.setRun(run.uuid);
    }

    [[nodiscard]] static bool holds(const std::vector<StripFigure>& figures, const char* key) {
        return std::ranges::count(figures, QLatin1String(key), &StripFigure::key) > 0;
    }
    [[nodiscard]] bool tellsWhereTheEnergyWent() const {
        const auto items = presenter.findings();
        return std::ranges::any_of(items, [](const FindingItem& item) { return item.sentence.contains(QStringLiteral("1200 Wh rated")); });
    }
    void endRun() {
        ullage::Run ended = record().run;
        ended.end = RunEnd::cut_off_seen;
        ASSERT_TRUE(document.updateRun(ended));
    }
    [[nodiscard]] static ReadingId uuidOf(const Reading& reading) { return reading.uuid; }

    RunPresenter presenter{document};
};

TEST_F(RunPresenterTest, a_run_that_is_not_in_the_logbook_shows_nothing_and_takes_no_command) {
    presenter.setRun(RunId("no such run"));
    EXPECT_EQ(presenter.record(), nullptr);
    EXPECT_EQ(presenter.charted().record, nullptr);
    EXPECT_TRUE(presenter.lastEntered().empty());
    EXPECT_FALSE(presenter.toAmend(ReadingId("no such reading")));
    EXPECT_TRUE(presenter.acceptAssumption(ReadingId("no such reading")));
    EXPECT_FALSE(presenter.withdraw({ReadingId("no such reading")}));
}

TEST_F(RunPresenterTest, a_running_run_is_charted_with_its_forecast_and_an_ended_one_with_its_depths) {
    recordSample();
    const ChartedRun running = presenter.charted();
    ASSERT_NE(running.forecast, nullptr);
    EXPECT_TRUE(running.forecast->cut_off);
    EXPECT_TRUE(running.depths.empty());
    endRun();
    const ChartedRun ended = presenter.charted();
    EXPECT_EQ(ended.forecast, nullptr);
    EXPECT_EQ(ended.depths.size(), ended.analysis->gauge.depths.size());
    EXPECT_FALSE(ended.depths.empty());
}

TEST_F(RunPresenterTest, where_the_energy_went_is_told_once_the_run_has_ended) {
    recordSample();
    EXPECT_FALSE(tellsWhereTheEnergyWent());
    endRun();
    EXPECT_TRUE(tellsWhereTheEnergyWent());
}

TEST_F(RunPresenterTest, the_strip_counts_down_to_the_next_reading_where_there_are_reminders) {
    recordSample();
    EXPECT_FALSE(holds(presenter.figures(), "due"));
    Settings settings{QString::fromStdString((folder / "settings.ini").string())};
    Reminders reminders{document, settings, nullptr};
    reminders.setRule(run.uuid, {.every_min = 30, .gauge_drop_pt = {}, .before_cut_off_min = {}});
    RunPresenter reminded{document, &reminders};
    reminded.setRun(run.uuid);
    clock.advance_hours(0.2);
    const auto figures = reminded.figures();
    const auto due = std::ranges::find(figures, QStringLiteral("due"), &StripFigure::key);
    ASSERT_NE(due, figures.end());
    EXPECT_EQ(due->value + QLatin1Char(' ') + due->rest, QStringLiteral("in 18 min"));
    endRun();
    EXPECT_FALSE(holds(reminded.figures(), "due"));
}

TEST_F(RunPresenterTest, a_drain_tests_the_usable_fraction_and_a_charge_the_energy_in) {
    recordSample();
    endRun();
    const TestedOutcome drain = presenter.tested();
    EXPECT_TRUE(drain.what.startsWith(QStringLiteral("usable fraction"))) << drain.what.toStdString();
    EXPECT_TRUE(drain.outcome.startsWith(QStringLiteral("78"))) << drain.outcome.toStdString(); // 936 Wh of 1200 Wh
    ullage::Run charge = record().run;
    charge.kind = RunKind::charge;
    ASSERT_TRUE(document.updateRun(charge));
    EXPECT_EQ(presenter.tested().what, QStringLiteral("energy in"));
}

TEST_F(RunPresenterTest, the_reading_entered_last_is_not_that_of_the_latest_time) {
    recordSample(3);
    ReadingValues forgotten;
    forgotten.time_ms = readings()[1].values.time_ms + 60'000;
    forgotten.register_wh = 4384;
    const auto noted = document.record(run.uuid, forgotten);
    ASSERT_TRUE(noted) << noted.error().sentence();
    EXPECT_EQ(presenter.lastEntered(), uuidOf(noted.value()));
    ASSERT_TRUE(presenter.withdraw({uuidOf(noted.value())}));
    EXPECT_EQ(presenter.lastEntered(), uuidOf(readings().back()));
}

TEST_F(RunPresenterTest, a_reading_to_amend_comes_with_its_values_and_a_line_for_each_version) {
    recordSample(2);
    const Reading second = readings()[1];
    auto values = second.values;
    values.register_wh = 4380;
    ASSERT_TRUE(presenter.amend(second.uuid, values, QStringLiteral("misread")));
    const auto reading = presenter.toAmend(uuidOf(second));
    ASSERT_TRUE(reading);
    EXPECT_EQ(reading->values.register_wh, 4380);
    EXPECT_EQ(reading->time_zone, "Europe/Paris");
    ASSERT_EQ(reading->history.size(), 2);
    EXPECT_TRUE(reading->history.join(QLatin1Char('\n')).contains(QStringLiteral("misread")));
}

TEST_F(RunPresenterTest, withdrawing_stops_at_the_first_reading_that_is_refused) {
    recordSample(3);
    const auto before = readings();
    EXPECT_FALSE(presenter.withdraw({uuidOf(before[0]), ReadingId("no such reading"), uuidOf(before[2])}));
    const auto after = readings();
    ASSERT_EQ(after.size(), 2U);
    EXPECT_EQ(after[0].uuid, before[1].uuid);
    EXPECT_EQ(after[1].uuid, before[2].uuid);
}

} // namespace
} // namespace ullage
