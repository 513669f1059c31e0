// SPDX-License-Identifier: GPL-3.0-or-later
// What every command that writes has in common.
#include "command_fixture.h"
#include "formats/tables/table.h"
#include "support/source_dir.h"

#include <cstdlib>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

class Outputs : public Commands {
protected:
    Outputs() { ::setenv("XDG_STATE_HOME", (folder_ / "state").c_str(), 1); }

    /// Every command that writes a file, without --output; `loads` is a file of a load list.
    Words list_file() const { return {(source_dir() / "sample-data/load-lists/show-night.csv").string()}; }
    std::vector<Words> writers(const std::string& book) const {
        const std::string list = list_file().front();
        return {{"compare", book},
                {"export-readings", book},
                {"export-sheet", book, "--unit", "Other", "--run", "1"},
                {"loads", list},
                {"size", book, "--load-list", list}};
    }
    static Words with(Words words, const Words& more) {
        words.insert(words.end(), more.begin(), more.end());
        return words;
    }
    /// Runs a command whose results go to a device that takes nothing.
    static Outcome run_into_full_device(const Words& words) {
        std::ofstream out("/dev/full");
        std::ostringstream err;
        Outcome outcome;
        outcome.code = run_command(words, text_commands(), out, err);
        outcome.err = err.str();
        return outcome;
    }
};

TEST_F(Outputs, no_command_replaces_the_logbook_or_a_sheet_that_it_reads) {
    const std::string book = logbook(), before = file_text(book), sheet = folder_ / "1.csv", sheet_before = file_text(sheet);
    fs::create_symlink(book, folder_ / "link.md");
    for (const Words& words : writers(book))
        for (const std::string& target : {book, std::string(folder_ / "link.md"), book + "-wal"}) {
            // An ending of no table would be refused before the file is looked at.
            const Words form = words.front() == "export-sheet" ? Words{} : Words{"--format", "csv"};
            const Outcome outcome = run(with(with(words, form), {"--output", target}));
            EXPECT_EQ(outcome.code, exit_bad_input) << testing::PrintToString(words);
            expect_one_line(outcome.err);
            EXPECT_EQ(file_text(book), before);
        }
    EXPECT_EQ(run({"compare", sheet, "--format", "csv", "--output", sheet}).code, exit_bad_input);
    EXPECT_EQ(run({"compare", folder_.path(), "--format", "csv", "--output", sheet}).code, exit_bad_input);
    EXPECT_EQ(file_text(sheet), sheet_before);
}

TEST_F(Outputs, another_programs_file_needs_force_and_an_output_can_be_written_again) {
    const std::string book = logbook();
    for (const Words& words : writers(book)) {
        const std::string theirs = written("theirs.txt", "a year of work"), ours = folder_ / (words.front() + ".txt");
        const Outcome refused = run(with(words, {"--output", theirs}));
        EXPECT_EQ(refused.code, exit_bad_input);
        EXPECT_NE(refused.err.find("--force"), std::string::npos) << refused.err;
        EXPECT_EQ(file_text(theirs), "a year of work");
        EXPECT_EQ(run(with(words, {"--output", theirs, "--force"})).code, exit_good);
        EXPECT_NE(file_text(theirs), "a year of work");
        for (int time = 0; time < 2; ++time) EXPECT_EQ(run(with(words, {"--output", ours})).code, exit_good) << testing::PrintToString(words);
        EXPECT_NE(run({words.front(), "--help"}).out.find("--force"), std::string::npos) << words.front();
    }
}

TEST_F(Outputs, a_result_that_cannot_be_written_is_said_and_ends_in_1) {
    const std::string book = logbook(), list = list_file().front();
    std::vector<Words> all{{"--help"},
                           {"--version"},
                           {"compare", "--help"},
                           {"analyse", book},
                           {"analyse", book, "--format", "json"},
                           {"export-sheet", book, "--unit", "Other", "--run", "1"},
                           {"pv-check", (source_dir() / "sample-data/pv-tarrow-2k-roof.txt").string()},
                           {"size", book, "--load-list", list, "--table", "rules"}};
    for (const std::string& format : table_format_names()) {
        if (format == "xlsx") continue; // it does not go to standard output
        for (const Words& words : writers(book))
            if (words.front() != "export-sheet") all.push_back(with(words, {"--format", format}));
    }
    for (const Words& words : all) {
        const Outcome outcome = run_into_full_device(words);
        EXPECT_EQ(outcome.code, exit_bad_input) << testing::PrintToString(words);
        EXPECT_NE(outcome.err.find("standard output"), std::string::npos) << outcome.err;
    }
    const Outcome import = run_into_full_device({"import", book, written("4.csv", drain_sheet("Fourth"))});
    EXPECT_EQ(import.code, exit_bad_input);
    EXPECT_NE(import.err.find("is in the logbook"), std::string::npos) << import.err;
    EXPECT_NE(run({"analyse", book, "--unit", "Fourth"}).out.find("Fourth"), std::string::npos);
}

TEST_F(Outputs, no_option_takes_what_is_no_ordinary_number) {
    const std::string book = logbook(), list = list_file().front();
    const std::vector<Words> options{{"analyse", book, "--kwh-price"},
                                     {"compare", book, "--at-load"},
                                     {"compare", book, "--at-load", "100", "--duty"},
                                     {"compare", book, "--least-wh"},
                                     {"compare", book, "--most-wh"},
                                     {"size", book, "--load-list", list, "--autonomy-days"},
                                     {"size", book, "--load-list", list, "--array"},
                                     {"size", book, "--load-list", list, "--month-sun-hours"},
                                     {"size", book, "--load-list", list, "--margin"},
                                     {"import-trace", book, "--logbook", book, "--run", "1", "--gap-limit"},
                                     {"import-trace", book, "--logbook", book, "--run", "1", "--follow", "--until-quiet"}};
    for (const Words& words : options)
        for (const char* number : {"nan", "NAN", "-nan", "inf", "-inf", "infinity", "1e308", "1e400", "-1e308", "1e10", "x", ""}) {
            const Outcome outcome = run(with(words, {number}));
            EXPECT_EQ(outcome.code, exit_usage) << testing::PrintToString(words) << number << outcome.err;
            expect_one_line(outcome.err);
            EXPECT_LT(outcome.err.size(), 250u) << outcome.err;
        }
    EXPECT_EQ(run({"compare", book, "--at-load", "nan"}).err,
              "ullage: --at-load: `nan` is no number; write one such as 431 or 0.5; see ullage compare --help\n");
    EXPECT_EQ(run({"compare", book, "--at-load", "1e308"}).err,
              "ullage: --at-load: `1e308` is far beyond anything that is measured; the most is 1000000000; see ullage compare --help\n");
    EXPECT_EQ(run({"compare", book, "--at-load", "0"}).err, "ullage: --at-load: `0` is no number above 0; see ullage compare --help\n");
    for (const char* number : {"nan", "inf", "1e400"}) {
        EXPECT_EQ(run({"pv-check", "--voc-v", number}).code, exit_bad_input) << number;
        EXPECT_EQ(run({"import-trace", list, "--logbook", book, "--unit", "Other", "--run", "1", "--clock-offset", number}).code, exit_bad_input)
            << number;
    }
}

TEST_F(Outputs, a_name_that_acts_unseen_is_shown_as_it_is_in_every_format) {
    const std::string hidden = "\xE2\x80\xAE", escape = "\x1B[2J", sheet = written("evil.csv", drain_sheet("Osk" + hidden + "7" + escape));
    for (const std::string& format : table_format_names()) {
        if (format == "xlsx") continue;
        const std::string text = run({"compare", sheet, "--format", format}).out;
        EXPECT_EQ(text.find(hidden), std::string::npos) << format;
        EXPECT_EQ(text.find('\x1B'), std::string::npos) << format;
        EXPECT_NE(text.find(format == "json" ? "\\u202E" : "202E"), std::string::npos) << format;
    }
    const Outcome analysis = run({"analyse", sheet});
    EXPECT_EQ(analysis.out.find(hidden), std::string::npos);
    EXPECT_NE(analysis.out.find("\\u202E7\\u001B"), std::string::npos) << analysis.out;
}

} // namespace
} // namespace ullage::test
