// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run_record.h"

namespace ullage {

/// Alike in all that an analysis or a sheet takes from them.
[[nodiscard]] inline bool same_record(const RunRecord& a, const RunRecord& b) {
    return a.unit == b.unit && a.meter == b.meter && a.second_meter == b.second_meter && a.run == b.run && a.number == b.number &&
           a.readings == b.readings;
}

} // namespace ullage
