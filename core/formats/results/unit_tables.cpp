// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/results/unit_tables.h"

namespace ullage {

Table predictions_table(const UnitAnalysis& unit) {
    using Content = TableColumn::Content;
    Table table;
    table.title = say(phrase("results", "Expected from full to cut-off, a mean over drains"));
    table.columns = {{"load_w", say(phrase("results", "load")), "W", Content::number, 0},
                     {"deliverable_wh", say(phrase("results", "deliverable")), "Wh", Content::quantity, 0},
                     {"usable_fraction", say(phrase("results", "usable fraction")), {}, Content::quantity, 3},
                     {"run_time_h", say(phrase("results", "run time")), "h", Content::quantity, 1},
                     {"basis", say(phrase("results", "tested loads")), {}, Content::text, 0}};
    if (!unit.fit.parameters) return table;
    for (const LoadPrediction& prediction : unit.predictions)
        table.rows.push_back({known("load_w", "W", prediction.load_w, std::nullopt, Kind::measured), prediction.deliverable_wh,
                              prediction.usable_fraction, prediction.run_time_h,
                              prediction.within_tested_loads ? say(phrase("results", "between")) : say(phrase("results", "beyond"))});
    return table;
}

} // namespace ullage
