// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

struct lxw_worksheet;

namespace ullage {

class Book;

/// Whether a table has results, which stand in one cell for a reader but in several for a program.
[[nodiscard]] bool has_readable_sheet(const TableHead& table);

/// Fills a sheet for readers: title and answer, then the columns of TableHead::for_readers, each figure with its interval in one cell as in the other
/// forms for people, then notes and remarks.
void fill_readable(Book& book, lxw_worksheet* sheet, const StreamedTable& table);

} // namespace ullage
