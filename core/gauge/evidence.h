// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "gauge/finding.h"
#include "measure/energy_analysis.h"
#include "model/ids.h"

#include <string>
#include <vector>

namespace ullage {

/// What every finding looks at: the paired points of one drain and the scale of its gauge.
///
/// The central idea: a gauge that is linear in stored energy falls between two points by the share
/// (dD + P* dt) / (D + P* T) of its whole fall, whatever the no-load draw P* >= 0 is; that share lies between
/// dD/D and dt/T. A finding needs a fall outside these two bounds, so load changes and idle hours convict nobody.
struct GaugeEvidence {
    const RunRecord& record;
    const EnergyAnalysis& energy;
    const MeasureOptions& options;
    double step_pt = 1;          ///< gauge step
    double fall_pt = 0;          ///< first minus last paired gauge
    double delivered_wh = 0;     ///< between them
    double hours = 0;            ///< between them
    double register_step_wh = 1; ///< see register_step_wh() of the budget

    /// True when the fall and the energy are large enough to judge by (at least 5 gauge steps, 4 points).
    [[nodiscard]] bool judgeable() const;

    /// Bounds of an honest fall between two paired points, points.
    struct Fall {
        double least_pt = 0, most_pt = 0, by_energy_pt = 0;
    };
    [[nodiscard]] Fall honest_fall(std::size_t from, std::size_t to) const;

    /// Standard uncertainty of a fall between two paired points that comes from the energy side, points.
    [[nodiscard]] double u_fall_pt(std::size_t from, std::size_t to) const;

    /// Wh that one point stands for, end to end. Precondition: fall_pt > 0.
    [[nodiscard]] double wh_per_point() const { return delivered_wh / fall_pt; }

    [[nodiscard]] const ReadingId& reading_uuid(std::size_t point) const;
    /// Of the points from `from` to `to`, both included; of more than 1000 points only that many, spread evenly.
    [[nodiscard]] std::vector<ReadingId> reading_uuids(std::size_t from, std::size_t to) const;
    [[nodiscard]] std::string clock_at(std::size_t point) const;
};

/// How far a perfect charge-counting gauge may differ in slope from one that counts energy: 15 % (from the cell data
/// set B0005 of NASA Ames, whose share of charge per share of energy runs from 0.93 to 1.15 along a discharge).
inline constexpr double honest_slope_spread = 0.15;

/// From so many points on a fault of the gauge is a fault; below, a doubt.
inline constexpr double fault_from_pt = 5.0;
/// A smaller size than this is no finding, whatever the gauge's step.
inline constexpr double least_size_pt = 3.0;
/// At and below it the gauge has nothing left to show.
inline constexpr double bottom_percent = 1.0;
/// A jump falls at least so many times as steeply as an accurate gauge; a bent one is steep too, but not that steep in one place.
inline constexpr double jump_steepness = 1.5;
/// Readings that a finding names at most, spread evenly.
inline constexpr std::size_t most_uuids = 1000;

/// The reading that a paired point is of; of one that a log showed, the note before it, or the first.
[[nodiscard]] const ReadingId& reading_uuid_at(const RunRecord& record, const PairedPoint& point);

[[nodiscard]] GaugeEvidence gather_evidence(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options);

/// "17 points", "1 point", "2.5 points".
[[nodiscard]] Message say_points(double points);
/// "71 %".
[[nodiscard]] Message say_gauge(double percent);

} // namespace ullage
