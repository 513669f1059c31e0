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
    table.columns = {{"quantity", say(phrase("commands", "quantity")), {}, Content::text, 0},
                     {"value", say(phrase("commands", "value")), {}, Content::text, 0},
                     {"kind", say(phrase("commands", "kind")), {}, Content::text, 0}};
    std::vector<Message> reasons;
    for (const Quantity& quantity : quantities) {
        Message value = quantity.kind == Kind::not_known ? Message("-") : say_quantity(quantity, quantity_decimals(quantity.key));
        if (!quantity.reason.empty()) {
            const auto known = std::ranges::find(reasons, quantity.reason);
            value += " [" + std::to_string(known - reasons.begin() + 1) + ']';
            if (known == reasons.end()) reasons.push_back(quantity.reason);
        }
        table.rows.push_back({quantity_title(quantity.key), std::move(value), say_kind(quantity.kind)});
    }
    for (std::size_t n = 0; n < reasons.size(); ++n) table.remarks.push_back(Message('[' + std::to_string(n + 1) + "] ") + reasons[n]);
    return '\n' + table_text(table, TableFormat::text);
}

} // namespace ullage
