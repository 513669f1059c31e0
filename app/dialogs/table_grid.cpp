// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/table_grid.h"

#include "style/roles.h"
#include "style/words.h"

#include <QComboBox>
#include <QHeaderView>
#include <QLocale>
#include <QTableWidget>

#include <algorithm>

namespace ullage {

namespace {

constexpr int shown_table_rows = 6, shown_left_at_once = 4;
constexpr std::size_t most_shown_columns = 60, most_left_rows = 500;

QTableWidget* new_plain_table(QWidget* parent, const QString& name, const QString& words) {
    auto* table = new QTableWidget(parent);
    table->setObjectName(name);
    table->setAccessibleName(words);
    make_table(*table);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionMode(QAbstractItemView::NoSelection);
    table->setTabKeyNavigation(false);
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    return table;
}

void fit_height(QTableWidget& table, int rows) {
    int height_px = table.horizontalHeader()->sizeHint().height() + 2 * table.frameWidth() + table.fontMetrics().height();
    for (int r = 0; r < std::min(rows, table.rowCount()); ++r) height_px += table.rowHeight(r);
    table.setFixedHeight(height_px);
}

} // namespace

QString table_role_words(TableRole role) {
    switch (role) {
    case TableRole::power: return tr("power of the load");
    case TableRole::second_energy: return tr("second register");
    case TableRole::display_power: return tr("power shown by the unit");
    case TableRole::unused: return tr("not used");
    default: return text_of(say_table_role(role));
    }
}

QTableWidget* new_table_grid(QWidget* parent) {
    auto* grid = new_plain_table(parent, QStringLiteral("tableGrid"), tr("First rows of the table, the role of each column above them"));
    grid->verticalHeader()->show();
    return grid;
}

void show_table_grid(QTableWidget& grid, const TableSheet& sheet, const TableReading& reading, const std::function<void(std::size_t, int)>& chosen) {
    const auto& columns = reading.columns;
    const int count = static_cast<int>(std::min(columns.size(), most_shown_columns));
    // The rows below the head; without one from the first.
    const auto first = static_cast<std::size_t>(reading.head_row);
    const int rows = static_cast<int>(std::min<std::size_t>(shown_table_rows, sheet.rows.size() - std::min(sheet.rows.size(), first)));
    grid.clear();
    grid.setColumnCount(count);
    grid.setRowCount(1 + rows);
    QStringList numbers{QString()};
    for (int r = 0; r < rows; ++r) numbers << QLocale().toString(static_cast<qlonglong>(first) + r + 1);
    grid.setVerticalHeaderLabels(numbers);
    for (int c = 0; c < count; ++c) {
        const TableReading::Column& column = columns[static_cast<std::size_t>(c)];
        const QString title = column.title.empty() ? tr("column %1").arg(c + 1) : text_of(column.title);
        grid.setHorizontalHeaderItem(c, new QTableWidgetItem(title));
        auto* combo = new QComboBox;
        combo->setObjectName(QStringLiteral("role%1Combo").arg(c + 1));
        combo->setAccessibleName(tr("%1 holds").arg(title));
        combo->setAccessibleDescription(combo->accessibleName()); // of a choice without a label the tree tells what is chosen as its name
        combo->setToolTip(text_of(column.why));
        // The longest role must not make every column as wide.
        combo->setSizeAdjustPolicy(QComboBox::AdjustToMinimumContentsLengthWithIcon);
        for (const TableRoleEntry& role : table_roles()) {
            const bool shows_unit = role.role == column.role && !column.unit.empty();
            combo->addItem(shows_unit ? tr("%1 in %2").arg(table_role_words(role.role), text_of(column.unit)) : table_role_words(role.role));
            if (role.role == column.role) combo->setCurrentIndex(combo->count() - 1);
        }
        combo->setMinimumContentsLength(static_cast<int>(combo->currentText().size()) + 1);
        QObject::connect(combo, &QComboBox::activated, &grid, [chosen, c](int place) { chosen(static_cast<std::size_t>(c), place); });
        grid.setCellWidget(0, c, combo);
        for (int r = 0; r < rows; ++r) {
            const GridCell& cell = sheet.at(first + static_cast<std::size_t>(r), static_cast<std::size_t>(c));
            auto* item = new QTableWidgetItem(text_of(cell.text));
            item->setToolTip(item->text());
            grid.setItem(r + 1, c, item);
        }
    }
    grid.resizeRowsToContents();
    fit_height(grid, grid.rowCount());
}

QTableWidget* new_left_rows_table(QWidget* parent) {
    auto* table = new_plain_table(parent, QStringLiteral("leftRowsTable"), tr("Rows that are not taken"));
    table->verticalHeader()->hide();
    table->setColumnCount(3);
    table->setHorizontalHeaderLabels({tr("row"), tr("what was done"), tr("why")});
    table->horizontalHeader()->setStretchLastSection(true);
    return table;
}

void show_left_rows(QTableWidget& table, const std::vector<RowNotTaken>& rows) {
    const std::size_t shown = std::min(rows.size(), most_left_rows);
    table.setRowCount(static_cast<int>(shown));
    for (std::size_t i = 0; i < shown; ++i) {
        int column = 0;
        for (const QString& text : {QLocale().toString(static_cast<qlonglong>(rows[i].row)), rows[i].in_part ? tr("taken in part") : tr("left out"),
                                    text_of(rows[i].reason)}) {
            auto* item = new QTableWidgetItem(text);
            item->setToolTip(text);
            table.setItem(static_cast<int>(i), column++, item);
        }
    }
    table.resizeRowsToContents();
    fit_height(table, shown_left_at_once);
    table.setVisible(shown > 0);
}

} // namespace ullage
