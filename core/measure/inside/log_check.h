// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room measure: what the files about logs share.
#pragma once

#include "measure/options.h"
#include "model/run_record.h"

#include <utility>
#include <vector>

namespace ullage {

/// Whether the log may stand for the run's register: it is of the run's meter, or one of the two names none. Precondition: record.trace.
[[nodiscard]] bool log_is_of_run_meter(const RunRecord& record);

/// The readings that are not withdrawn.
[[nodiscard]] std::vector<const Reading*> readings_kept(const RunRecord& record);

/// The gaps of power that reach into a stretch of time, cut to it.
[[nodiscard]] std::vector<PowerGap> gaps_within(const RunTrace& trace, UtcMs from_ms, UtcMs to_ms);

struct RegisterSample {
    UtcMs time_ms = 0;
    double wh = 0;
};

[[nodiscard]] std::vector<RegisterSample> register_samples(const RunTrace& trace);

/// Registers noted by hand against the log. One agrees where it lies within what the log's register shows about the moment, give or take a step.
/// One near a fall of the log's register, or in a gap of more than ten minutes, is not compared.
struct HandCheck {
    long compared = 0, agreeing = 0;
    std::vector<std::pair<const Reading*, double>> differing; ///< with what the log says
};

[[nodiscard]] HandCheck hand_check(const RunRecord& record, const MeasureOptions& options);

/// Longer than this without samples a register noted by hand stands in for the log.
inline constexpr UtcMs bridged_by_hand_ms = 10 * 60'000;

} // namespace ullage
