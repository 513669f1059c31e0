// SPDX-License-Identifier: GPL-3.0-or-later
// A log and the end of its run: one stops before the other, or goes on behind it.
#include "core/measure/plain_log.h"
#include "measure/energy_analysis.h"
#include "support/simulated_log.h"

#include <gtest/gtest.h>

#include <cmath>

namespace ullage::test {
namespace {

TEST(LogEnd, energy_beyond_a_log_that_ends_early_is_said_to_be_missing) {
    RecordBuilder run = gauge_only();
    PlainLog log;
    log.to_h = 7.5;
    give_log(run.record(), log.samples());
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_EQ(energy.delivered_wh.kind, Kind::at_least);
    EXPECT_NEAR(*energy.delivered_wh.value, 7.5 * 80, 1.5) << "to its last sample, not to the last reading within it";
    EXPECT_NE(energy.track.missing_reason.text().find("the log ends before the end of the run"), std::string::npos) << energy.track.missing_reason;
    EXPECT_EQ(energy.points.size(), 8u);
}

TEST(LogEnd, a_log_between_the_only_two_readings_of_a_run_tells_what_was_delivered_at_least) {
    RecordBuilder run;
    run.at(0, 100, std::nullopt).at(10, 0, std::nullopt);
    run.record().run.end = RunEnd::found_off;
    PlainLog log;
    log.to_h = 7.5;
    give_log(run.record(), log.samples());
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_EQ(energy.delivered_wh.kind, Kind::at_least) << energy.delivered_wh.reason;
    EXPECT_NEAR(*energy.delivered_wh.value, 7.5 * 80, 1.5);
}

TEST(LogEnd, a_log_that_ends_under_load_puts_the_cut_off_of_a_run_found_off_behind_it) {
    for (const bool with_register : {true, false}) {
        RecordBuilder run;
        run.at(0, 100, std::nullopt).at(10, 0, std::nullopt);
        run.record().run.end = RunEnd::found_off;
        run.record().run.end_noticed_within_min.reset();
        PlainLog log;
        log.to_h = 7.5;
        log.with_register = with_register;
        log.with_power = !with_register;
        give_log(run.record(), log.samples());
        const CutOffMoment moment = analyse_energy(run.record()).cut_off.value();
        EXPECT_EQ(moment.basis, CutOffBasis::bracket);
        EXPECT_NEAR(moment.lower_h, 7.5, 0.05) << moment.words;
        EXPECT_NEAR(moment.upper_h, 10, 1e-9);
        EXPECT_NE(moment.words.text().find("between the last row of the log"), std::string::npos) << moment.words;
    }
}

TEST(LogEnd, a_log_that_goes_on_after_the_last_reading_of_an_open_run_is_counted_to_its_end) {
    RecordBuilder run;
    run.at(0, 100, {}).at(2, 80, {}).at(4, 60, {});
    run.record().run.end = RunEnd::still_running;
    PlainLog log;
    log.to_h = 5.5;
    give_log(run.record(), log.samples());
    const EnergyAnalysis energy = analyse_energy(run.record());
    EXPECT_NEAR(*energy.delivered_wh.value, 440, 1);
    EXPECT_EQ(energy.track.points.back().reading, no_reading);
    EXPECT_EQ(energy.points.size(), 3u);
}

TEST(LogEnd, a_log_that_saw_the_power_cease_tells_when_a_run_found_off_ended) {
    for (const bool cycling : {false, true}) {
        RecordBuilder run;
        run.at(0, 100, {}).at(8, 20, {}).at(19, {}, {});
        run.record().run.end = RunEnd::found_off;
        run.record().run.end_noticed_within_min.reset();
        PlainLog log;
        if (cycling) log.watts = [](double h) { return std::fmod(std::round(3600 * h), 3600.0) < 900 ? 200.0 : 0.0; };
        give_log(run.record(), log.samples());
        const EnergyAnalysis energy = analyse_energy(run.record());
        EXPECT_EQ(energy.duration_h.kind, Kind::measured);
        // A load that pauses may have been off when the output went off.
        EXPECT_NEAR(*energy.duration_h.lower, (cycling ? 9.25 : 10) - 1.0 / 60, 0.01);
        EXPECT_NEAR(*energy.duration_h.upper, 10 + 1.0 / 60, 0.01);
        EXPECT_NE(energy.duration_h.reason.text().find("ceased at"), std::string::npos) << energy.duration_h.reason;
        EXPECT_EQ(energy.delivered_wh.kind, Kind::measured) << energy.track.missing_reason;
    }
}

TEST(LogEnd, a_run_found_off_keeps_what_its_log_holds_after_the_last_reading_with_the_output_on) {
    // 80 W for 10 h; the last note is at 8 h with the output on. 160 of the 800 Wh flowed after it.
    for (const bool with_power : {true, false}) {
        RecordBuilder run;
        run.at(0, 100, {}).at(4, 60, {}).at(8, 20, {});
        run.record().run.end = RunEnd::found_off;
        run.record().run.end_noticed_within_min.reset();
        PlainLog log;
        log.with_power = with_power;
        log.to_h = 14;
        give_log(run.record(), log.samples());
        const EnergyAnalysis energy = analyse_energy(run.record());
        EXPECT_NEAR(*energy.delivered_wh.value, 800, 1) << with_power;
        EXPECT_NEAR(*energy.duration_h.value, 10, 0.03) << with_power;
    }
}

TEST(LogEnd, what_the_log_holds_after_a_run_was_noted_as_off_is_another_runs) {
    // Off at 10 h, found off at 12 h; from 12.1 h on the meter feeds a charger at 400 W.
    RecordBuilder run;
    run.at(0, 100, {}).at(8, 20, {}).at(12, 0, {});
    run.record().run.end = RunEnd::found_off;
    run.record().run.end_noticed_within_min.reset();
    PlainLog log;
    log.to_h = 12.1;
    std::vector<TraceSample> samples = log.samples();
    double wh = *samples.back().register_wh;
    for (double s = 12.1 * 3600 + 5; s <= 14 * 3600; s += 5) {
        wh += 400 * 5 / 3600.0;
        TraceSample sample;
        sample.time_ms = RecordBuilder::moment_ms(0) + std::llround(1000 * s);
        sample.register_wh = std::floor(wh);
        sample.power_w = 400;
        samples.push_back(sample);
    }
    give_log(run.record(), samples);
    EXPECT_NEAR(*analyse_energy(run.record()).delivered_wh.value, 800, 1);
}

} // namespace
} // namespace ullage::test
