// SPDX-License-Identifier: GPL-3.0-or-later
// The posterior of what is left, against an integration of its own on a fine grid: JCGM 101:2008, clause 5.9, asks that a numerical
// propagation of distributions be checked by its stability; clause 8 validates by the limits of the coverage interval.
#include "forecast/inside/forecast_trend.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <functional>
#include <vector>

namespace ullage::test {
namespace {

struct FineCase {
    const char* name;
    double step_pt;
    std::vector<TrendPoint> points;
    bool coarse = false; ///< the laws tried lie further apart than the readings tell: the limits may then be wider
};

constexpr double label_wh = 1480, least_wh = 0.5 * label_wh, most_wh = 1.1 * label_wh;

double even(double from, double to, int i, int count) { return from + (to - from) * i / (count - 1); }

/// Calls `law` with the gauge as a function of depth, and with its share of the prior, for finely spaced sizes of every family; as gauge_law.h
/// words them.
void each_fine_law(const std::function<void(double share, const std::function<double(double)>& shown)>& law) {
    const auto within = [](double percent) { return std::clamp(percent, 0.0, 100.0); };
    const auto bulged = [&](double b) { return [=](double q) { return within(100 * (1 - q) + 4 * b * q * (1 - q)); }; };
    constexpr int honest = 61, bent = 271, end = 271, fast = 121, offset = 121, blind = 41, at = 65, hold = 22;
    for (int i = 0; i < honest; ++i) law(0.25 / honest, bulged(even(-3, 3, i, honest)));
    for (int i = 0; i < bent; ++i) law(0.20 / bent, bulged(even(-27, 27, i, bent)));
    for (int i = 0; i < end; ++i) {
        const double z = even(-27, 27, i, end);
        law(0.18 / end, [=](double q) { return within(100 - (100 - z) * q + 4 * q * (1 - q)); });
    }
    for (int i = 0; i < fast; ++i) {
        const double m = even(30, 150, i, fast);
        law(0.06 / fast, [=](double q) { return within(100 - (100 + m) * q + 4 * q * (1 - q)); });
    }
    for (int i = 0; i < offset; ++i) {
        const double o = even(-12, 12, i, offset);
        law(0.10 / offset, [=](double q) { return within(100 * (1 - q) + o + 4 * q * (1 - q)); });
    }
    for (int i = 0; i < blind; ++i) law(0.07 / blind, bulged(even(-2, 2, i, blind))); // without own draw as the others
    for (int i = 0; i < at; ++i)
        for (int h = 0; h < hold; ++h)
            for (const double catch_up : {0.0, 8.0}) {
                const double stick = even(4, 100, i, at), held = even(5, 26, h, hold);
                law(0.10 / (2 * at * hold), [=](double q) {
                    const double percent = 100 * (1 - q), fallen = stick - percent;
                    if (fallen <= 0 || fallen >= held + catch_up) return percent;
                    return fallen < held ? stick : stick - (fallen - held) * (held + catch_up) / catch_up;
                });
            }
}

/// Density of E* on `e_wh`, not normed.
std::vector<double> fine_density(const FineCase& one, const std::vector<double>& e_wh) {
    const double variance = one.step_pt * one.step_pt / 12 + 0.9 * 0.9;
    const auto likelihood = [variance](double off_pt) {
        return 0.98 / std::sqrt(2 * std::acos(-1.0) * variance) * std::exp(-off_pt * off_pt / variance / 2) + 0.02 / 100;
    };
    std::vector<double> density(e_wh.size(), 0);
    each_fine_law([&](double share, const std::function<double(double)>& shown) {
        for (std::size_t e = 0; e < e_wh.size(); ++e) {
            double product = share;
            for (const TrendPoint& point : one.points) {
                const double value = shown(std::min(1.0, point.delivered_wh / e_wh[e]));
                product *= likelihood(value <= 2 && point.gauge_percent <= 2 ? 0 : point.gauge_percent - value);
            }
            density[e] += product;
        }
    });
    const double any = 0.04 * likelihood(one.points.front().gauge_percent - 100) * std::pow(0.01, static_cast<double>(one.points.size()) - 1);
    for (std::size_t e = 0; e < e_wh.size(); ++e)
        density[e] = (density[e] + any) * (e_wh[e] <= most_wh ? 1 : std::exp(-(e_wh[e] / most_wh - 1) / 0.03));
    return density;
}

/// The amount below which so much of the weight lies.
double quantile(const std::vector<double>& amounts, const std::vector<double>& weights, double share) {
    double sum = 0, reached = 0;
    for (const double weight : weights) sum += weight;
    for (std::size_t i = 0; i < amounts.size(); ++i) {
        reached += weights[i];
        if (reached >= share * sum) return amounts[i];
    }
    return amounts.back();
}

TEST(PosteriorOfWhatIsLeft, has_the_limits_of_a_fine_integration) {
    const FineCase cases[] = {
        {"one reading late, which an accurate and a bent gauge explain", 1, {{100, 0, 0, 0}, {34, 16, 258, 0}}},
        {"an accurate gauge half way", 1, {{100, 0, 0, 0}, {80, 4, 270, 0}, {50, 12, 660, 0}}},
        {"a coarse gauge", 5, {{100, 0, 0, 0}, {75, 6, 400, 0}}},
        {"a gauge that stood still", 1, {{100, 0, 0, 0}, {90, 3, 140, 0}, {90, 8, 380, 0}, {60, 11, 600, 0}}, true},
    };
    for (const FineCase& one : cases) {
        SCOPED_TRACE(one.name);
        const double taken_wh = one.points.back().delivered_wh;
        const std::vector<LeftWeight> posterior = left_by_trend({one.points, one.points.back(), true, one.step_pt, least_wh, most_wh}, {OwnDraw{}});
        ASSERT_FALSE(posterior.empty());
        std::vector<double> lefts, weights, e_wh, fine_lefts;
        for (const LeftWeight& left : posterior) {
            lefts.push_back(left.left_wh);
            weights.push_back(left.weight);
        }
        constexpr int fine = 500;
        for (int i = 0; i < fine; ++i) e_wh.push_back(even(std::max(least_wh, taken_wh * 1.001), 1.3 * most_wh, i, fine));
        for (const double e : e_wh) fine_lefts.push_back(e - taken_wh);
        const std::vector<double> density = fine_density(one, e_wh);
        // A cell of the posterior's grid is some 4 % wide; its laws lie 3 points apart.
        constexpr double tolerance_wh = 0.03 * label_wh;
        EXPECT_LE(quantile(lefts, weights, 0.025), quantile(fine_lefts, density, 0.025) + tolerance_wh) << "never narrower";
        EXPECT_GE(quantile(lefts, weights, 0.975), quantile(fine_lefts, density, 0.975) - tolerance_wh) << "never narrower";
        if (one.coarse) continue;
        for (const double share : {0.025, 0.5, 0.975})
            EXPECT_NEAR(quantile(lefts, weights, share), quantile(fine_lefts, density, share), tolerance_wh) << share;
    }
}

} // namespace
} // namespace ullage::test
