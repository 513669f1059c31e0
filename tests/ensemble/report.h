// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/quantity.h"

#include <cstddef>
#include <string>
#include <vector>

namespace ullage::test {

/// What a row of coverage must keep to, as shares of 1.
struct Band {
    double least = 0.93; ///< of the intervals stated
    double most = 0.98;
    double least_refused = 0; ///< of the runs
    double most_refused = 0;
    std::string reason{}; ///< why it may cover more than 98 %, or refuse
};

/// Coverage of one quantity in one case.
struct CoverageRow {
    std::string case_name, quantity, unit;
    Band band;
    long runs = 0, stated = 0, covered = 0; ///< refused: the rest of the runs
    double error_sum = 0, error_square_sum = 0, half_width_sum = 0;
    bool bracket = false; ///< its middle is no estimate: it may lie off
    long half_widths = 0;
};

/// A count that must stay above or below a share of its runs.
struct CountRow {
    std::string case_name, what;
    double limit = 0;
    bool at_least = true; ///< the share must be `limit` or more; else it must be below
    long runs = 0, hits = 0;
    std::string example{}; ///< words of one that went wrong
};

/// A coverage outside its band counts as wrong only where chance explains it in fewer than one of 1000 cases (binomial, two-sided:
/// 0.05 % at either end).
inline constexpr double chance_of_each_side = 0.0005;

/// Gathers what the cases find and judges it.
class Report {
public:
    /// One result against its truth. It is refused when it has no interval; `at least` results, which have only a lower limit, go
    /// into a row of their own, where covered means that the limit lies below the truth.
    void result(const std::string& case_name, const std::string& words, const Quantity& quantity, double truth, const Band& band = {});
    /// Whether a planted fault was found: 95 % or more must be.
    void planted(const std::string& case_name, const std::string& what, bool found, const std::string& example = {});
    /// Whether an accurate gauge was given a doubt or a fault: fewer than 1 % may be.
    void honest(const std::string& case_name, bool convicted, const std::string& example = {});

    /// Both tables, as plain text or Markdown.
    [[nodiscard]] std::string tables(bool markdown) const;
    /// One sentence for each row that breaks its rule.
    [[nodiscard]] std::vector<std::string> failures() const;
    [[nodiscard]] std::size_t rows() const { return coverages_.size() + counts_.size(); }

private:
    void count(const std::string& case_name, const std::string& what, double limit, bool at_least, bool hit, const std::string& example);

    std::vector<CoverageRow> coverages_;
    std::vector<CountRow> counts_;
};

} // namespace ullage::test
