// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/meter.h"

#include <optional>

namespace ullage {

/// What is stated of a meter's gain at one load: true energy = correction × register difference, and how far that is known.
struct MeterGain {
    double correction = 1.0;
    /// Half-width of the error that is left, % of reading, any value within it as likely as another (JCGM 100:2008, 4.3.7); absent where `u_percent`
    /// or nothing is stated.
    std::optional<double> limit_percent{};
    /// Standard uncertainty U/k of a calibration, % of reading, normal (JCGM 100:2008, 4.3.3).
    std::optional<double> u_percent{};
    /// The load lies below the lowest or above the highest point of its certificate: the nearest point is taken.
    bool beyond_points = false;

    [[nodiscard]] bool is_stated() const { return limit_percent || u_percent; }
    /// Standard uncertainty, % of reading: limit/√3, or u. 0 where nothing is stated.
    [[nodiscard]] double standard_percent() const;
};

/// The gain at `load_w`. Without points: the meter's correction and error limit, at every load. With points: both are interpolated, straight
/// between the two points around the load; U/k is taken where both have it, else the rectangle that is the wider of the two. A point without U
/// has the meter's error limit. Beyond the outermost points the nearest one holds.
[[nodiscard]] MeterGain gain_at(const Meter& meter, double load_w);

/// Half-width of a rectangle that holds 95 % where the gain does: the limit, else 1.96 u / 0.95. % of reading; absent where nothing is stated.
[[nodiscard]] std::optional<double> bounding_percent(const MeterGain& gain);

/// What bounds the meter's error at every load, % of reading: the error limit, or the widest bounding_percent() of its points. Absent where some load
/// has none.
[[nodiscard]] std::optional<double> error_limit_percent(const Meter& meter);

/// The correction for what needs no better than some percent, such as the size of a register step in true energy: the mean of the points, else the
/// one correction; 1 without a meter.
[[nodiscard]] double typical_correction(const std::optional<Meter>& meter);

} // namespace ullage
