// SPDX-License-Identifier: GPL-3.0-or-later
#include "exchange/comparison_table.h"

#include "exchange/quantity_title.h"
#include "exchange/table_method.h"

namespace ullage {

namespace {

using Content = TableColumn::Content;

TableColumn text_column(std::string key, std::string title) {
    return {std::move(key), std::move(title), {}, Content::text, 0};
}

TableColumn identifying(TableColumn column) {
    column.identifies = true;
    return column;
}

TableColumn figure_column(std::string key, std::string unit, Content content = Content::quantity) {
    std::string title = quantity_title(key);
    const int decimals = quantity_decimals(key);
    return {std::move(key), std::move(title), std::move(unit), content, decimals};
}

} // namespace

Table comparison_table(const Comparison& comparison) {
    Table table;
    table.title = "Comparison of units as tested";
    // Prices have no unit in common: each cell names its currency.
    table.columns = {identifying(text_column("unit", "unit")),
                     identifying(text_column("maker", "maker")),
                     identifying(text_column("run", "run")),
                     figure_column("rated_wh", "Wh", Content::number),
                     figure_column("delivered_wh", "Wh"),
                     figure_column("usable_fraction", "1"),
                     figure_column("mean_load_w", "W"),
                     figure_column("duration_h", "h"),
                     figure_column("wh_per_gauge_point", "Wh/pt"),
                     figure_column("no_load_draw_w", "W"),
                     text_column("gauge_verdict", "gauge"),
                     figure_column("price_per_rated_kwh", "", Content::number),
                     figure_column("price_per_delivered_kwh", ""),
                     text_column("meter", "meter")};
    for (const ComparisonRow& row : comparison.rows)
        table.rows.push_back({row.unit.name, row.unit.maker, row.run_title, row.rated_wh, row.delivered_wh,
                              row.usable_fraction, row.mean_load_w, row.duration_h, row.wh_per_gauge_point,
                              row.no_load_draw_w, row.gauge_verdict, row.price_per_rated_kwh, row.price_per_delivered_kwh,
                              row.meter_name.empty() ? std::string("not stated") : row.meter_name});
    table.remarks = comparison.remarks;
    for (const std::string& left_out : comparison.left_out) table.remarks.push_back("Left out: " + left_out);
    table.method = comparison_method();
    return table;
}

} // namespace ullage
