// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"
#include "trace/trace_reader.h"

#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// What a person is shown before an import: what was found in the beginning of the log and how its first rows read.
struct TracePreview {
    TraceDetection detection;
    std::vector<std::vector<std::string>> rows; ///< the first rows of data, cell by cell as they stand
    std::vector<TraceSample> samples;           ///< what was made of the beginning, up to 200; empty while questions are open
    TraceTally tally;                           ///< of the beginning alone, with its doubtful rows
};

/// Looks at the beginning (256 KiB) of a log. `kept` are the answers of Logbook::trace_answers(), empty without a logbook; options.progress is
/// not used. Errors: not_found, io, those of detect_layout() and read_trace().
[[nodiscard]] Result<TracePreview> preview_trace(const std::string& path, const LayoutAnswers& answers,
                                                 const std::map<std::string, std::string>& kept, const TraceReadOptions& options);

/// Reads the whole log and keeps nothing: what an import would find. Errors: those of preview_trace(), and an open question (bad_input).
[[nodiscard]] Result<TraceTally> check_trace(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options);

/// Reads the whole log as check_trace() does and hands its samples over in order of time.
[[nodiscard]] Result<TraceTally> stream_trace(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options,
                                              const SampleSink& sink);

struct ImportedTrace {
    Trace trace;
    TraceTally tally;
};

/// Imports a whole log into a run in one transaction and remembers how it was read. `detection` comes from a preview without open questions. A log
/// that holds nothing but what the unit says of itself has no meter, whatever `meter_uuid` says.
/// Errors, each leaving the logbook as it was: those of check_trace() and Logbook::add_trace(); `refused` when options.progress cancels.
[[nodiscard]] Result<ImportedTrace> import_trace(Logbook& logbook, const std::string& path, const RunId& run_uuid,
                                                 const std::optional<MeterId>& meter_uuid, const TraceDetection& detection,
                                                 const TraceReadOptions& options);

/// What the columns of a log hold: holds_meter, holds_gauge and holds_output, added up (model/trace.h).
[[nodiscard]] int held_by(const TraceLayout& layout);

/// "columns: `Power` as power in W, …; date and time; delimiter comma; …": a layout in words.
[[nodiscard]] Message say_layout(const TraceDetection& detection);

/// The open questions as one error; absent when there is none.
[[nodiscard]] std::optional<Error> open_questions(const TraceDetection& detection);

} // namespace ullage
