// SPDX-License-Identifier: GPL-3.0-or-later
// Distribution of rectangular(-a, a) + normal(0, s). With G(z) = z Phi(z) + phi(z), the integral of Phi,
// F(h) = s/(2a) [G((h + a)/s) - G((h - a)/s)], and the coverage of -h .. h is 2 F(h) - 1.
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace ullage {
namespace {

double density(double z) { return std::exp(-z * z / 2) / std::sqrt(2 * std::numbers::pi); }

double below(double z) { return std::erfc(-z / std::numbers::sqrt2) / 2; }

double integral_of_below(double z) { return z * below(z) + density(z); }

/// Probability that the sum lies within -h .. h; z = h/s, r = a/s.
double covered(double z, double r) {
    // A narrow rectangle: the difference of G would lose digits, so Taylor in r (next term under 1e-15 at r = 0.01).
    if (r < 0.01) {
        const double second = -z * density(z), fourth = (3 * z - z * z * z) * density(z);
        return 2 * (below(z) + r * r / 6 * second + r * r * r * r / 120 * fourth) - 1;
    }
    return (integral_of_below(z + r) - integral_of_below(z - r)) / r - 1;
}

/// Its derivative by z.
double covered_slope(double z, double r) {
    if (r < 0.01) return 2 * density(z) * (1 + r * r / 6 * (z * z - 1));
    return (below(z + r) - below(z - r)) / r;
}

} // namespace

double half_width_of_sum(double rectangular, double normal_sd, double coverage) {
    if (normal_sd == 0) return coverage * rectangular;
    const double r = rectangular / normal_sd;
    if (std::isinf(r)) return coverage * rectangular;
    // |sum| <= a + |normal| bounds the answer from above; the coverage rises with z throughout. Newton's steps, bisection where one leaves
    // the bracket, until a step no longer moves the last digits.
    double low = 0, high = r + coverage_factor(coverage, INFINITY);
    double z = std::min(std::hypot(coverage * r, high - r), high);
    for (int step = 0; step < 200; ++step) {
        const double missing = coverage - covered(z, r);
        const double move = missing / covered_slope(z, r);
        if (std::abs(move) <= 1e-15 * z) break;
        (missing > 0 ? low : high) = z;
        const double middle = low + (high - low) / 2;
        if (middle <= low || middle >= high) break;
        z = z + move > low && z + move < high ? z + move : middle;
    }
    return normal_sd * z;
}

double coverage_of_sum(double rectangular, double normal_sd, double half_width) {
    const double r = rectangular / normal_sd;
    if (normal_sd == 0 || std::isinf(r)) return rectangular == 0 ? 1 : std::min(1.0, half_width / rectangular);
    return covered(half_width / normal_sd, r);
}

BeyondHalfWidth::BeyondHalfWidth(double coverage) : coverage_(coverage) {
    constexpr int steps = 256;
    for (int step = 0; step < steps; ++step) half_widths_.push_back(half_width_of_sum(step / static_cast<double>(steps - step), 1, coverage));
}

bool BeyondHalfWidth::operator()(double distance, double rectangular, double normal_sd) const {
    constexpr double last_digits = 1e-9; // more than the table can be wrong by
    const double share = rectangular / (rectangular + normal_sd) * static_cast<double>(half_widths_.size());
    if (share >= 0 && share < static_cast<double>(half_widths_.size() - 1)) {
        const auto below = static_cast<std::size_t>(share);
        if (distance > half_widths_[below + 1] * normal_sd * (1 + last_digits)) return true;
        if (distance < half_widths_[below] * normal_sd * (1 - last_digits)) return false;
    }
    return coverage_of_sum(rectangular, normal_sd, distance) > coverage_;
}

} // namespace ullage
