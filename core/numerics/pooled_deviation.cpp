// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/pooled_deviation.h"

#include <cmath>
#include <numeric>

namespace ullage {

PooledDeviation pooled_deviation(std::span<const std::vector<double>> groups) {
    PooledDeviation pooled;
    double squares = 0;
    for (const std::vector<double>& group : groups) {
        if (group.size() < 2) continue;
        const auto n = static_cast<double>(group.size());
        const double first_mean = std::accumulate(group.begin(), group.end(), 0.0) / n;
        double sum = 0, sum_of_squares = 0;
        for (const double value : group) {
            sum += value - first_mean;
            sum_of_squares += (value - first_mean) * (value - first_mean);
        }
        // What rounding left in the first mean.
        squares += sum_of_squares - sum * sum / n;
        pooled.degrees_of_freedom += group.size() - 1;
        ++pooled.groups;
    }
    if (pooled.degrees_of_freedom > 0) pooled.deviation = std::sqrt(squares / static_cast<double>(pooled.degrees_of_freedom));
    return pooled;
}

} // namespace ullage
