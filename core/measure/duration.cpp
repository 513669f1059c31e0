// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "measure/budget.h"
#include "measure/energy_analysis.h"
#include "measure/inside/log_energy.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr double steady_within = 0.10; ///< interval means of a steady load differ by no more than this
constexpr std::size_t steady_intervals = 5;

struct SteadyLoad {
    double mean_w = 0, lowest_w = 0, highest_w = 0;
};

/// The load of the last few intervals before `until_ms`, when it was steady.
std::optional<SteadyLoad> steady_load(const RegisterTrack& track, UtcMs until_ms) {
    std::vector<double> loads;
    for (std::size_t i = track.points.size(); i-- > 1 && loads.size() < steady_intervals;) {
        const RegisterPoint& a = track.points[i - 1];
        const RegisterPoint& b = track.points[i];
        if (b.time_ms > until_ms || b.time_ms <= a.time_ms) continue;
        loads.push_back((b.delivered_wh - a.delivered_wh) / hours_between(a.time_ms, b.time_ms));
    }
    if (loads.size() < 3) return std::nullopt;
    const auto [low, high] = std::ranges::minmax_element(loads);
    if (*low <= 0 || *high - *low > steady_within * *high) return std::nullopt;
    double sum = 0;
    for (double load : loads) sum += load;
    return SteadyLoad{sum / static_cast<double>(loads.size()), *low, *high};
}

double delivered_at(const RegisterTrack& track, UtcMs time_ms) {
    double delivered_wh = 0;
    for (const RegisterPoint& point : track.points)
        if (point.time_ms <= time_ms) delivered_wh = point.delivered_wh;
    return delivered_wh;
}

/// The bracket by a log that saw the power cease after the last reading with the output on; absent without one.
std::optional<Quantity> ceased_in_log(const RunRecord& record, UtcMs first, UtcMs last_on, UtcMs found, const MeasureOptions& options) {
    if (!record.trace || !record.trace->has_power || !record.trace->off_ms) return std::nullopt;
    const RunTrace& trace = *record.trace;
    const auto doubt = static_cast<UtcMs>(std::llround(log_moment_doubt_ms(trace, options)));
    if (*trace.last_on_ms < last_on - doubt || *trace.last_on_ms > found + doubt) return std::nullopt;
    const UtcMs ceased_by = std::max(*trace.off_ms, *trace.last_on_ms + trace.longest_off_ms);
    const double lower_h = hours_between(first, std::max(*trace.last_on_ms - doubt, last_on));
    const double upper_h = std::max(lower_h, hours_between(first, std::min(ceased_by + doubt, found)));
    return known("duration_h", "h", (lower_h + upper_h) / 2, (upper_h - lower_h) / 2, Kind::bracket,
                 "the output was found off; the power in the log ceased at " + clock_text(*trace.last_on_ms, record.run.time_zone));
}

Quantity found_off(const RunRecord& record, const RegisterTrack& track, UtcMs first, UtcMs last_on, UtcMs found) {
    double lower_h = hours_between(first, last_on);
    double upper_h = hours_between(first, found);
    std::string reason = "the output was found off; between the last reading with it on and the moment found";
    const bool read_at_last_on = std::ranges::any_of(track.points, [&](const RegisterPoint& p) { return p.time_ms == last_on; });
    if (const auto load = steady_load(track, last_on); load && read_at_last_on) {
        const double after_wh = track.total_wh() - delivered_at(track, last_on);
        const double step_wh = register_step_wh(record);
        const double narrowed_lower = lower_h + std::max(0.0, after_wh - step_wh) / load->highest_w;
        const double narrowed_upper = lower_h + (after_wh + step_wh) / load->lowest_w;
        if (narrowed_lower <= upper_h) {
            upper_h = std::min(upper_h, narrowed_upper);
            lower_h = std::min(narrowed_lower, upper_h);
            reason += ", narrowed by the " + fixed_text(after_wh, 0) + " Wh that a steady load of " + fixed_text(load->mean_w, 0) +
                      " W took after that reading";
        }
    }
    Quantity result = known("duration_h", "h", (lower_h + upper_h) / 2, (upper_h - lower_h) / 2, Kind::bracket, std::move(reason));
    return result;
}

} // namespace

Quantity run_duration(const RunRecord& record, const RunScan& scan, const RegisterTrack& track, const MeasureOptions& options) {
    if (!scan.first_ms || *scan.first_ms == *scan.last_ms) return not_known("duration_h", "h", "fewer than two moments are noted");
    const bool off_since_unseen = !scan.cut_off_ms || *scan.cut_off_ms == *scan.last_ms;
    if (record.run.end == RunEnd::found_off && scan.before_last_ms && off_since_unseen) {
        if (auto seen = ceased_in_log(record, *scan.first_ms, *scan.before_last_ms, *scan.last_ms, options)) return std::move(*seen);
        return found_off(record, track, *scan.first_ms, *scan.before_last_ms, *scan.last_ms);
    }
    const UtcMs end_ms = scan.cut_off_ms.value_or(*scan.last_ms);
    // Two noted moments, each good to the minute: the 95 % half-width of a triangular distribution.
    const double half_width_h = 2 * options.moment_doubt_min / 60 * (1 - std::sqrt(1 - options.coverage));
    return known("duration_h", "h", hours_between(*scan.first_ms, end_ms), half_width_h, Kind::measured,
                 record.run.end == RunEnd::still_running ? "so far" : "");
}

} // namespace ullage
