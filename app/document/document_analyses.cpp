// SPDX-License-Identifier: GPL-3.0-or-later
// What the runs say, computed once after each change, and beside the window where it takes long.
#include "document/document.h"
#include "document/document_state.h"
#include "unit/curve_projection.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

/// What a thread of its own computes of one unit.
struct UnitWork {
    std::string uuid;
    SharedRuns runs;
    UnitFit fit;
    std::vector<std::pair<std::shared_ptr<const RunRecord>, RunAnalysis>> analyses;
};

UnitFit fit_of(const std::vector<const RunRecord*>& records) {
    const MeasureOptions options;
    std::vector<EnergyAnalysis> energies;
    for (const RunRecord* record : records) energies.push_back(analyse_energy(*record, options));
    return fit_unit(records, energies, options);
}

std::vector<const RunRecord*> addresses_in(const SharedRuns& runs) {
    std::vector<const RunRecord*> records;
    for (const auto& run : runs) records.push_back(run.get());
    return records;
}

/// Only a projection asks what the unit's other runs say.
bool is_projection(const RunAnalysis& analysis) { return analysis.energy.usable_fraction.kind == Kind::projected; }

} // namespace

const RunAnalysis& Document::analysis(const std::string& run_uuid) const {
    if (const auto kept = state_->analyses.find(run_uuid); kept != state_->analyses.end()) return kept->second;
    const RunRecord& record = *run(run_uuid);
    RunAnalysis analysis = analyse_run(record);
    if (is_projection(analysis)) project_through_curve(record, unitFit(record.unit.uuid), analysis);
    return state_->analyses.emplace(run_uuid, std::move(analysis)).first->second;
}

const UnitFit& Document::unitFit(const std::string& unit_uuid) const {
    if (const auto kept = state_->unit_fits.find(unit_uuid); kept != state_->unit_fits.end()) return kept->second;
    return state_->unit_fits.emplace(unit_uuid, fit_of(runs(unit_uuid))).first->second;
}

const RunForecast& Document::forecast(const std::string& run_uuid, UtcMs now_ms) const {
    const RunRecord& record = *run(run_uuid);
    const auto kept = state_->forecasts.find(run_uuid);
    constexpr UtcMs minute_ms = 60'000;
    if (kept != state_->forecasts.end() && kept->second.as_of_ms / minute_ms == now_ms / minute_ms) return kept->second;
    RunForecast made = forecast_run(record, analysis(run_uuid).energy, unitFit(record.unit.uuid), now_ms);
    return state_->forecasts.insert_or_assign(run_uuid, std::move(made)).first->second;
}

std::size_t Document::readingsToAnalyse(const std::vector<std::string>& unit_uuids, bool with_runs) const {
    std::size_t readings = 0;
    for (const std::string& uuid : unit_uuids) {
        const bool fitted = state_->unit_fits.contains(uuid);
        for (const RunRecord* record : runs(uuid))
            if (!fitted || (with_runs && !state_->analyses.contains(record->run.uuid))) readings += record->readings.size();
    }
    return readings;
}

void Document::analyseBeside(const std::vector<std::string>& unit_uuids, bool with_runs, const DoBeside& beside,
                             const std::function<bool(std::size_t)>& goes_on) {
    std::vector<UnitWork> work;
    for (const std::string& uuid : unit_uuids) {
        if (readingsToAnalyse({uuid}, with_runs) == 0) continue;
        UnitWork& unit = work.emplace_back();
        unit.uuid = uuid;
        const auto& [first, count] = state_->records_of.at(uuid);
        const auto begin = state_->records.begin() + static_cast<std::ptrdiff_t>(first);
        unit.runs.assign(begin, begin + static_cast<std::ptrdiff_t>(count));
    }
    std::size_t done = 0;
    beside([&] {
        for (; done < work.size() && goes_on(done); ++done) {
            UnitWork& unit = work[done];
            unit.fit = fit_of(addresses_in(unit.runs));
            if (!with_runs) continue;
            for (const auto& run : unit.runs) {
                RunAnalysis analysis = analyse_run(*run);
                if (is_projection(analysis)) project_through_curve(*run, unit.fit, analysis);
                unit.analyses.emplace_back(run, std::move(analysis));
            }
        }
    });
    work.resize(done);
    for (UnitWork& unit : work) {
        // The logbook may have changed meanwhile: what does not rest on the very runs that stand there now says nothing.
        const auto known = state_->records_of.find(unit.uuid);
        if (known == state_->records_of.end() || known->second.second != unit.runs.size()) continue;
        if (!std::equal(unit.runs.begin(), unit.runs.end(), state_->records.begin() + static_cast<std::ptrdiff_t>(known->second.first))) continue;
        state_->unit_fits.insert_or_assign(unit.uuid, std::move(unit.fit));
        for (auto& [run, analysis] : unit.analyses) state_->analyses.insert_or_assign(run->run.uuid, std::move(analysis));
    }
}

} // namespace ullage
