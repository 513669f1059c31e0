// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "model/run_record.h"

#include <vector>

namespace ullage {

/// The readings that tell a reset whole, where it is known what the register showed just before: one of that value, the mark "meter zeroed" with 0 Wh
/// at the same moment, and `after`, which was read some time later and is returned last, as it is. The moment of the reset is where a steady load
/// between the register reading before and `after` would have brought the register to `before_wh`: both parts then show the same load.
/// Errors: no register reading before `after`, `after` without a register, `before_wh` below that reading, or more than believable_load_w() would
/// have brought since.
[[nodiscard]] Result<std::vector<ReadingValues>> readings_of_reset(const RunRecord& record, const ReadingValues& after, double before_wh);

} // namespace ullage
