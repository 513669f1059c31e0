// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>

namespace ullage {

/// Where the figure comes from by which drains are taken to repeat.
enum class RepeatabilitySource {
    usual,  ///< common practice, no source; how well it holds for these units nobody knows
    stated, ///< by the tester, who knows it
    pooled, ///< from the drains of this logbook that were repeated
};

/// What an analysis takes for granted where the logbook does not say.
struct MeasureOptions {
    double repeatability_percent = 0.5; ///< run-to-run standard uncertainty of delivered energy, % of it (between runs only)
    double moment_doubt_min = 1.0;      ///< half-width of the doubt of a noted time, minutes (notes go to the minute)
    double fallback_limit_w = 5000.0;   ///< highest believable load where the unit's rated output is not stated
    double coverage = 0.95;             ///< of every stated interval
    RepeatabilitySource repeatability_source = RepeatabilitySource::usual;
    std::size_t repeatability_degrees = 0; ///< degrees of freedom of a pooled figure
    /// The most that a battery is taken to hold, as a multiple of its label (common practice, no source). A soft bound: of a unit that delivered more
    /// than its label, as a multiple of that.
    double most_of_label = 1.10;
    /// The quadratic loss c lies between 0 and this over the rated output: the coefficient of the loss polynomial (Schmidt and Sauer 1996; terms of
    /// IEC 61683) is about 0.07 for ordinary inverters, and some lie above (common practice, no source).
    double most_quadratic_loss = 0.10;
    bool simple_acceptance = false; ///< a claim is decided by the value itself, not by its whole interval (JCGM 106:2012, 8.2)

    bool operator==(const MeasureOptions&) const = default;
};

} // namespace ullage
