// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/trace_reader.h"

#include "trace/inside/row_reader.h"

namespace ullage {

Message say_trouble(RowTrouble trouble) {
    switch (trouble) {
    case RowTrouble::fields: return say(phrase("trace", "too few fields"));
    case RowTrouble::quote: return say(phrase("trace", "a quote is not closed"));
    case RowTrouble::too_long: return say(phrase("trace", "longer than 64 KiB"));
    case RowTrouble::time: return say(phrase("trace", "the time cannot be read"));
    case RowTrouble::skipped_time: return say(phrase("trace", "a local time that does not exist (clocks went forward)"));
    case RowTrouble::value: return say(phrase("trace", "a value cannot be read"));
    case RowTrouble::no_value: return say(phrase("trace", "no value"));
    case RowTrouble::repeated_header: return say(phrase("trace", "the header again"));
    case RowTrouble::duplicate: return say(phrase("trace", "the same row again"));
    case RowTrouble::same_moment: return say(phrase("trace", "the moment of another row, with other values"));
    case RowTrouble::out_of_order: return say(phrase("trace", "too far out of order"));
    case RowTrouble::swapped: return say(phrase("trace", "out of order, put in its place"));
    case RowTrouble::doubled_hour: return say(phrase("trace", "in an hour that occurs twice, settled by the order of rows"));
    case RowTrouble::gap: return say(phrase("trace", "after a gap"));
    }
    return {};
}

bool leaves_out(RowTrouble trouble) { return trouble != RowTrouble::swapped && trouble != RowTrouble::doubled_hour && trouble != RowTrouble::gap; }

long TraceTally::left_out() const {
    long sum = 0;
    for (std::size_t t = 0; t < row_troubles; ++t)
        if (leaves_out(static_cast<RowTrouble>(t))) sum += counts[t];
    return sum;
}

Result<TraceTally> read_trace(std::istream& in, const TraceLayout& layout, const TraceReadOptions& options, const SampleSink& sink) {
    RowReader reader(in, layout, options, sink);
    if (auto read = reader.read_on(); !read) return read.error();
    if (auto finished = reader.finish(); !finished) return finished.error();
    return reader.tally();
}

} // namespace ullage
