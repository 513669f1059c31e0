// SPDX-License-Identifier: GPL-3.0-or-later
#include "live/live_events.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {

namespace {

constexpr double on_share = 1.0 / 20;
constexpr double least_on_w = 0.5;
constexpr UtcMs first_wait_ms = 120'000, least_wait_ms = 60'000, least_still_ms = 300'000;
constexpr double pauses_waited = 1.5, stills_waited = 4;
constexpr UtcMs least_silence_ms = 60'000, minute_ms = 60'000;
constexpr double silence_intervals = 10;
constexpr std::size_t most_intervals = 64, most_levels = 16;
constexpr double near_share = 0.05, steady_share = 0.10, steady_w = 5, changed_share = 0.15, changed_w = 10;
constexpr int own_cycle_visits = 2;
constexpr double zero_share = 0.02, zero_wh = 1; // what a register may have gained again when it is seen first after it was set to 0

Message say_seconds(double ms) {
    if (ms < 120'000) return say_measure(ms / 1000, 0, "s");
    if (ms < 7'200'000) return say_measure(ms / 60'000, 0, "min");
    return say_measure(ms / ms_per_hour, 1, "h");
}

bool near(double a, double b) { return std::abs(a - b) <= std::max(near_share * std::max(std::abs(a), std::abs(b)), steady_w / 2); }

} // namespace

Message say_event(LiveEventKind kind) {
    switch (kind) {
    case LiveEventKind::output_off: return say(phrase("live", "output off"));
    case LiveEventKind::output_back: return say(phrase("live", "output back"));
    case LiveEventKind::load_changed: return say(phrase("live", "load changed"));
    case LiveEventKind::meter_restarted: return say(phrase("live", "meter restarted"));
    case LiveEventKind::register_zero: return say(phrase("live", "register back at 0"));
    case LiveEventKind::no_answer: break;
    }
    return say(phrase("live", "no answer"));
}

std::optional<MarkKind> mark_of(LiveEventKind kind) {
    switch (kind) {
    case LiveEventKind::output_off: return MarkKind::cut_off;
    case LiveEventKind::output_back: return MarkKind::output_reset;
    case LiveEventKind::load_changed: return MarkKind::load_changed;
    case LiveEventKind::meter_restarted:
    case LiveEventKind::register_zero: return MarkKind::meter_zeroed;
    case LiveEventKind::no_answer: break;
    }
    return std::nullopt;
}

EventDetector::EventDetector(std::optional<double> step_wh) : step_wh_(step_wh.value_or(0)) {}

void EventDetector::add(LiveEventKind kind, UtcMs moment_ms, UtcMs by_ms, std::optional<double> register_wh, const Message& evidence) {
    events_.push_back({kind, moment_ms, by_ms, register_wh, evidence});
}

std::vector<LiveEvent> EventDetector::take_events() { return std::exchange(events_, {}); }

double EventDetector::gap_limit_ms() const { return std::max<double>(least_silence_ms, silence_intervals * usual_interval_ms_); }

void EventDetector::look(UtcMs now_ms) {
    if (!last_ms_ || silence_told_ || static_cast<double>(now_ms - *last_ms_) <= gap_limit_ms()) return;
    silence_told_ = true;
    add(LiveEventKind::no_answer, *last_ms_, now_ms, register_wh_,
        say(phrase("live", "nothing has come for %1; before, a sample came every %2"), say_seconds(static_cast<double>(now_ms - *last_ms_)),
            say_seconds(usual_interval_ms_)));
}

void EventDetector::judge_gap(const TraceSample& sample) {
    if (!last_ms_) return;
    const auto interval_ms = static_cast<double>(sample.time_ms - *last_ms_);
    if (interval_ms > gap_limit_ms()) {
        if (!silence_told_)
            add(LiveEventKind::no_answer, *last_ms_, sample.time_ms, register_wh_,
                say(phrase("live", "nothing came for %1"), say_seconds(interval_ms)));
        minute_ = {};
        steady_w_.reset();
    } else if (intervals_ms_.size() < most_intervals) {
        intervals_ms_.push_back(interval_ms);
        auto sorted = intervals_ms_;
        const auto middle = sorted.begin() + static_cast<std::ptrdiff_t>(sorted.size() / 2);
        std::ranges::nth_element(sorted, middle);
        usual_interval_ms_ = *middle;
    }
    silence_told_ = false;
}

void EventDetector::judge_register(const TraceSample& sample) {
    const double now_wh = *sample.register_wh;
    if (register_wh_ && now_wh < *register_wh_) {
        const bool zero = now_wh <= std::max(zero_wh, zero_share * *register_wh_);
        add(zero ? LiveEventKind::register_zero : LiveEventKind::meter_restarted, sample.time_ms, sample.time_ms, now_wh,
            say(phrase("live", "the register went from %1 Wh to %2 Wh"), say_number(*register_wh_, 1), say_number(now_wh, 1)));
        off_register_wh_ = on_register_wh_ = now_wh;
        risen_ms_ = sample.time_ms;
    } else if (register_wh_ && now_wh > *register_wh_) {
        if (rises_++ > 0 && !off_told_) longest_still_ms_ = std::max(longest_still_ms_, static_cast<double>(sample.time_ms - risen_ms_));
        risen_ms_ = sample.time_ms;
    } else if (!register_wh_) {
        risen_ms_ = sample.time_ms;
    }
    register_wh_ = now_wh;
    if (!on_ && !off_register_wh_) off_register_wh_ = now_wh;
}

void EventDetector::judge_power(const TraceSample& sample) {
    const double power_w = std::abs(*sample.power_w);
    const double mean_w = on_samples_ > 0 ? on_sum_w_ / static_cast<double>(on_samples_) : 0;
    const bool on = power_w > std::max(least_on_w, on_share * mean_w);
    const UtcMs now_ms = sample.time_ms;
    if (on) {
        if (on_samples_ > 0 && !on_) {
            const auto pause_ms = static_cast<double>(now_ms - first_off_ms_);
            longest_pause_ms_ = std::max(longest_pause_ms_, pause_ms);
            if (std::exchange(off_told_, false))
                add(LiveEventKind::output_back, now_ms, now_ms, register_wh_,
                    say(phrase("live", "%1 W after %2 without power; a load that pauses by itself does this too"), say_number(power_w, 0),
                        say_seconds(pause_ms)));
        }
        on_ = true;
        on_sum_w_ += power_w;
        ++on_samples_;
        last_on_ms_ = now_ms;
        on_register_wh_ = register_wh_;
        off_register_wh_.reset();
        return;
    }
    if (on_samples_ == 0) return; // the run has not begun yet
    if (std::exchange(on_, false)) first_off_ms_ = now_ms;
    if (!off_register_wh_) off_register_wh_ = register_wh_;
    const double wait_ms = longest_pause_ms_ > 0 ? std::max<double>(least_wait_ms, pauses_waited * longest_pause_ms_) : first_wait_ms;
    const auto off_ms = static_cast<double>(now_ms - first_off_ms_);
    if (off_told_ || off_ms < wait_ms) return;
    const double risen_wh = register_wh_ && off_register_wh_ ? *register_wh_ - *off_register_wh_ : 0;
    const double still_wh = std::max(step_wh_, 0.02 * mean_w * off_ms / ms_per_hour); // what two percent of the load would add
    if (risen_wh > still_wh) return;
    off_told_ = true;
    std::vector<Message> evidence{
        say(phrase("live", "power at %1 W for %2, before %3 W on average"), say_number(power_w, 1), say_seconds(off_ms), say_number(mean_w, 0))};
    if (longest_pause_ms_ > 0) evidence.push_back(say(phrase("live", "the longest pause of the load was %1"), say_seconds(longest_pause_ms_)));
    if (register_wh_) evidence.push_back(say(phrase("live", "register still at %1 Wh"), say_number(*register_wh_, 1)));
    if (first_off_ms_ - last_on_ms_ > static_cast<UtcMs>(gap_limit_ms()))
        evidence.push_back(say(phrase("live", "nothing came for %1 between the last sample with power and the first without"),
                               say_seconds(static_cast<double>(first_off_ms_ - last_on_ms_))));
    add(LiveEventKind::output_off, last_on_ms_, first_off_ms_, on_register_wh_ ? on_register_wh_ : register_wh_, say_joined(evidence, "; "));
}

void EventDetector::judge_still_register(const TraceSample& sample) {
    const auto still_ms = static_cast<double>(sample.time_ms - risen_ms_);
    if (off_told_) {
        if (still_ms > 0) return;
        off_told_ = false;
        add(LiveEventKind::output_back, sample.time_ms, sample.time_ms, register_wh_, say(phrase("live", "the register rises again")));
        return;
    }
    if (rises_ < 3 || still_ms < std::max<double>(least_still_ms, stills_waited * longest_still_ms_)) return;
    off_told_ = true;
    add(LiveEventKind::output_off, risen_ms_, risen_ms_ + static_cast<UtcMs>(longest_still_ms_), register_wh_,
        say(phrase("live", "the register has stood at %1 Wh for %2; before, it rose at least every %3"), say_number(*register_wh_, 1),
            say_seconds(still_ms), say_seconds(longest_still_ms_)));
}

void EventDetector::settle_minute() {
    const double mean_w = minute_.sum_w / static_cast<double>(minute_.samples);
    const bool steady = minute_.samples >= 2 && minute_.high_w - minute_.low_w <= std::max(steady_w, steady_share * std::abs(mean_w));
    const std::optional<double> before = std::exchange(steady_w_, steady ? std::optional(mean_w) : std::nullopt);
    if (!steady || !before || !near(*before, mean_w)) return;
    const bool changed = level_w_ && std::abs(mean_w - *level_w_) > std::max(changed_w, changed_share * std::abs(*level_w_));
    if (level_w_ && !changed) return;
    auto known = std::ranges::find_if(levels_, [mean_w](const Level& level) { return near(level.power_w, mean_w); });
    if (known == levels_.end()) {
        if (levels_.size() == most_levels) levels_.erase(levels_.begin());
        levels_.push_back({mean_w, 0});
        known = levels_.end() - 1;
    }
    const int visits = ++known->visits;
    const double from_w = level_w_.value_or(mean_w);
    level_w_ = mean_w;
    if (changed && visits <= own_cycle_visits)
        add(LiveEventKind::load_changed, off_level_ms_, off_level_ms_, std::nullopt,
            say(phrase("live", "from %1 W to %2 W, steady for two minutes"), say_number(from_w, 0), say_number(mean_w, 0)));
    at_level_ms_ = off_level_ms_ = 0;
}

void EventDetector::judge_level(const TraceSample& sample) {
    const double power_w = *sample.power_w;
    if (!on_) { // a pause is no level
        minute_ = {};
        steady_w_.reset();
        return;
    }
    if (level_w_) {
        if (std::abs(power_w - *level_w_) <= std::max(steady_w, steady_share * std::abs(*level_w_))) {
            at_level_ms_ = sample.time_ms;
            off_level_ms_ = 0;
        } else if (off_level_ms_ == 0) {
            off_level_ms_ = sample.time_ms;
        }
    }
    if (minute_.samples > 0 && sample.time_ms - minute_.begin_ms >= minute_ms) {
        settle_minute();
        minute_ = {};
    }
    if (minute_.samples == 0) minute_ = {sample.time_ms, 0, power_w, power_w, 0};
    minute_.sum_w += power_w;
    minute_.low_w = std::min(minute_.low_w, power_w);
    minute_.high_w = std::max(minute_.high_w, power_w);
    ++minute_.samples;
}

void EventDetector::take(const TraceSample& sample) {
    judge_gap(sample);
    if (sample.register_wh) judge_register(sample);
    if (sample.power_w) {
        any_power_ = true;
        judge_power(sample);
        judge_level(sample);
    } else if (!any_power_ && sample.register_wh) {
        judge_still_register(sample);
    }
    last_ms_ = sample.time_ms;
}

} // namespace ullage
