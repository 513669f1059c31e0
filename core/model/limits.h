// SPDX-License-Identifier: GPL-3.0-or-later
// What a logbook takes: the one place that states how long its texts and lists are and between what its numbers lie. The bounds are far beyond
// what a tester has to say; they keep a damaged or hostile file from using up memory or giving numbers that no sum can hold.
// Photos have theirs in model/photo.h, one tag in model/tags.h.
#pragma once

#include "base/instant.h"
#include "base/message.h"
#include "base/result.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace ullage {

// Texts, in characters (code points of Unicode).
inline constexpr std::size_t longest_name = 500;           ///< of a unit, maker, meter, PV sheet, module, load list or appliance
inline constexpr std::size_t longest_short_text = 64;      ///< a currency, a time zone, an identifier
inline constexpr std::size_t longest_load_text = 5'000;    ///< the tester's words for a load
inline constexpr std::size_t longest_remark = 50'000;      ///< a remark, or the reason of a change
inline constexpr std::size_t longest_extra_value = 50'000; ///< of a key of a run sheet that the program does not know
inline constexpr std::size_t longest_draft = 200'000;      ///< all that is half typed in the entry row of a run
inline constexpr std::size_t longest_file_name = 1'000;
inline constexpr std::size_t longest_layout = 100'000; ///< how a log was read, its header, and the answers for logs like it

// Lists.
inline constexpr std::size_t most_tags = 200;           ///< of a unit
inline constexpr std::size_t most_extras = 1'000;       ///< keys of a run sheet that the program does not know
inline constexpr std::size_t most_appliances = 10'000;  ///< of a load list
inline constexpr std::size_t most_meter_points = 200;   ///< of a meter
inline constexpr std::size_t most_readings = 5'000'000; ///< of a run sheet

/// Between what a number lies, both ends included.
struct NumberRange {
    double lowest, highest;
    std::string_view symbol; ///< of its unit; empty for a pure number
};

inline constexpr double least_positive = 1e-6; ///< stands for "above 0": quotients of what is as small cannot overflow
inline constexpr NumberRange rated_energy_range{least_positive, 1e9, "Wh"};
inline constexpr NumberRange rated_power_range{least_positive, 1e9, "W"};
inline constexpr NumberRange voltage_range{least_positive, 1e6, "V"};
inline constexpr NumberRange current_range{least_positive, 1e6, "A"};
inline constexpr NumberRange charge_time_range{least_positive, 1e5, "h"};
inline constexpr NumberRange price_range{0, 1e12, ""};
inline constexpr NumberRange mass_range{least_positive, 1e6, "kg"};
inline constexpr NumberRange cycles_range{0, 1e6, "cycles"};
inline constexpr NumberRange warranty_range{0, 1'000, "years"};
inline constexpr NumberRange gauge_step_range{least_positive, 100, "%"};
inline constexpr NumberRange register_step_range{least_positive, 1e9, "Wh"};
inline constexpr NumberRange register_span_range{least_positive, 1e12, "Wh"};
inline constexpr NumberRange meter_limit_range{0, 1'000, "%"};
inline constexpr NumberRange noticed_within_range{0, 1e5, "min"};
inline constexpr NumberRange correction_range{least_positive, 1e6, ""};
inline constexpr NumberRange coverage_factor_range{least_positive, 100, ""};
inline constexpr NumberRange load_range{0, 1e9, "W"};
inline constexpr NumberRange method_setting_range{-1e12, 1e12, ""};
inline constexpr NumberRange temperature_range{-273.15, 10'000, "°C"};
/// What was read may be wrong: only what no display can have shown is refused, the rest is questioned elsewhere.
inline constexpr NumberRange gauge_range{-10'000, 10'000, "%"};
inline constexpr NumberRange register_range{-1e12, 1e12, "Wh"};
inline constexpr NumberRange read_power_range{-1e9, 1e9, "W"};
inline constexpr NumberRange coefficient_range{-1e6, 1e6, ""};
inline constexpr NumberRange irradiance_range{0, 1e5, "W/m²"};
inline constexpr NumberRange voltage_tolerance_range{0, 20, "%"}; ///< of a PV module
inline constexpr NumberRange clock_uncertainty_range{0, 1e9, "s"};
inline constexpr NumberRange sample_range{-1e15, 1e15, ""}; ///< any quantity that a log gives

/// Moments of readings, photos and samples: years 1900 to 2199, UTC.
inline constexpr UtcMs earliest_moment_ms = -2'208'988'800'000; ///< 1900-01-01T00:00Z
inline constexpr UtcMs latest_moment_ms = 7'258'118'399'999;    ///< 2199-12-31T23:59:59.999Z

/// "0 to 1000 years".
[[nodiscard]] Message say_range(const NumberRange& range);

// Each gives bad_input with the name of the field in `where` and what is allowed in `remedy`.
/// Refuses a text that is no well-formed UTF-8, or longer than `most` characters.
[[nodiscard]] Result<void> check_text(const Message& field, std::string_view text, std::size_t most);
/// Refuses what is not finite, or out of range. Nothing stated is good.
[[nodiscard]] Result<void> check_number(const Message& field, const std::optional<double>& value, const NumberRange& range);
/// Refuses what is no date of the calendar written as 2027-05-14. Nothing stated is good.
[[nodiscard]] Result<void> check_date(const Message& field, std::string_view date);
[[nodiscard]] Result<void> check_moment(const Message& field, UtcMs time_ms);
/// `words`, with the count, say that there are so many: "there are %n readings".
[[nodiscard]] Result<void> check_count(const Message& field, const Phrase& words, std::size_t count, std::size_t most);

} // namespace ullage
