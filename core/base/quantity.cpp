// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include "base/language.h"
#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <utility>
#include <vector>

namespace ullage {

namespace {

bool usable(const std::optional<double>& number) { return number && std::isfinite(*number); }

/// True when one side of the interval is longer than the other by more than 5 % of the whole.
bool lopsided(double value, double lower, double upper) { return std::abs((upper - value) - (value - lower)) > 0.05 * (upper - lower); }

Message say_range(double lower, double upper) {
    const int decimals = decimals_for(upper - lower);
    return say(phrase("base", "%1 to %2"), say_number(lower, decimals), say_number(upper, decimals));
}

constexpr double kwh_from_wh = 9999.5; ///< what rounds to 10 000 Wh is told in kWh

/// Energies in kWh come from whole Wh: a round one needs no zeros to say so.
std::string bare_text(double value, int decimals, const std::string& unit) {
    std::string text = fixed_text(value, decimals);
    if (unit != "kWh" || text.find('.') == std::string::npos) return text;
    text.erase(text.find_last_not_of('0') + 1);
    if (text.ends_with('.')) text.pop_back();
    return text;
}

int decimals_of_unit(const std::string& unit) { return unit == "Wh" ? 0 : unit == "kWh" ? 3 : 1; }

/// A number, its interval apart from it, or a limit in words; without both where the quantity has no number.
struct SaidNumber {
    Message value, interval;
};

SaidNumber say_number_of(const Quantity& q, int fallback_decimals) {
    const bool has_interval = usable(q.lower) && usable(q.upper);
    const auto half_width = has_interval ? q.half_width() : std::nullopt;
    const bool has_width = half_width && *half_width > 0;
    const auto limit = [&](double value) {
        return say_digits(has_width ? fixed_text(value, decimals_for(*half_width)) : bare_text(value, fallback_decimals, q.unit));
    };
    const auto at_least = [&](double value) { return say(phrase("base", "at least %1"), limit(value)); };
    if (q.kind == Kind::at_least && (usable(q.lower) || usable(q.value))) return {at_least(usable(q.lower) ? *q.lower : *q.value), {}};
    if (has_interval && *q.lower < *q.upper && (q.kind == Kind::bracket || !usable(q.value) || lopsided(*q.value, *q.lower, *q.upper)))
        return {say_range(*q.lower, *q.upper), {}};
    if (usable(q.value)) {
        if (!has_width) return {limit(*q.value), {}};
        const int decimals = decimals_for(*half_width);
        return {say_number(*q.value, decimals), say_digits("± " + fixed_text(*half_width, decimals))};
    }
    if (usable(q.lower) && !q.upper) return {at_least(*q.lower), {}};
    if (usable(q.upper) && !q.lower) return {say(phrase("base", "at most %1"), limit(*q.upper)), {}};
    if (has_interval) return {limit(*q.lower), {}};
    return {};
}

/// Keys of unit "1" that are shares of a whole; others are counts and ratios.
bool is_share(std::string_view key) {
    for (const std::string_view word : {"fraction", "efficiency", "share", "duty"})
        if (key.find(word) != std::string_view::npos) return true;
    return false;
}

double size_of(const Quantity& quantity) {
    if (usable(quantity.value)) return std::abs(*quantity.value);
    return std::max(std::abs(quantity.lower.value_or(0)), std::abs(quantity.upper.value_or(0)));
}

struct SaidQuantity : SaidNumber {
    std::string unit;
};

SaidQuantity say_parts(const Quantity& quantity, std::optional<int> fallback_decimals) {
    SaidQuantity parts;
    if (quantity.kind != Kind::not_known)
        static_cast<SaidNumber&>(parts) = say_number_of(quantity, fallback_decimals.value_or(decimals_of_unit(quantity.unit)));
    if (parts.value.empty()) return {{say_kind(Kind::not_known), {}}, {}};
    parts.unit = quantity.unit == "1" ? std::string() : quantity.unit;
    return parts;
}

/// With the decimals in the unit that people read.
SaidQuantity say_parts_for_people(const Quantity& quantity, std::optional<int> fallback_decimals) {
    const ShownUnit shown = shown_unit(quantity.key, quantity.unit, size_of(quantity));
    if (fallback_decimals) *fallback_decimals -= shown.power;
    return say_parts(in_unit(quantity, shown), fallback_decimals);
}

std::string text_with_point(const Message& message) {
    const SpeakingIn speaking(language_in_use(), '.');
    return message.text();
}

QuantityParts in_words(const SaidQuantity& said) { return {text_with_point(said.value), text_with_point(said.interval), said.unit}; }

} // namespace

std::string_view kind_text(Kind kind) {
    switch (kind) {
    case Kind::measured: return "measured";
    case Kind::projected: return "projected";
    case Kind::at_least: return "at least";
    case Kind::bracket: return "bracket";
    case Kind::not_known: return "not known";
    }
    return "not known";
}

std::optional<double> Quantity::half_width() const {
    if (!lower || !upper) return std::nullopt;
    return (*upper - *lower) / 2;
}

Quantity not_known(std::string key, std::string unit, Message reason) {
    return Quantity{std::move(key), std::move(unit), {}, {}, {}, Kind::not_known, std::move(reason)};
}

Quantity known(std::string key, std::string unit, double value, std::optional<double> half_width, Kind kind, Message reason) {
    Quantity quantity{std::move(key), std::move(unit), value, {}, {}, kind, std::move(reason)};
    if (half_width) {
        quantity.lower = value - *half_width;
        quantity.upper = value + *half_width;
    }
    return quantity;
}

ShownUnit shown_unit(std::string_view key, std::string_view unit, double size_wh) {
    if (unit == "1" && is_share(key)) return {"%", 2};
    if (unit == "1" && key == "difference") return {"pt", 2};
    if (unit == "Wh" && size_wh >= kwh_from_wh) return {"kWh", -3};
    return {std::string(unit), 0};
}

Quantity in_unit(Quantity quantity, const ShownUnit& shown) {
    quantity.unit = shown.unit;
    const double ten = std::pow(10.0, std::abs(shown.power));
    for (std::optional<double>* number : {&quantity.value, &quantity.lower, &quantity.upper})
        if (*number) *number = shown.power < 0 ? **number / ten : **number * ten;
    return quantity;
}

Quantity for_people(const Quantity& quantity) { return in_unit(quantity, shown_unit(quantity.key, quantity.unit, size_of(quantity))); }

Message say_kind(Kind kind) {
    switch (kind) {
    case Kind::measured: return say(phrase("base", "measured"));
    case Kind::projected: return say(phrase("base", "projected"));
    case Kind::at_least: return say(phrase("base", "at least"));
    case Kind::bracket: return say(phrase("base", "bracket"));
    case Kind::not_known: return say(phrase("base", "not known"));
    }
    return say(phrase("base", "not known"));
}

QuantityParts parts_as_they_are(const Quantity& quantity, std::optional<int> fallback_decimals) {
    return in_words(say_parts(quantity, fallback_decimals));
}

QuantityParts quantity_parts(const Quantity& quantity, std::optional<int> fallback_decimals) {
    return in_words(say_parts_for_people(quantity, fallback_decimals));
}

Message say_quantity(const Quantity& quantity, std::optional<int> fallback_decimals) {
    const SaidQuantity said = say_parts_for_people(quantity, fallback_decimals);
    std::vector<Message> parts{said.value};
    if (!said.interval.empty()) parts.push_back(said.interval);
    if (!said.unit.empty()) parts.emplace_back(said.unit);
    return say_joined(parts, " ");
}

std::string quantity_text(const Quantity& quantity, std::optional<int> fallback_decimals) {
    return text_with_point(say_quantity(quantity, fallback_decimals));
}

Message say_energy(double wh) { return say_quantity(known({}, "Wh", wh, std::nullopt, Kind::measured), 0); }

std::string energy_text(double wh) { return text_with_point(say_energy(wh)); }

} // namespace ullage
