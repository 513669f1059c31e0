// SPDX-License-Identifier: GPL-3.0-or-later
#include "fleet/comparison.h"

#include "base/number.h"
#include "fleet/curve_projection.h"

#include <algorithm>
#include <map>
#include <set>

namespace ullage {
namespace {

struct Candidate {
    const RunRecord* record;
    RunAnalysis analysis;
};

/// How much a run says about the usable fraction and its load, most first: a cut-off that was seen before one found later.
int rank(const Candidate& candidate) {
    switch (candidate.analysis.energy.usable_fraction.kind) {
    case Kind::measured: return candidate.record->run.end == RunEnd::cut_off_seen ? 0 : 1;
    case Kind::bracket: return 2;
    case Kind::at_least: return 3;
    case Kind::projected: return 4;
    case Kind::not_known: return 5;
    }
    return 5;
}

/// Delivered energy that a row compares: of the whole content. A partial drain has delivered less than the unit holds, so
/// the projection stands in for it.
Quantity comparable_energy(const Candidate& candidate) {
    const EnergyAnalysis& energy = candidate.analysis.energy;
    if (energy.usable_fraction.kind != Kind::projected) return energy.delivered_wh;
    const double rated_wh = candidate.record->unit.rated_energy_wh.value_or(0);
    Quantity result{"delivered_wh", "Wh", *energy.usable_fraction.value * rated_wh, {}, {}, Kind::projected, energy.usable_fraction.reason};
    if (energy.usable_fraction.lower) result.lower = *energy.usable_fraction.lower * rated_wh;
    if (energy.usable_fraction.upper) result.upper = *energy.usable_fraction.upper * rated_wh;
    return result;
}

/// What the no-load draw took while the output was on, as energy at the socket; absent while the drains cannot tell it.
std::optional<double> taken_by_no_load(const UnitFit& fit, const Quantity& duration_h) {
    if (!fit.no_load_draw_w.value || !duration_h.value) return std::nullopt;
    return std::max(0.0, *fit.no_load_draw_w.value * *duration_h.value);
}

ComparisonRow make_row(const Candidate& candidate, int drains, const UnitFit& fit, std::size_t place) {
    const RunRecord& record = *candidate.record;
    const EnergyAnalysis& energy = candidate.analysis.energy;
    ComparisonRow row;
    row.unit = record.unit;
    row.run = record.run;
    row.run_number = record.number;
    row.drains = drains;
    row.fit = place;
    row.run_title = run_title(record, energy);
    if (record.meter) row.meter_name = record.meter->name;
    row.rated_wh = record.unit.rated_energy_wh
                       ? known("rated_wh", "Wh", *record.unit.rated_energy_wh, std::nullopt, Kind::measured, "the maker's claim, not measured")
                       : not_known("rated_wh", "Wh", "the rated energy of the unit is not stated");
    row.delivered_wh = comparable_energy(candidate);
    row.usable_fraction = energy.usable_fraction;
    row.mean_load_w = energy.mean_load_w;
    row.duration_h = energy.duration_h;
    row.wh_per_gauge_point = energy.wh_per_gauge_point;
    row.price_per_rated_kwh = price_per_kwh("price_per_rated_kwh", record.unit, row.rated_wh);
    row.price_per_delivered_kwh = price_per_kwh("price_per_delivered_kwh", record.unit, row.delivered_wh);
    row.wh_per_kg = energy_per_kg(record.unit, row.delivered_wh);
    row.through_curve = !candidate.analysis.curve_run_uuid.empty();
    row.gauge_verdict = candidate.analysis.gauge.verdict;
    row.no_load_draw_w = fit.no_load_draw_w;
    if (energy.usable_fraction.kind == Kind::measured) row.no_load_taken_wh = taken_by_no_load(fit, energy.duration_h);
    return row;
}

void add_remarks(Comparison& comparison) {
    std::set<std::string> meters;
    double lowest_w = 0, highest_w = 0;
    bool honest_assumed = false, curve_assumed = false;
    for (const ComparisonRow& row : comparison.rows) {
        meters.insert(row.meter_name);
        if (row.usable_fraction.kind == Kind::projected) (row.through_curve ? curve_assumed : honest_assumed) = true;
        if (!row.mean_load_w.value) continue;
        lowest_w = lowest_w == 0 ? *row.mean_load_w.value : std::min(lowest_w, *row.mean_load_w.value);
        highest_w = std::max(highest_w, *row.mean_load_w.value);
    }
    if (lowest_w > 0 && highest_w > 1.25 * lowest_w)
        comparison.remarks.push_back("As tested: the mean loads run from " + fixed_text(lowest_w, 0) + " W to " + fixed_text(highest_w, 0) +
                                     " W. A slow drain feeds the no-load draw for longer and delivers less.");
    if (meters.size() > 1)
        comparison.remarks.push_back("Different meters were used: the error limit of each counts in full in a difference between units.");
    if (honest_assumed)
        comparison.remarks.push_back("Projected figures assume an honest gauge over the stretch that was drained; half a drain can mislead by "
                                     "more than a tenth.");
    if (curve_assumed)
        comparison.remarks.push_back("Figures projected through the gauge curve of an earlier run assume that the gauge has not changed since.");
}

} // namespace

std::vector<std::string> row_names(const Comparison& comparison) {
    std::map<std::string, int> rows;
    for (const ComparisonRow& row : comparison.rows) ++rows[row.unit.name];
    std::vector<std::string> names;
    for (const ComparisonRow& row : comparison.rows) names.push_back(rows[row.unit.name] > 1 ? row.unit.name + ", " + row.run_title : row.unit.name);
    return names;
}

Quantity price_per_kwh(std::string key, const Unit& unit, const Quantity& energy_wh) {
    const std::string money = (unit.currency.empty() ? std::string("price") : unit.currency) + "/kWh";
    if (!unit.price) return not_known(std::move(key), money, "the price is not stated");
    if (!energy_wh.value || *energy_wh.value <= 0)
        return not_known(std::move(key), money, energy_wh.reason.empty() ? "no energy to divide by" : energy_wh.reason);
    Quantity result{std::move(key), money, *unit.price / *energy_wh.value * 1000, {}, {}, energy_wh.kind, energy_wh.reason};
    if (energy_wh.upper && *energy_wh.upper > 0) result.lower = *unit.price / *energy_wh.upper * 1000;
    if (energy_wh.lower && *energy_wh.lower > 0) result.upper = *unit.price / *energy_wh.lower * 1000;
    if (energy_wh.kind == Kind::at_least) {
        // At least that much energy means at most that price.
        result = not_known(result.key, money, "at most " + fixed_text(*result.value, 0) + " " + money + ": " + energy_wh.reason);
    }
    return result;
}

Quantity energy_per_kg(const Unit& unit, const Quantity& energy_wh) {
    if (!unit.mass_kg || *unit.mass_kg <= 0) return not_known("wh_per_kg", "Wh/kg", "the mass is not stated");
    if (!energy_wh.value) return not_known("wh_per_kg", "Wh/kg", energy_wh.reason);
    Quantity result{"wh_per_kg", "Wh/kg", *energy_wh.value / *unit.mass_kg, {}, {}, energy_wh.kind, energy_wh.reason};
    if (energy_wh.lower) result.lower = *energy_wh.lower / *unit.mass_kg;
    if (energy_wh.upper) result.upper = *energy_wh.upper / *unit.mass_kg;
    return result;
}

Comparison compare_as_tested(const std::vector<RunRecord>& records, CompareRows rows, const MeasureOptions& options) {
    std::map<std::string, std::vector<Candidate>> drains; // by unit uuid
    std::map<std::string, std::vector<RunRecord>> all_runs; // by unit uuid: a no-load drain counts in the fit between runs
    std::vector<const Unit*> order;
    for (const RunRecord& record : records) {
        const auto [place, is_new] = drains.try_emplace(record.unit.uuid);
        if (is_new) order.push_back(&record.unit);
        all_runs[record.unit.uuid].push_back(record);
        if (record.run.kind == RunKind::drain) place->second.push_back({&record, analyse_run(record, options)});
    }
    std::ranges::stable_sort(order, {}, [](const Unit* unit) { return unit->name; });

    Comparison comparison;
    for (const Unit* unit : order) {
        std::vector<Candidate>& candidates = drains[unit->uuid];
        const int count = static_cast<int>(candidates.size());
        if (candidates.empty()) {
            comparison.left_out.push_back(unit->name + ": no drain in the logbook");
            continue;
        }
        comparison.fits.push_back(fit_unit(all_runs[unit->uuid], options));
        const UnitFit& fit = comparison.fits.back();
        const std::size_t place = comparison.fits.size() - 1;
        for (Candidate& candidate : candidates) project_through_curve(*candidate.record, fit, candidate.analysis);
        if (rows == CompareRows::every_drain) {
            for (const Candidate& candidate : candidates) comparison.rows.push_back(make_row(candidate, count, fit, place));
            continue;
        }
        const auto best = std::ranges::min_element(candidates, [](const Candidate& a, const Candidate& b) {
            const int rank_a = rank(a), rank_b = rank(b);
            return rank_a != rank_b ? rank_a < rank_b : a.analysis.energy.start_ms > b.analysis.energy.start_ms;
        });
        comparison.rows.push_back(make_row(*best, count, fit, place));
    }
    add_remarks(comparison);
    return comparison;
}

} // namespace ullage
