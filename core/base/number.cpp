// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>

namespace ullage {

namespace {

/// More digits than this show nothing of a double.
constexpr int most_decimals = 17;

Error no_number(std::string_view text, const Message& remedy) {
    return Error{Failure::bad_input, say(phrase("base", "`%1` is no number"), text), {}, remedy};
}

/// std::to_chars into a string; the buffer holds the longest fixed form of a double with 17 decimals.
template <class... Format>
std::string to_text(double value, Format... format) {
    std::array<char, 400> buffer;
    const auto [end, error] = std::to_chars(buffer.data(), buffer.data() + buffer.size(), value, format...);
    return error == std::errc() ? std::string(buffer.data(), end) : std::string();
}

} // namespace

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

Result<double> parse_number(std::string_view text) {
    if (text.empty()) return no_number(text, say(phrase("base", "write a number such as 431 or 0.5")));
    const auto signs = std::ranges::count_if(text, [](char c) { return c == '.' || c == ','; });
    if (signs > 1)
        return Error{Failure::bad_input,
                     say(phrase("base", "`%1` can be read in more than one way"), text),
                     {},
                     say(phrase("base", "leave out digit grouping and use one decimal sign"))};
    std::string plain(text);
    std::ranges::replace(plain, ',', '.');
    // Letters other than an exponent would let "inf", "nan" and their kin through.
    if (plain.find_first_not_of("0123456789.+-eE") != std::string::npos)
        return no_number(text, say(phrase("base", "write a number such as 431 or 0.5, without digit grouping")));
    std::string_view rest = plain;
    if (rest.starts_with('+') && !rest.starts_with("+-")) rest.remove_prefix(1);
    double value = 0;
    const auto [end, error] = std::from_chars(rest.data(), rest.data() + rest.size(), value);
    if (error == std::errc::result_out_of_range)
        return Error{Failure::bad_input, say(phrase("base", "`%1` is too large or too small"), text), {}, say(phrase("base", "correct the number"))};
    if (error != std::errc() || end != rest.data() + rest.size()) return no_number(text, say(phrase("base", "write a number such as 431 or 0.5")));
    return value;
}

std::string exact_text(double value) {
    if (value == 0) return "0";
    const double size = std::abs(value);
    if (size >= 1e-6 && size < 1e15) return to_text(value, std::chars_format::fixed);
    return to_text(value, std::chars_format::scientific);
}

std::string fixed_text(double value, int decimals) {
    if (decimals < 0) {
        const double step = std::pow(10.0, std::min(-decimals, most_decimals));
        value = std::round(value / step) * step;
    }
    std::string text = to_text(value, std::chars_format::fixed, std::clamp(decimals, 0, most_decimals));
    if (text.starts_with('-') && text.find_first_not_of("-0.") == std::string::npos) text.erase(0, 1);
    return text;
}

std::string signed_text(double value, int decimals) {
    const std::string size = fixed_text(std::abs(value), decimals);
    const bool zero = size.find_first_of("123456789") == std::string::npos;
    return zero ? size : (value < 0 ? "−" : "+") + size;
}

int decimals_for(double half_width) {
    // The exponent is taken after rounding to two digits, so that 0.0996 counts as 0.10.
    const std::string text = to_text(half_width, std::chars_format::scientific, 1);
    int exponent = 0;
    const auto e = text.find('e');
    if (e == std::string::npos) return 0;
    const char* first = text.data() + e + (text[e + 1] == '+' ? 2 : 1);
    std::from_chars(first, text.data() + text.size(), exponent);
    return std::clamp(1 - exponent, -most_decimals, most_decimals);
}

std::string with_interval_text(double value, std::optional<double> half_width, int fallback_decimals) {
    if (!half_width || !std::isfinite(*half_width) || *half_width <= 0) return fixed_text(value, fallback_decimals);
    const int decimals = decimals_for(*half_width);
    return fmt::format("{} ± {}", fixed_text(value, decimals), fixed_text(*half_width, decimals));
}

std::string count_text(long count, std::string_view one, std::string_view many) { return fmt::format("{} {}", count, count == 1 ? one : many); }

} // namespace ullage
