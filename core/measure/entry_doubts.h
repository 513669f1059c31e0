// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"
#include "model/run_record.h"

#include <string>
#include <vector>

namespace ullage {

/// Why a new reading should be looked at again before it is written down.
enum class DoubtKind {
    run_ended,          ///< the run is no longer running
    in_future,          ///< the time lies more than the doubt of a noted moment after the present
    before_last,        ///< the time lies before the last reading
    gauge_rose,         ///< the gauge shows more than before (in a charge run: less)
    register_fell,      ///< the register shows less than before, without a mark and without a believable rollover
    register_overtakes, ///< the register shows more than a later reading
    too_much_power,     ///< the register rose, or a power was typed, beyond what unit and load can do
    tenfold_load,       ///< a tenth of the register would go on as before: a digit too many
};

/// Which part of a reading a doubt is about.
enum class DoubtedPart { run, time, gauge, register_value, meter_power, display_power };

/// One doubt with the numbers that raise it.
struct Doubt {
    DoubtKind kind;
    Message sentence; ///< for people, without an end that asks
    DoubtedPart part = DoubtedPart::run;
};

/// Doubts of `values` as a new reading of `record`, seen at `now_ms`; empty when nothing is odd. Compares with the readings
/// before and after its time that are not withdrawn. Power from the register is taken over the time between the two
/// readings and twice options.moment_doubt_min (both times are noted to the minute) and held against believable_load_w().
/// A register that rises over 5 times as fast as between the two readings before is doubted too where a tenth of it would go on as before: a digit
/// too many does that. A meter_zeroed or meter_swapped mark explains any register value.
[[nodiscard]] std::vector<Doubt> entry_doubts(const RunRecord& record, const ReadingValues& values, UtcMs now_ms, const MeasureOptions& options = {});

} // namespace ullage
