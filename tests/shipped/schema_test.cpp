// SPDX-License-Identifier: GPL-3.0-or-later
// What the program prints as JSON keeps to the schemas that stand beside the help.
#include "shipped/shipped_fixture.h"

#include "support/command_output.h"
#include "support/source_dir.h"

#include <filesystem>
#include <fstream>
#include <functional>
#include <string>
#include <vector>

namespace ullage::test {
namespace {

namespace fs = std::filesystem;

/// Sheets of a folder of the repository.
std::vector<std::string> files_in(const fs::path& folder, const std::string& ending) {
    std::vector<std::string> files;
    for (const auto& entry : fs::directory_iterator(folder))
        if (entry.path().extension() == ending) files.push_back(entry.path().string());
    return files;
}

/// A logbook of the laboratory's four drains of one unit.
std::string cold_drains_in(const std::string& path, const std::function<void(const std::vector<std::string>&)>& run) {
    std::vector<std::string> words{"import", path};
    for (int n = 1; n <= 4; ++n) words.push_back((source_dir() / ("tests/shipped/laboratory/cold-" + std::to_string(n) + ".csv")).string());
    run(words);
    return path;
}

/// What a validator of the schema says of these texts; empty where all of them keep to it.
std::string against_schema(const std::string& name, const std::vector<std::string>& texts) {
    const TempFolder folder;
    std::string files;
    for (std::size_t i = 0; i < texts.size(); ++i) {
        const std::string path = folder / (std::to_string(i) + ".json");
        std::ofstream(path, std::ios::binary) << texts[i];
        files += " '" + path + '\'';
    }
    const std::string script = (source_dir() / "tests/shipped/check_schema.py").string();
    const std::string schema = (source_dir() / "resources/schema" / (name + ".schema.json")).string();
    const CommandOutput said = run_command("/usr/bin/python3 '" + script + "' '" + schema + '\'' + files);
    return said.exit_code == 0 ? said.text : "ended with " + std::to_string(said.exit_code) + ": " + said.text;
}

TEST_F(Shipped, schema_holds_analyses_of_the_sample_the_laboratory_and_runs_that_are_cut_short) {
    std::vector<std::string> texts{good({"analyse", logbook(), "--format", "json"}).out};
    for (const std::string& sheet : files_in(source_dir() / "tests/shipped/laboratory", ".csv"))
        texts.push_back(good({"analyse", sheet, "--format", "json"}).out);
    // Drains of one unit side by side, whose gauge curves are compared.
    texts.push_back(good({"analyse", cold_drains_in(file("cold.ullage"), [](const auto& words) { (void)good(words); }), "--format", "json"}).out);
    for (const std::string& sheet : files_in(source_dir() / "sample-data", ".csv")) {
        std::ifstream in(sheet);
        std::string cut, line;
        for (int rows = -1; rows < 5 && std::getline(in, line);) {
            if (rows >= 0 || line.starts_with("time,")) ++rows;
            cut += (line.starts_with("# ended:") ? std::string("# ended: still running") : line) + '\n';
        }
        const std::string path = file("cut.csv");
        std::ofstream(path, std::ios::binary) << cut;
        texts.push_back(good({"analyse", path, "--format", "json"}).out);
    }
    const std::string bare = file("bare.csv");
    std::ofstream(bare)
        << "# unit: \"<b>\\n=1\n# run: drain\n# ended: still running\n# time_zone: UTC\ntime,gauge_percent,register_wh\n2027-05-14T08:00Z,,\n";
    texts.push_back(good({"analyse", bare, "--format", "json"}).out);
    EXPECT_EQ(against_schema("analyse", texts), "");
}

TEST_F(Shipped, schema_holds_every_table) {
    std::vector<std::string> texts;
    for (const std::vector<std::string>& options :
         {std::vector<std::string>{}, {"--at-load", "120"}, {"--every-drain"}, {"--pairs"}, {"--by-model"}, {"--pairs", "--pairs-of", "wh_per_kg"}}) {
        std::vector<std::string> words{"compare", logbook(), "--format", "json"};
        words.insert(words.end(), options.begin(), options.end());
        texts.push_back(good(words).out);
    }
    texts.push_back(good({"export-readings", logbook(), "--format", "json"}).out);
    texts.push_back(good({"export-readings", logbook(), "--intervals", "--format", "json"}).out);
    for (const char* table : {"units", "months", "rules", "course"})
        texts.push_back(good({"size", logbook(), "--load-list", "Show night", "--table", table, "--month-sun-hours",
                              "1,1.5,3,4,5,6,6,5,4,2.5,1.2,0.9", "--format", "json"})
                            .out);
    EXPECT_EQ(against_schema("table", texts), "");
}

TEST_F(Shipped, schema_holds_sizings_and_pv_checks) {
    const std::vector<std::string> sizings{
        good({"size", logbook(), "--load-list", "Show night", "--format", "json"}).out,
        good({"size", logbook(), "--load-list", "Show night", "--unit", "Tarrow 2k", "--format", "json"}).out,
        good({"size", logbook(), "--load-list", "Show night", "--array", "100", "--units", "3", "--format", "json"}).out};
    EXPECT_EQ(against_schema("size", sizings), "");
    std::vector<std::string> checks;
    for (const fs::path& folder : {source_dir() / "sample-data", source_dir() / "tests/shipped/cases"})
        for (const std::string& sheet : files_in(folder, ".txt")) checks.push_back(good({"pv-check", sheet, "--format", "json"}).out);
    const std::string bare = file("bare.txt");
    std::ofstream(bare) << "name: nothing known\n";
    checks.push_back(good({"pv-check", bare, "--format", "json"}).out);
    EXPECT_EQ(against_schema("pv-check", checks), "");
}

TEST_F(Shipped, schema_refuses_what_lacks_a_field_or_states_another_kind) {
    const std::string good_one = good({"pv-check", sample_file("pv-tarrow-2k-roof.txt"), "--format", "json"}).out;
    std::string without = good_one;
    without.replace(without.find("\"verdict\""), 9, "\"verdikt\"");
    EXPECT_NE(against_schema("pv-check", {without}), "");
    std::string table = good({"compare", logbook(), "--format", "json"}).out;
    table.replace(table.find("\"measured\""), 10, "\"guessed\"");
    EXPECT_NE(against_schema("table", {table}), "");
}

} // namespace
} // namespace ullage::test
