// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/block_writer.h"

#include "store/inside/trace_codec.h"
#include "store/inside/value_checks.h"
#include "store/queries/rows.h"

namespace ullage::store {

BlockWriter::BlockWriter(SQLite::Database& database, std::int64_t trace_id)
    : database_(database), insert_(database, "INSERT INTO trace_blocks (trace_id, first_ms, last_ms, samples, content) VALUES (?1, ?2, ?3, ?4, ?5)"),
      trace_id_(trace_id) {
    block_.reserve(block_samples);
}

bool BlockWriter::go_on(const Trace& trace) {
    count_ = trace.samples;
    first_ms_ = trace.first_ms;
    last_ms_ = trace.last_ms;
    SQLite::Statement last(database_, "SELECT id, samples, content FROM trace_blocks WHERE trace_id = ?1 ORDER BY first_ms DESC LIMIT 1");
    Binder(last).integer(trace_id_);
    if (!last.executeStep()) return count_ == 0;
    if (last.getColumn(1).getInt64() >= static_cast<std::int64_t>(block_samples)) return true;
    const SQLite::Column content = last.getColumn(2);
    if (!decode({static_cast<const char*>(content.getBlob()), static_cast<std::size_t>(content.getBytes())}, block_)) return false;
    filled_id_ = last.getColumn(0).getInt64();
    stored_ = block_.size();
    return true;
}

Result<void> BlockWriter::take(std::span<const TraceSample> samples) {
    for (const TraceSample& sample : samples) {
        if (count_ > 0 && sample.time_ms <= last_ms_)
            return Error{
                Failure::bad_input, say(phrase("store", "the samples are not in order of time")), {}, say(phrase("store", "sort the log by time"))};
        if (auto sound = check(sample); !sound) return sound;
        if (count_++ == 0) first_ms_ = sample.time_ms;
        last_ms_ = sample.time_ms;
        block_.push_back(sample);
        if (block_.size() == block_samples) write();
    }
    return {};
}

void BlockWriter::finish(Trace& trace) {
    if (block_.size() > stored_) write();
    trace.samples = count_;
    trace.first_ms = first_ms_;
    trace.last_ms = last_ms_;
}

void BlockWriter::write() {
    const std::string content = encoded(block_);
    const auto samples = static_cast<std::int64_t>(block_.size());
    if (filled_id_ != 0) {
        SQLite::Statement fill(database_, "UPDATE trace_blocks SET last_ms = ?2, samples = ?3, content = ?4 WHERE id = ?1");
        Binder(fill).integer(filled_id_).integer(block_.back().time_ms).integer(samples).blob(content);
        fill.exec();
    } else {
        insert_.reset();
        Binder(insert_).integer(trace_id_).integer(block_.front().time_ms).integer(block_.back().time_ms).integer(samples).blob(content);
        insert_.exec();
    }
    filled_id_ = 0;
    stored_ = 0;
    block_.clear();
}

} // namespace ullage::store
