// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/clock_evidence.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double least_step_w = 5, least_step_share = 0.2;
constexpr double off_below_mean = 0.05;
constexpr long most_resets = 1000;

} // namespace

CrossingFinder::CrossingFinder(const std::vector<double>& values_wh, double step_wh) : reached_ms_(values_wh.size()) {
    for (std::size_t v = 0; v < values_wh.size(); ++v) {
        lows_.push_back({values_wh[v] - step_wh / 2, v});
        highs_.push_back({values_wh[v] + step_wh, v});
    }
    std::ranges::sort(lows_, {}, &Level::wh);
    std::ranges::sort(highs_, {}, &Level::wh);
}

void CrossingFinder::start(double register_wh) {
    std::ranges::fill(reached_ms_, std::nullopt);
    // What the register has passed already has no moment.
    low_ = static_cast<std::size_t>(std::ranges::upper_bound(lows_, register_wh, {}, &Level::wh) - lows_.begin());
    high_ = static_cast<std::size_t>(std::ranges::upper_bound(highs_, register_wh, {}, &Level::wh) - highs_.begin());
}

void CrossingFinder::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        if (!sample.register_wh || resets_ > most_resets) continue;
        const double wh = *sample.register_wh;
        if (!before_) {
            start(wh);
        } else if (wh < before_->second) {
            ++resets_;
            start(wh);
        } else {
            for (; low_ < lows_.size() && lows_[low_].wh <= wh; ++low_) reached_ms_[lows_[low_].value] = before_->first;
            for (; high_ < highs_.size() && highs_[high_].wh <= wh; ++high_)
                if (const auto reached = reached_ms_[highs_[high_].value]) crossings_.push_back({highs_[high_].value, *reached, sample.time_ms});
        }
        before_ = {sample.time_ms, wh};
    }
}

void StepFinder::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        const std::optional<double> seen_w = sample.power_w ? sample.power_w : sample.output_w;
        if (!seen_w) continue;
        const double watts = *seen_w;
        if (count_++ == 0) first_ms_ = sample.time_ms;
        sum_w_ += watts;
        if (before_) {
            const double change_w = watts - before_w_;
            const double larger_w = std::max(std::abs(watts), std::abs(before_w_));
            if (!too_many_ && std::abs(change_w) >= std::max(least_step_w, least_step_share * larger_w)) {
                if (steps_.size() == most_steps) {
                    too_many_ = true;
                    steps_.clear();
                } else {
                    steps_.push_back({before_->time_ms, sample.time_ms, change_w});
                }
            }
        }
        if (watts > 0 && watts >= off_below_mean * sum_w_ / static_cast<double>(count_)) {
            last_on_ms_ = sample.time_ms;
            last_on_w_ = watts;
            off_ms_.reset();
        } else if (last_on_ms_ && !off_ms_) {
            off_ms_ = sample.time_ms;
        }
        before_ = sample;
        before_w_ = watts;
    }
}

std::optional<PowerStep> StepFinder::last_fall(UtcMs least_ms) const {
    if (!last_on_ms_ || count_ < 2) return std::nullopt;
    if (!off_ms_ && before_->time_ms - first_ms_ < least_ms) return std::nullopt;
    const UtcMs interval_ms = (before_->time_ms - first_ms_) / (count_ - 1);
    return PowerStep{*last_on_ms_, off_ms_.value_or(*last_on_ms_ + interval_ms), -last_on_w_};
}

} // namespace ullage
