// SPDX-License-Identifier: GPL-3.0-or-later
// What cannot be known, or is less than measured, each with its reason.
#include "formats/report/inside/report_parts.h"
#include "formats/text/quantity_title.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

bool needs_a_reason(const Quantity& quantity) {
    if (quantity.key == "line_chi_square") return false; // a statistic, of which nothing more can be known
    return quantity.kind != Kind::measured || ((!quantity.lower || !quantity.upper) && !quantity.reason.empty());
}

std::string reason_of(const ReportBuilder& builder, const Quantity& quantity) {
    if (quantity.reason.empty()) return "no reason was given";
    return builder.told(quantity.reason);
}

std::string how_far(const Quantity& quantity) { return quantity.kind == Kind::measured ? "no interval" : std::string(kind_text(quantity.kind)); }

} // namespace

void add_not_known(ReportBuilder& builder, const std::vector<NamedQuantity>& quantities) {
    const bool named = std::ranges::any_of(quantities, [](const NamedQuantity& each) { return !each.whose.empty(); });
    Table table;
    if (named) table.columns.push_back({"whose", "of", {}, Content::text, 0});
    for (const char* title : {"result", "value", "status", "reason"}) table.columns.push_back({title, title, {}, Content::text, 0});
    for (const auto& [whose, quantity] : quantities) {
        if (!needs_a_reason(quantity)) continue;
        auto& row = table.rows.emplace_back();
        if (named) row.emplace_back(whose);
        row.emplace_back(quantity_title(quantity.key));
        row.emplace_back(quantity.kind == Kind::not_known ? std::string("–") : builder.form.apply(value_text(quantity)));
        row.emplace_back(how_far(quantity));
        row.emplace_back(builder.form.apply(reason_of(builder, quantity)));
    }
    builder.chapter("What cannot be known from these readings");
    if (table.rows.empty()) builder.paragraph("Every result above is measured and has its interval.");
    builder.table(table);
}

} // namespace ullage
