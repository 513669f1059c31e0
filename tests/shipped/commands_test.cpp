// SPDX-License-Identifier: GPL-3.0-or-later
// The program as users get it, through every command and every format of it.
#include "shipped/bench_meter.h"
#include "shipped/shipped_fixture.h"

#include "base/clock.h"
#include "store/logbook.h"
#include "support/scenario_log.h"
#include "support/source_dir.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <set>
#include <sstream>

namespace ullage::test {
namespace {

using Json = nlohmann::json;

const std::vector<std::string> table_formats{"text", "csv", "markdown", "html", "xlsx", "json", "latex"};

bool begins(const std::string& text, const std::string& with) { return text.starts_with(with); }

/// Holds what `format` made against how such a file begins and ends, and what must stand in it.
void expect_table(const std::string& bytes, const std::string& format, const std::string& word) {
    EXPECT_GT(bytes.size(), 100U) << format;
    if (format == "xlsx") { // a ZIP archive: local file header first, end of central directory last (PKWARE APPNOTE 4.3.7, 4.3.16)
        EXPECT_TRUE(begins(bytes, "PK\x03\x04"));
        EXPECT_TRUE(contains(bytes.substr(bytes.size() - 22), "PK\x05\x06"));
        return;
    }
    EXPECT_TRUE(contains(bytes, word)) << format << " without " << word;
    if (format == "html") {
        EXPECT_TRUE(contains(bytes, "</html>"));
    }
    if (format == "latex") {
        EXPECT_TRUE(contains(bytes, "\\end{longtable}"));
    }
    if (format == "markdown") {
        EXPECT_TRUE(contains(bytes, "| --- |") || contains(bytes, "---:")) << bytes.substr(0, 500);
    }
    if (format == "json") {
        const Json read = Json::parse(bytes, nullptr, false);
        EXPECT_FALSE(read.is_discarded());
        EXPECT_EQ(read.value("program", ""), "ullage");
    }
}

/// The commands that a help lists, by its section "Subcommands".
std::set<std::string> commands_in(const std::string& help) {
    std::set<std::string> commands;
    std::istringstream lines(help.substr(std::min(help.size(), help.find("Subcommands:"))));
    for (std::string line; std::getline(lines, line);)
        if (line.size() > 2 && begins(line, "  ") && line[2] != ' ') commands.insert(line.substr(2, line.find(' ', 2) - 2));
    return commands;
}

TEST_F(Shipped, knows_the_commands_that_these_tests_drive_and_helps_with_each) {
    const std::string help = good({"--help"}).out;
    const std::set<std::string> driven{"import",   "import-trace",       "analyse", "compare", "export-readings", "export-sheet", "export-folder",
                                       "pv-check", "import-loads",       "loads",   "size",    "pictures",        "report",       "tour",
                                       "watch",    "check-installation", "join",    "backup"};
    EXPECT_EQ(commands_in(help), driven) << "a new command goes through the shipped program here too";
    for (const std::string& command : driven) EXPECT_TRUE(contains(good({command, "--help"}).out, "Usage:")) << command;
    EXPECT_TRUE(contains(good({"--version"}).out, "0."));
}

TEST_F(Shipped, checks_its_installation_without_a_display) {
    const std::string found = good({"check-installation", logbook()}).out;
    for (const char* words : {"Ullage", "SQLite", "folder of the logbook", "time zone", "signs"})
        EXPECT_TRUE(contains(found, words)) << words << found;
    EXPECT_FALSE(contains(found, "Osk")) << found;
    const Ended refused = run_program(home(), {"check-installation", "/proc"});
    EXPECT_EQ(refused.code, 1) << "nothing can be recorded there";
    EXPECT_TRUE(contains(refused.out, "Nothing can be recorded there.")) << refused.out;
    EXPECT_EQ(run_program(home(), {"check-installation", file("absent.ullage")}).code, 1);
}

TEST_F(Shipped, watches_a_meter_that_is_a_pseudo_terminal_into_a_running_run) {
    const std::string book = running_logbook("watched");
    BenchMeter meter;
    ASSERT_EQ(meter.trouble(), "");
    const std::string told = good({"watch", book, "--run", "1", "--kind", "lines", "--address", meter.device(), "--read", "register column 1",
                                   "--read", "power column 2", "--line", "115200 8N1", "--keep", "--for", "3"})
                                 .out;
    EXPECT_TRUE(contains(told, "Lantern 900 run 1: 400.5 W")) << told;
    EXPECT_TRUE(contains(good({"watch", book, "--for", "2"}).out, "400.5 W")) << "the source was kept with the meter";
    EXPECT_TRUE(contains(good({"watch", book, "--for", "2", "--try"}).out, "400.5 W"));
    meter.unplug();
    {
        const SystemClock clock;
        const Logbook kept_book = Logbook::open(book, OpenMode::read_only, clock).value();
        const std::vector<Trace> traces = kept_book.traces().value();
        ASSERT_EQ(traces.size(), 1U) << "the second time went on in the same trace";
        EXPECT_GT(traces[0].samples, 40) << "20 a second for 5 s, less what starting takes";
    }
    const Ended refused = run_program(home(), {"watch", book, "--run", "2"});
    EXPECT_EQ(refused.code, 1);
    EXPECT_TRUE(contains(refused.err, "there is no run 2")) << refused.err;
}

TEST_F(Shipped, analyses_every_run_and_the_one_with_a_log_within_its_interval_of_the_truth) {
    const std::string text = good({"analyse", logbook(), "--kwh-price", "0.3"}).out;
    for (const char* unit : {"Osk 1200", "Pelm 900", "Tarrow 2k"}) EXPECT_TRUE(contains(text, unit));
    const Json all = Json::parse(good({"analyse", logbook(), "--format", "json"}).out);
    EXPECT_EQ(all["runs"].size(), 15U);
    EXPECT_EQ(std::ranges::count_if(all["runs"], [](const Json& run) { return !run["charge"].is_null(); }), 1);
    const Json logged = Json::parse(good({"analyse", logbook(), "--unit", "Pelm 900", "--run", "4", "--format", "json"}).out)["runs"][0];
    EXPECT_TRUE(contains(logged["log_sentence"].get<std::string>(), "agree with the log"));
    const Json& delivered = logged["quantities"][0];
    const double truth_wh = sample_logged_run().run.simulated.truth.delivered_wh;
    EXPECT_EQ(delivered["key"], "delivered_wh");
    EXPECT_LE(delivered["lower"].get<double>(), truth_wh);
    EXPECT_GE(delivered["upper"].get<double>(), truth_wh);
}

TEST_F(Shipped, compares_in_every_format) {
    for (const std::string& format : table_formats) {
        expect_table(written({"compare", logbook(), "--format", format}, "compare/as-tested." + format), format, "Osk 1200");
        expect_table(written({"compare", logbook(), "--at-load", "120", "--pairs", "--format", format}, "compare/pairs." + format), format,
                     "Pelm 900");
        if (format != "xlsx") expect_table(good({"compare", logbook(), "--every-drain", "--format", format}).out, format, "Tarrow 2k");
    }
    expect_table(good({"compare", logbook(), "--load-list", "Show night"}).out, "text", "Osk 1200");
}

TEST_F(Shipped, exports_readings_in_every_format_and_a_run_sheet_that_it_reads_again) {
    for (const std::string& format : table_formats) {
        expect_table(written({"export-readings", logbook(), "--format", format}, "readings/all." + format), format, "Pelm 900");
        expect_table(written({"export-readings", logbook(), "--unit", "Pelm 900", "--run", "4", "--intervals", "--format", format},
                             "readings/logged." + format),
                     format, "2027-05-23");
    }
    const std::string sheet = written({"export-sheet", logbook(), "--unit", "Pelm 900", "--run", "4"}, "readings/sheet.csv");
    EXPECT_EQ(sheet, bytes_of(sample_file("12-pelm-900-drain-logged.csv")));
    good({"import", file("again.ullage"), file("readings/sheet.csv")});
    EXPECT_TRUE(contains(good({"analyse", file("again.ullage")}).out, "Pelm 900"));
    const std::string table = (source_dir() / "tests/corpus/tables/kitchen.csv").string();
    good({"import", file("again.ullage"), table, "--zone", "Europe/Berlin", "--meter", "not-known"});
    EXPECT_TRUE(contains(good({"analyse", file("again.ullage"), "--unit", "Osk 1200"}).out, "1055"));
}

TEST_F(Shipped, writes_the_whole_logbook_as_a_folder_that_says_the_same_and_comes_back) {
    const std::string said = good({"export-folder", logbook(), "--into", file("folder")}).out;
    EXPECT_TRUE(contains(said, "15 runs") && contains(said, "1 log,") && contains(said, "load list")) << said;
    const std::string analysis = good({"analyse", logbook()}).out;
    EXPECT_EQ(good({"analyse", file("folder")}).out, analysis) << "the folder itself";
    good({"import", file("from-folder.ullage"), file("folder")});
    EXPECT_EQ(good({"analyse", file("from-folder.ullage")}).out, analysis) << "a logbook made of it";
    EXPECT_EQ(good({"compare", file("from-folder.ullage"), "--at-load", "120"}).out, good({"compare", logbook(), "--at-load", "120"}).out);
    const Ended again = run_program(home(), {"export-folder", logbook(), "--into", file("folder")});
    EXPECT_EQ(again.code, 1) << "a folder with something in it stays as it is";
    EXPECT_TRUE(contains(again.err, "name a new folder")) << again.err;
}

TEST_F(Shipped, sizes_and_lists_loads_in_every_format) {
    for (const std::string& format : table_formats) {
        expect_table(written({"loads", "--logbook", logbook(), "--format", format}, "loads/all." + format), format, "Show night");
        for (const char* table : {"units", "months", "rules", "course"})
            written({"size", logbook(), "--load-list", "Show night", "--array", "200", "--peak-sun-hours", "4", "--month-sun-hours",
                     "1,2,3,4,5,6,6,5,4,3,2,1", "--table", table, "--format", format},
                    std::string("loads/") + table + '.' + format);
        expect_table(bytes_of(file("loads/units." + format)), format, "Osk 1200");
    }
    EXPECT_EQ(good({"loads", "--logbook", logbook(), "--list", "Show night", "--sheet"}).out, bytes_of(sample_file("load-lists/show-night.csv")));
}

TEST_F(Shipped, checks_PV_sheets_from_files_and_of_the_logbook) {
    for (const char* sheet : {"pv-tarrow-2k-roof.txt", "pv-tarrow-2k-third-module.txt"}) {
        EXPECT_TRUE(contains(good({"pv-check", sample_file(sheet)}).out, "V"));
        const Json read = Json::parse(good({"pv-check", sample_file(sheet), "--format", "json"}).out);
        EXPECT_EQ(read["verdict"] == "exceeds the voltage limit when cold", contains(sheet, "third"));
    }
    EXPECT_TRUE(contains(good({"pv-check", "--logbook", logbook(), "--unit", "Tarrow 2k", "--sheet-name", "Roof"}).out, "V"));
}

TEST_F(Shipped, draws_pictures_and_makes_reports) {
    good({"pictures", logbook(), "--into", file("pictures"), "--at-load", "120"});
    int drawn = 0;
    for (const auto& entry : std::filesystem::directory_iterator(file("pictures"))) {
        const std::string bytes = bytes_of(entry.path().string());
        ++drawn;
        if (entry.path().extension() == ".png") {
            EXPECT_TRUE(begins(bytes, "\x89PNG\r\n\x1a\n")) << entry.path();
        }
        if (entry.path().extension() == ".svg") {
            EXPECT_TRUE(contains(bytes, "</svg>")) << entry.path();
        }
        EXPECT_GT(bytes.size(), 1000U) << entry.path();
    }
    EXPECT_GE(drawn, 2 * 3 * 12) << "three drawings of each run, as PNG and SVG";
    const std::vector<std::vector<std::string>> reports{{"report", logbook(), "--run", "Pelm 900/4"},
                                                        {"report", logbook(), "--run", "Osk 1200/4"},
                                                        {"report", logbook(), "--unit", "Osk 1200", "--photos"},
                                                        {"report", logbook(), "--unit", "Tarrow 2k B", "--short"},
                                                        {"report", logbook(), "--compare", "--at-load", "120"},
                                                        {"report", logbook(), "--size", "Show night"},
                                                        {"report", logbook(), "--pv", sample_file("pv-tarrow-2k-roof.txt")}};
    for (std::size_t i = 0; i < reports.size(); ++i) {
        const std::string pdf = written(reports[i], "reports/" + std::to_string(i) + ".pdf");
        EXPECT_TRUE(begins(pdf, "%PDF-")); // ISO 32000-1, 7.5.2 and 7.5.5
        EXPECT_TRUE(contains(pdf.substr(pdf.size() - std::min<std::size_t>(pdf.size(), 32)), "%%EOF"));
        EXPECT_TRUE(contains(written(reports[i], "reports/" + std::to_string(i) + ".html"), "</html>"));
    }
}

TEST_F(Shipped, removes_at_its_start_what_a_crash_left_in_the_folder_for_temporary_files) {
    const std::filesystem::path left = home() / "tmp/.ullage-12345678-1234-4234-8234-123456789012.part";
    std::filesystem::create_directories(left);
    std::ofstream(left / "logbook") << "half a copy";
    good({"--version"});
    EXPECT_FALSE(std::filesystem::exists(left));
}

TEST_F(Shipped, refuses_bad_input_with_one_line_and_a_wrong_call_with_another_code) {
    const Ended missing = run_program(home(), {"analyse", file("absent.ullage")});
    EXPECT_EQ(missing.code, 1);
    EXPECT_EQ(std::ranges::count(missing.err, '\n'), 1) << missing.err;
    const Ended wrong = run_program(home(), {"analyse"});
    EXPECT_EQ(wrong.code, 2);
    EXPECT_TRUE(contains(wrong.err, "LOGBOOK")) << wrong.err;
}

} // namespace
} // namespace ullage::test
