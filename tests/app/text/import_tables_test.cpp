// SPDX-License-Identifier: GPL-3.0-or-later
// Foreign tables through `import`: with answers as options, in one transaction, and refused in one line where an answer is missing.
#include "command_fixture.h"
#include "support/has_text.h"
#include "support/source_dir.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

class ImportTables : public Commands {
protected:
    static std::string table(const std::string& name) { return (source_dir() / "tests/corpus/tables" / name).string(); }

    /// Imports into the logbook of the test, with the options of all tables besides.
    Outcome import(const std::string& name, std::vector<std::string> options) {
        std::vector<std::string> args{"import", folder_ / "book.ullage", table(name), "--zone", "Europe/Berlin"};
        args.insert(args.end(), options.begin(), options.end());
        return run(args);
    }

    std::size_t runs() const {
        return nlohmann::json::parse(run({"analyse", (folder_ / "book.ullage").string(), "--format", "json"}).out).at("runs").size();
    }

    std::string sheet(const std::string& unit, const std::string& number) const {
        return run({"export-sheet", (folder_ / "book.ullage").string(), "--unit", unit, "--run", number}).out;
    }
};

TEST_F(ImportTables, what_is_missing_is_named_in_one_line_and_nothing_comes_in) {
    const Outcome outcome = import("kitchen.csv", {});
    EXPECT_EQ(outcome.code, exit_bad_input);
    EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1) << outcome.err;
    EXPECT_TRUE(contains(outcome.err, "what the table does not say is asked once; answer with --meter; nothing was imported")) << outcome.err;
    EXPECT_TRUE(contains(outcome.out, "Read as: text, Windows-1252, columns end at a semicolon, head in row 4")) << outcome.out;
    EXPECT_TRUE(contains(outcome.out, "row 12 left out: `Summe` is a line of totals")) << outcome.out;
    EXPECT_EQ(runs(), 0u);
}

TEST_F(ImportTables, answers_as_options_bring_it_in) {
    const Outcome outcome = import("kitchen.csv", {"--meter", "Plug", "--meter-limit", "2"});
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_TRUE(contains(outcome.out, "kitchen.csv: run 1 of Osk 1200, drain with 6 readings")) << outcome.out;
    const std::string exported = sheet("Osk 1200", "1");
    for (const char* part : {"# rated_energy_wh: 1200\n", "# meter: Plug\n", "# meter_limit_percent: 2\n", "# ended: cut-off seen\n",
                             "# started_full: yes\n", "2025-05-15T02:28+02:00,0,13365,,,cut-off,abgeschaltet\n"})
        EXPECT_TRUE(contains(exported, part)) << part << exported;
    const Outcome again = import("kitchen.csv", {"--meter", "Plug"});
    EXPECT_EQ(again.code, exit_good);
    EXPECT_TRUE(contains(again.out, "every run of it is already in the logbook, nothing was imported")) << again.out;
    EXPECT_EQ(runs(), 1u);
}

TEST_F(ImportTables, both_runs_of_a_sheet_come_in_together_and_not_known_is_an_answer) {
    EXPECT_TRUE(contains(import("side-by-side.xlsx", {}).err, "there are several sheets: `Runs`, `Prices`; name one with --sheet"));
    const Outcome missing = import("side-by-side.xlsx", {"--sheet", "Runs"});
    EXPECT_TRUE(contains(missing.err, "answer with --unit, --meter, --ended; nothing was imported")) << missing.err;
    EXPECT_EQ(runs(), 0u);
    const Outcome outcome = import("side-by-side.xlsx",
                                   {"--sheet", "1", "--unit", "Tarn 600", "--rated-wh", "not-known", "--meter", "not-known", "--ended", "not-known"});
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_TRUE(contains(outcome.out, "run 1 of Tarn 600, drain with 5 readings; run 2 of Tarn 600, drain with 4 readings")) << outcome.out;
    EXPECT_TRUE(contains(sheet("Tarn 600", "2"), "# ended_not_known: the table did not say how the run ended\n"));
    EXPECT_FALSE(contains(sheet("Tarn 600", "2"), "rated_energy_wh"));
}

TEST_F(ImportTables, an_answer_that_is_no_number_is_refused_and_nothing_comes_in) {
    ASSERT_EQ(import("weekend.ods", {"--unit", "Heft 1000", "--rated-wh", "1000", "--meter", "not-known", "--ended", "stopped"}).code, exit_good);
    const Outcome outcome =
        import("garage.txt", {"--rated-wh", "Brill 2000=much", "--rated-wh", "Quay 500=500", "--meter", "not-known", "--ended", "not-known"});
    EXPECT_EQ(outcome.code, exit_bad_input);
    EXPECT_TRUE(contains(outcome.err, "--rated-wh: `much` is no number; give a number, or not-known")) << outcome.err;
    EXPECT_EQ(runs(), 2u);
}

TEST_F(ImportTables, each_new_unit_of_a_table_has_its_own_rated_energy) {
    const std::vector<std::string> rest{"--meter", "not-known", "--ended", "not-known"};
    std::vector<std::string> one = rest;
    one.insert(one.end(), {"--rated-wh", "2000"});
    EXPECT_TRUE(contains(import("garage.txt", one).err, "answer with --rated-wh; nothing was imported"));
    std::vector<std::string> each = rest;
    each.insert(each.end(), {"--rated-wh", "Brill 2000=2000", "--rated-wh", "Quay 500=not-known"});
    const Outcome outcome = import("garage.txt", each);
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_TRUE(contains(sheet("Brill 2000", "1"), "# rated_energy_wh: 2000\n"));
    EXPECT_TRUE(contains(sheet("Brill 2000", "1"), "# ended: cut-off seen\n"));
    EXPECT_FALSE(contains(sheet("Quay 500", "2"), "rated_energy_wh"));
}

TEST_F(ImportTables, exported_readings_come_back_as_the_same_run) {
    std::string text = drain_sheet();
    for (std::size_t at = 0; (at = text.find("2027-", at)) != std::string::npos;) text.replace(at, 5, "2025-");
    // A remark that sounds like an event, one that a spreadsheet would run, noted powers.
    text.replace(text.find(",80,,,,\n"), 8, ",80,79.5,81,,off\n");
    text.replace(text.find(",160,,,,\n"), 9, ",160,,,load changed,=1+1\n");
    const std::string book = folder_ / "source.ullage";
    ASSERT_EQ(run({"import", book, written("a.csv", text)}).code, exit_good);
    const auto rows_of = [&](const std::string& logbook, const char* unit) {
        const std::string exported = run({"export-sheet", logbook, "--unit", unit, "--run", "1"}).out;
        return exported.substr(exported.find("\ntime,"));
    };
    for (const char* name : {"out.csv", "out.xlsx"}) {
        const std::string table = folder_ / name;
        ASSERT_EQ(run({"export-readings", book, "--unit", "Specimen", "--run", "1", "--output", table}).code, exit_good);
        const std::string back = folder_ / (std::string(name) + ".ullage");
        std::vector<std::string> args{"import",  back,        table,     "--unit",    "Again",  "--rated-wh", "1000",
                                      "--meter", "not-known", "--ended", "not-known", "--zone", "UTC"};
        if (std::string(name) == "out.xlsx") args.insert(args.end(), {"--sheet", "1"});
        const Outcome outcome = run(args);
        ASSERT_EQ(outcome.code, exit_good) << outcome.out << outcome.err;
        EXPECT_EQ(rows_of(back, "Again"), rows_of(book, "Specimen")) << name;
    }
}

TEST_F(ImportTables, the_registers_of_two_meters_come_back_each_with_its_meter) {
    std::string text = drain_sheet();
    for (std::size_t at = 0; (at = text.find("2027-", at)) != std::string::npos;) text.replace(at, 5, "2025-");
    const std::string book = folder_ / "source.ullage";
    ASSERT_EQ(run({"import", book, written("a.csv", text)}).code, exit_good);
    std::string table = run({"export-readings", book, "--unit", "Specimen", "--run", "1", "--format", "csv"}).out;
    // A second meter beside the first, which counts the same.
    std::istringstream lines(table);
    std::string doubled;
    for (std::string line; std::getline(lines, line);) {
        if (line.ends_with('\r')) line.pop_back();
        const std::size_t register_at = line.find(',', line.find(',') + 1) + 1;
        doubled +=
            line + (doubled.empty() ? ",second_register_wh" : "," + line.substr(register_at, line.find(',', register_at) - register_at)) + '\n';
    }
    const std::string back = folder_ / "two.ullage";
    const std::vector<std::string> args{
        "import", back, written("two.csv", doubled), "--unit", "Again", "--rated-wh", "1000", "--meter", "not-known", "--ended", "stopped",
        "--zone", "UTC"};
    const Outcome missing = run(args);
    EXPECT_TRUE(contains(missing.err, "answer with --second-meter")) << missing.out << missing.err;
    std::vector<std::string> answered = args;
    answered.insert(answered.end(), {"--second-meter", "Bench meter", "--second-meter-limit", "0.2"});
    ASSERT_EQ(run(answered).code, exit_good);
    const std::string exported = run({"export-sheet", back, "--unit", "Again", "--run", "1"}).out;
    EXPECT_TRUE(contains(exported, "# second_meter: Bench meter\n")) << exported;
    EXPECT_TRUE(contains(exported, "# second_meter_limit_percent: 0.2\n")) << exported;
    EXPECT_TRUE(contains(exported, "second_register_wh")) << exported;
}

TEST_F(ImportTables, columns_are_named_by_number_letter_or_title) {
    for (const char* column : {"4=register", "D=register", "energy total Wh=register"}) {
        const Outcome outcome =
            import("twice.csv", {"--map", column, "--preview", "--meter", "not-known", "--ended", "not-known", "--unit", "Any", "--rated-wh", "9"});
        EXPECT_EQ(outcome.code, exit_good) << outcome.err;
        EXPECT_TRUE(contains(outcome.out, "register 5000 to 5300 Wh")) << outcome.out;
        EXPECT_TRUE(contains(outcome.out, "nothing was imported (--preview)"));
    }
    EXPECT_TRUE(contains(import("twice.csv", {"--map", "Z=register"}).err, "the table has no column `Z`"));
    EXPECT_TRUE(contains(import("twice.csv", {"--map", "1=flux"}).err, "`1=flux` names no column and role"));
    EXPECT_EQ(runs(), 0u);
}

TEST_F(ImportTables, each_open_question_names_its_option) {
    const std::pair<const char*, const char*> tables[] = {{"open-order.csv", "--date-order"},
                                                          {"open-unit.csv", "--register-unit"},
                                                          {"open-runs.csv", "--runs"},
                                                          {"open-start.csv", "--start"},
                                                          {"twice.csv", "--map"},
                                                          {"no-table.txt", "--map"}};
    for (const auto& [name, option] : tables) {
        const Outcome outcome = import(name, {});
        EXPECT_EQ(outcome.code, exit_bad_input) << name;
        EXPECT_TRUE(contains(outcome.err, std::string("answer with ") + option)) << outcome.err;
        EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 1) << outcome.err;
    }
    EXPECT_EQ(runs(), 0u);
}

TEST_F(ImportTables, files_that_cannot_come_in_are_one_line_each_and_hold_up_no_other) {
    const Outcome outcome = run({"import", folder_ / "book.ullage", table("cut-short.xlsx"), table("password.ods"), table("before-1980.csv"),
                                 written("a.csv", drain_sheet())});
    EXPECT_EQ(outcome.code, exit_bad_input);
    EXPECT_EQ(std::count(outcome.err.begin(), outcome.err.end(), '\n'), 3) << outcome.err;
    EXPECT_EQ(runs(), 1u);
}

} // namespace
} // namespace ullage::test
