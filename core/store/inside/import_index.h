// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "base/instant.h"
#include "model/meter.h"
#include "model/run_record.h"
#include "model/unit.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// What an import asks of a logbook, kept from one to the next, so that bringing in many runs reads what is there but once. It holds as long as
/// nothing else changes the logbook.
class ImportIndex {
public:
    explicit ImportIndex(SQLite::Database& database);

    /// Those not withdrawn of this name (and maker), in the order of listed_units() and listed_meters().
    [[nodiscard]] const std::vector<Unit>& units_of(const std::string& name, const std::string& maker) const;
    [[nodiscard]] const std::vector<Meter>& meters_of(const std::string& name) const;

    /// The run of a listed unit of this name and maker that has the same kind and the same readings, leaving out withdrawn ones: its number.
    /// Absent for a record without readings.
    [[nodiscard]] std::optional<int> number_of(SQLite::Database& database, const RunRecord& record);

    void add(const Unit& unit);
    void add(const Meter& meter);
    /// Has the runs of a unit ready. To be called before one is added, whose readings would else be read again.
    void know_runs_of(SQLite::Database& database, std::int64_t unit_id) { (void)runs_of(database, unit_id); }
    /// A run with only the readings of `record`, none of them withdrawn, that has just been added. Its number.
    int add(std::int64_t unit_id, std::int64_t run_id, const RunRecord& record, UtcMs created_ms);

private:
    using Place = std::tuple<UtcMs, UtcMs, std::int64_t>;           ///< first reading (else creation), creation, row id: the order of a unit's runs
    using Likeness = std::tuple<std::int64_t, std::int64_t, UtcMs>; ///< kind, number of readings, time of the first
    struct RunsOfUnit {
        std::vector<Place> shown; ///< in order
        std::multimap<Likeness, Place> alike;
    };
    RunsOfUnit& runs_of(SQLite::Database& database, std::int64_t unit_id);

    std::map<std::pair<std::string, std::string>, std::vector<Unit>> units_;
    std::map<std::string, std::vector<Meter>> meters_;
    std::map<std::int64_t, RunsOfUnit> runs_; ///< by unit, read when first asked for
};

} // namespace ullage::store
