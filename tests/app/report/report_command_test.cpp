// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/text/command_fixture.h"
#include "cli/drawing/drawing_commands.h"
#include "store/logbook.h"
#include "support/command_output.h"
#include "support/fake_clock.h"
#include "support/has_text.h"
#include "support/leaping_clock.h"
#include "support/open_count.h"
#include "support/photo_bytes.h"
#include "support/source_dir.h"

#include <chrono>
#include <cstdlib>

namespace ullage::test {
namespace {

class ReportCommand : public Commands {
protected:
    static Outcome report(std::vector<std::string> args) {
        args.insert(args.begin(), "report");
        std::ostringstream out, err;
        Outcome outcome;
        outcome.code = run_command(args, drawing_commands(), out, err);
        outcome.out = out.str();
        outcome.err = err.str();
        return outcome;
    }
    static std::string text(const std::string& pdf) { return with_plain_spaces(run_command("pdftotext -layout '" + pdf + "' -").text); }
    static std::string page(const std::string& html) { return with_plain_spaces(file_text(html)); }
};

TEST_F(ReportCommand, reports_a_run_and_the_comparison_of_a_logbook) {
    const std::string path = logbook(), pdf = folder_ / "run.pdf", html = folder_ / "all.html";
    const Outcome run = report({path, "--run", "Specimen/2", "--output", pdf});
    ASSERT_EQ(run.code, exit_good) << run.err;
    EXPECT_NE(run.out.find(pdf), std::string::npos);
    EXPECT_NE(text(pdf).find("Test report of run 2"), std::string::npos);
    const Outcome all = report({path, "--compare", "--output", html});
    ASSERT_EQ(all.code, exit_good) << all.err;
    EXPECT_NE(page(html).find("Comparison of storage units"), std::string::npos);
}

TEST_F(ReportCommand, the_commands_that_draw_tell_how_long_the_check_of_a_logbook_took) {
    ::setenv("XDG_STATE_HOME", (folder_ / "state").c_str(), 1);
    const std::string path = logbook(), list = source_dir() / "sample-data/load-lists/show-night.csv";
    const std::string sheet = source_dir() / "sample-data/pv-tarrow-2k-roof.txt", html = folder_ / "all.html";
    // The sheet names a unit that the logbook has.
    std::string roof = file_text(sheet);
    roof.replace(roof.find("Tarrow 2k"), 9, "Specimen");
    const std::vector<std::vector<std::string>> commands{{"report", path, "--run", "Specimen/2", "--output", html},
                                                         {"report", path, "--unit", "Specimen", "--output", html},
                                                         {"report", path, "--compare", "--output", html},
                                                         {"report", path, "--size", list, "--output", html},
                                                         {"report", path, "--pv", written("roof.txt", roof), "--output", html},
                                                         {"pictures", path, "--into", folder_ / "p", "--comparison-only"}};
    for (const auto& words : commands) {
        std::filesystem::remove_all(folder_ / "state");
        std::filesystem::remove(html);
        const LeapingClock clock(std::chrono::seconds(3));
        std::ostringstream out, err;
        EXPECT_EQ(run_command(words, drawing_commands(), out, err), exit_good) << testing::PrintToString(words) << err.str();
        EXPECT_NE(err.str().find(path + ": checked from end to end"), std::string::npos) << testing::PrintToString(words) << err.str();
        EXPECT_NE(err.str().find("that took 3.0 s\n"), std::string::npos) << testing::PrintToString(words) << err.str();
    }
}

TEST_F(ReportCommand, a_unit_is_reported_whole_in_sections_or_on_two_pages) {
    const std::string sample = (source_dir() / "sample-data").string(), pdf = folder_ / "unit.pdf", html = folder_ / "unit.html";
    for (const char* unit : {"Osk 1200", "Pelm 900", "Tarrow 2k", "Tarrow 2k B"}) {
        const Outcome made = report({sample, "--unit", unit, "--short", "--locale", "C", "--output", pdf, "--force"});
        ASSERT_EQ(made.code, exit_good) << made.err;
        EXPECT_NE(run_command("pdfinfo '" + pdf + "'").text.find("Pages:           2\n"), std::string::npos) << unit;
    }
    ASSERT_EQ(report({sample, "--unit", "Osk 1200", "--locale", "C", "--output", html}).code, exit_good);
    const std::string whole = page(html);
    for (const char* words : {"Osk 1200: test report", "Claims against results", "Can the gauge be trusted?", "Round trip", "Readings", "<svg"})
        EXPECT_NE(whole.find(words), std::string::npos) << words;
    ASSERT_EQ(report({sample, "--unit", "Osk 1200", "--parts", "gauge,readings", "--output", html}).code, exit_good);
    EXPECT_EQ(page(html).find("Claims against results"), std::string::npos);
    EXPECT_EQ(report({sample, "--unit", "Osk 1200", "--parts", "weather"}).code, exit_usage);
    expect_one_line(report({sample, "--unit", "No such unit"}).err);
}

TEST_F(ReportCommand, a_photo_goes_along_only_where_it_is_asked_for) {
    const std::string path = logbook(), html = folder_ / "photos.html";
    {
        const FakeClock clock;
        Result<Logbook> book = Logbook::open(path, OpenMode::record, clock);
        ASSERT_TRUE(book.ok());
        const RunRecord record = book.value().run_records().value().back();
        ASSERT_EQ(record.unit.name, "Specimen");
        ASSERT_TRUE(book.value().add_photo(record.run.uuid, record.readings.front().uuid, {"display.jpg", grey_jpeg(char(0xc0), 64, 48), {}}).ok());
    }
    ASSERT_EQ(report({path, "--unit", "Specimen", "--output", html}).code, exit_good);
    EXPECT_EQ(page(html).find("data:image/jpeg"), std::string::npos);
    ASSERT_EQ(report({path, "--unit", "Specimen", "--photos", "--output", html}).code, exit_good);
    EXPECT_NE(page(html).find("data:image/jpeg"), std::string::npos);
    EXPECT_NE(page(html).find("gauge 100 %"), std::string::npos);
}

TEST_F(ReportCommand, a_logbook_is_opened_once_for_a_report) {
    const std::string path = logbook();
    const long once = times_opened_to_look(path);
    ASSERT_GT(once, 0);
    const auto opened = [&](const std::vector<std::string>& args) { return times_opened(path, [&] { EXPECT_EQ(report(args).code, exit_good); }); };
    const std::string html = folder_ / "once.html";
    EXPECT_EQ(opened({path, "--run", "Specimen/2", "--output", html}), once);
    EXPECT_EQ(opened({path, "--compare", "--output", html}), once);
}

TEST_F(ReportCommand, the_comparison_can_be_reported_at_one_load_as_pdf_and_as_html) {
    const std::string path = logbook(), pdf = folder_ / "all.pdf", html = folder_ / "all.html";
    // Both units were drained at about 80 W only: they stand there as tested at this load, and cannot be moved elsewhere.
    ASSERT_EQ(report({path, "--compare", "--at-load", "160", "--duty", "50", "--locale", "C", "--output", html}).code, exit_good);
    const std::string shown = page(html);
    for (const char* words : {"Comparison of storage units at 80 W on average (160 W for 50 % of the time)", "based on", "Differences between units"})
        EXPECT_NE(shown.find(words), std::string::npos) << words;
    ASSERT_EQ(report({path, "--compare", "--at-load", "300", "--locale", "C", "--output", pdf}).code, exit_good);
    const std::string printed = text(pdf);
    for (const char* words : {"at 300 W", "shown as tested", "between units", "one meter"}) // ff is one letter in the fonts of a PDF
        EXPECT_NE(printed.find(words), std::string::npos) << words << '\n' << printed;
}

TEST_F(ReportCommand, a_sizing_is_reported_with_its_charts_months_and_cautions) {
    const std::string sample = (source_dir() / "sample-data").string(), pdf = folder_ / "sizing.pdf", html = folder_ / "sizing.html";
    const std::string list = sample + "/load-lists/show-night.csv";
    const Outcome made = report({sample, "--size", list, "--month-sun-hours", "1,1.5,3,4,5,6,6,5,4,2.5,1.2,0.9", "--locale", "C", "--output", html});
    ASSERT_EQ(made.code, exit_good) << made.err;
    const std::string shown = page(html);
    for (const char* words :
         {"Sizing for Show night", "Pelm 900", "battery, nameplate", "December", "<svg", "licensed electrician", "What is assumed"})
        EXPECT_NE(shown.find(words), std::string::npos) << words;
    ASSERT_EQ(report({sample, "--size", list, "--locale", "C", "--output", pdf}).code, exit_good);
    EXPECT_NE(text(pdf).find("Sizing for Show night"), std::string::npos);
    expect_one_line(report({sample, "--size", list, "--derating", "2"}).err);
}

TEST_F(ReportCommand, a_pv_check_is_reported_and_the_danger_is_unmistakable) {
    const std::string sample = (source_dir() / "sample-data").string(), html = folder_ / "pv.html";
    const std::string path = folder_ / "pv.ullage";
    ASSERT_EQ(run({"import", path, sample + "/01-tarrow-2k-drain-180-w.csv"}).code, exit_good);
    ASSERT_EQ(report({path, "--pv", sample + "/pv-tarrow-2k-third-module.txt", "--locale", "C", "--output", html}).code, exit_good);
    const std::string shown = page(html);
    for (const char* words : {"DANGER: exceeds the voltage limit when cold", "PV input of Tarrow 2k", "<svg", "licensed electrician"})
        EXPECT_NE(shown.find(words), std::string::npos) << words;
    expect_one_line(report({path, "--pv", "no such sheet", "--output", html}).err);
}

TEST_F(ReportCommand, a_partial_drain_is_projected_as_the_analysis_projects_it) {
    const std::string sample = (source_dir() / "sample-data").string(), html = folder_ / "partial.html";
    const Outcome analysis = run({"analyse", sample, "--unit", "Tarrow 2k", "--run", "2"});
    ASSERT_NE(analysis.out.find("gauge curve of run 1"), std::string::npos) << analysis.out;
    ASSERT_EQ(report({sample, "--run", "Tarrow 2k/2", "--output", html}).code, exit_good);
    EXPECT_NE(page(html).find("gauge curve of run 1"), std::string::npos);
    EXPECT_EQ(page(html).find("assumes an accurate gauge"), std::string::npos);
}

TEST_F(ReportCommand, every_page_has_the_paper_asked_for) {
    const std::string path = logbook(), pdf = folder_ / "paper.pdf";
    // ISO 216: A4 is 210 mm by 297 mm; ANSI/ASME Y14.1: Letter is 8.5 in by 11 in; a point is 1/72 in (ISO 32000-1, 8.3.2.3).
    for (const auto& [paper, width, height] : {std::tuple{"a4", 210 / 25.4 * 72, 297 / 25.4 * 72}, std::tuple{"letter", 612.0, 792.0}}) {
        ASSERT_EQ(report({path, "--compare", "--at-load", "80", "--paper", paper, "--output", pdf}).code, exit_good);
        std::istringstream info(run_command("pdfinfo -f 1 -l 1000 '" + pdf + "'").text);
        int pages = 0, sized = 0;
        for (std::string line; std::getline(info, line);) {
            if (line.starts_with("Pages:")) pages = std::stoi(line.substr(6));
            if (!line.starts_with("Page ") || line.find(" size:") == std::string::npos) continue;
            std::istringstream size(line.substr(line.find(':') + 1));
            double w = 0, h = 0;
            std::string by;
            size >> w >> by >> h;
            EXPECT_NEAR(w, width, 1) << line; // the writer rounds to whole points
            EXPECT_NEAR(h, height, 1) << line;
            ++sized;
        }
        EXPECT_GT(pages, 2);
        EXPECT_EQ(sized, pages);
    }
}

TEST_F(ReportCommand, a_folder_of_run_sheets_needs_no_logbook) {
    written("1.csv", drain_sheet());
    written("2.csv", drain_sheet("Other", 13, 850));
    const std::string pdf = folder_ / "comparison.pdf";
    const Outcome outcome = report({folder_.path().string(), "--compare", "--paper", "letter", "--output", pdf});
    ASSERT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_NE(run_command("pdfinfo '" + pdf + "'").text.find("612 x 792"), std::string::npos); // Letter, in points
    const std::string shown = text(pdf);
    EXPECT_NE(shown.find("carry no history"), std::string::npos);
    EXPECT_NE(shown.find("Other"), std::string::npos);
}

TEST_F(ReportCommand, the_locale_chooses_the_decimal_sign) {
    const std::string path = logbook(), html = folder_ / "run.html";
    ASSERT_EQ(report({path, "--run", "Specimen/1", "--locale", "de_DE", "--output", html}).code, exit_good);
    EXPECT_NE(page(html).find("0,80"), std::string::npos);
    ASSERT_EQ(report({path, "--run", "Specimen/1", "--locale", "en_US", "--output", html}).code, exit_good);
    EXPECT_EQ(page(html).find("0,80"), std::string::npos);
    EXPECT_NE(page(html).find("size: letter"), std::string::npos) << "the paper of that locale";
}

TEST_F(ReportCommand, amendments_kept_by_the_logbook_stand_in_the_report) {
    const std::string path = logbook(), html = folder_ / "run.html";
    {
        const FakeClock clock;
        Result<Logbook> open = Logbook::open(path, OpenMode::record, clock);
        ASSERT_TRUE(open.ok()) << open.error().sentence();
        const auto records = open.value().run_records();
        ASSERT_TRUE(records.ok());
        const auto at = std::ranges::find(records.value(), std::string("Other"), [](const RunRecord& record) { return record.unit.name; });
        ASSERT_NE(at, records.value().end());
        ReadingValues values = at->readings[3].values;
        values.gauge_percent = 69;
        ASSERT_TRUE(open.value().amend(at->readings[3].uuid, values, "read at an angle").ok());
        ASSERT_TRUE(open.value().set_withdrawn(at->readings[5].uuid, true, "wrong unit").ok());
    }
    ASSERT_EQ(report({path, "--run", "Other/1", "--output", html}).code, exit_good);
    const std::string shown = page(html);
    for (const char* words : {"gauge 70 % → 69 %", "read at an angle", "withdrawn", "wrong unit"})
        EXPECT_NE(shown.find(words), std::string::npos) << words;
}

TEST_F(ReportCommand, wrong_usage_and_bad_input_are_told_apart_in_one_line) {
    const std::string path = logbook();
    const std::vector<std::vector<std::string>> wrong{{},
                                                      {path},
                                                      {path, "--run", "Specimen/1", "--compare"},
                                                      {path, "--run", "Specimen/none"},
                                                      {path, "--run", "Specimen/0"},
                                                      {path, "--compare", "--paper", "a5"},
                                                      {path, "--run", "Specimen/1", "--every-drain"},
                                                      {path, "--compare", "--locale", "nowhere"},
                                                      {path, "--run", "Specimen/1", "--at-load", "120"},
                                                      {path, "--compare", "--at-load", "-5"},
                                                      {path, "--compare", "--duty", "50"},
                                                      {path, "--compare", "--at-load", "120", "--duty", "0"}};
    for (const auto& args : wrong) {
        const Outcome outcome = report(args);
        EXPECT_EQ(outcome.code, exit_usage) << testing::PrintToString(args);
        expect_one_line(outcome.err);
    }
    const std::vector<std::vector<std::string>> bad{{folder_ / "none.ullage", "--compare"},
                                                    {path, "--run", "Nobody/1"},
                                                    {path, "--run", "1"},
                                                    {path, "--run", "Specimen/9"},
                                                    {path, "--compare", "--output", folder_ / "report.doc"},
                                                    {path, "--compare", "--output", folder_ / "none/report.pdf"}};
    for (const auto& args : bad) {
        const Outcome outcome = report(args);
        EXPECT_EQ(outcome.code, exit_bad_input) << testing::PrintToString(args);
        expect_one_line(outcome.err);
    }
    EXPECT_NE(report({"--help"}).out.find("--locale"), std::string::npos);
}

} // namespace
} // namespace ullage::test
