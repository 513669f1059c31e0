// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room comparison.
#pragma once

#include "comparison/fair_comparison.h"
#include "numerics/monte_carlo.h"

#include <limits>
#include <map>
#include <optional>
#include <string>

namespace ullage {

/// A deliverable energy taken apart into what it owes to each meter's gain and what is its own.
struct ComparedEnergy {
    double energy_wh = 0;
    double independent_wh = 0;                        ///< standard uncertainty without gains
    std::map<std::string, double> gain_half_width_wh; ///< by meter key, with sign: where the meter's limit moves the energy
    double load_w = 0, load_part_wh = 0; ///< of a single drain: its load, and the half-width of its meter's error that is this load's own
    double degrees_of_freedom = std::numeric_limits<double>::infinity(); ///< of independent_wh; finite where repeats or a pool settle it
    bool pooled = false; ///< those are of a scatter pooled over units, which both sides of a difference share
};

/// The deliverable energy of a row at the common load. Absent where it has no interval; `why` then says so.
[[nodiscard]] std::optional<ComparedEnergy> compared_energy_of(const Comparison& comparison, const FairComparison& fair, std::size_t row,
                                                               Message& why);

/// Half-width of the interval of a·x − b·y.
[[nodiscard]] double difference_half_width(const ComparedEnergy& x, double a, const ComparedEnergy& y, double b, double coverage);

/// True when |difference| exceeds difference_half_width() of the coverage that `beyond` was made for.
[[nodiscard]] bool is_beyond_half_width(double difference, const ComparedEnergy& x, double a, const ComparedEnergy& y, double b,
                                        const BeyondHalfWidth& beyond);

/// True when both owe something to one meter.
[[nodiscard]] bool share_a_meter(const ComparedEnergy& x, const ComparedEnergy& y);

} // namespace ullage
