// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <boost/random/normal_distribution.hpp>
#include <boost/random/uniform_real_distribution.hpp>

#include <cstdint>
#include <random>
#include <string>

namespace ullage::test {

/// The simulator's chance. The engine is fixed by the C++ standard and the distributions by Boost, so a seed gives the
/// same run with every compiler and library (the distributions of the standard library do not promise that).
class Random {
public:
    explicit Random(std::uint64_t seed) : engine_(seed) {}

    /// Uniform in [low, high); `low` where they are equal.
    [[nodiscard]] double uniform(double low, double high) {
        if (!(low < high)) return low;
        return boost::random::uniform_real_distribution<double>(low, high)(engine_);
    }

    /// Normal with mean 0; exactly 0 without a draw where `deviation` is 0.
    [[nodiscard]] double normal(double deviation) {
        if (!(deviation > 0)) return 0;
        return boost::random::normal_distribution<double>(0, deviation)(engine_);
    }

    [[nodiscard]] bool chance(double probability) { return uniform(0, 1) < probability; }

    /// One of 0 .. count - 1. Precondition: count > 0.
    [[nodiscard]] std::size_t index(std::size_t count) { return static_cast<std::size_t>(engine_() % count); }

    /// An identifier in the form of RFC 4122 version 4.
    [[nodiscard]] std::string uuid();

private:
    std::mt19937_64 engine_;
};

} // namespace ullage::test
