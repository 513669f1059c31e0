// SPDX-License-Identifier: GPL-3.0-or-later
#include "ensemble/report.h"

#include <boost/math/distributions/binomial.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage::test {
namespace {

using boost::math::binomial_distribution;

double share(long part, long whole) { return whole > 0 ? static_cast<double>(part) / static_cast<double>(whole) : 0.0; }
double refused_share(const CoverageRow& row) { return share(row.runs - row.stated, row.runs); }
double bias(const CoverageRow& row) { return row.error_sum / static_cast<double>(row.stated); }
double rms(const CoverageRow& row) { return std::sqrt(row.error_square_sum / static_cast<double>(row.stated)); }

/// Chance of so few (or fewer) hits where each has probability `p`.
double chance_of_so_few(long hits, long runs, double p) {
    return p >= 1 ? (hits < runs ? 0.0 : 1.0) : cdf(binomial_distribution<>(static_cast<double>(runs), p), static_cast<double>(hits));
}

double chance_of_so_many(long hits, long runs, double p) {
    if (p >= 1 || hits == 0) return 1;
    return cdf(complement(binomial_distribution<>(static_cast<double>(runs), p), static_cast<double>(hits - 1)));
}

/// Why the row breaks its rule, or nothing.
std::string complaint(const CoverageRow& row) {
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : "; ") + part; };
    if (refused_share(row) > row.band.most_refused)
        add(fmt::format("refused in {:.1f} % of runs, at most {:.0f} % expected", 100 * refused_share(row), 100 * row.band.most_refused));
    if (refused_share(row) < row.band.least_refused)
        add(fmt::format("refused in {:.1f} % of runs, at least {:.0f} % expected", 100 * refused_share(row), 100 * row.band.least_refused));
    if (row.stated == 0) return text;
    if (chance_of_so_few(row.covered, row.stated, row.band.least) < chance_of_each_side)
        add(fmt::format("covers {:.1f} %, less than {:.0f} %", 100 * share(row.covered, row.stated), 100 * row.band.least));
    if (chance_of_so_many(row.covered, row.stated, row.band.most) < chance_of_each_side)
        add(fmt::format("covers {:.1f} %, more than {:.1f} %", 100 * share(row.covered, row.stated), 100 * row.band.most));
    // A bias beyond the stated standard uncertainty, with what chance may do to a mean (3.3 standard errors: one in 1000).
    if (row.half_widths > 0 && !row.bracket) {
        const double stated_u = row.half_width_sum / static_cast<double>(row.half_widths) / 1.96;
        if (std::abs(bias(row)) > stated_u + 3.3 * rms(row) / std::sqrt(static_cast<double>(row.stated)))
            add(fmt::format("bias {:.3g} beyond the stated standard uncertainty {:.3g}", bias(row), stated_u));
    }
    return text;
}

std::string complaint(const CountRow& row) {
    const double found = share(row.hits, row.runs);
    if (row.at_least ? found >= row.limit : found < row.limit) return {};
    return fmt::format("{} of {} runs ({:.1f} %), {} {:.0f} % asked for{}", row.hits, row.runs, 100 * found, row.at_least ? "at least" : "fewer than",
                       100 * row.limit, row.example.empty() ? "" : ": " + row.example);
}

using Cells = std::vector<std::string>;

/// The first two columns to the left, numbers to the right.
std::string table(const Cells& head, const std::vector<Cells>& rows, bool markdown) {
    std::vector<std::size_t> widths;
    for (const std::string& cell : head) widths.push_back(cell.size());
    for (const Cells& row : rows)
        for (std::size_t i = 0; i < row.size(); ++i) widths[i] = std::max(widths[i], row[i].size());
    const auto line = [&](const Cells& row) {
        std::string text = markdown ? "|" : "";
        for (std::size_t i = 0; i < row.size(); ++i) {
            if (markdown) text += " " + row[i] + " |";
            else text += i < 2 ? fmt::format("{:<{}}  ", row[i], widths[i]) : fmt::format("{:>{}}  ", row[i], widths[i]);
        }
        return text + "\n";
    };
    std::string text = line(head);
    if (markdown) {
        text += "|";
        for (std::size_t i = 0; i < head.size(); ++i) text += i < 2 ? " --- |" : " ---: |";
        text += "\n";
    }
    for (const Cells& row : rows) text += line(row);
    return text;
}

Cells cells(const CoverageRow& row) {
    Cells result{row.case_name, row.quantity + (row.unit == "1" ? "" : ", " + row.unit), std::to_string(row.runs),
                 fmt::format("{:.1f}", 100 * refused_share(row))};
    if (row.stated == 0) {
        result.insert(result.end(), {"", "", "", "", ""});
    } else {
        result.insert(result.end(), {fmt::format("{:+.3g}", bias(row)), fmt::format("{:.3g}", rms(row)),
                                     row.half_widths > 0 ? fmt::format("{:.3g}", row.half_width_sum / static_cast<double>(row.half_widths)) : "",
                                     fmt::format("{:.1f}", 100 * share(row.covered, row.stated)),
                                     fmt::format("{:.0f} to {:.4g}", 100 * row.band.least, 100 * row.band.most)});
    }
    result.push_back(complaint(row).empty() ? "" : "WRONG");
    return result;
}

} // namespace

void Report::result(const std::string& case_name, const std::string& words, const Quantity& quantity, double truth, const Band& band) {
    const bool one_sided = quantity.kind == Kind::at_least;
    const std::string name = words + (one_sided ? ", at least" : "");
    auto row = std::ranges::find_if(coverages_, [&](const CoverageRow& r) { return r.case_name == case_name && r.quantity == name; });
    if (row == coverages_.end()) {
        CoverageRow fresh;
        fresh.case_name = case_name;
        fresh.quantity = name;
        fresh.unit = quantity.unit;
        fresh.band = band;
        fresh.bracket = quantity.kind == Kind::bracket;
        row = coverages_.insert(coverages_.end(), std::move(fresh));
    }
    ++row->runs;
    if (!quantity.lower || (!quantity.upper && !one_sided)) return;
    ++row->stated;
    row->covered += *quantity.lower <= truth && (!quantity.upper || truth <= *quantity.upper);
    const double value = quantity.value.value_or(*quantity.lower);
    row->error_sum += value - truth;
    row->error_square_sum += (value - truth) * (value - truth);
    if (!quantity.upper) return;
    row->half_width_sum += (*quantity.upper - *quantity.lower) / 2;
    ++row->half_widths;
}

void Report::count(const std::string& case_name, const std::string& what, double limit, bool at_least, bool hit, const std::string& example) {
    auto row = std::ranges::find_if(counts_, [&](const CountRow& r) { return r.case_name == case_name && r.what == what; });
    if (row == counts_.end()) row = counts_.insert(counts_.end(), {case_name, what, limit, at_least});
    ++row->runs;
    row->hits += hit;
    if (hit != at_least && row->example.empty()) row->example = example;
}

void Report::planted(const std::string& case_name, const std::string& what, bool found, const std::string& example) {
    count(case_name, what + " found", 0.95, true, found, example);
}

void Report::honest(const std::string& case_name, bool convicted, const std::string& example) {
    count(case_name, "honest gauge convicted", 0.01, false, convicted, example);
}

std::string Report::tables(bool markdown) const {
    std::vector<Cells> coverages, counts;
    for (const CoverageRow& row : coverages_) coverages.push_back(cells(row));
    for (const CountRow& row : counts_)
        counts.push_back({row.case_name, row.what, std::to_string(row.runs), fmt::format("{:.1f}", 100 * share(row.hits, row.runs)),
                          fmt::format("{} {:.0f}", row.at_least ? "at least" : "below", 100 * row.limit), complaint(row).empty() ? "" : "WRONG"});
    std::string text = table({"case", "quantity", "runs", "refused %", "bias", "RMS", "mean U95", "covered %", "allowed %", ""}, coverages, markdown);
    text += "\n" + table({"case", "what", "runs", "share %", "asked for %", ""}, counts, markdown);
    // Reasons once each: they belong to quantities, not to cases.
    std::vector<std::string> reasons;
    for (const CoverageRow& row : coverages_) {
        if (row.band.reason.empty()) continue;
        const std::string line = row.quantity + ": " + row.band.reason;
        if (std::ranges::find(reasons, line) == reasons.end()) reasons.push_back(line);
    }
    if (!reasons.empty()) text += "\nWhere other limits than 93 to 98 % or refusals are expected:\n\n";
    for (const std::string& reason : reasons) text += "- " + reason + "\n";
    return text;
}

std::vector<std::string> Report::failures() const {
    std::vector<std::string> result;
    for (const CoverageRow& row : coverages_)
        if (const std::string text = complaint(row); !text.empty()) result.push_back(row.case_name + ", " + row.quantity + ": " + text);
    for (const CountRow& row : counts_)
        if (const std::string text = complaint(row); !text.empty()) result.push_back(row.case_name + ", " + row.what + ": " + text);
    return result;
}

} // namespace ullage::test
