// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <array>
#include <optional>

namespace ullage {

/// Share of the rated energy that is expected at the socket of a unit that nobody has tested (common practice, no source).
inline constexpr double expected_lower_fraction = 0.75, expected_upper_fraction = 0.80;

inline constexpr int months_of_year = 12;

/// At most so many units side by side are thought of.
inline constexpr int most_units = 1000;

/// What a tester chooses for a sizing, beside the load list. Defaults are common practice, no source, where nothing else is said.
struct SizingChoices {
    double autonomy_days = 1;      ///< to be carried without any sun, above 0 to 365
    double peak_sun_hours = 4;     ///< h a day at 1 kW/m² on the module plane, above 0 to 15; of the worst month that counts
    double derating = 0.75;        ///< of the array from label to battery (heat, dust, wiring, charge), above 0 to 1
    double array_to_load = 1.2;    ///< array energy / daily load, 1 to 10; see pv_array()
    std::optional<double> array_w; ///< an array that is there, W at standard test conditions, above 0; absent: the one that the rule asks for
    std::array<std::optional<double>, months_of_year> month_sun_hours; ///< January first, 0 to 15 h a day; absent: not stated
    int units = 1;                                                     ///< side by side in the course of the charge, 1 to most_units
    double daylight_h = 12;                                            ///< length of the day for the course of the sun, 1 to 24, about noon
    double expected_lower = expected_lower_fraction;                   ///< band for units without a fit, above 0 to 1.1, not above expected_upper
    double expected_upper = expected_upper_fraction;
    // The battery by rule, see battery_by_rule().
    double inverter_efficiency = 0.90; ///< above 0 to 1
    double most_depth = 0.80;          ///< deepest discharge, above 0 to 1
    double end_of_life = 0.80;         ///< share of the capacity left at the end of life, above 0 to 1 (IEEE 1013: 0.8 usual)
    double temperature_factor = 1;     ///< 1 to 3; 1 for lithium with thermal control, lead-acid 1/(1 − 0.01 per °C below 25 °C)
    double margin = 1.15;              ///< 1 to 2; 1.10–1.25 (IEEE 1013)
};

/// Errors: bad_input naming the field in `where`, for a number out of the range stated above or not finite.
[[nodiscard]] Result<void> check(const SizingChoices& choices);

} // namespace ullage
