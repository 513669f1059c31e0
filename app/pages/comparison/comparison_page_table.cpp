// SPDX-License-Identifier: GPL-3.0-or-later
// The table of the comparison page: its columns, and what leaves the page as a table.
#include "pages/comparison/comparison_page.h"

#include "delegates/quantity_delegate.h"
#include "dialogs/export_dialog.h"
#include "formats/results/comparison_table.h"
#include "models/table_model.h"
#include "services/table_copy.h"
#include "style/roles.h"
#include "style/words.h"

#include <QHeaderView>
#include <QMenu>
#include <QSortFilterProxyModel>
#include <QTableView>

#include <algorithm>

namespace ullage {

namespace {

constexpr int least_sentence_letters = 20; ///< in a column of sentences

} // namespace

void ComparisonPage::buildTable() {
    table_->setObjectName(QStringLiteral("comparisonView"));
    table_->setAccessibleName(tr("Comparison of the units"));
    table_->setModel(sorted_);
    make_table(*table_);
    table_->setItemDelegate(new QuantityDelegate(table_));
    table_->setSortingEnabled(true);
    table_->horizontalHeader()->setSortIndicator(-1, Qt::AscendingOrder);
    table_->horizontalHeader()->setSectionsMovable(true);
    connect(table_->horizontalHeader(), &QHeaderView::sectionMoved, this, &ComparisonPage::columnMoved);
    table_->verticalHeader()->hide();
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    offer_table_copy(*table_, [this] { return shownTable(true); });
    table_->horizontalHeader()->setContextMenuPolicy(Qt::CustomContextMenu);
    connect(table_->horizontalHeader(), &QWidget::customContextMenuRequested, this, &ComparisonPage::chooseColumns);
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) { openRow(sorted_->mapToSource(index).row()); });
}

void ComparisonPage::openRow(int row) {
    const auto target = presenter_.target(row);
    if (!target) return;
    if (!target->run_uuid.isEmpty()) emit runAsked(target->run_uuid);
    else emit notice(target->notice);
}

void ComparisonPage::showTable() {
    model_->setTable(presenter_.table());
    arrangeColumns();
    const Table& table = model_->table();
    for (std::size_t i = 0; i < table.columns.size(); ++i) table_->setColumnHidden(static_cast<int>(i), presenter_.isColumnHidden(table, i));
    fitColumns();
}

void ComparisonPage::fitColumns() {
    // Without the room that each head keeps for the sort indicator all columns fit into the smallest window.
    table_->horizontalHeader()->setSortIndicatorShown(false);
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setSortIndicatorShown(true);
    table_->horizontalHeader()->setStretchLastSection(false);
    fitWideColumns();
}

void ComparisonPage::fitWideColumns() {
    auto* heads = table_->horizontalHeader();
    std::vector<int> wide;
    int taken = 0;
    for (int column = 0; column < heads->count(); ++column) {
        if (heads->isSectionHidden(column)) continue;
        const std::string& key = model_->table().columns[static_cast<std::size_t>(column)].key;
        if (key == "gauge_verdict" || key == "standing") wide.push_back(column);
        else taken += heads->sectionSize(column);
    }
    if (wide.empty()) return;
    // Sentences take the room that is left; where that is too little for them the table scrolls.
    const int least = least_sentence_letters * table_->fontMetrics().averageCharWidth();
    const bool room = (table_->viewport()->width() - taken) / static_cast<int>(wide.size()) >= least;
    for (const int column : wide) {
        heads->setSectionResizeMode(column, room ? QHeaderView::Stretch : QHeaderView::Interactive);
        if (!room) heads->resizeSection(column, least);
    }
}

std::vector<std::string> ComparisonPage::columnsInOrder() const {
    std::vector<std::string> keys;
    const auto* heads = table_->horizontalHeader();
    for (int place = 0; place < heads->count(); ++place)
        keys.push_back(model_->table().columns[static_cast<std::size_t>(heads->logicalIndex(place))].key);
    return keys;
}

void ComparisonPage::arrangeColumns() {
    const auto wanted = presenter_.columnOrder(model_->table());
    auto* heads = table_->horizontalHeader();
    arranging_ = true;
    for (std::size_t place = 0; place < wanted.size(); ++place)
        heads->moveSection(heads->visualIndex(model_->columnOf(wanted[place])), static_cast<int>(place));
    arranging_ = false;
}

void ComparisonPage::columnMoved() {
    if (arranging_) return;
    presenter_.orderColumns(columnsInOrder());
    emit columnsChosen(presenter_.columns());
}

void ComparisonPage::setColumns(const QString& choice) {
    presenter_.setColumns(choice);
    showTable();
}

Table ComparisonPage::shownTable(bool chosen_only) const {
    std::vector<std::size_t> rows, chosen;
    for (int row = 0; row < sorted_->rowCount(); ++row) {
        const auto source = static_cast<std::size_t>(sorted_->mapToSource(sorted_->index(row, 0)).row());
        rows.push_back(source);
        if (table_->selectionModel()->isRowSelected(row)) chosen.push_back(source);
    }
    const Table shown = with_rows(model_->table(), chosen_only && !chosen.empty() ? chosen : rows);
    return with_columns(shown, columnsInOrder()).value();
}

void ComparisonPage::copyTable() {
    if (!isComplete()) return;
    if (copy_table(shownTable(false), this)) emit notice(tr("The table is on the clipboard, ready to be pasted into a spreadsheet."));
}

void ComparisonPage::chooseColumns(const QPoint& place) {
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("columnsMenu"));
    const Table& table = model_->table();
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const TableColumn& column = table.columns[i];
        if (column.key == "unit") continue; // a row without its unit says nothing
        auto* entry = menu.addAction(text_of(column.title));
        entry->setCheckable(true);
        entry->setChecked(!presenter_.isColumnHidden(table, i));
        connect(entry, &QAction::toggled, this, [this, key = column.key](bool shown) {
            presenter_.showColumn(key, shown);
            showTable();
            emit columnsChosen(presenter_.columns());
        });
    }
    menu.addSeparator();
    connect(menu.addAction(tr("Columns as at first")), &QAction::triggered, this, [this] {
        setColumns({});
        emit columnsChosen({});
    });
    menu.exec(table_->horizontalHeader()->mapToGlobal(place));
}

void ComparisonPage::exportComparison() {
    if (!isComplete() || presenter_.isEmpty()) return;
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Comparison"),
                        QStringLiteral("comparison"),
                        [this](QWidget*) { return without_unused(shownTable(false)); },
                        {{tr("vessels"), [this]() -> PictureContent { return presenter_.vessels(); }},
                         {tr("usable fraction"), [this]() -> PictureContent { return presenter_.bars(); }}}});
    subjects.push_back(
        {tr("Differences between units"), QStringLiteral("differences"), [this](QWidget*) { return presenter_.pairsTable(pairFigure()); }, {}});
    if (presenter_.hasModels())
        subjects.push_back({tr("Models by their specimens"), QStringLiteral("models"), [this](QWidget*) { return presenter_.modelsTable(); }, {}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage
