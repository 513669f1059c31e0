// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/forecast.h"

#include "base/number.h"
#include "forecast/near_moment.h"

#include <cmath>

namespace ullage {

std::string_view forecast_basis_text(ForecastBasis basis) {
    switch (basis) {
    case ForecastBasis::label: return "the unit's label alone";
    case ForecastBasis::trend: return "this run's gauge";
    case ForecastBasis::earlier_drains: return "earlier drains of the unit";
    case ForecastBasis::both: return "earlier drains of the unit, with which this run's gauge agrees";
    case ForecastBasis::disagreeing: break;
    }
    return "earlier drains of the unit and this run's gauge, which disagree";
}

std::string_view forecast_account_text(ForecastAccount account) {
    switch (account) {
    case ForecastAccount::right: return "if the gauge is right";
    case ForecastAccount::wrong: return "if the gauge is wrong";
    case ForecastAccount::whichever: break;
    }
    return "whichever is right";
}

std::string expected_clock_text(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone) {
    const std::string lower_day = day_text(time.lower_ms, zone), upper_day = day_text(time.upper_ms, zone);
    std::string lower = clock_text(time.lower_ms, zone), upper = clock_text(time.upper_ms, zone);
    if (std::abs(hours_between(as_of_ms, time.upper_ms)) >= 24) {
        lower = lower_day + ' ' + lower;
        if (upper_day != lower_day) upper = upper_day + ' ' + upper;
    } else {
        const std::string today = day_text(as_of_ms, zone);
        if (lower_day != today) lower = weekday_text(time.lower_ms, zone) + ' ' + lower;
        if (upper_day != lower_day) upper = weekday_text(time.upper_ms, zone) + ' ' + upper;
    }
    return lower + " to " + upper;
}

std::string expected_hours_text(const ExpectedTime& time, UtcMs as_of_ms) {
    const double lower_h = hours_between(as_of_ms, time.lower_ms), upper_h = hours_between(as_of_ms, time.upper_ms);
    if (upper_h < 0)
        return "overdue by " + (upper_h > -1 ? fixed_text(-upper_h * 60, 0) + " min" : fixed_text(-upper_h, upper_h > -10 ? 1 : 0) + " h");
    const bool in_minutes = upper_h < 1;
    const bool narrow = fixed_text(lower_h, 0) == fixed_text(upper_h, 0);
    const auto number = [in_minutes, narrow](double hours) {
        if (in_minutes) return fixed_text(hours * 60, 0);
        // Whole hours from ten on, unless the range would shrink to one moment.
        return fixed_text(hours, hours < 10 || narrow ? 1 : 0);
    };
    const std::string unit = in_minutes ? " min" : " h";
    if (lower_h <= 0) return "within " + number(upper_h) + unit;
    return "in " + number(lower_h) + " to " + number(upper_h) + unit;
}

} // namespace ullage
