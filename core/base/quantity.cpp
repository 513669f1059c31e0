// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/quantity.h"

#include "base/number.h"

#include <cmath>

namespace ullage {

namespace {

bool usable(const std::optional<double>& number) { return number && std::isfinite(*number); }

/// True when one side of the interval is longer than the other by more than 5 % of the whole.
bool lopsided(double value, double lower, double upper) { return std::abs((upper - value) - (value - lower)) > 0.05 * (upper - lower); }

/// Limits that are no value with an uncertainty need fewer digits: these move a limit by at most 1/6 of the
/// half-width.
std::string range_text(double lower, double upper) {
    const int decimals = decimals_for(1.5 * (upper - lower));
    return fixed_text(lower, decimals) + " to " + fixed_text(upper, decimals);
}

std::string number_text(const Quantity& q, int fallback_decimals) {
    const bool has_interval = usable(q.lower) && usable(q.upper);
    const auto half_width = has_interval ? q.half_width() : std::nullopt;
    const int decimals = half_width && *half_width > 0 ? decimals_for(*half_width) : fallback_decimals;
    if (q.kind == Kind::at_least && (usable(q.lower) || usable(q.value)))
        return "at least " + fixed_text(usable(q.lower) ? *q.lower : *q.value, decimals);
    if (has_interval && *q.lower < *q.upper && (q.kind == Kind::bracket || !usable(q.value) || lopsided(*q.value, *q.lower, *q.upper)))
        return range_text(*q.lower, *q.upper);
    if (usable(q.value)) return with_interval_text(*q.value, half_width, fallback_decimals);
    if (usable(q.lower) && !q.upper) return "at least " + fixed_text(*q.lower, fallback_decimals);
    if (usable(q.upper) && !q.lower) return "at most " + fixed_text(*q.upper, fallback_decimals);
    if (has_interval) return fixed_text(*q.lower, fallback_decimals);
    return {};
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

std::string quantity_text(const Quantity& quantity, int fallback_decimals) {
    if (quantity.kind == Kind::not_known) return "not known";
    const std::string number = number_text(quantity, fallback_decimals);
    if (number.empty()) return "not known";
    return quantity.unit.empty() || quantity.unit == "1" ? number : number + ' ' + quantity.unit;
}

} // namespace ullage
