// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"
#include "model/run_record.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What was assumed of a register reading that does not simply continue the one before.
enum class RegisterCorrectionKind {
    marked_zero,    ///< the tester marked that the meter was zeroed
    marked_swap,    ///< the tester marked that another meter took over
    rollover,       ///< the register passed its span
    unmarked_reset, ///< the register started anew without a mark
    typing_error,   ///< the value fits neither its neighbours nor a reset; left out
    duplicate,      ///< same moment and same value as the reading before; left out
    late_entry,     ///< entered after readings of later moments; put in its place by time
    against_log,    ///< differs from the register of the log, which was used
    after_the_end,  ///< read after the cut-off of a drain: not counted, or taken as what the register showed then
};

/// "meter zeroed", "meter swapped", "rollover", "reset without a mark", "typing error", "entered twice", "entered late", "differs from
/// the log", "after the end".
[[nodiscard]] std::string_view register_correction_text(RegisterCorrectionKind kind);
/// The same for people.
[[nodiscard]] Message say_register_correction(RegisterCorrectionKind kind);

/// A gap without register as short as this has a place in the budget: notes go to the minute.
inline constexpr double complete_within_h = 2.0 / 60.0;

/// One assumption about the register, for the tester to accept or to correct.
struct RegisterCorrection {
    RegisterCorrectionKind kind;
    ReadingId reading_uuid;
    Message reason;                   ///< one sentence with the numbers that decided it
    std::optional<double> missing_wh; ///< estimate of energy that no reading covers, when there may be such
};

/// In place of a reading: the last sample of a log that goes on after the last reading of a run still running.
inline constexpr std::size_t no_reading = static_cast<std::size_t>(-1);

/// Delivered energy at one register reading.
struct RegisterPoint {
    std::size_t reading = 0; ///< index into the readings given, or no_reading
    UtcMs time_ms = 0;
    double register_wh = 0;  ///< as noted
    double delivered_wh = 0; ///< corrected energy since the first register reading of the run
};

/// A time without register that is too short to call energy missing: what may have flowed in it belongs into the budget.
struct ShortGap {
    double hours = 0;   ///< between the two noted moments
    double most_wh = 0; ///< highest load of the run x (hours + the doubt of a noted moment)
};

/// A time without register in which energy may be missing.
struct MissingGap {
    double hours = 0;
    double counted_wh = 0;  ///< that the register says of it all the same: what it counted anew since a reset within
    bool inside = true;     ///< between two register readings, not before the first or after the last
    std::size_t point = 0;  ///< of the track, at its end, where it is inside
    double estimate_wh = 0; ///< what the usual load took then beyond counted_wh; in the points from `point` on, where missing_most_wh says how much
                            ///< more it may be
};

/// One of the meters of a run. After a mark "meter swapped" the run's second meter measures, where it names one; after a further swap, or where it
/// names none, nothing is stated of the meter. `other`: one of RunRecord::other_logs, MeterPart::log.
enum class MeterOfRun { first, second, not_stated, other };

/// What one meter measured in a run, and what its data says of its gain over that. Within one meter the error is common to all of it, so that parts
/// of different loads add up.
struct MeterPart {
    MeterOfRun meter = MeterOfRun::not_stated;
    double register_wh = 0;                        ///< as its register says
    double delivered_wh = 0;                       ///< corrected
    double limit_wh = 0;                           ///< half-width of the rectangular part of its gain
    double u_wh = 0;                               ///< standard uncertainty of the normal part, from U/k
    double beyond_points_wh = 0;                   ///< of delivered_wh, at loads beyond those of its certificate
    double out_of_range_wh = 0;                    ///< of delivered_wh, at loads outside its range
    std::optional<double> lowest_w{}, highest_w{}; ///< loads, where points or a range ask for them
    bool is_stated = true;                         ///< limit or uncertainty are stated wherever energy flowed
    std::size_t log = 0;                           ///< of MeterOfRun::other
};

/// A time in which the log of another meter stood in for one that says nothing.
struct TakenOver {
    UtcMs from_ms = 0, to_ms = 0;
    MeterPart part;     ///< what that meter measured in it
    double u_wh = 0;    ///< standard uncertainty of its ends: its register's step or its power's, its samples, and the clocks of both logs
    std::string name{}; ///< of the meter; empty where the log names none
};

/// A track that the log of a meter gave (log_track.h).
struct LogUse {
    bool integrated = false; ///< from its power, as it has no register
    double step_wh = 0;      ///< of its register; 0 where power was integrated
    double power_step_w = 0;
    double u_sampling_wh = 0;            ///< of integrated power: what it did between samples
    double step_half_width_wh = 0;       ///< of integrated power: its steps, rectangular
    std::vector<double> u_wh;            ///< of each point of the track: interpolation, and the doubt of its moment
    std::vector<double> square_w2h;      ///< the integral of P squared up to each point
    long left_out = 0;                   ///< values of the register that fitted nothing
    std::vector<TakenOver> taken_over{}; ///< where it says nothing, in order of time
};

/// The register of a run, unwrapped.
struct RegisterTrack {
    std::vector<RegisterPoint> points; ///< in order of time, only readings that were used
    std::vector<RegisterCorrection> register_corrections;
    std::size_t segments = 0;           ///< stretches between resets; each adds two register readings to the budget
    std::size_t zero_starts = 0;        ///< segments whose start is a register set to exactly 0
    bool energy_may_be_missing = false; ///< inside, or before the first or after the last register reading
    bool missing_inside = false;        ///< between the first and the last register reading
    /// The most that may be missing, where the times without register are short beside the run: time × the most that the load took, less what the
    /// register says of it. Absent where they are not.
    std::optional<double> missing_most_wh{};
    double missing_estimate_wh = 0; ///< of it, what the points hold; 0 without missing_most_wh
    std::vector<MissingGap> missing_gaps;
    Message missing_reason;           ///< a clause that says where, when energy may be missing
    std::optional<LogUse> log;        ///< where it comes from a log; `points` then stand for every reading within the log, whatever it noted
    std::vector<MeterPart> meters;    ///< that measured some of it, each once
    std::vector<ShortGap> short_gaps; ///< before a marked zero or swap, before the first and after the last register reading

    [[nodiscard]] double total_wh() const { return points.empty() ? 0.0 : points.back().delivered_wh; }
    [[nodiscard]] bool usable() const { return points.size() >= 2; }
};

/// Highest believable mean load between two readings: 1.3 x rated output where stated (or peak output, if that is more),
/// else options.fallback_limit_w. W.
[[nodiscard]] double believable_load_w(const Unit& unit, const MeasureOptions& options);

/// Unwraps the register: marked zeros and swaps, rollovers (span known), unmarked resets, typing errors. A way to read the sequence has a
/// cost: a typing error 3, an unmarked reset 2 plus how far its implied load and those of the steps before and after it lie above the run's
/// usual load, a rollover 1/2; loads above believable_load_w are impossible. So a reset and a typing error are told apart by rate.
///
/// A dynamic programme goes from reading to reading and keeps for each the cheapest way that ends with it. That is the cheapest way of all as long
/// as no step is a reset. Next to a reset the cost of a step depends on the step before, so a way that was dearer up to a reading and would have come
/// out cheaper after it is not found. At most five typing errors in a row are believed, also at the start and the end; where a longer stretch of
/// nonsense leaves no way to the end, the way that comes farthest is taken and what follows is left out. Withdrawn readings
/// and readings without register are left out. `readings` in order of time.
///
/// Energy may be missing where the register was not read for more than 2 minutes (without a mark: where it was not read for that long about the
/// reset), unless the usual load would have taken less than half a register step then. A mark in the row of the first register reading after it says
/// that there was a reset, not when: what that reading shows came after it and is not missing. Shorter times are short_gaps; their load is the
/// highest mean over 10 minutes or between two readings.
///
/// What is missing lies between 0 and time × the most that the load took, less what the register counted. The most is the highest mean and as much
/// again as the lowest lies below it, at least 5 % and at most 30 % more (with fewer than three means 30 %), or a noted power that is higher. Where
/// that is at most a quarter of what was delivered, the points hold what the usual load took, so that one number stands everywhere. The
/// percentages are the program's own.
[[nodiscard]] RegisterTrack unwrap_register(const RunRecord& record, const MeasureOptions& options = {});

} // namespace ullage
