// SPDX-License-Identifier: GPL-3.0-or-later
// What the columns of a section are, by head, content and answers.
#include "foreign_tables/inside/table_heads.h"

#include "base/plain_text.h"

#include <algorithm>
#include <map>
#include <set>

namespace ullage {

namespace {

constexpr std::size_t rows_looked_at = 400;

/// What the cells of a column are, as counts.
struct TableContent {
    std::size_t filled = 0, numbers = 0, dates = 0, clocks = 0, moments = 0, words = 0;
    std::size_t four_digits = 0; ///< of the numbers, those that may be 0530
    std::map<std::string, std::size_t> units;
    [[nodiscard]] bool mostly(std::size_t count) const { return 2 * count > filled; }
};

TableContent content_of(const TableSheet& sheet, const TableSection& section, std::size_t column) {
    TableContent content;
    const std::size_t end = std::min(section.end, section.data + rows_looked_at);
    for (std::size_t row = section.data; row < end; ++row) {
        const GridCell& cell = sheet.at(row, column);
        if (cell.text.empty() || says_nothing(cell.text)) continue;
        ++content.filled;
        const auto date = date_in_cell(cell.text, false);
        auto number = number_in_cell(cell, {',', '.'});
        if (!number) number = number_in_cell(cell, {'.', ','});
        if (date && date->clock) ++content.moments;
        else if (date) ++content.dates;
        else if (number) {
            ++content.numbers;
            if (!number->unit.empty()) ++content.units[number->unit];
            if (!cell.typed && cell.text.size() == 4 && clock_in_cell(cell.text)) ++content.four_digits;
        } else if (clock_in_cell(cell.text)) ++content.clocks;
        else ++content.words;
    }
    return content;
}

TableRole role_of_unit(const std::string& unit) {
    if (unit == "%") return TableRole::gauge;
    const auto known = unit_named(unit);
    if (known && known->quantity == LogQuantity::energy) return TableRole::energy;
    if (known && known->quantity == LogQuantity::power) return TableRole::power;
    return known && known->quantity == LogQuantity::time ? TableRole::elapsed : TableRole::unused;
}

/// A role by what the cells hold, of a column whose head says nothing.
void judge_by_content(const TableContent& content, bool has_head, TableReading::Column& column) {
    if (content.filled == 0) return;
    if (content.mostly(content.moments)) column.role = TableRole::time, column.why = say(phrase("foreign_tables", "its cells are dates with a time"));
    else if (content.mostly(content.clocks)) column.role = TableRole::time, column.why = say(phrase("foreign_tables", "its cells are times of day"));
    else if (content.mostly(content.dates)) column.role = TableRole::date, column.why = say(phrase("foreign_tables", "its cells are dates"));
    else if (content.mostly(content.numbers)) {
        const auto unit = std::ranges::max_element(content.units, {}, [](const auto& entry) { return entry.second; });
        if (unit == content.units.end()) return;
        column.role = role_of_unit(unit->first);
        column.why = say(phrase("foreign_tables", "its cells name %1"), unit->first);
    } else if (content.mostly(content.words) && (!has_head || column.title.empty())) {
        column.role = TableRole::remark, column.why = say(phrase("foreign_tables", "its cells are words"));
    }
}

/// What the head says gives way to what the cells plainly are.
void correct_by_content(const TableContent& content, TableReading::Column& column) {
    if (content.filled == 0) return;
    if (holds_numbers(column.role) && content.mostly(content.words)) {
        column.role = TableRole::remark;
        column.why = say(phrase("foreign_tables", "`%1` has words in its cells"), column.title);
    } else if (column.role == TableRole::date && content.mostly(content.moments)) {
        column.role = TableRole::time;
        column.why = say(phrase("foreign_tables", "its cells are dates with a time"));
    } else if (column.role == TableRole::date && content.mostly(content.clocks)) {
        column.role = TableRole::time;
        column.why = say(phrase("foreign_tables", "its cells are times of day"));
    } else if (column.role == TableRole::time && content.mostly(content.dates)) {
        column.role = TableRole::date;
        column.why = say(phrase("foreign_tables", "its cells are dates"));
    } else if ((column.role == TableRole::power || column.role == TableRole::energy || column.role == TableRole::second_energy) &&
               !content.units.empty()) {
        // `Meter` over cells such as 64 W is a power.
        const auto unit = std::ranges::max_element(content.units, {}, [](const auto& entry) { return entry.second; });
        const TableRole by_unit = role_of_unit(unit->first);
        if (by_unit == TableRole::energy && column.role == TableRole::second_energy) return;
        if (by_unit == TableRole::power || by_unit == TableRole::energy || by_unit == TableRole::gauge) {
            if (by_unit != column.role) column.why = say(phrase("foreign_tables", "its cells name %1"), unit->first);
            column.role = by_unit;
        }
    }
}

/// The role that a unit alone would give such a column.
TableRole kind_of(TableRole role) {
    if (role == TableRole::second_energy) return TableRole::energy;
    return role == TableRole::display_power ? TableRole::power : role;
}

const TableAnswers::Column* told(const TableAnswers& answers, std::size_t index) {
    const auto found = std::ranges::find(answers.columns, index, &TableAnswers::Column::index);
    return found == answers.columns.end() ? nullptr : &*found;
}

bool is_of_time(TableRole role) { return role == TableRole::time || role == TableRole::date || role == TableRole::elapsed; }
bool is_measured(TableRole role) { return role == TableRole::gauge || role == TableRole::energy; }

/// Columns part into blocks where the roles begin anew: time again, or the same two and more of gauge, register and power again.
void part_into_blocks(const std::vector<TableReading::Column>& columns, TableSection& section) {
    std::vector<std::size_t> begins{0};
    std::set<TableRole> seen;
    bool timed_anew = false;
    for (std::size_t c = 0; c < columns.size(); ++c) {
        const TableRole role = columns[c].role;
        if (role == TableRole::unused || role == TableRole::remark) continue;
        const bool measured = std::ranges::any_of(seen, is_measured);
        const bool begins_anew = measured && seen.contains(role) &&
                                 (is_of_time(role) || role == TableRole::run || role == TableRole::unit || (!timed_anew && holds_numbers(role)));
        if (begins_anew) {
            timed_anew = timed_anew || is_of_time(role);
            begins.push_back(c);
            seen.clear();
        }
        seen.insert(role);
    }
    if (begins.size() > 1 && !timed_anew) {
        // Blocks that share the time: each must hold the same measured roles, and two at least; else a role is merely named twice.
        std::set<std::set<TableRole>> kinds;
        for (std::size_t b = 0; b < begins.size(); ++b) {
            const std::size_t end = b + 1 < begins.size() ? begins[b + 1] : columns.size();
            std::set<TableRole> kind;
            for (std::size_t c = begins[b]; c < end; ++c)
                if (holds_numbers(columns[c].role)) kind.insert(columns[c].role);
            kinds.insert(kind);
        }
        if (kinds.size() != 1 || kinds.begin()->size() < 2) begins.resize(1);
    }
    for (std::size_t b = 0; b < begins.size(); ++b) {
        TableBlock block;
        block.first = begins[b];
        block.end = b + 1 < begins.size() ? begins[b + 1] : columns.size();
        section.blocks.push_back(std::move(block));
    }
    for (TableBlock& block : section.blocks) {
        const TableBlock& first = section.blocks.front();
        const bool timed = !block.of(TableRole::time, columns).empty() || !block.of(TableRole::elapsed, columns).empty();
        if (timed) continue;
        for (const TableRole role : {TableRole::time, TableRole::elapsed})
            if (const auto shared = first.of(role, columns); !shared.empty()) block.shared_time = shared.front();
        if (const auto shared = first.of(TableRole::date, columns); !shared.empty()) block.shared_date = shared.front();
    }
}

/// Names above the blocks, in the row over their head.
void title_blocks(const TableSheet& sheet, TableSection& section) {
    if (section.blocks.size() < 2 || !section.head || *section.head == 0) return;
    for (std::size_t up = *section.head; up-- > 0;) {
        if (sheet.rows[up].empty()) continue;
        for (TableBlock& block : section.blocks)
            for (std::size_t c = block.first; c < block.end && block.title.empty(); ++c) block.title = with_plain_blanks(sheet.at(up, c).text);
        return;
    }
}

void check_roles(const TableAnswers& answers, TableSection& section, TableReading& reading) {
    std::vector<TableReading::Column>& columns = section.columns;
    for (const TableBlock& block : section.blocks) {
        for (const TableRoleEntry& entry : table_roles()) {
            if (entry.role == TableRole::unused || entry.role == TableRole::remark) continue;
            std::vector<std::size_t> of = block.of(entry.role, columns);
            if (of.size() < 2) continue;
            // One that the user named goes before those that were detected.
            const bool named = std::ranges::any_of(of, [&](std::size_t c) { return told(answers, c) != nullptr; });
            if (named) {
                for (const std::size_t c : of)
                    if (!told(answers, c))
                        columns[c].role = TableRole::unused, columns[c].why = say(phrase("foreign_tables", "another column was named for it"));
                continue;
            }
            ask_once(reading, TableQuestion::columns,
                     say(phrase("foreign_tables", "%1 and %2 could both be the %3"), table_column_name(columns, of[0]),
                         table_column_name(columns, of[1]), say_table_role(entry.role)));
        }
        const auto has = [&](TableRole role) { return !block.of(role, columns).empty(); };
        if (!has(TableRole::time) && !has(TableRole::elapsed) && !block.shared_time)
            ask_once(reading, TableQuestion::columns, say(phrase("foreign_tables", "no column is known to hold the time")));
        if (!has(TableRole::gauge) && !has(TableRole::energy))
            ask_once(reading, TableQuestion::columns, say(phrase("foreign_tables", "no column is known to hold the gauge or the register")));
    }
}

} // namespace

std::vector<std::size_t> TableBlock::of(TableRole role, const std::vector<TableReading::Column>& columns) const {
    std::vector<std::size_t> found;
    for (std::size_t c = first; c < std::min(end, columns.size()); ++c)
        if (columns[c].role == role) found.push_back(c);
    return found;
}

Message table_column_name(const std::vector<TableReading::Column>& columns, std::size_t column) {
    const Message number = say_number(column + 1);
    return columns[column].title.empty() ? say(phrase("foreign_tables", "column %1"), number)
                                         : say(phrase("foreign_tables", "column %1 (`%2`)"), number, columns[column].title);
}

void resolve_columns(const TableSheet& sheet, const TableAnswers& answers, const std::vector<std::string>& titles, TableSection& section,
                     TableReading& reading) {
    std::vector<TableReading::Column>& columns = section.columns;
    columns.resize(std::max(sheet.width(), titles.size()));
    std::vector<TableContent> contents(columns.size());
    for (std::size_t c = 0; c < columns.size(); ++c) {
        TableReading::Column& column = columns[c];
        if (c < titles.size()) column.title = titles[c];
        contents[c] = content_of(sheet, section, c);
        const HeadMeaning meaning = meaning_of_head(column.title);
        column.role = meaning.role;
        column.unit = meaning.unit;
        column.why = meaning.why;
        if (!meaning.known) judge_by_content(contents[c], section.head.has_value(), column);
        else correct_by_content(contents[c], column);
        if (const TableAnswers::Column* named = told(answers, c)) {
            column.role = named->role;
            column.why = say(phrase("foreign_tables", "as you said"));
            if (!named->unit.empty()) column.unit = known_table_unit(named->unit).value_or(named->unit);
            else if (!column.unit.empty() && holds_numbers(column.role) && role_of_unit(column.unit) != kind_of(column.role)) column.unit.clear();
        }
    }
    // Numbers for times, and no date anywhere near: they count from the start.
    const bool dated = std::ranges::any_of(columns, [](const TableReading::Column& column) { return column.role == TableRole::date; });
    for (std::size_t c = 0; c < columns.size(); ++c)
        if (columns[c].role == TableRole::time && !dated && !told(answers, c) && contents[c].filled > 0 && contents[c].mostly(contents[c].numbers) &&
            !contents[c].mostly(contents[c].four_digits)) {
            columns[c].role = TableRole::elapsed;
            columns[c].why = say(phrase("foreign_tables", "its cells are plain numbers, so they count from the start"));
        }
    part_into_blocks(columns, section);
    for (std::size_t b = 0; b < section.blocks.size(); ++b)
        for (std::size_t c = section.blocks[b].first; c < section.blocks[b].end; ++c) columns[c].block = static_cast<int>(b);
    title_blocks(sheet, section);
    check_roles(answers, section, reading);
}

} // namespace ullage
