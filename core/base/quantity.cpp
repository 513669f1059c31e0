// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

bool usable(const std::optional<double>& number) { return number && std::isfinite(*number); }

/// True when one side of the interval is longer than the other by more than 5 % of the whole.
bool lopsided(double value, double lower, double upper) { return std::abs((upper - value) - (value - lower)) > 0.05 * (upper - lower); }

std::string range_text(double lower, double upper) {
    const int decimals = decimals_for(upper - lower);
    return fixed_text(lower, decimals) + " to " + fixed_text(upper, decimals);
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

std::string number_text(const Quantity& q, int fallback_decimals) {
    const bool has_interval = usable(q.lower) && usable(q.upper);
    const auto half_width = has_interval ? q.half_width() : std::nullopt;
    const bool has_width = half_width && *half_width > 0;
    const auto limit = [&](double value) {
        return has_width ? fixed_text(value, decimals_for(*half_width)) : bare_text(value, fallback_decimals, q.unit);
    };
    if (q.kind == Kind::at_least && (usable(q.lower) || usable(q.value))) return "at least " + limit(usable(q.lower) ? *q.lower : *q.value);
    if (has_interval && *q.lower < *q.upper && (q.kind == Kind::bracket || !usable(q.value) || lopsided(*q.value, *q.lower, *q.upper)))
        return range_text(*q.lower, *q.upper);
    if (usable(q.value)) return has_width ? with_interval_text(*q.value, half_width, fallback_decimals) : limit(*q.value);
    if (usable(q.lower) && !q.upper) return "at least " + limit(*q.lower);
    if (usable(q.upper) && !q.lower) return "at most " + limit(*q.upper);
    if (has_interval) return limit(*q.lower);
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

Quantity not_known(std::string key, std::string unit, std::string reason) {
    return Quantity{std::move(key), std::move(unit), {}, {}, {}, Kind::not_known, std::move(reason)};
}

Quantity known(std::string key, std::string unit, double value, std::optional<double> half_width, Kind kind, std::string reason) {
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

QuantityParts parts_as_they_are(const Quantity& quantity, std::optional<int> fallback_decimals) {
    const std::string number =
        quantity.kind == Kind::not_known ? std::string() : number_text(quantity, fallback_decimals.value_or(decimals_of_unit(quantity.unit)));
    if (number.empty()) return {"not known", {}, {}};
    QuantityParts parts{number, {}, quantity.unit == "1" ? std::string() : quantity.unit};
    const auto sign = number.find(" ± ");
    if (sign == std::string::npos) return parts;
    parts.interval = number.substr(sign + 1);
    parts.value.resize(sign);
    return parts;
}

QuantityParts quantity_parts(const Quantity& quantity, std::optional<int> fallback_decimals) {
    const ShownUnit shown = shown_unit(quantity.key, quantity.unit, size_of(quantity));
    if (fallback_decimals) *fallback_decimals -= shown.power;
    return parts_as_they_are(in_unit(quantity, shown), fallback_decimals);
}

std::string energy_text(double wh) { return quantity_text(known({}, "Wh", wh, std::nullopt, Kind::measured), 0); }

std::string quantity_text(const Quantity& quantity, std::optional<int> fallback_decimals) {
    const QuantityParts parts = quantity_parts(quantity, fallback_decimals);
    return parts.value + (parts.interval.empty() ? "" : " " + parts.interval) + (parts.unit.empty() ? "" : " " + parts.unit);
}

} // namespace ullage
