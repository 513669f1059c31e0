// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/pairing.h"
#include "measure/register.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace ullage {

/// "meter zeroed" or "meter swapped", between a register reading and the one before it (or in its own row).
struct RegisterMark {
    std::size_t node = 0; ///< index into RunScan::registers
    MarkKind mark = MarkKind::meter_zeroed;
    UtcMs mark_ms = 0;
};

/// A time with the output off, from "output tripped" to "output reset"; without a reset to the last reading.
struct OffSpan {
    UtcMs from_ms = 0, to_ms = 0;
    bool was_reset = true;
};

/// Two gauge readings of which the later shows more: neighbours among the run's readings, or what a log showed.
struct GaugeRise {
    std::size_t before = 0, after = 0; ///< indices into the run's readings, or no_reading
    UtcMs before_ms = 0, after_ms = 0;
    double before_percent = 0, after_percent = 0;
};

/// What an analysis needs of the readings of a run, picked out in one pass, as a logging meter's trace has a million readings of 200 bytes and
/// more. Withdrawn readings are left out. Memory: 80 bytes a reading with both gauge and register.
struct RunScan {
    std::vector<RegisterPoint> registers; ///< delivered_wh not filled; second entries of the same moment and value are left out
    std::vector<RegisterMark> marks;      ///< in order of node
    std::vector<std::size_t> duplicates;  ///< readings that are second entries
    std::vector<PairedPoint> gauges;      ///< every gauge reading; delivered energy not filled
    std::vector<GaugeRise> rises;         ///< by at least two gauge steps
    std::vector<OffSpan> output_off;
    std::optional<UtcMs> first_ms, last_ms, before_last_ms; ///< before_last_ms: the last moment before last_ms
    std::optional<UtcMs> cut_off_ms;                        ///< the first mark "cut-off"
    /// Of a drain, where nothing after that mark counts: the register reading after it that stands for the one missing at the mark, and the last
    /// one after it that shows more than the register did at the mark.
    std::optional<std::size_t> register_read_late, register_went_on;
    bool noted_after_the_end = false; ///< of a drain: readings after that mark, which are in none of the moments above
    bool entered_in_order = true;
    bool row_before_register = false, row_after_register = false; ///< a reading without register before the first or after the last one
};

/// One pass over the readings of a run, in order of time; withdrawn ones are left out.
[[nodiscard]] RunScan scan_run(const RunRecord& record);

/// As the functions of the same names (register.h, pairing.h), which scan the run themselves; each takes its part of the scan, which is empty after.
[[nodiscard]] RegisterTrack unwrap_register(const RunRecord& record, RunScan& scan, const MeasureOptions& options);
[[nodiscard]] std::vector<PairedPoint> pair_gauge(RunScan& scan, const RegisterTrack& track, const MeasureOptions& options);

} // namespace ullage
