// SPDX-License-Identifier: GPL-3.0-or-later
// Adaptive Monte Carlo of JCGM 101:2008, 7.9: h blocks of M = 10,000 trials; each block gives a mean, a standard deviation and
// two interval ends; the run ends when twice the standard deviation of the average of each of the four is within delta.
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace ullage {
namespace {

constexpr std::size_t block_size = 10'000;
/// The guide is content with two blocks, whose four spreads are now and then small by chance; ten blocks are not.
constexpr std::size_t least_blocks = 10;

using Four = std::array<double, 4>; // mean, standard deviation, lower, upper

/// Uniform on (0, 1) from the upper 53 bits: exact, so that every platform draws the same.
double uniform(std::mt19937_64& engine) { return (static_cast<double>(engine() >> 11) + 0.5) * 0x1p-53; }

/// Mean, standard deviation and 95 % interval (JCGM 101:2008, 7.6 and 7.7.2) of `values`, which are sorted on the way.
Four summary(std::span<double> values) {
    std::sort(values.begin(), values.end());
    const auto n = static_cast<double>(values.size());
    const double base = values[values.size() / 2]; // deviations from a middle value keep the digits of a narrow result
    double sum = 0, squares = 0;
    for (const double v : values) {
        sum += v - base;
        squares += (v - base) * (v - base);
    }
    const double variance = values.size() < 2 ? 0 : std::max(0.0, (squares - sum * sum / n) / (n - 1));
    const auto covered = static_cast<std::size_t>(0.95 * n + 0.5);
    const std::size_t rank = std::max<std::size_t>(1, (values.size() - covered + 1) / 2); // counted from 1
    const std::size_t upper_rank = std::min(rank + covered, values.size());
    return {base + sum / n, std::sqrt(variance), values[rank - 1], values[upper_rank - 1]};
}

/// Half a unit of the second significant digit of u (JCGM 101:2008, 7.9.2).
double tolerance_of(double u) {
    const double places = std::floor(std::log10(u)) - 1;
    const bool carries = std::round(u / std::pow(10.0, places)) >= 100; // 9.96 is 10, not 9.9
    return 0.5 * std::pow(10.0, carries ? places + 1 : places);
}

bool settled(const std::vector<Four>& blocks, double u) {
    if (blocks.size() < least_blocks) return false;
    if (u == 0) return true;
    const auto h = static_cast<double>(blocks.size());
    const double delta = tolerance_of(u);
    for (std::size_t k = 0; k < 4; ++k) {
        double mean = 0, squares = 0;
        for (const Four& b : blocks) mean += (b[k] - blocks.front()[k]) / h;
        mean += blocks.front()[k];
        for (const Four& b : blocks) squares += (b[k] - mean) * (b[k] - mean);
        if (2 * std::sqrt(squares / (h * (h - 1))) > delta) return false;
    }
    return true;
}

/// Standard deviation of all values so far from the blocks' own (equal sizes), without another pass over the values.
double pooled_sd(const std::vector<Four>& blocks) {
    const auto h = static_cast<double>(blocks.size());
    double mean = 0, within = 0, between = 0;
    for (const Four& b : blocks) mean += (b[0] - blocks.front()[0]) / h;
    mean += blocks.front()[0];
    for (const Four& b : blocks) {
        within += b[1] * b[1] / h;
        between += (b[0] - mean) * (b[0] - mean) / h;
    }
    return std::sqrt(within + between);
}

} // namespace

double Input::standard_uncertainty() const {
    switch (shape) {
    case Shape::rectangular: return spread / std::numbers::sqrt3;
    case Shape::triangular: return spread / std::sqrt(6.0);
    case Shape::normal: break;
    }
    return spread;
}

double draw(const Input& input, std::mt19937_64& engine) {
    const double first = uniform(engine);
    if (input.shape == Shape::rectangular) return input.spread * (2 * first - 1);
    const double second = uniform(engine);
    if (input.shape == Shape::triangular) return input.spread * (first + second - 1);                // JCGM 101:2008, 6.4.5
    return input.spread * std::sqrt(-2 * std::log(first)) * std::cos(2 * std::numbers::pi * second); // Box-Muller, C.4
}

Propagation propagate(std::span<const Input> inputs, const std::function<double(std::span<const double>)>& model, std::uint64_t seed,
                      std::size_t max_trials) {
    std::mt19937_64 engine(seed);
    Propagation result;
    std::vector<double> drawn(inputs.size()), values;
    std::vector<Four> blocks;
    const std::size_t block = std::min(block_size, max_trials);
    bool stable = false;
    for (std::size_t done = 0; block > 0 && done + block <= max_trials && !stable; done += block) {
        const std::size_t from = values.size();
        for (std::size_t i = 0; i < block; ++i) {
            std::transform(inputs.begin(), inputs.end(), drawn.begin(), [&](const Input& in) { return draw(in, engine); });
            const double value = model(drawn);
            if (std::isfinite(value)) values.push_back(value);
            else ++result.not_finite;
        }
        if (values.size() == from) continue;
        blocks.push_back(summary(std::span(values).subspan(from)));
        stable = result.not_finite == 0 && settled(blocks, pooled_sd(blocks));
    }
    result.trials = values.size();
    result.stable = stable;
    if (values.empty()) return result;
    const Four all = summary(values);
    result.mean = all[0];
    result.standard_deviation = all[1];
    result.lower = all[2];
    result.upper = all[3];
    return result;
}

} // namespace ullage
