// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include "base/clock.h"
#include "formats/results/comparison_columns.h"
#include "formats/text/csv.h"
#include "formats/text/table_unicode.h"
#include "store/logbook.h"
#include "support/source_dir.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <sstream>

namespace ullage::test {
namespace {

using Json = nlohmann::json;
using CompareCommand = Commands;

std::vector<std::map<std::string, std::string>> csv_rows(const std::string& text) {
    CsvReader reader(text);
    CsvRecord record;
    std::vector<std::string> heads;
    std::vector<std::map<std::string, std::string>> rows;
    for (Result<bool> more = reader.next(record); more.ok() && more.value(); more = reader.next(record)) {
        if (heads.empty()) {
            heads = record.fields;
            continue;
        }
        EXPECT_EQ(record.fields.size(), heads.size());
        auto& row = rows.emplace_back();
        for (std::size_t i = 0; i < std::min(heads.size(), record.fields.size()); ++i) row[heads[i]] = record.fields[i];
    }
    return rows;
}

std::vector<std::string> lines_of(const std::string& text) {
    std::vector<std::string> lines;
    std::istringstream stream(text);
    for (std::string line; std::getline(stream, line);) lines.push_back(line);
    return lines;
}

TEST_F(CompareCommand, csv_and_json_hold_the_same_numbers) {
    const std::string path = logbook();
    const auto rows = csv_rows(run({"compare", path, "--format", "csv"}).out);
    const Json json = Json::parse(run({"compare", path, "--format", "json"}).out);
    ASSERT_EQ(rows.size(), 2u);
    ASSERT_EQ(json.at("rows").size(), 2u);
    for (std::size_t r = 0; r < rows.size(); ++r) {
        EXPECT_EQ(rows[r].at("unit"), json["rows"][r].at("unit"));
        for (const char* key : {"delivered_wh", "usable_fraction", "mean_load_w", "duration_h", "wh_per_gauge_point", "price_per_delivered_kwh"}) {
            const Json& cell = json["rows"][r].at(key);
            ASSERT_FALSE(cell.at("value").is_null()) << key;
            EXPECT_EQ(std::stod(rows[r].at(key)), cell["value"].get<double>()) << key;
            EXPECT_EQ(std::stod(rows[r].at(std::string(key) + "_lower")), cell.at("lower").get<double>()) << key;
            EXPECT_EQ(rows[r].at(std::string(key) + "_kind"), cell.at("kind")) << key;
        }
    }
    // 850 Wh of 1000 rated Wh; 500 EUR for them: 500 / 0.85 EUR per delivered kWh.
    EXPECT_EQ(rows[0].at("unit"), "Other");
    EXPECT_NEAR(std::stod(rows[0].at("usable_fraction")), 0.85, 1e-12);
    EXPECT_NEAR(std::stod(rows[0].at("price_per_delivered_kwh")), 500 / 0.85, 1e-9);
    EXPECT_EQ(rows[0].at("price_per_delivered_kwh_unit"), "EUR/kWh");
    EXPECT_EQ(rows[0].at("meter"), "Bench meter");
}

TEST_F(CompareCommand, every_drain_gives_a_row_for_each) {
    const std::string path = logbook();
    EXPECT_EQ(csv_rows(run({"compare", path, "--format", "csv", "--every-drain"}).out).size(), 3u);
}

TEST_F(CompareCommand, the_method_names_its_sources_and_what_the_figures_are_not) {
    const std::string path = logbook();
    for (const char* format : {"text", "markdown", "html", "json", "latex"}) {
        const Outcome outcome = run({"compare", path, "--format", format});
        ASSERT_EQ(outcome.code, exit_good) << outcome.err;
        for (const char* words : {"JCGM 100:2008", "JCGM 101:2008", "measurements of one specimen, not a safety certification"})
            EXPECT_NE(on_one_line(outcome.out).find(words), std::string::npos) << format << ": " << words;
    }
}

TEST_F(CompareCommand, the_ending_of_the_file_chooses_the_format) {
    const std::string path = logbook();
    for (const auto& [name, format] : std::map<std::string, std::string>{
             {"t.csv", "csv"}, {"t.md", "markdown"}, {"t.html", "html"}, {"t.json", "json"}, {"t.tex", "latex"}, {"t.txt", "text"}, {"t", "text"}}) {
        const Outcome outcome = run({"compare", path, "--output", folder_ / name});
        ASSERT_EQ(outcome.code, exit_good) << outcome.err;
        EXPECT_EQ(outcome.out, "");
        EXPECT_EQ(file_text(folder_ / name), run({"compare", path, "--format", format}).out) << name;
    }
    ASSERT_EQ(run({"compare", path, "--output", folder_ / "t.xlsx"}).code, exit_good);
    EXPECT_EQ(file_text(folder_ / "t.xlsx").substr(0, 2), "PK");
}

TEST_F(CompareCommand, a_csv_file_has_its_description_beside_it_and_standard_output_has_none) {
    const std::string path = logbook();
    ASSERT_EQ(run({"compare", path, "--output", folder_ / "t.csv"}).code, exit_good);
    const Json described = Json::parse(file_text(folder_ / "t.csv-metadata.json"));
    EXPECT_EQ(described.at("url"), "t.csv");
    EXPECT_EQ(described.at("tableSchema").at("primaryKey"), Json::parse(R"(["unit", "maker", "run"])"));
    EXPECT_EQ(run({"compare", path, "--format", "csv"}).out, file_text(folder_ / "t.csv"));
}

TEST_F(CompareCommand, a_place_that_cannot_be_written_is_said_in_one_line) {
    const std::string path = logbook();
    for (const char* format : {"csv", "xlsx"}) {
        const Outcome outcome = run({"compare", path, "--format", format, "--output", folder_.path().string()});
        EXPECT_EQ(outcome.code, exit_bad_input);
        expect_one_line(outcome.err);
    }
}

TEST_F(CompareCommand, a_folder_of_sheets_compares_like_the_logbook) {
    const std::string path = logbook();
    EXPECT_EQ(run({"compare", folder_.path().string()}).out, run({"compare", path}).out);
}

TEST_F(CompareCommand, looking_changes_no_byte_of_the_logbook) {
    const std::string path = logbook();
    const std::string before = file_text(path);
    ASSERT_EQ(run({"compare", path}).code, exit_good);
    EXPECT_EQ(file_text(path), before);
}

TEST_F(CompareCommand, at_a_common_load_the_figures_as_tested_stand_beside_those_moved) {
    const std::string samples = (source_dir() / "sample-data").string();
    const auto rows = csv_rows(run({"compare", samples, "--at-load", "120", "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 4u);
    int moved = 0;
    for (const auto& row : rows) {
        EXPECT_FALSE(row.at("usable_fraction").empty());
        moved += row.at("standing") == "calculated for this load";
        if (row.at("standing") == "calculated for this load") {
            EXPECT_NE(row.at("usable_fraction"), row.at("usable_fraction_at_load"));
        }
    }
    EXPECT_EQ(moved, 2);
}

TEST_F(CompareCommand, pairs_say_what_these_meters_resolve) {
    const std::string samples = (source_dir() / "sample-data").string();
    const auto rows = csv_rows(run({"compare", samples, "--pairs", "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 6u);
    std::set<std::string> verdicts;
    for (const auto& row : rows) verdicts.insert(row.at("verdict"));
    EXPECT_TRUE(verdicts.contains("clearly different"));
    EXPECT_TRUE(verdicts.contains("too close to call"));
}

TEST_F(CompareCommand, pairs_can_be_of_price_and_name_their_currency) {
    const std::string samples = (source_dir() / "sample-data").string();
    const auto rows = csv_rows(run({"compare", samples, "--pairs", "--pairs-of", "price_per_delivered_kwh", "--format", "csv"}).out);
    const auto units = csv_rows(run({"compare", samples, "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 6u);
    const auto price_of = [&](const std::string& unit) {
        const auto found = std::ranges::find(units, unit, [](const auto& row) { return row.at("unit"); });
        return std::stod(found->at("price_per_delivered_kwh"));
    };
    for (const auto& row : rows) EXPECT_NEAR(std::stod(row.at("difference")), price_of(row.at("first")) - price_of(row.at("second")), 1e-6);
    EXPECT_NE(run({"compare", samples, "--pairs", "--pairs-of", "colour"}).code, 0);
    EXPECT_NE(run({"compare", samples, "--pairs-of", "wh_per_kg"}).code, 0) << "without --pairs it says nothing";
}

TEST_F(CompareCommand, prices_paid_and_tags_stand_there_only_where_a_unit_has_them) {
    const auto samples = csv_rows(run({"compare", (source_dir() / "sample-data").string(), "--format", "csv"}).out);
    ASSERT_EQ(samples.size(), 4u);
    EXPECT_NEAR(std::stod(samples[0].at("paid_per_rated_kwh")), 589 / 1.2, 1e-9);
    EXPECT_EQ(samples[1].at("paid_per_rated_kwh"), "") << "nobody said what was paid for this one";
    const std::string path = logbook();
    const auto plain = csv_rows(run({"compare", path, "--format", "csv"}).out);
    ASSERT_FALSE(plain.empty());
    EXPECT_FALSE(plain[0].contains("paid_per_rated_kwh") || plain[0].contains("tags"));
    const auto asked = csv_rows(run({"compare", path, "--columns", "unit,paid_per_rated_kwh,tags", "--format", "csv"}).out);
    ASSERT_FALSE(asked.empty());
    EXPECT_TRUE(asked[0].contains("paid_per_rated_kwh") && asked[0].contains("tags"));
}

TEST_F(CompareCommand, what_charges_and_output_runs_say_has_columns_of_its_own_where_a_unit_has_such_runs) {
    const auto rows = csv_rows(run({"compare", (source_dir() / "sample-data").string(), "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 4u);
    const auto& osk = *std::ranges::find_if(rows, [](const auto& row) { return row.at("unit") == "Osk 1200"; });
    const Json claims =
        Json::parse(run({"analyse", (source_dir() / "sample-data").string(), "--unit", "Osk 1200", "--format", "json"}).out)["units"][0]["claims"];
    EXPECT_NEAR(std::stod(osk.at("round_trip_efficiency")), claims["round_trip"]["efficiency"]["value"].get<double>(), 1e-9);
    EXPECT_GT(std::stod(osk.at("held_output_w")), 1000);
    EXPECT_NE(osk.at("charge_time_h_lower"), "");
    EXPECT_FALSE(rows[0].contains("standby_draw_w")) << "no unit of the sample stood by";
    const auto& pelm = *std::ranges::find_if(rows, [](const auto& row) { return row.at("unit") == "Pelm 900"; });
    EXPECT_EQ(pelm.at("round_trip_efficiency"), "");
    EXPECT_EQ(pelm.at("round_trip_efficiency_reason"), "no charge run");
}

TEST_F(CompareCommand, columns_and_filters_choose_what_is_shown) {
    const std::string samples = (source_dir() / "sample-data").string();
    const auto rows = csv_rows(run({"compare", samples, "--columns", "unit,wh_per_kg", "--most-wh", "1300", "--format", "csv"}).out);
    ASSERT_EQ(rows.size(), 2u);
    EXPECT_TRUE(rows[0].contains("wh_per_kg"));
    EXPECT_FALSE(rows[0].contains("maker"));
    const auto tagged = csv_rows(run({"compare", samples, "--tag", "TENT", "--tag", "projector", "--format", "csv"}).out);
    ASSERT_EQ(tagged.size(), 1u) << "units have every tag that is named";
    EXPECT_EQ(tagged[0].at("unit"), "Osk 1200");
    EXPECT_EQ(tagged[0].at("tags"), "projector; tent");
    const Outcome wrong = run({"compare", samples, "--columns", "unit,colour"});
    EXPECT_NE(wrong.code, 0);
    EXPECT_NE(wrong.err.find("colour"), std::string::npos);
}

TEST_F(CompareCommand, text_is_for_readers_opens_with_the_answer_and_fits_a_terminal) {
    const std::string samples = (source_dir() / "sample-data").string();
    for (const std::vector<std::string>& more : {std::vector<std::string>{}, {"--at-load", "120"}, {"--every-drain"}, {"--columns", "spreadsheet"}}) {
        std::vector<std::string> words{"compare", samples};
        words.insert(words.end(), more.begin(), more.end());
        const Outcome outcome = run(words);
        ASSERT_EQ(outcome.code, exit_good) << outcome.err;
        for (const std::string& line : lines_of(outcome.out)) EXPECT_LE(display_width(line), 100u) << line;
    }
    const std::string text = run({"compare", samples, "--at-load", "120"}).out;
    const std::string line = on_one_line(text);
    EXPECT_LT(line.find("At 120 W"), line.find("rated energy (Wh)")) << text;
    EXPECT_NE(line.find("of its label at 120 W; its gauge"), std::string::npos) << text;
    EXPECT_EQ(line.find("price paid"), std::string::npos) << "the tester's own affair";
    EXPECT_EQ(line.find("make a drain"), std::string::npos);
}

TEST_F(CompareCommand, a_set_of_columns_is_named_as_one_word) {
    const std::string path = logbook();
    const auto heads = [&](const std::string& set) { return lines_of(run({"compare", path, "--columns", set, "--format", "csv"}).out).at(0); };
    EXPECT_EQ(heads("readers").find("unit,rated_wh,delivered_wh,"), 0u) << heads("readers");
    EXPECT_NE(heads("spreadsheet").find("wh_per_kg"), std::string::npos);
    {
        SystemClock clock;
        Result<Logbook> book = Logbook::open(path, OpenMode::record, clock);
        ASSERT_TRUE(book);
        ASSERT_TRUE(book.value().set_column_set("bench", "unit,meter"));
    }
    EXPECT_EQ(heads("bench"), "unit,meter\r");
    EXPECT_EQ(run({"compare", path, "--columns", "bunch"}).code, exit_usage);
}

TEST_F(CompareCommand, its_help_lists_the_keys_of_the_columns) {
    const std::string help = run({"compare", "--help"}).out;
    for (const ColumnName& column : comparison_columns()) EXPECT_NE(help.find(' ' + column.key), std::string::npos) << column.key;
}

TEST_F(CompareCommand, a_filter_that_leaves_nothing_and_impossible_sizes_are_errors_in_one_line) {
    const std::string path = logbook();
    for (const std::vector<std::string>& filter :
         {std::vector<std::string>{"--maker", "Nobody"}, {"--tag", "nowhere"}, {"--least-wh", "90000"}, {"--most-wh", "1"}}) {
        const Outcome outcome = run({"compare", path, filter[0], filter[1]});
        EXPECT_EQ(outcome.code, exit_bad_input) << filter[0];
        EXPECT_EQ(outcome.out, "");
        expect_one_line(outcome.err);
        EXPECT_NE(outcome.err.find(filter[0]), std::string::npos) << outcome.err;
    }
    for (const std::vector<std::string>& words : {std::vector<std::string>{"--least-wh", "-5"}, {"--most-wh", "0"}, {"--at-load", "0"}}) {
        const Outcome outcome = run({"compare", path, words[0], words[1]});
        EXPECT_EQ(outcome.code, exit_usage) << words[0];
        expect_one_line(outcome.err);
    }
    const Outcome crossed = run({"compare", path, "--least-wh", "900", "--most-wh", "100"});
    EXPECT_EQ(crossed.code, exit_usage);
    expect_one_line(crossed.err);
}

TEST_F(CompareCommand, an_ending_of_no_format_is_an_error_in_one_line) {
    const std::string path = logbook();
    const Outcome outcome = run({"compare", path, "--output", folder_ / "t.odt"});
    EXPECT_EQ(outcome.code, exit_usage);
    expect_one_line(outcome.err);
    EXPECT_NE(outcome.err.find(".odt"), std::string::npos) << outcome.err;
    EXPECT_FALSE(std::filesystem::exists(folder_ / "t.odt"));
    EXPECT_EQ(run({"compare", path, "--output", folder_ / "t.odt", "--format", "markdown"}).code, exit_good) << "a format that is named goes before";
}

TEST_F(CompareCommand, a_filter_does_not_renumber_ranks) {
    const std::string samples = (source_dir() / "sample-data").string();
    const auto all = csv_rows(run({"compare", samples, "--at-load", "180", "--columns", "unit,rank", "--format", "csv"}).out);
    ASSERT_EQ(all.size(), 4u);
    const auto few = csv_rows(run({"compare", samples, "--at-load", "180", "--most-wh", "1000", "--columns", "unit,rank", "--format", "csv"}).out);
    ASSERT_EQ(few.size(), 1u);
    const auto same = std::ranges::find(all, few[0].at("unit"), [](const auto& row) { return row.at("unit"); });
    EXPECT_EQ(few[0].at("rank"), same->at("rank"));
    EXPECT_NE(few[0].at("rank"), "1") << "alone it would be the first";
}

} // namespace
} // namespace ullage::test
