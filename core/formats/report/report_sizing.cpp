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

#include <fmt/format.h>

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

std::string unit_sentence(const SizedUnit& unit) {
    if (unit.days.kind == Kind::not_known) return fmt::format("{}: not known, {}", unit.unit.name, unit.days.reason.text());
    return fmt::format("{}: {} ({}); by the clock {}; units needed {}; rated output {}, peak output {}", unit.unit.name, value_text(unit.days),
                       sizing_basis_text(unit.basis), value_text(unit.lasts_h), units_needed_text(unit.units_needed), power_fit_text(unit.output),
                       power_fit_text(unit.peak));
}

void add_items(ReportBuilder& builder, const std::vector<std::string>& items) {
    ReportList list;
    for (const std::string& item : items) list.items.push_back(builder.form.apply(item));
    if (!list.items.empty()) builder.report.blocks.emplace_back(std::move(list));
}

void add_about(ReportBuilder& builder, const char* words) {
    builder.chapter("About this report");
    builder.report.blocks.emplace_back(ReportParagraph{{}, fmt::format("This report was {}. {}", builder.report.made, words)});
}

void add_units(ReportBuilder& builder, const Sizing& sizing) {
    builder.chapter("Units");
    const Table whole = sizing_table(sizing);
    builder.table(columns_with(whole, {"unit", "rated_wh", "basis", "days_of_autonomy", "lasts_h", "run_time_h", "days_output_left_on"}));
    Table needed = columns_with(whole, {"unit", "units_least", "units_sure", "output", "peak", "units_by_rule"});
    needed.remarks = whole.remarks;
    builder.table(needed);
    std::vector<std::string> remarks;
    for (const SizedUnit& unit : sizing.units) {
        for (const Message& remark : unit.remarks) remarks.push_back(unit.unit.name + ": " + remark + ".");
        const std::string& reason = unit.units_needed.reason;
        const bool said = std::ranges::any_of(unit.remarks, [&](const std::string& remark) { return remark.find(reason) != std::string::npos; });
        if (!reason.empty() && !said) remarks.push_back(unit.unit.name + ": " + reason + '.');
    }
    add_items(builder, remarks);
}

void add_courses(ReportBuilder& builder, const Sizing& sizing) {
    builder.chapter("State of charge from day to day");
    for (std::size_t i = 0; i < sizing.units.size(); ++i) {
        const std::string sentence = course_sentence(sizing, i);
        if (sentence.empty()) continue;
        builder.paragraph(sentence);
        builder.picture(report_picture_key("course", sizing.units[i].unit.uuid.text()),
                        sizing.units[i].unit.name + ": charge remaining by the hour, with the PV array and without, with 95 % "
                                                    "bands.");
    }
}

std::string outcome_words(const PvComparison& each) {
    const bool danger = each.outcome == PvComparison::Outcome::bad;
    return std::string(danger ? "✕ " : "") + std::string(pv_outcome_text(each.outcome));
}

} // namespace

Report sizing_report(const Sizing& sizing, const ReportOptions& options) {
    ReportBuilder builder({}, options);
    builder.form.names = {sizing.list.name};
    for (const SizedUnit& unit : sizing.units) builder.form.names.insert(builder.form.names.end(), {unit.unit.name, unit.unit.maker});
    for (const Appliance& appliance : sizing.list.appliances) builder.form.names.push_back(appliance.name);
    std::erase_if(builder.form.names, [](const std::string& name) { return name.find_first_not_of("0123456789., ") == std::string::npos; });
    builder.report.title = "Sizing for " + sizing.list.name;
    for (const SizedUnit& unit : sizing.units) builder.report.subtitle += (builder.report.subtitle.empty() ? "" : ", ") + unit.unit.name;

    builder.chapter("Summary");
    builder.paragraph(fmt::format("The load list {} takes {} a day, {} W when all of it runs and {} W at "
                                  "most. One full unit serves so many days of it:",
                                  sizing.list.name, energy_text(sizing.totals.daily_wh), fixed_text(sizing.totals.running_w, 0),
                                  fixed_text(sizing.totals.peak_w, 0)));
    std::vector<std::string> sentences;
    for (const SizedUnit& unit : sizing.units) sentences.push_back(unit_sentence(unit) + '.');
    add_items(builder, sentences);
    if (sizing.units.empty()) builder.paragraph("There is no unit to size.");
    builder.paragraph(std::string(specimen_words));
    add_units(builder, sizing);
    add_courses(builder, sizing);
    builder.chapter("PV array and battery by rule");
    Table rules = sizing_rules_table(sizing);
    for (auto& row : rules.rows) row.back() = builder.form.apply(std::get<std::string>(row.back()));
    builder.table(rules);
    builder.table(sizing_months_table(sizing));
    builder.chapter("The load list");
    Table list = columns_with(load_list_table(sizing.list), {"name", "how_many", "power_w", "hours_per_day", "night_hours", "daily_wh"});
    builder.table(list);
    builder.chapter("What is assumed");
    add_items(builder, texts(sizing.remarks));
    builder.chapter("Method and sources");
    for (auto& [heading, text] : sizing_table(sizing).method) builder.report.blocks.emplace_back(ReportParagraph{heading, text});
    builder.chapter("Cautions");
    add_items(builder, texts(sizing_cautions()));
    add_about(builder, "Its figures follow from the drains of each unit, the load list and the stated "
                       "choices, and can be worked out again from them.");
    return std::move(builder.report);
}

Report pv_report(const PvSheetText& sheet, const PvCheck& check, const ReportOptions& options) {
    ReportBuilder builder({}, options);
    for (const std::string& name : {sheet.sheet.name, sheet.sheet.module, sheet.unit})
        if (name.find_first_not_of("0123456789., ") != std::string::npos) builder.form.names.push_back(name);
    const PvSheet& data = sheet.sheet;
    builder.report.title = "PV input check" + (data.name.empty() ? std::string() : ": " + data.name);
    builder.report.subtitle = fmt::format("{}{}{} in series, {} parallel", sheet.unit.empty() ? "" : "PV input of " + sheet.unit + "; ",
                                          data.module.empty() ? "" : data.module + ", ", data.series, data.parallel);
    builder.chapter("Verdict");
    const bool danger = is_danger(check.verdict);
    ReportFindings verdict;
    verdict.items.push_back({danger                             ? Weight::fault
                             : check.verdict == PvVerdict::fits ? Weight::note
                                                                : Weight::doubt,
                             (danger ? "DANGER: " : "") + check.verdict_text, builder.form.apply(check.headline.text())});
    builder.report.blocks.emplace_back(std::move(verdict));
    builder.paragraph(check.suggestion.text());
    if (check.conductor_a)
        builder.paragraph(fmt::format("Conductors, and fuses where needed, of each string: for at least {} A "
                                      "(1.25 × 1.25 × short-circuit current, NEC 690.8).",
                                      fixed_text(*check.conductor_a, 1)));
    if (!check.string_fuses.empty()) builder.paragraph(check.string_fuses.text());
    builder.chapter("Comparisons");
    Table table;
    table.columns = {{"title", "comparison", {}, Content::text, 0}, {"value", "string or array", {}, Content::number, 1},
                     {"limit", "limit", {}, Content::number, 1},    {"margin", "margin", {}, Content::number, 1},
                     {"outcome", "outcome", {}, Content::text, 0},  {"sentence", "based on", {}, Content::text, 0}};
    for (const PvComparison& each : check.comparisons) {
        const auto cell = [&each](const char* key, const std::optional<double>& value) {
            return value ? known(key, each.unit, *value, std::nullopt, Kind::measured, "from stated figures")
                         : not_known(key, each.unit, "not stated");
        };
        table.rows.push_back({each.title.text(), cell("value", each.value), cell("limit", each.limit), cell("margin", each.margin),
                              outcome_words(each), builder.form.apply(each.sentence.text())});
    }
    builder.table(table);
    builder.picture(std::string(report_pv_key), "Voltage of the string against cell temperature, with the limits of the PV input.");
    builder.chapter("What was stated");
    Table stated;
    stated.columns = {{"what", "what", {}, Content::text, 0}, {"value", "value", {}, Content::text, 0}};
    for (const PvKey& key : pv_keys())
        if (std::string value = key.text(sheet); !value.empty()) stated.rows.push_back({std::string(key.help), std::move(value)});
    builder.table(stated);
    builder.chapter("What is assumed");
    add_items(builder, texts(check.assumptions));
    builder.chapter("Cautions");
    add_items(builder, texts(pv_cautions()));
    add_about(builder, "It is arithmetic on stated values, not a design.");
    return std::move(builder.report);
}

} // namespace ullage
