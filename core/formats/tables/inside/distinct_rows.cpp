// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/inside/distinct_rows.h"

#include "base/number.h"
#include "formats/tables/table_printed.h"

#include <algorithm>
#include <string>

namespace ullage {

void DistinctRows::add(const std::vector<std::string_view>& texts) {
    Fingerprint row;
    for (const std::string_view text : texts) {
        // Their lengths first, so that "ab, c" is not "a, bc".
        const std::size_t size = text.size();
        row.add({reinterpret_cast<const char*>(&size), sizeof size});
        row.add(text);
    }
    rows_.push_back(row.sums());
}

bool DistinctRows::all_differ() {
    std::ranges::sort(rows_);
    return std::ranges::adjacent_find(rows_) == rows_.end();
}

bool tell_rows_apart(const StreamedTable& table, const std::vector<std::size_t>& columns) {
    DistinctRows rows;
    std::vector<std::string> written(columns.size());
    std::vector<std::string_view> texts(columns.size());
    table.each_row([&](const TableRow& row) {
        for (std::size_t c = 0; c < columns.size(); ++c) {
            const TableCell& cell = cell_at(row, columns[c]);
            if (const auto* quantity = std::get_if<Quantity>(&cell)) written[c] = quantity->value ? exact_text(*quantity->value) : std::string();
            else written[c] = std::get<Message>(cell);
            texts[c] = written[c];
        }
        rows.add(texts);
        return true;
    });
    return rows.all_differ();
}

} // namespace ullage
