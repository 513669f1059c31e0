// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "forecast/forecast.h"

#include <vector>

namespace ullage {

/// What to read next in a running drain and why, most urgent first: a cut-off that is past its range; a channel that was left out
/// at the last readings; when to begin to read often, and how often; which pair of readings would settle the question that is
/// open. `forecast` is filled but for its advice. Common practice, no source.
[[nodiscard]] std::vector<ReadingAdvice> reading_advice(const RunRecord& record, const RunForecast& forecast);

} // namespace ullage
