// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <string>

namespace ullage {

/// A table as a spreadsheet takes it from the clipboard, once as text and once as HTML.
struct ClipboardTable {
    std::string text; ///< UTF-8, fields between tabs, LF after each row
    std::string html; ///< UTF-8, one table element
};

/// The flat columns of the table (formats/tables/table_flat.h) under their titles. Numbers are in full precision with `decimal_sign` ('.' or
/// ','), which should be the desktop's, as spreadsheets read what is pasted by its rules. No text becomes a formula or
/// breaks a row.
[[nodiscard]] ClipboardTable clipboard_table(const StreamedTable& table, char decimal_sign = '.');

} // namespace ullage
