// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/gauge_thinner.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <utility>

namespace ullage {
namespace {

constexpr int leap_from_pt = 3, leap_to_zero_pt = 2;
constexpr long leap_samples = 3;
constexpr UtcMs leap_lasts_ms = 30'000, zero_lasts_ms = 10 * 60'000, settled_after_ms = 5 * 60'000;
constexpr UtcMs flickers_settle = 4; ///< times the length of the flicker
constexpr double most_percent = 100;
constexpr int most_places = 3;

constexpr UtcMs window_ms = 300'000;
constexpr std::size_t window_samples = 61, most_in_window = 4096;
constexpr std::size_t least_turns = 3; ///< of a flicker

/// Whether the gauge turns back at more than a twelfth of its steps.
bool flickers(const std::vector<GaugeStep>& steps) {
    std::size_t turns = 0;
    for (std::size_t i = 1; i < steps.size(); ++i)
        turns += (steps[i].to_percent > steps[i].from_percent) != (steps[i - 1].to_percent > steps[i - 1].from_percent);
    return turns >= least_turns && 12 * turns > steps.size();
}

int cell_of(double percent) { return static_cast<int>(std::floor(percent + 0.5)); }

} // namespace

void GaugeStepper::take(UtcMs time_ms, double percent) { take(Seen{time_ms, percent}); }

void GaugeStepper::note_places(double percent) {
    static constexpr double scales[] = {1, 10, 100, 1000};
    while (decimals_ < most_places && std::abs(percent * scales[decimals_] - std::round(percent * scales[decimals_])) > 1e-6) ++decimals_;
}

void GaugeStepper::begin(const Seen& seen) {
    any_ = true;
    at_start_ = 1;
    cell_ = cell_of(seen.percent);
    last_ = seen;
    log_.first_ms = log_.last_ms = seen.time_ms;
    log_.first_percent = log_.last_percent = seen.percent;
}

/// Whether the sample belongs to a leap, which may be a drop-out.
bool GaugeStepper::leaps(const Seen& seen) {
    const int away = std::abs(cell_of(seen.percent) - cell_), from_beside = beside_ ? std::abs(cell_of(seen.percent) - *beside_) : away;
    const bool near = cell_of(seen.percent) == 0 ? std::max(away, from_beside) < leap_to_zero_pt : std::min(away, from_beside) < leap_from_pt;
    if (near) {
        if (leap_) log_.doubted += leap_->count;
        leap_.reset();
        return false;
    }
    // A fast drain, seldom sampled, leaps on and on the same way; any other leap from a leap begins anew.
    const int on = leap_ ? cell_of(seen.percent) - cell_of(leap_->first.percent) : 0;
    if (leap_ && std::abs(on) >= leap_from_pt && cell_of(seen.percent) != 0 && (on < 0) == (cell_of(leap_->first.percent) < cell_)) {
        accept_leap();
        return leaps(seen);
    }
    if (!leap_ || std::abs(on) >= leap_from_pt) {
        if (leap_) log_.doubted += leap_->count;
        leap_ = Leap{seen, seen.time_ms, 0};
    }
    ++leap_->count;
    leap_->last_ms = seen.time_ms;
    const bool to_zero = cell_of(leap_->first.percent) == 0;
    if (!to_zero && leap_->count >= leap_samples && leap_->last_ms - leap_->first.time_ms >= leap_lasts_ms) accept_leap();
    return true;
}

void GaugeStepper::accept_leap() {
    const Leap leap = *std::exchange(leap_, std::nullopt);
    log_.samples += leap.count;
    // What the log began with was a drop-out where it did not last either.
    const bool rises = cell_of(leap.first.percent) > cell_;
    if (log_.steps.empty() && !beside_ && (cell_ == 0 || (rises && at_start_ < leap_samples))) {
        log_.doubted += at_start_;
        log_.samples -= at_start_;
        begin(leap.first);
    } else {
        if (beside_ && settled_since_) {
            add(before_beside_, *settled_since_);
            last_ = other_;
        }
        beside_.reset();
        settled_since_.reset();
        add(last_, leap.first);
        cell_ = cell_of(leap.first.percent);
    }
    last_ = {leap.last_ms, leap.first.percent};
    log_.last_ms = leap.last_ms;
    log_.last_percent = leap.first.percent;
}

void GaugeStepper::add(const Seen& from, const Seen& to) {
    if (log_.steps.size() < most_steps) log_.steps.push_back({from.time_ms, to.time_ms, from.percent, to.percent});
}

void GaugeStepper::go_on(const Seen& seen) {
    const int cell = cell_of(seen.percent);
    if (beside_ && cell != cell_ && cell != *beside_) {
        if (settled_since_) {
            add(before_beside_, *settled_since_);
            cell_ = *beside_;
            last_ = other_;
        }
        beside_.reset();
        settled_since_.reset();
    }
    if (cell == cell_) {
        last_ = seen;
        settled_since_.reset();
        return;
    }
    if (!beside_ && std::abs(cell - cell_) > 1) {
        add(last_, seen);
        cell_ = cell;
        last_ = seen;
        return;
    }
    if (!beside_) {
        beside_ = cell;
        before_beside_ = last_;
    }
    if (!settled_since_) settled_since_ = seen;
    other_ = seen;
    const UtcMs flickered_ms = settled_since_->time_ms - before_beside_.time_ms;
    if (seen.time_ms - settled_since_->time_ms < std::max(settled_after_ms, flickers_settle * flickered_ms)) return;
    add(before_beside_, *settled_since_);
    cell_ = cell;
    last_ = seen;
    beside_.reset();
    settled_since_.reset();
}

void GaugeStepper::take(const Seen& seen) {
    if (!any_) {
        begin(seen);
        ++log_.samples;
        note_places(seen.percent);
        return;
    }
    if (leaps(seen)) return;
    ++log_.samples;
    if (log_.steps.empty() && !beside_ && cell_of(seen.percent) == cell_) ++at_start_;
    note_places(seen.percent);
    log_.last_ms = seen.time_ms;
    log_.last_percent = seen.percent;
    go_on(seen);
}

std::optional<GaugeLog> GaugeStepper::finish() {
    if (leap_) {
        const bool lasts = leap_->last_ms - leap_->first.time_ms >= zero_lasts_ms && leap_->count >= leap_samples;
        if (lasts) accept_leap();
        else log_.doubted += leap_->count;
    }
    if (!any_ || log_.samples == 0) return std::nullopt;
    if (beside_ && settled_since_) add(before_beside_, *settled_since_);
    log_.resolution_pt = std::pow(10.0, -decimals_);
    return std::move(log_);
}

void GaugeThinner::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        if (!sample.gauge_percent) continue;
        if (*sample.gauge_percent < 0 || *sample.gauge_percent > most_percent) {
            ++beyond_;
            continue;
        }
        ++in_range_;
        as_shown_.take(sample.time_ms, *sample.gauge_percent);
        take_for_median(sample.time_ms, *sample.gauge_percent);
    }
}

void GaugeThinner::take_for_median(UtcMs time_ms, double percent) {
    if (!window_.empty() && time_ms - window_from_ms_ >= window_ms && window_.size() >= window_samples) close_window();
    if (window_.empty()) window_from_ms_ = time_ms;
    window_to_ms_ = time_ms;
    if (window_.size() < most_in_window) window_.push_back(percent);
}

void GaugeThinner::close_window() {
    const auto middle = window_.begin() + static_cast<std::ptrdiff_t>(window_.size() / 2);
    std::nth_element(window_.begin(), middle, window_.end());
    of_medians_.take(window_from_ms_ + (window_to_ms_ - window_from_ms_) / 2, *middle);
    window_.clear();
}

std::optional<GaugeLog> GaugeThinner::finish() {
    std::optional<GaugeLog> shown = as_shown_.finish();
    if (shown) shown->doubted += beyond_;
    if (!shown || !flickers(shown->steps)) return shown;
    if (!window_.empty()) close_window();
    std::optional<GaugeLog> calm = of_medians_.finish();
    if (!calm) return shown;
    calm->calmed = true;
    calm->resolution_pt = shown->resolution_pt;
    calm->samples = in_range_;
    calm->doubted = beyond_;
    return calm;
}

} // namespace ullage
