// SPDX-License-Identifier: GPL-3.0-or-later
// Sen 1968 (J. Am. Stat. Assoc. 63, 1379): N slopes of the pairs with different x, their median, and as limits the slopes of
// rank M1 = (N - C)/2 and M2 + 1 = (N + C)/2 + 1, C = z sqrt(var S), var S Kendall's variance with ties in x and y.
#include "numerics/distributions.h"
#include "numerics/inside/sample_check.h"
#include "numerics/line_fit.h"

#include <algorithm>
#include <cmath>
#include <numeric>
#include <string>
#include <vector>

namespace ullage {
namespace {

constexpr Phrase robust_task = phrase("numerics", "robust line fit");
constexpr std::size_t most_points = 3000; // 4.5 million pairs, 36 MB

double median(std::vector<double> values) {
    const std::size_t half = values.size() / 2;
    const auto middle = values.begin() + static_cast<std::ptrdiff_t>(half);
    std::nth_element(values.begin(), middle, values.end());
    if (values.size() % 2 == 1) return *middle;
    return std::midpoint(*std::max_element(values.begin(), middle), *middle);
}

/// n(n-1)(2n+5) summed over the groups of equal values: what ties take from Kendall's variance.
double tie_term(std::span<const double> values) {
    std::vector<double> sorted(values.begin(), values.end());
    std::sort(sorted.begin(), sorted.end());
    double sum = 0;
    for (auto from = sorted.begin(); from != sorted.end();) {
        const auto to = std::upper_bound(from, sorted.end(), *from);
        const auto k = static_cast<double>(to - from);
        sum += k * (k - 1) * (2 * k + 5);
        from = to;
    }
    return sum;
}

} // namespace

Result<RobustLine> fit_robust_line(std::span<const double> x, std::span<const double> y, double confidence) {
    if (!(confidence > 0 && confidence < 1))
        return Error{Failure::bad_input, say(phrase("numerics", "the confidence must lie between 0 and 1")), say(robust_task),
                     say(phrase("numerics", "give 0.95 for 95 %"))};
    if (auto error = check_points(robust_task, x, y, {}, 2)) return *error;
    if (x.size() > most_points)
        return Error{Failure::refused,
                     say_count(x.size(),
                               phrases("numerics", "%n points are more than the %1 that it takes", "%n point is more than the %1 that it takes"),
                               say_number(most_points)),
                     say(robust_task), say(phrase("numerics", "thin out the points"))};
    if (auto error = check_spread(robust_task, x)) return *error;

    const std::size_t n = x.size();
    std::vector<double> slopes;
    slopes.reserve(n * (n - 1) / 2);
    for (std::size_t i = 0; i < n; ++i)
        for (std::size_t j = i + 1; j < n; ++j)
            if (x[i] != x[j]) slopes.push_back((y[j] - y[i]) / (x[j] - x[i]));
    if (std::any_of(slopes.begin(), slopes.end(), [](double s) { return !std::isfinite(s); })) return out_of_range(robust_task);
    std::sort(slopes.begin(), slopes.end());

    const auto count = static_cast<double>(slopes.size()), points = static_cast<double>(n);
    const double variance = (points * (points - 1) * (2 * points + 5) - tie_term(x) - tie_term(y)) / 18;
    const double reach = normal_quantile((1 + confidence) / 2) * std::sqrt(std::max(0.0, variance));
    // Ranks are rounded outwards, and to the outermost slopes where few points cannot give the confidence.
    const double low = std::clamp(std::floor((count - reach) / 2), 1.0, count);
    const double high = std::clamp(std::ceil((count + reach) / 2) + 1, 1.0, count);

    RobustLine line;
    const std::size_t half = slopes.size() / 2;
    line.slope = slopes.size() % 2 == 1 ? slopes[half] : std::midpoint(slopes[half - 1], slopes[half]);
    line.slope_lower = slopes[static_cast<std::size_t>(low) - 1];
    line.slope_upper = slopes[static_cast<std::size_t>(high) - 1];
    line.intercept_separate = median({y.begin(), y.end()}) - line.slope * median({x.begin(), x.end()});
    std::vector<double> levels(n);
    for (std::size_t i = 0; i < n; ++i) levels[i] = y[i] - line.slope * x[i];
    line.intercept_joint = median(std::move(levels));
    if (!std::isfinite(line.intercept_joint) || !std::isfinite(line.intercept_separate)) return out_of_range(robust_task);
    return line;
}

} // namespace ullage
