// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <span>

namespace ullage {

/// Quantiles and tail probabilities (Boost.Math; agreement with GSL better than 1e-12). Preconditions: p in (0, 1), nu > 0;
/// p of 0 and 1 give the ends of the distribution, other violations NaN; nothing throws.
[[nodiscard]] double normal_quantile(double p);
[[nodiscard]] double student_t_quantile(double p, double nu);
/// Two-sided factor: t such that a t-distributed value lies within +/- t with probability `coverage`; nu may be infinite.
[[nodiscard]] double coverage_factor(double coverage, double nu);
/// Probability that a t-distributed value lies further from 0 than |t|; nu may be infinite (normal).
[[nodiscard]] double student_t_two_sided_tail(double t, double nu);
[[nodiscard]] double chi_square_quantile(double p, double nu);
/// Probability that chi-square of nu degrees of freedom is at least x.
[[nodiscard]] double chi_square_tail(double x, double nu);

/// One part of a combined standard uncertainty with what it rests on.
struct UncertaintyPart {
    double standard = 0;
    double degrees_of_freedom = 0; ///< infinite for a limit taken as known
};

/// Effective degrees of freedom u_c^4 / sum(u_i^4 / nu_i) of a sum of independent parts, u_c^2 = sum(u_i^2): Welch and Satterthwaite,
/// JCGM 100:2008, G.4.1. Infinite where every part that counts has infinitely many. Absent without parts, for parts that are all 0, a negative
/// or not finite u_i, or a nu_i that is not above 0.
[[nodiscard]] std::optional<double> effective_degrees_of_freedom(std::span<const UncertaintyPart> parts);

} // namespace ullage
