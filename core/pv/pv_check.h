// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/limits.h"
#include "model/pv_sheet.h"
#include "model/unit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// What a unit's PV input takes, as its maker states it; absent: not stated. Three limits of current and power are three things: what it works
/// with, what a short circuit may bring, what it turns into charge.
struct PvLimits {
    std::optional<double> max_v, max_a, max_w; ///< open circuit; operating current; power
    std::optional<double> start_v;             ///< lowest voltage at which it starts and tracks
    std::optional<double> short_circuit_a{};   ///< short-circuit current that it withstands
};
[[nodiscard]] PvLimits pv_limits(const Unit& unit);

/// Tolerance of a module's voltages where none is stated, % (common practice, no source: labels of modules print ±3 % of Voc).
inline constexpr double usual_voc_tolerance_percent = 3;
/// A stated tolerance lies between 0 and this, %.
inline constexpr double most_voc_tolerance_percent = voltage_tolerance_range.highest;

/// The answer, gravest first: the first that holds.
enum class PvVerdict {
    over_voltage_when_cold, ///< as calculated, without any tolerance
    over_short_circuit,     ///< the circuit current exceeds the stated short-circuit limit
    ask_before_connecting,  ///< more current than the limit that is stated, and nothing says that the input withstands it
    too_close,              ///< a voltage is inside its limit as calculated, and beyond it with the module's tolerance
    too_low_when_hot,
    not_known, ///< a comparison could not be made
    clips,     ///< every comparison was made, and power alone lies above its limit
    fits,      ///< every comparison was made, and each is inside
};
/// "over_voltage_when_cold", "over_short_circuit", … as they are named above; for JSON.
[[nodiscard]] std::string_view pv_verdict_key(PvVerdict verdict);
/// Whether connecting can destroy the input: the first two.
[[nodiscard]] bool is_danger(PvVerdict verdict);

/// A figure that a comparison lacks: "Isc" of "the module".
struct PvMissing {
    Message what, of;

    bool operator==(const PvMissing&) const = default;
};

/// One comparison of the string or array with a limit.
///
/// One rule with outcomes on the safe side of JCGM 106:2012, 8.3 (guarded acceptance): `good` where the value stays inside its limit with the whole
/// tolerance of the module, `bad` (of currents `ask`, of power `clips`) where it lies beyond as calculated, `too_close` between the two. Currents
/// have the factor 1.25 of NEC 690.8 in place of a tolerance, power has none.
struct PvComparison {
    enum class Outcome { good, clips, bad, not_known, ask, too_close };
    std::string key;  ///< "cold_voltage", "hot_voltage", "working_current", "circuit_current", "power"
    Message title;    ///< "voltage when cold"
    std::string unit; ///< "V", "A", "W"
    std::optional<double> value, limit;
    std::optional<double> margin; ///< how far inside the limit as calculated; negative beyond it
    Outcome outcome = Outcome::not_known;
    Message sentence;                 ///< what the value rests on, or what is missing
    std::optional<double> worst{};    ///< of voltages: the value with the module's tolerance against it
    std::vector<PvMissing> missing{}; ///< what it lacks; empty where it was made
};
/// "inside", "clipped", "beyond", "not known", "above: ask", "too close to call": as files for machines have it.
[[nodiscard]] std::string_view pv_outcome_text(PvComparison::Outcome outcome);
/// The same for people.
[[nodiscard]] Message say_pv_outcome(PvComparison::Outcome outcome);

/// What was found. Voltages of the string in V, currents and power of the whole array in A and W.
struct PvCheck {
    PvVerdict verdict = PvVerdict::not_known;
    Message verdict_text;                        ///< in words; what is missing is part of it: "not known: Isc of the module is missing"
    Message headline;                            ///< the verdict in sentences with its figures
    std::vector<PvComparison> comparisons;       ///< in the order of their keys above
    std::vector<PvMissing> missing;              ///< of all comparisons, each once
    std::optional<double> cold_voc_v, hot_vmp_v; ///< of the string, as calculated
    std::optional<double> hot_cell_c;
    std::optional<double> standard_w, hot_w; ///< of the array; hot_w needs the coefficient of power
    std::optional<double> conductor_a;       ///< 1.25 × 1.25 × Isc of one string
    double voc_tolerance_percent = usual_voc_tolerance_percent;
    std::optional<double> reverse_a;                 ///< from three strings on: what the others feed into a faulty one, (strings − 1) × Isc
    std::optional<double> least_fuse_a, most_fuse_a; ///< likewise: 1.5 and 2.4 × Isc
    Message string_fuses;                            ///< from three strings on: that each needs a fuse, in a sentence
    std::optional<int> least_series;                 ///< modules that reach the start voltage when hot, tolerance counted
    std::optional<int> largest_series;               ///< that stay within the voltage limit when cold, tolerance counted; 0: not even one
    std::optional<int> largest_parallel;             ///< strings whose currents stay within their limits; 0: not even one
    Message suggestion;                              ///< the longest string and the most strings within the limits, in a sentence
    std::vector<Message> assumptions;                ///< what was taken for granted
};

/// Compares a sheet with the limits of a PV input, by the rule of PvComparison.
///
/// Voltage when cold: series × cold_voltage(), with the tolerance, against max_v, equality allowed (NEC 690.7(A); IEC 62548, maximum voltage of the
/// array). Voltage when hot: series × Vmp at the hottest cell, less the tolerance, against start_v. Operating current: Imp × parallel against max_a.
/// Short-circuit current: 1.25 × Isc × parallel (NEC 690.8(A)(1)) against short_circuit_a; where that is not stated, against max_a, below which no
/// short-circuit limit lies, and beyond which nothing is known. More current than stated is never clipping. Power: Vmp × Imp × modules against
/// max_w, beyond which an input clips. Three strings or more: fuses by IEC 62548:2016 (a fuse of 1.5 to 2.4 × Isc in each string, as a
/// published example of an array quotes it; see the test).
/// Precondition: check_pv_sheet(sheet). Assumes modules of one kind, orientation and irradiance; claims nothing for others.
[[nodiscard]] PvCheck check_pv(const PvSheet& sheet, const PvLimits& limits);

/// The rule of PvComparison in a sentence for people.
[[nodiscard]] Message pv_decision_rule();

/// Voltages of the string at one cell temperature.
struct PvCurvePoint {
    double cell_c = 0;
    std::optional<double> voc_v, vmp_v;
};

/// From the coldest to the hottest cell (5 °C beyond each; −20 and 70 °C where not stated), every degree; by the same rules as check_pv.
[[nodiscard]] std::vector<PvCurvePoint> pv_curve(const PvSheet& sheet);

/// What can hurt, and who comes first: sentences for page, report and terminal.
[[nodiscard]] std::vector<Message> pv_cautions();

} // namespace ullage
