// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "foreign_tables/table_book.h"
#include "window/controller.h"

namespace ullage {

class TableForm;

/// Foreign tables of readings: from a file, dropped or pasted, through their form into the logbook.
class TableController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void chooseTable(); ///< asks which
    void importTable(const QString& path);
    /// What the clipboard holds: the cells of a spreadsheet or a page, or text with columns.
    void pasteTable();
    /// Whether the clipboard holds text that may be a table, and no picture.
    [[nodiscard]] static bool clipboardHoldsTable();

private:
    void openForm(Result<TableBook> book, const QString& name);
    bool makeLogbook(TableForm& form, const QString& name); ///< where none is open; asks for its name
    void takeIn(TableForm& form, const QString& name);
};

} // namespace ullage
