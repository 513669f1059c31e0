// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <cstddef>
#include <vector>

namespace ullage {

/// Kinds of gauge that a forecast allows for, each by itself.
enum class GaugeFamily { honest, bent, end, fast, offset, blind, sticks, unknown };
inline constexpr std::size_t gauge_families = 8;

/// The prior of a family: its share, and the size of its fault at most. Within a family sizes are even. All common practice, no source: what gauges
/// of such units have been seen to do.
struct FamilyPrior {
    GaugeFamily family;
    double share;
    double most; ///< points; 0 where the family has no size
};

/// Beside each its law: s the value shown, q the depth from 0 to 1.
inline constexpr std::array<FamilyPrior, gauge_families> family_priors{{
    {GaugeFamily::honest, 0.25, 3}, // s = 100(1 - q) + 4b q(1 - q), b to ±3: charge for energy bulges by 2.2
    {GaugeFamily::bent, 0.20, 27},  // the same, b to ±27
    {GaugeFamily::end, 0.18, 27}, // s = 100 - (100 - z) q, z to ±27: ends early at z, or lingers at its lowest value for -z/(100 - z) of the content
    {GaugeFamily::fast, 0.06, 150},  // s = 100 - (100 + m) q, m from 30 to 150: falls up to 2.5 times too fast, then stays at its lowest value
    {GaugeFamily::offset, 0.10, 12}, // s = 100(1 - q) + o, o to ±12, shown within 0 and 100
    {GaugeFamily::blind, 0.07, 0},   // s = 100(1 - D/E*)
    {GaugeFamily::sticks, 0.10, 27}, // stands still at any value while it ought to fall by so much, then jumps or catches up within 10 points
    {GaugeFamily::unknown, 0.04, 0}, // anything from 0 to 100 %
}};

/// One law of a family with sizes given; what a gauge shows at each depth.
struct GaugeLawTried {
    GaugeFamily family = GaugeFamily::honest;
    double bend_pt = 0;
    double start_percent = 100, end_percent = 0;
    double stick_percent = 0, hold_pt = 0, catch_up_pt = 0; ///< stands still at stick_percent; hold_pt 0: never
    double weight = 1;                                      ///< all laws together: 1 less the share of `unknown`

    /// What it shows at depth q, within 0 and 100.
    [[nodiscard]] double shown(double q) const;
    /// The first depth at which it shows `percent` or less.
    [[nodiscard]] double depth_at(double percent) const;
};

/// Laws of every family but `unknown`, on even grids of their sizes.
[[nodiscard]] const std::vector<GaugeLawTried>& tried_laws();

} // namespace ullage
