// SPDX-License-Identifier: GPL-3.0-or-later
// Amendments, withdrawals and restorations of readings, and the end of every report.
#include "base/number.h"
#include "formats/report/inside/report_method.h"
#include "formats/report/inside/report_parts.h"
#include "formats/text/safety_words.h"
#include "model/history_reason.h"

#include <algorithm>

namespace ullage {

namespace {

using Content = TableColumn::Content;

Message none() { return say(phrase("report", "none")); }

Message number_or_none(const std::optional<double>& value, const char* unit, const NumberForm& form) {
    return value ? Message(form.apply(say_digits(exact_text(*value)).text()) + ' ' + unit) : none();
}

Message quoted(const std::string& remark) { return remark.empty() ? none() : say(phrase("report", "“%1”"), remark); }

Message mark_or_none(const std::optional<MarkKind>& mark) { return mark ? say_mark(*mark) : none(); }

/// A number that a reading may note, as one that was changed and as one that was entered.
struct NotedNumber {
    std::optional<double> ReadingValues::*value;
    const char* unit;
    Phrase changed, entered;
};
constexpr NotedNumber noted_numbers[] = {
    {&ReadingValues::gauge_percent, "%", phrase("report", "gauge %1 → %2"), phrase("report", "gauge %1")},
    {&ReadingValues::register_wh, "Wh", phrase("report", "register %1 → %2"), phrase("report", "register %1")},
    {&ReadingValues::second_register_wh, "Wh", phrase("report", "second register %1 → %2"), phrase("report", "second register %1")},
    {&ReadingValues::meter_w, "W", phrase("report", "meter %1 → %2"), phrase("report", "meter %1")},
    {&ReadingValues::display_w, "W", phrase("report", "display %1 → %2"), phrase("report", "display %1")}};

/// "gauge 71 % → 17 %; withdrawn".
Message change_words(const ReadingVersion& before, const ReadingVersion& after, const std::string& zone, const NumberForm& form, bool own_affairs) {
    std::vector<Message> parts;
    const ReadingValues &from = before.values, &to = after.values;
    if (from.time_ms != to.time_ms)
        parts.push_back(say(phrase("report", "time %1 → %2"), format_iso8601(from.time_ms, zone), format_iso8601(to.time_ms, zone)));
    for (const auto& [value, unit, changed, entered] : noted_numbers)
        if (from.*value != to.*value) parts.push_back(say(changed, number_or_none(from.*value, unit, form), number_or_none(to.*value, unit, form)));
    if (from.mark != to.mark) parts.push_back(say(phrase("report", "mark %1 → %2"), mark_or_none(from.mark), mark_or_none(to.mark)));
    if (from.remark != to.remark)
        parts.push_back(own_affairs ? say(phrase("report", "remark %1 → %2"), quoted(from.remark), quoted(to.remark))
                                    : say(phrase("report", "remark changed")));
    if (before.withdrawn != after.withdrawn)
        parts.push_back(after.withdrawn ? say(phrase("report", "withdrawn")) : say(phrase("report", "restored")));
    return parts.empty() ? say(phrase("report", "nothing that is stored here")) : say_joined(parts, "; ");
}

/// What a reading said when it was entered: "gauge 71 %, register 345 Wh".
Message first_words(const ReadingValues& values, const NumberForm& form, bool own_affairs) {
    std::vector<Message> parts;
    for (const auto& [value, unit, changed, entered] : noted_numbers)
        if (values.*value) parts.push_back(say(entered, number_or_none(values.*value, unit, form)));
    if (values.mark) parts.push_back(say(phrase("report", "mark %1"), mark_or_none(values.mark)));
    if (!values.remark.empty() && own_affairs) parts.push_back(say(phrase("report", "remark %1"), quoted(values.remark)));
    return parts.empty() ? say(phrase("report", "time only")) : say_joined(parts, ", ");
}

void add_rows(Table& table, const ReportedRun& run, const ReportBuilder& builder) {
    const NumberForm& form = builder.form;
    const std::string& zone = run.record->run.time_zone;
    for (const ReadingHistory& history : *run.histories)
        for (std::size_t v = 1; v < history.versions.size(); ++v) {
            const ReadingVersion &before = history.versions[v - 1], &after = history.versions[v];
            table.rows.push_back({say(phrase("report", "%1, run %2"), run.record->unit.name, say_number(run.record->number)),
                                  Message(format_iso8601(history.versions.front().values.time_ms, zone)),
                                  first_words(history.versions.front().values, form, builder.own_affairs),
                                  change_words(before, after, zone, form, builder.own_affairs), Message(format_iso8601(after.written_ms, zone)),
                                  after.reason.empty() ? say(phrase("report", "none given")) : say_reason(after.reason)});
        }
}

} // namespace

void add_amendments(ReportBuilder& builder, const std::vector<ReportedRun>& runs) {
    builder.chapter(say(phrase("report", "Amendments of readings")));
    Table table;
    table.columns = {{"run", say(phrase("report", "run")), {}, Content::text, 0},
                     {"reading", say(phrase("report", "reading of")), {}, Content::text, 0},
                     {"entered", say(phrase("report", "as entered")), {}, Content::text, 0},
                     {"change", say(phrase("report", "change")), {}, Content::text, 0},
                     {"when", say(phrase("report", "when")), {}, Content::text, 0},
                     {"why", say(phrase("report", "reason")), {}, Content::text, 0}};
    const auto unknown = std::ranges::count_if(runs, [](const ReportedRun& run) { return !run.histories; });
    for (const ReportedRun& run : runs)
        if (run.histories) add_rows(table, run, builder);
    if (unknown == static_cast<std::ptrdiff_t>(runs.size()))
        return builder.paragraph(
            say(phrase("report", "The readings come from run sheets, which carry no history: what was amended or withdrawn before "
                                 "they were written is not known.")));
    if (table.rows.empty()) return builder.paragraph(say(phrase("report", "No reading was amended or withdrawn.")));
    builder.paragraph(say(phrase("report", "A logbook keeps what an amendment replaced. Withdrawn readings take no part in any result.")));
    builder.table(table);
}

void add_method(ReportBuilder& builder, const MeasureOptions& options) {
    builder.chapter(say(phrase("report", "Method and sources")));
    // Not put into the reader's number form: the points are those of clauses and titles.
    for (auto& [heading, text] : report_method(options)) builder.report.blocks.emplace_back(ReportParagraph{heading, text});
}

void add_cautions_and_about(ReportBuilder& builder) {
    builder.chapter(say(phrase("report", "Cautions")));
    ReportList cautions{texts(safety_words())};
    cautions.items.push_back(say(specimen_words));
    builder.report.blocks.emplace_back(std::move(cautions));
    builder.chapter(say(phrase("report", "About this report")));
    builder.report.blocks.emplace_back(
        ReportParagraph{{},
                        say(phrase("report", "This report was %1. Its figures follow from the readings alone and can be worked out again from them."),
                            builder.report.made)});
}

} // namespace ullage
