// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/ticks.h"

#include "style/numbers.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

int decimals_of(double step) {
    if (step <= 0) return 0;
    return std::clamp(static_cast<int>(std::ceil(-std::log10(step) - 1e-9)), 0, 9);
}

} // namespace

double nice_step(double raw) {
    const double decade = std::pow(10.0, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * decade >= raw * (1 - 1e-9)) return factor * decade;
    return 10 * decade;
}

namespace {

double hour_step(double raw) {
    for (const double step : {1.0, 2.0, 3.0, 6.0, 12.0, 24.0})
        if (raw <= step * (1 + 1e-9)) return raw > 0.5 * (1 + 1e-9) ? step : nice_step(raw);
    return 24 * nice_step(raw / 24);
}

TickScale ticks_by(double (*step_for)(double), double lo, double hi, int most, bool widen) {
    if (!std::isfinite(lo) || !std::isfinite(hi)) {
        lo = 0;
        hi = 1;
    }
    if (hi < lo) std::swap(lo, hi);
    // Below this the steps would vanish in the rounding of the doubles themselves.
    const double least = 1e-9 * std::max({1e-6, std::fabs(lo), std::fabs(hi)});
    if (hi - lo < least) {
        const double spread = lo == 0 ? 0.5 : std::fabs(lo) * 0.05;
        lo -= spread;
        hi += spread;
    }
    TickScale scale{lo, hi, step_for((hi - lo) / std::max(1, most)), {}};
    if (widen) {
        scale.minimum = std::floor(lo / scale.step + 1e-9) * scale.step;
        scale.maximum = std::ceil(hi / scale.step - 1e-9) * scale.step;
    }
    const auto first = static_cast<long long>(std::ceil(scale.minimum / scale.step - 1e-9));
    const auto last = static_cast<long long>(std::floor(scale.maximum / scale.step + 1e-9));
    for (long long n = first; n <= last; ++n) scale.values.push_back(static_cast<double>(n) * scale.step);
    return scale;
}

} // namespace

TickScale linear_ticks(double lo, double hi, int most, bool widen) { return ticks_by(nice_step, lo, hi, most, widen); }

TickScale hour_ticks(double lo, double hi, int most, bool widen) { return ticks_by(hour_step, lo, hi, most, widen); }

TickScale log_ticks(double lo, double hi, int most, bool widen) {
    if (!(lo > 0) || !(hi > 0) || !std::isfinite(lo) || !std::isfinite(hi)) {
        lo = 1;
        hi = 10;
    }
    if (hi < lo) std::swap(lo, hi);
    if (hi / lo < 1.0001) {
        lo /= 2;
        hi *= 2;
    }
    std::vector<double> ladder;
    const int low_decade = static_cast<int>(std::floor(std::log10(lo))) - 1;
    const int high_decade = static_cast<int>(std::ceil(std::log10(hi))) + 1;
    for (int decade = low_decade; decade <= high_decade; ++decade)
        for (const double factor : {1.0, 2.0, 5.0}) ladder.push_back(factor * std::pow(10.0, decade));
    TickScale scale{lo, hi, 0, {}};
    if (widen) {
        scale.minimum = *std::prev(std::upper_bound(ladder.begin(), ladder.end(), lo * (1 + 1e-9)));
        scale.maximum = *std::lower_bound(ladder.begin(), ladder.end(), hi * (1 - 1e-9));
    }
    const auto inside = [&scale](double value) { return value >= scale.minimum * (1 - 1e-9) && value <= scale.maximum * (1 + 1e-9); };
    std::copy_if(ladder.begin(), ladder.end(), std::back_inserter(scale.values), inside);
    if (static_cast<int>(scale.values.size()) > std::max(1, most)) {
        // Whole decades, and of those every nth so that they fit.
        std::vector<double> decades;
        for (int decade = low_decade; decade <= high_decade; ++decade)
            if (const double value = std::pow(10.0, decade); inside(value)) decades.push_back(value);
        const auto skip = (decades.size() + static_cast<std::size_t>(most) - 1) / static_cast<std::size_t>(std::max(1, most));
        scale.values.clear();
        for (std::size_t n = 0; n < decades.size(); n += std::max<std::size_t>(1, skip)) scale.values.push_back(decades[n]);
    }
    if (scale.values.size() < 2) {
        // A narrow window between two rungs: a linear ladder reads better than a single label.
        const TickScale linear = linear_ticks(scale.minimum, scale.maximum, most, false);
        scale.values = linear.values;
        scale.step = linear.step;
    }
    return scale;
}

QString tick_text(double value, double step) {
    if (step > 0) return shown_number(value, decimals_of(step));
    int decimals = 0;
    const double size = std::fabs(value);
    while (decimals < 6 && std::fabs(size * std::pow(10.0, decimals) - std::round(size * std::pow(10.0, decimals))) > 1e-6) ++decimals;
    return shown_number(value, decimals);
}

} // namespace ullage
