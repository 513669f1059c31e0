// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"
#include "store/logbook.h"

#include <chrono>
#include <fstream>
#include <thread>

namespace ullage::test {
namespace {

class ImportTrace : public Commands {
protected:
    /// Imports a log into the first run of "Specimen", which begins at 2027-05-11T06:00Z.
    Outcome import(const std::string& log, std::vector<std::string> more = {}) {
        std::vector<std::string> args{"import-trace", written("log.csv", log), "--logbook", logbook_, "--unit", "Specimen", "--run", "1"};
        args.insert(args.end(), more.begin(), more.end());
        return run(args);
    }

    static void expect_part(const std::string& text, const std::string& part) { EXPECT_NE(text.find(part), std::string::npos) << text; }

    std::string logbook_ = logbook();
};

constexpr const char* plain_log =
    "time,register (Wh),power (W)\n2027-05-11T06:00:00Z,0,80\n2027-05-11T06:00:10Z,0.2,80\nbroken,1,1\n2027-05-11T06:00:20Z,0.4,80\n";

TEST_F(ImportTrace, says_how_the_log_is_read_what_was_taken_and_which_row_was_not) {
    const Outcome outcome = import(plain_log);
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    expect_part(outcome.out, "register = column 2 `register (Wh)` in Wh");
    expect_part(outcome.out, "4 rows: 3 taken, 1 left out");
    expect_part(outcome.out, "line 4: broken,1,1");
    expect_part(outcome.out, "3 samples from 2027-05-11T06:00Z to 2027-05-11T06:00:20Z, into run 1 of Specimen, meter Bench meter");
}

TEST_F(ImportTrace, the_unit_s_own_log_comes_in_without_a_meter_and_is_told_in_analyse_json_and_tables) {
    std::string rows = "time;SoC (%);AC output (W)\n";
    for (int minute = 0; minute <= 300; ++minute)
        rows += "2027-05-11T" + std::string(minute < 240 ? "0" : "") + std::to_string(6 + minute / 60) + ":" + (minute % 60 < 10 ? "0" : "") +
                std::to_string(minute % 60) + ":00Z;" + (minute % 50 == 7 ? "255" : std::to_string(100 - minute / 6)) + ";63\n";
    const Outcome outcome = import(rows);
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    expect_part(outcome.out, "gauge = column 2 `SoC (%)` in %");
    expect_part(outcome.out, "output = column 3 `AC output (W)` in W");
    expect_part(outcome.out, "into run 1 of Specimen, the unit's gauge");
    const Outcome text = run({"analyse", logbook_, "--unit", "Specimen", "--run", "1"});
    expect_part(text.out, "The log of the gauge has");
    const Outcome json = run({"analyse", logbook_, "--unit", "Specimen", "--run", "1", "--format", "json"});
    expect_part(json.out, "\"gauge_log\": {");
    expect_part(json.out, "\"doubted\": 6");
    const Outcome table = run({"export-readings", logbook_, "--unit", "Specimen", "--run", "1", "--gauge-steps", "--format", "csv"});
    EXPECT_EQ(table.code, exit_good) << table.err;
    expect_part(table.out, "time,gauge_percent,delivered_wh,gauge_error_pt");
}

TEST_F(ImportTrace, a_power_beside_the_gauge_is_asked_about_and_mapped) {
    const char* log = "time,SoC (%),power (W)\n2027-05-11T06:00:00Z,100,80\n2027-05-11T06:00:10Z,100,80\n";
    const Outcome asked = import(log);
    EXPECT_EQ(asked.code, exit_bad_input);
    expect_one_line(asked.err);
    expect_part(asked.err, "did a meter measure it, or does the unit say so of itself?");
    expect_part(asked.err, "answer with --map");
    const Outcome answered = import(log, {"--map", "power=3"});
    EXPECT_EQ(answered.code, exit_good) << answered.err;
    expect_part(answered.out, "meter Bench meter, and the unit's gauge");
}

TEST_F(ImportTrace, a_preview_changes_no_byte_of_the_logbook) {
    const std::string before = file_text(logbook_);
    const Outcome outcome = import(plain_log, {"--preview"});
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    expect_part(outcome.out, "3 taken, 1 left out");
    expect_part(outcome.out, "Nothing was imported");
    EXPECT_EQ(file_text(logbook_), before);
}

TEST_F(ImportTrace, the_same_file_twice_is_refused_in_one_line) {
    EXPECT_EQ(import(plain_log).code, exit_good);
    const Outcome again = import(plain_log);
    EXPECT_EQ(again.code, exit_bad_input);
    expect_one_line(again.err);
    expect_part(again.err, "in the run already");
}

TEST_F(ImportTrace, an_open_question_names_the_option_that_answers_it) {
    const char* log = "Date,Time,Power (W)\n05/11/2027,06:00:00,80\n05/11/2027,06:00:10,80\n";
    const Outcome asked = import(log);
    EXPECT_EQ(asked.code, exit_bad_input);
    expect_one_line(asked.err);
    expect_part(asked.err, "--date-order");
    const Outcome answered = import(log, {"--date-order", "month-first", "--offset", "-00:00:05"});
    EXPECT_EQ(answered.code, exit_good) << answered.err;
    expect_part(answered.out, "2 samples from 2027-05-11T05:59:55Z");
}

TEST_F(ImportTrace, columns_and_their_units_can_be_named) {
    const Outcome outcome = import("0;1,5\n10;1,6\n", {"--map", "time=1,register=2:kWh"});
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    expect_part(outcome.out, "2027-05-11T06:00Z  1500 Wh");
    expect_part(outcome.out, "the log is taken to begin with the first reading of the run");
}

TEST_F(ImportTrace, analyse_then_says_what_the_log_tells_of_the_load) {
    std::string log = "epoch,register (Wh),power (W)\n";
    // 90 W for 6 min and 10 W for 24 min by turns, 10 h; the register rises by a tenth less than the power says.
    double wh = 0;
    for (long s = 0; s <= 36'000; s += 10) {
        const int watts = s % 1800 < 360 ? 90 : 10;
        log += std::to_string(1'810'015'200 + s) + "," + std::to_string(wh) + "," + std::to_string(watts) + "\n";
        wh += 0.9 * watts * 10 / 3600;
    }
    ASSERT_EQ(import(log).code, exit_good);
    const Outcome text = run({"analyse", logbook_, "--unit", "Specimen", "--run", "1"});
    EXPECT_EQ(text.code, exit_good) << text.err;
    expect_part(text.out, "Load by the log");
    expect_part(text.out, "on for 20.0 % of the time, 2.00 starts an hour");
    expect_part(text.out, "integrated power is 111.");
    const Outcome json = run({"analyse", logbook_, "--unit", "Specimen", "--format", "json"});
    expect_part(json.out, "\"starts_per_hour\"");
    expect_part(json.out, "\"load_by_trace\": null");
}

TEST_F(ImportTrace, the_clock_offset_is_given_in_seconds_or_estimated_from_the_hand_readings) {
    const Outcome given = import(plain_log, {"--clock-offset", "-5.5", "--preview"});
    EXPECT_EQ(given.code, exit_good) << given.err;
    expect_part(given.out, "2027-05-11T05:59:54.500Z");
    // The run was noted as 80 W from 06:00 on; this log is 20 min behind.
    std::string log = "epoch,register (Wh),power (W)\n";
    for (long s = 0; s <= 36'000; s += 10) log += std::to_string(1'810'014'000 + s) + "," + std::to_string(80 * s / 3600) + ",80\n";
    const Outcome estimated = import(log, {"--clock-offset", "estimate"});
    EXPECT_EQ(estimated.code, exit_good) << estimated.err;
    expect_part(estimated.out, "The log's clock is 0:19:");
    expect_part(estimated.out, "values noted by hand");
    const Outcome nothing = import("epoch,power (W)\n1810014000,80\n1810014010,80\n", {"--clock-offset", "estimate"});
    EXPECT_EQ(nothing.code, exit_bad_input);
    expect_one_line(nothing.err);
    EXPECT_EQ(import(plain_log, {"--clock-offset", "soon"}).code, exit_bad_input);
    EXPECT_EQ(import(plain_log, {"--clock-offset", "5", "--offset", "0:00:05"}).code, exit_usage);
}

TEST_F(ImportTrace, wrong_answers_are_said_in_one_line) {
    for (const std::vector<std::string>& wrong : std::vector<std::vector<std::string>>{{"--map", "power=9"},
                                                                                       {"--map", "speed=1"},
                                                                                       {"--map", "power=3:kWh"},
                                                                                       {"--map", "power"},
                                                                                       {"--zone", "Nowhere/Else"},
                                                                                       {"--start", "soon"},
                                                                                       {"--offset", "12"},
                                                                                       {"--meter", "none"}}) {
        const Outcome outcome = import(plain_log, wrong);
        EXPECT_EQ(outcome.code, exit_bad_input) << testing::PrintToString(wrong);
        expect_one_line(outcome.err);
    }
    EXPECT_EQ(import(plain_log, {"--run", "0"}).code, exit_usage);
    EXPECT_EQ(import(plain_log, {"--date-order", "guess"}).code, exit_usage);
}

TEST_F(ImportTrace, a_log_or_logbook_that_is_not_there_is_said_in_one_line) {
    const Outcome no_log = run({"import-trace", folder_ / "none.csv", "--logbook", logbook_, "--unit", "Specimen", "--run", "1"});
    EXPECT_EQ(no_log.code, exit_bad_input);
    expect_one_line(no_log.err);
    const Outcome no_logbook = run({"import-trace", written("log.csv", plain_log), "--logbook", folder_ / "none.ullage", "--run", "1"});
    EXPECT_EQ(no_logbook.code, exit_bad_input);
    expect_one_line(no_logbook.err);
}

TEST_F(ImportTrace, a_log_that_has_grown_gives_only_its_new_rows) {
    const std::string first = "epoch,register (Wh),power (W)\n1809842400,0,80\n1809842410,0.2,80\n";
    EXPECT_EQ(import(first).code, exit_good);
    const Outcome more = import(first + "1809842420,0.4,80\n1809842430,0.6\n1809842440,0.8,80\n");
    EXPECT_EQ(more.code, exit_good) << more.err;
    expect_part(more.out, "2 new samples added, 1 row left out");
    expect_part(more.out, "4 samples to 2027-05-09T06:00:40Z");
}

TEST_F(ImportTrace, follows_a_log_until_it_is_quiet_and_goes_on_another_time) {
    std::thread writer([path = (folder_ / "log.csv").string()] {
        std::this_thread::sleep_for(std::chrono::milliseconds(700));
        std::ofstream(path, std::ios::app) << "0,80\n1809842420,0.4,80\n";
    });
    const Outcome outcome = import("epoch,register (Wh),power (W)\n1809842400,0,80\n1809842410,", {"--follow", "--until-quiet", "1.5"});
    writer.join();
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    expect_part(outcome.out, "1 sample from 2027-05-09T06:00Z");
    expect_part(outcome.out, "Ended. log.csv: 3 samples to 2027-05-09T06:00:20Z");
    std::ofstream(folder_ / "log.csv", std::ios::app) << "1809842430,0.6,80\n";
    const Outcome later =
        run({"import-trace", folder_ / "log.csv", "--logbook", logbook_, "--unit", "Specimen", "--run", "1", "--follow", "--until-quiet", "0.1"});
    EXPECT_EQ(later.code, exit_good) << later.err;
    expect_part(later.out, "4 samples to");
}

TEST_F(ImportTrace, what_a_followed_log_gains_is_in_the_file_itself_within_seconds) {
    const SystemClock clock;
    const auto copy_reaches = [&](std::int64_t samples) {
        const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(5);
        do {
            std::filesystem::copy_file(logbook_, folder_ / "copy.ullage", std::filesystem::copy_options::overwrite_existing);
            const auto copy = Logbook::open(folder_ / "copy.ullage", OpenMode::read_only, clock);
            const auto traces = copy ? copy.value().traces() : Result<std::vector<Trace>>(copy.error());
            if (traces && !traces.value().empty() && traces.value().front().samples == samples) return true;
            std::this_thread::sleep_for(std::chrono::milliseconds(100));
        } while (std::chrono::steady_clock::now() < until);
        return false;
    };
    Outcome outcome;
    {
        const std::jthread follower([&] {
            outcome = import("epoch,register (Wh),power (W)\n1809842400,0,80\n", {"--follow", "--until-quiet", "8"});
        });
        EXPECT_TRUE(copy_reaches(1));
        std::ofstream(folder_ / "log.csv", std::ios::app) << "1809842410,0.2,80\n";
        EXPECT_TRUE(copy_reaches(2));
    }
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
}

TEST_F(ImportTrace, following_ends_in_a_sentence_where_it_cannot_go_on) {
    std::thread writer([path = (folder_ / "log.csv").string()] {
        std::this_thread::sleep_for(std::chrono::milliseconds(700));
        std::ofstream(path) << "epoch,amount (kWh)\n1809842420,4\n";
    });
    const Outcome outcome = import("epoch,register (Wh),power (W)\n1809842400,0,80\n", {"--follow", "--until-quiet", "20"});
    writer.join();
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    expect_part(outcome.err, "; the samples to 2027-05-09T06:00Z are in the logbook; the log is no longer followed");
}

} // namespace
} // namespace ullage::test
