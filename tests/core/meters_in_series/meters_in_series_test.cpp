// SPDX-License-Identifier: GPL-3.0-or-later
#include "meters_in_series/meters_in_series.h"

#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

namespace ullage {
namespace {

using test::RecordBuilder;

Meter wall_meter(std::optional<double> limit_percent) { return Meter{MeterId("wall"), "Wall", 1.0, limit_percent, std::nullopt, 1.0, {}}; }

/// 5 h at 100 W and 5 h at 400 W; the second meter says `ratio` of the first at each.
RecordBuilder in_series(double ratio_at_100, double ratio_at_400, std::optional<double> second_limit = 1.0) {
    RecordBuilder run;
    run.record().second_meter = wall_meter(second_limit);
    run.record().run.second_meter_uuid = MeterId("wall");
    for (int i = 0; i <= 10; ++i) {
        const double low_h = std::min(i, 5), high_h = std::max(0, i - 5);
        run.at(i, {}, std::floor(7000 + 100 * low_h + 400 * high_h));
        run.record().readings.back().values.second_register_wh = std::floor(300.5 + ratio_at_100 * 100 * low_h + ratio_at_400 * 400 * high_h);
    }
    return run;
}

std::vector<SeriesLoad> loads_of(const RunRecord& record) {
    const auto found = meters_in_series({&record});
    return found.empty() ? std::vector<SeriesLoad>() : found.front().loads;
}

TEST(MetersInSeries, the_ratio_of_their_gains_is_told_load_by_load) {
    const RecordBuilder run = in_series(1.01, 0.995);
    const auto loads = loads_of(RecordBuilder(run).record());
    ASSERT_EQ(loads.size(), 2u);
    EXPECT_NEAR(loads[0].load_w, 100, 0.5);
    EXPECT_NEAR(loads[1].load_w, 400, 0.5);
    EXPECT_NEAR(*loads[0].ratio.value, 1.01, 0.003);
    EXPECT_NEAR(*loads[1].ratio.value, 0.995, 0.001);
    EXPECT_LE(*loads[0].ratio.lower, 1.01);
    EXPECT_GE(*loads[0].ratio.upper, 1.01);
}

TEST(MetersInSeries, the_interval_holds_the_steps_of_both_registers_and_the_seconds_between_two_displays) {
    RecordBuilder run = in_series(1, 1);
    const SeriesLoad load = loads_of(run.record()).at(1);
    // Five stretches of 400 Wh by 1 Wh steps, and 10 s at 400 W (1.11 Wh) at each end.
    const double first = std::sqrt(5.0 / 6 + 5 * 2 * std::pow(400 * 10 / 3600.0, 2) / 3) / 2000, second = std::sqrt(5.0 / 6) / 2000;
    EXPECT_NEAR(load.ratio.half_width().value(), 1.959964 * std::hypot(first, second), 1e-5);
}

TEST(MetersInSeries, what_both_limits_leave_is_narrower_than_either) {
    RecordBuilder run = in_series(1.015, 1.015);
    const SeriesLoad load = loads_of(run.record()).at(1);
    EXPECT_FALSE(load.contradiction);
    const double half = 100 * *load.ratio.half_width();
    // e1 - e2 = 1.5 %, both within ±1 %: e1 from 0.5 % on, e2 up to -0.5 %.
    EXPECT_NEAR(load.first_error->low_percent, 0.5 - half, 0.06);
    EXPECT_EQ(load.first_error->high_percent, 1.0);
    EXPECT_EQ(load.second_error->low_percent, -1.0);
    EXPECT_NEAR(load.second_error->high_percent, -0.5 + half, 0.06);
    EXPECT_NE(load.sentence.text().find("if both keep to them"), std::string::npos) << load.sentence;
}

TEST(MetersInSeries, what_no_limits_allow_is_a_finding) {
    RecordBuilder run = in_series(1.03, 1.03);
    const SeriesLoad load = loads_of(run.record()).at(1);
    EXPECT_TRUE(load.contradiction);
    EXPECT_FALSE(load.first_error.has_value());
    EXPECT_NE(load.sentence.text().find("at least one meter is outside its limit"), std::string::npos) << load.sentence;
}

TEST(MetersInSeries, without_a_limit_the_ratio_stands_alone) {
    RecordBuilder run = in_series(1.03, 1.03, std::nullopt);
    const SeriesLoad load = loads_of(run.record()).at(0);
    EXPECT_TRUE(load.ratio.value.has_value());
    EXPECT_FALSE(load.contradiction);
    EXPECT_FALSE(load.first_error.has_value());
}

TEST(MetersInSeries, corrections_that_are_stated_are_taken_out_first) {
    RecordBuilder run = in_series(1.03, 1.03);
    run.record().second_meter->points = {{100, 1 / 1.03, 0.2, 2.0}, {400, 1 / 1.03, 0.2, 2.0}};
    for (const SeriesLoad& load : loads_of(run.record())) EXPECT_NEAR(*load.ratio.value, 1, 0.003);
}

TEST(MetersInSeries, runs_that_name_them_the_other_way_round_count_together) {
    RecordBuilder run = in_series(1.01, 1.01), turned = in_series(1 / 1.01, 1 / 1.01);
    RunRecord& other = turned.record();
    other.run.uuid = RunId("other run");
    std::swap(*other.meter, *other.second_meter);
    const auto found = meters_in_series({&run.record(), &other});
    ASSERT_EQ(found.size(), 1u);
    EXPECT_EQ(found[0].run_uuids.size(), 2u);
    EXPECT_NEAR(*found[0].loads.at(1).ratio.value, 1.01, 0.001);
    EXPECT_LT(*found[0].loads[1].ratio.half_width(), *loads_of(run.record())[1].ratio.half_width());
}

TEST(MetersInSeries, a_register_zeroed_between_two_readings_counts_on_neither_side_of_it) {
    RecordBuilder run = in_series(1.01, 1.01);
    for (std::size_t i = 4; i < run.record().readings.size(); ++i) *run.record().readings[i].values.second_register_wh -= 600;
    run.record().readings[4].values.mark = MarkKind::meter_zeroed;
    *run.record().readings[4].values.second_register_wh = 0;
    for (std::size_t i = 5; i < run.record().readings.size(); ++i)
        *run.record().readings[i].values.second_register_wh = std::floor(1.01 * (*run.record().readings[i].values.register_wh - 7400));
    for (std::size_t i = 4; i < run.record().readings.size(); ++i) *run.record().readings[i].values.register_wh -= 7400;
    for (const SeriesLoad& load : loads_of(run.record())) EXPECT_NEAR(*load.ratio.value, 1.01, 0.004);
}

TEST(MetersInSeries, one_meter_or_one_that_took_over_is_no_pair) {
    RecordBuilder run = in_series(1, 1);
    run.record().readings[3].values.mark = MarkKind::meter_swapped;
    EXPECT_TRUE(loads_of(run.record()).empty());
    RecordBuilder alone = in_series(1, 1);
    alone.record().second_meter.reset();
    EXPECT_TRUE(loads_of(alone.record()).empty());
    RecordBuilder still;
    still.record().second_meter = wall_meter(1.0);
    still.at(0, {}, 5).at(5, {}, 10);
    for (Reading& reading : still.record().readings) reading.values.second_register_wh = reading.values.register_wh;
    EXPECT_TRUE(loads_of(still.record()).empty()) << "five steps say nothing";
}

TEST(MetersInSeries, the_interval_covers_the_true_ratio) {
    std::mt19937_64 engine(2027);
    std::uniform_real_distribution<double> phase(0, 1), late_h(-10.0 / 3600, 10.0 / 3600);
    int held = 0;
    constexpr int seeds = 400;
    for (int seed = 0; seed < seeds; ++seed) {
        RecordBuilder run;
        run.record().second_meter = wall_meter(1.0);
        const double a = 100 * phase(engine), b = 100 * phase(engine);
        for (int i = 0; i <= 6; ++i) {
            run.at(i, {}, std::floor(a + 150 * i));
            run.record().readings.back().values.second_register_wh = std::floor(b + 1.004 * 150 * (i + late_h(engine)) + 1);
        }
        const SeriesLoad load = loads_of(run.record()).at(0);
        held += *load.ratio.lower <= 1.004 && 1.004 <= *load.ratio.upper ? 1 : 0;
    }
    EXPECT_GE(held, 0.93 * seeds);
}

} // namespace
} // namespace ullage
