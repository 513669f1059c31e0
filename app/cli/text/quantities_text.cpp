// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/quantities_text.h"

#include "formats/tables/table.h"
#include "formats/text/quantity_title.h"

namespace ullage {

std::string quantities_text(const std::vector<Quantity>& quantities) {
    using Content = TableColumn::Content;
    Table table;
    table.columns = {{"quantity", "quantity", {}, Content::text, 0},
                     {"value", "value", {}, Content::text, 0},
                     {"kind", "kind", {}, Content::text, 0},
                     {"reason", "reason", {}, Content::text, 0}};
    for (const Quantity& quantity : quantities)
        table.rows.push_back({quantity_title(quantity.key),
                              quantity.kind == Kind::not_known ? std::string("-") : quantity_text(quantity, quantity_decimals(quantity.key)),
                              std::string(kind_text(quantity.kind)), quantity.reason});
    return '\n' + table_text(table, TableFormat::text);
}

} // namespace ullage
