// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"

#include "store/logbook.h"
#include "support/fake_clock.h"
#include "support/has_text.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

/// Two logbooks of one origin: the other has a further unit, states another rated energy and an amended reading.
class JoinCommand : public Commands {
protected:
    void SetUp() override {
        ASSERT_EQ(run({"import", here(), written("a.csv", drain_sheet())}).code, exit_good);
        fs::copy_file(here(), there());
        ASSERT_EQ(run({"import", there(), written("b.csv", drain_sheet("Second", 12))}).code, exit_good);
        Logbook book = Logbook::open(there(), OpenMode::record, clock_).value();
        Unit unit = book.units().value().front();
        unit.rated_energy_wh = 1100;
        ASSERT_EQ(unit.name, "Second");
        unit = book.units().value().back();
        unit.rated_energy_wh = 1100;
        ASSERT_TRUE(book.update(unit));
        const Reading reading = book.run_records().value().back().readings.front();
        ReadingValues values = reading.values;
        values.register_wh = 3;
        ASSERT_TRUE(book.amend(reading.uuid, values, "misread"));
    }

    [[nodiscard]] std::string here() const { return folder_ / "here.ullage"; }
    [[nodiscard]] std::string there() const { return folder_ / "there.ullage"; }
    static nlohmann::json rows(const std::vector<std::string>& args) {
        const Outcome outcome = run(args);
        EXPECT_EQ(outcome.code, exit_good) << outcome.err;
        return nlohmann::json::parse(outcome.out).at("rows");
    }
    [[nodiscard]] double rated() const {
        return Logbook::open(here(), OpenMode::read_only, clock_).value().units().value().back().rated_energy_wh.value();
    }
    [[nodiscard]] double first_register() const {
        return Logbook::open(here(), OpenMode::read_only, clock_).value().run_records().value().back().readings.front().values.register_wh.value();
    }

    FakeClock clock_;
};

TEST_F(JoinCommand, brings_in_what_the_other_has_and_leaves_what_differs_as_it_is) {
    const Outcome outcome = run({"join", here(), there()});
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_EQ(outcome.err, "");
    const std::string said = on_one_line(outcome.out);
    EXPECT_TRUE(contains(said, "Joined: 1 unit, 1 run, 11 readings came in; 2 differences stay as here.")) << said;
    EXPECT_TRUE(contains(said, "unit Second")) << said;
    EXPECT_EQ(rated(), 1000);
    EXPECT_EQ(first_register(), 0);
    const Outcome again = run({"join", here(), there()});
    EXPECT_TRUE(contains(on_one_line(again.out), "nothing came in; 2 differences stay as here")) << again.out;
}

TEST_F(JoinCommand, joins_nothing_where_its_table_cannot_take_the_place_of_what_is_there) {
    const std::string before = run({"join", here(), there(), "--dry-run"}).out;
    (void)written("theirs.csv-metadata.json", "a year of work");
    for (const std::string& target : {written("theirs.json", "a year of work"), std::string(folder_ / "theirs.csv"), here()}) {
        const Outcome outcome = run({"join", here(), there(), "--format", target.ends_with(".csv") ? "csv" : "json", "--output", target});
        EXPECT_EQ(outcome.code, exit_bad_input) << target;
        expect_one_line(outcome.err);
        EXPECT_EQ(run({"join", here(), there(), "--dry-run"}).out, before) << target;
    }
}

TEST_F(JoinCommand, takes_from_the_other_what_it_is_told_to) {
    const auto dry = rows({"join", here(), there(), "--dry-run", "--format", "json"});
    std::string unit_id;
    for (const auto& row : dry)
        if (row.at("field") == "rated energy (Wh)") unit_id = row.at("id");
    ASSERT_EQ(unit_id.size(), 8U);
    EXPECT_EQ(rated(), 1000) << "a dry run changes nothing";
    ASSERT_EQ(run({"join", here(), there(), "--take-other", "newer"}).code, exit_good);
    EXPECT_EQ(first_register(), 3);
    EXPECT_EQ(rated(), 1000);
    ASSERT_EQ(run({"join", here(), there(), "--take-other", unit_id}).code, exit_good);
    EXPECT_EQ(rated(), 1100);
    const Outcome all = run({"join", here(), there(), "--take-other", "all"});
    EXPECT_TRUE(contains(on_one_line(all.out), "The logbook has all that the other has already")) << all.out;
}

TEST_F(JoinCommand, refuses_the_same_file_an_unknown_id_and_a_file_that_is_no_logbook_and_changes_nothing) {
    const auto refused = [&](const std::vector<std::string>& args) {
        const Outcome outcome = run(args);
        EXPECT_EQ(outcome.code, exit_bad_input);
        EXPECT_EQ(outcome.out, "");
        return outcome.err;
    };
    fs::create_hard_link(here(), folder_ / "link.ullage");
    EXPECT_TRUE(contains(refused({"join", here(), folder_ / "link.ullage"}), "this is the same logbook"));
    EXPECT_TRUE(contains(refused({"join", here(), there(), "--take-other", "zzz"}), "no difference has the id `zzz`"));
    EXPECT_TRUE(contains(refused({"join", here(), written("letter.ullage", "Dear tester")}), "letter.ullage"));
    EXPECT_TRUE(contains(refused({"join", folder_ / "none.ullage", there()}), "there is no such file"));
    EXPECT_EQ(Logbook::open(here(), OpenMode::read_only, clock_).value().units().value().size(), 1U);
}

TEST_F(JoinCommand, looks_at_another_that_is_recorded_into_and_refuses_a_logbook_that_is) {
    const Logbook recording = Logbook::open(there(), OpenMode::record, clock_).value();
    EXPECT_EQ(run({"join", here(), there()}).code, exit_good);
    const Outcome refused = run({"join", there(), here()});
    EXPECT_EQ(refused.code, exit_bad_input);
    EXPECT_TRUE(contains(refused.err, "the logbook is open elsewhere")) << refused.err;
}

class BackupCommand : public Commands {};

TEST_F(BackupCommand, makes_the_copy_of_the_day_and_lists_the_copies_there_are) {
    const std::string book = folder_ / "bench.ullage";
    ASSERT_EQ(run({"import", book, written("a.csv", drain_sheet())}).code, exit_good);
    EXPECT_EQ(run({"backup", book, "--list"}).out, book + ": there is no copy\n");
    const Outcome made = run({"backup", book});
    EXPECT_EQ(made.code, exit_good) << made.err;
    EXPECT_TRUE(made.out.starts_with(book + ": copied to " + (folder_ / "bench.").string())) << made.out;
    EXPECT_TRUE(made.out.ends_with(".ullage-copy\n")) << made.out;
    EXPECT_TRUE(contains(run({"backup", book, "--list"}).out, ".ullage-copy"));
    fs::create_directory(folder_ / "copies");
    EXPECT_EQ(run({"backup", book, "--into", folder_ / "copies"}).code, exit_good);
    const Outcome nowhere = run({"backup", book, "--into", folder_ / "none"});
    EXPECT_EQ(nowhere.code, exit_bad_input);
    EXPECT_TRUE(contains(nowhere.err, "there is no such folder")) << nowhere.err;
}

} // namespace
} // namespace ullage::test
