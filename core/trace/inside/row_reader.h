// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room trace.
#pragma once

#include "trace/inside/row_order.h"
#include "trace/log_lines.h"
#include "trace/log_time.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Makes samples of the rows of a log. What the constructor is given must outlive it.
class RowReader {
public:
    RowReader(std::istream& in, const TraceLayout& layout, const TraceReadOptions& options, const SampleSink& sink);

    /// Reads to the present end of the stream. Errors: as read_trace().
    Result<void> read_on();
    /// Hands over the samples that are held back for rows out of order.
    Result<void> hand_over_all() { return order_.hand_over_all(); }
    /// hand_over_all(), and what can only be said of a whole log. Call once, at the end.
    Result<void> finish() { return order_.finish(); }
    [[nodiscard]] const TraceTally& tally();

private:
    struct Value {
        std::size_t column;
        LogUnit unit;
        std::optional<double> TraceSample::*place;
    };

    [[nodiscard]] LogClock::Settings clock_settings() const;
    Result<void> check();
    bool read_value(const Value& value, std::string_view cell, TraceSample& sample) const;
    Result<std::optional<RowTrouble>> take(std::string_view line);
    void note(RowTrouble trouble, std::string_view line);

    const TraceLayout& layout_;
    const TraceReadOptions& options_;
    TraceTally tally_;
    LogLines lines_;
    LogClock clock_;
    RowOrder order_;
    std::size_t time_ = 0, date_ = 0, needed_ = 0;
    std::vector<Value> values_; ///< filled by check()
    std::vector<std::string_view> fields_;
    std::vector<std::string> scratch_;
};

} // namespace ullage
