// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "formats/tables/inside/table_flat.h"
#include "formats/tables/inside/table_formats.h"
#include "formats/tables/late/table_xlsx_chart.h"
#include "formats/tables/late/workbook_check.h"
#include "formats/tables/late/xlsx_book.h"
#include "formats/tables/late/xlsx_readable.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <cstdio>
#include <sstream>
#include <utility>

namespace ullage {

namespace {

using Content = TableColumn::Content;

constexpr std::size_t longest_name = 31; // characters in the name of a sheet

/// A column of the sheet: a flat one, or the local date and time of a column of instants as a number that a spreadsheet counts with.
struct SheetColumn {
    FlatColumn flat;
    bool date = false;

    [[nodiscard]] bool right() const { return date || is_number(flat.part); }
    [[nodiscard]] std::string head() const { return date ? std::string(say(phrase("tables", "%1, local"), flat.title)) : flat.title; }
};

std::vector<SheetColumn> sheet_columns(const TableHead& table) {
    std::vector<SheetColumn> columns;
    for (FlatColumn& flat : flat_columns(table)) {
        const bool instant = flat.part == Part::text && table.columns[flat.column].instant;
        columns.push_back({flat});
        if (instant) columns.push_back({std::move(flat), true});
    }
    return columns;
}

constexpr double line_height = 15; // points

double width_of(const SheetColumn& column) {
    if (column.date) return 18;
    switch (column.flat.part) {
    case Part::text: return 20;
    case Part::value: return 14;
    case Part::lower:
    case Part::upper:
    case Part::kind: return 12;
    case Part::unit: return 10;
    case Part::reason: return 32;
    }
    return 12;
}

/// Of a title what a sheet may be called: none of []:*?/\ and no apostrophe at either end.
std::string allowed_name(const Message& title) {
    std::string name = one_line(title.text());
    std::ranges::replace_if(
        name, [](char c) { return std::string_view("[]:*?/\\'").find(c) != std::string_view::npos; }, ' ');
    return std::string(trimmed(clipped_utf16(trimmed(name), longest_name)));
}

std::string in_small_letters(std::string name) {
    std::ranges::transform(name, name.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return name;
}

/// What the sheets beside that of the table are called in every language, as others may find them by their names.
constexpr const char *data_name = "Data", *method_name = "Method", *chart_name = "Chart";

/// A sheet's name may be neither empty nor "History" nor that of another sheet.
std::string sheet_name(const Message& title) {
    std::string name = allowed_name(title);
    const std::string taken[] = {"", "history", in_small_letters(data_name), in_small_letters(method_name), in_small_letters(chart_name)};
    return std::ranges::count(taken, in_small_letters(name)) > 0 ? std::string("Table") : name;
}

/// What the rounding rule of JCGM 100:2008 7.2.6 allows, else what the column says.
int decimals_of(const TableColumn& column, const Quantity& quantity) {
    const auto half_width = finite(quantity.half_width());
    return half_width && *half_width > 0 ? std::clamp(decimals_for(*half_width), 0, 10) : std::clamp(column.decimals, 0, 10);
}

/// The wall clock of an ISO 8601 instant as a date. Dates before 1900 have no number in a sheet; they stay texts.
void put_date(Book& book, lxw_worksheet* sheet, lxw_row_t row, lxw_col_t at, const TableCell& cell) {
    const auto* text = std::get_if<Message>(&cell);
    lxw_datetime date{};
    if (!text ||
        std::sscanf(text->text().c_str(), "%4d-%2d-%2dT%2d:%2d:%lf", &date.year, &date.month, &date.day, &date.hour, &date.min, &date.sec) != 6)
        return;
    if (date.year >= 1900) book.take_cell(sheet, worksheet_write_datetime(sheet, row, at, &date, book.date()));
}

void put_cell(Book& book, lxw_worksheet* sheet, lxw_row_t row, lxw_col_t at, const TableHead& table, const TableRow& cells,
              const SheetColumn& column) {
    const TableColumn& of = table.columns[column.flat.column];
    const TableCell& cell = cell_at(cells, column.flat.column);
    if (column.date) {
        put_date(book, sheet, row, at, cell);
        return;
    }
    const bool soft = column.flat.part != Part::value && column.flat.part != Part::text;
    const FlatCell flat = flat_cell(table, cells, column.flat);
    // A number that is not there leaves its cell empty: the sheet format knows no NaN.
    if (const auto* number = std::get_if<double>(&flat))
        book.take_cell(sheet, worksheet_write_number(sheet, row, at, *number, book.number(decimals_of(of, std::get<Quantity>(cell)), soft)));
    else if (const auto* text = std::get_if<std::string>(&flat)) book.put_text(sheet, row, at, *text, book.text(soft, false));
}

/// Lines of the tallest head, broken at blanks. A sheet made by a program keeps one line for it unless told.
double head_lines(const std::vector<SheetColumn>& columns) {
    constexpr double bold_share = 0.85; // bold letters are wider than those that a column's width counts
    double most = 1;
    for (const SheetColumn& column : columns) {
        const double room = bold_share * width_of(column);
        double lines = 1, used = 0;
        std::istringstream words(column.head());
        for (std::string word; words >> word;) {
            const auto length = static_cast<double>(word.size());
            if (used > 0 && used + 1 + length > room) {
                ++lines;
                used = 0;
            }
            used += (used > 0 ? 1 : 0) + length;
        }
        most = std::max(most, lines);
    }
    return most;
}

/// Whether the table is printed as wide as a page, so that it can still be read.
bool fits_on_a_page(const std::vector<SheetColumn>& columns) {
    constexpr double widest_on_a_page = 220; // characters
    double width = 0;
    for (const SheetColumn& column : columns) width += width_of(column);
    return width <= widest_on_a_page;
}

/// On paper: landscape, the head on each page; as wide as the page, or else the first column on each page.
void set_up_print(lxw_worksheet* sheet, bool as_wide_as_page) {
    worksheet_set_landscape(sheet);
    worksheet_repeat_rows(sheet, 0, 0);
    if (as_wide_as_page) worksheet_fit_to_pages(sheet, 1, 0);
    else worksheet_repeat_columns(sheet, 0, 0);
}

/// The chart stands below the table; where the table goes over several pages side by side on a sheet of its own, as the column that is repeated
/// on each page would bring its edge along and the pages would cut it.
void put_chart(lxw_workbook* book, lxw_worksheet* sheet, const ChartSource& source, bool below, lxw_row_t row) {
    if (!below) {
        sheet = workbook_add_worksheet(book, chart_name);
        if (!sheet) return;
        worksheet_set_landscape(sheet);
        worksheet_fit_to_pages(sheet, 1, 1);
        row = 0;
    }
    add_interval_chart(book, sheet, source, row);
}

void fill_method(Book& book, lxw_worksheet* sheet, const TableHead& table) {
    constexpr std::size_t text_width = 100; // characters
    worksheet_set_column(sheet, 0, 0, 28, nullptr);
    worksheet_set_column(sheet, 1, 1, text_width, nullptr);
    worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    book.put_text(sheet, 0, 0, table.title.text(), book.head(false));
    lxw_row_t row = 1;
    for (const auto& [heading, text] : table.method) {
        book.put_text(sheet, row, 0, heading.text(), book.text(false, true));
        book.put_text(sheet, row, 1, text.text(), book.text(false, true));
        // Readers of the sheet that do not fit rows to wrapped texts would draw them over each other.
        worksheet_set_row(sheet, row, line_height * static_cast<double>(1 + text.text().size() / (text_width * 9 / 10)), nullptr);
        ++row;
    }
}

/// What the chart asks of the rows: which quantity columns have a number, and which one below zero.
class ChartNumbers {
public:
    explicit ChartNumbers(const TableHead& table) : any_(table.columns.size()), below_zero_(table.columns.size()) {
        for (std::size_t c = 0; c < table.columns.size(); ++c)
            if (table.columns[c].content == Content::quantity) columns_.push_back(c);
    }

    void take(const TableRow& row) {
        for (const std::size_t c : columns_) {
            const auto* quantity = std::get_if<Quantity>(&cell_at(row, c));
            if (!quantity) continue;
            for (const auto& number : {finite(quantity->value), finite(quantity->lower), finite(quantity->upper)}) {
                if (number) any_[c] = true;
                if (number && *number < 0) below_zero_[c] = true;
            }
        }
    }

    /// The first quantity column with a number in it, as columns of the sheet; categories are the first text column.
    [[nodiscard]] std::optional<ChartSource> source(const StreamedTable& table, const std::vector<SheetColumn>& columns,
                                                    const std::string& sheet) const {
        ChartSource source;
        source.sheet = sheet;
        source.last_row = table.row_count;
        for (std::size_t s = 0; s < columns.size(); ++s) {
            const FlatColumn& flat = columns[s].flat;
            if (flat.part == Part::text && !source.category) source.category = s;
            if (flat.part != Part::value || !any_[flat.column]) continue;
            source.value = s;
            source.lower = s + (has_own_units(table.columns[flat.column]) ? 2 : 1);
            source.upper = source.lower + 1;
            source.title = flat.title;
            source.below_zero = below_zero_[flat.column];
            return source;
        }
        return std::nullopt;
    }

private:
    std::vector<std::size_t> columns_;
    std::vector<bool> any_, below_zero_;
};

/// From so many rows on a workbook is written row by row: its cells would take some kilobytes of memory each row.
constexpr std::size_t most_rows_in_memory = 10'000;

/// All fields of a table in full: a head and a row of the sheet for each of the table.
void fill_data(Book& book, lxw_worksheet* sheet, const StreamedTable& table, const std::vector<SheetColumn>& columns, const std::string& name,
               bool remarks_too) {
    worksheet_freeze_panes(sheet, 1, columns.empty() || columns.front().flat.part != Part::text ? 0 : 1);
    worksheet_set_row(sheet, 0, line_height * head_lines(columns), nullptr);
    for (std::size_t s = 0; s < columns.size(); ++s) {
        const auto at = static_cast<lxw_col_t>(s);
        worksheet_set_column(sheet, at, at, width_of(columns[s]), nullptr);
        book.put_text(sheet, 0, at, columns[s].head(), book.head(columns[s].right()));
    }
    lxw_row_t row = 1;
    ChartNumbers numbers(table);
    table.each_row([&](const TableRow& cells) {
        for (std::size_t s = 0; s < columns.size(); ++s) put_cell(book, sheet, row, static_cast<lxw_col_t>(s), table, cells, columns[s]);
        numbers.take(cells);
        ++row;
        return book.good();
    });
    const bool as_wide_as_page = fits_on_a_page(columns);
    set_up_print(sheet, as_wide_as_page);
    ++row;
    // Not in a column that each page repeats.
    if (remarks_too)
        for (const Message& remark : table.remarks) book.put_text(sheet, row++, as_wide_as_page ? 0 : 1, remark.text(), book.text(true, false));
    if (const auto source = numbers.source(table, columns, name)) put_chart(book.get(), sheet, *source, as_wide_as_page, row + 1);
}

Result<void> make_xlsx_table(const StreamedTable& table, const std::string& path) {
    const std::vector<SheetColumn> columns = sheet_columns(table);
    if (table.row_count + table.remarks.size() + 2 > LXW_ROW_MAX || columns.size() > LXW_COL_MAX)
        return Error{Failure::refused,
                     say(phrase("tables", "a sheet of a workbook holds %1 rows and %2 columns, the table has %3 and %4"), say_number(LXW_ROW_MAX),
                         say_number(LXW_COL_MAX), say_number(table.row_count + table.remarks.size() + 2), say_number(columns.size())),
                     path, say(phrase("tables", "export it as csv"))};
    const bool long_table = table.row_count > most_rows_in_memory;
    const bool readable_too = !long_table && has_readable_sheet(table);
    Book book(path, long_table);
    if (!book.get())
        return Error{Failure::io, say(phrase("tables", "there is not enough memory for the workbook")), path,
                     say(phrase("tables", "export it as csv"))};
    const std::string title = sheet_name(table.title);
    const std::string name = readable_too ? std::string(data_name) : title;
    std::vector<lxw_worksheet*> sheets;
    if (readable_too) sheets.push_back(workbook_add_worksheet(book.get(), title.c_str()));
    for (const std::string& each : {name, std::string(method_name)}) sheets.push_back(workbook_add_worksheet(book.get(), each.c_str()));
    if (std::ranges::count(sheets, nullptr) > 0)
        return Error{Failure::io, say(phrase("tables", "the workbook cannot be made")), path, say(phrase("tables", "export it as csv"))};
    if (readable_too) fill_readable(book, sheets.front(), table);
    fill_data(book, sheets[sheets.size() - 2], table, columns, name, !readable_too);
    fill_method(book, sheets.back(), table);

    std::vector<std::size_t> cells;
    for (const lxw_worksheet* sheet : sheets) cells.push_back(book.cells(sheet));
    errno = 0;
    const lxw_error error = book.close();
    if (error == LXW_NO_ERROR) return check_workbook(path, cells);
    if (errno == ENOSPC || errno == EDQUOT)
        return Error{Failure::disk_full, say(phrase("tables", "there is no room left on the disk")), path,
                     say(phrase("tables", "make room or choose another place"))};
    return Error{Failure::io, say(phrase("tables", "cannot be written: %1"), lxw_strerror(error)), path,
                 say(phrase("tables", "check that the folder exists and may be written to"))};
}

const LateEntry xlsx_entry(xlsx_table, &make_xlsx_table);

} // namespace

} // namespace ullage
