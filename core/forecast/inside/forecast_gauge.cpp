// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_gauge.h"

#include "forecast/inside/weighted_quantile.h"
#include "unit/usual_draw.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double window_pt = 8;     ///< of fall, or so many steps
constexpr double u_straight = 0.04; ///< relative, of the speed over a window
constexpr double u_each_point = 0.0025;
constexpr double moment_doubt_h = 1.0 / 120; ///< half a minute either way
constexpr double longest_step_h = 24.0 * 366;
constexpr double two_sided = 1.96;
constexpr std::size_t looked_at_steps = 12; ///< of a log
constexpr double like_a_step = 1.1;         ///< so much faster or slower than the last ones

struct Shown {
    UtcMs time_ms = 0;
    double percent = 0;
};

/// What was noted, or what a log showed from step to step: then the moment of the last step is known to the sample.
std::vector<Shown> shown_in(const RunRecord& record, const EnergyAnalysis& energy) {
    std::vector<Shown> all;
    if (energy.gauge_log && energy.gauge_log->used) {
        for (const PairedPoint& point : energy.shown)
            if (point.reading == no_reading) all.push_back({point.time_ms, point.gauge_percent});
        if (!all.empty() && all.back().time_ms < record.gauge_log->last_ms && record.gauge_log->last_percent == all.back().percent)
            all.push_back({record.gauge_log->last_ms, record.gauge_log->last_percent});
        if (!all.empty()) return all;
    }
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.gauge_percent) all.push_back({reading.values.time_ms, *reading.values.gauge_percent});
    return all;
}

/// The last point from which the gauge has fallen by the window; else the first.
const TrendPoint& window_start(const std::vector<TrendPoint>& points, double step_pt) {
    const double wanted_pt = window_pt * std::max(1.0, step_pt);
    for (auto point = points.rbegin(); point != points.rend(); ++point)
        if (point->gauge_percent - points.back().gauge_percent >= wanted_pt) return *point;
    return points.front();
}

/// Where the true value may be above the edge of the shown one, from when this was first shown and when the one before was last.
void narrow(const std::vector<Shown>& all, GaugeSpeed& speed) {
    const double shown = all.back().percent;
    std::size_t first = all.size() - 1;
    while (first > 0 && all[first - 1].percent == shown) --first;
    double most = speed.step_pt - speed.lower_pt_per_h * hours_between(all[first].time_ms, speed.at_ms);
    double least = 0;
    if (first > 0 && all[first - 1].percent > shown)
        least = all[first - 1].percent - shown - speed.upper_pt_per_h * hours_between(all[first - 1].time_ms, speed.at_ms);
    // A gauge that stays longer than it should may step at any moment.
    const double doubt_pt = moment_doubt_h * speed.estimate_pt_per_h;
    speed.most_above_edge_pt = std::clamp(most, 0.1 * speed.step_pt, speed.step_pt) + doubt_pt;
    speed.least_above_edge_pt = std::clamp(least - doubt_pt, 0.0, 0.9 * speed.most_above_edge_pt);
}

/// A load that cycles within what one value lasts shows in how long the last values lasted: the next may last as long as any of them.
void allow_for_steps(const std::vector<Shown>& all, GaugeSpeed& speed) {
    std::optional<Shown> later;
    std::size_t steps = 0;
    for (std::size_t i = all.size(); i-- > 1 && steps < looked_at_steps;) {
        const double fall_pt = all[i - 1].percent - all[i].percent;
        if (fall_pt <= 0) continue;
        ++steps;
        const Shown here = all[i];
        if (later && later->time_ms > here.time_ms && here.percent > later->percent) {
            const double pt_per_h = (here.percent - later->percent) / hours_between(here.time_ms, later->time_ms);
            speed.lower_pt_per_h = std::min(speed.lower_pt_per_h, pt_per_h / like_a_step);
            speed.upper_pt_per_h = std::max(speed.upper_pt_per_h, pt_per_h * like_a_step);
        }
        later = here;
    }
}

} // namespace

Result<GaugeSpeed> gauge_speed(const RunRecord& record, const EnergyAnalysis& energy, const std::vector<TrendPoint>& points, const FutureLoads& loads,
                               bool has_register) {
    const std::vector<Shown> all = shown_in(record, energy);
    if (all.empty()) return Error{Failure::bad_input, say(phrase("forecast", "the gauge has not been read yet")), {}, {}};
    if (points.size() < 2)
        return Error{Failure::bad_input, say(phrase("forecast", "the gauge has not been read twice with the register yet")), {}, {}};
    const double step_pt = record.unit.gauge_step_percent;
    const TrendPoint& from = window_start(points, step_pt);
    const TrendPoint& to = points.back();
    const double fall_pt = from.gauge_percent - to.gauge_percent;
    if (fall_pt < step_pt) return Error{Failure::bad_input, say(phrase("forecast", "the gauge has not fallen yet")), {}, {}};
    const double hours = to.on_hours - from.on_hours;
    if (hours <= 0) return Error{Failure::bad_input, say(phrase("forecast", "no time passed while the gauge fell")), {}, {}};
    const double u = std::hypot(step_pt / std::sqrt(6.0) / fall_pt, u_straight);
    const double past_w = (to.delivered_wh - from.delivered_wh) / hours;
    const double past_pt_per_h = fall_pt / hours;

    WeightedValues speeds;
    const Bounds usual = usual_no_load_draw(record.unit);
    for (const double share : {0.1, 0.5, 0.9}) {
        const double own_w = has_register ? usual.low + share * (usual.high - usual.low) : 1;
        for (std::size_t path = 0; path < loads.paths(); ++path) {
            const double next_w = loads.mean_w(path, step_pt / past_pt_per_h);
            speeds.emplace_back(past_pt_per_h * (next_w + own_w) / (past_w + own_w), loads.weight(path));
        }
    }
    const Spread spread = *spread_of(std::move(speeds), 0.95);
    GaugeSpeed speed;
    speed.at_ms = all.back().time_ms;
    speed.shown_percent = all.back().percent;
    speed.step_pt = step_pt;
    speed.estimate_pt_per_h = spread.middle;
    // A load that cycles is off its mean over so short a time as a step takes by more than over the intervals between readings.
    const double more = 1 + two_sided * loads.scatter_over(step_pt / past_pt_per_h);
    const double lower_load = spread.lower / spread.middle / more, upper_load = spread.upper / spread.middle * more;
    speed.lower_pt_per_h = spread.middle * std::max(0.05, 1 - std::hypot(two_sided * u, 1 - lower_load));
    speed.upper_pt_per_h = spread.middle * (1 + std::hypot(two_sided * u, upper_load - 1));
    if (energy.gauge_log && energy.gauge_log->used) allow_for_steps(all, speed);
    narrow(all, speed);
    return speed;
}

std::optional<ExpectedTime> gauge_drop_time(const RunForecast& forecast, double drop_pt) {
    if (!forecast.gauge_speed || !(drop_pt > 0)) return std::nullopt;
    const GaugeSpeed& speed = *forecast.gauge_speed;
    const double steps = std::ceil(drop_pt / speed.step_pt - 1e-9);
    if (steps * speed.step_pt > speed.shown_percent + 1e-9) return std::nullopt;
    WeightedValues hours;
    constexpr int places = 40, speeds = 20;
    for (int i = 0; i < places; ++i) {
        const double above_pt =
            speed.least_above_edge_pt + (speed.most_above_edge_pt - speed.least_above_edge_pt) * (i + 0.5) / places + (steps - 1) * speed.step_pt;
        for (int k = -speeds; k <= speeds; ++k) {
            const double z = 3.0 * k / speeds;
            const double side = (k < 0 ? speed.estimate_pt_per_h - speed.lower_pt_per_h : speed.upper_pt_per_h - speed.estimate_pt_per_h) / two_sided;
            const double pt_per_h = speed.estimate_pt_per_h + z * std::hypot(side, u_each_point * drop_pt * speed.estimate_pt_per_h);
            hours.emplace_back(above_pt / std::max(pt_per_h, 0.02 * speed.estimate_pt_per_h), std::exp(-0.5 * z * z));
        }
    }
    const Spread spread = *spread_of(std::move(hours), 0.95);
    if (!(spread.upper < longest_step_h)) return std::nullopt;
    const auto at = [&speed](double after_h) { return speed.at_ms + static_cast<UtcMs>(std::llround(after_h * ms_per_hour)); };
    return ExpectedTime{at(spread.lower), at(spread.middle), at(spread.upper)};
}

} // namespace ullage
