// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured, with which meters, in which runs.
#include "base/number.h"
#include "base/quantity.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/meter_points_text.h"
#include "model/tags.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

using Content = TableColumn::Content;

/// What is known of one unit, meter or run: the same heads for each, empty where not stated.
struct Fact {
    Message head, text;
    bool own = false; ///< what only the tester has a use for
};
using Facts = std::vector<Fact>;

constexpr std::size_t most_things = 4; ///< side by side on a page

/// As it was stated, with a true minus sign.
Message exact(double value) {
    const std::string size = exact_text(std::abs(value));
    return say_digits(value < 0 ? "−" + size : size);
}

Message number(std::optional<double> value, const char* unit) { return value ? exact(*value) + std::string(" ") + unit : Message(); }

Message stated(const Message& text) { return text.empty() ? say(phrase("report", "not stated")) : text; }

/// A number with words behind it, where there is one.
Message worded(std::optional<double> value, const Phrase& words) { return value ? say(words, exact(*value)) : Message(); }

Message pv_limits_of(const Unit& unit) {
    std::vector<Message> limits;
    for (const Message& limit :
         {number(unit.pv_max_v, "V"), number(unit.pv_max_a, "A"), number(unit.pv_max_w, "W"), worded(unit.pv_start_v, phrase("report", "from %1 V")),
          worded(unit.pv_short_circuit_a, phrase("report", "%1 A short circuit"))})
        if (!limit.empty()) limits.push_back(limit);
    return say_joined(limits, ", ");
}

Message points_of_gauge(const std::optional<double>& step) {
    if (!step) return {};
    return *step == 1 ? say(phrase("report", "1 percentage point")) : say(phrase("report", "%1 percentage points"), exact(*step));
}

Facts unit_facts(const Unit& unit) {
    return {{say(phrase("report", "unit")), unit.name},
            {say(phrase("report", "maker")), unit.maker},
            {say(phrase("report", "model")), unit.model},
            {say(phrase("report", "serial number")), unit.serial_number},
            {say(phrase("report", "cells")), unit.chemistry},
            {say(phrase("report", "purchased")), unit.purchased},
            {say(phrase("report", "charge cycles before the first run")), unit.cycles_before ? exact(*unit.cycles_before) : Message()},
            {say(phrase("report", "rated energy (claim)")), stated(unit.rated_energy_wh ? say_energy(*unit.rated_energy_wh) : Message())},
            {say(phrase("report", "rated output (claim)")), number(unit.rated_output_w, "W")},
            {say(phrase("report", "peak output (claim)")), number(unit.peak_output_w, "W")},
            {say(phrase("report", "PV input limits (claim)")), pv_limits_of(unit)},
            {say(phrase("report", "charge time (claim)")), number(unit.charge_time_h, "h")},
            {say(phrase("report", "price")), number(unit.price, unit.currency.c_str())},
            {say(phrase("report", "price paid")), number(unit.paid_price, unit.currency.c_str()), true},
            {say(phrase("report", "mass")), number(unit.mass_kg, "kg")},
            {say(phrase("report", "warranty")), worded(unit.warranty_years, phrase("report", "%1 years"))},
            {say(phrase("report", "gauge step")), points_of_gauge(unit.gauge_step_percent)},
            {say(phrase("report", "tags")), tags_text(unit.tags, ", "), true},
            {say(phrase("report", "remark")), unit.remark, true}};
}

Facts meter_facts(const Meter& meter) {
    return {{say(phrase("report", "meter")), meter.name},
            {say(phrase("report", "register step")), stated(number(meter.step_wh, "Wh"))},
            {say(phrase("report", "error limit")), stated(worded(meter.limit_percent, phrase("report", "± %1 % of the energy")))},
            {say(phrase("report", "register span")), number(meter.span_wh, "Wh")},
            {say(phrase("report", "correction")), meter.points.empty() ? exact(meter.correction) : Message()},
            {say(phrase("report", "points (W, correction, U in %, k)")), say_digits(meter_points_text(meter.points))},
            {say(phrase("report", "class")), meter.accuracy_class + (meter.standard.empty() ? "" : " (" + meter.standard + ")")},
            {say(phrase("report", "range from")), number(meter.range_low_w, "W")},
            {say(phrase("report", "range to")), number(meter.range_high_w, "W")},
            {say(phrase("report", "certificate")), meter.certificate.number},
            {say(phrase("report", "date of the certificate")), meter.certificate.date},
            {say(phrase("report", "laboratory")), meter.certificate.laboratory},
            {say(phrase("report", "valid until")), meter.certificate.valid_until},
            {say(phrase("report", "remark")), meter.remark, true}};
}

Message full_words(const std::optional<bool>& full) {
    if (!full) return stated({});
    return *full ? say(phrase("report", "yes")) : say(phrase("report", "no"));
}

Facts run_facts(const ReportedRun& run) {
    const RunRecord& record = *run.record;
    long noted = 0, withdrawn = 0;
    for (const Reading& reading : record.readings) ++(reading.withdrawn ? withdrawn : noted);
    const Message readings = withdrawn > 0
                                 ? say_count(noted, phrases("report", "%n readings, %1 withdrawn", "%n reading, %1 withdrawn"), say_number(withdrawn))
                                 : say_count(noted, phrases("report", "%n readings", "%n reading"));
    const auto first = std::ranges::find(record.readings, false, &Reading::withdrawn);
    Facts facts{{say(phrase("report", "run")), say(phrase("report", "%1, run %2"), record.unit.name, say_number(record.number))},
                {say(phrase("report", "kind")), say_run_kind(record.run.kind)},
                {say(phrase("report", "began")),
                 first == record.readings.end() ? Message() : Message(format_iso8601(first->values.time_ms, record.run.time_zone))},
                {say(phrase("report", "started full")), full_words(record.run.started_full)},
                {say(phrase("report", "ended")), say_run_end(record.run.end)},
                {say(phrase("report", "load")), record.run.load},
                {say(phrase("report", "ambient")), number(record.run.ambient_c, "°C")},
                {say(phrase("report", "time zone")), record.run.time_zone},
                {say(phrase("report", "meter")), record.meter ? Message(record.meter->name) : stated({})},
                {say(phrase("report", "second meter")), record.second_meter ? Message(record.second_meter->name) : Message()},
                {say(phrase("report", "noted")), readings}};
    for (const auto& [key, value] : record.run.extra) facts.push_back({key, value});
    return facts;
}

/// A table with a column for each thing and a row for each fact that one of them states.
void add_facts(ReportBuilder& builder, const Phrase& title, const std::vector<Facts>& things) {
    for (std::size_t from = 0; from < things.size(); from += most_things) {
        const std::size_t to = std::min(things.size(), from + most_things);
        Table table;
        table.title = say(title);
        std::vector<Message> heads;
        for (std::size_t t = from; t < to; ++t)
            for (const Fact& fact : things[t])
                if (std::ranges::find(heads, fact.head) == heads.end()) heads.push_back(fact.head);
        for (const Message& head : heads) {
            std::vector<TableCell> row{head};
            bool any = false;
            for (std::size_t t = from; t < to; ++t) {
                const auto fact = std::ranges::find(things[t], head, &Fact::head);
                row.emplace_back(fact == things[t].end() ? Message() : fact->text);
                any = any || (fact != things[t].end() && !fact->text.empty());
            }
            if (!any) continue;
            if (table.columns.empty()) { // the first fact names the things
                for (std::size_t c = 0; c < row.size(); ++c)
                    table.columns.push_back({c == 0 ? "fact" : "thing" + std::to_string(c), std::get<Message>(row[c]), {}, Content::text, 0});
                continue;
            }
            table.rows.push_back(std::move(row));
        }
        builder.table(table);
    }
}

} // namespace

void add_measured_with(ReportBuilder& builder, const std::vector<ReportedRun>& runs) {
    std::vector<Facts> units, meters, each_run;
    std::vector<std::string> seen;
    const auto is_new = [&seen](const std::string& record) {
        if (std::ranges::find(seen, record) != seen.end()) return false;
        seen.push_back(record);
        return true;
    };
    for (const ReportedRun& run : runs) {
        const RunRecord& record = *run.record;
        if (is_new("unit " + record.unit.uuid.text())) units.push_back(unit_facts(record.unit));
        for (const auto* meter : {&record.meter, &record.second_meter})
            if (*meter && is_new("meter " + (*meter)->uuid.text())) meters.push_back(meter_facts(**meter));
        each_run.push_back(run_facts(run));
    }
    if (!builder.own_affairs)
        for (std::vector<Facts>* things : {&units, &meters})
            for (Facts& facts : *things) std::erase_if(facts, [](const Fact& fact) { return fact.own; });
    builder.chapter(say(phrase("report", "What was measured, and with what")));
    add_facts(builder, units.size() == 1 ? phrase("report", "Unit") : phrase("report", "Units"), units);
    if (meters.empty()) builder.paragraph(say(phrase("report", "No meter is stated, so delivered energy can have no interval.")));
    add_facts(builder, meters.size() == 1 ? phrase("report", "Meter") : phrase("report", "Meters"), meters);
    add_facts(builder, each_run.size() == 1 ? phrase("report", "Run") : phrase("report", "Runs"), each_run);
}

} // namespace ullage
