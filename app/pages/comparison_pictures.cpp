// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison_pictures.h"

#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

/// Several rows of one unit need the run beside the name.
QString row_name(const Comparison& comparison, const ComparisonRow& row) {
    const auto same_unit = std::ranges::count_if(comparison.rows, [&](const ComparisonRow& r) { return r.unit.uuid == row.unit.uuid; });
    const QString name = QString::fromStdString(row.unit.name);
    return same_unit > 1 ? name + QStringLiteral(", ") + QString::fromStdString(row.run_title) : name;
}

std::vector<const ComparisonRow*> most_usable_first(const Comparison& comparison) {
    std::vector<const ComparisonRow*> rows;
    for (const ComparisonRow& row : comparison.rows) rows.push_back(&row);
    std::ranges::stable_sort(rows, [](const ComparisonRow* a, const ComparisonRow* b) {
        return a->usable_fraction.value.value_or(-1) > b->usable_fraction.value.value_or(-1);
    });
    return rows;
}

QString empty_words() {
    return tr("No drain to compare yet. Record a drain of each unit, from full to the cut-off, or import run sheets.");
}

} // namespace

VesselData vessel_of(const ComparisonRow& row) {
    VesselData vessel;
    vessel.rated_wh = row.unit.rated_energy_wh.value_or(0);
    vessel.delivered_wh = row.delivered_wh.value;
    vessel.lower_wh = row.delivered_wh.lower;
    vessel.upper_wh = row.delivered_wh.upper;
    vessel.no_load_taken_wh = row.no_load_taken_wh;
    vessel.band_lower_fraction = expected_lower_fraction;
    vessel.band_upper_fraction = expected_upper_fraction;
    return vessel;
}

VesselRowContent comparison_vessels(const Comparison& comparison) {
    VesselRowContent content;
    content.description = tr("Delivered energy of each unit against its rated energy");
    content.empty_text = empty_words();
    for (const ComparisonRow* row : most_usable_first(comparison))
        content.columns.push_back({row_name(comparison, *row), vessel_of(*row), QString::fromStdString(quantity_text(row->delivered_wh, 0))});
    return content;
}

BarContent comparison_bars(const Comparison& comparison) {
    BarContent content;
    content.description = tr("Usable fraction of each unit, as tested, with its 95 % interval");
    content.axis.title = tr("usable fraction, delivered / rated energy");
    content.axis.minimum = 0;
    content.bands.push_back({expected_lower_fraction, expected_upper_fraction, tr("commonly seen, 0.75 to 0.80")});
    content.empty_text = empty_words();
    for (const ComparisonRow* row : most_usable_first(comparison)) {
        const std::string_view kind = kind_text(row->usable_fraction.kind);
        ChartBar bar;
        bar.name = QString::fromStdString(row->unit.name);
        bar.value = row->usable_fraction.value;
        bar.lower = row->usable_fraction.lower;
        bar.upper = row->usable_fraction.upper;
        bar.value_text = QString::fromStdString(quantity_text(row->usable_fraction, 2));
        bar.note = QString::fromStdString(row->run_title) + QStringLiteral(", ") +
                   QString::fromUtf8(kind.data(), static_cast<qsizetype>(kind.size()));
        content.bars.push_back(std::move(bar));
    }
    return content;
}

} // namespace ullage
