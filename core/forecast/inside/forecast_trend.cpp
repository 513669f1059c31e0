// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: E* = e_wh holds what the socket could get at no time cost; W = D + P*·t + c·Q taken; q = W/E* depth; s gauge in %.
#include "forecast/inside/forecast_trend.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ullage {
namespace {

constexpr double shape_pt = 0.8;     ///< of a gauge about the nearest law
constexpr double most_readings = 15; ///< that count as independent
constexpr double most_bend_pt = 14, most_end_pt = 10;
constexpr double lowest_percent = 2;
constexpr std::size_t grid = 60;
constexpr double most_times_taken = 30; ///< E* where no label limits it

struct Law {
    double bend_pt = 0;
    double start_percent = 100;
    double end_percent = 0;
    bool blind = false; ///< to the unit's own consumption
    double weight = 1;

    [[nodiscard]] double shown(double q) const {
        return std::clamp(start_percent + (end_percent - start_percent) * q + 4 * bend_pt * q * (1 - q), 0.0, 100.0);
    }
    /// The first depth at which it shows `percent`.
    [[nodiscard]] double depth_at(double percent) const {
        double low = 0, high = 1;
        if (shown(0) <= percent) return 0;
        for (int i = 0; i < 30; ++i) {
            const double middle = (low + high) / 2;
            (shown(middle) > percent ? low : high) = middle;
        }
        return high;
    }
};

std::vector<Law> make_laws() {
    std::vector<Law> laws;
    const auto add = [&laws](double share, std::vector<Law> some) {
        double total = 0;
        for (const Law& law : some) total += law.weight;
        for (Law& law : some) {
            law.weight *= share / total;
            laws.push_back(law);
        }
    };
    // Large errors are rarer than small ones.
    const auto rarer = [](double size, double most) { return 1 - std::abs(size) / (most + 2); };
    std::vector<Law> bent, ends, offset, blind;
    for (double b = -most_bend_pt; b <= most_bend_pt; b += 2) bent.push_back({.bend_pt = b, .weight = rarer(b, most_bend_pt)});
    for (const double bend : {-3.0, 0.0, 3.0}) {
        for (double z = -most_end_pt; z <= most_end_pt; z += 2) {
            ends.push_back({.bend_pt = bend, .end_percent = z, .weight = rarer(z, most_end_pt)});
            offset.push_back({.bend_pt = bend, .start_percent = 100 + z, .end_percent = z, .weight = rarer(z, most_end_pt)});
        }
        blind.push_back({.bend_pt = bend, .blind = true});
    }
    add(0.40, std::move(bent));
    add(0.25, std::move(ends));
    add(0.25, std::move(offset));
    add(0.10, std::move(blind));
    return laws;
}

const std::vector<Law>& laws() {
    static const std::vector<Law> all = make_laws();
    return all;
}

double taken_wh(const TrendPoint& point, const OwnDraw& draw) {
    return point.delivered_wh + draw.no_load_w * point.on_hours + draw.curvature_per_w * point.squared_w2h;
}

double residual_sum(const TrendSetup& setup, const Law& law, double first_q, double e_wh, const OwnDraw& draw, double variance) {
    double sum = 0;
    for (const TrendPoint& point : setup.points) {
        const double shown = law.shown(first_q + (law.blind ? point.delivered_wh : taken_wh(point, draw)) / e_wh);
        // A gauge that has come to its lowest value says no more than that, whether it stays at 0, 1 or 2 %.
        if (shown <= lowest_percent && point.gauge_percent <= lowest_percent) continue;
        const double off_pt = point.gauge_percent - shown;
        sum += off_pt * off_pt / variance;
    }
    return sum;
}

} // namespace

std::vector<LeftWeight> left_by_trend(const TrendSetup& setup, const std::vector<OwnDraw>& draws) {
    const double variance = setup.gauge_step_pt * setup.gauge_step_pt / 12 + shape_pt * shape_pt;
    const double readings = static_cast<double>(setup.points.size());
    struct Tried {
        std::size_t left;
        double law_weight, residuals;
    };
    std::vector<LeftWeight> result;
    std::vector<Tried> tried;
    double least = std::numeric_limits<double>::infinity();
    for (const OwnDraw& draw : draws) {
        const double taken = taken_wh(setup.end, draw);
        const double least_wh = taken * 1e-3;
        const double most_wh = setup.most_wh ? *setup.most_wh - taken : taken * (most_times_taken - 1);
        if (taken <= 0 || most_wh <= least_wh) continue;
        const double ratio = std::log(most_wh / least_wh) / static_cast<double>(grid);
        for (std::size_t i = 0; i < grid; ++i) {
            const double left_wh = least_wh * std::exp(ratio * (static_cast<double>(i) + 0.5));
            // dE*/E* over a cell of the grid, which is even in log(left).
            const double prior = left_wh / (taken + left_wh);
            result.push_back({left_wh, draw, 0});
            for (const Law& law : laws()) {
                const double first_q = setup.started_full ? 0 : law.depth_at(setup.points.front().gauge_percent);
                if (first_q >= 1) continue;
                const double e_wh = (taken + left_wh) / (1 - first_q);
                if (setup.most_wh && e_wh > *setup.most_wh) continue;
                const double residuals = residual_sum(setup, law, first_q, e_wh, draw, variance);
                least = std::min(least, residuals);
                tried.push_back({result.size() - 1, prior * law.weight, residuals});
            }
        }
    }
    // Where not even the best law fits, none tells as much as its readings seem to.
    const double scale = std::min(1.0, most_readings / readings) / std::max(1.0, least / readings);
    for (const Tried& one : tried) result[one.left].weight += one.law_weight * std::exp(-0.5 * scale * (one.residuals - least));
    return result;
}

} // namespace ullage
