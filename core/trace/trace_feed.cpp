// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/trace_feed.h"

#include "trace/inside/row_reader.h"

#include <istream>
#include <streambuf>
#include <utility>

namespace ullage {
namespace {

/// A stream of what was given last.
class PieceBuffer final : public std::streambuf {
public:
    void give(std::string_view piece) {
        char* const begin = const_cast<char*>(piece.data()); // only read: nothing is ever put into this buffer
        setg(begin, begin, begin + piece.size());
    }
};

} // namespace

struct TraceFeed::Parts {
    Parts(TraceLayout&& layout_, TraceReadOptions&& options_, SampleSink&& sink_)
        : layout(std::move(layout_)), options(std::move(options_)), sink(std::move(sink_)), in(&buffer), reader(in, layout, options, sink) {}

    TraceLayout layout;
    TraceReadOptions options;
    SampleSink sink;
    PieceBuffer buffer;
    std::istream in;
    RowReader reader;
};

TraceFeed::TraceFeed(TraceLayout layout, TraceReadOptions options, SampleSink sink)
    : parts_(std::make_unique<Parts>(std::move(layout), std::move(options), std::move(sink))) {}

TraceFeed::~TraceFeed() = default;

Result<void> TraceFeed::take(std::string_view lines) {
    parts_->buffer.give(lines);
    if (auto read = parts_->reader.read_on(); !read) return read;
    return parts_->reader.hand_over_all();
}

const TraceTally& TraceFeed::tally() const { return parts_->reader.tally(); }

} // namespace ullage
