// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "live/live_field.h"
#include "model/trace.h"
#include "trace/trace_layout.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// Cuts a stream of bytes into lines (LF, CR or CRLF). Memory: a line of at most `longest` bytes; of a longer one nothing is given, up to its end.
class LineCutter {
public:
    static constexpr std::size_t longest = 4096;

    /// Calls `line` for each line that is whole; empty ones are passed over.
    void take(std::string_view bytes, const std::function<void(std::string_view)>& line);
    [[nodiscard]] long too_long() const { return too_long_; } ///< lines that were left out

private:
    std::string begun_;
    bool skipping_ = false;
    long too_long_ = 0;
};

/// Makes samples of lines of text that come from a meter. Where the fields name columns, these are read; else the detector of logs
/// (trace/trace_layout.h) finds out what the columns hold, from the first lines on: each line is given the moment of its arrival in front, so that
/// it reads as a row of a log.
class LiveLines {
public:
    explicit LiveLines(std::vector<LiveField> fields);

    /// What a line says; empty where it says nothing that is wanted, or the columns are not known yet. Without fields five lines are needed at first.
    [[nodiscard]] TraceSample read(std::string_view line);
    /// How the lines are read, in words; empty as long as that is not known.
    [[nodiscard]] const Message& words() const { return words_; }

private:
    void detect();

    std::vector<LiveField> fields_;
    std::vector<std::string> first_lines_;
    std::optional<TraceLayout> layout_;
    Message words_;
    long unread_ = 0;
};

} // namespace ullage
