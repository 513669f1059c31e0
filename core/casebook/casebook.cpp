// SPDX-License-Identifier: GPL-3.0-or-later
#include "casebook/casebook.h"

#include "gauge/projection_doubt.h"
#include "measure/usable.h"
#include "unit/curve_projection.h"

#include <algorithm>
#include <utility>

namespace ullage {

/// A run and what it says. A run that changes is another object and gets another case.
struct Casebook::RunCase {
    std::shared_ptr<const RunRecord> record;
    std::shared_ptr<UnitCase> unit;
    std::shared_ptr<const EnergyAnalysis> energy; ///< of the run alone
    std::shared_ptr<const RunAnalysis> own;       ///< the same with its gauge judged
    std::shared_ptr<const RunAnalysis> projected; ///< with what its unit's other runs say; only for a projection
    std::shared_ptr<const RunForecast> forecast;
    std::shared_ptr<const TwoAccounts> accounts;
    std::shared_ptr<const RunForecast> at_last_reading{};
};

/// The runs of a unit and what they say together. A unit any of whose runs changes gets another case.
struct Casebook::UnitCase {
    SharedRuns runs;
    std::shared_ptr<const std::vector<DrainSummary>> repeated; ///< drains from full to cut-off, where there are several
    std::shared_ptr<const UnitFit> fit;                        ///< by the options that it holds
    std::shared_ptr<const UnitAnalysis> analysis;
};

namespace {

/// Only a projection asks what the unit's other runs say.
bool is_projection(const RunAnalysis& analysis) { return analysis.energy.usable_fraction.kind == Kind::projected; }

bool has_repeats(const SharedRuns& runs) {
    return std::ranges::count_if(runs, [](const auto& run) { return is_full_drain(*run); }) > 1;
}

} // namespace

Casebook::Casebook(HistorySource histories, MeasureOptions options) : histories_(std::move(histories)), options_(options) {}

void Casebook::set_runs(SharedRuns runs) {
    std::map<UnitId, SharedRuns> by_unit;
    for (const auto& run : runs) by_unit[run->unit.uuid].push_back(run);
    const std::lock_guard lock(mutex_);
    std::map<UnitId, std::shared_ptr<UnitCase>> units;
    std::map<RunId, std::shared_ptr<RunCase>> cases;
    for (auto& [uuid, of_unit] : by_unit) {
        const auto before = units_.find(uuid);
        const bool same = before != units_.end() && before->second->runs == of_unit;
        const std::shared_ptr<UnitCase> unit = same ? before->second : std::make_shared<UnitCase>(UnitCase{std::move(of_unit), {}, {}, {}});
        for (const auto& record : unit->runs) {
            const auto known = cases_.find(record->run.uuid);
            const bool same_run = known != cases_.end() && known->second->record == record;
            if (same && same_run) {
                cases.emplace(record->run.uuid, known->second);
                continue;
            }
            auto fresh = std::make_shared<RunCase>(RunCase{record, unit, {}, {}, {}, {}, {}});
            if (same_run) {
                fresh->energy = known->second->energy;
                fresh->own = known->second->own;
            }
            cases.emplace(record->run.uuid, std::move(fresh));
        }
        units.emplace(uuid, unit);
    }
    if (units != units_) pooled_.reset();
    runs_ = std::move(runs);
    units_ = std::move(units);
    cases_ = std::move(cases);
}

void Casebook::set_options(const MeasureOptions& options) {
    SharedRuns same;
    {
        const std::lock_guard lock(mutex_);
        if (options_ == options) return;
        options_ = options;
        same = std::move(runs_);
        units_.clear();
        cases_.clear();
        pooled_.reset();
    }
    set_runs(std::move(same));
}

void Casebook::take_over(Casebook& other) {
    const std::scoped_lock lock(mutex_, other.mutex_);
    options_ = other.options_;
    runs_ = std::exchange(other.runs_, {});
    units_ = std::exchange(other.units_, {});
    cases_ = std::exchange(other.cases_, {});
    pooled_ = std::exchange(other.pooled_, std::nullopt);
}

MeasureOptions Casebook::given_options() const {
    const std::lock_guard lock(mutex_);
    return options_;
}

SharedRuns Casebook::runs() const {
    const std::lock_guard lock(mutex_);
    return runs_;
}

SharedRuns Casebook::runs_of(const UnitId& unit_uuid) const {
    const auto unit = unit_case(unit_uuid);
    return unit ? unit->runs : SharedRuns();
}

std::shared_ptr<const RunRecord> Casebook::run(const RunId& run_uuid) const {
    const auto run = run_case(run_uuid);
    return run ? run->record : nullptr;
}

std::shared_ptr<Casebook::UnitCase> Casebook::unit_case(const UnitId& unit_uuid) const {
    const std::lock_guard lock(mutex_);
    const auto found = units_.find(unit_uuid);
    return found == units_.end() ? nullptr : found->second;
}

std::shared_ptr<Casebook::RunCase> Casebook::run_case(const RunId& run_uuid) const {
    const std::lock_guard lock(mutex_);
    const auto found = cases_.find(run_uuid);
    return found == cases_.end() ? nullptr : found->second;
}

namespace {

/// What is kept, else what `work_out` gives, which is then kept. Where another thread was first, what it has kept.
template <class Answer, class WorkOut>
std::shared_ptr<const Answer> kept_or(std::mutex& mutex, std::shared_ptr<const Answer>& kept, const WorkOut& work_out) {
    {
        const std::lock_guard lock(mutex);
        if (kept) return kept;
    }
    auto made = std::make_shared<const Answer>(work_out());
    const std::lock_guard lock(mutex);
    if (!kept) kept = std::move(made);
    return kept;
}

} // namespace

std::shared_ptr<const RunAnalysis> Casebook::own_analysis(RunCase& run) const {
    return kept_or(mutex_, run.own, [&] { return analyse_run(*run.record, given_options()); });
}

std::shared_ptr<const EnergyAnalysis> Casebook::own_energy(RunCase& run) const {
    {
        const std::lock_guard lock(mutex_);
        if (run.own) return {run.own, &run.own->energy};
    }
    return kept_or(mutex_, run.energy, [&] { return analyse_judged_energy(*run.record, given_options()); });
}

std::shared_ptr<const EnergyAnalysis> Casebook::energy(const RunId& run_uuid) const {
    const auto run = run_case(run_uuid);
    return run ? own_energy(*run) : nullptr;
}

std::shared_ptr<const RunAnalysis> Casebook::analysis(const RunId& run_uuid) const {
    const auto run = run_case(run_uuid);
    if (!run) return nullptr;
    auto own = own_analysis(*run);
    if (!is_projection(*own)) return own;
    return kept_or(mutex_, run->projected, [&] {
        RunAnalysis projected = *own;
        project_through_curve(*run->record, *fit_of(*run->unit), projected);
        return projected;
    });
}

std::vector<EnergyAnalysis> Casebook::energies_of(const UnitCase& unit) const {
    std::vector<EnergyAnalysis> energies;
    for (const auto& record : unit.runs) {
        const auto run = run_case(record->run.uuid);
        energies.push_back(run && run->record == record ? *own_energy(*run) : analyse_judged_energy(*record, given_options()));
    }
    return energies;
}

std::shared_ptr<const std::vector<DrainSummary>> Casebook::repeated_drains(UnitCase& unit) const {
    return kept_or(mutex_, unit.repeated, [&] {
        std::vector<DrainSummary> drains;
        if (!has_repeats(unit.runs)) return drains;
        const std::vector<EnergyAnalysis> energies = energies_of(unit);
        for (std::size_t i = 0; i < energies.size(); ++i) drains.push_back(summarise_drain(*unit.runs[i], energies[i], given_options()));
        return drains;
    });
}

MeasureOptions Casebook::options() const {
    std::vector<std::shared_ptr<UnitCase>> units;
    {
        const std::lock_guard lock(mutex_);
        if (pooled_) return *pooled_;
        for (const auto& [uuid, unit] : units_) units.push_back(unit);
    }
    std::vector<std::vector<DrainSummary>> drains;
    for (const auto& unit : units) drains.push_back(*repeated_drains(*unit));
    const MeasureOptions pooled = with_pooled_repeatability(given_options(), drains);
    const std::lock_guard lock(mutex_);
    if (std::ranges::equal(units, units_, {}, {}, [](const auto& each) { return each.second; })) pooled_ = pooled;
    return pooled;
}

std::shared_ptr<const UnitFit> Casebook::fit_of(UnitCase& unit) const {
    const MeasureOptions with = options();
    {
        const std::lock_guard lock(mutex_);
        if (unit.fit && unit.fit->options != with) {
            unit.fit.reset();
            unit.analysis.reset();
        }
    }
    return kept_or(mutex_, unit.fit, [&] { return fit_unit(addresses_of(unit.runs), energies_of(unit), with); });
}

std::shared_ptr<const UnitFit> Casebook::fit(const UnitId& unit_uuid) const {
    const auto unit = unit_case(unit_uuid);
    return unit ? fit_of(*unit) : nullptr;
}

std::shared_ptr<const UnitAnalysis> Casebook::unit_analysis(const UnitId& unit_uuid) const {
    const auto unit = unit_case(unit_uuid);
    if (!unit) return nullptr;
    const auto fit = fit_of(*unit);
    return kept_or(mutex_, unit->analysis, [&] { return analyse_unit(unit->runs.front()->unit, *fit); });
}

std::shared_ptr<const RunForecast> Casebook::forecast(const RunId& run_uuid, UtcMs now_ms) const {
    constexpr UtcMs minute_ms = 60'000;
    const auto run = run_case(run_uuid);
    if (!run) return nullptr;
    {
        const std::lock_guard lock(mutex_);
        if (run->forecast && run->forecast->as_of_ms / minute_ms == now_ms / minute_ms) return run->forecast;
    }
    const auto own = own_analysis(*run);
    auto made = std::make_shared<const RunForecast>(forecast_run(*run->record, own->energy, *fit_of(*run->unit), now_ms, given_options()));
    const std::lock_guard lock(mutex_);
    return run->forecast = std::move(made);
}

std::shared_ptr<const RunForecast> Casebook::forecast_at_last_reading(const RunId& run_uuid) const {
    const auto run = run_case(run_uuid);
    if (!run) return nullptr;
    return kept_or(mutex_, run->at_last_reading,
                   [&] { return ullage::forecast_at_last_reading(*run->record, own_analysis(*run)->energy, *fit_of(*run->unit), given_options()); });
}

std::shared_ptr<const TwoAccounts> Casebook::accounts(const RunId& run_uuid) const {
    const auto run = run_case(run_uuid);
    if (!run) return nullptr;
    return kept_or(mutex_, run->accounts,
                   [&] { return two_accounts(*run->record, own_analysis(*run)->energy, *fit_of(*run->unit), given_options()); });
}

std::optional<UnitClaims> Casebook::claims(const UnitId& unit_uuid, const std::optional<EnergyPrice>& price) const {
    const auto unit = unit_case(unit_uuid);
    if (!unit) return std::nullopt;
    return check_claims(unit->runs.front()->unit, addresses_of(unit->runs), *fit_of(*unit), price);
}

Result<std::optional<std::vector<ReadingHistory>>> Casebook::histories(const RunId& run_uuid) const {
    std::optional<std::vector<ReadingHistory>> found;
    const auto record = run(run_uuid);
    if (!record || !histories_) return found;
    found.emplace();
    for (const Reading& reading : record->readings) {
        if (reading.version < 2) continue;
        auto versions = histories_(reading.uuid);
        if (!versions) return versions.error();
        found->push_back({reading.uuid, std::move(versions).value()});
    }
    return found;
}

std::size_t Casebook::readings_to_analyse(const std::vector<UnitId>& unit_uuids, bool with_runs) const {
    std::size_t readings = 0;
    const std::lock_guard lock(mutex_);
    // How drains repeat is asked of all units.
    for (const auto& [uuid, unit] : units_)
        if (!pooled_ && !unit->repeated && !unit->fit && has_repeats(unit->runs) && std::ranges::find(unit_uuids, uuid) == unit_uuids.end())
            for (const auto& record : unit->runs) readings += record->readings.size();
    for (const UnitId& uuid : unit_uuids) {
        const auto unit = units_.find(uuid);
        if (unit == units_.end()) continue;
        for (const auto& record : unit->second->runs)
            if (!unit->second->fit || (with_runs && !cases_.at(record->run.uuid)->own)) readings += record->readings.size();
    }
    return readings;
}

} // namespace ullage
