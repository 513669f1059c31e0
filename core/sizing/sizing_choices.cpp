// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/sizing_choices.h"

#include "base/number.h"

#include <cmath>
#include <string>

namespace ullage {

namespace {

constexpr double most_sun_hours = 15; ///< beyond any place on Earth

/// A number with its range; `above`: the lower end is not part of it.
struct Choice {
    const char* field;
    double value, low, high;
    bool above = true;
};

Result<void> check_one(const Choice& choice) {
    const bool low = choice.above ? choice.value > choice.low : choice.value >= choice.low;
    if (std::isfinite(choice.value) && low && choice.value <= choice.high) return {};
    const std::string shown = std::isfinite(choice.value) ? exact_text(choice.value) : std::string("this");
    return Error{Failure::bad_input, shown + " is out of range", choice.field,
                 "state a number " + std::string(choice.above ? "above " : "from ") + exact_text(choice.low) + " to " + exact_text(choice.high)};
}

} // namespace

Result<void> check(const SizingChoices& choices) {
    const Choice all[] = {{"days of autonomy", choices.autonomy_days, 0, 365},
                          {"peak-sun hours", choices.peak_sun_hours, 0, most_sun_hours},
                          {"derating", choices.derating, 0, 1},
                          {"array-to-load ratio", choices.array_to_load, 1, 10, false},
                          {"array", choices.array_w.value_or(1), 0, 1e6},
                          {"units side by side", static_cast<double>(choices.units), 1, most_units, false},
                          {"daylight hours", choices.daylight_h, 1, 24, false},
                          {"expected share, lower end", choices.expected_lower, 0, 1.1},
                          {"expected share, upper end", choices.expected_upper, 0, 1.1},
                          {"inverter efficiency", choices.inverter_efficiency, 0, 1},
                          {"deepest discharge", choices.most_depth, 0, 1},
                          {"share left at the end of life", choices.end_of_life, 0, 1},
                          {"temperature factor", choices.temperature_factor, 1, 3, false},
                          {"margin", choices.margin, 1, 2, false}};
    for (const Choice& choice : all)
        if (Result<void> good = check_one(choice); !good) return good;
    int month = 0;
    for (const std::optional<double>& hours : choices.month_sun_hours) {
        ++month;
        const std::string field = "peak-sun hours of month " + std::to_string(month);
        if (hours)
            if (Result<void> good = check_one({field.c_str(), *hours, 0, most_sun_hours, false}); !good) return good;
    }
    if (choices.expected_lower > choices.expected_upper)
        return Error{Failure::bad_input, "the lower end of the expected share is above the upper", "expected share", "swap them"};
    return {};
}

} // namespace ullage
