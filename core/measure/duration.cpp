// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

Quantity to_cut_off(const RunRecord& record, const CutOffMoment& moment, const MeasureOptions& options) {
    const bool bracket = moment.basis == CutOffBasis::bracket || (record.run.end == RunEnd::found_off && moment.basis != CutOffBasis::log);
    const double start_half_h = options.coverage * options.moment_doubt_min / 60;
    Quantity result = known("duration_h", "h", moment.estimate_h, std::nullopt, bracket ? Kind::bracket : Kind::measured,
                            (record.run.end == RunEnd::found_off ? "the output was found off; " : "") + moment.words);
    result.lower = moment.estimate_h - std::hypot(moment.estimate_h - moment.lower_h, start_half_h);
    result.upper = moment.estimate_h + std::hypot(moment.upper_h - moment.estimate_h, start_half_h);
    result.lower = std::max(*result.lower, 0.0);
    return result;
}

} // namespace

Quantity run_duration(const RunRecord& record, const RunScan& scan, const std::optional<CutOffMoment>& cut_off, const MeasureOptions& options) {
    if (!scan.first_ms || *scan.first_ms == *scan.last_ms) return not_known("duration_h", "h", "fewer than two moments are noted");
    if (cut_off) return to_cut_off(record, *cut_off, options);
    const UtcMs end_ms = scan.cut_off_ms.value_or(*scan.last_ms);
    // Two noted moments, each good to the minute: the 95 % half-width of a triangular distribution.
    const double half_width_h = 2 * options.moment_doubt_min / 60 * (1 - std::sqrt(1 - options.coverage));
    return known("duration_h", "h", hours_between(*scan.first_ms, end_ms), half_width_h, Kind::measured,
                 record.run.end == RunEnd::still_running ? "so far" : "");
}

} // namespace ullage
