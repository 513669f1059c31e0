// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "unit/loss_split.h"

#include <string>

namespace ullage {

/// What one run says, for a terminal: heading, quantities with interval, kind and reason, what was assumed of the register, the
/// uncertainty budget, the interval table, where the energy went, the findings.
[[nodiscard]] std::string analysis_text(const RunRecord& record, const RunAnalysis& analysis, const LossSplit& split);

} // namespace ullage
