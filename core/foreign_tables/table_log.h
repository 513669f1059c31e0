// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "foreign_tables/table_runs.h"
#include "model/trace.h"
#include "store/logbook.h"

#include <span>
#include <string>
#include <vector>

namespace ullage {

/// A run of a table as it goes into a logbook.
struct TableRun {
    RunRecord record;
    std::vector<TraceSample> log{}; ///< in order of time; empty where people noted it
};

/// Whether a device wrote the rows of a run: a thousand or more, half of them no more than two minutes after the one before. Nobody notes as many by
/// hand, and as readings they would bury those of a person. A run with a second register is none, as a log has one.
[[nodiscard]] bool written_by_device(const ForeignRun& run);

/// record_of_table(), its rows as the samples of a log where `as_log`. Readings then are the first and the last row and those with a mark, a remark,
/// or the time of the row before, which no log can hold.
[[nodiscard]] TableRun run_of_table(const ForeignRun& run, const TableFacts& facts, bool as_log);

/// Brings the runs of the table `name` into a logbook, with their logs: all of them or none. Errors: as Logbook::import_together() and add_trace().
[[nodiscard]] Result<std::vector<ImportedRun>> import_table_runs(Logbook& logbook, std::span<const TableRun> runs, const std::string& name);

} // namespace ullage
