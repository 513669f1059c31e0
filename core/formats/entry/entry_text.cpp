// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/entry_text.h"

#include "base/number.h"
#include "formats/entry/inside/plain_entry.h"

#include <fmt/format.h>

#include <cmath>
#include <span>
#include <string>

namespace ullage {

namespace {

/// A unit that may follow the number, in lower case. Its size in the quantity's own unit is 10^exponent /
/// divisor; the power of ten is applied in text, so that 1.001 kWh is 1001 Wh and no neighbour of it.
struct UnitName {
    std::string_view name;
    int exponent;
    double divisor = 1;
};

/// How one quantity is typed.
struct Entry {
    std::span<const UnitName> units;
    double highest;
    Phrase expected; ///< what to type
};

// 1 J = 1 W s, so 1 MJ = 1e6/3600 Wh (BIPM, SI Brochure, 9th edition, table 4; the hour: table 8).
constexpr UnitName energy_units[] = {{"", 0}, {"wh", 0}, {"kwh", 3}, {"j", 0, 3600}, {"kj", 3, 3600}, {"mj", 6, 3600}};
constexpr UnitName gauge_units[] = {{"", 0}, {"%", 0}, {"percent", 0}};
constexpr UnitName power_units[] = {{"", 0}, {"w", 0}, {"kw", 3}};
constexpr double no_limit = 1e300;

Error refused(const Message& what, const Phrase& expected) { return Error{Failure::bad_input, what, {}, say(expected)}; }

std::string without_blanks(std::string_view text) {
    std::string result;
    for (char c : text)
        if (c != ' ' && c != '\t') result += c;
    return result;
}

/// `1.234,5` to `1234,5`: of two kinds of signs the last is the decimal sign, and the other one parts groups of three digits. Unchanged where it does
/// not stand so.
std::string without_groups(std::string_view number) {
    const auto point = number.rfind('.'), comma = number.rfind(',');
    if (point == std::string_view::npos || comma == std::string_view::npos) return std::string(number);
    const char decimal = point > comma ? '.' : ',', group = point > comma ? ',' : '.';
    const std::string_view whole = number.substr(0, number.find(decimal));
    if (number.find(decimal) != number.rfind(decimal) || whole.find(group) == std::string_view::npos) return std::string(number);
    if (number.find(group, whole.size()) != std::string_view::npos) return std::string(number);
    std::string joined;
    std::size_t digits = 0;
    bool first_group = true;
    for (const char each : whole) {
        if (each != group) {
            joined += each;
            ++digits;
            continue;
        }
        if (digits == 0 || digits > 3 || (!first_group && digits != 3)) return std::string(number);
        first_group = false;
        digits = 0;
    }
    if (digits != 3) return std::string(number);
    return joined + std::string(number.substr(whole.size()));
}

Result<double> parse_entry(std::string_view text, const Entry& entry) {
    const std::string typed = plain_entry(text);
    if (typed.empty()) return refused(say(phrase("entry", "nothing was typed")), entry.expected);
    const auto after_number = std::string_view(typed).find_first_not_of("0123456789.,+-");
    const std::string number_part = without_groups(trimmed(std::string_view(typed).substr(0, after_number)));
    const std::string unit = after_number == std::string::npos ? std::string() : without_blanks(std::string_view(typed).substr(after_number));
    if (number_part.empty()) return refused(say(phrase("entry", "`%1` is no number"), text), entry.expected);
    if (const Result<double> number = parse_number(number_part); !number) return refused(number.error().what, entry.expected);
    for (const UnitName& known : entry.units) {
        if (known.name != unit) continue;
        const Result<double> scaled = parse_number(fmt::format("{}e{}", number_part, known.exponent));
        if (!scaled) return refused(scaled.error().what, entry.expected);
        const double value = scaled.value() / known.divisor;
        if (value < 0 || value > entry.highest) return refused(say(phrase("entry", "`%1` is out of range"), text), entry.expected);
        return value == 0 ? 0.0 : value; // never -0
    }
    return refused(say(phrase("entry", "`%1` is not understood after the number"), unit), entry.expected);
}

bool shown_by(double wh, double step_wh) { return std::abs(wh / step_wh - std::round(wh / step_wh)) < 1e-6; }

} // namespace

Result<double> parse_register_wh(std::string_view text, std::optional<double> step_wh) {
    const Result<double> in_wh = parse_energy_wh(text);
    const std::string typed = plain_entry(text);
    const bool bare = typed.find_first_not_of("0123456789.,+- ") == std::string::npos;
    if (!in_wh || !bare || !step_wh || *step_wh <= 0 || shown_by(in_wh.value(), *step_wh)) return in_wh;
    const Result<double> in_kwh = parse_energy_wh(typed + " kwh");
    return in_kwh && shown_by(in_kwh.value(), *step_wh) ? in_kwh : in_wh;
}

Result<double> parse_energy_wh(std::string_view text) {
    return parse_entry(text, {energy_units, no_limit, phrase("entry", "type an energy of 0 or more, such as 431, 431 Wh or 0.431 kWh")});
}

Result<double> parse_gauge_percent(std::string_view text) {
    return parse_entry(text, {gauge_units, 100, phrase("entry", "type a percentage from 0 to 100, such as 69")});
}

Result<double> parse_power_w(std::string_view text) {
    return parse_entry(text, {power_units, no_limit, phrase("entry", "type a power of 0 or more, such as 64, 64 W or 0.064 kW")});
}

} // namespace ullage
