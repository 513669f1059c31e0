// SPDX-License-Identifier: GPL-3.0-or-later
// What was measured, with which meters, in which runs.
#include "base/number.h"
#include "base/quantity.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/meter_points_text.h"
#include "model/tags.h"

#include <fmt/format.h>

#include <algorithm>
#include <string_view>

namespace ullage {

namespace {

using Content = TableColumn::Content;

/// What is known of one unit, meter or run: the same heads for each, empty where not stated.
using Facts = std::vector<std::pair<std::string, std::string>>;

constexpr std::size_t most_things = 4; ///< side by side on a page

std::string number(const NumberForm& form, std::optional<double> value, const char* unit) {
    return value ? form.apply(exact_text(*value)) + ' ' + unit : std::string();
}

std::string stated(const std::string& text) { return text.empty() ? "not stated" : text; }

/// What only the tester has a use for.
bool is_own_affair(std::string_view head) { return head == "price paid" || head == "tags" || head == "remark"; }

Facts unit_facts(const Unit& unit, const NumberForm& form) {
    std::string pv;
    for (const std::string& part : {number(form, unit.pv_max_v, "V"), number(form, unit.pv_max_a, "A"), number(form, unit.pv_max_w, "W")})
        if (!part.empty()) pv += (pv.empty() ? "" : ", ") + part;
    if (unit.pv_start_v) pv += (pv.empty() ? "from " : ", from ") + number(form, unit.pv_start_v, "V");
    if (unit.pv_short_circuit_a) pv += (pv.empty() ? "" : ", ") + number(form, unit.pv_short_circuit_a, "A") + " short circuit";
    return {{"unit", unit.name},
            {"maker", unit.maker},
            {"model", unit.model},
            {"serial number", unit.serial_number},
            {"cells", unit.chemistry},
            {"purchased", unit.purchased},
            {"charge cycles before the first run", unit.cycles_before ? form.apply(exact_text(*unit.cycles_before)) : std::string()},
            {"rated energy (claim)", stated(unit.rated_energy_wh ? form.apply(energy_text(*unit.rated_energy_wh)) : std::string())},
            {"rated output (claim)", number(form, unit.rated_output_w, "W")},
            {"peak output (claim)", number(form, unit.peak_output_w, "W")},
            {"PV input limits (claim)", pv},
            {"charge time (claim)", number(form, unit.charge_time_h, "h")},
            {"price", number(form, unit.price, unit.currency.c_str())},
            {"price paid", number(form, unit.paid_price, unit.currency.c_str())},
            {"mass", number(form, unit.mass_kg, "kg")},
            {"warranty", number(form, unit.warranty_years, "years")},
            {"gauge step", number(form, unit.gauge_step_percent, unit.gauge_step_percent == 1 ? "percentage point" : "percentage points")},
            {"tags", tags_text(unit.tags, ", ")},
            {"remark", unit.remark}};
}

Facts meter_facts(const Meter& meter, const NumberForm& form) {
    return {{"meter", meter.name},
            {"register step", stated(number(form, meter.step_wh, "Wh"))},
            {"error limit", meter.limit_percent ? "± " + number(form, meter.limit_percent, "% of the energy") : stated({})},
            {"register span", number(form, meter.span_wh, "Wh")},
            {"correction", meter.points.empty() ? form.apply(exact_text(meter.correction)) : std::string()},
            {"points (W, correction, U in %, k)", form.apply(meter_points_text(meter.points))},
            {"class", meter.accuracy_class + (meter.standard.empty() ? "" : " (" + meter.standard + ")")},
            {"range from", number(form, meter.range_low_w, "W")},
            {"range to", number(form, meter.range_high_w, "W")},
            {"certificate", meter.certificate.number},
            {"date of the certificate", meter.certificate.date},
            {"laboratory", meter.certificate.laboratory},
            {"valid until", meter.certificate.valid_until},
            {"remark", meter.remark}};
}

Facts run_facts(const ReportedRun& run, const NumberForm& form) {
    const RunRecord& record = *run.record;
    long noted = 0, withdrawn = 0;
    for (const Reading& reading : record.readings) ++(reading.withdrawn ? withdrawn : noted);
    std::string readings = count_text(noted, "reading", "readings");
    if (withdrawn > 0) readings += fmt::format(", {} withdrawn", withdrawn);
    const auto first = std::ranges::find(record.readings, false, &Reading::withdrawn);
    Facts facts{{"run", fmt::format("{}, run {}", record.unit.name, record.number)},
                {"kind", std::string(run_kind_text(record.run.kind))},
                {"began", first == record.readings.end() ? std::string() : format_iso8601(first->values.time_ms, record.run.time_zone)},
                {"started full", record.run.started_full ? (*record.run.started_full ? "yes" : "no") : "not stated"},
                {"ended", std::string(run_end_text(record.run.end))},
                {"load", record.run.load},
                {"ambient", number(form, record.run.ambient_c, "°C")},
                {"time zone", record.run.time_zone},
                {"meter", record.meter ? record.meter->name : "not stated"},
                {"second meter", record.second_meter ? record.second_meter->name : ""},
                {"noted", readings}};
    for (const auto& [key, value] : record.run.extra) facts.emplace_back(key, value);
    return facts;
}

/// A table with a column for each thing and a row for each fact that one of them states.
void add_facts(ReportBuilder& builder, const char* title, const std::vector<Facts>& things) {
    for (std::size_t from = 0; from < things.size(); from += most_things) {
        const std::size_t to = std::min(things.size(), from + most_things);
        Table table;
        table.title = title;
        std::vector<std::string> heads;
        for (std::size_t t = from; t < to; ++t)
            for (const auto& [head, text] : things[t])
                if (std::ranges::find(heads, head) == heads.end()) heads.push_back(head);
        for (const std::string& head : heads) {
            std::vector<TableCell> row{head};
            bool any = false;
            for (std::size_t t = from; t < to; ++t) {
                const auto fact = std::ranges::find(things[t], head, &Facts::value_type::first);
                row.emplace_back(fact == things[t].end() ? std::string() : fact->second);
                any = any || (fact != things[t].end() && !fact->second.empty());
            }
            if (!any) continue;
            if (table.columns.empty()) { // the first fact names the things
                for (std::size_t c = 0; c < row.size(); ++c)
                    table.columns.push_back({c == 0 ? "fact" : "thing" + std::to_string(c), std::get<std::string>(row[c]), {}, Content::text, 0});
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
        if (is_new("unit " + record.unit.uuid.text())) units.push_back(unit_facts(record.unit, builder.form));
        for (const auto* meter : {&record.meter, &record.second_meter})
            if (*meter && is_new("meter " + (*meter)->uuid.text())) meters.push_back(meter_facts(**meter, builder.form));
        each_run.push_back(run_facts(run, builder.form));
    }
    if (!builder.own_affairs)
        for (std::vector<Facts>* things : {&units, &meters})
            for (Facts& facts : *things) std::erase_if(facts, [](const auto& fact) { return is_own_affair(fact.first); });
    builder.chapter("What was measured, and with what");
    add_facts(builder, units.size() == 1 ? "Unit" : "Units", units);
    if (meters.empty()) builder.paragraph("No meter is stated, so delivered energy can have no interval.");
    add_facts(builder, meters.size() == 1 ? "Meter" : "Meters", meters);
    add_facts(builder, each_run.size() == 1 ? "Run" : "Runs", each_run);
}

} // namespace ullage
