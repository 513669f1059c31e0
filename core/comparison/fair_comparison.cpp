// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/fair_comparison.h"

#include "base/number.h"
#include "comparison/inside/repeat_row.h"
#include "unit/between_runs_predict.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ullage {
namespace {

/// The drains that had this load; none of them stands for the others.
std::vector<std::size_t> drains_at(const UnitFit& fit, const CommonLoad& load) {
    std::vector<std::size_t> places;
    for (std::size_t i = 0; i < fit.drains.size(); ++i) {
        const DrainSummary& drain = fit.drains[i];
        if (drain.used && drain.delivered_wh > 0 && std::abs(drain.mean_load_w / load.mean_w() - 1) <= same_load_share) places.push_back(i);
    }
    return places;
}

FairRow as_tested(const ComparisonRow& row, Message reason) {
    FairRow at;
    at.deliverable_wh = row.delivered_wh;
    at.deliverable_wh.key = "deliverable_wh";
    at.usable_fraction = row.usable_fraction;
    at.run_time_h = row.duration_h;
    at.run_time_h.key = "run_time_h";
    at.reason = std::move(reason);
    at.run_uuid = row.run.uuid;
    at.mean = row.mean;
    return at;
}

FairRow from_drains(const Unit& unit, const UnitFit& fit, std::vector<std::size_t> places) {
    FairRow at;
    at.standing = Standing::tested_there;
    at.mean = mean_of_drains(fit.drains, std::move(places), fit.options);
    const DrainSummary& latest = fit.drains[at.mean->drains.back()];
    at.reason = at.mean->count() == 1 ? say(phrase("comparison", "%1 had this load"), latest.title) : Message(at.mean->delivered_wh.reason);
    at.deliverable_wh = at.mean->delivered_wh;
    at.deliverable_wh.key = "deliverable_wh";
    at.usable_fraction = fraction_of_rated(unit, at.deliverable_wh);
    at.run_time_h = at.mean->duration_h;
    at.run_time_h.key = "run_time_h";
    at.run_uuid = latest.run_uuid;
    return at;
}

FairRow row_at(const ComparisonRow& row, const UnitFit& fit, const std::optional<CommonLoad>& load) {
    if (!load) return as_tested(row, say(phrase("comparison", "as tested")));
    const LoadPrediction predicted = predict_under(fit, row.unit, *load);
    if (predicted.deliverable_wh.value) {
        FairRow at;
        at.standing = Standing::moved;
        at.deliverable_wh = predicted.deliverable_wh;
        at.usable_fraction = predicted.usable_fraction;
        at.run_time_h = predicted.run_time_h;
        at.reason = predicted.deliverable_wh.reason;
        at.far_beyond = predicted.is_far_beyond();
        return at;
    }
    if (std::vector<std::size_t> places = drains_at(fit, *load); !places.empty()) return from_drains(row.unit, fit, std::move(places));
    return as_tested(row, predicted.deliverable_wh.reason);
}

/// Row numbers by usable fraction, largest first; rows without one last.
std::vector<std::size_t> order_of(const std::vector<std::optional<double>>& fractions) {
    std::vector<std::size_t> order(fractions.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, [&](std::size_t a, std::size_t b) { return fractions[a].value_or(-1) > fractions[b].value_or(-1); });
    return order;
}

Message moved_places(const ComparisonRow& first, const ComparisonRow& second, const CommonLoad& load) {
    const std::optional<double>&one_w = first.mean_load_w.value, &other_w = second.mean_load_w.value;
    const Message why = say(phrase("comparison", "The longer a drain takes, the more of the content feeds the unit itself."));
    if (!one_w || !other_w)
        return say(phrase("comparison", "As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round."),
                   first.unit.name, second.unit.name, say_common_load(load)) +
               " " + why;
    return say(phrase("comparison", "As tested %1 gave the larger share of its label, before %2; at %3 it is the other way round: %1 was drained at "
                                    "%4 W, %2 at %5 W."),
               first.unit.name, second.unit.name, say_common_load(load), say_number(*one_w, 0), say_number(*other_w, 0)) +
           " " + why;
}

/// Names the first two rows that change places, and why they do.
std::optional<Message> change_of_order(const Comparison& comparison, const FairComparison& fair) {
    std::vector<std::optional<double>> tested, moved;
    for (const ComparisonRow& row : comparison.rows) tested.push_back(row.usable_fraction.value);
    for (const FairRow& row : fair.rows) moved.push_back(row.usable_fraction.value);
    const auto order = order_of(tested);
    for (std::size_t place = 0; place + 1 < order.size(); ++place)
        for (std::size_t later = place + 1; later < order.size(); ++later) {
            const std::size_t a = order[place], b = order[later];
            if (!tested[a] || !tested[b] || !moved[a] || !moved[b] || *moved[b] <= *moved[a] || *tested[a] <= *tested[b]) continue;
            const ComparisonRow &first = comparison.rows[a], &second = comparison.rows[b];
            if (first.unit.uuid == second.unit.uuid) continue;
            return moved_places(first, second, *fair.load);
        }
    return std::nullopt;
}

Message stays_as_tested(const ComparisonRow& row, const Message& reason) {
    if (!row.mean_load_w.value) return say(phrase("comparison", "%1 is shown as tested, at a load that is not known: %2."), row.unit.name, reason);
    return say(phrase("comparison", "%1 is shown as tested, at %2 W: %3."), row.unit.name, say_number(*row.mean_load_w.value, 0), reason);
}

} // namespace

std::string_view standing_text(Standing standing) {
    switch (standing) {
    case Standing::moved: return "calculated for this load";
    case Standing::tested_there: return "tested at this load";
    case Standing::as_tested: return "as tested";
    }
    return "as tested";
}

Message say_standing(Standing standing) {
    switch (standing) {
    case Standing::moved: return say(phrase("comparison", "calculated for this load"));
    case Standing::tested_there: return say(phrase("comparison", "tested at this load"));
    case Standing::as_tested: break;
    }
    return say(phrase("comparison", "as tested"));
}

FairComparison compare_at(const Comparison& comparison, const std::optional<CommonLoad>& load) {
    FairComparison fair;
    fair.load = load;
    for (const ComparisonRow& row : comparison.rows) {
        FairRow at = row_at(row, comparison.fits[row.fit], load);
        at.price_per_delivered_kwh = price_per_kwh("price_per_delivered_kwh", row.unit, at.deliverable_wh);
        at.paid_per_delivered_kwh = paid_per_kwh("paid_per_delivered_kwh", row.unit, at.deliverable_wh);
        at.wh_per_kg = energy_per_kg(row.unit, at.deliverable_wh);
        if (load && at.standing == Standing::as_tested) fair.remarks.push_back(stays_as_tested(row, at.reason));
        fair.rows.push_back(std::move(at));
    }
    if (load)
        if (auto words = change_of_order(comparison, fair)) fair.remarks.insert(fair.remarks.begin(), std::move(*words));
    return fair;
}

} // namespace ullage
