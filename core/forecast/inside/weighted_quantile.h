// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <utility>
#include <vector>

namespace ullage {

/// Values, each with its weight (0 or more).
using WeightedValues = std::vector<std::pair<double, double>>;

/// Median and the two ends of the middle share of a distribution.
struct Spread {
    double lower = 0, middle = 0, upper = 0;
};

/// Quantiles (1 − coverage)/2, 1/2 and (1 + coverage)/2 of weighted values, straight between the middles of their weights. Absent
/// where the weights add up to 0. Precondition: values finite, coverage within 0 and 1.
[[nodiscard]] std::optional<Spread> spread_of(WeightedValues values, double coverage);
/// The same of values that are in order.
[[nodiscard]] std::optional<Spread> spread_of_sorted(const WeightedValues& values, double coverage);

} // namespace ullage
