// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "model/meter.h"
#include "model/pv_sheet.h"
#include "model/reading.h"
#include "model/run.h"
#include "model/unit.h"

namespace ullage::store {

/// What no logbook may hold, as bad_input naming the field: a unit, meter or PV sheet without a name, a number that is
/// not finite, tags that sorted_tags() would not give or that tags_from() refuses. Whether a value is plausible is not judged here.
[[nodiscard]] Result<void> check(const Unit& unit);
[[nodiscard]] Result<void> check(const Meter& meter);
[[nodiscard]] Result<void> check(const Run& run);
[[nodiscard]] Result<void> check(const ReadingValues& values);
/// Refuses counts of modules below 1 besides.
[[nodiscard]] Result<void> check(const PvSheet& sheet);

} // namespace ullage::store
