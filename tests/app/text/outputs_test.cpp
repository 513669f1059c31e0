// SPDX-License-Identifier: GPL-3.0-or-later
// What every command that writes has in common.
#include "command_fixture.h"
#include "formats/tables/table.h"
#include "support/source_dir.h"

#include <cstdlib>
#include <streambuf>
#include <utility>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;
using Words = std::vector<std::string>;

/// Takes words until some are among them that it does not take; from there on it takes none.
class RefusingBuffer : public std::streambuf {
public:
    explicit RefusingBuffer(std::string refused) : refused_(std::move(refused)) {}

private:
    std::streamsize xsputn(const char* text, std::streamsize size) override {
        taken_.append(text, static_cast<std::size_t>(size));
        return taken_.find(refused_) == std::string::npos ? size : 0;
    }
    int_type overflow(int_type letter) override {
        const char text = traits_type::to_char_type(letter);
        return xsputn(&text, 1) == 1 ? letter : traits_type::eof();
    }

    std::string refused_, taken_;
};

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
    static Outcome run_into(std::ostream& out, const Words& words) {
        std::ostringstream err;
        Outcome outcome;
        outcome.code = run_command(words, text_commands(), out, err);
        outcome.err = err.str();
        return outcome;
    }
    /// Runs a command whose results go to a device that takes nothing.
    static Outcome run_into_full_device(const Words& words) {
        std::ofstream out("/dev/full");
        return run_into(out, words);
    }
    /// What is said of a result that went nowhere.
    static std::string lost_line(const std::string& but) {
        return "ullage: standard output: the result could not be written; check where it goes to" + but + '\n';
    }
    /// The words with this logbook for each BOOK.
    static Words in_book(Words words, const std::string& book) {
        for (std::string& word : words)
            if (const auto at = word.find("BOOK"); at != std::string::npos) word.replace(at, 4, book);
        return words;
    }
    std::string copied(const std::string& book, const std::string& name) const {
        fs::copy_file(book, folder_ / name, fs::copy_options::overwrite_existing);
        return folder_ / name;
    }
    /// A log of the first run of "Specimen", a row each ten seconds.
    static std::string log_of(int rows) {
        std::string text = "time,register (Wh),power (W)\n";
        for (int row = 0; row < rows; ++row)
            text += "2027-05-11T06:00:" + std::string(row == 0 ? "0" : "") + std::to_string(10 * row) + "Z,0." + std::to_string(2 * row) + ",80\n";
        return text;
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
}

TEST_F(Outputs, what_came_into_a_logbook_is_told_and_there_where_the_result_cannot_be_written) {
    const std::string first = logbook(), theirs = folder_ / "theirs.ullage";
    ASSERT_EQ(run({"import", theirs, written("5.csv", drain_sheet("Fifth"))}).code, exit_good);
    const std::string sheet = written("4.csv", drain_sheet("Fourth")), log = written("log.csv", log_of(3));
    const Words run_1{"--unit", "Specimen", "--run", "1"};
    const struct {
        Words words, shown_by;
        std::string told;
    } all[] = {
        {{"import", "BOOK", sheet}, {"analyse", "BOOK"}, "what could be imported is in the logbook: BOOK"},
        {{"import-loads", list_file().front(), "--logbook", "BOOK"},
         {"loads", "--logbook", "BOOK"},
         "what could be imported is in the logbook: BOOK"},
        {with({"import-trace", log, "--logbook", "BOOK"}, run_1), with({"analyse", "BOOK"}, run_1), "the samples are in the logbook"},
        {with({"import-trace", log, "--logbook", "BOOK", "--follow", "--until-quiet", "0.1"}, run_1), with({"analyse", "BOOK"}, run_1),
         "the samples to 2027-05-11T06:00:20Z are in the logbook; the log is no longer followed"},
        {{"join", "BOOK", theirs}, {"analyse", "BOOK"}, "what came in is in the logbook: BOOK"},
        {{"join", "BOOK", theirs, "--format", "json"}, {"analyse", "BOOK"}, "what came in is in the logbook: BOOK"},
    };
    for (const auto& [words, shown_by, told] : all) {
        SCOPED_TRACE(testing::PrintToString(words));
        const std::string heard = copied(first, "heard.ullage"), unheard = copied(first, "unheard.ullage");
        EXPECT_EQ(run(in_book(words, heard)).code, exit_good);
        const Outcome lost = run_into_full_device(in_book(words, unheard));
        EXPECT_EQ(lost.code, exit_bad_input);
        EXPECT_EQ(lost.err, lost_line("; " + in_book({told}, unheard).front()));
        const Outcome shown = run(in_book(shown_by, unheard));
        EXPECT_EQ(shown.code, exit_good) << shown.err;
        EXPECT_EQ(shown.out, run(in_book(shown_by, heard)).out);
        EXPECT_NE(shown.out, run(in_book(shown_by, first)).out);
    }
}

TEST_F(Outputs, a_folder_and_a_copy_are_told_complete_where_the_result_cannot_be_written) {
    const std::string book = logbook();
    const auto folder = [this](const char* name) { return (folder_ / name).string(); };
    ASSERT_EQ(run({"export-folder", book, "--into", folder("heard")}).code, exit_good);
    const Outcome exported = run_into_full_device({"export-folder", book, "--into", folder("unheard")});
    EXPECT_EQ(exported.code, exit_bad_input);
    EXPECT_EQ(exported.err, lost_line("; the folder is complete: " + folder("unheard")));
    for (const auto& entry : fs::recursive_directory_iterator(folder("heard"))) {
        if (!entry.is_regular_file()) continue;
        EXPECT_EQ(file_text(folder("unheard") / fs::relative(entry.path(), folder("heard"))), file_text(entry.path())) << entry.path();
    }
    fs::create_directories(folder("copies"));
    const Outcome backed_up = run_into_full_device({"backup", book, "--into", folder("copies")});
    EXPECT_EQ(backed_up.code, exit_bad_input);
    ASSERT_FALSE(fs::is_empty(folder("copies"))) << backed_up.err;
    const std::string copy = fs::directory_iterator(folder("copies"))->path().string();
    EXPECT_EQ(backed_up.err, lost_line("; the copy is complete: " + copy));
    EXPECT_EQ(run({"analyse", copy}).out, run({"analyse", book}).out);
}

TEST_F(Outputs, how_far_a_log_has_come_in_is_told_where_the_result_can_no_longer_be_written) {
    const std::string first = logbook(), log = folder_ / "log.csv";
    const struct {
        std::string refused;
        Words more;
        int rows_before, rows_while;
        std::string told;
    } all[] = {
        {"3 new samples", {}, 2, 5, "the samples to 2027-05-11T06:00:40Z are in the logbook"},
        {"Following",
         {"--follow", "--until-quiet", "0.1"},
         2,
         2,
         "the samples to 2027-05-11T06:00:10Z are in the logbook; the log is no longer followed"},
        {"5 samples to", {"--follow"}, 2, 5, "the samples to 2027-05-11T06:00:40Z are in the logbook; the log is no longer followed"},
        {"Ended", {"--follow", "--until-quiet", "0.1"}, 2, 5, "the samples to 2027-05-11T06:00:40Z are in the logbook"},
    };
    for (const auto& [refused, more, rows_before, rows_while, told] : all) {
        SCOPED_TRACE(refused);
        const std::string book = copied(first, "followed.ullage");
        const Words import{"import-trace", written("log.csv", log_of(rows_before)), "--logbook", book, "--unit", "Specimen", "--run", "1"};
        ASSERT_EQ(run(import).code, exit_good);
        (void)written("log.csv", log_of(rows_while));
        RefusingBuffer buffer(refused);
        std::ostream out(&buffer);
        const Outcome lost = run_into(out, with(import, more));
        EXPECT_EQ(lost.code, exit_bad_input);
        EXPECT_EQ(lost.err, lost_line("; " + told));
        const std::string analysis = run({"analyse", book, "--unit", "Specimen", "--run", "1"}).out;
        ASSERT_EQ(run({"import-trace", log, "--logbook", copied(first, "whole.ullage"), "--unit", "Specimen", "--run", "1"}).code, exit_good);
        EXPECT_EQ(analysis, run({"analyse", folder_ / "whole.ullage", "--unit", "Specimen", "--run", "1"}).out);
    }
}

TEST_F(Outputs, a_command_that_recorded_nothing_claims_nothing_where_the_result_cannot_be_written) {
    const std::string book = logbook(), theirs = folder_ / "theirs.ullage";
    ASSERT_EQ(run({"import", theirs, written("5.csv", drain_sheet("Fifth"))}).code, exit_good);
    const std::string table = written("table.csv", "time,SoC,Wh\n2025-06-01 06:00,100,0\n2025-06-01 16:00,0,800\n");
    for (const Words& words :
         {Words{"import", book, table, "--preview"}, Words{"join", book, theirs, "--dry-run"}, Words{"join", book, book + "2"},
          Words{"import-trace", written("log.csv", log_of(3)), "--logbook", book, "--unit", "Specimen", "--run", "1", "--preview"},
          Words{"backup", book, "--list"}}) {
        fs::copy_file(book, book + "2", fs::copy_options::overwrite_existing);
        EXPECT_EQ(run_into_full_device(words).err, lost_line("")) << testing::PrintToString(words);
    }
    // A refusal is no result that was lost; what another sheet brought in stands nevertheless.
    const std::string good = written("4.csv", drain_sheet("Fourth")), bad = written("bad.csv", "# run: nonsense\ntime\n");
    const std::string refusal = run({"import", book, bad}).err;
    EXPECT_EQ(run_into_full_device({"import", book, bad}).err, refusal);
    EXPECT_EQ(run_into_full_device({"import", book, bad, good}).err, refusal + lost_line("; what could be imported is in the logbook: " + book));
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
