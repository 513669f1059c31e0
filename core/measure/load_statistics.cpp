// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/load_statistics.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace ullage {
namespace {

constexpr double least_w = 1e-3; ///< powers below share the first bin
constexpr double explained_share = 0.8;
constexpr double least_ratio = 1.5, least_step_w = 1;

} // namespace

std::size_t LoadMeter::bin_of(double watts) {
    // A logarithm for each of millions of samples would take longer than all else here.
    static const auto parts = [] {
        std::array<double, parts_of_octave> begins{};
        for (std::size_t part = 0; part < parts_of_octave; ++part)
            begins[part] = std::exp2(static_cast<double>(part) / static_cast<double>(parts_of_octave)) / 2;
        return begins;
    }();
    if (!(watts > least_w)) return 0;
    int exponent = 0;
    const double mantissa = std::frexp(watts / least_w, &exponent); // 0.5 to 1
    const auto octave = static_cast<std::size_t>(std::max(exponent - 1, 0));
    const auto part = static_cast<std::size_t>(std::ranges::upper_bound(parts, mantissa) - parts.begin());
    return std::min(bins - 1, parts_of_octave * octave + part);
}

void LoadMeter::step(const TraceSample& before, std::size_t before_bin, const TraceSample& sample, std::size_t bin, double hours) {
    const double a = *before.power_w, b = *sample.power_w;
    const double wh = hours * (a + b) / 2;
    sums_.covered_h += hours;
    sums_.energy_wh += wh;
    sums_.square_w2h += hours * (a * a + a * b + b * b) / 3;
    // Each sample stands for half of the time to its neighbour.
    hours_in_[before_bin] += hours / 2;
    energy_in_[before_bin] += hours / 2 * a;
    hours_in_[bin] += hours / 2;
    energy_in_[bin] += hours / 2 * b;
    if (!before.register_wh || !sample.register_wh) return;
    any_register_ = true;
    if (*sample.register_wh < *before.register_wh) register_falls_ = true;
    register_wh_ += *sample.register_wh - *before.register_wh;
}

void LoadMeter::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        if (!sample.power_w) continue;
        const std::size_t bin = bin_of(*sample.power_w);
        sums_.peak_w = before_ ? std::max(sums_.peak_w, *sample.power_w) : *sample.power_w;
        if (before_) {
            const double hours = hours_between(before_->time_ms, sample.time_ms);
            if (3600 * hours <= gap_limit_s_) {
                step(*before_, before_bin_, sample, bin, hours);
            } else {
                ++sums_.gaps;
                sums_.gap_h += hours;
            }
        }
        before_ = sample;
        before_bin_ = bin;
    }
}

void LoadMeter::find_levels() {
    const double hours = sums_.covered_h, energy = sums_.energy_wh;
    if (hours <= 0) return;
    double low_h = 0, low_wh = 0, best = 0, total = 0;
    std::size_t parting = 0;
    for (std::size_t bin = 0; bin < bins; ++bin) {
        if (hours_in_[bin] <= 0) continue;
        const double apart = energy_in_[bin] / hours_in_[bin] - energy / hours;
        total += hours_in_[bin] * apart * apart;
        low_h += hours_in_[bin];
        low_wh += energy_in_[bin];
        const double high_h = hours - low_h;
        if (high_h <= 1e-9 * hours) break;
        const double step_w = (energy - low_wh) / high_h - low_wh / low_h;
        const double between = low_h * high_h / hours * step_w * step_w;
        if (between <= best) continue;
        best = between;
        parting = bin;
    }
    low_h = low_wh = 0;
    for (std::size_t bin = 0; bin <= parting; ++bin) {
        low_h += hours_in_[bin];
        low_wh += energy_in_[bin];
    }
    if (best <= 0 || low_h <= 0 || hours - low_h <= 0) return;
    const double off_w = low_wh / low_h, on_w = (energy - low_wh) / (hours - low_h);
    if (best < explained_share * total || on_w < least_ratio * off_w + least_step_w) return;
    step_w_ = on_w - off_w;
    cycle_ = DutyCycle{(on_w + off_w) / 2, on_w, off_w, 0, 0};
}

bool LoadMeter::needs_second_pass() {
    if (!cycle_) find_levels();
    return cycle_.has_value();
}

void LoadMeter::count(double hours, double watts) {
    (on_ ? on_h_ : off_h_) += hours;
    (on_ ? on_wh_ : off_wh_) += hours * watts;
}

void LoadMeter::take_again(std::span<const TraceSample> samples) {
    if (!cycle_) return;
    for (const TraceSample& sample : samples) {
        if (!sample.power_w) continue;
        const double hours = again_before_ ? hours_between(again_before_->time_ms, sample.time_ms) : 0;
        if (!again_before_ || 3600 * hours > gap_limit_s_) {
            // What happened in a gap is no start.
            on_ = *sample.power_w > cycle_->threshold_w;
        } else {
            // Each sample stands for half of the time to its neighbour.
            count(hours / 2, *again_before_->power_w);
            if (!on_ && *sample.power_w > cycle_->threshold_w + step_w_ / 10) {
                on_ = true;
                ++starts_;
            } else if (on_ && *sample.power_w < cycle_->threshold_w - step_w_ / 10) {
                on_ = false;
            }
            count(hours / 2, *sample.power_w);
        }
        again_before_ = sample;
    }
}

std::optional<LoadStatistics> LoadMeter::statistics() const {
    if (sums_.covered_h <= 0) return std::nullopt;
    LoadStatistics result = sums_;
    result.mean_w = sums_.energy_wh / sums_.covered_h;
    result.daily_wh = 24 * result.mean_w;
    result.gap_most_wh = std::max(0.0, sums_.peak_w) * sums_.gap_h;
    if (any_register_ && !register_falls_) result.register_wh = register_wh_;
    if (cycle_ && on_h_ > 0 && off_h_ > 0) {
        result.cycle = cycle_;
        result.cycle->on_w = on_wh_ / on_h_;
        result.cycle->off_w = off_wh_ / off_h_;
        result.cycle->duty = on_h_ / (on_h_ + off_h_);
        result.cycle->starts_per_hour = static_cast<double>(starts_) / (on_h_ + off_h_);
    }
    return result;
}

} // namespace ullage
