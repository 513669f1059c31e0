// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/inside/weighted_quantile.h"

#include <algorithm>
#include <cstddef>

namespace ullage {
namespace {

double quantile(const WeightedValues& values, double wanted) {
    double before = 0;
    for (std::size_t i = 0; i < values.size(); ++i) {
        const double middle = before + values[i].second / 2;
        if (middle >= wanted) {
            if (i == 0) return values[i].first;
            const double previous = before - values[i - 1].second / 2;
            if (middle <= previous) return values[i].first;
            return values[i - 1].first + (wanted - previous) / (middle - previous) * (values[i].first - values[i - 1].first);
        }
        before += values[i].second;
    }
    return values.back().first;
}

} // namespace

std::optional<Spread> spread_of(WeightedValues values, double coverage) {
    std::ranges::sort(values);
    return spread_of_sorted(values, coverage);
}

std::optional<Spread> spread_of_sorted(const WeightedValues& values, double coverage) {
    double total = 0;
    for (const auto& [value, weight] : values) total += weight;
    if (!(total > 0)) return std::nullopt;
    return Spread{quantile(values, (1 - coverage) / 2 * total), quantile(values, total / 2), quantile(values, (1 + coverage) / 2 * total)};
}

} // namespace ullage
