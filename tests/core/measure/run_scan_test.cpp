// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/run_scan.h"

#include "measure/energy_analysis.h"
#include "measure/inside/register_path.h"
#include "support/record_builder.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage {
namespace {

using test::RecordBuilder;

TEST(RunScan, one_pass_picks_out_marks_off_spans_rises_and_moments) {
    RecordBuilder run;
    run.at(0, 100, {}).at(0.5, 95, 500).at(1, 97, 540, MarkKind::output_tripped).at(1.5, {}, {}, MarkKind::output_reset);
    run.at(2, 90, 10, MarkKind::meter_zeroed).at(3, 80, 90).at(3, 80, 90).at(4, 70, {}, MarkKind::cut_off);
    run.at(3.5, 10, 9999);
    run.record().readings.back().withdrawn = true;
    const RunScan scan = scan_run(run.record());
    ASSERT_EQ(scan.registers.size(), 4u);
    ASSERT_EQ(scan.marks.size(), 1u);
    EXPECT_EQ(scan.marks[0].node, 2u);
    EXPECT_EQ(scan.marks[0].mark, MarkKind::meter_zeroed);
    EXPECT_EQ(scan.duplicates, (std::vector<std::size_t>{6}));
    EXPECT_EQ(scan.gauges.size(), 7u);
    ASSERT_EQ(scan.rises.size(), 1u);
    EXPECT_EQ(scan.rises[0].before, 1u);
    EXPECT_EQ(scan.rises[0].after, 2u);
    ASSERT_EQ(scan.output_off.size(), 1u);
    EXPECT_DOUBLE_EQ(hours_between(scan.output_off[0].from_ms, scan.output_off[0].to_ms), 0.5);
    EXPECT_DOUBLE_EQ(hours_between(*scan.first_ms, *scan.last_ms), 4);
    EXPECT_DOUBLE_EQ(hours_between(*scan.first_ms, *scan.before_last_ms), 3);
    EXPECT_EQ(scan.cut_off_ms, scan.last_ms);
    EXPECT_TRUE(scan.row_before_register);
    EXPECT_TRUE(scan.row_after_register);
}

TEST(RunScan, an_output_that_stays_off_is_off_to_the_last_reading) {
    RecordBuilder run;
    run.at(0, 100, 500).at(1, 90, 580, MarkKind::output_tripped).at(3, 88, 580);
    const RunScan scan = scan_run(run.record());
    ASSERT_EQ(scan.output_off.size(), 1u);
    EXPECT_EQ(scan.output_off[0].to_ms, *scan.last_ms);
    RecordBuilder empty;
    EXPECT_FALSE(scan_run(empty.record()).first_ms.has_value());
}

TEST(RegisterPath, a_register_that_only_grows_needs_no_search_and_the_search_keeps_all_of_it) {
    RecordBuilder run;
    for (int i = 0; i < 50; ++i) run.at(i * 0.1, {}, 1000 + 7 * i);
    const RunScan scan = scan_run(run.record());
    PathRules rules;
    rules.limit_w = 2000;
    rules.moment_doubt_h = 1.0 / 60;
    rules.usual_w = usual_load_w(scan.registers, scan.marks, rules);
    ASSERT_TRUE(only_grows(scan.registers, scan.marks, rules));
    std::vector<RegisterNode> nodes;
    for (const RegisterPoint& point : scan.registers) nodes.push_back({point.reading, point.time_ms, point.register_wh, {}, 0});
    const std::vector<PathNode> path = plausible_path(nodes, rules);
    ASSERT_EQ(path.size(), nodes.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        EXPECT_EQ(path[i].node, i);
        EXPECT_EQ(path[i].step, i == 0 ? Step::first : Step::plain);
    }
}

TEST(RegisterPath, a_fall_a_leap_or_a_mark_needs_the_search) {
    const auto grows = [](RecordBuilder& run) {
        const RunScan scan = scan_run(run.record());
        PathRules rules;
        rules.limit_w = 2000;
        return only_grows(scan.registers, scan.marks, rules);
    };
    RecordBuilder fall, leap, marked, marked_at_start;
    fall.at(0, {}, 500).at(1, {}, 400);
    leap.at(0, {}, 500).at(1, {}, 9000);
    marked.at(0, {}, 500).at(1, {}, 560, MarkKind::meter_zeroed);
    marked_at_start.at(0, {}, 0, MarkKind::meter_zeroed).at(1, {}, 60);
    EXPECT_FALSE(grows(fall));
    EXPECT_FALSE(grows(leap));
    EXPECT_FALSE(grows(marked));
    EXPECT_TRUE(grows(marked_at_start));
}

TEST(LoadSquares, the_integral_up_to_any_point_is_that_of_a_plain_sum) {
    RecordBuilder run;
    double wh = 0;
    for (int i = 0; i < 300; ++i) run.at(i * 0.25, {}, std::round(wh += 10 + 8 * std::sin(0.3 * i)));
    const RegisterTrack track = unwrap_register(run.record());
    const LoadSquares squares(track);
    double sum = 0;
    for (std::size_t i = 0; i < track.points.size(); ++i) {
        if (i > 0) sum += std::pow(track.points[i].delivered_wh - track.points[i - 1].delivered_wh, 2) / 0.25;
        EXPECT_NEAR(squares.up_to(track, i), sum, 1e-9 * sum + 1e-9) << i;
    }
}

TEST(EnergyAnalysis, the_changes_of_the_gauge_are_listed) {
    RecordBuilder run;
    run.at(0, 100, 0).at(1, 100, 10).at(2, 99, 20).at(3, {}, 30).at(4, 99, 40).at(5, 98, 50).at(6, 98, 60);
    EXPECT_EQ(analyse_energy(run.record()).gauge_changes, (std::vector<std::size_t>{2, 4}));
}

} // namespace
} // namespace ullage
