// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "unit/drain_summary.h"

#include <array>
#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What is known of a parameter before any drain: that it lies between two bounds.
struct Bounds {
    double low = 0, high = 0;
    [[nodiscard]] double middle() const { return (low + high) / 2; }
    /// Half the width / √2, that of an arcsine distribution (JCGM 101:2008, 6.4.6), which expects values near either bound. A parameter has one
    /// value for each unit and often near a bound (c near 0); with a uniform distribution's / √3 the intervals of such a unit cover some
    /// 91 % in place of 95 %.
    [[nodiscard]] double standard_uncertainty() const;
};

/// Parameters of the balance, in this order: E* (Wh), P* (W), c (1/W), change of E* (Wh a day).
inline constexpr std::size_t balance_parameters = 4;
using BalanceVector = std::array<double, balance_parameters>;
using BalanceMatrix = std::array<BalanceVector, balance_parameters>;

/// What a fit of drains takes in besides the drains. A parameter that the drains do not settle needs bounds.
struct BalanceTerms {
    std::optional<Bounds> curvature_per_w;
    std::optional<Bounds> no_load_draw_w;
    bool change_with_days = false; ///< else the fourth parameter stays 0 without uncertainty
};

/// How far the parameters move when one meter's gain is at its limit.
struct GainShift {
    std::string meter_key;
    Message meter_name;
    BalanceVector half_width{};
    bool limit_known = true; ///< else `half_width` is that of assumed_limit_percent, good for weights but for no interval
};

inline constexpr double assumed_limit_percent = 5;

/// Solution of the balance of several drains.
struct BalanceFit {
    BalanceVector parameters{};
    BalanceMatrix scatter{}; ///< covariance from the drains' own uncertainties, without gains, not widened
    BalanceMatrix bounds{};  ///< covariance from the bounds
    std::vector<GainShift> gains;
    double chi_square = 0;
    std::size_t degrees_of_freedom = 0;
    std::vector<double> residuals_wh, u_wh; ///< one for each drain
};

/// Solves D_k = E* + d·days_k − P*·T_k − c·Q_k + g_m·(D_k + 2c·Q_k) for all drains k with meters m by weighted least squares
/// (solve_least_squares). The gain error g of each meter is a nuisance parameter with the pseudo-observation 0 ± a/√3 (a: its limit); a
/// bounded parameter has the pseudo-observation middle ± Bounds::standard_uncertainty. The gain's factor follows from D ∝ 1 + g,
/// Q ∝ (1 + g)² to first order.
///
/// Variance of one drain: independent² + (repeatability·E*)² + (P*·u_T)². Repeatability stands at E*, not at D: when a battery
/// holds 1 % more one day, D and T both grow by 1 %, so the whole of D + P*T + cQ = E* does; else a no-load drain (D = 0) would
/// count as exact. The weights need E* and P*, so the fit is iterated. Errors: those of solve_least_squares, no drains.
/// Preconditions: drains are `used`.
[[nodiscard]] Result<BalanceFit> fit_balance(const std::vector<DrainSummary>& drains, const BalanceTerms& terms, const MeasureOptions& options = {});

/// How to widen the drains' uncertainties where the drains disagree.
struct Disagreement {
    double ratio = 1; ///< sqrt(chi-square / degrees of freedom) where that is above 1 (Birge 1932, from memory)
    /// Degrees of freedom of the widened scatter: those of the fit once chi-square refutes the known uncertainties at 5 %, else infinite. A
    /// single degree of freedom would otherwise multiply intervals by 6 or more for every third set of three drains that agree.
    double nu = 0;
};
[[nodiscard]] Disagreement disagreement_of(const BalanceFit& fit);

} // namespace ullage
