// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/log_follow.h"

#include "base/fingerprint.h"

#include <algorithm>
#include <fstream>
#include <utility>

namespace ullage {
namespace {

constexpr std::int64_t compared_bytes = std::int64_t{1} << 20;
constexpr std::int64_t most_beginning = std::int64_t{1} << 18;

Result<std::ifstream> opened_log(const std::string& path) {
    std::ifstream file(path, std::ios::binary);
    if (!file)
        return Error{Failure::not_found, say(phrase("trace", "the log cannot be opened")), path,
                     say(phrase("trace", "check its name and its permissions"))};
    return file;
}

/// Hands the first `size` bytes of a file to `take`, piece by piece; false where it has fewer.
template <class Take>
Result<bool> each_piece(std::ifstream& file, std::int64_t size, const Take& take) {
    std::string piece;
    for (std::int64_t at = 0; at < size;) {
        piece.resize(static_cast<std::size_t>(std::min(size - at, compared_bytes)));
        file.read(piece.data(), static_cast<std::streamsize>(piece.size()));
        if (file.gcount() < static_cast<std::streamsize>(piece.size())) return false;
        at += file.gcount();
        if (Result<void> taken = take(piece, at); !taken) return taken.error();
    }
    return true;
}

/// Whether a file begins with the bytes that were read of it before.
Result<bool> begins_alike(std::ifstream& file, const Trace& trace, const std::function<bool(std::int64_t)>& progress) {
    Fingerprint fingerprint;
    const auto whole = each_piece(file, trace.size_bytes, [&](const std::string& piece, std::int64_t at) -> Result<void> {
        fingerprint.add(piece);
        if (progress && !progress(at))
            return Error{Failure::refused, say(phrase("trace", "cancelled")), {}, say(phrase("trace", "nothing was changed"))};
        return {};
    });
    if (!whole) return whole.error();
    return whole.value() && fingerprint.text() == trace.fingerprint;
}

std::optional<TraceSample> last_sample(const Logbook& logbook, const Trace& trace) {
    std::optional<TraceSample> last;
    const auto read = logbook.read_samples(trace.uuid, trace.last_ms, trace.last_ms, [&last](std::span<const TraceSample> samples) {
        last = samples.back();
        return true;
    });
    return read ? last : std::nullopt;
}

} // namespace

LogFollow::LogFollow(Trace trace, const std::string& path, TraceReadOptions options)
    : trace_(std::move(trace)), path_(path), answers_(answers_from(trace_.layout)), options_(std::move(options)), fresh_(std::make_unique<Fresh>()) {}

LogFollow::LogFollow(LogFollow&&) noexcept = default;
LogFollow& LogFollow::operator=(LogFollow&&) noexcept = default;
LogFollow::~LogFollow() = default;

void LogFollow::feed_from_beginning(const TraceLayout& layout) {
    feed_ = std::make_unique<TraceFeed>(layout, options_, [fresh = fresh_.get()](std::span<const TraceSample> samples) -> Result<void> {
        if (fresh->wanted) fresh->samples.insert(fresh->samples.end(), samples.begin(), samples.end());
        return {};
    });
    left_out_before_ = 0;
}

Result<LogFollow> LogFollow::begin(const Logbook& logbook, const Trace& trace, const std::string& path, bool maybe_anew,
                                   const std::function<bool(std::int64_t bytes)>& progress) {
    TraceReadOptions options;
    options.zone = trace.zone;
    options.start_ms = trace.start_ms;
    options.offset_ms = trace.offset_ms;
    if (options.zone.empty()) {
        const auto record = logbook.run_record(trace.run_uuid);
        if (!record) return record.error();
        options.zone = record.value().run.time_zone;
    }
    LogFollow follow(trace, path, std::move(options));
    Result<std::ifstream> file = opened_log(path);
    if (!file) return file.error();
    const Result<bool> alike = begins_alike(file.value(), trace, progress);
    if (!alike) return alike.error();
    if (alike.value()) {
        if (auto known = follow.read_what_is_known(file.value(), logbook); !known) return known.error();
        return follow;
    }
    if (!maybe_anew)
        return Error{Failure::refused, say(phrase("trace", "this file does not begin as `%1` did when it was read"), trace.file_name), path,
                     say(phrase("trace", "choose the file that the meter goes on writing, or import this one"))};
    if (auto possible = follow.expect_anew(); !possible) return possible.error();
    follow.file_ = std::make_unique<GrowingFile>(path, follow.answers_.encoding.value_or(LogEncoding::plain));
    return follow;
}

Result<void> LogFollow::read_what_is_known(std::ifstream& file, const Logbook& logbook) {
    std::string beginning(static_cast<std::size_t>(std::min<std::int64_t>(most_beginning, trace_.size_bytes)), '\0');
    file.clear();
    file.seekg(0);
    file.read(beginning.data(), static_cast<std::streamsize>(beginning.size()));
    beginning.resize(static_cast<std::size_t>(std::max<std::streamsize>(file.gcount(), 0)));
    const Result<TraceDetection> found = detect_layout(beginning, answers_);
    if (!found) return found.error();
    const TraceLayout& layout = found.value().layout;
    feed_from_beginning(layout);
    file.clear();
    file.seekg(0);
    std::string left;
    const auto read = each_piece(file, trace_.size_bytes, [&](const std::string& piece, std::int64_t) -> Result<void> {
        left += piece;
        const std::size_t end = end_of_lines(left, layout.encoding);
        if (end == 0) return {};
        auto taken = feed_->take(std::string_view(left).substr(0, end));
        left.erase(0, end);
        return taken;
    });
    if (!read) return read.error();
    const auto left_bytes = static_cast<std::int64_t>(left.size());
    if (left_bytes == trace_.size_bytes)
        return Error{Failure::refused, say(phrase("trace", "the lines of this log end with CR alone")), path_,
                     say(phrase("trace", "it can be imported when it is whole, but not followed"))};
    const TraceTally& tally = feed_->tally();
    if (tally.last_ms > trace_.last_ms || (tally.last_ms < trace_.last_ms && left.empty() && trace_.started_anew == 0))
        return Error{Failure::refused, say(phrase("trace", "the times of `%1` read otherwise now than when it was imported"), trace_.file_name),
                     path_, say(phrase("trace", "withdraw the log from the run and import it again"))};
    left_out_before_ = tally.left_out();
    fresh_->wanted = true;
    if (!left.empty()) cut_off_ = last_sample(logbook, trace_);
    file_ = std::make_unique<GrowingFile>(path_, layout.encoding, trace_.size_bytes - left_bytes);
    return {};
}

/// From now on the file is one that was begun anew.
Result<void> LogFollow::expect_anew() {
    if (answers_.time_form && needs_start(*answers_.time_form))
        return Error{Failure::refused, say(phrase("trace", "the log was begun anew, and its times do not say on which day")), path_,
                     say(phrase("trace", "import the new log with its start"))};
    feed_.reset();
    beginning_.clear();
    cut_off_.reset();
    anew_ = true;
    fresh_->wanted = true;
    return {};
}

/// Finds out how a new beginning is read; false while it holds no row yet.
Result<bool> LogFollow::settle_beginning() {
    const Error other_columns{Failure::refused, say(phrase("trace", "the log was begun anew with other columns")), path_,
                              say(phrase("trace", "import the new log"))};
    const Result<TraceDetection> found = detect_layout(beginning_, answers_);
    const bool alike = found && found.value().questions.empty() && (trace_.signature.empty() || found.value().signature == trace_.signature);
    if (!alike) {
        // What there is may be a preface without a row yet: only a log that is read otherwise by itself is another.
        const Result<TraceDetection> anyhow = detect_layout(beginning_, {});
        const auto open = [&anyhow](OpenQuestion about) {
            return std::ranges::any_of(anyhow.value().questions, [about](const LayoutQuestion& question) { return question.about == about; });
        };
        const bool rows = anyhow && !open(OpenQuestion::no_time) && !open(OpenQuestion::no_values);
        return rows || beginning_.size() >= static_cast<std::size_t>(most_beginning) ? Result<bool>(other_columns) : Result<bool>(false);
    }
    feed_from_beginning(found.value().layout);
    return true;
}

Result<void> LogFollow::take(std::string&& lines) {
    if (!feed_) {
        beginning_ += lines;
        const Result<bool> settled = settle_beginning();
        if (!settled) return settled.error();
        if (!settled.value()) return {};
        lines = std::exchange(beginning_, {});
    }
    if (auto taken = feed_->take(lines); !taken) return taken;
    std::vector<TraceSample>& samples = fresh_->samples;
    for (const TraceSample& sample : samples)
        if (cut_off_ && sample.time_ms == cut_off_->time_ms && sample != *cut_off_)
            return Error{Failure::refused, say(phrase("trace", "the last row of `%1` was cut off when it was imported"), trace_.file_name), path_,
                         say(phrase("trace", "withdraw the log from the run and import it again"))};
    cut_off_.reset();
    std::erase_if(samples, [this](const TraceSample& sample) { return sample.time_ms <= trace_.last_ms; });
    unsaved_ = true;
    return {};
}

Result<FollowLook> LogFollow::look(Logbook& logbook) {
    FollowLook seen;
    if (!unsaved_) {
        auto piece = file_->next();
        if (!piece) return piece.error();
        seen.change = piece.value().change;
        seen.more = piece.value().more;
        if (seen.change == LogChange::started_anew)
            if (auto possible = expect_anew(); !possible) return possible.error();
        if (!piece.value().lines.empty())
            if (auto taken = take(std::move(piece.value().lines)); !taken) return taken.error();
    }
    if (!unsaved_) return seen;
    const TraceTally& tally = feed_->tally();
    const std::int64_t left_out = tally.left_out() - left_out_before_;
    auto saved = logbook.extend_trace(trace_, {fresh_->samples, tally.bytes, tally.fingerprint, left_out, anew_});
    if (!saved) return saved.error();
    seen.samples = saved.value().samples - trace_.samples;
    seen.rows_left_out = left_out;
    trace_ = std::move(saved).value();
    left_out_before_ = tally.left_out();
    fresh_->samples.clear();
    anew_ = false;
    unsaved_ = false;
    return seen;
}

Result<std::optional<Trace>> trace_continued_by(const Logbook& logbook, const RunId& run_uuid, const std::string& path) {
    const auto traces = logbook.traces(run_uuid);
    if (!traces) return traces.error();
    Result<std::ifstream> file = opened_log(path);
    if (!file) return file.error();
    file.value().seekg(0, std::ios::end);
    const std::int64_t size = file.value().tellg();
    for (const Trace& trace : traces.value()) {
        if (trace.withdrawn || trace.size_bytes <= 0 || trace.size_bytes > size) continue;
        file.value().clear();
        file.value().seekg(0);
        const Result<bool> alike = begins_alike(file.value(), trace, nullptr);
        if (!alike) return alike.error();
        if (alike.value()) return std::optional(trace);
    }
    return std::optional<Trace>();
}

} // namespace ullage
