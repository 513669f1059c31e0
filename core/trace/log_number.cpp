// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/log_number.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <string>

namespace ullage {
namespace {

using Q = LogQuantity;

constexpr LogUnit units[] = {
    {Q::power, 0, 1, "W"},         {Q::power, 3, 1, "kW"},        {Q::power, -3, 1, "mW"},       {Q::energy, 0, 1, "Wh"},
    {Q::energy, 3, 1, "kWh"},      {Q::energy, -3, 1, "mWh"},     {Q::energy, 6, 1, "MWh"},      {Q::energy, 0, 1, "J", 3600},
    {Q::energy, 0, 1, "Ws", 3600}, {Q::energy, 3, 1, "kJ", 3600}, {Q::energy, 6, 1, "MJ", 3600}, {Q::voltage, 0, 1, "V"},
    {Q::voltage, -3, 1, "mV"},     {Q::current, 0, 1, "A"},       {Q::current, -3, 1, "mA"},     {Q::charge, 0, 1, "Ah"},
    {Q::charge, -3, 1, "mAh"},     {Q::time, 0, 1, "s"},          {Q::time, 0, 1, "sec"},        {Q::time, -3, 1, "ms"},
    {Q::time, 0, 60, "min"},       {Q::time, 0, 3600, "h"},       {Q::other, 0, 1, "VA"},        {Q::other, 0, 1, "kVA"},
    {Q::other, 0, 1, "var"},       {Q::other, 0, 1, "Hz"},        {Q::other, 0, 1, "\u00B0C"},   {Q::other, 0, 1, "\u00B0F"},
    {Q::share, 0, 1, "%"},         {Q::share, 2, 1, "share"},
};

constexpr std::array<double, 23> powers = {1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11,
                                           1e12, 1e13, 1e14, 1e15, 1e16, 1e17, 1e18, 1e19, 1e20, 1e21, 1e22};

bool same_letters(std::string_view a, std::string_view b) {
    return std::ranges::equal(a, b, [](unsigned char x, unsigned char y) { return std::tolower(x) == std::tolower(y); });
}

} // namespace

std::optional<LogUnit> unit_named(std::string_view name) {
    const LogUnit* found = nullptr;
    for (const LogUnit& unit : units) {
        if (unit.name == name) return unit;
        if (!same_letters(unit.name, name)) continue;
        if (found != nullptr) return std::nullopt;
        found = &unit;
    }
    return found == nullptr ? std::nullopt : std::optional(*found);
}

bool read_number(std::string_view cell, char decimal, char grouping, LogNumber& number) {
    const char* at = cell.data();
    const char* const end = at + cell.size();
    const bool negative = at != end && *at == '-';
    if (at != end && (*at == '-' || *at == '+')) ++at;
    std::int64_t mantissa = 0;
    int digits = 0, exponent = 0;
    bool any = false;
    const auto take = [&](char c) {
        any = true;
        if (digits < 18) {
            mantissa = mantissa * 10 + (c - '0');
            if (mantissa != 0) ++digits;
            return true;
        }
        return false;
    };
    for (; at != end; ++at) {
        if (is_digit(*at)) {
            if (!take(*at)) ++exponent;
        } else if (grouping == 0 || *at != grouping || !any || end - at < 4 || !is_digit(at[1]) || !is_digit(at[2]) || !is_digit(at[3])) {
            break;
        }
    }
    if (at != end && *at == decimal) {
        ++at;
        for (; at != end && is_digit(*at); ++at)
            if (take(*at)) --exponent;
    }
    if (!any) return false;
    if (at != end && (*at == 'e' || *at == 'E')) {
        const char* power = at + 1;
        const bool below = power != end && *power == '-';
        if (power != end && (*power == '-' || *power == '+')) ++power;
        int size = 0;
        const char* const from = power;
        for (; power != end && is_digit(*power); ++power) size = std::min(size * 10 + (*power - '0'), 9999);
        if (power != from) {
            exponent += below ? -size : size;
            at = power;
        }
    }
    while (at != end && (*at == ' ' || *at == '\t' || *at == '\xC2' || *at == '\xA0')) {
        if (*at == '\xC2' && (end - at < 2 || at[1] != '\xA0')) break; // a no-break space is two bytes
        ++at;
    }
    number.mantissa = negative ? -mantissa : mantissa;
    number.exponent = exponent;
    number.suffix = std::string_view(at, static_cast<std::size_t>(end - at));
    return number.suffix.empty() || !(is_digit(number.suffix.front()) || number.suffix.find_first_of(".,+-:;") == 0);
}

std::optional<double> value_of(const LogNumber& number, const LogUnit& unit) {
    const int exponent = number.exponent + unit.exponent;
    const auto mantissa = static_cast<double>(number.mantissa);
    double value = 0;
    if (number.mantissa == 0) value = 0;
    else if (exponent >= 0 && exponent <= 22) value = mantissa * powers[static_cast<std::size_t>(exponent)];
    else if (exponent < 0 && exponent >= -22) value = mantissa / powers[static_cast<std::size_t>(-exponent)];
    else value = mantissa * std::pow(10.0, exponent);
    value = value * unit.factor / unit.divisor;
    if (!std::isfinite(value) || std::abs(value) > 1e15) return std::nullopt;
    return value;
}

bool says_nothing(std::string_view cell) {
    constexpr std::string_view words[] = {"-", "--", "---", "nan", "n/a", "na", "null", "none", "err", "\u2013"};
    return cell.empty() || std::ranges::any_of(words, [cell](std::string_view word) { return same_letters(word, cell); });
}

} // namespace ullage
