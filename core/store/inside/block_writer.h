// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "model/trace.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>

#include <cstdint>
#include <span>
#include <vector>

namespace ullage::store {

/// Collects the samples of a trace into blocks and writes each when it is full. Throws SQLite::Exception.
class BlockWriter {
public:
    /// For a trace without samples.
    BlockWriter(SQLite::Database& database, std::int64_t trace_id);
    /// For one that has some, to be added to: its last block is filled first. False where that block cannot be read.
    [[nodiscard]] bool go_on(const Trace& trace);

    /// Errors (bad_input): not later than the sample before; what check(sample) refuses.
    Result<void> take(std::span<const TraceSample> samples);
    /// Writes what is left and fills in what the trace now has.
    void finish(Trace& trace);

private:
    void write();

    SQLite::Database& database_;
    SQLite::Statement insert_;
    std::int64_t trace_id_;
    std::vector<TraceSample> block_;
    std::int64_t filled_id_ = 0; ///< the block that is being filled, where it stands in the logbook already
    std::size_t stored_ = 0;     ///< its samples there
    std::int64_t count_ = 0;
    UtcMs first_ms_ = 0, last_ms_ = 0;
};

} // namespace ullage::store
