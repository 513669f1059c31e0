// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casebook/casebook.h"
#include "store/logbook.h"
#include "store/recorder_of.h"

#include <QString>

#include <atomic>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace ullage {

/// All that a document keeps of a logbook, without what is withdrawn.
struct LogbookContent {
    std::vector<Unit> units;
    std::vector<Meter> meters;
    std::vector<PvSheet> pv_sheets;
    std::vector<LoadList> load_lists;
    std::map<std::string, double> method; ///< what the logbook states of the method, by key (method_settings.h)
    Publisher publisher;
    SharedRuns runs; ///< those of a unit stand together, the units in the order of `units`
};

/// An open file with what it holds, on its way to a document.
struct OpenedLogbook {
    Logbook book;
    LogbookContent content;
    std::unique_ptr<Casebook> judged = {}; ///< what the runs of `content` say, as far as it is worked out already; null where nothing is
};

/// Opens a logbook for recording and reads all of it; for looking where another program records into it. Any thread. Errors: those of Logbook::open
/// and of its lists. Gives up, with one of them, soon after `*cancelled` is set.
[[nodiscard]] Result<OpenedLogbook> open_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled = nullptr);
/// The same for looking, whether or not somebody records.
[[nodiscard]] Result<OpenedLogbook> look_at_logbook(const QString& path, const Clock& clock, const std::atomic<bool>* cancelled = nullptr);

/// The content of an open file. Errors: those of its lists.
[[nodiscard]] Result<LogbookContent> read_content(const Logbook& book);

/// The runs of these units by unit uuid; a unit without runs has none there.
[[nodiscard]] Result<std::map<UnitId, SharedRuns>> read_runs_of(const Logbook& book, const std::vector<UnitId>& unit_uuids);

} // namespace ullage
