// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "exchange/comparison_table.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::vector<TableColumn> run_columns() {
    return {{"unit", "unit", {}, Content::text, 0, true}, {"maker", "maker", {}, Content::text, 0, true},
            {"run", "run", "1", Content::number, 0, true}};
}

} // namespace

Table table_of_runs(RunTable which, const std::vector<const RunRecord*>& records, const std::vector<const RunAnalysis*>& analyses) {
    Table all;
    const auto table_of = [which](const RunRecord& record, const RunAnalysis& analysis) {
        return which == RunTable::readings ? readings_table(record, analysis) : intervals_table(record, analysis);
    };
    all.columns = run_columns();
    // An empty run has the columns and the method of every run.
    Table shape = table_of(RunRecord{}, RunAnalysis{});
    std::ranges::move(shape.columns, std::back_inserter(all.columns));
    all.method = std::move(shape.method);
    all.title = (which == RunTable::readings ? "Readings of " : "Intervals of ") + count_text(static_cast<long>(records.size()), "run", "runs");
    for (std::size_t r = 0; r < records.size(); ++r) {
        const RunRecord& record = *records[r];
        Table one = table_of(record, *analyses[r]);
        for (auto& cells : one.rows) {
            auto& row = all.rows.emplace_back(std::vector<TableCell>{record.unit.name, record.unit.maker,
                                                                    known("run", "1", record.number, std::nullopt, Kind::measured)});
            std::ranges::move(cells, std::back_inserter(row));
        }
        for (const std::string& remark : one.remarks)
            all.remarks.push_back(record.unit.name + ", run " + std::to_string(record.number) + ": " + remark);
    }
    return all;
}

} // namespace ullage
