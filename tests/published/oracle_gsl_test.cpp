// SPDX-License-Identifier: GPL-3.0-or-later
// The GNU Scientific Library as an independent calculation of the same numbers.
#include "nist_data.h"
#include "numerics/distributions.h"
#include "numerics/least_squares.h"
#include "numerics/line_fit.h"
#include "numerics/segmented_fit.h"

#include <gsl/gsl_cdf.h>
#include <gsl/gsl_fit.h>
#include <gsl/gsl_multifit.h>
#include <gtest/gtest.h>

#include <cmath>
#include <memory>
#include <random>
#include <vector>

using namespace ullage;

namespace {

using Values = std::vector<double>;

void expect_close(double value, double oracle, double relative) {
    EXPECT_NEAR(value, oracle, relative * std::abs(oracle)) << "relative " << value / oracle - 1;
}

struct GslFit {
    Values parameters, covariance;
    double chi_square = 0;
};

/// gsl_multifit_wlinear (or gsl_multifit_linear without sigmas).
GslFit gsl_least_squares(const Values& design, std::size_t p, const Values& y, const Values& sigma) {
    using Matrix = std::unique_ptr<gsl_matrix, decltype(&gsl_matrix_free)>;
    using Vector = std::unique_ptr<gsl_vector, decltype(&gsl_vector_free)>;
    const std::size_t n = y.size();
    const Matrix x(gsl_matrix_alloc(n, p), gsl_matrix_free), cov(gsl_matrix_alloc(p, p), gsl_matrix_free);
    const Vector v(gsl_vector_alloc(n), gsl_vector_free), w(gsl_vector_alloc(n), gsl_vector_free);
    const Vector c(gsl_vector_alloc(p), gsl_vector_free);
    for (std::size_t i = 0; i < n; ++i) {
        for (std::size_t j = 0; j < p; ++j) gsl_matrix_set(x.get(), i, j, design[i * p + j]);
        gsl_vector_set(v.get(), i, y[i]);
        gsl_vector_set(w.get(), i, sigma.empty() ? 1 : 1 / (sigma[i] * sigma[i]));
    }
    const std::unique_ptr<gsl_multifit_linear_workspace, decltype(&gsl_multifit_linear_free)> work(gsl_multifit_linear_alloc(n, p),
                                                                                                   gsl_multifit_linear_free);
    GslFit fit;
    if (sigma.empty()) gsl_multifit_linear(x.get(), v.get(), c.get(), cov.get(), &fit.chi_square, work.get());
    else gsl_multifit_wlinear(x.get(), w.get(), v.get(), c.get(), cov.get(), &fit.chi_square, work.get());
    for (std::size_t i = 0; i < p; ++i) {
        fit.parameters.push_back(gsl_vector_get(c.get(), i));
        for (std::size_t j = 0; j < p; ++j) fit.covariance.push_back(gsl_matrix_get(cov.get(), i, j));
    }
    return fit;
}

} // namespace

// gsl_cdf_ugaussian_Pinv is stated to full precision.
TEST(OracleGsl, normal_quantiles) {
    for (const double p : {1e-300, 1e-12, 1e-4, 0.025, 0.2, 0.4999, 0.75, 0.975, 0.999999})
        expect_close(normal_quantile(p), gsl_cdf_ugaussian_Pinv(p), 1e-13);
}

// gsl_cdf_tdist_P of our quantile against p: GSL's distribution is sharper than its own inverse.
TEST(OracleGsl, student_t_quantiles) {
    for (const double nu : {1.0, 2.0, 3.0, 4.5, 9.0, 30.0, 200.0, 5000.0}) {
        for (const double p : {1e-6, 0.01, 0.025, 0.3, 0.6, 0.95, 0.995}) {
            const double t = student_t_quantile(p, nu);
            expect_close(gsl_cdf_tdist_P(t, nu), p, 1e-12);
            expect_close(t, gsl_cdf_tdist_Pinv(p, nu), 1e-9);
            expect_close(student_t_two_sided_tail(t, nu), 2 * gsl_cdf_tdist_Q(std::abs(t), nu), 1e-12);
        }
    }
}

TEST(OracleGsl, chi_square_quantiles_and_tails) {
    for (const double nu : {1.0, 2.0, 3.5, 10.0, 60.0, 400.0}) {
        for (const double p : {1e-5, 0.05, 0.5, 0.95, 0.999}) {
            const double x = chi_square_quantile(p, nu);
            expect_close(gsl_cdf_chisq_P(x, nu), p, 1e-12);
            expect_close(x, gsl_cdf_chisq_Pinv(p, nu), 1e-9);
            expect_close(chi_square_tail(x, nu), gsl_cdf_chisq_Q(x, nu), 1e-12);
        }
        expect_close(chi_square_tail(nu + 200, nu), gsl_cdf_chisq_Q(nu + 200, nu), 1e-11);
    }
}

// gsl_fit_wlinear keeps 1/sigma^2 as known, gsl_fit_linear scales by the residuals. Random lines with x far from zero: the
// running means of GSL hold about 12 digits of the intercept there.
TEST(OracleGsl, straight_lines) {
    std::mt19937 engine(1);
    std::normal_distribution<double> normal(0, 1);
    std::uniform_real_distribution<double> positive(0.1, 2);
    for (int k = 0; k < 50; ++k) {
        Values x, y, sigma, w;
        for (int i = 0; i < 5 + 3 * k; ++i) {
            x.push_back(50 + 10 * normal(engine));
            sigma.push_back(positive(engine));
            w.push_back(1 / (sigma.back() * sigma.back()));
            y.push_back(4 - 0.7 * x.back() + sigma.back() * normal(engine));
        }
        double a = 0, b = 0, caa = 0, cab = 0, cbb = 0, chi = 0;
        gsl_fit_wlinear(x.data(), 1, w.data(), 1, y.data(), 1, x.size(), &a, &b, &caa, &cab, &cbb, &chi);
        const auto known = fit_line(x, y, sigma);
        ASSERT_TRUE(known.ok());
        EXPECT_NEAR(known.value().intercept, a, 1e-10);
        expect_close(known.value().slope, b, 1e-11);
        expect_close(known.value().u_intercept, std::sqrt(caa), 1e-11);
        expect_close(known.value().u_slope, std::sqrt(cbb), 1e-11);
        expect_close(known.value().covariance, cab, 1e-11);
        expect_close(known.value().residual_sum, chi, 1e-10);
        double value = 0, error = 0;
        gsl_fit_linear_est(63, a, b, caa, cab, cbb, &value, &error);
        expect_close(known.value().u_at(63), error, 1e-9); // a difference of large parts in both
        gsl_fit_linear(x.data(), 1, y.data(), 1, x.size(), &a, &b, &caa, &cab, &cbb, &chi);
        const auto scaled = fit_line(x, y);
        ASSERT_TRUE(scaled.ok());
        expect_close(scaled.value().slope, b, 1e-11);
        expect_close(scaled.value().u_intercept, std::sqrt(caa), 1e-11);
        expect_close(scaled.value().covariance, cab, 1e-11);
        gsl_fit_wmul(x.data(), 1, w.data(), 1, y.data(), 1, x.size(), &b, &cbb, &chi);
        const auto ray = fit_through_origin(x, y, sigma);
        ASSERT_TRUE(ray.ok());
        expect_close(ray.value().slope, b, 1e-11);
        expect_close(ray.value().u_slope, std::sqrt(cbb), 1e-11);
    }
}

// gsl_multifit works by singular values; the energy model of a run (1, hours, Wh) as design.
TEST(OracleGsl, general_least_squares) {
    std::mt19937 engine(2);
    std::normal_distribution<double> normal(0, 1);
    std::uniform_real_distribution<double> power_w(20, 300);
    for (int k = 0; k < 30; ++k) {
        Values design, y, sigma;
        double delivered_wh = 0;
        for (int i = 0; i < 25; ++i) {
            design.insert(design.end(), {1, 0.25 * i, delivered_wh});
            sigma.push_back(0.3 + 0.01 * i);
            y.push_back(100 - 0.8 * 0.25 * i - 0.09 * delivered_wh + sigma.back() * normal(engine));
            delivered_wh += 0.25 * power_w(engine);
        }
        for (const Values& s : {sigma, Values{}}) {
            const auto fit = solve_least_squares(design, 3, y, s);
            const GslFit oracle = gsl_least_squares(design, 3, y, s);
            ASSERT_TRUE(fit.ok());
            for (std::size_t i = 0; i < 3; ++i) expect_close(fit.value().parameters[i], oracle.parameters[i], 1e-10);
            for (std::size_t i = 0; i < 9; ++i) expect_close(fit.value().covariance[i], oracle.covariance[i], 1e-9);
            expect_close(fit.value().residual_sum, oracle.chi_square, 1e-10);
        }
    }
}

// The two joined lines at the break that the search found: GSL's fit with the same break, and no better one beside it.
TEST(OracleGsl, two_lines_with_a_break) {
    std::mt19937 engine(3);
    std::normal_distribution<double> normal(0, 1);
    for (int k = 0; k < 20; ++k) {
        Values x, y;
        const Values sigma(24, 0.3);
        for (int i = 0; i < 24; ++i) {
            x.push_back(i);
            y.push_back(100 - 2.0 * i - 0.8 * std::max(0.0, i - 11.4) + 0.3 * normal(engine));
        }
        const auto fit = fit_segmented(x, y, sigma);
        ASSERT_TRUE(fit.ok());
        const auto at_break = [&](double b) {
            Values design;
            for (const double v : x) design.insert(design.end(), {1, std::min(0.0, v - b), std::max(0.0, v - b)});
            return gsl_least_squares(design, 3, y, sigma);
        };
        const GslFit best = at_break(fit.value().break_x);
        expect_close(fit.value().level_at_break, best.parameters[0], 1e-11);
        expect_close(fit.value().slope_before, best.parameters[1], 1e-10);
        expect_close(fit.value().slope_after, best.parameters[2], 1e-10);
        expect_close(fit.value().residual_sum, best.chi_square, 1e-9);
        for (double b = 2; b <= 21; b += 0.05) EXPECT_GE(at_break(b).chi_square, best.chi_square * (1 - 1e-9));
    }
}
