// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario.h"
#include "support/scenario_claims.h"
#include "support/scenario_log.h"
#include "support/scenario_specimen.h"
#include "support/source_dir.h"

#include "formats/sheets/load_list_file.h"
#include "formats/sheets/run_sheet.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <set>
#include <sstream>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

const std::filesystem::path sample_folder = source_dir() / "sample-data";

std::string content_of(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    EXPECT_TRUE(file.is_open()) << path;
    std::ostringstream text;
    text << file.rdbuf();
    return text.str();
}

TEST(Scenario, the_sheets_in_sample_data_are_what_the_generator_makes) {
    std::set<std::string> made;
    for (const ScenarioRun& run : sample_scenario()) {
        made.insert(run.file_name);
        EXPECT_EQ(content_of(sample_folder / run.file_name), write_run_sheet(run.simulated.record)) << run.file_name;
    }
    for (const ClaimRun& run : sample_claim_runs()) {
        made.insert(run.file_name);
        EXPECT_EQ(content_of(sample_folder / run.file_name), write_run_sheet(run.record)) << run.file_name;
    }
    const ScenarioRun logged = sample_logged_run().run;
    made.insert(logged.file_name);
    EXPECT_EQ(content_of(sample_folder / logged.file_name), write_run_sheet(logged.simulated.record));
    for (const ScenarioRun& run : sample_specimen_runs()) {
        made.insert(run.file_name);
        EXPECT_EQ(content_of(sample_folder / run.file_name), write_run_sheet(run.simulated.record)) << run.file_name;
    }
    std::set<std::string> found;
    for (const auto& entry : std::filesystem::directory_iterator(sample_folder))
        if (entry.path().extension() == ".csv") found.insert(entry.path().filename().string());
    EXPECT_EQ(found, made);
}

TEST(Scenario, the_load_list_in_sample_data_is_what_the_generator_makes) {
    const auto [file, list] = sample_load_list();
    EXPECT_EQ(content_of(sample_folder / "load-lists" / file), write_load_list(list));
    const auto read = read_load_list(write_load_list(list), file);
    ASSERT_TRUE(read.ok()) << read.error().sentence();
    EXPECT_EQ(read.value(), list);
}

TEST(Scenario, the_log_in_sample_data_is_what_the_generator_makes) {
    const LoggedRun logged = sample_logged_run();
    EXPECT_EQ(content_of(sample_folder / "logs" / logged.run.file_name), logged.log);
}

TEST(Scenario, its_sheets_read_back_as_the_simulated_readings) {
    for (const ScenarioRun& run : sample_scenario()) {
        const auto sheet = read_run_sheet(write_run_sheet(run.simulated.record), run.file_name);
        ASSERT_TRUE(sheet.ok()) << sheet.error().sentence();
        EXPECT_TRUE(sheet.value().notices.empty());
        const auto& readings = sheet.value().record.readings;
        ASSERT_EQ(readings.size(), run.simulated.record.readings.size());
        for (std::size_t i = 0; i < readings.size(); ++i)
            EXPECT_EQ(readings[i].values, run.simulated.record.readings[i].values) << run.file_name << " row " << i;
    }
}

TEST(Scenario, the_readme_tells_the_truth_of_every_run) {
    std::vector<ScenarioRun> runs = sample_scenario();
    runs.push_back(sample_logged_run().run);
    for (ScenarioRun& run : sample_specimen_runs()) runs.push_back(std::move(run));
    EXPECT_NE(content_of(sample_folder / "README.md").find(truth_table(runs)), std::string::npos)
        << "print it with make_sample_data and put it into sample-data/README.md";
}

TEST(Scenario, each_run_has_a_dozen_to_three_dozen_readings) {
    for (const ScenarioRun& run : sample_scenario()) {
        EXPECT_GE(run.simulated.record.readings.size(), 12U) << run.file_name;
        EXPECT_LE(run.simulated.record.readings.size(), 35U) << run.file_name;
    }
}

TEST(Scenario, every_planned_note_was_taken_before_the_output_went_off) {
    // A note that falls behind the cut-off would vanish. The last planned ones are some minutes before it (22 in the
    // slowest drain, the one without a load), those before them a good deal earlier.
    for (const ScenarioRun& run : sample_scenario()) {
        const auto& readings = run.simulated.truth.readings;
        const double last_but_one_h = readings[readings.size() - 2].hours;
        if (run.simulated.record.run.end == RunEnd::cut_off_seen) {
            EXPECT_LT(run.simulated.truth.cut_off_hours - last_but_one_h, 0.4) << run.file_name;
        }
    }
}

TEST(Scenario, it_shows_what_it_promises) {
    std::map<std::string, std::vector<RunTruth>> full_drains;
    std::set<RunEnd> ends;
    std::set<std::string> meters;
    bool zeroed = false, no_load = false, gauge_alone = false, register_alone = false;
    for (const ScenarioRun& run : sample_scenario()) {
        const RunRecord& record = run.simulated.record;
        if (run.simulated.truth.cut_off && record.run.kind == RunKind::drain) full_drains[record.unit.name].push_back(run.simulated.truth);
        ends.insert(record.run.end);
        meters.insert(record.meter.value().name);
        no_load = no_load || (record.run.kind == RunKind::no_load_drain && run.simulated.truth.delivered_wh == 0);
        for (std::size_t i = 1; i + 1 < record.readings.size(); ++i) {
            const ReadingValues& values = record.readings[i].values;
            zeroed = zeroed || values.mark == MarkKind::meter_zeroed;
            gauge_alone = gauge_alone || (values.gauge_percent && !values.register_wh);
            register_alone = register_alone || (values.register_wh && !values.gauge_percent && !values.mark);
        }
    }
    EXPECT_EQ(full_drains["Osk 1200"].size(), 3U);
    EXPECT_EQ(full_drains["Pelm 900"].size(), 2U);
    EXPECT_EQ(full_drains["Tarrow 2k"].size(), 1U);
    EXPECT_EQ(ends, (std::set{RunEnd::cut_off_seen, RunEnd::found_off, RunEnd::stopped_by_tester}));
    EXPECT_EQ(meters, (std::set<std::string>{"Socket meter A", "Socket meter B"}));
    EXPECT_TRUE(zeroed && no_load && gauge_alone && register_alone);
    // Run times of the two drains far enough apart to tell the no-load draw.
    EXPECT_GT(full_drains["Osk 1200"][1].output_on_h, 1.5 * full_drains["Osk 1200"][0].output_on_h);
    EXPECT_GT(full_drains["Pelm 900"][0].output_on_h, 1.5 * full_drains["Pelm 900"][1].output_on_h);
    EXPECT_NEAR(full_drains["Pelm 900"][0].no_load_draw_w, 38, 0.5);
    EXPECT_NEAR(full_drains["Pelm 900"][0].gauge_at_cut_off_percent, 9, 1e-9);
}

TEST(Scenario, the_slow_drain_sticks_by_seventeen_points_and_the_fast_one_by_less) {
    double slow_pt = 0;
    double fast_pt = 0;
    for (const ScenarioRun& run : sample_scenario()) {
        if (run.simulated.truth.stuck.empty()) continue;
        double most_pt = 0;
        for (const ReadingTruth& reading : run.simulated.truth.readings) most_pt = std::max(most_pt, reading.gauge_percent - reading.stored_percent);
        if (run.file_name == "05-osk-1200-drain-310-w.csv") fast_pt = most_pt;
        if (run.file_name == "06-osk-1200-drain-64-w.csv") slow_pt = most_pt;
    }
    EXPECT_GT(slow_pt, 13); // at the readings; between them up to 17
    EXPECT_LE(slow_pt, 17);
    EXPECT_GT(fast_pt, 3);
    EXPECT_LT(fast_pt, 7.1);
}

} // namespace
} // namespace ullage::test
