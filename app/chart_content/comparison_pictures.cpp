// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/comparison_pictures.h"

#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t most_bars = 60; ///< thinner ones could not be told apart

/// Fractions are drawn in %.
std::optional<double> percent(const std::optional<double>& fraction) { return fraction ? std::optional(100 * *fraction) : std::nullopt; }

QString percent_text(double fraction) { return QString::number(100 * fraction, 'f', 0); }

QString empty_words() { return tr("No drain to compare yet. Record a drain of each unit, from full to the cut-off, or import run sheets."); }

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

VesselRowContent comparison_vessels(const Comparison& comparison, const FairComparison& fair, const ExpectationBand& band) {
    VesselRowContent content;
    content.description = tr("Delivered energy of each unit against its rated energy");
    content.subject = fair.load ? tr("at %1").arg(text_of(common_load_text(*fair.load))) : tr("as tested, each at the load of its run");
    content.key =
        tr("Height: rated energy. Filled: delivered at the socket; the bracket is its 95 % interval. Hatched: taken by the unit's own draw, where "
           "that is known. Dashed: what is typical.");
    content.empty_text = empty_words();
    const std::vector<Message> names = row_names(comparison);
    for (const std::size_t i : fair_order(fair)) {
        const ComparisonRow& row = comparison.rows[i];
        const FairRow& at = fair.rows[i];
        VesselData vessel = vessel_of(row);
        vessel.band_lower_fraction = band.lower_fraction;
        vessel.band_upper_fraction = band.upper_fraction;
        vessel.delivered_wh = at.deliverable_wh.value;
        vessel.lower_wh = at.deliverable_wh.lower;
        vessel.upper_wh = at.deliverable_wh.upper;
        if (at.standing == Standing::moved && row.no_load_draw_w.value && at.run_time_h.value)
            vessel.no_load_taken_wh = std::max(0.0, *row.no_load_draw_w.value * *at.run_time_h.value);
        content.columns.push_back({text_of(names[i]), vessel, shown_quantity(at.deliverable_wh, 0).plain()});
    }
    return content;
}

VesselRowContent comparison_vessels(const Comparison& comparison) { return comparison_vessels(comparison, compare_at(comparison, std::nullopt)); }

BarContent comparison_bars(const Comparison& comparison, const FairComparison& fair, const ExpectationBand& band) {
    BarContent content;
    const QString where = fair.load ? tr("at %1").arg(text_of(common_load_text(*fair.load))) : tr("as tested");
    content.description = tr("Usable fraction of each unit, %1, with its 95 % interval").arg(where);
    content.axis.title = tr("usable fraction %1, delivered / rated energy / %").arg(where);
    content.axis.unit = QStringLiteral("%");
    content.axis.minimum = 0;
    content.subject = fair.load ? tr("grey bars are as tested, at another load") : tr("each at the load of its run");
    content.key = tr("Brackets: 95 % intervals. Grey band: what is typical.");
    if (band.upper_fraction > band.lower_fraction)
        content.bands.push_back({100 * band.lower_fraction, 100 * band.upper_fraction,
                                 tr("typical, %1 to %2 %").arg(percent_text(band.lower_fraction), percent_text(band.upper_fraction))});
    content.empty_text = empty_words();
    std::vector<std::size_t> shown = fair_order(fair);
    if (shown.size() > most_bars) {
        content.axis.title += tr("; the first %1 of %2 rows").arg(most_bars).arg(shown.size());
        shown.resize(most_bars);
    }
    for (const std::size_t i : shown) {
        const ComparisonRow& row = comparison.rows[i];
        const FairRow& at = fair.rows[i];
        const Message kind = fair.load ? say_standing(at.standing) : say_kind(at.usable_fraction.kind);
        ChartBar bar;
        bar.name = text_of(row.unit.name);
        bar.value = percent(at.usable_fraction.value);
        bar.lower = percent(at.usable_fraction.lower);
        bar.upper = percent(at.usable_fraction.upper);
        bar.value_text = shown_quantity(at.usable_fraction, 2).plain();
        if (at.standing != Standing::moved) bar.note = text_of(row.run_title) + QStringLiteral(", ");
        bar.note += text_of(kind);
        if (fair.load && at.standing == Standing::as_tested) bar.colour = CurveColour::soft;
        content.bars.push_back(std::move(bar));
    }
    return content;
}

BarContent comparison_bars(const Comparison& comparison) { return comparison_bars(comparison, compare_at(comparison, std::nullopt)); }

} // namespace ullage
