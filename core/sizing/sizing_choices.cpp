// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/sizing_choices.h"

#include "base/message.h"
#include "base/number.h"

#include <cmath>

namespace ullage {

namespace {

constexpr double most_sun_hours = 15; ///< beyond any place on Earth

/// A number with its range; `above`: the lower end is not part of it.
struct Choice {
    Phrase field;
    double value, low, high;
    bool above = true;
};

Result<void> check_one(const Choice& choice, const Message& field) {
    const bool low = choice.above ? choice.value > choice.low : choice.value >= choice.low;
    if (std::isfinite(choice.value) && low && choice.value <= choice.high) return {};
    return Error{Failure::bad_input,
                 std::isfinite(choice.value) ? say(phrase("sizing", "%1 is out of range"), say_digits(exact_text(choice.value)))
                                             : say(phrase("sizing", "this is out of range")),
                 field,
                 say(choice.above ? phrase("sizing", "state a number above %1 to %2") : phrase("sizing", "state a number from %1 to %2"),
                     say_digits(exact_text(choice.low)), say_digits(exact_text(choice.high)))};
}

} // namespace

Result<void> check(const SizingChoices& choices) {
    const Choice all[] = {{phrase("sizing", "days of autonomy"), choices.autonomy_days, 0, 365},
                          {phrase("sizing", "peak-sun hours"), choices.peak_sun_hours, 0, most_sun_hours},
                          {phrase("sizing", "derating"), choices.derating, 0, 1},
                          {phrase("sizing", "array-to-load ratio"), choices.array_to_load, 1, 10, false},
                          {phrase("sizing", "array"), choices.array_w.value_or(1), 0, 1e6},
                          {phrase("sizing", "units side by side"), static_cast<double>(choices.units), 1, most_units, false},
                          {phrase("sizing", "daylight hours"), choices.daylight_h, 1, 24, false},
                          {phrase("sizing", "expected share, lower end"), choices.expected_lower, 0, 1.1},
                          {phrase("sizing", "expected share, upper end"), choices.expected_upper, 0, 1.1},
                          {phrase("sizing", "inverter efficiency"), choices.inverter_efficiency, 0, 1},
                          {phrase("sizing", "deepest discharge"), choices.most_depth, 0, 1},
                          {phrase("sizing", "share left at the end of life"), choices.end_of_life, 0, 1},
                          {phrase("sizing", "temperature factor"), choices.temperature_factor, 1, 3, false},
                          {phrase("sizing", "margin"), choices.margin, 1, 2, false}};
    for (const Choice& choice : all)
        if (Result<void> good = check_one(choice, say(choice.field)); !good) return good;
    int month = 0;
    for (const std::optional<double>& hours : choices.month_sun_hours) {
        ++month;
        if (!hours) continue;
        const Choice of_month{phrase("sizing", "peak-sun hours of month %1"), *hours, 0, most_sun_hours, false};
        if (Result<void> good = check_one(of_month, say(of_month.field, say_number(month))); !good) return good;
    }
    if (choices.expected_lower > choices.expected_upper)
        return Error{Failure::bad_input, say(phrase("sizing", "the lower end of the expected share is above the upper")),
                     say(phrase("sizing", "expected share")), say(phrase("sizing", "swap them"))};
    return {};
}

} // namespace ullage
