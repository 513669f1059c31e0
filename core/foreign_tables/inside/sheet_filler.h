// SPDX-License-Identifier: GPL-3.0-or-later
// What the readers behind read_table_book() share.
#pragma once

#include "base/late_part.h"
#include "foreign_tables/table_book.h"

#include <string>
#include <string_view>

namespace ullage {

/// Puts cells at their places, within the limits for the book that is being read.
class SheetFiller {
public:
    SheetFiller(TableSheet& sheet, std::size_t& cells_left) : sheet_(sheet), cells_left_(cells_left) {}

    /// False where the limits are passed; an empty text takes no room.
    [[nodiscard]] bool put(std::size_t row, std::size_t column, std::string_view text, bool typed);
    [[nodiscard]] TableSheet& sheet() { return sheet_; }

private:
    TableSheet& sheet_;
    std::size_t& cells_left_;
};

[[nodiscard]] Error too_large_table(const std::string& where);

[[nodiscard]] Result<TableBook> read_delimited(std::string_view bytes, const std::string& where, char delimiter);

using TableReader = Result<TableBook>(std::string_view bytes, const std::string& where);
inline constinit LateFunction<TableReader> packed_book; ///< of an XLSX or ODS workbook
inline constinit LateFunction<TableReader> html_book;   ///< of a page

} // namespace ullage
