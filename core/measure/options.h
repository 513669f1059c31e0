// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage {

/// What an analysis takes for granted where the logbook does not say.
struct MeasureOptions {
    double repeatability_percent = 0.5; ///< run-to-run standard uncertainty of delivered energy, % of it (between runs only)
    double moment_doubt_min = 1.0;      ///< half-width of the doubt of a noted time, minutes (notes go to the minute)
    double fallback_limit_w = 5000.0;   ///< highest believable load where the unit's rated output is not stated
    double coverage = 0.95;             ///< of every stated interval
};

} // namespace ullage
