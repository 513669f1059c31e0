// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Transaction.h>

#include <string>

namespace ullage::store {

namespace {

constexpr Migration steps[] = {
    {1, "units, meters, runs and their readings as versions", migration_0001},
    {2, "half-typed entries of runs", migration_0002},
    {3, "photos of readings as versions", migration_0003},
    {4, "paid prices and tags of units, load lists", migration_0004},
    {5, "traces of logging meters in blocks of samples", migration_0005},
    {6, "PV sheets, start voltage, charge time, source of a charge", migration_0006},
    {7, "how well the clock of a trace is known", migration_0007},
    {8, "traces that grow while their log is written", migration_0008},
    {9, "how late the end of a run was noticed, what of a meter's error is each load's own", migration_0009},
    {10, "meters as versions with points of correction, second meters, models of units, options of the method", migration_0010},
    {11, "tolerance of PV modules, short-circuit current of PV inputs, data of specimens, publisher, chosen columns", migration_0011},
    {12, "traces that hold the unit's gauge and its own output power", migration_0012},
    {13, "how meters are read live", migration_0013},
};

} // namespace

std::span<const Migration> migrations() { return steps; }

int newest_version() { return migrations().back().version; }

void migrate(SQLite::Database& database, int version) {
    const int present = database.execAndGet("PRAGMA user_version").getInt();
    for (const Migration& step : migrations()) {
        if (step.version <= present || step.version > version) continue;
        SQLite::Transaction transaction(database, SQLite::TransactionBehavior::IMMEDIATE);
        step.apply(database);
        // A pragma takes no bound value; this one is an integer of ours.
        database.exec("PRAGMA user_version = " + std::to_string(step.version));
        transaction.commit();
    }
}

} // namespace ullage::store
