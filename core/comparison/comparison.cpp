// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/comparison.h"

#include "base/number.h"
#include "claims/claims.h"
#include "comparison/inside/repeat_row.h"
#include "gauge/drain_series.h"
#include "gauge/projection_doubt.h"
#include "unit/curve_projection.h"

#include <algorithm>
#include <set>
#include <unordered_map>
#include <utility>

namespace ullage {
namespace {

struct Candidate {
    const RunRecord* record;
    const EnergyAnalysis* energy;
    std::optional<Quantity> through_curve; ///< the fraction through another run's gauge curve, where there is one

    [[nodiscard]] const Quantity& usable_fraction() const { return through_curve ? *through_curve : energy->usable_fraction; }
};

/// How much a run says about the usable fraction and its load, most first: a cut-off that was seen before one found later.
int rank(const Candidate& candidate) {
    switch (candidate.usable_fraction().kind) {
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
    const Quantity& fraction = candidate.usable_fraction();
    if (fraction.kind != Kind::projected) return candidate.energy->delivered_wh;
    const double rated_wh = candidate.record->unit.rated_energy_wh.value_or(0);
    Quantity result{"delivered_wh", "Wh", *fraction.value * rated_wh, {}, {}, Kind::projected, fraction.reason};
    if (fraction.lower) result.lower = *fraction.lower * rated_wh;
    if (fraction.upper) result.upper = *fraction.upper * rated_wh;
    return result;
}

/// What the no-load draw took while the output was on, as energy at the socket; absent while the drains cannot tell it.
std::optional<double> taken_by_no_load(const UnitFit& fit, const Quantity& on_h) {
    if (!fit.no_load_draw_w.value || !on_h.value) return std::nullopt;
    return std::max(0.0, *fit.no_load_draw_w.value * *on_h.value);
}

ComparisonRow make_row(const Candidate& candidate, int drains, const UnitFit& fit) {
    const RunRecord& record = *candidate.record;
    const EnergyAnalysis& energy = *candidate.energy;
    ComparisonRow row;
    row.unit = record.unit;
    row.run = record.run;
    row.run_number = record.number;
    row.drains = drains;
    row.run_title = run_title(record, energy);
    if (record.meter) row.meter_name = record.meter->name;
    row.rated_wh = record.unit.rated_energy_wh ? known("rated_wh", "Wh", *record.unit.rated_energy_wh, std::nullopt, Kind::measured,
                                                       say(phrase("comparison", "the maker's claim, not measured")))
                                               : not_known("rated_wh", "Wh", say(phrase("comparison", "the rated energy of the unit is not stated")));
    row.delivered_wh = comparable_energy(candidate);
    row.usable_fraction = candidate.usable_fraction();
    row.mean_load_w = energy.mean_load_w;
    row.duration_h = energy.duration_h;
    row.wh_per_gauge_point = energy.wh_per_gauge_point;
    row.price_per_rated_kwh = price_per_kwh("price_per_rated_kwh", record.unit, row.rated_wh);
    row.price_per_delivered_kwh = price_per_kwh("price_per_delivered_kwh", record.unit, row.delivered_wh);
    row.paid_per_rated_kwh = paid_per_kwh("paid_per_rated_kwh", record.unit, row.rated_wh);
    row.paid_per_delivered_kwh = paid_per_kwh("paid_per_delivered_kwh", record.unit, row.delivered_wh);
    row.wh_per_kg = energy_per_kg(record.unit, row.delivered_wh);
    row.through_curve = candidate.through_curve.has_value();
    row.no_load_draw_w = fit.no_load_draw_w;
    if (row.usable_fraction.kind == Kind::measured) row.no_load_taken_wh = taken_by_no_load(fit, output_on_hours(energy));
    row.repeats = not_known("repeats", "1", say(phrase("comparison", "not drained from full to cut-off with its energy known")));
    row.scatter_percent = not_known("scatter_percent", "%", row.repeats.reason);
    return row;
}

std::optional<std::size_t> place_of(const UnitFit& fit, const RunId& run_uuid) {
    const auto found = std::ranges::find(fit.drains, run_uuid, &DrainSummary::run_uuid);
    if (found == fit.drains.end() || !found->used || found->delivered_wh <= 0) return std::nullopt;
    return static_cast<std::size_t>(found - fit.drains.begin());
}

/// A row of one drain, which stands alone.
ComparisonRow drain_row(const Candidate& candidate, int drains, const UnitFit& fit, const MeasureOptions& options) {
    ComparisonRow row = make_row(candidate, drains, fit);
    const GaugeAnalysis gauge = analyse_gauge(*candidate.record, *candidate.energy, options);
    row.gauge_verdict = gauge.verdict;
    row.worst_gauge_error_pt = gauge.worst_error_pt;
    if (const auto place = place_of(fit, candidate.record->run.uuid); place && row.usable_fraction.kind == Kind::measured)
        put_repeat_count(mean_of_drains(fit.drains, {*place}, options), row);
    return row;
}

/// A row of repeated drains: their mean, and the gauge of the one whose gauge was worst.
ComparisonRow repeats_row(const RepeatMean& mean, const std::vector<Candidate>& candidates, int drains, const UnitFit& fit,
                          const MeasureOptions& options) {
    std::vector<const Candidate*> of_mean;
    for (const std::size_t place : mean.drains)
        for (const Candidate& candidate : candidates)
            if (candidate.record->run.uuid == fit.drains[place].run_uuid) of_mean.push_back(&candidate);
    const auto begin_ms = [](const Candidate* candidate) { return candidate->energy->start_ms; };
    ComparisonRow row = make_row(**std::ranges::max_element(of_mean, {}, begin_ms), drains, fit);
    std::vector<const EnergyAnalysis*> energies;
    double worst_pt = -1;
    for (const Candidate* candidate : of_mean) {
        energies.push_back(candidate->energy);
        const GaugeAnalysis gauge = analyse_gauge(*candidate->record, *candidate->energy, options);
        if (gauge.least_error_pt.value.value_or(0) <= worst_pt) continue;
        worst_pt = gauge.least_error_pt.value.value_or(0);
        row.gauge_verdict = gauge.verdict;
        row.worst_gauge_error_pt = gauge.worst_error_pt;
    }
    put_repeats(mean, energies, row);
    put_repeat_count(mean, row);
    return row;
}

std::vector<const RunRecord*> pointers_to(const std::vector<RunRecord>& records) {
    std::vector<const RunRecord*> pointers;
    for (const RunRecord& record : records) pointers.push_back(&record);
    return pointers;
}

/// The sources of a unit's runs, each once, in order of the runs.
std::string sources_of(const UnitFit& fit, const std::map<RunId, std::string>& source_of) {
    std::string sources;
    std::set<std::string> told;
    for (const DrainSummary& drain : fit.drains)
        if (const auto found = source_of.find(drain.run_uuid); found != source_of.end() && told.insert(found->second).second)
            sources += (sources.empty() ? "" : ", ") + found->second;
    return sources;
}

void add_remarks(Comparison& comparison) {
    // Meters of one name in two logbooks are two meters.
    std::set<std::pair<std::string, MeterId>> meters;
    bool honest_assumed = false, curve_assumed = false;
    for (const ComparisonRow& row : comparison.rows) {
        meters.emplace(row.meter_name, row.run.meter_uuid.value_or(MeterId()));
        if (row.usable_fraction.kind == Kind::projected) (row.through_curve ? curve_assumed : honest_assumed) = true;
    }
    if (meters.size() > 1)
        comparison.remarks.push_back(
            say(phrase("comparison", "Different meters were used: the error limit of each counts in full in a difference between units.")));
    if (honest_assumed)
        comparison.remarks.push_back(say(
            phrase("comparison", "Projected figures assume an accurate gauge over the stretch that was drained, or allow for the fault found in it; "
                                 "half a drain can mislead by more than a tenth.")));
    if (curve_assumed)
        comparison.remarks.push_back(
            say(phrase("comparison", "Figures projected through the gauge curve of an earlier run assume that the gauge has not changed since.")));
}

Quantity money_per_kwh(std::string key, const Unit& unit, std::optional<double> price, const Phrase& missing, const Quantity& energy_wh) {
    const std::string money = (unit.currency.empty() ? std::string("price") : unit.currency) + "/kWh";
    if (!price) return not_known(std::move(key), money, say(missing));
    if (!energy_wh.value || *energy_wh.value <= 0)
        return not_known(std::move(key), money,
                         energy_wh.reason.empty() ? say(phrase("comparison", "no energy to divide by")) : Message(energy_wh.reason));
    Quantity result{std::move(key), money, *price / *energy_wh.value * 1000, {}, {}, energy_wh.kind, energy_wh.reason};
    if (energy_wh.upper && *energy_wh.upper > 0) result.lower = *price / *energy_wh.upper * 1000;
    if (energy_wh.lower && *energy_wh.lower > 0) result.upper = *price / *energy_wh.lower * 1000;
    if (energy_wh.kind == Kind::at_least) {
        // At least that much energy means at most that price.
        result = not_known(result.key, money, say(phrase("comparison", "at most %1 %2: %3"), say_number(*result.value, 0), money, energy_wh.reason));
    }
    return result;
}

/// Puts what charges, output runs and standbys of the unit say into each of its rows.
void add_claims(std::vector<ComparisonRow>& rows, const UnitRuns& runs, const UnitFit& fit) {
    const auto only_drains = [](const RunRecord* run) { return run->run.kind == RunKind::drain || run->run.kind == RunKind::no_load_drain; };
    ComparisonRow said;
    said.charge_time_h = not_known("charge_time_h", "h", say(phrase("comparison", "no charge run")));
    said.round_trip_efficiency = not_known("round_trip_efficiency", "1", say(phrase("comparison", "no charge run")));
    said.held_output_w = not_known("held_output_w", "W", say(phrase("comparison", "no sustained output run")));
    said.held_peak_output_w = not_known("held_peak_output_w", "W", say(phrase("comparison", "no peak output run")));
    said.standby_draw_w = not_known("standby_draw_w", "W", say(phrase("comparison", "no standby run")));
    // Most logbooks hold drains alone.
    if (!std::ranges::all_of(runs, only_drains)) {
        const UnitClaims claims = check_claims(runs.front()->unit, runs, fit);
        const auto take = [&claims](Quantity& into, std::string_view claim) {
            const auto check = std::ranges::find(claims.checks, claim, &ClaimCheck::key);
            if (check == claims.checks.end()) return;
            // What an output tripped at is nothing that it held.
            if (check->verdict == ClaimVerdict::does_not_hold && into.unit == "W")
                into = not_known(into.key, "W", say(phrase("comparison", "did not hold: %1"), check->evidence));
            else {
                std::string key = std::move(into.key);
                into = check->measured;
                into.key = std::move(key);
            }
        };
        take(said.charge_time_h, "charge_time_h");
        take(said.held_output_w, "rated_output_w");
        take(said.held_peak_output_w, "peak_output_w");
        said.round_trip_efficiency = claims.round_trip.efficiency;
        if (claims.draws.output_off.draw_w.kind != Kind::not_known || !claims.draws.output_off.draw_w.reason.empty())
            said.standby_draw_w = claims.draws.output_off.draw_w;
    }
    for (ComparisonRow& row : rows) {
        row.charge_time_h = said.charge_time_h;
        row.round_trip_efficiency = said.round_trip_efficiency;
        row.held_output_w = said.held_output_w;
        row.held_peak_output_w = said.held_peak_output_w;
        row.standby_draw_w = said.standby_draw_w;
    }
}

} // namespace

std::vector<Message> row_names(const Comparison& comparison) {
    std::map<std::string, int> rows;
    for (const ComparisonRow& row : comparison.rows) ++rows[row.unit.name];
    std::vector<Message> names;
    for (const ComparisonRow& row : comparison.rows)
        names.push_back(rows[row.unit.name] > 1 ? say_joined({row.unit.name, row.run_title}, ", ") : Message(row.unit.name));
    return names;
}

Quantity price_per_kwh(std::string key, const Unit& unit, const Quantity& energy_wh) {
    return money_per_kwh(std::move(key), unit, unit.price, phrase("comparison", "the price is not stated"), energy_wh);
}

Quantity paid_per_kwh(std::string key, const Unit& unit, const Quantity& energy_wh) {
    return money_per_kwh(std::move(key), unit, unit.paid_price, phrase("comparison", "the price paid is not stated"), energy_wh);
}

Quantity energy_per_kg(const Unit& unit, const Quantity& energy_wh) {
    if (!unit.mass_kg || *unit.mass_kg <= 0) return not_known("wh_per_kg", "Wh/kg", say(phrase("comparison", "the mass is not stated")));
    if (!energy_wh.value) return not_known("wh_per_kg", "Wh/kg", energy_wh.reason);
    Quantity result{"wh_per_kg", "Wh/kg", *energy_wh.value / *unit.mass_kg, {}, {}, energy_wh.kind, energy_wh.reason};
    if (energy_wh.lower) result.lower = *energy_wh.lower / *unit.mass_kg;
    if (energy_wh.upper) result.upper = *energy_wh.upper / *unit.mass_kg;
    return result;
}

std::vector<UnitRuns> runs_by_unit(const std::vector<RunRecord>& records) { return runs_by_unit(pointers_to(records)); }

std::vector<UnitRuns> runs_by_unit(const std::vector<const RunRecord*>& records) {
    std::vector<UnitRuns> units;
    std::unordered_map<UnitId, std::size_t> place_of;
    for (const RunRecord* record : records) {
        const auto [place, is_new] = place_of.try_emplace(record->unit.uuid, units.size());
        if (is_new) units.emplace_back();
        units[place->second].push_back(record);
    }
    return units;
}

ComparedUnit compare_unit(const UnitRuns& runs, CompareRows rows, const MeasureOptions& options) {
    ComparedUnit compared;
    compared.unit = runs.front()->unit;
    const auto drains = static_cast<int>(std::ranges::count_if(runs, [](const RunRecord* run) { return run->run.kind == RunKind::drain; }));
    if (drains == 0) return compared;
    std::vector<EnergyAnalysis> energies;
    energies.reserve(runs.size());
    for (const RunRecord* run : runs) energies.push_back(analyse_judged_energy(*run, options));
    // A no-load drain gets no row, but it counts in the fit between runs.
    const UnitFit& fit = compared.fit.emplace(fit_unit(runs, energies, options));
    std::vector<Candidate> candidates;
    for (std::size_t i = 0; i < runs.size(); ++i)
        if (runs[i]->run.kind == RunKind::drain) candidates.push_back({runs[i], &energies[i], fraction_through_curve(*runs[i], energies[i], fit)});
    if (rows == CompareRows::every_drain) {
        for (const Candidate& candidate : candidates) compared.rows.push_back(drain_row(candidate, drains, fit, options));
        add_claims(compared.rows, runs, fit);
        return compared;
    }
    const auto best = std::ranges::min_element(candidates, [](const Candidate& a, const Candidate& b) {
        const int rank_a = rank(a), rank_b = rank(b);
        return rank_a != rank_b ? rank_a < rank_b : a.energy->start_ms > b.energy->start_ms;
    });
    if (!fit.repeats.empty() && fit.repeats.front().count() > 1)
        compared.rows.push_back(repeats_row(fit.repeats.front(), candidates, drains, fit, options));
    else compared.rows.push_back(drain_row(*best, drains, fit, options));
    if (ComparisonRow& row = compared.rows.back(); row.mean && row.mean->count() == 1) put_alone(row);
    add_claims(compared.rows, runs, fit);
    return compared;
}

void keep_units(Comparison& comparison, const std::function<bool(const Unit&)>& wanted) {
    std::erase_if(comparison.rows, [&wanted](const ComparisonRow& row) { return !wanted(row.unit); });
    comparison.remarks.clear();
    add_remarks(comparison);
}

Comparison join_units(std::vector<const ComparedUnit*> units) {
    std::ranges::stable_sort(units, {}, [](const ComparedUnit* unit) -> const std::string& { return unit->unit.name; });
    Comparison comparison;
    std::size_t rows = 0;
    for (const ComparedUnit* unit : units) rows += unit->rows.size();
    comparison.rows.reserve(rows);
    comparison.fits.reserve(units.size());
    for (const ComparedUnit* unit : units) {
        if (!unit->fit) {
            comparison.left_out.push_back(say(phrase("comparison", "%1: no drain in the logbook"), unit->unit.name));
            continue;
        }
        for (const ComparisonRow& row : unit->rows) {
            comparison.rows.push_back(row);
            comparison.rows.back().fit = comparison.fits.size();
        }
        comparison.fits.push_back(*unit->fit);
    }
    add_remarks(comparison);
    return comparison;
}

void name_sources(Comparison& comparison, CompareRows rows, const std::map<RunId, std::string>& source_of) {
    comparison.several_sources = !source_of.empty();
    for (ComparisonRow& row : comparison.rows) {
        const auto found = source_of.find(row.run.uuid);
        if (rows == CompareRows::one_per_unit) row.source = sources_of(comparison.fits[row.fit], source_of);
        else if (found != source_of.end()) row.source = found->second;
    }
}

Comparison compare_as_tested(const std::vector<RunRecord>& records, CompareRows rows, const MeasureOptions& options) {
    return compare_as_tested(pointers_to(records), rows, options);
}

Comparison compare_as_tested(const std::vector<const RunRecord*>& records, CompareRows rows, const MeasureOptions& options) {
    const std::vector<UnitRuns> by_unit = runs_by_unit(records);
    const std::vector<std::optional<ComparedUnit>> units = compare_units(by_unit, rows, pooled_options(by_unit, options));
    std::vector<const ComparedUnit*> all;
    for (const std::optional<ComparedUnit>& unit : units) all.push_back(&*unit);
    return join_units(std::move(all));
}

} // namespace ullage
