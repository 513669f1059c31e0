// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/inside/agreement.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/meter_queries.h"
#include "store/queries/reading_queries.h"
#include "store/queries/unit_queries.h"

#include <algorithm>
#include <numeric>
#include <utility>

namespace ullage {

namespace {

/// Of the listed records of one name: the first that agrees with `incoming`; else the first one's difference; nothing when there is none.
template <class Thing>
Result<std::optional<Thing>> matching(const std::vector<Thing>& listed, const Thing& incoming) {
    std::optional<Error> difference;
    for (const Thing& known : listed) {
        auto agreed = store::agrees(known, incoming);
        if (agreed) return std::optional(known);
        if (!difference) difference = agreed.error();
    }
    if (difference) return *difference;
    return std::optional<Thing>();
}

Result<void> check_all(const RunRecord& record) {
    if (auto sound = store::check(record.unit); !sound) return sound;
    if (record.meter)
        if (auto sound = store::check(*record.meter); !sound) return sound;
    if (record.second_meter) {
        if (auto sound = store::check(*record.second_meter); !sound) return sound;
        if (record.meter && record.meter->name == record.second_meter->name)
            return Error{Failure::bad_input, say(phrase("store", "both meters of the run have one name")), say(phrase("store", "second meter")),
                         say(phrase("store", "give one of them another name"))};
    }
    if (auto sound = store::check(record.run); !sound) return sound;
    for (const Reading& reading : record.readings)
        if (auto sound = store::check(reading.values); !sound) return sound;
    return {};
}

template <typename KindOfId>
void fill(KindOfId& uuid) {
    if (uuid.empty()) uuid = KindOfId(new_uuid());
}

/// The places of the readings in order of entry, empty where they stand in it. Its numbers start anew in a logbook, since a sheet leaves withdrawn
/// readings out.
std::vector<std::size_t> order_of_entry(const std::vector<Reading>& readings) {
    if (std::ranges::is_sorted(readings, {}, &Reading::sequence)) return {};
    std::vector<std::size_t> order(readings.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return readings[i].sequence; });
    return order;
}

/// Adds the readings of a run that has none; `filled`, where it is given, gets what they were given.
Result<void> add_readings(SQLite::Database& database, const RunRecord& record, std::int64_t run_row, UtcMs now_ms, const Error& known_already,
                          std::vector<Reading>* filled) {
    const auto unnamed =
        static_cast<std::size_t>(std::ranges::count_if(record.readings, [](const Reading& reading) { return reading.uuid.empty(); }));
    const std::vector<Uuid> fresh = sorted_uuids(unnamed);
    std::size_t used = 0;
    store::ReadingsInserter inserter(database, run_row, now_ms);
    const std::vector<std::size_t> order = order_of_entry(record.readings);
    for (std::size_t entry = 0; entry < record.readings.size(); ++entry) {
        const std::size_t i = order.empty() ? entry : order[entry];
        const Reading& reading = record.readings[i];
        if (!reading.uuid.empty() && store::find_reading(database, reading.uuid)) return known_already;
        const ReadingId uuid = reading.uuid.empty() ? ReadingId(uuid_text(fresh[used++])) : reading.uuid;
        const long sequence = inserter.add(uuid, reading.values, reading.withdrawn);
        if (!filled) continue;
        (*filled)[i].uuid = uuid;
        (*filled)[i].sequence = sequence;
        (*filled)[i].version = 1;
    }
    return {};
}

} // namespace

Result<bool> Logbook::Impl::take_meter(const Meter& incoming, Meter& added, const store::ImportIndex& index, UtcMs now_ms) {
    auto known = matching(index.meters_of(incoming.name), incoming);
    if (!known) return known.error();
    if (known.value()) {
        added = *known.value();
        return false;
    }
    fill(added.uuid);
    if (store::meter_id(database(), added.uuid)) return known_already(phrase("store", "the logbook has this meter already"));
    store::insert_meter(database(), added, now_ms);
    return true;
}

Result<void> Logbook::Impl::put_in(const RunRecord& record, RunRecord& added, store::ImportIndex& index) {
    const UtcMs now_ms = clock->now_ms();
    auto unit = matching(index.units_of(record.unit.name, record.unit.maker), record.unit);
    if (!unit) return unit.error();
    const bool new_unit = !unit.value();
    bool new_meter = false, new_second = false;
    if (unit.value()) {
        added.unit = *unit.value();
    } else {
        fill(added.unit.uuid);
        if (store::unit_id(database(), added.unit.uuid)) return known_already(phrase("store", "the logbook has this unit already"));
        store::insert_unit(database(), added.unit, now_ms);
    }

    store::RunOwners owners;
    added.run.meter_uuid.reset();
    added.run.second_meter_uuid.reset();
    if (record.meter) {
        auto known = take_meter(*record.meter, *added.meter, index, now_ms);
        if (!known) return known.error();
        new_meter = known.value();
        added.run.meter_uuid = added.meter->uuid;
        owners.meter_id = store::meter_id(database(), added.meter->uuid);
    }
    if (record.second_meter) {
        auto known = take_meter(*record.second_meter, *added.second_meter, index, now_ms);
        if (!known) return known.error();
        new_second = known.value();
        added.run.second_meter_uuid = added.second_meter->uuid;
        owners.second_meter_id = store::meter_id(database(), added.second_meter->uuid);
    }

    fill(added.run.uuid);
    if (store::run_id(database(), added.run.uuid)) return known_already(phrase("store", "the logbook has this run already"));
    added.run.unit_uuid = added.unit.uuid;
    if (added.run.created_ms == 0) added.run.created_ms = now_ms;
    owners.unit_id = *store::unit_id(database(), added.unit.uuid);
    index.know_runs_of(database(), owners.unit_id);
    const std::int64_t run_row = store::insert_run(database(), added.run, owners);
    auto done = add_readings(database(), record, run_row, now_ms, known_already(phrase("store", "the logbook has this reading already")),
                             added.readings.empty() ? nullptr : &added.readings);
    if (!done) return done;
    if (new_unit) index.add(added.unit);
    if (new_meter) index.add(*added.meter);
    if (new_second) index.add(*added.second_meter);
    added.number = index.add(owners.unit_id, run_row, record, added.run.created_ms);
    return {};
}

Result<void> Logbook::Impl::bring_in(std::span<const RunRecord> records, std::span<RunRecord> added) {
    for (const RunRecord& record : records)
        if (auto sound = check_all(record); !sound) return sound.error();
    std::optional<store::ImportIndex> index = std::exchange(import_index, std::nullopt);
    bool some_went_in = false;
    const auto done = change(
        [&]() -> Result<void> {
            if (!index) index.emplace(database());
            for (std::size_t i = 0; i < records.size(); ++i) {
                if (auto put = put_in(records[i], added[i], *index); !put) return put;
                some_went_in = true;
            }
            return {};
        },
        Settling::within_seconds);
    // What was undone is not in it; a disk that failed may leave anything.
    if (done || (done.error().failure == Failure::refused && !some_went_in)) import_index = std::move(index);
    return done;
}

Result<RunRecord> Logbook::import(const RunRecord& record) {
    RunRecord added = record;
    if (auto done = impl_->bring_in({&record, 1}, {&added, 1}); !done) return done.error();
    sort_by_time(added.readings);
    return added;
}

Result<ImportedRun> Logbook::import_run(const RunRecord& record) {
    auto imported = import_together({&record, 1});
    if (!imported) return imported.error();
    return std::move(imported.value().front());
}

Result<std::vector<ImportedRun>> Logbook::import_together(std::span<const RunRecord> records) {
    std::vector<RunRecord> added(records.size());
    for (std::size_t i = 0; i < records.size(); ++i) {
        added[i].unit = records[i].unit;
        added[i].meter = records[i].meter;
        added[i].second_meter = records[i].second_meter;
        added[i].run = records[i].run;
    }
    if (auto done = impl_->bring_in(records, added); !done) return done.error();
    std::vector<ImportedRun> imported;
    for (const RunRecord& one : added) imported.push_back({one.unit.uuid, one.run.uuid, one.number});
    return imported;
}

Result<std::optional<int>> Logbook::number_of(const RunRecord& record) const {
    return impl_->read([&]() -> Result<std::optional<int>> {
        if (!impl_->import_index) impl_->import_index.emplace(impl_->database());
        return impl_->import_index->number_of(impl_->database(), record);
    });
}

} // namespace ullage
