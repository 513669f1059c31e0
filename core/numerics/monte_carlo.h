// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <random>
#include <span>
#include <vector>

namespace ullage {

/// How one input is distributed about 0: its values are added to the estimate.
enum class Shape { normal, rectangular, triangular };

/// One input: `spread` is the standard deviation of a normal, the half-width of the others.
struct Input {
    Shape shape = Shape::normal;
    double spread = 0;
    [[nodiscard]] double standard_uncertainty() const; ///< JCGM 100:2008, 4.3
};

/// Result of propagating distributions (JCGM 101:2008).
struct Propagation {
    double mean = 0, standard_deviation = 0;
    double lower = 0, upper = 0; ///< probabilistically symmetric 95 % interval
    std::size_t trials = 0;      ///< draws that gave a finite value; 0: nothing is known and the rest is meaningless
    std::size_t not_finite = 0;  ///< draws left out because the model gave no finite value; any of them forbids `stable`
    bool stable = false;         ///< the adaptive criterion was met before the limit of trials
};

/// Draws model(inputs) until mean, standard deviation and both interval ends are stable to half a unit of the second
/// digit of the standard deviation (JCGM 101:2008, 7.9), in 10 blocks of 10,000 at least and at most
/// `max_trials` draws (under 10,000: one block of that many). `model` gets one draw of each input; it may not keep the span.
/// The same seed gives the same result on every platform, to the last digits of its log and cos. Memory: 8 bytes a draw.
[[nodiscard]] Propagation propagate(std::span<const Input> inputs, const std::function<double(std::span<const double>)>& model,
                                    std::uint64_t seed = 1, std::size_t max_trials = 2'000'000);

/// Half-width of the symmetric interval with `coverage` of a sum of independent zero-mean inputs, numerically exact (10 digits)
/// for one rectangular part of half-width `rectangular` convolved with a normal of standard deviation `normal_sd`; either may be
/// 0, both give 0. Preconditions: neither negative, coverage in (0, 1). JCGM 101:2008 clause 9.2.4 is the published case; 0.95
/// times the limit when the rectangular part dominates.
[[nodiscard]] double half_width_of_sum(double rectangular, double normal_sd, double coverage = 0.95);

/// Probability that such a sum lies within -half_width .. half_width, of which half_width_of_sum() is the inverse. Arguments are not negative.
[[nodiscard]] double coverage_of_sum(double rectangular, double normal_sd, double half_width);

/// Whether distances lie beyond half_width_of_sum() of one coverage, for so many questions that solving for each would take long. The answers are
/// those of coverage_of_sum(); a table of half-widths, which rise with the rectangle's share, settles most of them.
class BeyondHalfWidth {
public:
    explicit BeyondHalfWidth(double coverage);
    [[nodiscard]] bool operator()(double distance, double rectangular, double normal_sd) const;
    [[nodiscard]] double coverage() const { return coverage_; }

private:
    double coverage_;
    std::vector<double> half_widths_; ///< for a standard deviation of 1, at equal steps of a / (1 + a)
};

/// One draw of an input from an engine, portable across standard libraries: inverse rectangular, sum of two rectangular
/// (JCGM 101:2008, 6.4.5) and Box-Muller (C.4). Takes one number of the engine for a rectangular input, else two.
[[nodiscard]] double draw(const Input& input, std::mt19937_64& engine);

} // namespace ullage
