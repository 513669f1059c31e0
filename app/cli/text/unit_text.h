// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/unit_analysis.h"

#include <string>

namespace ullage {

/// What all drains of one unit say together, for a terminal: heading, quantities, drains used and left out with reasons, predictions
/// at round loads, the next run worth making, drift.
[[nodiscard]] std::string unit_text(const UnitAnalysis& analysis);

} // namespace ullage
