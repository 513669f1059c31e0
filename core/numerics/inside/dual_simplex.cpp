// SPDX-License-Identifier: GPL-3.0-or-later
// d equations; columns 0 .. N-1 are the programme's, N .. N+d-1 artificial unit columns with the sign of the right side.
// Basis matrix B: y_B = B^-1 right, multipliers = B^-T price_B, reduced price of column j = price_j - multipliers . column_j.
#include "numerics/inside/dual_simplex.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace ullage {
namespace {

using Real = long double;

constexpr Real price_tolerance = 1e-10L; ///< a reduced price above -this is zero: rows of size 1 may be missed by as much
constexpr Real pivot_tolerance = 1e-11L; ///< smaller entries of a direction are rounding
constexpr Real level_tolerance = 1e-12L; ///< values of y below this are zero: steps that short stand still

/// Gauss elimination with row pivoting of a d x d matrix (row-major), kept for solving with it and its transpose.
class Factors {
public:
    Factors(std::vector<Real> matrix, std::size_t d) : a_(std::move(matrix)), row_(d), d_(d) {
        for (std::size_t i = 0; i < d; ++i) row_[i] = i;
        for (std::size_t k = 0; k < d; ++k) {
            std::size_t best = k;
            for (std::size_t i = k + 1; i < d; ++i)
                if (std::abs(at(i, k)) > std::abs(at(best, k))) best = i;
            std::swap(row_[k], row_[best]);
            if (at(k, k) == 0) {
                singular_ = true;
                return;
            }
            for (std::size_t i = k + 1; i < d; ++i) {
                const Real factor = at(i, k) /= at(k, k);
                for (std::size_t j = k + 1; j < d; ++j) at(i, j) -= factor * at(k, j);
            }
        }
    }

    [[nodiscard]] bool singular() const { return singular_; }

    [[nodiscard]] std::vector<Real> solve(const std::vector<Real>& right) const {
        std::vector<Real> v(d_);
        for (std::size_t i = 0; i < d_; ++i) {
            v[i] = right[row_[i]];
            for (std::size_t j = 0; j < i; ++j) v[i] -= at(i, j) * v[j];
        }
        for (std::size_t i = d_; i-- > 0;) {
            for (std::size_t j = i + 1; j < d_; ++j) v[i] -= at(i, j) * v[j];
            v[i] /= at(i, i);
        }
        return v;
    }

    [[nodiscard]] std::vector<Real> solve_transposed(std::vector<Real> v) const {
        for (std::size_t i = 0; i < d_; ++i) {
            for (std::size_t j = 0; j < i; ++j) v[i] -= at(j, i) * v[j];
            v[i] /= at(i, i);
        }
        for (std::size_t i = d_; i-- > 0;)
            for (std::size_t j = i + 1; j < d_; ++j) v[i] -= at(j, i) * v[j];
        std::vector<Real> result(d_);
        for (std::size_t i = 0; i < d_; ++i) result[row_[i]] = v[i];
        return result;
    }

private:
    Real& at(std::size_t i, std::size_t j) { return a_[row_[i] * d_ + j]; }
    [[nodiscard]] Real at(std::size_t i, std::size_t j) const { return a_[row_[i] * d_ + j]; }

    std::vector<Real> a_;
    std::vector<std::size_t> row_;
    std::size_t d_;
    bool singular_ = false;
};

class Simplex {
public:
    explicit Simplex(const StandardProgram& program)
        : p_(program), d_(program.equations), n_(program.prices.size()), basis_(d_), in_basis_(n_ + d_, false) {
        for (std::size_t i = 0; i < d_; ++i) {
            basis_[i] = n_ + i;
            in_basis_[n_ + i] = true;
        }
    }

    /// First phase: prices 1 on the artificial columns only. Second phase: the programme's own prices.
    StandardStatus run(bool first_phase) {
        first_phase_ = first_phase;
        const std::size_t most_steps = 2000 + 20 * (n_ + d_);
        bool still = false;
        for (std::size_t step = 0; step < most_steps; ++step) {
            const Factors factors(basis_matrix(), d_);
            if (factors.singular()) return StandardStatus::no_end;
            values_ = factors.solve({p_.right.begin(), p_.right.end()});
            std::vector<Real> basic_prices(d_);
            for (std::size_t i = 0; i < d_; ++i) basic_prices[i] = price(basis_[i]);
            multipliers_ = factors.solve_transposed(std::move(basic_prices));
            const std::size_t entering = choose_entering(still);
            if (entering == n_) return StandardStatus::optimal;
            std::vector<Real> column(d_);
            for (std::size_t i = 0; i < d_; ++i) column[i] = entry(i, entering);
            const std::vector<Real> direction = factors.solve(column);
            const std::size_t leaving = choose_leaving(direction, still);
            if (leaving == d_) return StandardStatus::unbounded;
            still = values_[leaving] <= level_tolerance;
            in_basis_[basis_[leaving]] = false;
            in_basis_[entering] = true;
            basis_[leaving] = entering;
        }
        return StandardStatus::no_end;
    }

    [[nodiscard]] Real artificial_level() const {
        Real sum = 0;
        for (std::size_t i = 0; i < d_; ++i)
            if (basis_[i] >= n_) sum += std::abs(values_[i]);
        return sum;
    }

    [[nodiscard]] StandardSolution solution() const {
        StandardSolution s;
        Real total = 0;
        for (std::size_t i = 0; i < d_; ++i) {
            if (basis_[i] >= n_) continue;
            total += values_[i] * p_.prices[basis_[i]];
            if (values_[i] > level_tolerance) s.positive.push_back(basis_[i]);
        }
        std::sort(s.positive.begin(), s.positive.end());
        s.price = static_cast<double>(total);
        s.multipliers.assign(multipliers_.begin(), multipliers_.end());
        return s;
    }

private:
    [[nodiscard]] Real entry(std::size_t i, std::size_t column) const {
        if (column < n_) return p_.columns[column * d_ + i];
        if (column - n_ != i) return 0;
        return p_.right[i] < 0 ? -1 : 1;
    }

    [[nodiscard]] Real price(std::size_t column) const {
        if (first_phase_) return column < n_ ? 0 : 1;
        return column < n_ ? p_.prices[column] : 0;
    }

    [[nodiscard]] std::vector<Real> basis_matrix() const {
        std::vector<Real> matrix(d_ * d_);
        for (std::size_t i = 0; i < d_; ++i)
            for (std::size_t j = 0; j < d_; ++j) matrix[i * d_ + j] = entry(i, basis_[j]);
        return matrix;
    }

    /// The column of the lowest reduced price, or under Bland's rule the first negative one; n_ when there is none.
    [[nodiscard]] std::size_t choose_entering(bool bland) const {
        std::size_t best = n_;
        Real lowest = -price_tolerance;
        for (std::size_t j = 0; j < n_; ++j) {
            if (in_basis_[j]) continue;
            Real reduced = price(j);
            for (std::size_t i = 0; i < d_; ++i) reduced -= multipliers_[i] * p_.columns[j * d_ + i];
            if (reduced >= lowest) continue;
            best = j;
            if (bland) break;
            lowest = reduced;
        }
        return best;
    }

    /// The place in the basis whose value first falls to zero; d_ when none does. In the second phase an artificial column that
    /// stayed at zero must not rise again and leaves at once.
    [[nodiscard]] std::size_t choose_leaving(const std::vector<Real>& direction, bool bland) const {
        std::size_t best = d_;
        Real shortest = std::numeric_limits<Real>::max();
        for (std::size_t i = 0; i < d_; ++i) {
            const bool artificial = !first_phase_ && basis_[i] >= n_;
            if (artificial ? std::abs(direction[i]) <= pivot_tolerance : direction[i] <= pivot_tolerance) continue;
            const Real step = artificial ? 0 : std::max<Real>(values_[i], 0) / direction[i];
            const bool tie = best != d_ && std::abs(step - shortest) <= level_tolerance;
            // Of equals the larger pivot is the safer one; Bland's rule needs the lowest index instead.
            const bool better = bland ? tie && basis_[i] < basis_[best] : tie && std::abs(direction[i]) > std::abs(direction[best]);
            if (best == d_ || better || (!tie && step < shortest)) {
                best = i;
                shortest = step;
            }
        }
        return best;
    }

    const StandardProgram& p_;
    std::size_t d_, n_;
    std::vector<std::size_t> basis_;
    std::vector<bool> in_basis_;
    std::vector<Real> values_, multipliers_;
    bool first_phase_ = true;
};

} // namespace

StandardSolution solve_standard(const StandardProgram& program) {
    Simplex simplex(program);
    StandardSolution failed;
    failed.status = simplex.run(true);
    if (failed.status == StandardStatus::unbounded) failed.status = StandardStatus::no_end; // its price is bounded by zero
    if (failed.status != StandardStatus::optimal) return failed;
    Real size = 1;
    for (const double r : program.right) size = std::max<Real>(size, std::abs(r));
    if (simplex.artificial_level() > 1e-9L * size) {
        failed.status = StandardStatus::infeasible;
        return failed;
    }
    const StandardStatus status = simplex.run(false);
    StandardSolution solution = simplex.solution();
    solution.status = status;
    return solution;
}

} // namespace ullage
