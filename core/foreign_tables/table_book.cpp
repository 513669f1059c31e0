// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_book.h"

#include "base/number.h"
#include "foreign_tables/inside/sheet_filler.h"

#include <algorithm>
#include <cctype>

namespace ullage {

namespace {

constexpr std::string_view zip_magic = "PK\x03\x04";
constexpr std::string_view compound_magic = "\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1";
constexpr std::size_t html_head_bytes = 4096;

/// HTML that is a file, or what a program puts on the clipboard; a text with a stray tag in it is none.
bool begins_as_html(std::string_view bytes) {
    std::string head(bytes.substr(0, html_head_bytes));
    std::ranges::transform(head, head.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    const std::string_view text = trimmed(head);
    const auto first = text.find_first_not_of("\r\n\xEF\xBB\xBF");
    if (first == std::string_view::npos || text[first] != '<') return false;
    return text.find("<table") != std::string_view::npos || text.find("<html") != std::string_view::npos ||
           text.find("<!doctype html") != std::string_view::npos || text.find("<meta") != std::string_view::npos;
}

Result<TableBook> read_any(std::string_view bytes, const std::string& where, char delimiter) {
    if (bytes.empty())
        return Error{Failure::bad_input, say(phrase("foreign_tables", "there is nothing in it")), where,
                     say(phrase("foreign_tables", "choose a table of readings"))};
    if (bytes.starts_with(compound_magic))
        return Error{Failure::bad_input, say(phrase("foreign_tables", "the workbook has a password, or is of the old form .xls")), where,
                     say(phrase("foreign_tables", "save it as XLSX or ODS without a password, or copy its cells and paste them"))};
    const bool packed = bytes.starts_with(zip_magic);
    if (!packed && !begins_as_html(bytes)) return read_delimited(bytes, where, delimiter);
    const auto read = (packed ? packed_book : html_book).get();
    return read ? read.value()(bytes, where) : read.error();
}

} // namespace

std::size_t TableSheet::width() const {
    std::size_t widest = 0;
    for (const auto& row : rows) widest = std::max(widest, row.size());
    return widest;
}

const GridCell& TableSheet::at(std::size_t row, std::size_t column) const {
    static const GridCell nothing;
    return row < rows.size() && column < rows[row].size() ? rows[row][column] : nothing;
}

bool SheetFiller::put(std::size_t row, std::size_t column, std::string_view text, bool typed) {
    text = trimmed(text);
    if (text.empty()) return true;
    if (row >= most_table_rows || column >= most_table_columns) return false;
    auto& rows = sheet_.rows;
    if (row >= rows.size()) rows.resize(row + 1);
    auto& cells = rows[row];
    if (column >= cells.size()) {
        const std::size_t more = column + 1 - cells.size();
        if (more > cells_left_) return false;
        cells_left_ -= more;
        cells.resize(column + 1);
    }
    cells[column] = {std::string(text), typed};
    return true;
}

Error too_large_table(const std::string& where) {
    return {Failure::bad_input,
            say(phrase("foreign_tables", "the table is larger than %1 rows, %2 columns or %3 cells"), say_number(most_table_rows),
                say_number(most_table_columns), say_number(most_table_cells)),
            where, say(phrase("foreign_tables", "import the log of a meter with Run, Import log; of another table keep the part with the readings"))};
}

Result<TableBook> read_table_book(std::string_view bytes, const std::string& where, char delimiter) {
    Result<TableBook> book = read_any(bytes, where, delimiter);
    if (!book) return book;
    std::erase_if(book.value().sheets, [](const TableSheet& sheet) { return sheet.rows.empty(); });
    if (book.value().sheets.empty())
        return Error{Failure::bad_input, say(phrase("foreign_tables", "no cell of it holds anything")), where,
                     say(phrase("foreign_tables", "choose a table of readings"))};
    return book;
}

} // namespace ullage
