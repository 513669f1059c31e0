// SPDX-License-Identifier: GPL-3.0-or-later
// Amendments, withdrawals and restorations of readings, and the end of every report.
#include "base/number.h"
#include "formats/report/inside/report_method.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/safety_words.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

std::string number_text(const std::optional<double>& value, const char* unit, const NumberForm& form) {
    return value ? form.apply(exact_text(*value)) + ' ' + unit : std::string("none");
}

std::string quoted(const std::string& remark) { return remark.empty() ? "none" : "“" + remark + "”"; }

std::string mark_words(const std::optional<MarkKind>& mark) { return mark ? std::string(mark_text(*mark)) : "none"; }

/// "gauge 71 % → 17 %; withdrawn".
std::string change_text(const ReadingVersion& before, const ReadingVersion& after, const std::string& zone, const NumberForm& form,
                        bool own_affairs) {
    std::vector<std::string> parts;
    const ReadingValues &from = before.values, &to = after.values;
    if (from.time_ms != to.time_ms) parts.push_back("time " + format_iso8601(from.time_ms, zone) + " → " + format_iso8601(to.time_ms, zone));
    const auto number = [&](const char* what, const char* unit, std::optional<double> ReadingValues::*value) {
        if (from.*value != to.*value)
            parts.push_back(fmt::format("{} {} → {}", what, number_text(from.*value, unit, form), number_text(to.*value, unit, form)));
    };
    number("gauge", "%", &ReadingValues::gauge_percent);
    number("register", "Wh", &ReadingValues::register_wh);
    number("second register", "Wh", &ReadingValues::second_register_wh);
    number("meter", "W", &ReadingValues::meter_w);
    number("display", "W", &ReadingValues::display_w);
    if (from.mark != to.mark) parts.push_back("mark " + mark_words(from.mark) + " → " + mark_words(to.mark));
    if (from.remark != to.remark) parts.push_back(own_affairs ? "remark " + quoted(from.remark) + " → " + quoted(to.remark) : "remark changed");
    if (before.withdrawn != after.withdrawn) parts.emplace_back(after.withdrawn ? "withdrawn" : "restored");
    std::string text;
    for (const std::string& part : parts) text += (text.empty() ? "" : "; ") + part;
    return text.empty() ? "nothing that is stored here" : text;
}

/// What a reading said when it was entered: "gauge 71 %, register 345 Wh".
std::string first_text(const ReadingValues& values, const NumberForm& form, bool own_affairs) {
    std::string text;
    const auto add = [&text](const std::string& part) { text += (text.empty() ? "" : ", ") + part; };
    if (values.gauge_percent) add("gauge " + number_text(values.gauge_percent, "%", form));
    if (values.register_wh) add("register " + number_text(values.register_wh, "Wh", form));
    if (values.second_register_wh) add("second register " + number_text(values.second_register_wh, "Wh", form));
    if (values.meter_w) add("meter " + number_text(values.meter_w, "W", form));
    if (values.display_w) add("display " + number_text(values.display_w, "W", form));
    if (values.mark) add("mark " + mark_words(values.mark));
    if (!values.remark.empty() && own_affairs) add("remark " + quoted(values.remark));
    return text.empty() ? "time only" : text;
}

void add_rows(Table& table, const ReportedRun& run, const ReportBuilder& builder) {
    const NumberForm& form = builder.form;
    const std::string& zone = run.record->run.time_zone;
    for (const ReadingHistory& history : *run.histories)
        for (std::size_t v = 1; v < history.versions.size(); ++v) {
            const ReadingVersion &before = history.versions[v - 1], &after = history.versions[v];
            table.rows.push_back(
                {fmt::format("{}, run {}", run.record->unit.name, run.record->number), format_iso8601(history.versions.front().values.time_ms, zone),
                 first_text(history.versions.front().values, form, builder.own_affairs), change_text(before, after, zone, form, builder.own_affairs),
                 format_iso8601(after.written_ms, zone), after.reason.empty() ? "none given" : after.reason});
        }
}

} // namespace

void add_amendments(ReportBuilder& builder, const std::vector<ReportedRun>& runs) {
    builder.chapter("Amendments of readings");
    Table table;
    for (const auto& [key, title] : std::initializer_list<std::pair<const char*, const char*>>{
             {"run", "run"}, {"reading", "reading of"}, {"entered", "as entered"}, {"change", "change"}, {"when", "when"}, {"why", "reason"}})
        table.columns.push_back({key, title, {}, Content::text, 0});
    const auto unknown = std::ranges::count_if(runs, [](const ReportedRun& run) { return !run.histories; });
    for (const ReportedRun& run : runs)
        if (run.histories) add_rows(table, run, builder);
    if (unknown == static_cast<std::ptrdiff_t>(runs.size()))
        return builder.paragraph(
            "The readings come from run sheets, which carry no history: what was amended or withdrawn before they were written is not known.");
    if (table.rows.empty()) return builder.paragraph("No reading was amended or withdrawn.");
    builder.paragraph("A logbook keeps what an amendment replaced. Withdrawn readings take no part in any result.");
    builder.table(table);
}

void add_method(ReportBuilder& builder, const MeasureOptions& options) {
    builder.chapter("Method and sources");
    // Not put into the reader's number form: the points are those of clauses and titles.
    for (auto& [heading, text] : report_method(options)) builder.report.blocks.emplace_back(ReportParagraph{heading, text});
}

void add_cautions_and_about(ReportBuilder& builder) {
    builder.chapter("Cautions");
    ReportList cautions{safety_words()};
    cautions.items.emplace_back(specimen_words);
    builder.report.blocks.emplace_back(std::move(cautions));
    builder.chapter("About this report");
    builder.report.blocks.emplace_back(ReportParagraph{
        {},
        fmt::format("This report was {}. Its figures follow from the readings alone and can be worked out again from them.", builder.report.made)});
}

} // namespace ullage
