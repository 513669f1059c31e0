// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: x parameters (balance parameters that take part, then one gain for each meter), A design, W = diag(1/sigma²),
// C = (AᵀWA)⁻¹ from solve_least_squares. An error e in observation k moves x by h_k·e with h_k = C·a_k/sigma_k²; so each
// observation's share of the covariance, sigma_k² h_k h_kᵀ, can be told apart: drains, bounds, gains.
#include "unit/drain_system.h"

#include "numerics/distributions.h"
#include "numerics/least_squares.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace ullage {
namespace {

constexpr int passes = 4; ///< of weights and gain column; both change by under 1e-3 after the second

constexpr double refuted_below = 0.05;

struct MeterColumn {
    std::string key;
    Message name;
    double half_width = 0; ///< of the gain, as a fraction
    bool limit_known = true;
};

std::vector<MeterColumn> meters_of(const std::vector<DrainSummary>& drains) {
    std::vector<MeterColumn> meters;
    for (const DrainSummary& drain : drains) {
        if (drain.meter_key.empty()) continue;
        const double half_width = drain.gain_limit_percent.value_or(assumed_limit_percent) / 100;
        const auto found = std::ranges::find(meters, drain.meter_key, &MeterColumn::key);
        if (found == meters.end()) {
            // A limit of 0 is an exact meter, which needs no column.
            if (half_width > 0) meters.push_back({drain.meter_key, drain.meter_name, half_width, drain.gain_limit_percent.has_value()});
        } else {
            found->half_width = std::max(found->half_width, half_width);
            found->limit_known = found->limit_known && drain.gain_limit_percent.has_value();
        }
    }
    return meters;
}

/// Whether one meter measured drains at loads that differ by more than a factor of two.
bool has_unlike_loads(const std::vector<DrainSummary>& drains) {
    for (const DrainSummary& a : drains)
        for (const DrainSummary& b : drains)
            if (a.meter_key == b.meter_key && a.delivered_wh > 0 && b.delivered_wh > 0 && are_unlike_loads(a.mean_load_w, b.mean_load_w)) return true;
    return false;
}

class System {
public:
    System(const std::vector<DrainSummary>& drains, const BalanceTerms& terms, const MeasureOptions& options)
        : drains_(drains), terms_(terms), repeatability_(options.repeatability_percent / 100), unlike_loads_(has_unlike_loads(drains)),
          meters_(meters_of(drains)) {
        columns_ = {0, 1, 2};
        if (terms.change_with_days) columns_.push_back(3);
        width_ = columns_.size() + meters_.size();
        first_ms_ = std::ranges::min_element(drains, {}, &DrainSummary::start_ms)->start_ms;
        // Before the first pass only the size of E* matters, for the weights.
        for (const DrainSummary& drain : drains) {
            start_[0] = std::max(start_[0], drain.delivered_wh);
            fitted_.push_back(drain.delivered_wh);
        }
    }

    Result<BalanceFit> solve() {
        BalanceVector x = start_;
        for (int pass = 0; pass < passes; ++pass) {
            build(x);
            Result<LeastSquaresFit> solved = solve_least_squares(design_, width_, y_, sigma_);
            if (!solved) return solved.error();
            fit_ = std::move(solved).value();
            x = BalanceVector{};
            for (std::size_t j = 0; j < columns_.size(); ++j) x[columns_[j]] = fit_.parameters[j];
            for (std::size_t k = 0; k < drains_.size(); ++k)
                fitted_[k] = x[0] + x[3] * days(drains_[k]) - x[1] * drains_[k].hours + x[2] * drains_[k].squared_w2h;
        }
        return summary(x);
    }

private:
    [[nodiscard]] double days(const DrainSummary& drain) const { return hours_between(first_ms_, drain.start_ms) / 24; }

    void build(const BalanceVector& x) {
        design_.clear();
        y_.clear();
        sigma_.clear();
        for (std::size_t k = 0; k < drains_.size(); ++k) {
            const DrainSummary& drain = drains_[k];
            const BalanceVector row{1, -drain.hours, -drain.squared_w2h, days(drain)};
            for (const std::size_t column : columns_) design_.push_back(row[column]);
            for (const MeterColumn& meter : meters_) design_.push_back(meter.key == drain.meter_key ? fitted_[k] : 0.0);
            y_.push_back(drain.delivered_wh);
            const double from_time_wh = std::max(0.0, x[1]) * drain.u_hours;
            const double own_wh = unlike_loads_ ? drain.load_part_wh / std::sqrt(3.0) : 0;
            const double u_wh = std::hypot(std::hypot(drain.independent_wh, own_wh), repeatability_ * x[0], from_time_wh);
            sigma_.push_back(std::max(u_wh, least_u_wh));
        }
        if (terms_.no_load_draw_w) add_pseudo(1, terms_.no_load_draw_w->middle(), terms_.no_load_draw_w->standard_uncertainty());
        if (terms_.curvature_per_w) add_pseudo(2, terms_.curvature_per_w->middle(), terms_.curvature_per_w->standard_uncertainty());
        for (std::size_t m = 0; m < meters_.size(); ++m) add_pseudo(columns_.size() + m, 0, meters_[m].half_width / std::sqrt(3.0));
    }

    void add_pseudo(std::size_t column, double value, double u) {
        for (std::size_t j = 0; j < width_; ++j) design_.push_back(j == column ? 1.0 : 0.0);
        y_.push_back(value);
        sigma_.push_back(u);
    }

    /// How the parameters move with an error of one sigma in observation `row`.
    [[nodiscard]] BalanceVector moved_by(std::size_t row) const {
        BalanceVector shift{};
        for (std::size_t i = 0; i < columns_.size(); ++i)
            for (std::size_t j = 0; j < width_; ++j) shift[columns_[i]] += fit_.cov(i, j) * design_[row * width_ + j] / sigma_[row];
        return shift;
    }

    [[nodiscard]] BalanceFit summary(const BalanceVector& x) const {
        BalanceFit result;
        result.parameters = x;
        const std::size_t first_gain = y_.size() - meters_.size();
        for (std::size_t row = 0; row < y_.size(); ++row) {
            BalanceVector shift = moved_by(row);
            if (row >= first_gain) {
                const MeterColumn& meter = meters_[row - first_gain];
                for (double& part : shift) part *= std::sqrt(3.0);
                result.gains.push_back({meter.key, meter.name, shift, meter.limit_known});
                continue;
            }
            BalanceMatrix& share = row < drains_.size() ? result.scatter : result.bounds;
            for (std::size_t i = 0; i < balance_parameters; ++i)
                for (std::size_t j = 0; j < balance_parameters; ++j) share[i][j] += shift[i] * shift[j];
        }
        result.chi_square = fit_.residual_sum;
        result.degrees_of_freedom = fit_.degrees_of_freedom;
        const auto count = static_cast<std::ptrdiff_t>(drains_.size());
        result.residuals_wh.assign(fit_.residuals.begin(), fit_.residuals.begin() + count);
        result.u_wh.assign(sigma_.begin(), sigma_.begin() + count);
        return result;
    }

    /// No drain is known better than this; only reached with a repeatability of 0 and no register.
    static constexpr double least_u_wh = 1e-3;

    const std::vector<DrainSummary>& drains_;
    const BalanceTerms& terms_;
    double repeatability_;
    bool unlike_loads_; ///< of one meter: its error is then not one constant
    std::vector<MeterColumn> meters_;
    std::vector<std::size_t> columns_; ///< balance parameter of each of the first columns
    std::size_t width_ = 0;
    UtcMs first_ms_ = 0;
    BalanceVector start_{};
    std::vector<double> fitted_, design_, y_, sigma_;
    LeastSquaresFit fit_;
};

} // namespace

double Bounds::standard_uncertainty() const { return (high - low) / std::sqrt(8.0); }

Result<BalanceFit> fit_balance(const std::vector<DrainSummary>& drains, const BalanceTerms& terms, const MeasureOptions& options) {
    if (drains.empty())
        return Error{Failure::bad_input, say(phrase("unit", "there is no drain to fit")), say(phrase("unit", "fit between runs")),
                     say(phrase("unit", "make a drain from full to cut-off"))};
    return System(drains, terms, options).solve();
}

Disagreement disagreement_of(const BalanceFit& fit) {
    const auto freedom = static_cast<double>(fit.degrees_of_freedom);
    Disagreement result{1, std::numeric_limits<double>::infinity()};
    if (fit.degrees_of_freedom == 0 || fit.chi_square <= freedom) return result;
    result.ratio = std::sqrt(fit.chi_square / freedom);
    if (chi_square_tail(fit.chi_square, freedom) < refuted_below) result.nu = freedom;
    return result;
}

} // namespace ullage
