// SPDX-License-Identifier: GPL-3.0-or-later
#include "numerics/distributions.h"

#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

namespace bmp = boost::math::policies;
/// A violated precondition gives NaN or an infinity as the header says, never an exception.
using Quiet = bmp::policy<bmp::domain_error<bmp::ignore_error>, bmp::pole_error<bmp::ignore_error>, bmp::overflow_error<bmp::ignore_error>,
                          bmp::underflow_error<bmp::ignore_error>, bmp::evaluation_error<bmp::ignore_error>>;
using Normal = boost::math::normal_distribution<double, Quiet>;
using StudentT = boost::math::students_t_distribution<double, Quiet>;
using ChiSquare = boost::math::chi_squared_distribution<double, Quiet>;

} // namespace

double normal_quantile(double p) { return boost::math::quantile(Normal(), p); }

double student_t_quantile(double p, double nu) { return std::isinf(nu) && nu > 0 ? normal_quantile(p) : boost::math::quantile(StudentT(nu), p); }

double coverage_factor(double coverage, double nu) {
    // A comparison asks the same for row after row, and an inverse of the error function takes microseconds.
    struct Asked {
        double coverage = -1, nu = -1, factor = 0;
    };
    thread_local Asked last;
    if (coverage == last.coverage && nu == last.nu) return last.factor;
    // From the upper tail: (1 + coverage)/2 would round away what a coverage close to 1 says.
    const double factor = -student_t_quantile((1 - coverage) / 2, nu);
    last = {coverage, nu, factor};
    return factor;
}

double student_t_two_sided_tail(double t, double nu) {
    if (std::isinf(nu) && nu > 0) return std::erfc(std::abs(t) / std::sqrt(2.0));
    return 2 * boost::math::cdf(boost::math::complement(StudentT(nu), std::abs(t)));
}

double chi_square_quantile(double p, double nu) { return boost::math::quantile(ChiSquare(nu), p); }

double chi_square_tail(double x, double nu) { return x <= 0 ? 1.0 : boost::math::cdf(boost::math::complement(ChiSquare(nu), x)); }

std::optional<double> effective_degrees_of_freedom(std::span<const UncertaintyPart> parts) {
    // Scaled by the largest, so that no fourth power leaves the range of numbers.
    double largest = 0;
    for (const UncertaintyPart& part : parts) {
        if (!std::isfinite(part.standard) || part.standard < 0 || !(part.degrees_of_freedom > 0)) return std::nullopt;
        largest = std::max(largest, part.standard);
    }
    if (largest == 0) return std::nullopt;
    double squares = 0, fourths = 0;
    for (const UncertaintyPart& part : parts) {
        const double square = (part.standard / largest) * (part.standard / largest);
        squares += square;
        fourths += square * square / part.degrees_of_freedom;
    }
    return squares * squares / fourths;
}

} // namespace ullage
