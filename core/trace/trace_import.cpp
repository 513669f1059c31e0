// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/trace_import.h"

#include "trace/growing_file.h"
#include "trace/inside/file_beginning.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <limits>
#include <sstream>

namespace ullage {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t beginning_bytes = 1 << 18;
constexpr std::size_t preview_rows = 20, preview_samples = 200;

Result<std::ifstream> opened(const std::string& path) {
    std::error_code code;
    const fs::file_status status = fs::status(path, code);
    if (status.type() == fs::file_type::not_found)
        return Error{Failure::not_found, say(phrase("trace", "there is no such file")), path, say(phrase("trace", "check the name"))};
    if (status.type() != fs::file_type::regular)
        return Error{Failure::refused, say(phrase("trace", "this is no regular file")), path, say(phrase("trace", "name a log file"))};
    std::ifstream file(path, std::ios::binary);
    if (!file) return Error{Failure::io, say(phrase("trace", "the file cannot be read")), path, say(phrase("trace", "check its permissions"))};
    return file;
}

/// Where the last line that has its line end ends.
std::int64_t whole_lines_bytes(std::ifstream& file, LogEncoding encoding) {
    constexpr std::int64_t step = 1 << 16; // even, so that characters of two bytes are not cut
    file.seekg(0, std::ios::end);
    const std::int64_t size = file.tellg();
    std::int64_t whole = 0;
    for (std::int64_t at = (std::max<std::int64_t>(size, 0) - 1) / step * step; at >= 0 && whole == 0; at -= step) {
        std::string bytes(static_cast<std::size_t>(std::min(step, size - at)), '\0');
        file.seekg(at);
        file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
        bytes.resize(static_cast<std::size_t>(std::max<std::streamsize>(file.gcount(), 0)));
        if (const std::size_t end = end_of_lines(bytes, encoding); end > 0) whole = at + static_cast<std::int64_t>(end);
    }
    file.clear();
    file.seekg(0);
    return whole;
}

Error at_file(Error error, const std::string& path) {
    if (error.where.empty()) error.where = path;
    return error;
}

Message say_delimiter(char delimiter) {
    switch (delimiter) {
    case '\t': return say(phrase("trace", "tab"));
    case ';': return say(phrase("trace", "semicolon"));
    case '|': return say(phrase("trace", "bar"));
    case ',': return say(phrase("trace", "comma"));
    default: return say(phrase("trace", "blanks"));
    }
}

Message say_times(TimeForm form, DateOrder order) {
    switch (order) {
    case DateOrder::day_first: return say(phrase("trace", "times as %1, day first"), say_time_form(form));
    case DateOrder::month_first: return say(phrase("trace", "times as %1, month first"), say_time_form(form));
    case DateOrder::year_first: return say(phrase("trace", "times as %1, year first"), say_time_form(form));
    case DateOrder::unknown: break;
    }
    return say(phrase("trace", "times as %1"), say_time_form(form));
}

Message say_column(const LogColumn& column, std::size_t number, bool with_unit) {
    const Message role = say_role(column.role), place = say_number(number);
    if (column.title.empty())
        return with_unit ? say(phrase("trace", "%1 = column %2 in %3"), role, place, column.unit.name)
                         : say(phrase("trace", "%1 = column %2"), role, place);
    return with_unit ? say(phrase("trace", "%1 = column %2 `%3` in %4"), role, place, column.title, column.unit.name)
                     : say(phrase("trace", "%1 = column %2 `%3`"), role, place, column.title);
}

} // namespace

Result<TracePreview> preview_trace(const std::string& path, const LayoutAnswers& answers, const std::map<std::string, std::string>& kept,
                                   const TraceReadOptions& options) {
    Result<std::ifstream> file = opened(path);
    if (!file) return file.error();
    std::string beginning(beginning_bytes, '\0');
    file.value().read(beginning.data(), static_cast<std::streamsize>(beginning.size()));
    if (file.value().bad()) return Error{Failure::io, say(phrase("trace", "the file cannot be read")), path, say(phrase("trace", "check the disk"))};
    const auto count = static_cast<std::size_t>(std::max<std::streamsize>(file.value().gcount(), 0));
    const bool whole = count < beginning.size();
    beginning.resize(count);
    if (!whole || options.whole_lines) // the last line may be cut off
        if (const auto end = end_of_lines(beginning, answers.encoding.value_or(detect_encoding(beginning))); end > 0) beginning.resize(end);
    std::map<std::string, LayoutAnswers> remembered;
    for (const auto& [signature, text] : kept) remembered.emplace(signature, answers_from(text));
    Result<TraceDetection> detection = detect_layout(beginning, answers, remembered);
    if (!detection) return at_file(detection.error(), path);
    TracePreview preview;
    preview.detection = std::move(detection).value();
    const TraceLayout& layout = preview.detection.layout;
    {
        std::istringstream in(beginning);
        LogLines lines(in, layout.encoding);
        std::string_view line;
        std::vector<std::string_view> fields;
        std::vector<std::string> scratch;
        while (preview.rows.size() < preview_rows && lines.next(line))
            if (lines.line_number() >= layout.first_data_line && split_fields(line, layout.delimiter, fields, scratch))
                preview.rows.emplace_back(fields.begin(), fields.end());
    }
    if (!preview.detection.questions.empty() || (needs_start(layout.time_form) && !options.start_ms)) return preview;
    std::istringstream in(beginning);
    TraceReadOptions quiet = options;
    quiet.progress = nullptr;
    const Result<TraceTally> tally = read_trace(in, layout, quiet, [&preview](std::span<const TraceSample> samples) -> Result<void> {
        for (const TraceSample& sample : samples)
            if (preview.samples.size() < preview_samples) preview.samples.push_back(sample);
        return {};
    });
    if (!tally) return at_file(tally.error(), path);
    preview.tally = tally.value();
    return preview;
}

Result<TraceTally> stream_trace(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options, const SampleSink& sink) {
    Result<std::ifstream> file = opened(path);
    if (!file) return file.error();
    FileBeginning beginning(file.value(),
                            options.whole_lines ? whole_lines_bytes(file.value(), layout.encoding) : std::numeric_limits<std::int64_t>::max());
    std::istream in(&beginning);
    Result<TraceTally> tally = read_trace(in, layout, options, sink);
    if (!tally) return at_file(tally.error(), path);
    if (file.value().bad())
        return Error{Failure::io, say(phrase("trace", "the file cannot be read to its end")), path, say(phrase("trace", "check the disk"))};
    return tally;
}

Result<TraceTally> check_trace(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options) {
    return stream_trace(path, layout, options, [](std::span<const TraceSample>) { return Result<void>(); });
}

Result<ImportedTrace> import_trace(Logbook& logbook, const std::string& path, const RunId& run_uuid, const std::optional<MeterId>& meter_uuid,
                                   const TraceDetection& detection, const TraceReadOptions& options) {
    if (const auto open = open_questions(detection)) return at_file(*open, path);
    const std::string answers = answers_text(answers_of(detection.layout));
    Trace trace;
    trace.run_uuid = run_uuid;
    trace.holds = held_by(detection.layout);
    if (trace.has(holds_meter)) trace.meter_uuid = meter_uuid; // no meter wrote what the unit says of itself
    trace.file_name = options.file_name.empty() ? fs::path(path).filename().string() : options.file_name;
    trace.layout = answers;
    trace.offset_ms = options.offset_ms;
    trace.offset_u_s = options.offset_u_s;
    trace.signature = detection.signature;
    trace.zone = options.zone;
    trace.start_ms = options.start_ms;
    TraceTally tally;
    const Result<Trace> added = logbook.add_trace(std::move(trace), [&](Trace& about, const SampleTaker& take) -> Result<void> {
        Result<TraceTally> read = stream_trace(path, detection.layout, options, take);
        if (!read) return read.error();
        tally = std::move(read).value();
        about.fingerprint = tally.fingerprint;
        about.size_bytes = tally.bytes;
        about.rows_left_out = tally.left_out();
        return {};
    });
    if (!added) return added.error();
    return ImportedTrace{added.value(), std::move(tally)};
}

int held_by(const TraceLayout& layout) {
    int holds = 0;
    for (const LogColumn& column : layout.columns) {
        if (is_of_meter(column.role)) holds |= holds_meter;
        if (column.role == ColumnRole::gauge) holds |= holds_gauge;
        if (column.role == ColumnRole::output) holds |= holds_output;
    }
    return holds;
}

Message say_layout(const TraceDetection& detection) {
    const TraceLayout& layout = detection.layout;
    std::vector<Message> columns;
    for (std::size_t c = 0; c < layout.columns.size(); ++c) {
        const LogColumn& column = layout.columns[c];
        if (column.role == ColumnRole::unused) continue;
        const bool counted = column.role != ColumnRole::time || layout.time_form == TimeForm::elapsed;
        columns.push_back(say_column(column, c + 1, counted && !column.unit.name.empty()));
    }
    return say_joined({columns.empty() ? say(phrase("trace", "no column recognised")) : say_joined(columns, ", "),
                       say_times(layout.time_form, layout.date_order),
                       say(layout.decimal == ',' ? phrase("trace", "delimiter %1, decimal comma, %2, data from line %3")
                                                 : phrase("trace", "delimiter %1, decimal point, %2, data from line %3"),
                           say_delimiter(layout.delimiter), encoding_text(layout.encoding), say_number(layout.first_data_line))},
                      "; ");
}

std::optional<Error> open_questions(const TraceDetection& detection) {
    if (detection.questions.empty()) return std::nullopt;
    std::vector<Message> open;
    for (const LayoutQuestion& question : detection.questions) {
        open.push_back(question.choices.empty()
                           ? Message(question.words)
                           : say(phrase("trace", "%1 (%2?)"), question.words, say_choice({question.choices.begin(), question.choices.end()})));
    }
    return Error{Failure::bad_input, say_joined(open, "; "), {}, say(phrase("trace", "answer it; nothing was imported"))};
}

} // namespace ullage
