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

Message say_forecast_account(ForecastAccount account) {
    switch (account) {
    case ForecastAccount::right: return say(phrase("forecast", "if the gauge is right"));
    case ForecastAccount::wrong: return say(phrase("forecast", "if the gauge is wrong"));
    case ForecastAccount::whichever: break;
    }
    return say(phrase("forecast", "whichever is right"));
}

Message say_expected_clock(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone) {
    const Message lower_day = say_day(time.lower_ms, zone), upper_day = say_day(time.upper_ms, zone);
    const bool far = std::abs(hours_between(as_of_ms, time.upper_ms)) >= 24;
    const auto with_day = [&](UtcMs moment_ms) {
        return say_joined({far ? say_day(moment_ms, zone) : say_weekday(moment_ms, zone), clock_text(moment_ms, zone)}, " ");
    };
    const bool other_day = far || !(lower_day == say_day(as_of_ms, zone));
    const Message lower = other_day ? with_day(time.lower_ms) : Message(clock_text(time.lower_ms, zone));
    const Message upper = upper_day == lower_day ? Message(clock_text(time.upper_ms, zone)) : with_day(time.upper_ms);
    return say(phrase("forecast", "%1 to %2"), lower, upper);
}

std::string expected_clock_text(const ExpectedTime& time, UtcMs as_of_ms, std::string_view zone) { return say_expected_clock(time, as_of_ms, zone); }

Message say_expected_hours(const ExpectedTime& time, UtcMs as_of_ms) {
    const double lower_h = hours_between(as_of_ms, time.lower_ms), upper_h = hours_between(as_of_ms, time.upper_ms);
    if (upper_h < 0)
        return upper_h > -1 ? say(phrase("forecast", "overdue by %1 min"), say_number(-upper_h * 60, 0))
                            : say(phrase("forecast", "overdue by %1 h"), say_number(-upper_h, upper_h > -10 ? 1 : 0));
    const bool in_minutes = upper_h < 1;
    const bool narrow = fixed_text(lower_h, 0) == fixed_text(upper_h, 0);
    const auto number = [in_minutes, narrow](double hours) {
        if (in_minutes) return say_number(hours * 60, 0);
        // Whole hours from ten on, unless the range would shrink to one moment.
        return say_number(hours, hours < 10 || narrow ? 1 : 0);
    };
    if (lower_h <= 0) return say(in_minutes ? phrase("forecast", "within %1 min") : phrase("forecast", "within %1 h"), number(upper_h));
    return say(in_minutes ? phrase("forecast", "in %1 to %2 min") : phrase("forecast", "in %1 to %2 h"), number(lower_h), number(upper_h));
}

std::string expected_hours_text(const ExpectedTime& time, UtcMs as_of_ms) { return say_expected_hours(time, as_of_ms); }

} // namespace ullage
