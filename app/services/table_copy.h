// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"

#include <functional>

class QWidget;

namespace ullage {

/// Puts a table on the clipboard as spreadsheets take it: tab-separated text and HTML in one object, numbers in full precision with the
/// desktop's decimal sign (formats/tables/table_clipboard.h). The texts are made beside `window`, which waits. A table without rows, and cancelling,
/// leave the clipboard as it is and give false.
bool copy_table(const StreamedTable& table, QWidget* window);

/// Adds "Copy rows" (Ctrl+C while `view` has the keyboard) to the menu under the right button, after what stands there. `rows` gives the
/// table at that moment; it lives as long as `view`.
void offer_table_copy(QWidget& view, std::function<Table()> rows);

} // namespace ullage
