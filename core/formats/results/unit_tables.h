// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"
#include "unit/unit_analysis.h"

namespace ullage {

/// What a unit is expected to deliver at each of its predicted loads: load, deliverable, usable fraction, run time, and whether the load lies between
/// those tested. No rows while its drains do not tell E* from P*.
[[nodiscard]] Table predictions_table(const UnitAnalysis& unit);

} // namespace ullage
