// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. Throws SQLite::Exception.
#pragma once

#include "base/result.h"
#include "model/run_record.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// What the traces of runs come to at the moments of their readings. Remembers each until its traces, their length or the moments change.
class RunTraces {
public:
    /// Fills record.trace from the traces of its run that are not withdrawn: from ten minutes before its first reading to ten minutes after its
    /// last, of a run still running to the last sample. False where a block of samples cannot be read.
    [[nodiscard]] bool fill(SQLite::Database& database, std::int64_t run_id, RunRecord& record);

private:
    struct Known {
        std::vector<std::pair<std::string, std::int64_t>> traces; ///< uuid, and samples by which its growth is seen
        std::vector<UtcMs> moments;
        bool running = false;
        std::optional<RunTrace> trace;
    };
    std::map<std::string, Known> known_; ///< by uuid of the run
};

} // namespace ullage::store
