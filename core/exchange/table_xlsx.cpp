// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "exchange/table_formats.h"
#include "exchange/table_printed.h"
#include "exchange/table_xlsx_chart.h"
#include "exchange/table_unicode.h"

#include <xlsxwriter.h>

#include <algorithm>
#include <cerrno>
#include <cmath>
#include <map>
#include <utility>

namespace ullage {

namespace {

using Content = TableColumn::Content;

constexpr std::size_t longest_text = 32'767; // characters in a cell, in UTF-16 code units
constexpr std::size_t longest_name = 31;     // characters in the name of a sheet
constexpr lxw_color_t soft_ink = 0x66717B;

/// Which part of a cell a column of the sheet shows.
enum class Part { text, value, unit, lower, upper, kind, reason };

struct SheetColumn {
    std::size_t column = 0; ///< of the table
    Part part = Part::text;
    std::string head;
};

std::vector<SheetColumn> sheet_columns(const Table& table) {
    std::vector<SheetColumn> columns;
    for (std::size_t c = 0; c < table.columns.size(); ++c) {
        const TableColumn& column = table.columns[c];
        const std::string title = one_line(column.title);
        if (column.content == Content::text) {
            columns.push_back({c, Part::text, title});
            continue;
        }
        columns.push_back({c, Part::value, column_head(column)});
        if (has_own_units(column)) columns.push_back({c, Part::unit, title + ", unit"});
        if (column.content == Content::number) continue;
        columns.push_back({c, Part::lower, title + ", lower"});
        columns.push_back({c, Part::upper, title + ", upper"});
        columns.push_back({c, Part::kind, title + ", kind"});
        columns.push_back({c, Part::reason, title + ", reason"});
    }
    return columns;
}

bool is_number(Part part) { return part == Part::value || part == Part::lower || part == Part::upper; }

double width_of(Part part) {
    switch (part) {
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

/// A sheet's name may be neither empty nor "History" nor that of the other sheet, may hold none of []:*?/\ and neither begin nor end
/// with an apostrophe.
std::string sheet_name(const std::string& title) {
    std::string name = one_line(title);
    std::ranges::replace_if(name, [](char c) { return std::string_view("[]:*?/\\'").find(c) != std::string_view::npos; }, ' ');
    name = std::string(trimmed(clipped_utf16(trimmed(name), longest_name)));
    std::string lower = name;
    std::ranges::transform(lower, lower.begin(), [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return name.empty() || lower == "history" || lower == "method" ? "Table" : name;
}

/// The workbook under construction; libxlsxwriter owns sheets and formats and frees them with the workbook.
class Book {
public:
    explicit Book(const std::string& path) : book_(workbook_new(path.c_str())) {}
    ~Book() {
        if (book_) (void)workbook_close(book_);
    }
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;

    [[nodiscard]] lxw_workbook* get() const { return book_; }
    lxw_error close() { return workbook_close(std::exchange(book_, nullptr)); }

    lxw_format* head(bool right) {
        lxw_format*& format = heads_[right];
        if (format) return format;
        format = workbook_add_format(book_);
        format_set_bold(format);
        format_set_text_wrap(format);
        format_set_bottom(format, LXW_BORDER_THIN);
        format_set_align(format, LXW_ALIGN_VERTICAL_BOTTOM);
        format_set_align(format, right ? LXW_ALIGN_RIGHT : LXW_ALIGN_LEFT);
        return format;
    }
    lxw_format* number(int decimals, bool soft) {
        lxw_format*& format = numbers_[{decimals, soft}];
        if (format) return format;
        format = workbook_add_format(book_);
        format_set_num_format(format, ("0" + (decimals > 0 ? "." + std::string(decimals, '0') : "")).c_str());
        if (soft) format_set_font_color(format, soft_ink);
        return format;
    }
    lxw_format* text(bool soft, bool wrapped) {
        lxw_format*& format = texts_[{soft, wrapped}];
        if (format) return format;
        format = workbook_add_format(book_);
        if (soft) format_set_font_color(format, soft_ink);
        if (wrapped) format_set_text_wrap(format);
        format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
        return format;
    }

private:
    lxw_workbook* book_;
    std::map<bool, lxw_format*> heads_;
    std::map<std::pair<int, bool>, lxw_format*> numbers_;
    std::map<std::pair<bool, bool>, lxw_format*> texts_;
};

/// Texts always go in as strings, so that none is taken for a formula or a link.
void put_text(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, std::string_view text, lxw_format* format) {
    const std::string clean = clean_text(text);
    const std::string cell(clipped_utf16(clean, longest_text));
    if (!cell.empty()) worksheet_write_string(sheet, row, column, cell.c_str(), format);
}

/// What the rounding rule of JCGM 100:2008 7.2.6 allows, else what the column says.
int decimals_of(const TableColumn& column, const Quantity& quantity) {
    const auto half_width = finite(quantity.half_width());
    return half_width && *half_width > 0 ? std::min(decimals_for(*half_width), 10) : std::clamp(column.decimals, 0, 10);
}

void put_part(Book& book, lxw_worksheet* sheet, lxw_row_t row, lxw_col_t at, const TableColumn& column, const TableCell& cell,
              Part part) {
    const bool soft = part != Part::value && part != Part::text;
    const auto* quantity = std::get_if<Quantity>(&cell);
    if (!quantity) {
        if (part == Part::text || part == Part::value)
            put_text(sheet, row, at, std::get<std::string>(cell), book.text(false, false));
        return;
    }
    if (is_number(part)) {
        const auto number = finite(part == Part::lower   ? quantity->lower
                                   : part == Part::upper ? quantity->upper
                                                         : quantity->value);
        // A number that is not there leaves its cell empty: the sheet format knows no NaN.
        if (number) worksheet_write_number(sheet, row, at, *number, book.number(decimals_of(column, *quantity), soft));
        return;
    }
    const std::string text = part == Part::unit     ? quantity->unit
                             : part == Part::kind   ? std::string(kind_text(quantity->kind))
                             : part == Part::reason ? quantity->reason
                                                    : quantity_text(*quantity, column.decimals);
    put_text(sheet, row, at, text, book.text(soft, false));
}

void fill_method(Book& book, lxw_worksheet* sheet, const Table& table) {
    worksheet_set_column(sheet, 0, 0, 28, nullptr);
    worksheet_set_column(sheet, 1, 1, 100, nullptr);
    put_text(sheet, 0, 0, table.title, book.head(false));
    lxw_row_t row = 1;
    for (const auto& [heading, text] : table.method) {
        put_text(sheet, row, 0, heading, book.text(false, true));
        put_text(sheet, row, 1, text, book.text(false, true));
        ++row;
    }
}

/// The first quantity column with a number in it, as columns of the sheet; categories are the first text column.
std::optional<ChartSource> chart_source(const Table& table, const std::vector<SheetColumn>& columns, const std::string& sheet) {
    ChartSource source;
    source.sheet = sheet;
    source.last_row = table.rows.size();
    for (std::size_t s = 0; s < columns.size(); ++s) {
        const TableColumn& column = table.columns[columns[s].column];
        if (columns[s].part == Part::text && !source.category) source.category = s;
        if (columns[s].part != Part::value || column.content != Content::quantity) continue;
        bool any = false;
        for (const auto& row : table.rows) {
            const auto* quantity = std::get_if<Quantity>(&cell_at(row, columns[s].column));
            if (!quantity) continue;
            for (const auto& number : {finite(quantity->value), finite(quantity->lower), finite(quantity->upper)}) {
                any = any || number.has_value();
                source.below_zero = source.below_zero || (number && *number < 0);
            }
        }
        if (!any) continue;
        source.value = s;
        source.lower = s + (has_own_units(column) ? 2 : 1);
        source.upper = source.lower + 1;
        source.title = columns[s].head;
        return source;
    }
    return std::nullopt;
}

} // namespace

Result<void> make_xlsx_table(const Table& table, const std::string& path) {
    const std::vector<SheetColumn> columns = sheet_columns(table);
    if (table.rows.size() + table.remarks.size() + 2 > LXW_ROW_MAX || columns.size() > LXW_COL_MAX)
        return Error{Failure::refused, "the table is larger than a sheet can be", path, "export it as csv"};
    Book book(path);
    if (!book.get()) return Error{Failure::io, "there is not enough memory for the workbook", path, "export it as csv"};
    const std::string name = sheet_name(table.title);
    lxw_worksheet* sheet = workbook_add_worksheet(book.get(), name.c_str());
    lxw_worksheet* method = workbook_add_worksheet(book.get(), "Method");
    if (!sheet || !method) return Error{Failure::io, "the workbook cannot be made", path, "export it as csv"};
    worksheet_freeze_panes(sheet, 1, columns.empty() || columns.front().part != Part::text ? 0 : 1);

    for (std::size_t s = 0; s < columns.size(); ++s) {
        const auto at = static_cast<lxw_col_t>(s);
        worksheet_set_column(sheet, at, at, width_of(columns[s].part), nullptr);
        put_text(sheet, 0, at, columns[s].head, book.head(is_number(columns[s].part)));
        for (std::size_t r = 0; r < table.rows.size(); ++r)
            put_part(book, sheet, static_cast<lxw_row_t>(r + 1), at, table.columns[columns[s].column],
                     cell_at(table.rows[r], columns[s].column), columns[s].part);
    }
    auto row = static_cast<lxw_row_t>(table.rows.size() + 2);
    for (const std::string& remark : table.remarks) put_text(sheet, row++, 0, remark, book.text(true, false));
    if (const auto source = chart_source(table, columns, name)) add_interval_chart(book.get(), sheet, *source, row + 1);
    fill_method(book, method, table);

    errno = 0;
    const lxw_error error = book.close();
    if (error == LXW_NO_ERROR) return {};
    if (errno == ENOSPC || errno == EDQUOT)
        return Error{Failure::disk_full, "there is no room left on the disk", path, "make room or choose another place"};
    return Error{Failure::io, std::string("cannot be written: ") + lxw_strerror(error), path,
                 "check that the folder exists and may be written to"};
}

} // namespace ullage
