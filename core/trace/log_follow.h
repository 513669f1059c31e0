// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"
#include "trace/growing_file.h"
#include "trace/trace_feed.h"

#include <cstdint>
#include <iosfwd>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What one look at a followed log has brought.
struct FollowLook {
    LogChange change = LogChange::none;
    std::int64_t samples = 0;       ///< taken into the trace
    std::int64_t rows_left_out = 0; ///< new rows that could not be taken
    bool more = false;              ///< look again at once
};

/// Follows a log that another program is still writing: what it gains goes to the end of its trace, each look in one transaction.
///
/// A file that was cut short or replaced is read from its beginning as long as it has the same columns; of its rows those later than the trace are
/// taken, so that no time stands twice. Rows before those already taken are left out.
class LogFollow {
public:
    LogFollow(LogFollow&&) noexcept;
    LogFollow& operator=(LogFollow&&) noexcept;
    ~LogFollow();

    /// Reads what of the file was imported before, to know it again and to go on with its clock. With `maybe_anew` the file may also be one that
    /// was begun since. Errors: not_found, io, those of detect_layout(); refused: a file that does not begin as the trace's did (without
    /// `maybe_anew`), one whose lines end with CR alone, a trace whose rows read otherwise now; what `progress` says, as in read_trace().
    static Result<LogFollow> begin(const Logbook& logbook, const Trace& trace, const std::string& path, bool maybe_anew,
                                   const std::function<bool(std::int64_t bytes)>& progress = nullptr);

    /// Takes what the log has gained. Errors: io, and of the logbook: nothing is lost, look again. refused, bad_input: following has ended (the
    /// trace was withdrawn, a file begun anew reads otherwise or does not say when its times begin, a last row that had been cut off).
    Result<FollowLook> look(Logbook& logbook);

    [[nodiscard]] const Trace& trace() const { return trace_; } ///< as it stands in the logbook
    [[nodiscard]] const std::string& path() const { return path_; }

private:
    LogFollow(Trace trace, const std::string& path, TraceReadOptions options);

    struct Fresh {
        std::vector<TraceSample> samples;
        bool wanted = false; ///< else the samples are in the trace already
    };
    void feed_from_beginning(const TraceLayout& layout);
    Result<void> read_what_is_known(std::ifstream& file, const Logbook& logbook);
    Result<void> expect_anew();
    Result<bool> settle_beginning();
    Result<void> take(std::string&& lines);

    Trace trace_;
    std::string path_;
    LayoutAnswers answers_;
    TraceReadOptions options_;
    std::unique_ptr<GrowingFile> file_;
    std::unique_ptr<Fresh> fresh_;       ///< where the feed puts samples
    std::unique_ptr<TraceFeed> feed_;    ///< null between a new beginning and its first row
    std::string beginning_;              ///< lines of a new beginning that are no row yet
    std::optional<TraceSample> cut_off_; ///< the last row of the trace, where it was imported without its line end
    std::int64_t left_out_before_ = 0;   ///< rows that the feed had left out when the trace was saved last
    bool anew_ = false;                  ///< begun anew since the trace was saved last
    bool unsaved_ = false;
};

/// The trace of a run whose bytes stand at the beginning of this file, or are all of it; absent when there is none. Errors: io, not_found.
[[nodiscard]] Result<std::optional<Trace>> trace_continued_by(const Logbook& logbook, const RunId& run_uuid, const std::string& path);

} // namespace ullage
