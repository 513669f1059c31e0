// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/agreement.h"
#include "store/logbook.h"
#include "store/logbook_impl.h"
#include "store/meter_queries.h"
#include "store/reading_queries.h"
#include "store/unit_queries.h"
#include "store/value_checks.h"

#include <algorithm>

namespace ullage {

namespace {

/// Of the listed records that `is_same` takes for `incoming`: the first that agrees; else the first one's
/// difference; nothing when there is none.
template <class Thing, class IsSame>
Result<std::optional<Thing>> matching(const std::vector<Thing>& listed, const Thing& incoming,
                                      IsSame is_same) {
    std::optional<Error> difference;
    for (const Thing& known : listed) {
        if (!is_same(known)) continue;
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
    if (auto sound = store::check(record.run); !sound) return sound;
    for (const Reading& reading : record.readings)
        if (auto sound = store::check(reading.values); !sound) return sound;
    return {};
}

void fill(std::string& uuid) {
    if (uuid.empty()) uuid = new_uuid();
}

} // namespace

Result<RunRecord> Logbook::import(const RunRecord& record) {
    if (auto sound = check_all(record); !sound) return sound.error();
    return impl_->change([&]() -> Result<RunRecord> {
        SQLite::Database& database = impl_->database();
        const UtcMs now_ms = impl_->clock->now_ms();
        RunRecord added = record;

        auto unit = matching(store::listed_units(database), record.unit, [&](const Unit& known) {
            return known.name == record.unit.name && known.maker == record.unit.maker;
        });
        if (!unit) return unit.error();
        if (unit.value()) {
            added.unit = *unit.value();
        } else {
            fill(added.unit.uuid);
            if (store::unit_id(database, added.unit.uuid)) return impl_->known_already("unit");
            store::insert_unit(database, added.unit, now_ms);
        }

        added.run.meter_uuid.reset();
        std::optional<std::int64_t> meter_row;
        if (record.meter) {
            auto meter = matching(store::listed_meters(database), *record.meter,
                                  [&](const Meter& known) { return known.name == record.meter->name; });
            if (!meter) return meter.error();
            if (meter.value()) {
                added.meter = *meter.value();
            } else {
                fill(added.meter->uuid);
                if (store::meter_id(database, added.meter->uuid)) return impl_->known_already("meter");
                store::insert_meter(database, *added.meter, now_ms);
            }
            added.run.meter_uuid = added.meter->uuid;
            meter_row = store::meter_id(database, added.meter->uuid);
        }

        fill(added.run.uuid);
        if (store::run_id(database, added.run.uuid)) return impl_->known_already("run");
        added.run.unit_uuid = added.unit.uuid;
        if (added.run.created_ms == 0) added.run.created_ms = now_ms;
        const auto unit_row = store::unit_id(database, added.unit.uuid);
        const std::int64_t run_row = store::insert_run(database, added.run, *unit_row, meter_row);

        // The order of entry is kept; its numbers start anew, since a sheet leaves withdrawn readings out.
        std::stable_sort(added.readings.begin(), added.readings.end(),
                         [](const Reading& a, const Reading& b) { return a.sequence < b.sequence; });
        for (Reading& reading : added.readings) {
            if (!reading.uuid.empty() && store::find_reading(database, reading.uuid))
                return impl_->known_already("reading");
            fill(reading.uuid);
            reading.run_uuid = added.run.uuid;
            store::insert_reading(database, reading, run_row, now_ms);
        }
        sort_by_time(added.readings);
        for (const store::ListedRun& listed : store::listed_runs(database, unit_row))
            if (listed.id == run_row) added.number = listed.number;
        return added;
    }, Settling::within_seconds);
}

} // namespace ullage
