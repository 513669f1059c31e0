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
    /// Fills trace, other_logs and gauge_log of the record from the traces of its run that are not withdrawn. Of each meter: from ten minutes before
    /// the first reading to ten minutes after the last, of a run still running to the last sample. False where a block of samples cannot be read.
    [[nodiscard]] bool fill(SQLite::Database& database, std::int64_t run_id, RunRecord& record);

private:
    struct Known {
        std::vector<std::pair<TraceId, std::int64_t>> traces; ///< and the samples by which its growth is seen
        std::vector<UtcMs> moments;
        bool running = false;
        std::optional<MeterId> run_meter_uuid;
        std::optional<RunTrace> trace{};
        std::vector<RunTrace> others{};
        std::optional<GaugeLog> gauge{};

        [[nodiscard]] bool rests_on_the_same(const Known& other) const {
            return traces == other.traces && moments == other.moments && running == other.running && run_meter_uuid == other.run_meter_uuid;
        }
    };
    std::map<RunId, Known> known_;
};

} // namespace ullage::store
