// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/trace_thinner.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr UtcMs minute_ms = 60'000;
constexpr UtcMs margin_ms = 10 * minute_ms;
constexpr std::size_t most_gaps = 1000;
constexpr long most_jumps = 500;
constexpr double jump_w = 20'000, jump_wh = 2; ///< a register that rises faster and by more is looked at like one that falls
constexpr double on_above_mean = 0.05;
constexpr int most_decimals = 3;
constexpr double least_gap_limit_s = 60, intervals_of_gap = 10;

} // namespace

TraceThinner::TraceThinner(std::vector<UtcMs> moments, UtcMs from_ms, UtcMs to_ms, double gap_limit_s, std::size_t spread)
    : from_ms_(from_ms), to_ms_(to_ms), moments_(std::move(moments)), gap_limit_h_(gap_limit_s / 3600) {
    std::ranges::sort(moments_);
    set_grid(from_ms, to_ms, spread);
}

TraceThinner::TraceThinner(const std::vector<Reading>& readings, RunEnd end, UtcMs first_ms, UtcMs last_ms, double gap_limit_s)
    : from_ms_(latest_ms), to_ms_(earliest_ms), gap_limit_h_(gap_limit_s / 3600) {
    for (const Reading& reading : readings) {
        if (reading.withdrawn) continue;
        const UtcMs noted_ms = reading.values.time_ms;
        for (const UtcMs near_ms : {noted_ms - minute_ms, noted_ms, noted_ms + minute_ms}) moments_.push_back(near_ms);
        from_ms_ = std::min(from_ms_, noted_ms - margin_ms);
        to_ms_ = std::max(to_ms_, noted_ms + margin_ms);
    }
    if (end == RunEnd::found_off && !moments_.empty()) found_off_after_ms_ = to_ms_ - margin_ms;
    if (end == RunEnd::still_running || found_off_after_ms_) to_ms_ = std::max(to_ms_, last_ms);
    std::ranges::sort(moments_);
    set_grid(std::max(from_ms_, first_ms), std::min(to_ms_, last_ms), spread_samples);
}

void TraceThinner::set_grid(UtcMs from_ms, UtcMs to_ms, std::size_t spread) {
    next_grid_ms_ = from_ms;
    grid_ms_ = std::max<UtcMs>(1, (to_ms - from_ms) / static_cast<UtcMs>(std::max<std::size_t>(1, spread)));
}

void TraceThinner::note_step(double watts) {
    static constexpr double scales[] = {1, 10, 100, 1000};
    while (decimals_ < most_decimals) {
        const double scaled = watts * scales[decimals_];
        if (std::abs(scaled - std::round(scaled)) < 1e-6 * std::max(1.0, std::abs(scaled))) break;
        ++decimals_;
    }
}

void TraceThinner::add_power(const TraceSample& sample, TracePoint& sums) {
    const double watts = *sample.power_w;
    if (power_before_) {
        const double hours = hours_between(power_before_->time_ms, sample.time_ms);
        if (hours <= gap_limit_h_) {
            const double before = *power_before_->power_w;
            sums.energy_wh += hours * (before + watts) / 2;
            sums.square_w2h += hours * (before * before + before * watts + watts * watts) / 3;
            sums.covered_h += hours;
            const double step_wh = (watts - before) * hours;
            sums.sampled_wh2 += step_wh * step_wh / 12 + std::max(0.0, -step_wh * step_wh_before_);
            step_wh_before_ = step_wh;
        } else {
            if (trace_.gaps.size() < most_gaps) trace_.gaps.push_back({power_before_->time_ms, sample.time_ms});
            step_wh_before_ = 0;
        }
    }
    trace_.peak_w = powers_ == 0 ? watts : std::max(trace_.peak_w, watts);
    ++powers_;
    power_sum_w_ += watts;
    if (decimals_ < most_decimals) note_step(watts);
    if (watts > 0 && watts >= on_above_mean * power_sum_w_ / static_cast<double>(powers_)) {
        if (trace_.last_on_ms) trace_.longest_off_ms = std::max(trace_.longest_off_ms, sample.time_ms - *trace_.last_on_ms);
        trace_.last_on_ms = sample.time_ms;
        trace_.off_ms.reset();
    } else if (trace_.last_on_ms && !trace_.off_ms) {
        trace_.off_ms = sample.time_ms;
    }
    power_before_ = sample;
}

bool TraceThinner::jumps(const TraceSample& sample) const {
    if (!sample.register_wh || !register_wh_ || jumps_ >= most_jumps) return false;
    const double rise_wh = *sample.register_wh - *register_wh_;
    const UtcMs since_ms = register_before_ ? register_before_->time_ms : sums_.time_ms;
    return rise_wh < 0 || (rise_wh > jump_wh && rise_wh > jump_w * hours_between(since_ms, sample.time_ms));
}

/// Whether the power was not known for too long before the sample; the edges of the first gaps are kept.
bool TraceThinner::ends_gap(const TraceSample& sample) const {
    return sample.power_w && power_before_ && trace_.gaps.size() < most_gaps && hours_between(power_before_->time_ms, sample.time_ms) > gap_limit_h_;
}

/// Whether a moment lies between the sample before and this one, or the grid asks for it.
bool TraceThinner::wanted(const TraceSample& sample) {
    bool asked = false;
    for (; next_moment_ < moments_.size() && moments_[next_moment_] <= sample.time_ms; ++next_moment_) asked = true;
    return asked;
}

void TraceThinner::keep(const TracePoint& point) {
    if (trace_.points.empty() || trace_.points.back().time_ms < point.time_ms) trace_.points.push_back(point);
}

/// Whether a sample lies after the end of a run found off, which was already off when that was noted.
bool TraceThinner::beyond_the_end(const TraceSample& sample) {
    if (!found_off_after_ms_ || sample.time_ms <= *found_off_after_ms_) return false;
    if (!on_then_) {
        const double least_w = powers_ > 0 ? on_above_mean * power_sum_w_ / static_cast<double>(powers_) : 0;
        const auto on = [&](const std::optional<double>& watts) { return watts && *watts > 0 && *watts >= least_w; };
        if (sample.power_w && power_before_) on_then_ = on(power_before_->power_w) && on(sample.power_w);
        else if (sample.register_wh && register_wh_ && powers_ == 0 && *sample.register_wh > *register_wh_) on_then_ = true;
        trace_.on_past_notes = on_then_.value_or(false);
    }
    return !on_then_.value_or(false) && sample.time_ms > *found_off_after_ms_ + margin_ms;
}

void TraceThinner::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        if (beyond_the_end(sample)) continue;
        const bool jump = jumps(sample), asked = wanted(sample), gap = ends_gap(sample);
        if (any_ && (jump || asked || gap)) {
            if (register_before_) keep(*register_before_);
            if (!before_kept_) keep(sums_);
        }
        if (jump) ++jumps_;
        TracePoint point = sums_;
        point.time_ms = sample.time_ms;
        point.register_wh = sample.register_wh;
        point.power_w = sample.power_w;
        if (sample.power_w) add_power(sample, point);
        if (sample.register_wh) {
            ++registers_;
            register_wh_ = sample.register_wh;
            register_before_.reset();
        } else if (sums_.register_wh && any_) {
            register_before_ = sums_;
        }
        const bool on_grid = sample.time_ms >= next_grid_ms_ && (sample.register_wh || !register_wh_);
        if (on_grid) next_grid_ms_ = sample.time_ms + grid_ms_;
        const bool register_due = register_due_ && sample.register_wh;
        register_due_ = (register_due_ || jump || asked) && !sample.register_wh;
        before_kept_ = !any_ || jump || asked || gap || on_grid || register_due;
        if (before_kept_) keep(point);
        sums_ = point;
        any_ = true;
    }
}

double gap_limit_s(std::span<const Trace> traces) {
    double limit_s = least_gap_limit_s;
    for (const Trace& trace : traces) {
        const double intervals = static_cast<double>(std::max<std::int64_t>(1, trace.samples - 1));
        limit_s = std::max(limit_s, intervals_of_gap * static_cast<double>(trace.last_ms - trace.first_ms) / 1000 / intervals);
    }
    return limit_s;
}

std::optional<RunTrace> TraceThinner::finish() {
    if (!any_) return std::nullopt;
    if (register_before_) keep(*register_before_);
    keep(sums_);
    std::ranges::sort(trace_.points, {}, &TracePoint::time_ms);
    trace_.has_register = registers_ >= 2;
    trace_.has_power = powers_ >= 2;
    trace_.power_step_w = std::pow(10.0, -decimals_);
    return std::move(trace_);
}

} // namespace ullage
