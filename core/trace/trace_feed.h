// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "trace/trace_reader.h"

#include <memory>
#include <string_view>

namespace ullage {

/// Reads a log that comes in pieces, as read_trace() reads one that is whole. The samples of a piece are handed over at once: a row that belongs
/// before those of an earlier piece is out of order. Gaps are judged once 64 intervals are known.
class TraceFeed {
public:
    TraceFeed(TraceLayout layout, TraceReadOptions options, SampleSink sink);
    ~TraceFeed();
    TraceFeed(const TraceFeed&) = delete;
    TraceFeed& operator=(const TraceFeed&) = delete;

    /// Whole lines with their line ends, bytes as they stand. Errors: as read_trace(); nothing can be taken after one.
    Result<void> take(std::string_view lines);
    /// Of all that was taken.
    [[nodiscard]] const TraceTally& tally() const;

private:
    struct Parts;
    std::unique_ptr<Parts> parts_;
};

} // namespace ullage
