// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include "formats/text/csv.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

using Json = nlohmann::json;
using ReadingsCommand = Commands;

std::vector<std::vector<std::string>> records_of(const std::string& text) {
    CsvReader reader(text);
    CsvRecord record;
    std::vector<std::vector<std::string>> records;
    for (Result<bool> more = reader.next(record); more.ok() && more.value(); more = reader.next(record)) records.push_back(record.fields);
    return records;
}

TEST_F(ReadingsCommand, one_run_has_a_row_for_each_reading) {
    const auto rows = records_of(run({"export-readings", logbook(), "--unit", "Other", "--run", "1", "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 12u);
    EXPECT_EQ(rows[0][0], "time");
    // 850 Wh in 10 h from 06:00Z, so 85 Wh an hour.
    EXPECT_EQ(rows[2],
              (std::vector<std::string>{"2027-05-13T07:00:00Z", "90", "85", "85", "85", rows[2][5], rows[2][6], rows[2][7], "measured", "", "", ""}));
    EXPECT_EQ(rows[11][10], "cut-off");
}

TEST_F(ReadingsCommand, all_runs_have_unit_maker_and_run_in_front) {
    const std::string path = logbook();
    const auto rows = records_of(run({"export-readings", path, "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 1u + 3 * 11);
    EXPECT_EQ((std::vector<std::string>(rows[0].begin(), rows[0].begin() + 4)), (std::vector<std::string>{"unit", "maker", "run", "time"}));
    EXPECT_EQ((std::vector<std::string>(rows[33].begin(), rows[33].begin() + 3)), (std::vector<std::string>{"Specimen", "Invented Works", "2"}));
    EXPECT_EQ(records_of(run({"export-readings", path, "--unit", "Specimen", "--format", "csv"}).out).size(), 1u + 2 * 11);
}

TEST_F(ReadingsCommand, intervals_stand_between_the_readings) {
    const Json json = Json::parse(run({"export-readings", logbook(), "--unit", "Other", "--run", "1", "--intervals", "--format", "json"}).out);
    ASSERT_EQ(json.at("rows").size(), 10u);
    EXPECT_EQ(json["rows"][0].at("from"), "2027-05-13T06:00:00Z");
    EXPECT_NEAR(json["rows"][0].at("delivered_wh").at("value").get<double>(), 85, 1e-9);
    EXPECT_NEAR(json["rows"][0].at("ratio").at("value").get<double>(), 0.85, 1e-9);
}

TEST_F(ReadingsCommand, every_format_can_be_written_by_the_ending_of_the_file) {
    const std::string path = logbook();
    for (const auto& [name, begins] : std::vector<std::pair<std::string, std::string>>{{"t.csv", "unit,maker,run,time"},
                                                                                       {"t.md", "# Readings of 3 runs"},
                                                                                       {"t.html", "<!DOCTYPE html>"},
                                                                                       {"t.xlsx", "PK"},
                                                                                       {"t.json", "{"},
                                                                                       {"t.tex", "% Readings of 3 runs"},
                                                                                       {"t.txt", "Readings of 3 runs"}}) {
        const Outcome outcome = run({"export-readings", path, "--output", folder_ / name});
        ASSERT_EQ(outcome.code, exit_good) << outcome.err;
        EXPECT_EQ(file_text(folder_ / name).substr(0, begins.size()), begins);
    }
    EXPECT_EQ(Json::parse(file_text(folder_ / "t.csv-metadata.json")).at("tableSchema").at("primaryKey").size(), 4u);
}

TEST_F(ReadingsCommand, a_run_that_is_not_there_is_said_in_one_line) {
    const Outcome outcome = run({"export-readings", logbook(), "--unit", "Other", "--run", "7"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
}

} // namespace
} // namespace ullage::test
