// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_reading.h"

#include "base/fingerprint.h"
#include "base/plain_text.h"
#include "foreign_tables/inside/table_heads.h"

#include <algorithm>

namespace ullage {

namespace {

/// Counts of what the cells say of their decimal sign, and an example of each.
struct DecimalCount {
    std::size_t points = 0, commas = 0;
    std::string open_point, open_comma;

    void take(const std::string& text) {
        switch (decimal_said_by(text)) {
        case DecimalSays::nothing: break;
        case DecimalSays::point: ++points; break;
        case DecimalSays::comma: ++commas; break;
        case DecimalSays::open_point:
            if (open_point.empty()) open_point = text;
            break;
        case DecimalSays::open_comma:
            if (open_comma.empty()) open_comma = text;
            break;
        }
    }
};

void settle_decimal(const DecimalCount& count, const TableAnswers& answers, TablePlan& plan, TableReading& reading) {
    char decimal = count.commas > count.points ? ',' : '.';
    const std::string& open = count.open_comma.empty() ? count.open_point : count.open_comma;
    if (answers.decimal) {
        decimal = *answers.decimal;
    } else if (count.points == 0 && count.commas == 0 && !open.empty()) {
        ask_once(reading, TableQuestion::decimal_sign,
                 say(count.open_comma.empty()
                         ? phrase("foreign_tables", "`%1` can be read in two ways: its point is the decimal sign, or parts the thousands")
                         : phrase("foreign_tables", "`%1` can be read in two ways: its comma is the decimal sign, or parts the thousands"),
                     open),
                 {"comma", "point"});
    } else if (count.points > 0 && count.commas > 0 && count.points < 10 * count.commas && count.commas < 10 * count.points) {
        ask_once(reading, TableQuestion::decimal_sign, say(phrase("foreign_tables", "some numbers have a point as decimal sign and some a comma")),
                 {"comma", "point"});
    }
    plan.writing = {decimal, decimal == ',' ? '.' : ','};
    if (decimal == ',' && !answers.decimal && count.commas > 0) note_once(reading, say(phrase("foreign_tables", "the decimal sign is a comma")));
}

/// What the dates of a table say of their order.
struct OrderCount {
    std::size_t day_first = 0, month_first = 0;
    std::string open;

    void take(const GridCell& cell, bool bare) {
        const auto date = date_in_cell(cell.text, bare);
        if (!date) return;
        const DateParts& parts = date->parts;
        if (parts.digits[0] == 0 || parts.digits[1] == 0 || parts.digits[0] == 4) return;
        const DateOrder own = order_of(parts);
        if (own == DateOrder::day_first || parts.part[0] > 12) ++day_first;
        else if (own == DateOrder::month_first || parts.part[1] > 12) ++month_first;
        else if (parts.part[0] != parts.part[1] && open.empty()) open = cell.text;
    }
};

} // namespace

void ask_once(TableReading& reading, TableQuestion about, const Message& words, std::vector<std::string> choices) {
    const auto same = std::ranges::find_if(reading.questions, [&](const OpenTableQuestion& question) {
        return question.about == about && (about != TableQuestion::columns || words == question.words);
    });
    if (same == reading.questions.end()) reading.questions.push_back({about, words, std::move(choices)});
}

void note_once(TableReading& reading, const Message& words) {
    if (std::ranges::find(reading.notes, words) == reading.notes.end()) reading.notes.push_back(words);
}

void settle_table_writing(const TableSheet& sheet, const TableAnswers& answers, TablePlan& plan, TableReading& reading) {
    DecimalCount decimals;
    OrderCount orders;
    for (const TableSection& section : plan.sections)
        for (std::size_t row = section.data; row < section.end; ++row) {
            const auto& cells = sheet.rows[row];
            const bool alone = std::ranges::count_if(cells, [](const GridCell& cell) { return !cell.text.empty(); }) == 1;
            for (std::size_t c = 0; c < std::min(cells.size(), section.columns.size()); ++c) {
                if (cells[c].typed || cells[c].text.empty()) continue;
                const TableRole role = section.columns[c].role;
                if (role == TableRole::date || role == TableRole::time || alone) orders.take(cells[c], role == TableRole::date);
                else if ((holds_numbers(role) || role == TableRole::elapsed) && cells[c].text.find(':') == std::string::npos)
                    decimals.take(with_plain_blanks(cells[c].text));
            }
        }
    if (!plan.rated_text.empty()) decimals.take(with_plain_blanks(plan.rated_text));
    settle_decimal(decimals, answers, plan, reading);
    if (answers.date_order) plan.date_order = *answers.date_order;
    else if (orders.day_first > 0 && orders.month_first == 0) plan.date_order = DateOrder::day_first;
    else if (orders.month_first > 0 && orders.day_first == 0) plan.date_order = DateOrder::month_first;
    else if (orders.day_first > 0 || !orders.open.empty())
        ask_once(reading, TableQuestion::date_order,
                 orders.open.empty() ? say(phrase("foreign_tables", "the dates may begin with the day or the month"))
                                     : say(phrase("foreign_tables", "`%1` may begin with the day or the month"), orders.open),
                 {"day-first", "month-first"});
    else plan.date_order = DateOrder::day_first; // the same day either way
    if (!answers.date_order && !orders.open.empty() && plan.date_order != DateOrder::unknown)
        note_once(reading, say(plan.date_order == DateOrder::day_first
                                   ? phrase("foreign_tables", "dates begin with the day, as one of them can be read in no other way")
                                   : phrase("foreign_tables", "dates begin with the month, as one of them can be read in no other way")));
}

TablePlan plan_table(const TableSheet& sheet, const TableAnswers& answers, TableReading& reading) {
    TablePlan plan;
    std::vector<std::string> titles;
    TableSection section;
    const auto close = [&](std::size_t end) {
        section.end = end;
        const bool holds_rows = std::any_of(sheet.rows.begin() + static_cast<std::ptrdiff_t>(section.data),
                                            sheet.rows.begin() + static_cast<std::ptrdiff_t>(end), [](const auto& row) { return !row.empty(); });
        if (!section.head || !holds_rows) return;
        resolve_columns(sheet, answers, titles, section, reading);
        plan.sections.push_back(section);
    };
    for (std::size_t row = 0; row < sheet.rows.size(); ++row) {
        if (row < section.data || !is_table_head(sheet, row, !section.head)) continue;
        if (section.head) close(row);
        else read_preface(sheet, row, reading, plan.rated_text);
        section = {};
        section.head = row;
        titles = head_titles(sheet, row, section.data);
    }
    close(sheet.rows.size());
    if (plan.sections.empty()) {
        section = {};
        section.end = sheet.rows.size();
        titles.clear();
        resolve_columns(sheet, answers, titles, section, reading);
        plan.sections.push_back(section);
        note_once(reading, say(phrase("foreign_tables", "the table has no row of heads; its columns are told by what they hold")));
    }
    const TableSection& first = plan.sections.front();
    reading.head_row = first.head ? static_cast<long>(*first.head) + 1 : 0;
    reading.columns = first.columns;
    std::string head;
    for (const TableReading::Column& column : first.columns) head += column.title + '\x1f';
    Fingerprint fingerprint;
    fingerprint.add(head);
    reading.signature = "table " + fingerprint.text();
    if (first.blocks.size() > 1)
        note_once(reading, say_count(first.blocks.size(), phrases("foreign_tables", "%n runs stand side by side", "%n run stands by itself")));
    if (!first.head) return plan;
    for (std::size_t s = 1; s < plan.sections.size(); ++s)
        note_once(reading, say(phrase("foreign_tables", "another head stands in row %1"), say_number(*plan.sections[s].head + 1)));
    return plan;
}

TableReading understand_table(const TableSheet& sheet, const TableAnswers& answers, const std::string& zone, UtcMs now_ms) {
    TableReading reading;
    TablePlan plan = plan_table(sheet, answers, reading);
    settle_table_writing(sheet, answers, plan, reading);
    take_rows(sheet, plan, answers, zone, now_ms, reading);
    if (sheet.formulas_without_value > 0)
        reading.notes.push_back(
            say_count(sheet.formulas_without_value,
                      phrases("foreign_tables",
                              "%n formulas have no value kept with them, so that their cells are empty; save the workbook once in its program",
                              "%n formula has no value kept with it, so that its cell is empty; save the workbook once in its program")));
    return reading;
}

} // namespace ullage
