// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/field_text.h"

#include "base/number.h"
#include "style/words.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace ullage {

namespace {

bool ends_with_word(std::string_view text, std::string_view word) {
    if (text.size() < word.size()) return false;
    return std::equal(word.rbegin(), word.rend(), text.rbegin(),
                      [](char a, char b) { return std::tolower(static_cast<unsigned char>(a)) == std::tolower(static_cast<unsigned char>(b)); });
}

Message expected_words(const std::vector<UnitWord>& units) {
    if (units.empty()) return say(phrase("dialogs", "enter a number, such as 1.5"));
    return say(phrase("dialogs", "enter a number, such as 1.5 %1"), units.front().word);
}

} // namespace

std::function<Result<double>(std::string_view)> number_in(std::vector<UnitWord> units, FieldLimits limits) {
    // Longer words first, or "g" would be found in "kg".
    auto by_length = units;
    std::stable_sort(by_length.begin(), by_length.end(), [](const UnitWord& a, const UnitWord& b) { return a.word.size() > b.word.size(); });
    return [units = std::move(units), by_length = std::move(by_length), limits = std::move(limits)](std::string_view text) -> Result<double> {
        auto digits = trimmed(text);
        double factor = 1;
        for (const auto& unit : by_length) {
            if (!ends_with_word(digits, unit.word)) continue;
            digits = trimmed(digits.substr(0, digits.size() - unit.word.size()));
            factor = unit.factor;
            break;
        }
        const auto parsed = parse_number(digits);
        if (!parsed) return Error{Failure::bad_input, say(phrase("dialogs", "`%1` is not understood"), trimmed(text)), {}, expected_words(units)};
        const double value = parsed.value() * factor;
        if (limits.above_zero && !(value > 0))
            return Error{Failure::bad_input,
                         say(phrase("dialogs", "%1 must be more than 0"), limits.what),
                         {},
                         say(phrase("dialogs", "leave the field empty where nothing is stated"))};
        return value;
    };
}

std::function<Result<double>(std::string_view)> above_zero(std::function<Result<double>(std::string_view)> parse, Message what) {
    return [parse = std::move(parse), what = std::move(what)](std::string_view text) -> Result<double> {
        auto parsed = parse(text);
        if (parsed && !(parsed.value() > 0))
            return Error{Failure::bad_input,
                         say(phrase("dialogs", "%1 must be more than 0"), what),
                         {},
                         say(phrase("dialogs", "leave the field empty where nothing is stated"))};
        return parsed;
    };
}

QString field_text(const std::optional<double>& value, const QString& unit) {
    if (!value) return {};
    const auto digits = raw_text(exact_text(*value));
    return unit.isEmpty() ? digits : QStringLiteral("%1 %2").arg(digits, unit);
}

} // namespace ullage
