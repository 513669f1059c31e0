// SPDX-License-Identifier: GPL-3.0-or-later
#include "pv/pv_check.h"

#include "base/number.h"
#include "pv/module_voltage.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using Outcome = PvComparison::Outcome;

/// NEC 690.8(A)(1): irradiance above 1000 W/m² and edge-of-cloud effects. The same factor again sizes conductors and fuses.
constexpr double circuit_factor = 1.25;
/// A sum of rounding errors is no module more.
constexpr double rounding = 1e-9;

int whole_below(double ratio) { return static_cast<int>(std::clamp(std::floor(ratio + rounding), 0.0, 1e6)); }
int whole_above(double ratio) { return static_cast<int>(std::clamp(std::ceil(ratio - rounding), 1.0, 1e6)); }

std::string volts(double value) { return fixed_text(value, 1) + " V"; }
std::string amps(double value) { return fixed_text(value, 1) + " A"; }
std::string watts(double value) { return fixed_text(value, 0) + " W"; }

std::string temperature(double value) {
    const int decimals = std::floor(value) == value ? 0 : 1;
    return (value < 0 ? signed_text(value, decimals) : fixed_text(value, decimals)) + " °C";
}

std::string modules(int count) { return count_text(count, "module", "modules"); }

PvComparison comparison(const char* key, const char* title, const char* unit, std::optional<double> value, std::optional<double> limit) {
    PvComparison made;
    made.key = key;
    made.title = title;
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

void add_cold(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    const ColdVoltage cold = cold_voltage(sheet);
    if (cold.volts) check.cold_voc_v = sheet.series * *cold.volts;
    PvComparison made = comparison("cold_voltage", "voltage when cold", "V", check.cold_voc_v, limits.max_v);
    judge_upper(made, Outcome::bad);
    made.sentence = !cold.volts ? "not known: " + cold.basis
                    : !limits.max_v
                        ? "not checked: the voltage limit of the PV input is not stated"
                        : fmt::format("{} in series, open circuit at {}, {}", modules(sheet.series), temperature(*sheet.coldest_c), cold.basis);
    check.comparisons.push_back(std::move(made));
    if (cold.volts && limits.max_v) check.largest_series = whole_below(*limits.max_v / *cold.volts);
    if (cold.from_table)
        check.assumptions.push_back("The table of factors holds for crystalline silicon; the maker's coefficient would take precedence.");
}

void add_hot(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    const HotCell hot = hottest_cell(sheet);
    const HotCoefficient falls = vmp_coefficient(sheet);
    check.hot_cell_c = hot.cell_c;
    std::optional<double> one_v;
    std::string why;
    if (!sheet.vmp_v) why = "the voltage at maximum power is not stated";
    else if (!hot.cell_c) why = hot.basis;
    else if (!falls.coefficient) why = "the coefficient of Vmp is not stated";
    else one_v = at_cell_temperature(*sheet.vmp_v, *falls.coefficient, *hot.cell_c);
    if (one_v) check.hot_vmp_v = sheet.series * *one_v;
    PvComparison made = comparison("hot_voltage", "voltage when hot", "V", check.hot_vmp_v, limits.start_v);
    if (made.value && made.limit) {
        made.margin = *made.value - *made.limit;
        made.outcome = *made.margin >= -rounding * *made.limit ? Outcome::good : Outcome::bad;
    }
    made.sentence = !one_v ? "not known: " + why
                    : !limits.start_v
                        ? "not checked: the start voltage of the PV input is not stated"
                        : fmt::format("{} in series at maximum power, {}, by {} of {}", modules(sheet.series), hot.basis,
                                      falls.assumed ? "an assumed coefficient" : "the maker's coefficient", coefficient_text(*falls.coefficient));
    check.comparisons.push_back(std::move(made));
    if (one_v && *one_v > 0 && limits.start_v) check.least_series = whole_above(*limits.start_v / *one_v);
    if (one_v && falls.assumed)
        check.assumptions.push_back(
            "The coefficient of Vmp is not stated: −0.40 %/°C is taken, the steep end of what sheets of crystalline silicon print.");
    if (hot.cell_c && !sheet.hottest_cell_c && !sheet.noct_c)
        check.assumptions.push_back("NOCT is not stated: 45 °C is taken, which is common for framed modules (common practice, no source).");
}

void add_currents(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    std::optional<double> working_a, circuit_a;
    if (sheet.imp_a) working_a = *sheet.imp_a * sheet.parallel;
    if (sheet.isc_a) {
        circuit_a = circuit_factor * *sheet.isc_a * sheet.parallel;
        check.conductor_a = circuit_factor * circuit_factor * *sheet.isc_a;
        if (limits.max_a) check.largest_parallel = whole_below(*limits.max_a / (circuit_factor * *sheet.isc_a));
    }
    const std::string no_limit = "not checked: the current limit of the PV input is not stated";
    PvComparison working = comparison("working_current", "working current", "A", working_a, limits.max_a);
    judge_upper(working, Outcome::clips);
    working.sentence = !sheet.imp_a    ? "not known: the current at maximum power is not stated"
                       : !limits.max_a ? no_limit
                                       : fmt::format("{} at {} each", count_text(sheet.parallel, "string", "strings"), amps(*sheet.imp_a));
    check.comparisons.push_back(std::move(working));
    PvComparison circuit = comparison("circuit_current", "circuit current", "A", circuit_a, limits.max_a);
    judge_upper(circuit, Outcome::clips);
    circuit.sentence = !sheet.isc_a ? "not known: the short-circuit current is not stated"
                       : !limits.max_a
                           ? no_limit
                           : fmt::format("1.25 × short-circuit current (NEC 690.8) of {}", count_text(sheet.parallel, "string", "strings"));
    if (circuit.outcome == Outcome::clips)
        circuit.sentence += "; allowed only where the maker says that the input limits its current by itself: ask before connecting";
    check.comparisons.push_back(std::move(circuit));
}

void add_power(const PvSheet& sheet, const PvLimits& limits, PvCheck& check) {
    if (sheet.vmp_v && sheet.imp_a) {
        check.standard_w = *sheet.vmp_v * *sheet.imp_a * sheet.series * sheet.parallel;
        if (sheet.power_coefficient && check.hot_cell_c)
            check.hot_w =
                dc_power_w(*check.standard_w, sheet.power_coefficient->value, sheet.irradiance_w_m2.value_or(pv_standard_w_m2), *check.hot_cell_c);
    }
    PvComparison made = comparison("power", "power", "W", check.standard_w, limits.max_w);
    judge_upper(made, Outcome::clips);
    made.sentence = !check.standard_w ? "not known: Vmp or Imp is not stated"
                    : !limits.max_w   ? "not checked: the power limit of the PV input is not stated"
                                      : fmt::format("{} at standard test conditions", modules(sheet.series * sheet.parallel));
    if (made.outcome == Outcome::clips) made.sentence += fmt::format("; up to {} cannot be used", watts(-*made.margin));
    if (check.hot_w) made.sentence += fmt::format("; about {} when hot", watts(*check.hot_w));
    check.comparisons.push_back(std::move(made));
}

PvVerdict verdict_of(const std::vector<PvComparison>& all) {
    if (all[0].outcome == Outcome::bad) return PvVerdict::over_voltage_when_cold;
    if (all[1].outcome == Outcome::bad) return PvVerdict::too_low_when_hot;
    if (all[0].outcome == Outcome::not_known) return PvVerdict::not_known;
    const bool clips = std::ranges::any_of(all, [](const PvComparison& each) { return each.outcome == Outcome::clips; });
    return clips ? PvVerdict::clips : PvVerdict::fits;
}

std::string unchecked(const std::vector<PvComparison>& all) {
    std::string names;
    for (const PvComparison& each : all)
        if (each.outcome == Outcome::not_known) names += (names.empty() ? "" : ", ") + each.title;
    return names.empty() ? names : " Not checked: " + names + ".";
}

std::string headline(const PvSheet& sheet, const PvLimits& limits, const PvCheck& check) {
    const PvComparison &cold = check.comparisons[0], &hot = check.comparisons[1];
    switch (check.verdict) {
    case PvVerdict::over_voltage_when_cold:
        return fmt::format(
            "Danger, do not connect: at {} the string reaches {}, which is {} above the limit of {}. The input can be destroyed and catch fire.",
            temperature(*sheet.coldest_c), volts(*cold.value), volts(-*cold.margin), volts(*limits.max_v));
    case PvVerdict::too_low_when_hot:
        return fmt::format("Too low to start when hot: the string falls to {}, which is {} below the start voltage of {}.{}", volts(*hot.value),
                           volts(-*hot.margin), volts(*limits.start_v),
                           cold.outcome == Outcome::not_known ? " Whether it exceeds the voltage limit when cold is not known." : "");
    case PvVerdict::not_known: return "Do not connect yet: whether the string exceeds the voltage limit when cold is " + cold.sentence + ".";
    case PvVerdict::clips: {
        std::string what;
        for (const PvComparison& each : check.comparisons)
            if (each.outcome == Outcome::clips)
                what +=
                    fmt::format("{}{} of {} against {}", what.empty() ? "" : ", ", each.title,
                                each.unit == "W" ? watts(*each.value) : amps(*each.value), each.unit == "W" ? watts(*each.limit) : amps(*each.limit));
        return fmt::format("Fits with clipping: {}. In the cold the string stays {} below the voltage limit.{}", what, volts(*cold.margin),
                           unchecked(check.comparisons));
    }
    case PvVerdict::fits:
        return fmt::format("Fits: in the cold the string stays {} below the voltage limit{}.{}", volts(*cold.margin),
                           hot.margin ? fmt::format(", in the heat {} above the start voltage", volts(*hot.margin)) : std::string(),
                           unchecked(check.comparisons));
    }
    return {};
}

std::string suggestion(const PvCheck& check) {
    if (!check.largest_series) return "No safe string can be named until the voltage when cold and the limit are known.";
    if (*check.largest_series == 0) return "Not even one of these modules stays within the voltage limit when cold.";
    if (check.least_series && *check.least_series > *check.largest_series)
        return fmt::format("No string fits: {} would be needed to start when hot, but only {} may be in series when cold.",
                           modules(*check.least_series), modules(*check.largest_series));
    std::string text = fmt::format("Largest safe string: {} in series", modules(*check.largest_series));
    if (check.least_series) text += fmt::format(" ({} at least, to start when hot)", *check.least_series);
    if (!check.largest_parallel) return text + "; how many strings side by side is not known.";
    if (*check.largest_parallel == 0) return text + "; even one string exceeds the current limit by 1.25 × its short-circuit current: ask the maker.";
    return text + fmt::format("; largest number of strings: {}.", *check.largest_parallel);
}

} // namespace

PvLimits pv_limits(const Unit& unit) { return {unit.pv_max_v, unit.pv_max_a, unit.pv_max_w, unit.pv_start_v}; }

std::string_view pv_verdict_text(PvVerdict verdict) {
    switch (verdict) {
    case PvVerdict::over_voltage_when_cold: return "exceeds the voltage limit when cold";
    case PvVerdict::not_known: return "not known";
    case PvVerdict::too_low_when_hot: return "too low to start when hot";
    case PvVerdict::clips: return "fits with clipping";
    case PvVerdict::fits: return "fits";
    }
    return "not known";
}

std::string_view pv_outcome_text(Outcome outcome) {
    switch (outcome) {
    case Outcome::good: return "inside";
    case Outcome::clips: return "clipped";
    case Outcome::bad: return "beyond";
    case Outcome::not_known: return "not known";
    }
    return "not known";
}

PvCheck check_pv(const PvSheet& sheet, const PvLimits& limits) {
    PvCheck check;
    add_cold(sheet, limits, check);
    add_hot(sheet, limits, check);
    add_currents(sheet, limits, check);
    add_power(sheet, limits, check);
    check.verdict = verdict_of(check.comparisons);
    check.headline = headline(sheet, limits, check);
    check.suggestion = suggestion(check);
    check.assumptions.push_back("All modules are of one kind, face one way and lie in the same light; for others nothing is claimed.");
    check.assumptions.push_back("The module's own tolerance (often ±3 % of Voc) is not included: leave a margin.");
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

std::vector<std::string> pv_cautions() {
    return {
        "PV strings are live whenever there is light and can carry dangerous DC voltage; they cannot be switched off at the module.",
        "Connect and disconnect only without load and with the modules covered; DC arcs do not go out by themselves.",
        "Check polarity and measure the open-circuit voltage before connecting.",
        "Local electrical codes and a licensed electrician come first; this check is arithmetic on stated values, not a design.",
    };
}

} // namespace ullage
