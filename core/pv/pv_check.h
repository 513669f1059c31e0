// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/pv_sheet.h"
#include "model/unit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What a unit's PV input takes, as its maker states it; absent: not stated.
struct PvLimits {
    std::optional<double> max_v, max_a, max_w;
    std::optional<double> start_v; ///< lowest voltage at which it starts and tracks
};
[[nodiscard]] PvLimits pv_limits(const Unit& unit);

/// The answer, gravest first.
enum class PvVerdict { over_voltage_when_cold, not_known, too_low_when_hot, clips, fits };
/// "exceeds the voltage limit when cold", "not known", "too low to start when hot", "fits with clipping", "fits".
[[nodiscard]] std::string_view pv_verdict_text(PvVerdict verdict);

/// One comparison of the string or array with a limit.
struct PvComparison {
    enum class Outcome { good, clips, bad, not_known };
    std::string key;   ///< "cold_voltage", "hot_voltage", "working_current", "circuit_current", "power"
    std::string title; ///< "voltage when cold"
    std::string unit;  ///< "V", "A", "W"
    std::optional<double> value, limit;
    std::optional<double> margin; ///< how far inside the limit; negative beyond it
    Outcome outcome = Outcome::not_known;
    std::string sentence; ///< what the value rests on, or what is missing
};
/// "inside", "clipped", "beyond", "not known".
[[nodiscard]] std::string_view pv_outcome_text(PvComparison::Outcome outcome);

/// What was found. Voltages of the string in V, currents and power of the whole array in A and W.
struct PvCheck {
    PvVerdict verdict = PvVerdict::not_known;
    std::string headline;                        ///< the verdict in one sentence with its figures
    std::vector<PvComparison> comparisons;       ///< in the order of their keys above
    std::optional<double> cold_voc_v, hot_vmp_v; ///< of the string
    std::optional<double> hot_cell_c;
    std::optional<double> standard_w, hot_w; ///< of the array; hot_w needs the coefficient of power
    std::optional<double> conductor_a;       ///< 1.25 × 1.25 × Isc of one string
    std::optional<int> least_series;         ///< modules that reach the start voltage when hot
    std::optional<int> largest_series;       ///< that stay within the voltage limit when cold; 0: not even one
    std::optional<int> largest_parallel;     ///< strings whose circuit current stays within the current limit; 0: not even one
    std::string suggestion;                  ///< the largest safe string and number of strings, in a sentence
    std::vector<std::string> assumptions;    ///< what was taken for granted
};

/// Compares a sheet with the limits of a PV input. Voltage when cold: series × cold_voltage() against max_v, equality allowed. Voltage when hot:
/// series × Vmp at the hottest cell against start_v. Circuit current: 1.25 × Isc × parallel against max_a (NEC 690.8(A), from a lesson on it).
/// Working current and power: Imp × parallel and Vmp × Imp × modules against max_a and max_w, beyond which an input that limits itself clips.
/// Precondition: check_pv_sheet(sheet). Assumes modules of one kind, orientation and irradiance; claims nothing for others.
[[nodiscard]] PvCheck check_pv(const PvSheet& sheet, const PvLimits& limits);

/// Voltages of the string at one cell temperature.
struct PvCurvePoint {
    double cell_c = 0;
    std::optional<double> voc_v, vmp_v;
};

/// From the coldest to the hottest cell (5 °C beyond each; −20 and 70 °C where not stated), every degree; by the same rules as check_pv.
[[nodiscard]] std::vector<PvCurvePoint> pv_curve(const PvSheet& sheet);

/// What can hurt, and who comes first: sentences for page, report and terminal.
[[nodiscard]] std::vector<std::string> pv_cautions();

} // namespace ullage
