// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/specimens.h"
#include "formats/results/comparison_table.h"
#include "formats/results/table_method.h"
#include "formats/text/quantity_title.h"

namespace ullage {

Table models_table(const Comparison& comparison, const FairComparison& fair) {
    using Content = TableColumn::Content;
    Table table;
    table.title = fair.load ? say(phrase("results", "Models by their specimens at %1"), say_common_load(*fair.load))
                            : say(phrase("results", "Models by their specimens, as tested"));
    const auto figure = [](const char* key) {
        return TableColumn{key, quantity_title(key), std::string(quantity_unit(key)), Content::quantity, quantity_decimals(key)};
    };
    table.columns = {{"model", say(phrase("results", "model")), {}, Content::text, 0},
                     {"maker", say(phrase("results", "maker")), {}, Content::text, 0},
                     {"specimens", say(phrase("results", "specimens")), {}, Content::number, 0},
                     figure("usable_fraction"),
                     figure("spread_percent"),
                     figure("next_specimen_fraction")};
    for (const ModelSample& sample : model_samples(comparison, fair))
        table.rows.push_back({sample.model, sample.maker,
                              known("specimens", "1", static_cast<double>(sample.specimens), std::nullopt, Kind::measured), sample.usable_fraction,
                              sample.spread_percent, sample.next_fraction});
    table.remarks.push_back(say(phrase("results", "A unit belongs to a model where its form names one.")));
    table.method = comparison_method(comparison.fits.empty() ? MeasureOptions() : comparison.fits.front().options);
    return table;
}

} // namespace ullage
