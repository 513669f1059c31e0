// SPDX-License-Identifier: GPL-3.0-or-later
// The reports of what a unit means for a household: a sizing, a PV input check.
#include "formats/report/report_sizing.h"

#include "base/number.h"
#include "base/quantity.h"
#include "formats/report/inside/report_parts.h"
#include "formats/results/load_list_table.h"
#include "formats/results/sizing_output.h"
#include "formats/sheets/load_list_file.h"
#include "formats/text/safety_words.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

/// These columns of a table, by key.
Table columns_with(const Table& whole, std::initializer_list<std::string_view> keys) {
    Table part;
    part.rows.resize(whole.rows.size());
    for (const std::string_view key : keys) {
        const auto at = static_cast<std::size_t>(std::ranges::find(whole.columns, key, &TableColumn::key) - whole.columns.begin());
        part.columns.push_back(whole.columns[at]);
        for (std::size_t row = 0; row < whole.rows.size(); ++row) part.rows[row].push_back(whole.rows[row][at]);
    }
    return part;
}

Message unit_sentence(const SizedUnit& unit) {
    if (unit.days.kind == Kind::not_known) return say(phrase("report", "%1: not known, %2."), unit.unit.name, unit.days.reason);
    return say(phrase("report", "%1: %2 (%3); by the clock %4; units needed %5; rated output %6, peak output %7."), unit.unit.name,
               say_value(unit.days), say_sizing_basis(unit.basis), say_value(unit.lasts_h), say_units_needed(unit.units_needed),
               say_power_fit(unit.output), say_power_fit(unit.peak));
}

void add_about(ReportBuilder& builder, const Phrase& words) {
    builder.chapter(say(phrase("report", "About this report")));
    builder.report.blocks.emplace_back(ReportParagraph{{}, say(words, builder.report.made)});
}

void add_units(ReportBuilder& builder, const Sizing& sizing) {
    builder.chapter(say(phrase("report", "Units")));
    const Table whole = sizing_table(sizing);
    builder.table(columns_with(whole, {"unit", "rated_wh", "basis", "days_of_autonomy", "lasts_h", "run_time_h", "days_output_left_on"}));
    Table needed = columns_with(whole, {"unit", "units_least", "units_sure", "output", "peak", "units_by_rule"});
    needed.remarks = whole.remarks;
    builder.table(needed);
    std::vector<Message> remarks;
    for (const SizedUnit& unit : sizing.units) {
        const auto add = [&](const Message& remark) { remarks.push_back(say(phrase("report", "%1: %2."), unit.unit.name, remark)); };
        for (const Message& remark : unit.remarks) add(remark);
        const Message& reason = unit.units_needed.reason;
        const auto holds_it = [&reason](const Message& remark) { return remark.english().find(reason.english()) != std::string::npos; };
        if (!reason.empty() && std::ranges::none_of(unit.remarks, holds_it)) add(reason);
    }
    builder.list(remarks);
}

void add_courses(ReportBuilder& builder, const Sizing& sizing) {
    builder.chapter(say(phrase("report", "State of charge from day to day")));
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        const Message sentence = course_sentence(sizing, i);
        if (sentence.empty()) continue;
        builder.paragraph(sentence);
        builder.picture(
            report_picture_key("course", sizing.units[i].unit.uuid.text()),
            say(phrase("report", "%1: charge remaining by the hour, with the PV array and without, with 95 % bands."), sizing.units[i].unit.name));
    }
}

Message outcome_words(const PvComparison& each) {
    const Message outcome = say_pv_outcome(each.outcome);
    return each.outcome == PvComparison::Outcome::bad ? Message("✕ ") + outcome : outcome;
}

} // namespace

Report sizing_report(const Sizing& sizing, const ReportOptions& options) {
    ReportBuilder builder({}, options);
    builder.form.names = {sizing.list.name};
    for (const SizedUnit& unit : sizing.units) builder.form.names.insert({unit.unit.name, unit.unit.maker});
    for (const Appliance& appliance : sizing.list.appliances) builder.form.names.insert(appliance.name);
    std::erase_if(builder.form.names, [](const std::string& name) { return name.find_first_not_of("0123456789., ") == std::string::npos; });
    builder.report.title = say(phrase("report", "Sizing for %1"), sizing.list.name);
    std::vector<Message> names;
    for (const SizedUnit& unit : sizing.units) names.emplace_back(unit.unit.name);
    builder.report.subtitle = say_joined(names, ", ");

    builder.chapter(say(phrase("report", "Summary")));
    builder.paragraph(
        say(phrase("report", "The load list %1 takes %2 a day, %3 W when all of it runs and %4 W at most. One full unit serves so many days of it:"),
            sizing.list.name, say_energy(sizing.totals.daily_wh), say_number(sizing.totals.running_w, 0), say_number(sizing.totals.peak_w, 0)));
    std::vector<Message> sentences;
    for (const SizedUnit& unit : sizing.units) sentences.push_back(unit_sentence(unit));
    builder.list(sentences);
    if (sizing.units.empty()) builder.paragraph(say(phrase("report", "There is no unit to size.")));
    builder.paragraph(say(specimen_words));
    add_units(builder, sizing);
    add_courses(builder, sizing);
    builder.chapter(say(phrase("report", "PV array and battery by rule")));
    Table rules = sizing_rules_table(sizing);
    for (auto& row : rules.rows) row.back() = Message(builder.text(std::get<Message>(row.back())));
    builder.table(rules);
    builder.table(sizing_months_table(sizing));
    builder.chapter(say(phrase("report", "The load list")));
    Table list = columns_with(load_list_table(sizing.list), {"name", "how_many", "power_w", "hours_per_day", "night_hours", "daily_wh"});
    builder.table(list);
    builder.chapter(say(phrase("report", "What is assumed")));
    builder.list(sizing.remarks);
    builder.chapter(say(phrase("report", "Method and sources")));
    for (auto& [heading, text] : sizing_table(sizing).method) builder.report.blocks.emplace_back(ReportParagraph{heading, text});
    builder.chapter(say(phrase("report", "Cautions")));
    const auto cautions = sizing_cautions();
    builder.list({cautions.begin(), cautions.end()});
    add_about(builder, phrase("report",
                              "This report was %1. Its figures follow from the drains of each unit, the load list and the stated choices, and can be "
                              "worked out again from them."));
    return std::move(builder.report);
}

Report pv_report(const PvSheetText& sheet, const PvCheck& check, const ReportOptions& options) {
    ReportBuilder builder({}, options);
    for (const std::string& name : {sheet.sheet.name, sheet.sheet.module, sheet.unit})
        if (name.find_first_not_of("0123456789., ") != std::string::npos) builder.form.names.insert(name);
    const PvSheet& data = sheet.sheet;
    builder.report.title = data.name.empty() ? say(phrase("report", "PV input check")) : say(phrase("report", "PV input check: %1"), data.name);
    Message subtitle = say(phrase("report", "%1 in series, %2 parallel"), say_number(data.series), say_number(data.parallel));
    if (!data.module.empty()) subtitle = say_joined({data.module, subtitle}, ", ");
    if (!sheet.unit.empty()) subtitle = say_joined({say(phrase("report", "PV input of %1"), sheet.unit), subtitle}, "; ");
    builder.report.subtitle = subtitle;
    builder.chapter(say(phrase("report", "Verdict")));
    const bool danger = is_danger(check.verdict);
    ReportFindings verdict;
    verdict.items.push_back({danger                             ? Weight::fault
                             : check.verdict == PvVerdict::fits ? Weight::note
                                                                : Weight::doubt,
                             danger ? say(phrase("report", "DANGER: %1"), check.verdict_text) : check.verdict_text, builder.text(check.headline)});
    builder.report.blocks.emplace_back(std::move(verdict));
    builder.paragraph(check.suggestion);
    if (check.conductor_a)
        builder.paragraph(
            say(phrase("report", "Conductors, and fuses where needed, of each string: for at least %1 A (1.25 × 1.25 × short-circuit current, NEC "
                                 "690.8)."),
                say_number(*check.conductor_a, 1)));
    builder.paragraph(check.string_fuses);
    builder.chapter(say(phrase("report", "Comparisons")));
    Table table;
    table.columns = {{"title", say(phrase("report", "comparison")), {}, Content::text, 0},
                     {"value", say(phrase("report", "string or array")), {}, Content::number, 1},
                     {"limit", say(phrase("report", "limit")), {}, Content::number, 1},
                     {"margin", say(phrase("report", "margin")), {}, Content::number, 1},
                     {"outcome", say(phrase("report", "outcome")), {}, Content::text, 0},
                     {"sentence", say(phrase("report", "based on")), {}, Content::text, 0}};
    for (const PvComparison& each : check.comparisons) {
        const auto cell = [&each](const char* key, const std::optional<double>& value) {
            return value ? known(key, each.unit, *value, std::nullopt, Kind::measured, say(phrase("report", "from stated figures")))
                         : not_known(key, each.unit, say(phrase("report", "not stated")));
        };
        table.rows.push_back({each.title, cell("value", each.value), cell("limit", each.limit), cell("margin", each.margin), outcome_words(each),
                              Message(builder.text(each.sentence))});
    }
    builder.table(table);
    builder.picture(std::string(report_pv_key),
                    say(phrase("report", "Voltage of the string against cell temperature, with the limits of the PV input.")));
    builder.chapter(say(phrase("report", "What was stated")));
    Table stated;
    stated.columns = {{"what", say(phrase("report", "what")), {}, Content::text, 0}, {"value", say(phrase("report", "value")), {}, Content::text, 0}};
    for (const PvKey& key : pv_keys())
        if (std::string value = key.text(sheet); !value.empty()) stated.rows.push_back({say(key.help), Message(std::move(value))});
    builder.table(stated);
    builder.chapter(say(phrase("report", "What is assumed")));
    builder.list(check.assumptions);
    builder.chapter(say(phrase("report", "Cautions")));
    const auto cautions = pv_cautions();
    builder.list({cautions.begin(), cautions.end()});
    add_about(builder, phrase("report", "This report was %1. It is arithmetic on stated values, not a design."));
    return std::move(builder.report);
}

} // namespace ullage
