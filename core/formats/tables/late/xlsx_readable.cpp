// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/late/xlsx_readable.h"

#include "base/number.h"
#include "formats/tables/late/xlsx_book.h"
#include "formats/tables/table_printed.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double widest_column = 34, least_width = 9, line_points = 15; ///< characters; points
constexpr std::size_t sentence_width = 110;                             ///< characters of a line of sentences, over all columns

std::vector<std::size_t> readers_columns(const TableHead& table) {
    std::vector<std::size_t> columns;
    for (const std::string& key : table.for_readers) {
        const auto found = std::ranges::find(table.columns, key, &TableColumn::key);
        if (found != table.columns.end()) columns.push_back(static_cast<std::size_t>(found - table.columns.begin()));
    }
    if (columns.empty())
        for (std::size_t c = 0; c < table.columns.size(); ++c) columns.push_back(c);
    return columns;
}

std::string text_of(const PrintedCell& cell) { return cell.text() + (cell.note == 0 ? std::string() : fmt::format(" [{}]", cell.note)); }

/// Sentences below and above the table, broken into rows of the sheet: a cell does not flow over its neighbours once it is wrapped.
void put_sentence(Book& book, lxw_worksheet* sheet, lxw_row_t& row, const Message& sentence, bool soft) {
    for (const std::string& line : broken_head(one_line(sentence.text()), sentence_width))
        book.put_text(sheet, row++, 0, line, book.text(soft, false));
}

/// A number alone stays one that a spreadsheet counts with.
void put_printed(Book& book, lxw_worksheet* sheet, lxw_row_t row, lxw_col_t at, const std::string& text, bool right) {
    const Result<double> number = right ? parse_number(text) : Result<double>(Error{});
    if (!number) {
        book.put_text(sheet, row, at, text, book.text(false, !right, right));
        return;
    }
    const auto sign = text.find_first_of(".,");
    const int decimals = sign == std::string::npos ? 0 : static_cast<int>(text.size() - sign - 1);
    book.take_cell(sheet, worksheet_write_number(sheet, row, at, number.value(), book.number(decimals, false)));
}

} // namespace

bool has_readable_sheet(const TableHead& table) {
    // What a display showed is no result that would have to be set for readers.
    return std::ranges::any_of(table.columns, [](const TableColumn& column) { return column.content == TableColumn::Content::quantity; }) &&
           std::ranges::none_of(table.columns, &TableColumn::as_noted);
}

void fill_readable(Book& book, lxw_worksheet* sheet, const StreamedTable& table) {
    const std::vector<std::size_t> columns = readers_columns(table);
    RowPrinter printer(table);
    lxw_row_t row = 0;
    book.put_text(sheet, row++, 0, table.title.text(), book.title());
    for (const Message& sentence : table.answer) put_sentence(book, sheet, row, sentence, false);
    ++row;
    const lxw_row_t heads = row++;
    std::vector<double> widths(columns.size(), least_width);
    std::vector<std::string> notes; // of the columns that stand here
    table.each_row([&](const TableRow& cells) {
        std::vector<PrintedCell> printed = printer.print(cells);
        double height = 1;
        for (std::size_t at = 0; at < columns.size(); ++at) {
            PrintedCell& cell = printed[columns[at]];
            if (cell.note != 0) {
                const std::string& note = printer.notes()[static_cast<std::size_t>(cell.note) - 1];
                if (std::ranges::count(notes, note) == 0) notes.push_back(note);
                cell.note = static_cast<int>(std::ranges::find(notes, note) - notes.begin()) + 1;
            }
            const std::string text = text_of(cell);
            const bool right = printer.right()[columns[at]];
            const auto length = static_cast<double>(display_width(text)) + 2;
            widths[at] = std::max(widths[at], right ? length : std::min(length, widest_column));
            height = std::max(height, right ? 1 : std::ceil(length / widest_column));
            put_printed(book, sheet, row, static_cast<lxw_col_t>(at), text, right);
        }
        if (height > 1) worksheet_set_row(sheet, row, line_points * height, nullptr);
        ++row;
        return book.good();
    });
    double head_height = 1;
    for (std::size_t at = 0; at < columns.size(); ++at) {
        const std::string& head = printer.heads()[columns[at]];
        const auto column = static_cast<lxw_col_t>(at);
        widths[at] = std::max(widths[at], 2 + static_cast<double>(std::min<std::size_t>(display_width(head), 12)));
        head_height = std::max(head_height, static_cast<double>(broken_head(head, static_cast<std::size_t>(widths[at] * 0.8)).size()));
        worksheet_set_column(sheet, column, column, widths[at], nullptr);
        book.put_text(sheet, heads, column, head, book.head(printer.right()[columns[at]]));
    }
    worksheet_set_row(sheet, heads, line_points * head_height, nullptr);
    worksheet_freeze_panes(sheet, heads + 1, 1);
    worksheet_set_landscape(sheet);
    worksheet_fit_to_pages(sheet, 1, 0);
    ++row;
    for (std::size_t n = 0; n < notes.size(); ++n) put_sentence(book, sheet, row, fmt::format("[{}] {}", n + 1, notes[n]), true);
    for (const Message& remark : table.remarks) put_sentence(book, sheet, row, remark, true);
}

} // namespace ullage
