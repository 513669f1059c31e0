// SPDX-License-Identifier: GPL-3.0-or-later
// From a log file through the logbook to the delivered energy of its run.
#include "measure/energy_analysis.h"
#include "model/trace_thinner.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"
#include "trace/trace_import.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <fstream>
#include <string>

namespace ullage::test {
namespace {

constexpr UtcMs start_ms = 1'810'317'600'000;

class LoggedRun : public testing::Test {
protected:
    LoggedRun() : logbook_(Logbook::in_memory(clock_).value()) {
        Unit unit;
        unit.name = "Specimen";
        unit.rated_energy_wh = 1000;
        Meter meter;
        meter.name = "Meter";
        meter.limit_percent = 1;
        meter.step_wh = 1;
        meter_uuid_ = logbook_.add(meter).value().uuid;
        ullage::Run run;
        run.unit_uuid = logbook_.add(unit).value().uuid;
        run.meter_uuid = meter_uuid_;
        run.started_full = true;
        run_uuid_ = logbook_.add(run).value().uuid;
    }

    void note(double hours, double gauge_percent) {
        ReadingValues values;
        values.time_ms = start_ms + std::llround(hours * ms_per_hour);
        values.gauge_percent = gauge_percent;
        ASSERT_TRUE(logbook_.record(run_uuid_, values).ok());
    }

    /// 80 W for 10 h, a row each 10 s, the register in kWh.
    Result<ImportedTrace> import(bool with_register = true) {
        std::string text = with_register ? "epoch,energy (kWh),power (W)\n" : "epoch,power (W)\n";
        for (long s = 0; s <= 36'000; s += 10) {
            const std::string wh = std::to_string(5000 + 80 * s / 3600);
            text += std::to_string(start_ms / 1000 + s) + (with_register ? "," + wh.substr(0, 1) + "." + wh.substr(1) : "") + ",80\n";
        }
        const std::string path = folder_ / "log.csv";
        std::ofstream(path, std::ios::binary) << text;
        const Result<TracePreview> preview = preview_trace(path, {}, {}, {});
        if (!preview) return preview.error();
        return import_trace(logbook_, path, run_uuid_, meter_uuid_, preview.value().detection, {});
    }

    EnergyAnalysis analysed() const { return analyse_energy(logbook_.run_record(run_uuid_).value()); }

    FakeClock clock_;
    Logbook logbook_;
    MeterId meter_uuid_;
    RunId run_uuid_;
    TempFolder folder_;
};

TEST_F(LoggedRun, gauge_by_hand_and_register_by_log_are_one_run) {
    for (int h = 0; h <= 10; ++h) note(h, 100 - 10 * h);
    EXPECT_FALSE(analysed().delivered_wh.value);
    ASSERT_TRUE(import().ok());
    const EnergyAnalysis energy = analysed();
    EXPECT_NEAR(*energy.delivered_wh.value, 800, 1);
    EXPECT_EQ(energy.points.size(), 11u);
    EXPECT_NEAR(*logbook_.run_records().value().at(0).trace->points.back().register_wh, 5800, 1e-9);
}

TEST_F(LoggedRun, a_reading_noted_after_the_import_is_paired_with_the_log_too) {
    note(0, 100);
    note(5, 50);
    ASSERT_TRUE(import().ok());
    EXPECT_EQ(analysed().points.size(), 2u);
    note(7.5, 25);
    const EnergyAnalysis energy = analysed();
    ASSERT_EQ(energy.points.size(), 3u);
    EXPECT_NEAR(energy.points[2].delivered_wh, 600, 1.5);
}

TEST_F(LoggedRun, a_withdrawn_trace_no_longer_counts_and_counts_again_when_restored) {
    note(0, 100);
    note(10, 0);
    const TraceId uuid = import(false).value().trace.uuid;
    EXPECT_NEAR(*analysed().delivered_wh.value, 800, 0.5);
    ASSERT_TRUE(logbook_.set_trace_withdrawn(uuid, true).ok());
    EXPECT_FALSE(logbook_.run_record(run_uuid_).value().trace);
    EXPECT_FALSE(analysed().delivered_wh.value);
    ASSERT_TRUE(logbook_.set_trace_withdrawn(uuid, false).ok());
    EXPECT_NEAR(*analysed().delivered_wh.value, 800, 0.5);
}

TEST(TraceThinner, keeps_few_samples_of_many_and_all_about_the_noted_moments) {
    TraceThinner thinner({1'000'500}, 0, 2'000'000'000, 60);
    std::vector<TraceSample> some(1000);
    for (long block = 0; block < 2000; ++block) {
        for (long i = 0; i < 1000; ++i) {
            TraceSample& sample = some[static_cast<std::size_t>(i)];
            sample.time_ms = 1000 * (1000 * block + i);
            sample.register_wh = std::floor(static_cast<double>(sample.time_ms) / 3.6e6 * 80);
            sample.power_w = 80;
        }
        thinner.take(some);
    }
    const RunTrace trace = thinner.finish().value();
    EXPECT_LT(trace.points.size(), 2100u);
    const auto at = std::ranges::find(trace.points, 1'000'000, &TracePoint::time_ms);
    ASSERT_NE(at, trace.points.end());
    EXPECT_EQ((at + 1)->time_ms, 1'001'000);
    EXPECT_NEAR(trace.points.back().energy_wh, 80 * 1'999'999.0 / 3600, 1e-4);
    EXPECT_NEAR(trace.points.back().square_w2h, 6400 * 1'999'999.0 / 3600, 1e-2);
}

} // namespace
} // namespace ullage::test
