// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/trace.h"
#include "trace/trace_layout.h"

#include <array>
#include <cstdint>
#include <functional>
#include <iosfwd>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ullage {

/// Why a row was not taken, or (last three) what is odd about one that was.
enum class RowTrouble {
    fields,       ///< too few fields for the columns that are needed
    quote,        ///< a quote is never closed, or text follows a closing quote
    too_long,     ///< longer than 64 KiB
    time,         ///< the time cannot be read
    skipped_time, ///< a local time that does not exist: the clocks went forward
    value,        ///< a value cannot be read
    no_value,     ///< a time without any value
    repeated_header,
    duplicate,    ///< the same moment and the same values again
    same_moment,  ///< the same moment with other values; the first was taken
    out_of_order, ///< too far behind the rows before it to be put in its place
    swapped,      ///< taken: put in its place before the rows before it
    doubled_hour, ///< taken: a local time that occurs twice, settled by the order of rows
    gap,          ///< taken: a long time without rows before it
};
inline constexpr std::size_t row_troubles = 14;

/// "too few fields", "the header again", …
[[nodiscard]] Message say_trouble(RowTrouble trouble);
/// True for a trouble that leaves the row out.
[[nodiscard]] bool leaves_out(RowTrouble trouble);

struct SkippedRow {
    long line = 0;
    RowTrouble trouble = RowTrouble::fields;
    std::string text; ///< the beginning of the row as it stands
};

/// A time without samples that is longer than the limit.
struct TraceGap {
    UtcMs from_ms = 0, to_ms = 0;
};

/// What a reading of a whole log found. Rows that are blank or comments (#, //) are no rows.
struct TraceTally {
    long rows = 0, taken = 0;
    std::array<long, row_troubles> counts{}; ///< by RowTrouble
    std::vector<SkippedRow> skipped_rows;    ///< the first 100 of each trouble, in order of line
    std::vector<TraceGap> gaps;              ///< the first 100; all are counted
    std::optional<double> interval_s;        ///< usual time between rows: the median of the first 64
    double gap_limit_s = 0;                  ///< longer times are gaps
    UtcMs first_ms = 0, last_ms = 0;         ///< meaningless without samples
    std::int64_t bytes = 0;
    std::string fingerprint;

    [[nodiscard]] long count(RowTrouble trouble) const { return counts[static_cast<std::size_t>(trouble)]; }
    [[nodiscard]] long left_out() const;
};

struct TraceReadOptions {
    std::string zone = "UTC";           ///< of times without an offset
    std::optional<UtcMs> start_ms;      ///< start of the log, for the forms of time that need it
    UtcMs offset_ms = 0;                ///< added to every time: how far the meter's clock is behind
    std::optional<double> offset_u_s{}; ///< of an estimated offset (clock_offset.h), kept with the trace
    std::optional<double> gap_limit_s;  ///< absent: ten usual intervals, at least 60 s
    bool whole_lines = false;           ///< of a file: a last line without its line end (LF) is left for later, as it is still being written
    std::function<bool(std::int64_t bytes)> progress; ///< called now and then with the bytes read; false cancels
    std::string file_name{};                          ///< kept with the trace as the tester knows it; empty: that of the file
};

/// Takes samples in order of time.
using SampleSink = std::function<Result<void>(std::span<const TraceSample>)>;

/// Reads a whole log in a stream: memory does not grow with the file. Rows up to 256 places out of order are put in their place. Voltage
/// and current without power give power as their product. Errors: a layout with open parts (bad_input), a missing start, an unknown zone, the
/// sink's own, and `refused` when cancelled.
[[nodiscard]] Result<TraceTally> read_trace(std::istream& in, const TraceLayout& layout, const TraceReadOptions& options, const SampleSink& sink);

} // namespace ullage
