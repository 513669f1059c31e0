// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/meter_queries.h"
#include "store/queries/reading_queries.h"
#include "store/queries/trace_queries.h"
#include "store/queries/unit_queries.h"

#include <algorithm>
#include <set>

namespace ullage {

namespace {

/// The rows of the unit and the meters that a run names, else the error given for the one that is missing.
Result<store::RunOwners> owners_of(const Run& run, SQLite::Database& database, const Error& no_unit, const Error& no_meter) {
    const auto unit = store::unit_id(database, run.unit_uuid);
    if (!unit) return no_unit;
    store::RunOwners owners{*unit};
    if (run.meter_uuid) {
        owners.meter_id = store::meter_id(database, *run.meter_uuid);
        if (!owners.meter_id) return no_meter;
    }
    if (run.second_meter_uuid) {
        owners.second_meter_id = store::meter_id(database, *run.second_meter_uuid);
        if (!owners.second_meter_id) return no_meter;
    }
    return owners;
}

/// The run with what belongs to it; the maps hold its unit and every meter.
RunRecord record_of(const store::ListedRun& listed, const std::map<std::int64_t, Unit>& units, const std::map<std::int64_t, Meter>& meters,
                    std::vector<Reading> readings) {
    RunRecord record;
    record.unit = units.at(listed.unit_id);
    if (listed.meter_id) record.meter = meters.at(*listed.meter_id);
    if (listed.second_meter_id) record.second_meter = meters.at(*listed.second_meter_id);
    record.run = listed.run;
    record.readings = std::move(readings);
    record.number = listed.number;
    return record;
}

} // namespace

Result<Run> Logbook::add(Run run) {
    if (auto sound = store::check(run); !sound) return sound.error();
    return impl_->change([&]() -> Result<Run> {
        const auto owners = owners_of(run, impl_->database(), impl_->not_found(phrase("store", "the logbook has no such unit")),
                                      impl_->not_found(phrase("store", "the logbook has no such meter")));
        if (!owners) return owners.error();
        if (run.uuid.empty()) run.uuid = RunId(new_uuid());
        if (run.created_ms == 0) run.created_ms = impl_->clock->now_ms();
        if (store::run_id(impl_->database(), run.uuid)) return impl_->known_already(phrase("store", "the logbook has this run already"));
        store::insert_run(impl_->database(), run, owners.value());
        return run;
    });
}

Result<void> Logbook::update(const Run& run) {
    if (auto sound = store::check(run); !sound) return sound.error();
    return impl_->change([&]() -> Result<void> {
        const auto id = store::run_id(impl_->database(), run.uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such run"));
        const auto owners = owners_of(run, impl_->database(), impl_->not_found(phrase("store", "the logbook has no such unit")),
                                      impl_->not_found(phrase("store", "the logbook has no such meter")));
        if (!owners) return owners.error();
        store::update_run(impl_->database(), *id, run, owners.value());
        return {};
    });
}

Result<void> Logbook::set_run_withdrawn(const RunId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::run_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such run"));
        store::withdraw_run(impl_->database(), *id, withdrawn);
        return {};
    });
}

Result<std::vector<Run>> Logbook::runs() const {
    return impl_->read([&]() -> Result<std::vector<Run>> {
        std::vector<Run> runs;
        for (store::ListedRun& listed : store::listed_runs(impl_->database(), std::nullopt))
            if (listed.shown) runs.push_back(std::move(listed.run));
        return runs;
    });
}

Result<RunRecord> Logbook::run_record(const RunId& run_uuid) const {
    return impl_->read([&]() -> Result<RunRecord> {
        SQLite::Database& database = impl_->database();
        const auto unit = store::unit_of_run(database, run_uuid);
        if (!unit) return impl_->not_found(phrase("store", "the logbook has no such run"));
        const auto listed = store::listed_runs(database, unit);
        const auto found = std::find_if(listed.begin(), listed.end(), [&](const auto& each) { return each.run.uuid == run_uuid; });
        if (found == listed.end()) return impl_->not_found(phrase("store", "the logbook has no such run"));
        RunRecord record =
            record_of(*found, store::units_of(database, found->unit_id), store::all_meters(database), store::run_readings(database, found->id));
        if (!impl_->run_traces.fill(database, found->id, record)) return impl_->damaged_block();
        return record;
    });
}

Result<RunRecord> Logbook::with_reading(RunRecord known, const ReadingId& reading_uuid) const {
    return impl_->read([&]() -> Result<RunRecord> {
        auto stored = store::find_reading(impl_->database(), reading_uuid);
        if (!stored || stored->run_uuid != known.run.uuid) return impl_->not_found(phrase("store", "the logbook has no such reading"));
        put_reading(known.readings, std::move(stored->reading));
        const auto run = store::run_id(impl_->database(), known.run.uuid);
        if (!run || !impl_->run_traces.fill(impl_->database(), *run, known)) return impl_->damaged_block();
        return std::move(known);
    });
}

Result<std::vector<RunRecord>> Logbook::run_records(const UnitId& unit_uuid) const {
    return impl_->read([&]() -> Result<std::vector<RunRecord>> {
        SQLite::Database& database = impl_->database();
        std::optional<std::int64_t> unit;
        if (!unit_uuid.empty()) {
            unit = store::unit_id(database, unit_uuid);
            if (!unit) return impl_->not_found(phrase("store", "the logbook has no such unit"));
        }
        // Many units may be read one after the other: each reads its own rows.
        const auto units = store::units_of(database, unit);
        const auto meters = store::all_meters(database);
        auto readings = store::readings_by_run(database, unit);
        const std::set<RunId> traced = store::traced_runs(database, unit);
        std::vector<RunRecord> records;
        for (const store::ListedRun& listed : store::listed_runs(database, unit)) {
            if (!listed.shown) continue;
            records.push_back(record_of(listed, units, meters, std::move(readings[listed.id])));
            if (traced.contains(listed.run.uuid) && !impl_->run_traces.fill(database, listed.id, records.back())) return impl_->damaged_block();
        }
        return records;
    });
}

Result<void> Logbook::keep_draft(const RunId& run_uuid, const std::string& draft) {
    if (auto sound = store::check_draft(draft); !sound) return sound;
    return impl_->change(
        [&]() -> Result<void> {
            const auto id = store::run_id(impl_->database(), run_uuid);
            if (!id) return impl_->not_found(phrase("store", "the logbook has no such run"));
            store::write_draft(impl_->database(), *id, draft, impl_->clock->now_ms());
            return {};
        },
        Settling::within_seconds);
}

Result<std::string> Logbook::draft(const RunId& run_uuid) const {
    return impl_->read([&]() -> Result<std::string> {
        const auto id = store::run_id(impl_->database(), run_uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such run"));
        return store::read_draft(impl_->database(), *id);
    });
}

} // namespace ullage
