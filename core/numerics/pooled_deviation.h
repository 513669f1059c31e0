// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace ullage {

/// The scatter of values within groups, each about the mean of its own group.
struct PooledDeviation {
    double deviation = 0;               ///< sqrt(sum of squares within groups / degrees of freedom); 0 without degrees of freedom
    std::size_t degrees_of_freedom = 0; ///< sum of n − 1
    std::size_t groups = 0;             ///< of two values or more
};

/// Pooled experimental standard deviation (JCGM 100:2008, 4.2.4 and H.5.2.1; the square is the mean square within groups of a one-way analysis of
/// variance). Groups of one value say nothing. Sums are taken about a first mean, so that leading digits that all values share do no harm.
[[nodiscard]] PooledDeviation pooled_deviation(std::span<const std::vector<double>> groups);

} // namespace ullage
