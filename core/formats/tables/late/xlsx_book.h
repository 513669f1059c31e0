// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <xlsxwriter.h>

#include <cstddef>
#include <map>
#include <string>
#include <string_view>
#include <tuple>
#include <utility>

namespace ullage {

/// The workbook under construction; libxlsxwriter owns sheets and formats and frees them with the workbook.
class Book {
public:
    /// Its temporary files lie beside it, where they go when it is given up and where there is room if there is any for the workbook. With
    /// `row_by_row` its cells do not stay in memory: those of a row are written before any of the next.
    Book(const std::string& path, bool row_by_row);
    ~Book();
    Book(const Book&) = delete;
    Book& operator=(const Book&) = delete;

    [[nodiscard]] lxw_workbook* get() const { return book_; }
    /// What the library says of one step counts at the end.
    void take(lxw_error error) {
        if (error_ == LXW_NO_ERROR) error_ = error;
    }
    [[nodiscard]] bool good() const { return error_ == LXW_NO_ERROR; }
    /// The same of a cell, which is written to `sheet` once.
    void take_cell(const lxw_worksheet* sheet, lxw_error error) {
        take(error);
        ++cells_[sheet];
    }
    [[nodiscard]] std::size_t cells(const lxw_worksheet* sheet) const;
    lxw_error close();

    /// Writes a text. It always goes in as a string, so that none is taken for a formula or a link.
    void put_text(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, std::string_view text, lxw_format* format);

    // Formats, each made once.
    lxw_format* head(bool right);
    lxw_format* number(int decimals, bool soft);
    lxw_format* date();
    lxw_format* text(bool soft, bool wrapped, bool right = false);
    lxw_format* title();

private:
    lxw_workbook* book_ = nullptr;
    lxw_error error_ = LXW_NO_ERROR;
    std::map<const lxw_worksheet*, std::size_t> cells_;
    lxw_format *date_ = nullptr, *title_ = nullptr;
    std::map<bool, lxw_format*> heads_;
    std::map<std::pair<int, bool>, lxw_format*> numbers_;
    std::map<std::tuple<bool, bool, bool>, lxw_format*> texts_;
};

} // namespace ullage
