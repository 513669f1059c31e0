// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/pv_check.h"

#include "base/number.h"
#include "pv/inside/pv_words.h"
#include "pv/module_voltage.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using Outcome = PvComparison::Outcome;

/// NEC 690.8(A)(1): irradiance above 1000 W/m² and edge-of-cloud effects. The same factor again sizes conductors and fuses.
constexpr double circuit_factor = 1.25;
/// Fuse of a string by IEC 62548:2016 in multiples of Isc, from so many strings on.
constexpr double least_fuse_factor = 1.5, most_fuse_factor = 2.4;
constexpr int fused_strings = 3;
/// A sum of rounding errors is no module more.
constexpr double rounding = 1e-9;

int whole_below(double ratio) { return static_cast<int>(std::clamp(std::floor(ratio + rounding), 0.0, 1e6)); }
int whole_above(double ratio) { return static_cast<int>(std::clamp(std::ceil(ratio - rounding), 1.0, 1e6)); }

PvMissing of_module(const Phrase& what) { return {say(what), say(phrase("pv", "the module"))}; }
PvMissing of_place(const Phrase& what) { return {say(what), say(phrase("pv", "the place"))}; }
PvMissing of_input(const Phrase& what) { return {say(what), say(phrase("pv", "the PV input"))}; }

PvComparison comparison(const char* key, const Phrase& title, const char* unit, std::optional<double> value, std::optional<double> limit) {
    PvComparison made;
    made.key = key;
    made.title = say(title);
    made.unit = unit;
    made.value = value;
    made.limit = limit;
    return made;
}

/// `value` must not exceed the limit; `beyond`: what it means where it does.
void judge_upper(PvComparison& made, Outcome beyond) {
    if (!made.value || !made.limit) return;
    made.margin = *made.limit - *made.value;
    made.outcome = *made.margin >= -rounding * *made.limit ? Outcome::good : beyond;
}

/// A voltage with its tolerance: `side` +1 where it must not exceed the limit, −1 where it must reach it.
void judge_voltage(PvComparison& made, double side, double tolerance_percent) {
    if (made.value) made.worst = *made.value * (1 + side * tolerance_percent / 100);
    if (!made.value || !made.limit) return;
    const double slack = rounding * *made.limit;
    made.margin = side * (*made.limit - *made.value);
    if (*made.margin < -slack) made.outcome = Outcome::bad;
    else made.outcome = side * (*made.limit - *made.worst) >= -slack ? Outcome::good : Outcome::too_close;
}

/// What a voltage rests on, and where the tolerance takes it: `up_to` where there is one.
Message with_tolerance(const Message& rests_on, const PvComparison& made, const Phrase& up_to, double tolerance_percent) {
    if (tolerance_percent == 0) return rests_on;
    return say_joined({rests_on, say(up_to, say_volts(*made.worst), say_digits(exact_text(tolerance_percent)))}, "; ");
}

Message cold_sentence(const PvSheet& sheet, const PvLimits& limits, const ColdVoltage& cold, const PvComparison& made, double tolerance_percent) {
    if (!cold.volts) return say(phrase("pv", "not known: %1"), cold.basis);
    if (!limits.max_v) return say(phrase("pv", "not checked: the voltage limit of the PV input is not stated"));
    return with_tolerance(say_count(sheet.series,
                                    phrases("pv", "%n modules in series, open circuit at %1, %2", "%n module in series, open circuit at %1, %2"),
                                    say_degrees(*sheet.coldest_c), cold.basis),
                          made, phrase("pv", "up to %1 with the tolerance of %2 %"), tolerance_percent);
}

void add_cold(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    const ColdVoltage cold = cold_voltage(sheet);
    if (cold.volts) check.cold_voc_v = sheet.series * *cold.volts;
    PvComparison made = comparison("cold_voltage", phrase("pv", "voltage when cold"), "V", check.cold_voc_v, limits.max_v);
    judge_voltage(made, 1, check.voc_tolerance_percent);
    made.sentence = cold_sentence(sheet, limits, cold, made, check.voc_tolerance_percent);
    if (!sheet.voc_v) made.missing.push_back(of_module(phrase("pv", "Voc")));
    const bool by_table = sheet.crystalline_silicon && (!sheet.coldest_c || cold_voltage_factor(*sheet.coldest_c));
    if (!sheet.voc_coefficient && !by_table) made.missing.push_back(of_module(phrase("pv", "coefficient of Voc")));
    if (!sheet.coldest_c) made.missing.push_back(of_place(phrase("pv", "coldest temperature")));
    if (!limits.max_v) made.missing.push_back(of_input(phrase("pv", "voltage limit")));
    check.comparisons.push_back(std::move(made));
    if (cold.volts && limits.max_v) check.largest_series = whole_below(*limits.max_v / (*cold.volts * (1 + check.voc_tolerance_percent / 100)));
    if (cold.from_table)
        check.assumptions.push_back(
            say(phrase("pv", "The table of factors holds for crystalline silicon; the maker's coefficient would take precedence.")));
}

/// What the voltage at maximum power rests on.
Message hot_basis(const PvSheet& sheet, const HotCell& hot, const HotCoefficient& falls) {
    const Message coefficient = say_digits(coefficient_text(*falls.coefficient));
    if (falls.assumed)
        return say_count(sheet.series,
                         phrases("pv", "%n modules in series at maximum power, %1, by an assumed coefficient of %2",
                                 "%n module in series at maximum power, %1, by an assumed coefficient of %2"),
                         hot.basis, coefficient);
    return say_count(sheet.series,
                     phrases("pv", "%n modules in series at maximum power, %1, by the maker's coefficient of %2",
                             "%n module in series at maximum power, %1, by the maker's coefficient of %2"),
                     hot.basis, coefficient);
}

void add_hot(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    const HotCell hot = hottest_cell(sheet);
    const HotCoefficient falls = vmp_coefficient(sheet);
    check.hot_cell_c = hot.cell_c;
    std::optional<double> one_v;
    Message why;
    if (!sheet.vmp_v) why = say(phrase("pv", "the voltage at maximum power is not stated"));
    else if (!hot.cell_c) why = hot.basis;
    else if (!falls.coefficient) why = say(phrase("pv", "the coefficient of Vmp is not stated"));
    else one_v = at_cell_temperature(*sheet.vmp_v, *falls.coefficient, *hot.cell_c);
    if (one_v) check.hot_vmp_v = sheet.series * *one_v;
    PvComparison made = comparison("hot_voltage", phrase("pv", "voltage when hot"), "V", check.hot_vmp_v, limits.start_v);
    judge_voltage(made, -1, check.voc_tolerance_percent);
    if (!one_v) made.sentence = say(phrase("pv", "not known: %1"), why);
    else if (!limits.start_v) made.sentence = say(phrase("pv", "not checked: the start voltage of the PV input is not stated"));
    else
        made.sentence =
            with_tolerance(hot_basis(sheet, hot, falls), made, phrase("pv", "down to %1 with the tolerance of %2 %"), check.voc_tolerance_percent);
    if (!sheet.vmp_v) made.missing.push_back(of_module(phrase("pv", "Vmp")));
    if (!falls.coefficient) made.missing.push_back(of_module(phrase("pv", "coefficient of Vmp")));
    if (!hot.cell_c) made.missing.push_back(of_place(phrase("pv", "hottest temperature")));
    if (!limits.start_v) made.missing.push_back(of_input(phrase("pv", "start voltage")));
    check.comparisons.push_back(std::move(made));
    if (one_v && *one_v > 0 && limits.start_v) check.least_series = whole_above(*limits.start_v / (*one_v * (1 - check.voc_tolerance_percent / 100)));
    if (one_v && falls.assumed)
        check.assumptions.push_back(say(
            phrase("pv", "The coefficient of Vmp is not stated: −0.40 %/°C is taken, the steep end of what sheets of crystalline silicon print.")));
    if (hot.cell_c && !sheet.hottest_cell_c && !sheet.noct_c)
        check.assumptions.push_back(
            say(phrase("pv", "NOCT is not stated: 45 °C is taken, which is common for framed modules (common practice, no source).")));
}

void add_operating_current(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    std::optional<double> current_a;
    if (sheet.imp_a) current_a = *sheet.imp_a * sheet.parallel;
    PvComparison made = comparison("working_current", phrase("pv", "operating current"), "A", current_a, limits.max_a);
    judge_upper(made, Outcome::ask);
    Message basis = !sheet.imp_a ? say(phrase("pv", "not known: the current at maximum power is not stated"))
                    : !limits.max_a
                        ? say(phrase("pv", "not checked: the current limit of the PV input is not stated"))
                        : say_count(sheet.parallel, phrases("pv", "%n strings at %1 each", "%n string at %1 each"), say_amps(*sheet.imp_a));
    if (made.outcome == Outcome::ask)
        basis =
            say_joined({basis, say(phrase("pv", "only the maker can say whether the input holds its current down: ask before connecting"))}, "; ");
    made.sentence = basis;
    if (!sheet.imp_a) made.missing.push_back(of_module(phrase("pv", "Imp")));
    if (!limits.max_a) made.missing.push_back(of_input(phrase("pv", "current limit")));
    check.comparisons.push_back(std::move(made));
}

void add_circuit_current(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    const std::optional<double> limit = limits.short_circuit_a ? limits.short_circuit_a : limits.max_a;
    std::optional<double> current_a;
    if (sheet.isc_a) {
        current_a = circuit_factor * *sheet.isc_a * sheet.parallel;
        check.conductor_a = circuit_factor * circuit_factor * *sheet.isc_a;
        if (limit) check.largest_parallel = whole_below(*limit / (circuit_factor * *sheet.isc_a));
        if (check.largest_parallel && sheet.imp_a && limits.max_a)
            check.largest_parallel = std::min(*check.largest_parallel, whole_below(*limits.max_a / *sheet.imp_a));
    }
    PvComparison made = comparison("circuit_current", phrase("pv", "short-circuit current"), "A", current_a, limit);
    judge_upper(made, limits.short_circuit_a ? Outcome::bad : Outcome::ask);
    Message basis = !sheet.isc_a ? say(phrase("pv", "not known: the short-circuit current is not stated"))
                    : !limit     ? say(phrase("pv", "not checked: neither the short-circuit limit nor the current limit of the PV input is stated"))
                                 : say_count(sheet.parallel,
                                             phrases("pv", "1.25 × Isc (NEC 690.8(A)(1)) of %n strings", "1.25 × Isc (NEC 690.8(A)(1)) of %n string"));
    if (current_a && limit && !limits.short_circuit_a)
        basis =
            say_joined({basis, say(made.outcome == Outcome::good
                                       ? phrase("pv", "the short-circuit limit of the PV input is not stated and not lower than its current limit")
                                       : phrase("pv", "the short-circuit limit of the PV input is not stated: ask before connecting"))},
                       "; ");
    made.sentence = basis;
    if (!sheet.isc_a) made.missing.push_back(of_module(phrase("pv", "Isc")));
    if (!limit) made.missing.push_back(of_input(phrase("pv", "current limit")));
    check.comparisons.push_back(std::move(made));
}

void add_power(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    if (sheet.vmp_v && sheet.imp_a) {
        check.standard_w = *sheet.vmp_v * *sheet.imp_a * sheet.series * sheet.parallel;
        if (sheet.power_coefficient && check.hot_cell_c)
            check.hot_w =
                dc_power_w(*check.standard_w, sheet.power_coefficient->value, sheet.irradiance_w_m2.value_or(pv_standard_w_m2), *check.hot_cell_c);
    }
    PvComparison made = comparison("power", phrase("pv", "power"), "W", check.standard_w, limits.max_w);
    judge_upper(made, Outcome::clips);
    std::vector<Message> said{!check.standard_w ? say(phrase("pv", "not known: Vmp or Imp is not stated"))
                              : !limits.max_w   ? say(phrase("pv", "not checked: the power limit of the PV input is not stated"))
                                                : say_count(sheet.series * sheet.parallel, phrases("pv", "%n modules at standard test conditions",
                                                                                                   "%n module at standard test conditions"))};
    if (made.outcome == Outcome::clips) said.push_back(say(phrase("pv", "up to %1 cannot be used"), say_watts(-*made.margin)));
    if (check.hot_w) said.push_back(say(phrase("pv", "about %1 when hot"), say_watts(*check.hot_w)));
    made.sentence = say_joined(said, "; ");
    if (!sheet.vmp_v) made.missing.push_back(of_module(phrase("pv", "Vmp")));
    if (!sheet.imp_a) made.missing.push_back(of_module(phrase("pv", "Imp")));
    if (!limits.max_w) made.missing.push_back(of_input(phrase("pv", "power limit")));
    check.comparisons.push_back(std::move(made));
}

/// Fuses of the strings: of three or more in parallel the others together overload a faulty one.
void add_string_fuses(const PvSheet& sheet, PvCheck& check) {
    if (sheet.parallel < fused_strings) return;
    if (!sheet.isc_a) {
        check.string_fuses =
            say(phrase("pv", "%1 strings in parallel: each needs its own fuse (IEC 62548:2016; NEC 690.9). Its size follows from Isc of "
                             "the module, which is not stated."),
                say_number(sheet.parallel));
        return;
    }
    check.reverse_a = (sheet.parallel - 1) * *sheet.isc_a;
    check.least_fuse_a = least_fuse_factor * *sheet.isc_a;
    check.most_fuse_a = most_fuse_factor * *sheet.isc_a;
    check.string_fuses =
        say(phrase("pv", "%1 strings in parallel: each needs its own fuse, as the others feed %2 into a faulty one (IEC 62548:2016; NEC "
                         "690.9): between %3 and %4 (1.5 and 2.4 × Isc), and not above the largest fuse that the module's label "
                         "allows."),
            say_number(sheet.parallel), say_amps(*check.reverse_a), say_amps(*check.least_fuse_a), say_amps(*check.most_fuse_a));
}

PvVerdict verdict_of(const std::vector<PvComparison>& all) {
    const auto any = [&all](Outcome outcome) { return std::ranges::find(all, outcome, &PvComparison::outcome) != all.end(); };
    if (all[0].outcome == Outcome::bad) return PvVerdict::over_voltage_when_cold;
    if (all[3].outcome == Outcome::bad) return PvVerdict::over_short_circuit;
    if (any(Outcome::ask)) return PvVerdict::ask_before_connecting;
    if (any(Outcome::too_close)) return PvVerdict::too_close;
    if (all[1].outcome == Outcome::bad) return PvVerdict::too_low_when_hot;
    if (any(Outcome::not_known)) return PvVerdict::not_known;
    return any(Outcome::clips) ? PvVerdict::clips : PvVerdict::fits;
}

std::vector<PvMissing> all_missing(const std::vector<PvComparison>& comparisons) {
    std::vector<PvMissing> all;
    for (const PvComparison& each : comparisons)
        for (const PvMissing& one : each.missing)
            if (std::ranges::find(all, one) == all.end()) all.push_back(one);
    return all;
}

} // namespace

PvLimits pv_limits(const Unit& unit) { return {unit.pv_max_v, unit.pv_max_a, unit.pv_max_w, unit.pv_start_v, unit.pv_short_circuit_a}; }

bool is_danger(PvVerdict verdict) { return verdict == PvVerdict::over_voltage_when_cold || verdict == PvVerdict::over_short_circuit; }

PvCheck check_pv(const PvSheet& sheet, const PvLimits& limits) {
    PvCheck check;
    check.voc_tolerance_percent = sheet.voc_tolerance_percent.value_or(usual_voc_tolerance_percent);
    add_cold(sheet, limits, check);
    add_hot(sheet, limits, check);
    add_operating_current(sheet, limits, check);
    add_circuit_current(sheet, limits, check);
    add_power(sheet, limits, check);
    add_string_fuses(sheet, check);
    check.missing = all_missing(check.comparisons);
    check.verdict = verdict_of(check.comparisons);
    check.verdict_text = verdict_words(check);
    check.headline = headline_words(sheet, check);
    check.suggestion = suggestion_words(check);
    check.assumptions.push_back(
        say(phrase("pv", "All modules are of one kind, face one way and lie in the same light; for others nothing is claimed.")));
    check.assumptions.push_back(
        sheet.voc_tolerance_percent
            ? say(phrase("pv", "Voltages of the module carry the stated tolerance of %1 %."), say_digits(exact_text(*sheet.voc_tolerance_percent)))
            : say(phrase("pv", "The tolerance of the module's voltages is not stated: 3 % is taken (common practice, no source).")));
    check.assumptions.push_back(pv_decision_rule());
    return check;
}

std::vector<PvCurvePoint> pv_curve(const PvSheet& sheet) {
    constexpr double beyond_c = 5;
    const double from_c = std::floor(std::min(sheet.coldest_c.value_or(-15), pv_standard_c) - beyond_c);
    const double to_c = std::ceil(std::max(hottest_cell(sheet).cell_c.value_or(65), pv_standard_c) + beyond_c);
    const HotCoefficient falls = vmp_coefficient(sheet);
    std::vector<PvCurvePoint> curve;
    for (double cell_c = from_c; cell_c <= to_c; cell_c += 1) {
        PvCurvePoint point;
        point.cell_c = cell_c;
        PvSheet at = sheet;
        at.coldest_c = cell_c;
        if (const ColdVoltage voltage = cold_voltage(at); voltage.volts) point.voc_v = sheet.series * *voltage.volts;
        if (sheet.vmp_v && falls.coefficient) point.vmp_v = sheet.series * at_cell_temperature(*sheet.vmp_v, *falls.coefficient, cell_c);
        curve.push_back(point);
    }
    return curve;
}

} // namespace ullage
