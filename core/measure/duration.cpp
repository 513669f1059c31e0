// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/energy_analysis.h"
#include "measure/inside/log_check.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

Quantity to_cut_off(const RunRecord& record, const CutOffMoment& moment, const MeasureOptions& options) {
    const bool bracket = moment.basis == CutOffBasis::bracket || (record.run.end == RunEnd::found_off && moment.basis != CutOffBasis::log);
    const double start_half_h = options.coverage * options.moment_doubt_min / 60;
    Quantity result =
        known("duration_h", "h", moment.estimate_h, std::nullopt, bracket ? Kind::bracket : Kind::measured,
              record.run.end == RunEnd::found_off ? say(phrase("measure", "the output was found off; %1"), moment.words) : moment.words);
    result.lower = moment.estimate_h - std::hypot(moment.estimate_h - moment.lower_h, start_half_h);
    result.upper = moment.estimate_h + std::hypot(moment.upper_h - moment.estimate_h, start_half_h);
    result.lower = std::max(*result.lower, 0.0);
    return result;
}

} // namespace

Quantity run_duration(const RunRecord& record, const RunScan& scan, const std::optional<CutOffMoment>& cut_off, const MeasureOptions& options) {
    const bool running = record.run.end == RunEnd::still_running;
    // A meter that is read live goes on after the last reading.
    const bool logged = running && record.trace && !record.trace->points.empty() && log_is_of_run_meter(record);
    const UtcMs last_ms = std::max(scan.last_ms.value_or(0), logged ? record.trace->points.back().time_ms : 0);
    if (!scan.first_ms || *scan.first_ms == last_ms) return not_known("duration_h", "h", say(phrase("measure", "fewer than two moments are noted")));
    if (cut_off) return to_cut_off(record, *cut_off, options);
    const UtcMs end_ms = scan.cut_off_ms.value_or(last_ms);
    // Two noted moments, each good to the minute: the 95 % half-width of a triangular distribution.
    const double half_width_h = 2 * options.moment_doubt_min / 60 * (1 - std::sqrt(1 - options.coverage));
    return known("duration_h", "h", hours_between(*scan.first_ms, end_ms), half_width_h, Kind::measured,
                 running ? say(phrase("measure", "so far")) : Message());
}

} // namespace ullage
