// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

class ImportCommand : public Commands {
protected:
    static std::size_t runs_in(const std::string& path) {
        return nlohmann::json::parse(run({"analyse", path, "--format", "json"}).out).at("runs").size();
    }
};

TEST_F(ImportCommand, makes_the_logbook_and_says_what_came_in) {
    const std::string sheet = written("a.csv", drain_sheet());
    const Outcome outcome = run({"import", folder_ / "new.ullage", sheet});
    EXPECT_EQ(outcome.code, exit_good);
    EXPECT_EQ(outcome.out, sheet + ": run 1 of Specimen, drain with 11 readings\n");
    EXPECT_EQ(outcome.err, "");
    EXPECT_EQ(runs_in(folder_ / "new.ullage"), 1u);
}

TEST_F(ImportCommand, a_refused_sheet_holds_up_no_other_and_adds_nothing) {
    std::string broken = drain_sheet("Specimen", 12);
    broken.replace(broken.find(",400,"), 5, ",4x0,");
    const Outcome outcome = run({"import", folder_ / "new.ullage", written("a.csv", drain_sheet()), written("b.csv", broken),
                                 written("c.csv", drain_sheet("Other", 13)), folder_ / "none.csv"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    EXPECT_EQ(std::count(outcome.out.begin(), outcome.out.end(), '\n'), 2) << outcome.out;
    EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 2) << outcome.err;
    EXPECT_NE(outcome.err.find("b.csv, line 22"), std::string::npos) << outcome.err;
    EXPECT_NE(outcome.err.find("4x0"), std::string::npos) << outcome.err;
    EXPECT_NE(outcome.err.find("none.csv"), std::string::npos) << outcome.err;
    EXPECT_EQ(runs_in(folder_ / "new.ullage"), 2u);
}

TEST_F(ImportCommand, a_second_import_of_the_same_sheet_adds_nothing) {
    const std::string sheet = written("a.csv", drain_sheet());
    ASSERT_EQ(run({"import", folder_ / "new.ullage", sheet}).code, exit_good);
    const Outcome again = run({"import", folder_ / "new.ullage", sheet});
    EXPECT_EQ(again.code, exit_good);
    EXPECT_EQ(again.out, sheet + ": already in the logbook as run 1 of Specimen, left out\n");
    EXPECT_EQ(runs_in(folder_ / "new.ullage"), 1u);
}

TEST_F(ImportCommand, an_unknown_key_is_reported_and_kept) {
    const std::string sheet = written("a.csv", "# vessel: blue\n" + drain_sheet());
    const Outcome outcome = run({"import", folder_ / "new.ullage", sheet});
    EXPECT_EQ(outcome.code, exit_good);
    EXPECT_NE(outcome.out.find("vessel"), std::string::npos);
    const Outcome exported = run({"export-sheet", folder_ / "new.ullage", "--unit", "Specimen", "--run", "1"});
    EXPECT_NE(exported.out.find("# vessel: blue\n"), std::string::npos) << exported.out;
}

TEST_F(ImportCommand, a_claim_that_differs_from_the_logbook_is_refused_by_name) {
    std::string other = drain_sheet("Specimen", 12);
    other.replace(other.find("rated_energy_wh: 1000"), 21, "rated_energy_wh: 1100");
    const Outcome outcome = run({"import", folder_ / "new.ullage", written("a.csv", drain_sheet()), written("b.csv", other)});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    EXPECT_NE(outcome.err.find("1100"), std::string::npos) << outcome.err;
    EXPECT_EQ(runs_in(folder_ / "new.ullage"), 1u);
}

TEST_F(ImportCommand, a_file_that_is_no_logbook_is_left_as_it_is) {
    const std::string text(5000, 'x');
    const std::string path = written("notes.ullage", text);
    const Outcome outcome = run({"import", path, written("a.csv", drain_sheet())});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    EXPECT_EQ(file_text(path), text);
}

TEST_F(ImportCommand, a_preview_brings_no_folder_of_a_whole_logbook_in) {
    const std::string book = logbook(), other = folder_ / "other.ullage", all = folder_ / "all";
    ASSERT_EQ(run({"import", other, written("a.csv", drain_sheet("Another"))}).code, exit_good);
    ASSERT_EQ(run({"export-folder", other, "--into", all}).code, exit_good);
    const Outcome outcome = run({"import", book, all, "--preview"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    expect_one_line(outcome.err);
    EXPECT_EQ(run({"analyse", book}).out.find("Another"), std::string::npos);
}

TEST_F(ImportCommand, an_exported_sheet_goes_out_and_in_unchanged) {
    const std::string path = logbook();
    const std::string copy = folder_ / "copy.csv";
    ASSERT_EQ(run({"export-sheet", path, "--unit", "Specimen", "--run", "2", "--output", copy}).code, exit_good);
    const Outcome printed = run({"export-sheet", path, "--unit", "Specimen", "--run", "2"});
    EXPECT_EQ(printed.out, file_text(copy));
    ASSERT_EQ(run({"import", folder_ / "second.ullage", copy}).code, exit_good);
    EXPECT_EQ(run({"export-sheet", folder_ / "second.ullage", "--unit", "Specimen", "--run", "1"}).out, file_text(copy));
}

TEST_F(ImportCommand, an_export_of_a_run_that_is_not_there_names_those_that_are) {
    const std::string path = logbook();
    const Outcome no_unit = run({"export-sheet", path, "--unit", "Nothing", "--run", "1"});
    EXPECT_EQ(no_unit.code, exit_bad_input);
    EXPECT_EQ(no_unit.err, "ullage: --unit: there is no run of a unit named `Nothing`; use one of `Other`, `Specimen`\n");
    const Outcome no_run = run({"export-sheet", path, "--unit", "Specimen", "--run", "3"});
    EXPECT_EQ(no_run.code, exit_bad_input);
    EXPECT_EQ(no_run.err, "ullage: --run: there is no run 3; use one of 1, 2\n");
    const Outcome no_place = run({"export-sheet", path, "--unit", "Specimen", "--run", "1", "--output", folder_ / "none/x.csv"});
    EXPECT_EQ(no_place.code, exit_bad_input);
    expect_one_line(no_place.err);
}

} // namespace
} // namespace ullage::test
