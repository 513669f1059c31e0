// SPDX-License-Identifier: GPL-3.0-or-later
// Which differences between units these meters resolve.
#include "formats/report/inside/report_parts.h"
#include "formats/results/comparison_table.h"
#include "formats/text/quantity_title.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

constexpr std::size_t most_named = 12; ///< pairs in one sentence; beyond, the table tells the rest

/// "A and B (why); C and D (why)" of the pairs that `of` is true for; `total` counts them all.
template <class Of, class Why>
Message say_pairs(const ReportedPairs& pairs, Of of, Why why, std::size_t& total) {
    std::vector<Message> named;
    total = 0;
    for (const PairVerdict& pair : pairs.pairs) {
        if (!of(pair) || ++total > most_named) continue;
        named.push_back(say(phrase("report", "%1 and %2 (%3)"), pairs.names[pair.first], pairs.names[pair.second], why(pair)));
    }
    if (total > most_named)
        named.push_back(say(phrase("report", "and %1 more, which the table of differences names"), say_number(total - most_named)));
    return say_joined(named, "; ");
}

} // namespace

ReportedPairs reported_pairs(const Comparison& comparison, const FairComparison& fair) {
    ReportedPairs reported;
    const auto names = row_names(comparison);
    reported.names = {names.begin(), names.end()};
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
    const Message close = say_pairs(
        pairs, [](const PairVerdict& pair) { return pair.difference.value && !pair.resolved; },
        [](const PairVerdict& pair) { return say_quantity(pair.difference, quantity_decimals("difference")); }, unresolved);
    const Message apart = say_pairs(
        pairs, [](const PairVerdict& pair) { return pair.difference.kind == Kind::not_known; },
        [](const PairVerdict& pair) { return pair.difference.reason; }, unknown);
    if (unresolved > 0)
        builder.paragraph(say(phrase("report", "%1. Neither of such a pair may be called better."), close),
                          say(phrase("report", "Too close to call with these meters")));
    if (unknown > 0) builder.paragraph(say(phrase("report", "%1."), apart), say(phrase("report", "Not comparable")));
    if (unresolved == 0 && unknown == 0)
        builder.paragraph(say(pairs.total == 1 ? phrase("report", "The difference between the two units is larger than these meters leave open.")
                                               : phrase("report", "Every difference between these units is larger than these meters leave open.")));
}

void add_pairs(ReportBuilder& builder, const FairComparison& fair, const ReportedPairs& pairs) {
    if (pairs.total == 0) return;
    builder.chapter(say(phrase("report", "Differences between units")));
    if (pairs.pairs.empty()) {
        builder.paragraph(
            say(phrase("report",
                       "The %1 pairs of these %2 rows are left out here, as more than %3 rows make a table that nobody reads; the export of the "
                       "differences holds them all (Compare, Export for up to %4 rows, or ullage compare --pairs)."),
                say_number(pairs.total), say_number(pairs.names.size()), say_number(most_report_paired), say_number(most_exported_paired)));
        return;
    }
    const Message what =
        fair.load
            ? say(phrase("report", "Usable fraction at %1, the first unit less the second, with its U95: half the width of its 95 % interval."),
                  say_common_load(*fair.load))
            : say(phrase("report", "Usable fraction as tested, each at its own load, the first unit less the second, with its U95: half the width of "
                                   "its 95 % interval."));
    builder.paragraph(
        say_joined({what, say(phrase("report", "Two units are clearly different when that interval does not hold 0. Where one meter measured both "
                                               "units the error of its gain is counted once and cancels as far as the two are alike; the gains "
                                               "of two meters do not cancel."))},
                   " "));
    Table table;
    table.columns = {{"first", say(phrase("report", "first")), {}, Content::text, 0},
                     {"second", say(phrase("report", "second")), {}, Content::text, 0},
                     {"difference", say(phrase("report", "difference ± U95")), "1", Content::quantity, quantity_decimals("difference")},
                     {"verdict", say(phrase("report", "verdict")), {}, Content::text, 0},
                     {"shared_meter", say(phrase("report", "one meter")), {}, Content::text, 0}};
    for (const PairVerdict& pair : pairs.pairs) {
        Quantity difference = pair.difference;
        if (difference.value) difference.kind = Kind::measured; // how far each fraction is known stands in the comparison
        const bool known = difference.kind != Kind::not_known;
        const Message shared = !known ? Message() : pair.shared_meter ? say(phrase("report", "yes: its gain cancels")) : say(phrase("report", "no"));
        table.rows.push_back({pairs.names[pair.first], pairs.names[pair.second], std::move(difference), say_pair_verdict(pair), shared});
    }
    builder.table(table);
}

} // namespace ullage
