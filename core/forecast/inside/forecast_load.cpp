// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/forecast_load.h"

#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <span>

namespace ullage {
namespace {

constexpr std::size_t replays = 16;
constexpr std::size_t most_nodes = 400;
constexpr double most_intervals = 30;                          ///< to judge the load by
constexpr double apart = 0.15;                                 ///< of the mean: loads nearer to it are on neither side
constexpr double stays_share = 0.65;                           ///< after a step
constexpr double u_single = 0.4;                               ///< of a load known from the interval of its step only
constexpr double hidden_step_share = 0.4, u_hidden_step = 0.6; ///< of a load known from one interval alone
constexpr double confirms_within = 0.1;
constexpr double most_student_factor = 1.7;
constexpr double negligible = 0.002;

double student_factor(std::size_t intervals) {
    if (intervals < 2) return 1;
    return std::min(most_student_factor, coverage_factor(0.95, static_cast<double>(intervals - 1)) / normal_quantile(0.975));
}

/// Relative standard deviation of interval means about `mean_w`, each weighted with its time.
double scatter_about(std::span<const LoadStep> steps, double mean_w) {
    double hours = 0, sum = 0;
    for (const LoadStep& step : steps) {
        const double step_h = hours_between(step.from_ms, step.to_ms);
        hours += step_h;
        sum += step_h * (step.mean_w - mean_w) * (step.mean_w - mean_w);
    }
    if (steps.size() < 2 || hours <= 0 || mean_w <= 0) return 0;
    const double n = static_cast<double>(steps.size());
    return std::sqrt(sum / hours * n / (n - 1)) / mean_w;
}

double mean_of(std::span<const LoadStep> steps) {
    double hours = 0, wh = 0;
    for (const LoadStep& step : steps) {
        hours += hours_between(step.from_ms, step.to_ms);
        wh += step.mean_w * hours_between(step.from_ms, step.to_ms);
    }
    return hours > 0 ? wh / hours : 0;
}

/// Neighbouring steps joined until each lasts its share of the whole: a logging meter's trace says no more about the mean than
/// its cycles do.
std::vector<LoadStep> joined(const std::vector<LoadStep>& steps, double least_h) {
    std::vector<LoadStep> result;
    bool open = false;
    for (const LoadStep& step : steps) {
        if (!open) {
            result.push_back(step);
        } else {
            LoadStep& last = result.back();
            const double before_h = hours_between(last.from_ms, last.to_ms), hours = hours_between(step.from_ms, step.to_ms);
            last.mean_w = (last.mean_w * before_h + step.mean_w * hours) / (before_h + hours);
            last.to_reading = step.to_reading;
            last.to_ms += step.to_ms - step.from_ms;
        }
        open = hours_between(result.back().from_ms, result.back().to_ms) < least_h;
    }
    return result;
}

} // namespace

FutureLoads::FutureLoads(const std::vector<LoadStep>& steps, const std::vector<double>& noted_w) {
    nodes_.push_back({});
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double hours = hours_between(steps[i].from_ms, steps[i].to_ms);
        Sums next = loop_;
        next.hours += hours;
        next.wh += steps[i].mean_w * hours;
        next.squared_w2h += steps[i].mean_w * steps[i].mean_w * hours;
        loop_ = next;
        // A logging meter's trace is kept at every so many-th of its points; the sums lose nothing.
        if (i + 1 == steps.size() || (i + 1) * most_nodes / steps.size() != i * most_nodes / steps.size()) nodes_.push_back(next);
    }
    if (loop_.hours <= 0) {
        paths_ = {Path{}};
        return;
    }
    const std::vector<LoadStep> intervals = joined(steps, loop_.hours / most_intervals);
    intervals_ = intervals.size();
    scatter_ = scatter_about(intervals, overall_w());
    tell_shape(intervals);
    if (intervals_ == 1 && !confirmed_by(noted_w)) {
        paths_.push_back({std::optional(0.0), 1, 1 - hidden_step_share});
        add_paths(0.0, hidden_step_share, u_hidden_step);
        return;
    }
    const double stays = shape_ == Shape::stepped ? stays_share : 0;
    const double u_overall = scatter_ / std::sqrt(static_cast<double>(intervals_)) * student_factor(intervals_);
    for (std::size_t i = 0; i < replays; ++i)
        add_paths(loop_.hours * (static_cast<double>(i) + 0.5) / static_cast<double>(replays), (1 - stays) / static_cast<double>(replays), u_overall);
    if (stays > 0) add_paths({}, stays, u_recent_);
}

bool FutureLoads::confirmed_by(const std::vector<double>& noted_w) const {
    const double mean_w = overall_w();
    return noted_w.size() >= 2 && std::ranges::all_of(noted_w, [mean_w](double w) { return std::abs(w - mean_w) <= confirms_within * mean_w; });
}

void FutureLoads::add_paths(std::optional<double> start_h, double share, double u_relative) {
    if (u_relative < negligible) {
        paths_.push_back({start_h, 1, share});
        return;
    }
    constexpr int levels = 4;
    constexpr double apart_z = 0.6;
    double total = 0;
    for (int k = -levels; k <= levels; ++k) total += std::exp(-0.5 * apart_z * apart_z * k * k);
    // A factor, not a sum: a load does not turn around.
    for (int k = -levels; k <= levels; ++k)
        paths_.push_back({start_h, std::exp(u_relative * apart_z * k), share * std::exp(-0.5 * apart_z * apart_z * k * k) / total});
}

void FutureLoads::tell_shape(const std::vector<LoadStep>& steps) {
    const double mean_w = overall_w();
    int side = 0;
    std::size_t changes = 0, stretch_from = 0;
    double stretch_h = 0, longest_h = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        const double off_w = steps[i].mean_w - mean_w;
        const int now = std::abs(off_w) <= apart * mean_w ? side : (off_w > 0 ? 1 : -1);
        if (now != side && side != 0) {
            ++changes;
            longest_h = std::max(longest_h, stretch_h);
            stretch_h = 0;
            stretch_from = i;
        }
        side = now;
        stretch_h += hours_between(steps[i].from_ms, steps[i].to_ms);
    }
    if (changes > 0) shape_ = changes >= 2 && stretch_h <= 2 * longest_h ? Shape::cycling : Shape::stepped;
    std::span<const LoadStep> recent(steps);
    bool single = recent.size() == 1;
    if (shape_ == Shape::stepped) {
        recent = recent.subspan(stretch_from);
        single = recent.size() == 1;
        // The step fell into the first interval, whose mean is neither load's.
        if (!single) recent = recent.subspan(1);
    }
    recent_w_ = mean_of(recent);
    recent_scatter_ = single ? u_single : scatter_about(recent, recent_w_);
    u_recent_ = recent.size() == 1 ? (single ? u_single : u_single / 8)
                                   : recent_scatter_ / std::sqrt(static_cast<double>(recent.size())) * student_factor(recent.size());
}

double FutureLoads::scatter_over(double hours) const {
    if (intervals_ < 2 || hours <= 0) return 0;
    const double interval_h = loop_.hours / static_cast<double>(intervals_);
    return std::min(1.0, 3 * recent_scatter_ * std::sqrt(std::max(1.0, interval_h / hours)));
}

FutureLoads::Sums FutureLoads::at_hours(double hours) const {
    const auto after = std::ranges::upper_bound(nodes_, hours, {}, &Sums::hours);
    if (after == nodes_.begin()) return nodes_.front();
    if (after == nodes_.end()) return nodes_.back();
    const Sums& a = *(after - 1);
    const Sums& b = *after;
    const double f = (hours - a.hours) / (b.hours - a.hours);
    return {hours, a.wh + f * (b.wh - a.wh), a.squared_w2h + f * (b.squared_w2h - a.squared_w2h)};
}

double FutureLoads::hours_to_use(std::size_t path, double wh, double no_load_w, double curvature_per_w) const {
    if (wh <= 0) return 0;
    const auto& [replay_h, factor, weight] = paths_[path];
    if (!replay_h) {
        const double load_w = factor * recent_w_;
        const double rate_w = load_w + no_load_w + curvature_per_w * load_w * load_w;
        return rate_w > 0 ? wh / rate_w : std::numeric_limits<double>::infinity();
    }
    const auto used_wh = [&, factor = factor](const Sums& sums) { return sums.used_wh(factor, no_load_w, curvature_per_w); };
    const double loop_wh = used_wh(loop_);
    if (loop_wh <= 0) return std::numeric_limits<double>::infinity();
    double target_wh = used_wh(at_hours(*replay_h)) + wh;
    const double loops = std::floor(target_wh / loop_wh);
    target_wh -= loops * loop_wh;
    const auto after = std::ranges::lower_bound(nodes_, target_wh, {}, used_wh);
    double end_h = loop_.hours;
    if (after == nodes_.begin()) {
        end_h = 0;
    } else if (after != nodes_.end()) {
        const double a_wh = used_wh(*(after - 1)), b_wh = used_wh(*after);
        end_h = (after - 1)->hours + (b_wh > a_wh ? (target_wh - a_wh) / (b_wh - a_wh) : 1) * (after->hours - (after - 1)->hours);
    }
    return loops * loop_.hours + end_h - *replay_h;
}

double FutureLoads::mean_w(std::size_t path, double hours) const {
    const auto& [replay_h, factor, weight] = paths_[path];
    if (!replay_h) return factor * recent_w_;
    const double end_h = *replay_h + hours;
    const double loops = std::floor(end_h / loop_.hours);
    return factor * (loops * loop_.wh + at_hours(end_h - loops * loop_.hours).wh - at_hours(*replay_h).wh) / hours;
}

} // namespace ullage
