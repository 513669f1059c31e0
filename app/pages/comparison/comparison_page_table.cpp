// SPDX-License-Identifier: GPL-3.0-or-later
// The table of the comparison page: its columns, and what leaves the page as a table.
#include "pages/comparison/comparison_page.h"

#include "delegates/quantity_delegate.h"
#include "dialogs/columns_dialog.h"
#include "dialogs/export_dialog.h"
#include "formats/results/comparison_columns.h"
#include "formats/results/comparison_table.h"
#include "models/table_model.h"
#include "services/table_copy.h"
#include "style/roles.h"
#include "style/words.h"

#include <QHeaderView>
#include <QMenu>
#include <QScrollBar>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QTimer>

#include <algorithm>
#include <map>
#include <utility>

namespace ullage {

namespace {

constexpr int least_sentence_letters = 20; ///< in a column of sentences
constexpr std::size_t most_told_reasons = 3;
constexpr int most_whole_rows = 8; ///< that are in sight without scrolling the table

/// "Not known of Tarrow 2k: no-load draw (there is one drain only, at 178 W)." for each unit and reason in the table.
QString unknown_words(const Table& table) {
    const auto unit_at = std::ranges::find(table.columns, "unit", &TableColumn::key) - table.columns.begin();
    std::vector<std::pair<Message, Message>> told; // unit and reason
    std::vector<QStringList> titles;
    bool more = false;
    for (const TableRow& row : table.rows)
        for (std::size_t column = 0; column < row.size(); ++column) {
            const auto* quantity = std::get_if<Quantity>(&row[column]);
            if (!quantity || quantity->kind != Kind::not_known || quantity->reason.empty()) continue;
            const auto* unit = std::get_if<Message>(&row[static_cast<std::size_t>(unit_at)]);
            const std::pair key(unit ? *unit : Message(), quantity->reason);
            const auto at = static_cast<std::size_t>(std::ranges::find(told, key) - told.begin());
            if (at == most_told_reasons) {
                more = true;
                continue;
            }
            if (at == told.size()) {
                told.push_back(key);
                titles.emplace_back();
            }
            titles[at] << text_of(table.columns[column].title);
        }
    QStringList sentences;
    for (std::size_t n = 0; n < told.size(); ++n)
        sentences
            << ullage::tr("Not known of %1: %2 (%3).").arg(text_of(told[n].first), titles[n].join(QStringLiteral(", ")), text_of(told[n].second));
    if (more) sentences << ullage::tr("Each other cell tells its reason when pointed at.");
    return sentences.join(QLatin1Char('\n'));
}

} // namespace

void ComparisonPage::buildTable() {
    table_->setObjectName(QStringLiteral("comparisonView"));
    table_->setAccessibleName(tr("Comparison of the units"));
    table_->setTabKeyNavigation(false);
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
    connect(table_->horizontalHeader(), &QWidget::customContextMenuRequested, this, &ComparisonPage::showHeadMenu);
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) { openRow(sorted_->mapToSource(index).row()); });
}

void ComparisonPage::openRow(int row) {
    if (row < 0 || row >= static_cast<int>(opened_.size())) return;
    const RowTarget& target = opened_[static_cast<std::size_t>(row)];
    if (!target.run_uuid.empty()) emit runAsked(target.run_uuid);
    else emit notice(target.notice);
}

void ComparisonPage::takeTable() {
    whole_ = presenter_.table();
    opened_ = presenter_.targets();
}

void ComparisonPage::showTable() {
    model_->setTable(with_columns(whole_, presenter_.shownColumns(whole_)).value());
    auto* heads = table_->horizontalHeader();
    arranging_ = true; // what was dragged before is in the order of the table now
    for (int place = 0; place < heads->count(); ++place) heads->moveSection(heads->visualIndex(place), place);
    arranging_ = false;
    fitColumns();
    unknown_label_->setText(unknown_words(model_->table()));
    unknown_label_->setVisible(!unknown_label_->text().isEmpty());
}

void ComparisonPage::fitTableHeight() {
    int height = table_->horizontalHeader()->sizeHint().height() + table_->horizontalScrollBar()->sizeHint().height() + 2 * table_->frameWidth();
    for (int row = 0; row < std::min(sorted_->rowCount(), most_whole_rows); ++row) height += table_->rowHeight(row);
    table_->setMinimumHeight(height);
}

void ComparisonPage::fitColumns() {
    // Without the room that each head keeps for the sort indicator all columns fit into the smallest window.
    table_->horizontalHeader()->setSortIndicatorShown(false);
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setSortIndicatorShown(true);
    table_->horizontalHeader()->setStretchLastSection(false);
    fitWideColumns();
    fitTableHeight();
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

std::vector<std::string> ComparisonPage::shownColumns() const {
    std::vector<std::string> keys;
    const auto* heads = table_->horizontalHeader();
    for (int place = 0; place < heads->count(); ++place)
        keys.push_back(model_->table().columns[static_cast<std::size_t>(heads->logicalIndex(place))].key);
    return keys;
}

void ComparisonPage::columnMoved() {
    if (arranging_) return;
    presenter_.orderColumns(whole_, shownColumns());
    keepColumns();
}

void ComparisonPage::readColumns() {
    const auto sets = document_.columnSets();
    const auto in_use = sets.find(std::string());
    presenter_.setColumns(in_use == sets.end() ? std::vector<std::string>() : column_keys_from(in_use->second));
}

void ComparisonPage::keepColumns() {
    const bool as_at_first = presenter_.columns() == ready_columns(readers_set);
    if (document_.isOpen())
        if (const auto kept = document_.setColumnSet({}, as_at_first ? std::string() : column_keys_text(presenter_.columns())); !kept)
            emit error(text_of(kept.error().sentence()));
    // Not while the heads are still busy with what the person did to them.
    QTimer::singleShot(0, this, &ComparisonPage::showTable);
}

Table ComparisonPage::shownTable(bool chosen_only) const {
    std::vector<std::size_t> rows, chosen;
    for (int row = 0; row < sorted_->rowCount(); ++row) {
        const auto source = static_cast<std::size_t>(sorted_->mapToSource(sorted_->index(row, 0)).row());
        rows.push_back(source);
        if (table_->selectionModel()->isRowSelected(row)) chosen.push_back(source);
    }
    const Table shown = with_rows(model_->table(), chosen_only && !chosen.empty() ? chosen : rows);
    return with_columns(shown, shownColumns()).value();
}

void ComparisonPage::copyTable() {
    if (!isComplete()) return;
    if (copy_table(shownTable(false), this)) emit notice(tr("The table is on the clipboard, ready to be pasted into a spreadsheet."));
}

void ComparisonPage::showHeadMenu(const QPoint& place) {
    QMenu menu(this);
    menu.setObjectName(QStringLiteral("columnsMenu"));
    const std::vector<std::string> shown = shownColumns();
    for (const TableColumn& column : whole_.columns) {
        if (column.key == "unit") continue; // a row without its unit says nothing
        auto* entry = menu.addAction(text_of(column.title));
        entry->setCheckable(true);
        entry->setChecked(std::ranges::count(shown, column.key) > 0);
        connect(entry, &QAction::toggled, this, [this, key = column.key](bool wanted) {
            presenter_.showColumn(whole_, key, wanted);
            keepColumns();
        });
    }
    menu.addSeparator();
    connect(menu.addAction(tr("Columns…")), &QAction::triggered, this, &ComparisonPage::chooseColumns);
    connect(menu.addAction(tr("Columns for readers")), &QAction::triggered, this, [this] {
        presenter_.setColumns({});
        keepColumns();
    });
    menu.exec(table_->horizontalHeader()->mapToGlobal(place));
}

void ComparisonPage::chooseColumns() {
    std::map<std::string, std::vector<std::string>> own;
    for (const auto& [name, keys] : document_.columnSets())
        if (!name.empty()) own[name] = column_keys_from(keys);
    auto* dialog = new ColumnsDialog(presenter_.columns(), std::move(own), this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    connect(dialog, &ColumnsDialog::submitted, this, [this, dialog] {
        for (const auto& [name, keys] : dialog->changedSets())
            if (const auto kept = document_.setColumnSet(name, column_keys_text(keys)); !kept) {
                dialog->refuse(text_of(kept.error().sentence()));
                return;
            }
        presenter_.setColumns(dialog->chosen());
        keepColumns();
        dialog->accept();
    });
    dialog->open();
}

void ComparisonPage::exportComparison() {
    if (!isComplete() || presenter_.isEmpty()) return;
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Comparison"),
                        QStringLiteral("comparison"),
                        [this](QWidget*) { return shownTable(false); },
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
