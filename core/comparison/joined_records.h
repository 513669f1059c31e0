// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/run_record.h"

#include <deque>
#include <map>
#include <string>
#include <vector>

namespace ullage {

/// The runs of one logbook, or of run sheets, under the name that people know them by.
struct RecordSource {
    std::string name;
    std::vector<RunRecord> records;
};

/// The same by address: the runs must outlive it and stay as they are.
struct RunSource {
    std::string name;
    std::vector<const RunRecord*> runs;
};

/// The runs of several sources side by side. Points into the sources, which must outlive it and stay as they are.
struct JoinedRecords {
    JoinedRecords() = default;
    JoinedRecords(JoinedRecords&&) = default;
    JoinedRecords& operator=(JoinedRecords&&) = default;
    JoinedRecords(const JoinedRecords&) = delete; // its pointers would lead into the other's copies
    JoinedRecords& operator=(const JoinedRecords&) = delete;

    std::vector<const RunRecord*> runs;
    std::map<RunId, std::string> source_of; ///< name of the source of each; empty where there is but one source
    std::deque<RunRecord> altered;          ///< copies of runs whose unit or meter is known otherwise in an earlier source
    std::vector<Message> notices;           ///< sentences for people: what was counted once, which claims hold
};

/// Puts the runs of several sources side by side; of one source all is as it stands.
///
/// - A unit is the same where its uuid is: its runs then stand together, whatever source they come from. Two units of one name with different
///   uuids stay two specimens. A meter likewise: its gain error is common to what it measured, and cancels in differences, only where
///   the uuid says that it was that very meter; one name is no evidence.
/// - Claims of a unit or meter are those of the first source that has it.
/// - A run that several sources hold (one uuid, as in a copy of a logbook) counts once: the one with more readings and amendments, since
///   readings are only ever added; else the first. So does a run that is the same in all but its uuid (unit and maker, kind, readings),
///   as a run sheet and the logbook that it was imported into have it: the first.
[[nodiscard]] JoinedRecords join_runs(const std::vector<RunSource>& sources);
[[nodiscard]] JoinedRecords join_records(const std::vector<const RecordSource*>& sources);

} // namespace ullage
