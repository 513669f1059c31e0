// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/inside/repeat_row.h"

namespace ullage {
namespace {

/// The mean of one figure of the drains, with the mean of their half-widths.
Quantity mean_of_drains(Quantity EnergyAnalysis::*figure, const RepeatMean& mean, const std::vector<const EnergyAnalysis*>& energies) {
    double sum = 0, half_widths = 0;
    bool all_known = true, intervals = true;
    Kind kind = Kind::measured;
    for (const EnergyAnalysis* energy : energies) {
        const Quantity& of_drain = energy->*figure;
        all_known = all_known && of_drain.value.has_value();
        intervals = intervals && of_drain.half_width().has_value();
        sum += of_drain.value.value_or(0);
        half_widths += of_drain.half_width().value_or(0);
        if (of_drain.kind != Kind::measured) kind = of_drain.kind;
    }
    const Quantity& first = energies.front()->*figure;
    if (!all_known) return not_known(first.key, first.unit, say(phrase("comparison", "it is not known of every drain of the mean")));
    const auto n = static_cast<double>(energies.size());
    return known(first.key, first.unit, sum / n, intervals ? std::optional(half_widths / n) : std::nullopt, kind, mean.delivered_wh.reason);
}

void put_what_follows(ComparisonRow& row) {
    row.price_per_delivered_kwh = price_per_kwh("price_per_delivered_kwh", row.unit, row.delivered_wh);
    row.paid_per_delivered_kwh = paid_per_kwh("paid_per_delivered_kwh", row.unit, row.delivered_wh);
    row.wh_per_kg = energy_per_kg(row.unit, row.delivered_wh);
}

} // namespace

Quantity fraction_of_rated(const Unit& unit, const Quantity& energy_wh) {
    const double rated_wh = unit.rated_energy_wh.value_or(0);
    if (rated_wh <= 0) return not_known("usable_fraction", "1", say(phrase("comparison", "the rated energy of the unit is not stated")));
    Quantity result = energy_wh;
    result.key = "usable_fraction";
    result.unit = "1";
    for (std::optional<double>* part : {&result.value, &result.lower, &result.upper})
        if (*part) **part /= rated_wh;
    return result;
}

void put_repeat_count(const RepeatMean& mean, ComparisonRow& row) {
    const auto n = static_cast<double>(mean.count());
    row.mean = mean;
    row.repeats = known("repeats", "1", n, std::nullopt, Kind::measured);
    if (mean.count() < 2) {
        row.scatter_percent = not_known("scatter_percent", "%", say(phrase("comparison", "one drain stands alone")));
        return;
    }
    row.scatter_percent =
        known("scatter_percent", "%", 100 * mean.scatter_wh / mean.mean_wh, std::nullopt, Kind::measured,
              say_count(mean.count() - 1, phrases("comparison", "experimental standard deviation of one drain, %n degrees of freedom",
                                                  "experimental standard deviation of one drain, %n degree of freedom")));
}

void put_repeats(const RepeatMean& mean, const std::vector<const EnergyAnalysis*>& energies, ComparisonRow& row) {
    row.run_title = say(phrase("comparison", "mean of %1 drains"), say_number(mean.count()));
    row.delivered_wh = mean.delivered_wh;
    row.usable_fraction = fraction_of_rated(row.unit, mean.delivered_wh);
    row.mean_load_w = mean_of_drains(&EnergyAnalysis::mean_load_w, mean, energies);
    row.duration_h = mean_of_drains(&EnergyAnalysis::duration_h, mean, energies);
    row.wh_per_gauge_point = mean_of_drains(&EnergyAnalysis::wh_per_gauge_point, mean, energies);
    row.through_curve = false;
    put_what_follows(row);
}

void put_alone(ComparisonRow& row) {
    const auto widen = [&row](Quantity& quantity, const Quantity& alone) {
        quantity.lower = alone.lower;
        quantity.upper = alone.upper;
        if (quantity.reason.empty()) quantity.reason = row.mean->delivered_wh.reason;
        else quantity.reason = say_joined({quantity.reason, row.mean->delivered_wh.reason}, "; ");
    };
    widen(row.delivered_wh, row.mean->delivered_wh);
    widen(row.usable_fraction, fraction_of_rated(row.unit, row.mean->delivered_wh));
    put_what_follows(row);
}

} // namespace ullage
