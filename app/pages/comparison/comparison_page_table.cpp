// SPDX-License-Identifier: GPL-3.0-or-later
// The table of the comparison page: its columns, and what leaves the page as a table.
#include "pages/comparison/comparison_page.h"

#include "delegates/quantity_delegate.h"
#include "dialogs/export_dialog.h"
#include "formats/results/comparison_table.h"
#include "models/table_model.h"
#include "services/table_copy.h"
#include "style/roles.h"

#include <QHeaderView>
#include <QMenu>
#include <QSortFilterProxyModel>
#include <QTableView>

#include <algorithm>
#include <string_view>

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
    if (row < 0 || row >= static_cast<int>(comparison_.rows.size())) return;
    const ComparisonRow& opened = comparison_.rows[static_cast<std::size_t>(row)];
    if (document_.run(opened.run.uuid)) emit runRequested(QString::fromStdString(opened.run.uuid));
    else emit told(tr("This run is in %1; open that logbook to see it.").arg(QString::fromStdString(opened.source)));
}

bool ComparisonPage::isColumnHidden(const std::string& key) const {
    if (const auto chosen = columns_chosen_.shown.find(key); chosen != columns_chosen_.shown.end()) return !chosen->second;
    // What answers "which one" fits into the smallest window; the rest is in every export and in the menu of the heads. The run of a single row
    // a unit is named under its bar. At one load, what was tested is told by the fraction alone.
    constexpr std::string_view elsewhere[] = {"maker",
                                              "meter",
                                              "warranty_years",
                                              "wh_per_kg",
                                              "tags",
                                              "wh_per_gauge_point",
                                              "price_per_rated_kwh",
                                              "paid_per_rated_kwh",
                                              "charge_time_h",
                                              "round_trip_efficiency",
                                              "held_output_w",
                                              "held_peak_output_w",
                                              "standby_draw_w"};
    if (std::ranges::count(elsewhere, key)) return true;
    const auto& table = model_->table();
    if (const int column = model_->columnOf(key); column >= 0 && is_unused(table, static_cast<std::size_t>(column))) return true;
    if (key == "rank") return rows() != CompareRows::one_per_unit;
    if (key == "run") return rows() == CompareRows::one_per_unit;
    constexpr std::string_view as_tested_only[] = {"delivered_wh", "duration_h", "mean_load_w", "no_load_draw_w", "paid_per_delivered_kwh"};
    return fair_.load && std::ranges::count(as_tested_only, key) > 0;
}

void ComparisonPage::showTable() {
    model_->setTable(comparison_table(comparison_, fair_));
    arrangeColumns();
    const auto& columns = model_->table().columns;
    for (std::size_t i = 0; i < columns.size(); ++i) table_->setColumnHidden(static_cast<int>(i), isColumnHidden(columns[i].key));
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
    std::vector<std::string> keys;
    for (const TableColumn& column : model_->table().columns) keys.push_back(column.key);
    const auto wanted = arranged(keys, columns_chosen_.order);
    auto* heads = table_->horizontalHeader();
    arranging_ = true;
    for (std::size_t place = 0; place < wanted.size(); ++place)
        heads->moveSection(heads->visualIndex(model_->columnOf(wanted[place])), static_cast<int>(place));
    arranging_ = false;
}

void ComparisonPage::columnMoved() {
    if (arranging_) return;
    // Columns that are not there now, such as those of a common load, keep their place beside their neighbours.
    const auto now = columnsInOrder();
    std::vector<std::string> known = columns_chosen_.order;
    for (const std::string& key : now)
        if (!std::ranges::count(known, key)) known.push_back(key);
    columns_chosen_.order = arranged(known, now);
    emit columnsChosen(QString::fromStdString(column_choice_text(columns_chosen_)));
}

void ComparisonPage::setColumns(const QString& choice) {
    columns_chosen_ = column_choice_from(choice.toStdString());
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
    if (copy_table(shownTable(false), this)) emit told(tr("The table is on the clipboard, ready to be pasted into a spreadsheet."));
}

void ComparisonPage::chooseColumns(const QPoint& place) {
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("columnsMenu"));
    for (const TableColumn& column : model_->table().columns) {
        if (column.key == "unit") continue; // a row without its unit says nothing
        auto* entry = menu.addAction(QString::fromStdString(column.title));
        entry->setCheckable(true);
        entry->setChecked(!isColumnHidden(column.key));
        connect(entry, &QAction::toggled, this, [this, key = column.key](bool shown) {
            columns_chosen_.shown[key] = shown;
            showTable();
            emit columnsChosen(QString::fromStdString(column_choice_text(columns_chosen_)));
        });
    }
    menu.addSeparator();
    connect(menu.addAction(tr("Columns as at first")), &QAction::triggered, this, [this] {
        columns_chosen_ = {};
        showTable();
        emit columnsChosen({});
    });
    menu.exec(table_->horizontalHeader()->mapToGlobal(place));
}

void ComparisonPage::exportComparison() {
    if (!isComplete() || comparison_.rows.empty()) return;
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Comparison"),
                        QStringLiteral("comparison"),
                        [this](QWidget*) { return without_unused(shownTable(false)); },
                        {{tr("vessels"), [this]() -> PictureContent { return comparison_vessels(comparison_, fair_, band()); }},
                         {tr("usable fraction"), [this]() -> PictureContent { return comparison_bars(comparison_, fair_, band()); }}}});
    subjects.push_back({tr("Differences between units"),
                        QStringLiteral("differences"),
                        [this](QWidget*) {
                            return comparison_.rows.size() <= most_exported_paired ? pairs_table(comparison_, fair_, pairFigure())
                                                                                   : pairs_table(comparison_, fair_, paired_, pairFigure());
                        },
                        {}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage
