// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/module_voltage.h"
#include "pv/pv_check.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace ullage {
namespace {

PvSheet module(double voc_v, std::optional<double> percent = {}) {
    PvSheet sheet;
    sheet.name = "sheet";
    sheet.voc_v = voc_v;
    if (percent) sheet.voc_coefficient = PvCoefficient{*percent, PvPerDegree::percent};
    return sheet;
}

PvSheet with_tolerance(PvSheet sheet, double percent) {
    sheet.voc_tolerance_percent = percent;
    return sheet;
}

using Outcome = PvComparison::Outcome;

const PvComparison& of(const PvCheck& check, const char* key) { return *std::ranges::find(check.comparisons, key, &PvComparison::key); }

// Table NEC 690.7(A): seen in two published copies, but for the rows 19 to 5 °C, which are from memory.
TEST(PvTable, the_cold_factors_are_those_of_the_published_table_at_both_ends_of_each_row) {
    const struct {
        double warmest_c, coldest_c, factor;
    } rows[] = {{24, 20, 1.02},   {19, 15, 1.04},   {14, 10, 1.06},   {9, 5, 1.08},     {4, 0, 1.10},     {-1, -5, 1.12},  {-6, -10, 1.14},
                {-11, -15, 1.16}, {-16, -20, 1.18}, {-21, -25, 1.20}, {-26, -30, 1.21}, {-31, -35, 1.23}, {-36, -40, 1.25}};
    for (const auto& row : rows) {
        EXPECT_EQ(cold_voltage_factor(row.warmest_c), row.factor);
        EXPECT_EQ(cold_voltage_factor(row.coldest_c), row.factor);
    }
}

TEST(PvTable, between_two_rows_the_colder_one_holds_and_beyond_the_table_nothing_is_known) {
    EXPECT_EQ(cold_voltage_factor(-20.1), 1.20);
    EXPECT_EQ(cold_voltage_factor(19.9), 1.04);
    EXPECT_EQ(cold_voltage_factor(30), 1.0);
    EXPECT_EQ(cold_voltage_factor(-40.1), std::nullopt);
}

// Worked example A: a lesson on the 2023 NEC (600 V) and a second source (1500 V), both seen.
TEST(PvPublished, eleven_modules_of_49_5_V_stay_within_600_V_by_the_makers_coefficient_and_ten_by_the_table) {
    PvSheet sheet = module(49.5, -0.27);
    sheet.coldest_c = -10;
    EXPECT_NEAR(*cold_voltage(sheet).volts, 54.17775, 1e-9);
    sheet.series = 11;
    // The code counts no tolerance; with the usual 3 % eleven reach 613.8 V.
    const PvCheck check = check_pv(with_tolerance(sheet, 0), {600, {}, {}, {}});
    EXPECT_EQ(check.largest_series, 11);
    EXPECT_NEAR(*check.cold_voc_v, 596, 0.05);
    EXPECT_EQ(check_pv(sheet, {600, {}, {}, {}}).largest_series, 10);
    EXPECT_EQ(check_pv(with_tolerance(sheet, 0), {1500, {}, {}, {}}).largest_series, 27);
    sheet.voc_coefficient.reset();
    EXPECT_NEAR(*cold_voltage(sheet).volts, 56.43, 1e-9);
    EXPECT_EQ(check_pv(sheet, {600, {}, {}, {}}).largest_series, 10);
}

// Worked example B: the test of a permit checker, seen.
TEST(PvPublished, a_module_of_45_V_at_minus_26_degrees_reaches_51_2_V) {
    PvSheet sheet = module(45, -0.27);
    sheet.coldest_c = -26;
    EXPECT_NEAR(*cold_voltage(sheet).volts, 51.1965, 1e-9);
}

// Worked example C: a French course, seen. Its page also shows 79.3 V by 1.02, which belongs to 20 to 24 °C.
TEST(PvPublished, two_modules_of_38_9_V_at_minus_20_degrees_reach_91_8_V_and_three_strings_carry_37_8_A) {
    PvSheet sheet = module(38.9);
    sheet.coldest_c = -20;
    sheet.series = 2;
    sheet.parallel = 3;
    sheet.isc_a = 10.07;
    const PvCheck check = check_pv(sheet, {150, 50, {}, {}});
    EXPECT_NEAR(*check.cold_voc_v, 91.804, 1e-9);
    EXPECT_GT(*check.cold_voc_v, 2 * 38.9 * 1.02 + 12) << "the warm row of the table must not be taken";
    EXPECT_NEAR(*of(check, "circuit_current").value, 37.7625, 1e-9);
    EXPECT_EQ(of(check, "cold_voltage").outcome, Outcome::good);
    EXPECT_EQ(of(check, "circuit_current").outcome, Outcome::good);
    EXPECT_EQ(check.verdict, PvVerdict::not_known) << "the lesson compares nothing else";
}

// Worked example D: constructed in the reference sheet.
TEST(PvPublished, of_modules_of_24_3_V_two_stay_within_60_V_at_minus_15_degrees_and_three_do_not) {
    PvSheet sheet = module(24.3, -0.30);
    sheet.coldest_c = -15;
    EXPECT_NEAR(*check_pv(sheet, {60, {}, {}, {}}).cold_voc_v, 27.216, 1e-9);
    sheet.series = 2;
    const PvCheck two = check_pv(sheet, {60, {}, {}, {}});
    EXPECT_NEAR(*two.cold_voc_v, 54.432, 1e-9);
    EXPECT_EQ(of(two, "cold_voltage").outcome, Outcome::good);
    sheet.series = 3;
    const PvCheck three = check_pv(sheet, {60, {}, {}, {}});
    EXPECT_NEAR(*three.cold_voc_v, 81.648, 1e-9);
    EXPECT_EQ(three.verdict, PvVerdict::over_voltage_when_cold);
    EXPECT_EQ(three.largest_series, 2);
    sheet.series = 2;
    sheet.voc_coefficient.reset();
    EXPECT_NEAR(*check_pv(sheet, {60, {}, {}, {}}).cold_voc_v, 56.376, 1e-9);
}

// NEC 690.8 by the same lesson, seen: 11.2 A, 14.0 A, 17.5 A.
TEST(PvPublished, a_string_of_11_2_A_counts_as_14_A_and_needs_conductors_for_17_5_A) {
    PvSheet sheet = module(40, -0.3);
    sheet.isc_a = 11.2;
    const PvCheck check = check_pv(sheet, {60, 30, {}, {}});
    EXPECT_NEAR(*of(check, "circuit_current").value, 14.0, 1e-9);
    EXPECT_NEAR(*check.conductor_a, 17.5, 1e-9);
    EXPECT_EQ(check.largest_parallel, 2);
}

// IEC 62548 as a published example of an array quotes it, seen: four strings of 12.28 A feed (4 − 1) × 12.28 = 36.84 A back; fuses above 1.5 × 12.28
// = 18.42 A and below 2.4 × 12.28 = 29.47 A.
TEST(PvPublished, of_four_strings_of_12_28_A_three_feed_36_84_A_into_a_faulty_one_and_fuses_lie_between_18_42_and_29_47_A) {
    PvSheet sheet = module(51.7, -0.3);
    sheet.isc_a = 12.28;
    sheet.parallel = 4;
    const PvCheck check = check_pv(sheet, {});
    EXPECT_NEAR(*check.reverse_a, 36.84, 1e-9);
    EXPECT_NEAR(*check.least_fuse_a, 18.42, 1e-9);
    EXPECT_NEAR(*check.most_fuse_a, 29.47, 0.005);
}

// NOCT formula, seen; the power loss of the same text rounds the cell to 66 °C.
TEST(PvPublished, a_cell_at_35_degrees_ambient_and_NOCT_45_is_at_66_25_degrees_and_loses_14_percent) {
    EXPECT_NEAR(cell_temperature_c(35, 45, 1000), 66.25, 1e-12);
    EXPECT_NEAR(1 - dc_power_w(1, -0.35, 1000, 66), 0.1435, 1e-9);
}

// The PVWatts check of pvlib's tests/test_pvsystem.py, seen: γ −0.003 a degree.
TEST(PvPublished, a_hundred_watts_at_900_W_per_square_metre_and_30_degrees_give_88_65_W) { EXPECT_NEAR(dc_power_w(100, -0.3, 900, 30), 88.65, 1e-9); }

// Series and parallel scaling of the same file: 8 V and 1.5 A, 2 in series, 3 parallel: 16 V, 4.5 A, 72 W; Voc 10 V, Isc 2 A: 20 V, 6 A.
TEST(PvPublished, series_adds_voltages_and_parallel_adds_currents) {
    PvSheet sheet = module(10, -0.3);
    sheet.vmp_v = 8;
    sheet.isc_a = 2;
    sheet.imp_a = 1.5;
    sheet.series = 2;
    sheet.parallel = 3;
    sheet.coldest_c = 25;
    sheet.hottest_cell_c = 25;
    const PvCheck check = check_pv(sheet, {60, 60, 100, 5});
    EXPECT_NEAR(*check.cold_voc_v, 20, 1e-12);
    EXPECT_NEAR(*check.hot_vmp_v, 16, 1e-12);
    EXPECT_NEAR(*of(check, "working_current").value, 4.5, 1e-12);
    EXPECT_NEAR(*of(check, "circuit_current").value, 1.25 * 6, 1e-12);
    EXPECT_NEAR(*check.standard_w, 72, 1e-12);
}

PvSheet whole_sheet() {
    PvSheet sheet = module(24.3, -0.30);
    sheet.vmp_v = 20.4;
    sheet.isc_a = 10.2;
    sheet.imp_a = 9.8;
    sheet.vmp_coefficient = PvCoefficient{-0.40, PvPerDegree::percent};
    sheet.noct_c = 45;
    sheet.series = 2;
    sheet.coldest_c = -15;
    sheet.hottest_c = 35;
    return sheet;
}

TEST(PvVerdict, a_string_inside_all_limits_fits_with_its_margins_stated) {
    const PvCheck check = check_pv(whole_sheet(), {60, 15, 500, 12});
    EXPECT_EQ(check.verdict, PvVerdict::fits) << check.headline;
    EXPECT_EQ(check.verdict_text, "fits");
    EXPECT_NEAR(*of(check, "cold_voltage").margin, 60 - 54.432, 1e-9);
    EXPECT_NEAR(*of(check, "cold_voltage").worst, 1.03 * 54.432, 1e-9);
    EXPECT_NEAR(*of(check, "hot_voltage").value, 40.8 * (1 - 0.0040 * 41.25), 1e-9);
    EXPECT_NE(check.headline.text().find("3.9 V below the voltage limit"), std::string::npos) << check.headline; // 60 − 56.065
}

TEST(PvVerdict, more_power_alone_than_the_input_takes_is_clipping) {
    const PvCheck check = check_pv(whole_sheet(), {60, 15, 300, 12});
    EXPECT_EQ(check.verdict, PvVerdict::clips);
    EXPECT_NE(check.headline.text().find("up to 100 W cannot be used"), std::string::npos) << check.headline;
}

TEST(PvVerdict, more_current_than_stated_is_for_the_maker_to_say_while_the_short_circuit_limit_is_unknown) {
    const PvCheck operating = check_pv(whole_sheet(), {60, 9, 500, 12}); // 9.8 A operating
    EXPECT_EQ(operating.verdict, PvVerdict::ask_before_connecting);
    EXPECT_EQ(operating.verdict_text, "ask before connecting");
    EXPECT_EQ(operating.headline.text().find("Do not connect before the maker has been asked"), 0U) << operating.headline;
    const PvCheck shorted = check_pv(whole_sheet(), {60, 11, 500, 12}); // 9.8 A operating, 1.25 × 10.2 A = 12.75 A shorted
    EXPECT_EQ(of(shorted, "working_current").outcome, Outcome::good);
    EXPECT_EQ(shorted.verdict, PvVerdict::ask_before_connecting);
    PvSheet unknown_isc = whole_sheet();
    unknown_isc.isc_a.reset();
    EXPECT_EQ(check_pv(unknown_isc, {60, 9, 500, 12}).verdict_text, "ask before connecting; not known: Isc of the module is missing");
}

TEST(PvVerdict, a_stated_short_circuit_limit_decides_what_a_short_circuit_may_bring) {
    EXPECT_EQ(check_pv(whole_sheet(), {60, 11, 500, 12, 15}).verdict, PvVerdict::fits) << "12.75 A against 15 A, 9.8 A against 11 A";
    const PvCheck beyond = check_pv(whole_sheet(), {60, 11, 500, 12, 12});
    EXPECT_EQ(beyond.verdict, PvVerdict::over_short_circuit);
    EXPECT_TRUE(is_danger(beyond.verdict));
    EXPECT_EQ(beyond.headline.text().find("Danger, do not connect"), 0U) << beyond.headline;
    EXPECT_EQ(check_pv(whole_sheet(), {60, 9, 500, 12, 15}).verdict, PvVerdict::ask_before_connecting) << "9.8 A is above what it is made for";
}

TEST(PvVerdict, the_limits_of_current_bound_the_strings_each_by_its_own_current) {
    EXPECT_EQ(check_pv(whole_sheet(), {60, 30, 500, 12}).largest_parallel, 2);     // 30/12.75
    EXPECT_EQ(check_pv(whole_sheet(), {60, 30, 500, 12, 40}).largest_parallel, 3); // 40/12.75 and 30/9.8
    EXPECT_EQ(check_pv(whole_sheet(), {60, 25, 500, 12, 40}).largest_parallel, 2); // 25/9.8
}

TEST(PvVerdict, a_voltage_within_its_tolerance_of_the_limit_is_too_close_to_call) {
    // 2 × 26.52 × (1 + 0.3 % × 40) = 59.40 V against 60 V: 0.6 V inside, but 61.19 V with 3 %.
    PvSheet sheet = whole_sheet();
    sheet.voc_v = 26.52;
    const PvCheck check = check_pv(sheet, {60, 15, 600, 12});
    EXPECT_EQ(check.verdict, PvVerdict::too_close);
    EXPECT_EQ(check.verdict_text, "too close to call: voltage when cold");
    EXPECT_NEAR(*of(check, "cold_voltage").margin, 0.5952, 1e-9);
    EXPECT_NE(check.headline.text().find("reaches 61.2 V with the module's tolerance of 3 %"), std::string::npos) << check.headline;
    EXPECT_EQ(check.headline.text().find("Do not connect"), 0U);
    EXPECT_EQ(check.largest_series, 1);
    EXPECT_EQ(check_pv(with_tolerance(sheet, 1), {60, 15, 600, 12}).verdict, PvVerdict::fits) << "59.998 V with a stated tolerance of 1 %";
    // A smaller tolerance is the better knowledge: it never makes the answer worse, a larger one never better.
    EXPECT_EQ(check_pv(with_tolerance(sheet, 20), {59, 15, 600, 12}).verdict, PvVerdict::over_voltage_when_cold)
        << "beyond as calculated stays beyond";
    sheet = whole_sheet();
    const PvCheck hot = check_pv(sheet, {60, 15, 600, 33.5}); // 34.068 V as calculated, 33.05 V with 3 %
    EXPECT_EQ(hot.verdict_text, "too close to call: voltage when hot");
}

TEST(PvVerdict, three_strings_or_more_need_a_fuse_each) {
    PvSheet sheet = whole_sheet();
    sheet.parallel = 2;
    EXPECT_TRUE(check_pv(sheet, {60, 60, 3000, 12}).string_fuses.empty());
    sheet.parallel = 3;
    const PvCheck check = check_pv(sheet, {60, 60, 3000, 12});
    EXPECT_NEAR(*check.reverse_a, 20.4, 1e-9);
    EXPECT_NE(check.string_fuses.text().find("IEC 62548"), std::string::npos);
    EXPECT_NE(check.headline.text().find("Each string needs its own fuse"), std::string::npos);
    sheet.isc_a.reset();
    EXPECT_NE(check_pv(sheet, {60, 60, 3000, 12}).string_fuses.text().find("not stated"), std::string::npos);
}

TEST(PvVerdict, a_string_that_falls_below_the_start_voltage_when_hot_is_too_low) {
    const PvCheck check = check_pv(whole_sheet(), {60, 15, 500, 36});
    EXPECT_EQ(check.verdict, PvVerdict::too_low_when_hot);
    EXPECT_EQ(check.least_series, 3);
    EXPECT_NE(check.suggestion.text().find("No string fits"), std::string::npos) << check.suggestion;
}

TEST(PvVerdict, too_much_voltage_when_cold_goes_before_every_other_answer) {
    PvSheet sheet = whole_sheet();
    sheet.series = 3;
    const PvCheck check = check_pv(sheet, {60, 5, 100, 70});
    EXPECT_EQ(check.verdict, PvVerdict::over_voltage_when_cold);
    EXPECT_EQ(check.headline.text().find("Danger, do not connect"), 0u) << check.headline;
    EXPECT_NE(check.headline.text().find("21.6 V above the limit of 60.0 V"), std::string::npos) << check.headline;
}

TEST(PvVerdict, exactly_the_limit_is_within_it) {
    PvSheet sheet = module(30, -0.30);
    sheet.coldest_c = 25;
    sheet.series = 2;
    EXPECT_EQ(of(check_pv(with_tolerance(sheet, 0), {60, {}, {}, {}}), "cold_voltage").outcome, Outcome::good);
    EXPECT_EQ(check_pv(with_tolerance(sheet, 0), {59.999, {}, {}, {}}).verdict, PvVerdict::over_voltage_when_cold);
    EXPECT_EQ(of(check_pv(sheet, {61.8, {}, {}, {}}), "cold_voltage").outcome, Outcome::good) << "60 V and 3 %";
}

TEST(PvVerdict, without_the_voltage_limit_or_the_cold_nothing_is_called_safe) {
    EXPECT_EQ(check_pv(whole_sheet(), {{}, 15, 500, 12}).verdict, PvVerdict::not_known);
    PvSheet sheet = whole_sheet();
    sheet.coldest_c.reset();
    const PvCheck check = check_pv(sheet, {60, 15, 500, 12});
    EXPECT_EQ(check.verdict, PvVerdict::not_known);
    EXPECT_FALSE(check.largest_series);
    EXPECT_EQ(check.headline.text().find("Do not connect yet"), 0u);
}

TEST(PvVerdict, nothing_fits_before_every_comparison_was_made_and_the_verdict_names_what_is_missing) {
    // The case of a tester who stated five figures: cold voltage 40 × (1 + 0.3 % × 35) = 44.2 V against 60 V, and nothing else.
    PvSheet sheet = module(40, -0.3);
    sheet.coldest_c = -10;
    const PvCheck few = check_pv(sheet, {60, {}, {}, {}});
    EXPECT_EQ(few.verdict, PvVerdict::not_known);
    EXPECT_EQ(few.verdict_text, "not known: Vmp, Imp and Isc of the module, hottest temperature of the place, start voltage, current limit and power "
                                "limit of the PV input are missing");
    EXPECT_NEAR(*of(few, "cold_voltage").value, 44.2, 1e-9);
    EXPECT_EQ(of(few, "cold_voltage").outcome, Outcome::good);
    const PvCheck unit_unknown = check_pv(whole_sheet(), {60, {}, {}, {}});
    EXPECT_EQ(unit_unknown.verdict_text, "not known: start voltage, current limit and power limit of the PV input are missing");
    EXPECT_NE(unit_unknown.headline.text().find("Not checked: voltage when hot, operating current, short-circuit current and power"),
              std::string::npos)
        << unit_unknown.headline;
}

TEST(PvVerdict, each_single_figure_that_is_missing_keeps_a_string_from_fitting) {
    const PvLimits all{60, 15, 500, 12};
    ASSERT_EQ(check_pv(whole_sheet(), all).verdict, PvVerdict::fits);
    const auto without = [&](auto&& take_away) {
        PvSheet sheet = whole_sheet();
        PvLimits limits = all;
        take_away(sheet, limits);
        return check_pv(sheet, limits).verdict_text;
    };
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.voc_v.reset(); }), "not known: Voc of the module is missing");
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.vmp_v.reset(); }), "not known: Vmp of the module is missing");
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.isc_a.reset(); }), "not known: Isc of the module is missing");
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.imp_a.reset(); }), "not known: Imp of the module is missing");
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.coldest_c.reset(); }), "not known: coldest temperature of the place is missing");
    EXPECT_EQ(without([](PvSheet& s, PvLimits&) { s.hottest_c.reset(); }), "not known: hottest temperature of the place is missing");
    EXPECT_EQ(without([](PvSheet&, PvLimits& l) { l.max_v.reset(); }), "not known: voltage limit of the PV input is missing");
    EXPECT_EQ(without([](PvSheet&, PvLimits& l) { l.start_v.reset(); }), "not known: start voltage of the PV input is missing");
    EXPECT_EQ(without([](PvSheet&, PvLimits& l) { l.max_a.reset(); }), "not known: current limit of the PV input is missing");
    EXPECT_EQ(without([](PvSheet&, PvLimits& l) { l.max_w.reset(); }), "not known: power limit of the PV input is missing");
}

TEST(PvVerdict, not_even_one_module_may_be_the_largest_safe_string) {
    PvSheet sheet = module(70, -0.3);
    sheet.coldest_c = 0;
    const PvCheck check = check_pv(sheet, {60, {}, {}, {}});
    EXPECT_EQ(check.largest_series, 0);
    EXPECT_NE(check.suggestion.text().find("Not even one"), std::string::npos);
}

TEST(PvCold, the_makers_coefficient_goes_before_the_table) {
    PvSheet sheet = module(49.5, -0.27);
    sheet.coldest_c = -10;
    EXPECT_FALSE(cold_voltage(sheet).from_table);
    sheet.voc_coefficient.reset();
    EXPECT_TRUE(cold_voltage(sheet).from_table);
}

TEST(PvCold, millivolts_a_degree_say_the_same_as_percent) {
    PvSheet percent = module(49.5, -0.27), milli = module(49.5);
    percent.coldest_c = milli.coldest_c = -10;
    milli.voc_coefficient = PvCoefficient{-49.5 * 2.7, PvPerDegree::milli};
    EXPECT_NEAR(*cold_voltage(milli).volts, *cold_voltage(percent).volts, 1e-9);
}

TEST(PvCold, other_cells_than_crystalline_silicon_need_their_makers_coefficient) {
    PvSheet sheet = module(49.5);
    sheet.coldest_c = -10;
    sheet.crystalline_silicon = false;
    EXPECT_FALSE(cold_voltage(sheet).volts);
    EXPECT_NE(cold_voltage(sheet).basis.text().find("crystalline silicon only"), std::string::npos);
    EXPECT_EQ(check_pv(sheet, {600, {}, {}, {}}).verdict, PvVerdict::not_known);
}

TEST(PvSheetCheck, a_coefficient_without_its_minus_sign_is_refused_as_it_would_hide_the_danger) {
    const auto refused = check_pv_sheet(module(49.5, 0.27));
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error().where, "voc_coefficient");
    EXPECT_NE(refused.error().remedy.text().find("minus"), std::string::npos);
    EXPECT_FALSE(check_pv_sheet(module(49.5, 0.0)));
    EXPECT_FALSE(check_pv_sheet(module(49.5, -134.0))) << "millivolts taken for percent";
    EXPECT_TRUE(check_pv_sheet(module(49.5, -0.27)));
}

TEST(PvSheetCheck, exchanged_values_and_counts_out_of_range_are_refused_by_name) {
    PvSheet sheet = whole_sheet();
    EXPECT_TRUE(check_pv_sheet(sheet));
    const auto where = [](const PvSheet& wrong) {
        const auto refused = check_pv_sheet(wrong);
        return refused ? std::string() : refused.error().where.text();
    };
    PvSheet wrong = sheet;
    std::swap(wrong.voc_v, wrong.vmp_v);
    EXPECT_EQ(where(wrong), "vmp_v");
    wrong = sheet;
    std::swap(wrong.isc_a, wrong.imp_a);
    EXPECT_EQ(where(wrong), "imp_a");
    wrong = sheet;
    wrong.series = 0;
    EXPECT_EQ(where(wrong), "series");
    wrong = sheet;
    std::swap(wrong.coldest_c, wrong.hottest_c);
    EXPECT_EQ(where(wrong), "coldest_c");
    wrong = sheet;
    wrong.voc_v = 0;
    EXPECT_EQ(where(wrong), "voc_v");
}

TEST(PvCurve, the_curve_meets_the_check_at_both_ends_and_falls_with_warmth) {
    const PvSheet sheet = whole_sheet();
    const PvCheck check = check_pv(sheet, {60, 15, 500, 12});
    const auto curve = pv_curve(sheet);
    const auto cold = std::ranges::find(curve, -15.0, &PvCurvePoint::cell_c);
    ASSERT_NE(cold, curve.end());
    EXPECT_NEAR(*cold->voc_v, *check.cold_voc_v, 1e-9);
    EXPECT_LT(curve.front().cell_c, -15);
    EXPECT_GT(curve.back().cell_c, *check.hot_cell_c);
    for (std::size_t i = 1; i < curve.size(); ++i) {
        EXPECT_LT(*curve[i].voc_v, *curve[i - 1].voc_v);
        EXPECT_LT(*curve[i].vmp_v, *curve[i - 1].vmp_v);
    }
}

} // namespace
} // namespace ullage
