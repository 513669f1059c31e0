// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/import_index.h"

#include "store/queries/meter_queries.h"
#include "store/queries/reading_queries.h"
#include "store/queries/rows.h"
#include "store/queries/unit_queries.h"

#include <SQLiteCpp/Database.h>

#include <algorithm>
#include <string>

namespace ullage::store {

namespace {

/// How many readings stand, and the time of the first.
std::pair<std::int64_t, UtcMs> standing_readings(const std::vector<Reading>& readings) {
    std::pair<std::int64_t, UtcMs> found{0, 0};
    for (const Reading& reading : readings) {
        if (reading.withdrawn) continue;
        if (found.first == 0 || reading.values.time_ms < found.second) found.second = reading.values.time_ms;
        ++found.first;
    }
    return found;
}

int number_at(const std::vector<std::tuple<UtcMs, UtcMs, std::int64_t>>& shown, const std::tuple<UtcMs, UtcMs, std::int64_t>& place) {
    return static_cast<int>(std::ranges::lower_bound(shown, place) - shown.begin()) + 1;
}

} // namespace

ImportIndex::ImportIndex(SQLite::Database& database) {
    for (const Unit& unit : listed_units(database)) add(unit);
    for (const Meter& meter : listed_meters(database)) add(meter);
}

const std::vector<Unit>& ImportIndex::units_of(const std::string& name, const std::string& maker) const {
    static const std::vector<Unit> none;
    const auto found = units_.find({name, maker});
    return found == units_.end() ? none : found->second;
}

const std::vector<Meter>& ImportIndex::meters_of(const std::string& name) const {
    static const std::vector<Meter> none;
    const auto found = meters_.find(name);
    return found == meters_.end() ? none : found->second;
}

void ImportIndex::add(const Unit& unit) { units_[{unit.name, unit.maker}].push_back(unit); }

void ImportIndex::add(const Meter& meter) { meters_[meter.name].push_back(meter); }

ImportIndex::RunsOfUnit& ImportIndex::runs_of(SQLite::Database& database, std::int64_t unit_id) {
    const auto [place, is_new] = runs_.try_emplace(unit_id);
    RunsOfUnit& runs = place->second;
    if (!is_new) return runs;
    // Run by run, since a join with the view of all readings would read every run of the logbook for each unit.
    const std::string standing = "FROM readings JOIN reading_versions AS versions ON versions.reading_id = readings.id "
                                 "WHERE readings.run_id = runs.id AND versions.withdrawn = 0 AND version = "
                                 "(SELECT max(version) FROM reading_versions WHERE reading_id = readings.id)";
    SQLite::Statement query(database, "SELECT runs.id, kind, created_ms, (SELECT count(*) " + standing + "), (SELECT min(time_ms) " + standing +
                                          ") FROM runs WHERE unit_id = ?1 AND withdrawn = 0");
    Binder(query).integer(unit_id);
    while (query.executeStep()) {
        Row row(query);
        const std::int64_t id = row.integer(), kind = row.integer();
        const UtcMs created_ms = row.integer();
        const std::int64_t readings = row.integer();
        const std::optional<UtcMs> first_ms = row.maybe_integer();
        const Place run{first_ms.value_or(created_ms), created_ms, id};
        runs.shown.push_back(run);
        if (first_ms) runs.alike.emplace(Likeness{kind, readings, *first_ms}, run);
    }
    std::ranges::sort(runs.shown);
    return runs;
}

std::optional<int> ImportIndex::number_of(SQLite::Database& database, const RunRecord& record) {
    const auto [count, first_ms] = standing_readings(record.readings);
    if (count == 0) return std::nullopt;
    for (const Unit& unit : units_of(record.unit.name, record.unit.maker)) {
        const auto row = unit_id(database, unit.uuid);
        if (!row) continue;
        const RunsOfUnit& runs = runs_of(database, *row);
        const auto [from, to] = runs.alike.equal_range({static_cast<std::int64_t>(record.run.kind), count, first_ms});
        for (auto candidate = from; candidate != to; ++candidate)
            if (has_readings(database, std::get<2>(candidate->second), record.readings)) return number_at(runs.shown, candidate->second);
    }
    return std::nullopt;
}

int ImportIndex::add(std::int64_t unit_id, std::int64_t run_id, const RunRecord& record, UtcMs created_ms) {
    RunsOfUnit& runs = runs_.at(unit_id);
    const auto [count, first_ms] = standing_readings(record.readings);
    const Place place{count > 0 ? first_ms : created_ms, created_ms, run_id};
    const auto at = runs.shown.insert(std::ranges::lower_bound(runs.shown, place), place);
    if (count > 0) runs.alike.emplace(Likeness{static_cast<std::int64_t>(record.run.kind), count, first_ms}, place);
    return static_cast<int>(at - runs.shown.begin()) + 1;
}

} // namespace ullage::store
