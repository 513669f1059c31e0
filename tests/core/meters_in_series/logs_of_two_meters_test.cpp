// SPDX-License-Identifier: GPL-3.0-or-later
// Two meters that log the same run: their ratio, and the one standing in for a gap of the other. Gains, clocks, steps and gaps are known.
#include "measure/energy_analysis.h"
#include "meters_in_series/meters_in_series.h"
#include "support/simulated_log.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

constexpr double second_limit_percent = 3;

struct TwoLogs {
    SimulatedRun run;
    double second_gain_percent = 0;
};

/// Both clocks were set by an estimate of 8 s; the first log may have gaps, the second always has one of its own.
TwoLogs two_logs(int seed, bool registers, std::vector<std::pair<double, double>> first_gaps_h = {}) {
    RunSetup setup;
    setup.unit.name = "Specimen";
    setup.unit.rated_energy_wh = 1050;
    setup.unit.rated_output_w = 1200;
    setup.physics = {1000, 12, 1.12, 4e-5};
    setup.load = LoadProfile::cycling(150, 40, 0.5, 0.4);
    setup.meter->meter.uuid = MeterId("first");
    setup.meter->meter.name = "First";
    setup.meter->meter.step_wh = 1;
    setup.meter->meter.limit_percent = 1;
    setup.meter->meter.load_part_percent = 0;
    setup.tester.interval_h = 2;
    setup.tester.without_register = 1;
    Random random(static_cast<std::uint64_t>(seed) * 104'729);
    TwoLogs two{simulate_run(setup, static_cast<std::uint64_t>(seed)), random.uniform(-second_limit_percent, second_limit_percent)};
    RunRecord& record = two.run.record;
    record.run.meter_uuid = record.meter->uuid;
    for (Reading& reading : record.readings) reading.values.register_wh.reset();
    LogSetup first, second;
    first.with_register = second.with_register = registers;
    first.interval_s = 15;
    first.behind_s = random.normal(8);
    first.gaps_h = std::move(first_gaps_h);
    give_log(record, simulated_log(setup, two.run, first, static_cast<std::uint64_t>(seed)), 8);
    second.interval_s = 20;
    second.behind_s = random.normal(8);
    second.gain_error_percent = two.second_gain_percent;
    second.gaps_h = {{0.7, 0.9}};
    Meter meter;
    meter.uuid = MeterId("second");
    meter.name = "Second";
    meter.limit_percent = second_limit_percent;
    meter.load_part_percent = 0;
    give_other_log(record, meter, simulated_log(setup, two.run, second, static_cast<std::uint64_t>(seed) + 7), 8);
    return two;
}

TEST(LogsOfTwoMeters, the_interval_of_their_ratio_covers_the_true_one) {
    for (const bool registers : {true, false}) {
        int covered = 0, told = 0;
        double width = 0;
        for (int seed = 1; seed <= 100; ++seed) {
            const TwoLogs two = two_logs(seed, registers);
            const double truth = (100 + two.second_gain_percent) / (100 + two.run.truth.gain_error_percent);
            for (const MetersInSeries& pair : meters_in_series({&two.run.record}))
                for (const SeriesLoad& load : pair.loads) {
                    ++told;
                    covered += truth >= *load.ratio.lower && truth <= *load.ratio.upper;
                    width += *load.ratio.upper - *load.ratio.lower;
                    EXPECT_FALSE(load.contradiction) << load.sentence;
                    EXPECT_EQ(pair.first.name, "First");
                }
        }
        ASSERT_GE(told, 100);
        EXPECT_GE(covered * 100, told * 93) << registers;
        EXPECT_LT(width / told, 0.06) << "else it would tell nothing about limits of 1 and 3 %";
    }
}

TEST(LogsOfTwoMeters, a_gap_of_the_first_is_filled_by_the_second_and_delivered_energy_covers_the_truth_with_a_wider_interval) {
    for (const auto& [from_h, to_h] : {std::pair(1.5, 4.0), std::pair(-1.0, 0.6), std::pair(4.0, 30.0)}) {
        int covered = 0;
        for (int seed = 1; seed <= 100; ++seed) {
            const TwoLogs two = two_logs(seed, false, {{from_h, to_h}});
            const EnergyAnalysis energy = analyse_energy(two.run.record);
            ASSERT_EQ(energy.delivered_wh.kind, Kind::measured) << energy.delivered_wh.reason << energy.log_sentence;
            covered += two.run.truth.delivered_wh >= *energy.delivered_wh.lower && two.run.truth.delivered_wh <= *energy.delivered_wh.upper;
            EXPECT_NE(energy.log_sentence.text().find("the log of Second stands in with"), std::string::npos) << energy.log_sentence;
            const EnergyAnalysis whole = analyse_energy(two_logs(seed, false).run.record);
            EXPECT_GT(*energy.delivered_wh.half_width(), *whole.delivered_wh.half_width());
            RunRecord alone = two.run.record;
            alone.other_logs.clear();
            EXPECT_NE(analyse_energy(alone).delivered_wh.kind, Kind::measured) << "nothing else fills it";
        }
        EXPECT_GE(covered, 93) << from_h;
    }
}

TEST(LogsOfTwoMeters, the_meter_that_stands_in_has_a_line_of_its_own_in_the_budget) {
    const TwoLogs two = two_logs(1, false, {{1.5, 4.0}});
    std::string sources;
    for (const BudgetLine& line : analyse_energy(two.run.record).budget.lines) sources += line.source + "; ";
    EXPECT_NE(sources.find("meter gain of First, limit ±1 %"), std::string::npos) << sources;
    EXPECT_NE(sources.find("meter gain of Second, limit ±3 %"), std::string::npos) << sources;
    EXPECT_NE(sources.find("log of Second standing in for"), std::string::npos) << sources;
}

TEST(LogsOfTwoMeters, where_the_second_has_a_gap_too_it_does_not_stand_in) {
    const TwoLogs two = two_logs(1, false, {{0.6, 1.2}});
    EXPECT_EQ(analyse_energy(two.run.record).delivered_wh.kind, Kind::at_least);
}

} // namespace
} // namespace ullage::test
