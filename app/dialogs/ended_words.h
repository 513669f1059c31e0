// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"

#include <QString>

namespace ullage {

/// What a run says once it has ended, for the form that is about to end it: how long, how much, and of a drain which share of its label.
[[nodiscard]] QString ended_words(const RunRecord& ended, const RunAnalysis& analysis);

} // namespace ullage
