// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"
#include "trace/trace_reader.h"

#include <string>

namespace ullage {

/// What an estimate of the clock offset rests on.
enum class OffsetBasis {
    log_steps,          ///< steps of the log's power at those of the log of the run's meter
    gauge_values,       ///< when the log's gauge showed the values that were noted by hand
    register_crossings, ///< when the log's register passed the values that were noted by hand
    load_steps,         ///< steps of the log's power at the marks noted by hand
    cut_off,            ///< the last fall of the log's power, at the mark of the cut-off
};

/// How far the clock of a log is behind the hand readings.
struct ClockOffset {
    UtcMs offset_ms = 0; ///< to be added to the times of the log: TraceReadOptions::offset_ms
    double u_s = 0;      ///< standard uncertainty, s: TraceReadOptions::offset_u_s
    OffsetBasis basis = OffsetBasis::register_crossings;
    long matched = 0, tried = 0; ///< hand readings or marks that agree, and those that could have
    std::string sentence;        ///< "The log's clock is 0:03:12 behind the hand readings, ±0:00:36 (…)"
};

/// Estimates the clock offset of a log from the hand readings of its run; reads the whole log once, in a stream. options.offset_ms and offset_u_s
/// are not used, progress is.
///
/// Each hand reading of the register (at least two) gives the offsets under which the log's register passed that value at the noted moment: from half
/// a register step below it to one above, as rounding or truncation is unknown. Marks give those that bring a step of the power (of at least 5 W and
/// a fifth) to the noted moment, up to 48 h away. A moment noted to the minute is good to one minute, one noted to the second to 15 s. The
/// offset on which most agree counts, where no other does as well and more than half agree; the estimate is the mean of those that agree, weighted
/// by their widths. Its uncertainty holds half of the doubt of a moment as common to all of them, as a tester rounds or cuts off every time alike.
/// Each hand reading of the gauge (at least two) gives the offsets under which the log showed that value at the noted moment; the more often it was
/// noted, the better, and best near a step. Of a log of the unit, steps are those of its own output power.
/// Where the run has a log of its meter already, the steps of its power stand for marks that are known to the sample; of a load that cycles they are
/// looked for near what the gauge says.
/// Register first, then that log, then gauge, then steps (two marks at least), then the cut-off alone (of a log that ends under load only where it is
/// half as long as the run).
///
/// Errors: those of check_trace(); `refused` where nothing in the log and the hand readings tells.
[[nodiscard]] Result<ClockOffset> estimate_clock_offset(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options,
                                                        const RunRecord& record);

} // namespace ullage
