// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

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

} // namespace ullage
