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

Message reason_of(const ReportBuilder& builder, const Quantity& quantity) {
    return quantity.reason.empty() ? say(phrase("report", "no reason was given")) : builder.told(quantity.reason);
}

Message how_far(const Quantity& quantity) { return quantity.kind == Kind::measured ? say(phrase("report", "no interval")) : say_kind(quantity.kind); }

} // namespace

void add_not_known(ReportBuilder& builder, const std::vector<NamedQuantity>& quantities) {
    const bool named = std::ranges::any_of(quantities, [](const NamedQuantity& each) { return !each.whose.empty(); });
    Table table;
    if (named) table.columns.push_back({"whose", say(phrase("report", "of")), {}, Content::text, 0});
    table.columns.push_back({"result", say(phrase("report", "result")), {}, Content::text, 0});
    table.columns.push_back({"value", say(phrase("report", "value")), {}, Content::text, 0});
    table.columns.push_back({"status", say(phrase("report", "status")), {}, Content::text, 0});
    table.columns.push_back({"reason", say(phrase("report", "reason")), {}, Content::text, 0});
    for (const auto& [whose, quantity] : quantities) {
        if (!needs_a_reason(quantity)) continue;
        auto& row = table.rows.emplace_back();
        if (named) row.emplace_back(whose);
        row.emplace_back(quantity_title(quantity.key));
        row.emplace_back(Message(quantity.kind == Kind::not_known ? std::string("–") : builder.text(say_value(quantity))));
        row.emplace_back(how_far(quantity));
        row.emplace_back(Message(builder.text(reason_of(builder, quantity))));
    }
    builder.chapter(say(phrase("report", "What cannot be known from these readings")));
    if (table.rows.empty()) builder.paragraph(say(phrase("report", "Every result above is measured and has its interval.")));
    builder.table(table);
}

} // namespace ullage
