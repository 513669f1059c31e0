// SPDX-License-Identifier: GPL-3.0-or-later
// Which differences between units these meters resolve.
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_table.h"
#include "formats/text/quantity_title.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

constexpr std::size_t most_named = 12; ///< pairs in one sentence; beyond, the table tells the rest

/// "A and B (why); C and D (why)" of the pairs that `of` is true for; `total` counts them all.
template <class Of, class Why>
std::string pairs_text(const ReportedPairs& pairs, Of of, Why why, std::size_t& total) {
    std::string text;
    total = 0;
    for (const PairVerdict& pair : pairs.pairs) {
        if (!of(pair) || ++total > most_named) continue;
        text += fmt::format("{}{} and {} ({})", text.empty() ? "" : "; ", pairs.names[pair.first], pairs.names[pair.second], why(pair));
    }
    if (total > most_named) text += fmt::format("; and {} more, which the table of differences names", total - most_named);
    return text;
}

} // namespace

ReportedPairs reported_pairs(const Comparison& comparison, const FairComparison& fair) {
    ReportedPairs reported;
    reported.names = texts(row_names(comparison));
    const std::size_t rows = comparison.rows.size();
    for (std::size_t first = 0; first < rows; ++first)
        for (std::size_t second = first + 1; second < rows; ++second) {
            if (comparison.rows[first].unit.uuid == comparison.rows[second].unit.uuid) continue;
            ++reported.total;
            if (rows <= most_report_paired) reported.pairs.push_back(compare_pair(comparison, fair, first, second));
        }
    return reported;
}

void add_pairs_summary(ReportBuilder& builder, const ReportedPairs& pairs) {
    if (pairs.pairs.empty()) return;
    std::size_t unresolved = 0, unknown = 0;
    const std::string close = pairs_text(
        pairs, [](const PairVerdict& pair) { return pair.difference.value && !pair.resolved; },
        [](const PairVerdict& pair) { return quantity_text(pair.difference, quantity_decimals("difference")); }, unresolved);
    const std::string apart = pairs_text(
        pairs, [](const PairVerdict& pair) { return pair.difference.kind == Kind::not_known; },
        [](const PairVerdict& pair) { return pair.difference.reason.text(); }, unknown);
    if (unresolved > 0) builder.paragraph(close + ". Neither of such a pair may be called better.", "Too close to call with these meters");
    if (unknown > 0) builder.paragraph(apart + '.', "Not comparable");
    if (unresolved == 0 && unknown == 0)
        builder.paragraph(pairs.total == 1 ? "The difference between the two units is larger than these meters leave open."
                                           : "Every difference between these units is larger than these meters leave open.");
}

void add_pairs(ReportBuilder& builder, const FairComparison& fair, const ReportedPairs& pairs) {
    if (pairs.total == 0) return;
    builder.chapter("Differences between units");
    if (pairs.pairs.empty()) {
        builder.paragraph(
            fmt::format("The {} pairs of these {} rows are left out here, as more than {} rows make a table that nobody reads; the export of the "
                        "differences holds them all (Compare, Export for up to {} rows, or ullage compare --pairs).",
                        pairs.total, pairs.names.size(), most_report_paired, most_exported_paired));
        return;
    }
    builder.paragraph(fmt::format(
        "Usable fraction {}, the first unit less the second, with its U95: half the width of its 95 % interval. Two units are clearly different when "
        "that interval does not hold 0. Where one meter measured both units the error of its gain is counted once and cancels as far as "
        "the two are alike; the gains of two meters do not cancel.",
        fair.load ? "at " + common_load_text(*fair.load) : std::string("as tested, each at its own load")));
    Table table;
    table.columns = {{"first", "first", {}, Content::text, 0},
                     {"second", "second", {}, Content::text, 0},
                     {"difference", "difference ± U95", "1", Content::quantity, quantity_decimals("difference")},
                     {"verdict", "verdict", {}, Content::text, 0},
                     {"shared_meter", "one meter", {}, Content::text, 0}};
    for (const PairVerdict& pair : pairs.pairs) {
        Quantity difference = pair.difference;
        if (difference.value) difference.kind = Kind::measured; // how far each fraction is known stands in the comparison
        const bool known = difference.kind != Kind::not_known;
        table.rows.push_back({pairs.names[pair.first], pairs.names[pair.second], std::move(difference), std::string(pair_verdict_text(pair)),
                              std::string(!known              ? ""
                                          : pair.shared_meter ? "yes: its gain cancels"
                                                              : "no")});
    }
    builder.table(table);
}

} // namespace ullage
