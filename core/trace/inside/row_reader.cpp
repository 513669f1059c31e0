// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/row_reader.h"

#include "trace/inside/layout_rows.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr long most_listed_rows = 100;
constexpr std::size_t most_text = 80;
constexpr long rows_between_progress = 8192;

using Trouble = std::optional<RowTrouble>;

} // namespace

RowReader::RowReader(std::istream& in, const TraceLayout& layout, const TraceReadOptions& options, const SampleSink& sink)
    : layout_(layout), options_(options), lines_(in, layout.encoding), clock_(clock_settings()), order_(sink, options.gap_limit_s, tally_) {}

Result<void> RowReader::read_on() {
    if (auto fit = check(); !fit) return fit;
    std::string_view line;
    while (lines_.next(line)) {
        if (lines_.line_number() < layout_.first_data_line || line.empty() || is_comment(line)) continue;
        if (++tally_.rows % rows_between_progress == 0 && options_.progress && !options_.progress(lines_.bytes_read()))
            return Error{Failure::refused, say(phrase("trace", "cancelled; nothing was imported")), {}, {}};
        const Result<Trouble> trouble = take(line);
        if (!trouble) return trouble.error();
        if (trouble.value()) note(*trouble.value(), line);
    }
    return {};
}

const TraceTally& RowReader::tally() {
    tally_.taken = tally_.rows - tally_.left_out();
    tally_.bytes = lines_.bytes_read();
    tally_.fingerprint = lines_.fingerprint();
    return tally_;
}

LogClock::Settings RowReader::clock_settings() const {
    LogClock::Settings settings;
    settings.form = layout_.time_form;
    settings.order = layout_.date_order;
    settings.decimal = layout_.decimal;
    if (const auto time = layout_.column_of(ColumnRole::time)) {
        const LogUnit& unit = layout_.columns[*time].unit;
        if (unit.quantity == LogQuantity::time) settings.unit_s = value_of({1, 0, {}}, unit).value_or(1);
    }
    settings.zone = options_.zone;
    settings.start_ms = options_.start_ms;
    return settings;
}

Result<void> RowReader::check() {
    if (!values_.empty()) return {};
    const auto time = layout_.column_of(ColumnRole::time);
    if (!time) return Error{Failure::bad_input, say(phrase("trace", "no column is named for the time")), {}, say(phrase("trace", "name it"))};
    if (needs_start(layout_.time_form) && !options_.start_ms)
        return Error{Failure::bad_input,
                     say(phrase("trace", "the times of this log do not say on which day it was started")),
                     {},
                     say(phrase("trace", "give the start of the log"))};
    if (!zone_exists(options_.zone))
        return Error{Failure::bad_input,
                     say(phrase("trace", "`%1` is no time zone known to this machine"), options_.zone),
                     {},
                     say(phrase("trace", "use an IANA name such as Europe/Vienna"))};
    time_ = *time;
    date_ = layout_.column_of(ColumnRole::date).value_or(*time);
    needed_ = std::max(time_, date_);
    for (const RoleEntry& entry : column_roles())
        if (const auto column = layout_.column_of(entry.role); column && entry.place) {
            values_.push_back({*column, layout_.columns[*column].unit, entry.place});
            needed_ = std::max(needed_, *column);
        }
    if (values_.empty())
        return Error{Failure::bad_input,
                     say(phrase("trace", "no column is named for a value")),
                     {},
                     say(phrase("trace", "name one for the register or the power"))};
    return {};
}

/// False where the cell holds something else than a number of this quantity.
bool RowReader::read_value(const Value& value, std::string_view cell, TraceSample& sample) const {
    LogNumber number;
    if (!read_number(cell, layout_.decimal, layout_.grouping, number)) return says_nothing(cell);
    LogUnit unit = value.unit;
    if (!number.suffix.empty()) {
        const auto named = unit_named(number.suffix);
        if (!named || (unit.quantity != LogQuantity::unknown && named->quantity != unit.quantity)) return false;
        unit = *named;
    }
    sample.*value.place = value_of(number, unit);
    return (sample.*value.place).has_value();
}

Result<std::optional<RowTrouble>> RowReader::take(std::string_view line) {
    if (lines_.cut_short()) return Trouble(RowTrouble::too_long);
    if (!split_fields(line, layout_.delimiter, fields_, scratch_)) return Trouble(RowTrouble::quote);
    if (fields_.size() <= std::max(time_, date_)) return Trouble(RowTrouble::fields);
    TraceSample sample;
    const long doubled_before = clock_.doubled_rows();
    switch (clock_.read(fields_[time_], fields_[date_], sample.time_ms)) {
    case LogClock::Outcome::good: break;
    case LogClock::Outcome::skipped: return Trouble(RowTrouble::skipped_time);
    case LogClock::Outcome::unreadable:
        return Trouble(fields_[time_] == layout_.columns[time_].title ? RowTrouble::repeated_header : RowTrouble::time);
    }
    if (fields_.size() <= needed_) return Trouble(RowTrouble::fields);
    sample.time_ms += options_.offset_ms;
    if (sample.time_ms < earliest_ms || sample.time_ms > latest_ms) return Trouble(RowTrouble::time);
    for (const Value& value : values_)
        if (!read_value(value, fields_[value.column], sample)) return Trouble(RowTrouble::value);
    if (!sample.power_w && sample.voltage_v && sample.current_a) sample.power_w = *sample.voltage_v * *sample.current_a;
    if (!sample.register_wh && !sample.power_w && !sample.voltage_v && !sample.current_a && !sample.gauge_percent && !sample.output_w)
        return Trouble(RowTrouble::no_value);
    Result<Trouble> placed = order_.take(sample);
    if (placed && !placed.value() && clock_.doubled_rows() > doubled_before) return Trouble(RowTrouble::doubled_hour);
    return placed;
}

void RowReader::note(RowTrouble trouble, std::string_view line) {
    if (++tally_.counts[static_cast<std::size_t>(trouble)] <= most_listed_rows)
        tally_.skipped_rows.push_back({lines_.line_number(), trouble, std::string(line.substr(0, most_text))});
}

} // namespace ullage
