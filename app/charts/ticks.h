// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <vector>

namespace ullage {

/// A scale's end values and the values that carry a grid line and a label.
struct TickScale {
    double minimum = 0;
    double maximum = 1;
    double step = 1; ///< distance of the ticks of a linear scale; 0 on a logarithmic one
    std::vector<double> values;
};

/// Smallest of 1, 2, 5 times a power of ten that is not below `raw`. Precondition: raw > 0, finite.
[[nodiscard]] double nice_step(double raw);

/// Linear scale over [lo, hi] with at most `most` steps; ends moved outwards to whole steps if `widen`, else kept
/// with ticks inside. Equal or reversed ends are spread, non-finite ones read as 0 to 1. Precondition: most >= 1.
[[nodiscard]] TickScale linear_ticks(double lo, double hi, int most, bool widen);

/// linear_ticks() of hours: from one hour on steps of 1, 2, 3, 6, 12 or 24 hours, then of whole days.
[[nodiscard]] TickScale hour_ticks(double lo, double hi, int most, bool widen);

/// Logarithmic scale over [lo, hi], 0 < lo < hi: ticks at 1, 2, 5 times powers of ten, thinned to decades when more
/// than `most`; ends moved outwards to such values if `widen`. Ends that are not positive are read as 1 to 10.
[[nodiscard]] TickScale log_ticks(double lo, double hi, int most, bool widen);

/// `value` with the digits that tell ticks `step` apart; `step` 0 means as many as the value needs (at most 6).
[[nodiscard]] QString tick_text(double value, double step);

} // namespace ullage
