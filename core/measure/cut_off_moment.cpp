// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/cut_off_moment.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/clauses.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_energy.h"
#include "model/meter_gain.h"
#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace ullage {
namespace {

constexpr double steady_share = 0.10;            ///< means of the intervals of a steady load lie within this of each other
constexpr std::size_t most_steady_intervals = 5; ///< that tell the load before the end
constexpr double least_spread = 0.003;           ///< relative, of any load that is called steady
constexpr double agrees_within = 2;              ///< standard uncertainties, of load and notes
constexpr double beyond_doubt = 3;               ///< standard uncertainties: further off, the load was another one at the end

/// What is noted about the end of a run.
struct NotedEnd {
    UtcMs start_ms = 0, last_on_ms = 0, noted_ms = 0;
    UtcMs logged_on_ms = 0;           ///< a log shows it on up to here; 0 where none tells
    bool found = false;               ///< off, by somebody who came later
    std::optional<double> within_min; ///< as the run states

    [[nodiscard]] double hours(UtcMs time_ms) const { return hours_between(start_ms, time_ms); }
    /// From when on it may have gone off, h.
    [[nodiscard]] double earliest_h() const {
        const double last_on_h = hours(std::max(last_on_ms, logged_on_ms));
        if (!within_min && found) return last_on_h;
        return std::max(last_on_h, hours(noted_ms) - within_min.value_or(noticed_within_min) / 60);
    }
};

std::optional<NotedEnd> noted_end(const RunRecord& record, const RunScan& scan) {
    const bool found = record.run.end == RunEnd::found_off;
    if (!found && record.run.end != RunEnd::cut_off_seen) return std::nullopt;
    if (record.run.kind != RunKind::drain && record.run.kind != RunKind::no_load_drain) return std::nullopt;
    if (!scan.first_ms || !scan.before_last_ms) return std::nullopt;
    NotedEnd end{*scan.first_ms, *scan.before_last_ms, scan.cut_off_ms.value_or(*scan.last_ms), 0, found, record.run.end_noticed_within_min};
    // A mark before the last reading was put there by somebody who saw it happen.
    if (scan.noted_after_the_end) end.found = false;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.time_ms < end.noted_ms) end.last_on_ms = reading.values.time_ms;
    if (end.noted_ms <= end.start_ms) return std::nullopt;
    // The last note found it on: by the log it was off only where that says so.
    if (record.trace && record.trace->on_past_notes && !scan.cut_off_ms) {
        end.last_on_ms = end.noted_ms;
        end.noted_ms = std::max(end.noted_ms, record.trace->points.back().time_ms);
    }
    return end;
}

/// Up to when a log shows the output on, whether or not it saw it go off: its last sample with power, or the last before its register rose once more.
UtcMs on_until_ms(const RunTrace& trace) {
    if (trace.has_power) return trace.last_on_ms.value_or(0);
    const std::vector<RegisterSample> samples = register_samples(trace);
    for (std::size_t i = samples.size(); i-- > 1;)
        if (samples[i].wh > samples[i - 1].wh) return samples[i - 1].time_ms;
    return 0;
}

void look_into_logs(const RunRecord& record, const MeasureOptions& options, NotedEnd& end) {
    const auto minute_ms = static_cast<UtcMs>(std::llround(options.moment_doubt_min * 60'000)); // what a noted moment is good to
    const auto look = [&](const RunTrace& trace) {
        if (const UtcMs on_ms = on_until_ms(trace); on_ms > 0)
            end.logged_on_ms = std::max(
                end.logged_on_ms, std::min(end.noted_ms - minute_ms, on_ms - static_cast<UtcMs>(std::llround(log_moment_doubt_ms(trace, options)))));
    };
    if (record.trace) look(*record.trace);
    for (const auto& other : record.other_logs) look(other.trace);
}

double normal_share(double z) { return 0.5 * std::erfc(-z / std::sqrt(2.0)); }

/// Mean, standard deviation and 95 % range of a normal cut to low … high.
CutOffMoment cut_normal(double mean, double u, double low, double high) {
    CutOffMoment moment;
    const double a = (low - mean) / u, b = (high - mean) / u;
    const double below = normal_share(a), within = normal_share(b) - below;
    if (!(within > 1e-9)) return {low, (low + high) / 2, high, (high - low) / std::sqrt(12.0), CutOffBasis::bracket, {}};
    const auto at = [&](double share) {
        return std::clamp(mean + u * normal_quantile(std::clamp(below + share * within, 1e-15, 1 - 1e-15)), low, high);
    };
    const auto density = [](double z) { return std::exp(-z * z / 2) / std::sqrt(2 * std::acos(-1.0)); };
    const double shift = (density(a) - density(b)) / within;
    const double spread = 1 + (a * density(a) - b * density(b)) / within - shift * shift;
    moment.lower_h = at(0.025);
    moment.upper_h = at(0.975);
    moment.estimate_h = std::clamp(mean + u * shift, moment.lower_h, moment.upper_h);
    moment.u_h = u * std::sqrt(std::max(0.0, spread));
    return moment;
}

CutOffMoment even_between(double low, double high, double coverage) {
    const double middle = (low + high) / 2, half = (high - low) / 2;
    return {middle - coverage * half, middle, middle + coverage * half, half / std::sqrt(3.0), CutOffBasis::noted, {}};
}

/// The last sample of the log at which its register rose, and how long it has stood still before at most.
struct RegisterRest {
    UtcMs before_ms = 0, rose_ms = 0, longest_ms = 0;
};

std::optional<RegisterRest> register_rest(const RunTrace& trace) {
    const std::vector<RegisterSample> samples = register_samples(trace);
    std::optional<RegisterRest> rest;
    for (std::size_t i = 1; i < samples.size(); ++i) {
        if (samples[i].wh <= samples[i - 1].wh) continue;
        const UtcMs longest = rest ? std::max(rest->longest_ms, samples[i].time_ms - rest->rose_ms) : samples[i].time_ms - samples[i - 1].time_ms;
        rest = RegisterRest{samples[i - 1].time_ms, samples[i].time_ms, longest};
    }
    if (!rest || samples.back().time_ms <= rest->rose_ms + rest->longest_ms) return std::nullopt;
    return rest;
}

std::optional<CutOffMoment> by_trace(const RunRecord& record, const RunTrace& trace, const NotedEnd& end, const MeasureOptions& options) {
    UtcMs from_ms = 0, to_ms = 0, last_ms = 0;
    if (trace.has_power && trace.off_ms && trace.last_on_ms) {
        last_ms = from_ms = *trace.last_on_ms;
        to_ms = std::max(*trace.off_ms, *trace.last_on_ms + trace.longest_off_ms);
    } else if (const auto rest = trace.has_power ? std::nullopt : register_rest(trace)) {
        from_ms = rest->before_ms;
        last_ms = rest->rose_ms;
        to_ms = rest->rose_ms + rest->longest_ms;
    } else {
        return std::nullopt;
    }
    const double doubt_ms = log_moment_doubt_ms(trace, options);
    const auto doubt = static_cast<UtcMs>(std::llround(doubt_ms));
    if (last_ms < end.last_on_ms - doubt || last_ms > end.noted_ms + doubt) return std::nullopt;
    const double low_h = end.hours(from_ms), high_h = std::max(low_h, end.hours(std::min(to_ms, end.noted_ms + doubt)));
    const double u_h = std::hypot((high_h - low_h) / std::sqrt(12.0), doubt_ms / ms_per_hour / std::sqrt(3.0));
    // A load that pauses hides when within a pause it would have gone off.
    const double half_h = std::max((high_h - low_h) / 2 + doubt_ms / ms_per_hour, 1e-9);
    const double middle_h = (low_h + high_h) / 2;
    const double floor_h = std::min(end.hours(end.last_on_ms), middle_h);
    return CutOffMoment{
        std::max(middle_h - half_h, floor_h),
        middle_h,
        middle_h + half_h,
        u_h,
        CutOffBasis::log,
        say(trace.has_power ? phrase("measure", "the power in the log ceased at %1") : phrase("measure", "the register of the log last rose at %1"),
            clock_text(last_ms, record.run.time_zone))};
}

/// By the log of the run's own meter, else by the first of the others that saw it.
std::optional<CutOffMoment> by_log(const RunRecord& record, const NotedEnd& end, const MeasureOptions& options) {
    std::optional<CutOffMoment> moment;
    if (record.trace) moment = by_trace(record, *record.trace, end, options);
    for (std::size_t log = 0; !moment && log < record.other_logs.size(); ++log) moment = by_trace(record, record.other_logs[log].trace, end, options);
    return moment;
}

struct SteadyLoad {
    double mean_w = 0, u_relative = 0;
};

/// Mean power of the intervals up to the last reading with the output on, where they are those of a steady load.
std::optional<SteadyLoad> steady_load(const RunRecord& record, const RegisterTrack& track, UtcMs until_ms, double step_wh,
                                      const MeasureOptions& options) {
    struct Interval {
        double wh, hours;
    };
    std::vector<Interval> intervals;
    for (std::size_t i = track.points.size(); i-- > 1 && intervals.size() < most_steady_intervals;) {
        const RegisterPoint& a = track.points[i - 1];
        const RegisterPoint& b = track.points[i];
        if (b.time_ms > until_ms || b.time_ms <= a.time_ms) continue;
        intervals.push_back({b.delivered_wh - a.delivered_wh, hours_between(a.time_ms, b.time_ms)});
    }
    if (intervals.empty()) return std::nullopt;
    double wh = 0, hours = 0;
    for (const Interval& interval : intervals) {
        wh += interval.wh;
        hours += interval.hours;
    }
    const double mean_w = wh / hours;
    if (mean_w <= 0) return std::nullopt;
    std::vector<double> relative;
    for (const Interval& interval : intervals) {
        // What a steady load shows by register steps and noted minutes: no sign of another load.
        const double blur = step_wh / interval.wh + options.moment_doubt_min / 60 / interval.hours;
        const double off = interval.wh / interval.hours / mean_w - 1;
        if (!(interval.wh > 0) || std::abs(off) > steady_share / 2 + blur) return std::nullopt;
        relative.push_back(off);
    }
    if (relative.size() < 2)
        for (const Reading& reading : record.readings) {
            if (reading.withdrawn || !reading.values.meter_w || reading.values.time_ms > until_ms) continue;
            const double off = *reading.values.meter_w / mean_w - 1;
            if (std::abs(off) > steady_share / 2 + 0.5 / mean_w) return std::nullopt;
            relative.push_back(off);
        }
    if (relative.size() < 2) return std::nullopt;
    const auto n = static_cast<double>(relative.size());
    double squares = 0;
    for (const double off : relative) squares += off * off;
    const double scatter = std::sqrt(squares / (n - 1)) * std::sqrt(1 + 1 / n) * student_t_quantile(0.975, n - 1) / 1.96;
    const double u_mean = std::hypot(step_wh / std::sqrt(6.0) / wh, options.moment_doubt_min / 60 * std::sqrt(2.0 / 3.0) / hours);
    return SteadyLoad{mean_w, std::hypot(std::min(scatter, steady_share), u_mean, least_spread)};
}

std::optional<double> delivered_at(const RegisterTrack& track, UtcMs time_ms) {
    const auto at = std::ranges::find(track.points, time_ms, &RegisterPoint::time_ms);
    if (at == track.points.end()) return std::nullopt;
    return at->delivered_wh;
}

std::optional<SteadyLoadEnd> end_by_load(const RunRecord& record, const RegisterTrack& track, const NotedEnd& end, const MeasureOptions& options) {
    if (track.log || track.energy_may_be_missing) return std::nullopt;
    const std::optional<double> before_wh = delivered_at(track, end.last_on_ms), total_wh = delivered_at(track, end.noted_ms);
    if (!before_wh || !total_wh) return std::nullopt;
    const double step_wh = register_step_wh(record) * typical_correction(record.meter);
    const std::optional<SteadyLoad> load = steady_load(record, track, end.last_on_ms, step_wh, options);
    if (!load) return std::nullopt;
    const double after_h = (*total_wh - *before_wh) / load->mean_w;
    const double u_h = std::sqrt(std::pow(step_wh / std::sqrt(6.0) / load->mean_w, 2) + std::pow(after_h * load->u_relative, 2) +
                                 std::pow(options.moment_doubt_min / 60 / std::sqrt(3.0), 2));
    return SteadyLoadEnd{end.hours(end.last_on_ms) + after_h, u_h,
                         say(phrase("measure", "by the %1 that a steady load of %2 W took after the reading at %3"),
                             say_energy(*total_wh - *before_wh), say_number(load->mean_w, 0), clock_text(end.last_on_ms, record.run.time_zone))};
}

std::optional<CutOffMoment> by_steady_load(const RunRecord& record, const RegisterTrack& track, const NotedEnd& end, const MeasureOptions& options) {
    const std::optional<SteadyLoadEnd> by_load = end_by_load(record, track, end, options);
    if (!by_load) return std::nullopt;
    const auto& [mean_h, u_h, words] = *by_load;
    const double noted_h = end.hours(end.noted_ms);
    const double on_h = end.hours(end.last_on_ms), low_h = end.earliest_h();
    // Well after the noted moment, or well before anything that the notes allow: another load at the end.
    if (mean_h - beyond_doubt * u_h > noted_h || mean_h + beyond_doubt * u_h < (end.found || end.within_min ? low_h : on_h)) return std::nullopt;
    if (mean_h + agrees_within * u_h < low_h) {
        // The load says earlier than whoever saw it go off: either may be wrong.
        const double early_h = std::max(on_h, mean_h - agrees_within * u_h);
        return CutOffMoment{early_h,
                            (low_h + noted_h) / 2,
                            noted_h,
                            (noted_h - early_h) / std::sqrt(12.0),
                            CutOffBasis::bracket,
                            with_clause(words, say(phrase("measure", "noted later than that")))};
    }
    CutOffMoment moment = cut_normal(mean_h, u_h, low_h, noted_h);
    moment.basis = CutOffBasis::steady_load;
    moment.words = words;
    return moment;
}

} // namespace

std::optional<SteadyLoadEnd> steady_load_end(const RunRecord& record, const RunScan& scan, const RegisterTrack& track,
                                             const MeasureOptions& options) {
    const std::optional<NotedEnd> end = noted_end(record, scan);
    return end ? end_by_load(record, track, *end, options) : std::nullopt;
}

std::optional<CutOffMoment> cut_off_moment(const RunRecord& record, const RunScan& scan, const RegisterTrack& track, const MeasureOptions& options) {
    std::optional<NotedEnd> end = noted_end(record, scan);
    if (!end) return std::nullopt;
    look_into_logs(record, options, *end);
    if (auto moment = by_log(record, *end, options)) return moment;
    const double noted_h = end->hours(end->noted_ms), minute_h = options.moment_doubt_min / 60;
    if (end->within_min && *end->within_min == 0)
        return CutOffMoment{noted_h - options.coverage * minute_h,
                            noted_h,
                            noted_h + options.coverage * minute_h,
                            minute_h / std::sqrt(3.0),
                            CutOffBasis::noted,
                            say(phrase("measure", "noted as it happened"))};
    if (auto moment = by_steady_load(record, track, *end, options)) return moment;
    CutOffMoment moment = even_between(end->earliest_h(), noted_h, options.coverage);
    if (end->found && !end->within_min) {
        moment.lower_h = end->earliest_h();
        moment.upper_h = noted_h;
        moment.basis = CutOffBasis::bracket;
        moment.words = end->logged_on_ms > end->last_on_ms
                           ? say(phrase("measure", "between the last row of the log with the output on and the moment it was found off"))
                           : say(phrase("measure", "between the last reading with the output on and the moment it was found off"));
    } else {
        moment.words = say(end->within_min ? phrase("measure", "noticed within %1 min")
                                           : phrase("measure", "noticed within %1 min, as is taken where the run does not say"),
                           say_digits(exact_text(end->within_min.value_or(noticed_within_min))));
    }
    return moment;
}

} // namespace ullage
