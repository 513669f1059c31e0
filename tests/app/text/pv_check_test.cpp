// SPDX-License-Identifier: GPL-3.0-or-later
#include "command_fixture.h"
#include "store/logbook.h"
#include "support/fake_clock.h"

#include <nlohmann/json.hpp>

namespace ullage::test {
namespace {

using PvCheckCommand = Commands;

const std::vector<std::string> three_in_series{"pv-check", "--voc-v",     "24.3", "--voc-coefficient", "-0.30 %/°C", "--series",
                                               "3",        "--coldest-c", "-15",  "--pv-max-v",        "60"};

TEST_F(PvCheckCommand, options_alone_give_the_verdict_and_the_dangerous_one_cannot_be_overlooked) {
    const Outcome outcome = run(three_in_series);
    EXPECT_EQ(outcome.code, exit_good) << outcome.err;
    EXPECT_NE(outcome.out.find("Verdict: EXCEEDS THE VOLTAGE LIMIT WHEN COLD\nDanger, do not connect"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("81.6 V"), std::string::npos);
    EXPECT_NE(outcome.out.find("Longest string within the voltage limit: 2 modules in series"), std::string::npos) << outcome.out;
    EXPECT_NE(outcome.out.find("licensed electrician come first"), std::string::npos);
}

TEST_F(PvCheckCommand, json_carries_the_same_numbers) {
    auto args = three_in_series;
    args.insert(args.end(), {"--format", "json"});
    const auto json = nlohmann::json::parse(run(args).out);
    EXPECT_EQ(json["verdict"], "exceeds the voltage limit when cold");
    EXPECT_NEAR(json["cold_voc_v"].get<double>(), 81.648, 1e-9);
    EXPECT_EQ(json["largest_series"], 2);
    EXPECT_TRUE(json["hot_vmp_v"].is_null());
    EXPECT_EQ(json["comparisons"][0]["outcome"], "beyond");
    EXPECT_EQ(json["sheet"]["series"], "3");
}

TEST_F(PvCheckCommand, options_go_before_the_sheet_file) {
    const std::string sheet = written("roof.txt", "name: roof\nvoc_v: 24.3\nvoc_coefficient: -0.30\nseries: 3\ncoldest_c: -15\npv_max_v: 60\n");
    EXPECT_NE(run({"pv-check", sheet}).out.find("EXCEEDS"), std::string::npos);
    EXPECT_NE(run({"pv-check", sheet, "--series", "2"}).out.find("Verdict: not known: Vmp"), std::string::npos);
}

TEST_F(PvCheckCommand, the_limits_of_a_unit_come_from_the_logbook_and_so_may_the_sheet) {
    const std::string path = folder_ / "bench.ullage";
    {
        const FakeClock clock;
        auto logbook = Logbook::create(path, clock);
        Unit unit;
        unit.name = "Specimen";
        unit.pv_max_v = 60;
        unit.pv_start_v = 12;
        const auto added = logbook.value().add(unit);
        PvSheet roof;
        roof.name = "roof";
        roof.unit_uuid = added.value().uuid;
        roof.voc_v = 24.3;
        roof.series = 3;
        roof.coldest_c = -15;
        ASSERT_TRUE(logbook.value().add(roof));
    }
    const Outcome kept = run({"pv-check", "--logbook", path, "--sheet-name", "roof"});
    EXPECT_NE(kept.out.find("EXCEEDS"), std::string::npos) << kept.out << kept.err;
    EXPECT_NE(kept.out.find("PV input of Specimen"), std::string::npos);
    const Outcome named = run({"pv-check", "--logbook", path, "--unit", "Specimen", "--voc-v", "24.3", "--coldest-c", "-15"});
    EXPECT_NE(named.out.find("60.0 V"), std::string::npos) << named.out;
    const Outcome unknown = run({"pv-check", "--logbook", path, "--unit", "Nobody"});
    EXPECT_EQ(unknown.code, exit_bad_input);
    expect_one_line(unknown.err);
}

TEST_F(PvCheckCommand, a_short_circuit_limit_and_the_tolerance_of_the_module_are_options_too) {
    const std::string sheet =
        written("whole.txt", "voc_v: 24.3\nvmp_v: 20.4\nisc_a: 10.2\nimp_a: 9.8\nvoc_coefficient: -0.30\nseries: 2\ncoldest_c: -15\n"
                             "hottest_c: 35\npv_max_v: 56\npv_max_a: 11\npv_max_w: 500\npv_start_v: 12\n");
    EXPECT_NE(run({"pv-check", sheet}).out.find("Verdict: ask before connecting\n"), std::string::npos);
    const std::string close = run({"pv-check", sheet, "--pv-short-circuit-a", "15"}).out; // 54.4 V, 56.1 V with 3 %
    EXPECT_NE(close.find("Verdict: too close to call: voltage when cold\n"), std::string::npos) << close;
    const std::string fits = run({"pv-check", sheet, "--pv-short-circuit-a", "15", "--voc-tolerance-percent", "2"}).out;
    EXPECT_NE(fits.find("Verdict: fits\n"), std::string::npos) << fits;
    EXPECT_EQ(run({"pv-check", sheet, "--voc-tolerance-percent", "30"}).code, exit_bad_input);
}

TEST_F(PvCheckCommand, bad_input_is_one_line_that_names_the_option) {
    const Outcome sign = run({"pv-check", "--voc-v", "40", "--voc-coefficient", "0.27"});
    EXPECT_EQ(sign.code, exit_bad_input);
    expect_one_line(sign.err);
    EXPECT_NE(sign.err.find("minus sign"), std::string::npos);
    const Outcome count = run({"pv-check", "--series", "none"});
    EXPECT_EQ(count.code, exit_bad_input);
    EXPECT_NE(count.err.find("--series"), std::string::npos) << count.err;
    const Outcome file = run({"pv-check", folder_ / "missing.txt"});
    EXPECT_EQ(file.code, exit_bad_input);
    expect_one_line(file.err);
}

} // namespace
} // namespace ullage::test
