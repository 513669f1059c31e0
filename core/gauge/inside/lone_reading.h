// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room gauge.
#pragma once

#include "gauge/share_bounds.h"

#include <optional>
#include <vector>

namespace ullage {

/// What a slip of the pen made of a gauge reading: two digits changed over, one left out or one written twice. Gives the value nearest to the middle
/// of `low` to `high` that a slip turns into `shown`; absent where none lies in that range. Whole percents only. Common practice, no source.
[[nodiscard]] std::optional<double> slip_of_pen(double shown, double low, double high);

/// Paired points whose reading may be mistyped: a slip of the pen turns a value into it that fits what is around it: the readings before and after
/// it, and the share bounds where there are some. Runs with more than 200 readings have none: no single one decides there.
struct SlipCandidate {
    std::size_t point = 0;
    double meant_percent = 0;
};
[[nodiscard]] std::vector<SlipCandidate> slip_candidates(const EnergyAnalysis& energy, const std::vector<ShareBound>& bounds, double gauge_step_pt);

} // namespace ullage
