// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "measure/options.h"
#include "model/run_record.h"

#include <string>

namespace ullage {

/// What an edit of a meter's data did to the delivered energy of the runs that it measured.
struct MeterChange {
    long runs = 0;                                  ///< that name the meter, first or second, and have a delivered energy
    double lowest_percent = 0, highest_percent = 0; ///< by how much their energy moved, % of what it was before
    bool intervals_moved = false;                   ///< some interval became wider, narrower, known or not known
    Message sentence; ///< "2 runs use this meter; their delivered energy moved by +0.40 %, and their intervals changed."
};

/// Works out the runs of `records` that name the meter (by uuid) with its data of before and of after. Time as that of two analyses of each run's
/// energy.
[[nodiscard]] MeterChange meter_change(const UnitRuns& records, const Meter& before, const Meter& after, const MeasureOptions& options = {});

} // namespace ullage
