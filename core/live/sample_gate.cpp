// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/sample_gate.h"

#include "model/limits.h"

#include <algorithm>
#include <cmath>
#include <cstddef>

namespace ullage {

namespace {

constexpr double most_power_w = 1e6;     // of anything that a portable unit feeds, with three orders to spare
constexpr double most_rising_w = 20'000; // mean power between two registers
constexpr UtcMs jump_lasts_ms = 60'000;
constexpr double register_slack_wh = 100; // a coarse register rises by a whole step at once

constexpr std::optional<double> TraceSample::*gate_roles[] = {&TraceSample::register_wh, &TraceSample::power_w,       &TraceSample::voltage_v,
                                                              &TraceSample::current_a,   &TraceSample::gauge_percent, &TraceSample::output_w};

void drop_nonsense(TraceSample& sample) {
    for (const auto role : gate_roles)
        if (sample.*role && !(std::isfinite(*(sample.*role)) && std::abs(*(sample.*role)) <= sample_range.highest)) (sample.*role).reset();
    for (const auto power : {&TraceSample::power_w, &TraceSample::output_w})
        if (sample.*power && std::abs(*(sample.*power)) > most_power_w) (sample.*power).reset();
    if (sample.gauge_percent && (*sample.gauge_percent < 0 || *sample.gauge_percent > 100)) sample.gauge_percent.reset();
}

} // namespace

bool says_anything(const TraceSample& sample) {
    return std::ranges::any_of(gate_roles, [&sample](const auto role) { return (sample.*role).has_value(); });
}

SampleGate::SampleGate(std::optional<TraceSample> last) {
    if (!last) return;
    last_ms_ = last->time_ms;
    if (last->register_wh) register_ = Register{*last->register_wh, last->time_ms};
}

std::optional<UtcMs> SampleGate::time_at(std::int64_t steady_ms) const {
    if (!anchor_) return std::nullopt;
    return anchor_->wall_ms + (steady_ms - anchor_->steady_ms);
}

bool SampleGate::is_duplicate(const TraceSample& sample) const {
    for (std::size_t i = 0; i < last_of_role_ms_.size(); ++i)
        if (sample.*gate_roles[i] && (!last_of_role_ms_[i] || sample.time_ms - *last_of_role_ms_[i] >= least_interval_ms)) return false;
    return true;
}

void SampleGate::judge_register(TraceSample& sample) {
    const Register now{*sample.register_wh, sample.time_ms};
    const auto most_wh = [&now](const Register& before) { return register_slack_wh + most_rising_w * hours_between(before.time_ms, now.time_ms); };
    if (!register_ || (now.wh >= register_->wh && now.wh - register_->wh <= most_wh(*register_))) {
        register_ = now;
        doubted_.reset();
        return;
    }
    const bool goes_on = doubted_ && std::abs(now.wh - doubted_->last.wh) <= most_wh(doubted_->last);
    if (!goes_on) doubted_ = Doubted{now, now.time_ms};
    doubted_->last = now;
    // A meter that restarts or is set to 0 shows less; more at once is a meter that was exchanged, or nonsense that lasts.
    const bool fell = now.wh < register_->wh;
    if (goes_on && (fell || now.time_ms - doubted_->since_ms >= jump_lasts_ms)) {
        register_ = now;
        doubted_.reset();
        return;
    }
    ++tally_.nonsense;
    sample.register_wh.reset();
}

std::optional<TraceSample> SampleGate::take(const Arrival& arrival) {
    if (arrival.retained) {
        ++tally_.retained;
        return std::nullopt;
    }
    TraceSample sample = arrival.values;
    drop_nonsense(sample);
    if (!says_anything(sample)) {
        ++tally_.nonsense;
        return std::nullopt;
    }
    if (!anchor_) anchor_ = Anchor{arrival.wall_ms, arrival.steady_ms};
    sample.time_ms = *time_at(arrival.steady_ms);
    tally_.clock_step_ms = arrival.wall_ms - sample.time_ms;
    if (tally_.taken == 0 && last_ms_ && sample.time_ms <= *last_ms_) {
        // The clock stands before the run's last sample: it is asked again each time, until it is past or has been set right.
        anchor_.reset();
        ++tally_.behind;
        return std::nullopt;
    }
    if (is_duplicate(sample)) {
        ++tally_.too_fast;
        return std::nullopt;
    }
    for (std::size_t i = 0; i < last_of_role_ms_.size(); ++i)
        if (sample.*gate_roles[i]) last_of_role_ms_[i] = sample.time_ms;
    if (sample.register_wh) judge_register(sample);
    if (!says_anything(sample)) return std::nullopt;
    if (last_ms_ && sample.time_ms <= *last_ms_) sample.time_ms = *last_ms_ + 1; // another quantity within the same millisecond
    last_ms_ = sample.time_ms;
    ++tally_.taken;
    return sample;
}

} // namespace ullage
