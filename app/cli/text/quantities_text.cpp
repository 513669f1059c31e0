// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/quantities_text.h"

#include "formats/tables/table.h"
#include "formats/text/quantity_title.h"

#include <algorithm>
#include <utility>

namespace ullage {

std::string quantities_text(const std::vector<Quantity>& quantities) {
    using Content = TableColumn::Content;
    Table table;
    table.columns = {
        {"quantity", "quantity", {}, Content::text, 0}, {"value", "value", {}, Content::text, 0}, {"kind", "kind", {}, Content::text, 0}};
    std::vector<std::string> reasons;
    for (const Quantity& quantity : quantities) {
        std::string value = quantity.kind == Kind::not_known ? std::string("-") : quantity_text(quantity, quantity_decimals(quantity.key));
        if (!quantity.reason.empty()) {
            const auto known = std::ranges::find(reasons, quantity.reason.text());
            value += " [" + std::to_string(known - reasons.begin() + 1) + ']';
            if (known == reasons.end()) reasons.push_back(quantity.reason);
        }
        table.rows.push_back({quantity_title(quantity.key), std::move(value), std::string(kind_text(quantity.kind))});
    }
    for (std::size_t n = 0; n < reasons.size(); ++n) table.remarks.push_back('[' + std::to_string(n + 1) + "] " + reasons[n]);
    return '\n' + table_text(table, TableFormat::text);
}

} // namespace ullage
