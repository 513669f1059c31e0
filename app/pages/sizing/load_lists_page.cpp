// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/sizing/load_lists_page.h"

#include "base/number.h"
#include "delegates/quantity_delegate.h"
#include "formats/results/load_list_table.h"
#include "formats/sheets/load_list_file.h"
#include "models/table_model.h"
#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace ullage {

namespace {

QTableView* new_list_table(const char* name, const QString& about, TableModel* model) {
    auto* table = new QTableView;
    table->setObjectName(QLatin1String(name));
    table->setAccessibleName(about);
    table->setModel(model);
    table->setItemDelegate(new QuantityDelegate(table));
    table->setSelectionMode(QAbstractItemView::SingleSelection);
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setTabKeyNavigation(false);
    make_table(*table);
    return table;
}

QLabel* new_empty_words(const char* name, const QString& words) {
    auto* label = new QLabel(words);
    label->setObjectName(QLatin1String(name));
    label->setAlignment(Qt::AlignCenter);
    label->setWordWrap(true);
    label->setMargin(spacing::group_gap_px);
    set_text_style(*label, Tone::soft);
    return label;
}

/// A card that holds a table, or in its place the words for an empty one.
QFrame* new_list_card(QTableView* table, QLabel* empty) {
    QFrame* panel = new_panel(nullptr);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(1, 1, 1, 1);
    column->addWidget(table);
    column->addWidget(empty);
    return panel;
}

void fit_list_columns(QTableView& table) {
    table.resizeColumnsToContents();
    for (int column = 0; column < table.model()->columnCount(); ++column) table.setColumnWidth(column, table.columnWidth(column) + spacing::grid_px);
}

} // namespace

LoadListsPage::LoadListsPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), lists_model_(new TableModel(this)), appliances_model_(new TableModel(this)),
      lists_(new_list_table("loadListsTable", tr("load lists"), lists_model_)),
      appliances_(new_list_table("appliancesTable", tr("appliances of the load list"), appliances_model_)), about_(new QLabel),
      empty_(new_empty_words("noLoadListsLabel",
                             tr("No load lists yet. Add load list, then its appliances: what they take, how long a day, and when; or Import one "
                                "from a file. The comparison then shows units at that load."))),
      list_title_(new QLabel),
      no_appliances_(new_empty_words("noAppliancesLabel",
                                     tr("Nothing in this list yet. Add appliance takes its power, or what a meter counted over some hours."))),
      totals_(new QLabel) {
    setObjectName(QStringLiteral("loadListsPage"));
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    auto* parts = new QSplitter(Qt::Vertical);
    parts->setObjectName(QStringLiteral("loadListsSplitter"));
    parts->setChildrenCollapsible(false);
    parts->addWidget(buildLists());
    appliances_part_ = buildAppliances();
    parts->addWidget(appliances_part_);
    parts->setStretchFactor(0, 2);
    parts->setStretchFactor(1, 3);
    page->addWidget(parts, 1);
    connect(lists_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& current) {
        const auto row = static_cast<std::size_t>(current.row());
        if (refreshing_ || !current.isValid() || row >= document_.loadLists().size()) return;
        selected_ = document_.loadLists()[row].uuid;
        showAppliances();
        emit listChosen(selected_);
    });
    connect(lists_, &QTableView::activated, this, &LoadListsPage::editListAsked);
    connect(appliances_, &QTableView::activated, this, &LoadListsPage::editApplianceAsked);
    connect(appliances_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this] {
        if (!refreshing_) setChosen();
    });
    for (auto signal : {&Document::opened, &Document::closed, &Document::loadListsChanged})
        connect(&document_, signal, this, &LoadListsPage::refresh);
    refresh();
}

QPushButton* LoadListsPage::newButton(const char* name, const QString& text, void (LoadListsPage::*asks)()) {
    auto* button = new QPushButton(text);
    button->setObjectName(QLatin1String(name));
    connect(button, &QPushButton::clicked, this, asks);
    return button;
}

QWidget* LoadListsPage::buildLists() {
    auto* title = new QLabel(tr("Load lists"));
    set_text_style(*title, Tone::ink, TextSize::title);
    set_text_style(*about_, Tone::soft);
    auto* add = newButton("addLoadListButton", tr("Add load list"), &LoadListsPage::addListAsked);
    make_primary(*add);
    edit_list_ = newButton("editLoadListButton", tr("Edit load list"), &LoadListsPage::editListAsked);
    auto* import = newButton("importLoadListButton", tr("Import…"), &LoadListsPage::importListAsked);
    import->setToolTip(tr("A load list from a file (.csv)"));
    withdraw_list_ = newButton("withdrawLoadListButton", tr("Withdraw"), &LoadListsPage::withdrawListAsked);
    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(title, 0, Qt::AlignBaseline);
    head->addWidget(about_, 1, Qt::AlignBaseline);
    for (auto* action : {withdraw_list_, edit_list_, import, add}) head->addWidget(action);
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, spacing::half_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addLayout(head);
    column->addWidget(new_list_card(lists_, empty_), 1);
    return part;
}

QWidget* LoadListsPage::buildAppliances() {
    list_title_->setObjectName(QStringLiteral("loadListTitleLabel"));
    list_title_->setTextFormat(Qt::PlainText);
    set_text_style(*list_title_, Tone::ink, TextSize::group);
    add_appliance_ = newButton("addApplianceButton", tr("Add appliance"), &LoadListsPage::addApplianceAsked);
    edit_appliance_ = newButton("editApplianceButton", tr("Edit appliance"), &LoadListsPage::editApplianceAsked);
    remove_appliance_ = newButton("removeApplianceButton", tr("Remove appliance"), &LoadListsPage::removeApplianceAsked);
    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(list_title_, 1);
    for (auto* action : {remove_appliance_, edit_appliance_, add_appliance_}) head->addWidget(action);
    totals_->setObjectName(QStringLiteral("loadTotalsLabel"));
    totals_->setTextFormat(Qt::PlainText);
    totals_->setWordWrap(true);
    set_text_style(*totals_, Tone::soft, TextSize::caption);
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, spacing::half_px, 0, 0);
    column->setSpacing(spacing::grid_px);
    column->addLayout(head);
    column->addWidget(new_list_card(appliances_, no_appliances_), 1);
    column->addWidget(totals_);
    return part;
}

void LoadListsPage::showLoadList(const LoadListId& list_uuid) {
    if (document_.loadList(list_uuid)) selected_ = list_uuid;
    refresh();
}

std::optional<std::size_t> LoadListsPage::selectedAppliance() const {
    const LoadList* list = document_.loadList(selected_);
    const int row = appliances_->currentIndex().row();
    if (!list || row < 0 || row >= static_cast<int>(list->appliances.size())) return std::nullopt;
    return static_cast<std::size_t>(row);
}

void LoadListsPage::refresh() {
    const auto& lists = document_.loadLists();
    if (!document_.loadList(selected_)) selected_ = lists.empty() ? LoadListId() : lists.front().uuid;
    about_->setText(text_of(say_count(static_cast<long>(lists.size()), phrases("ullage", "%n load lists", "%n load list"))));
    refreshing_ = true;
    lists_model_->setTable(load_lists_table(lists));
    fit_list_columns(*lists_);
    for (std::size_t row = 0; row < lists.size(); ++row)
        if (lists[row].uuid == selected_) lists_->setCurrentIndex(lists_model_->index(static_cast<int>(row), 0));
    refreshing_ = false;
    lists_->setVisible(!lists.empty());
    empty_->setVisible(lists.empty());
    appliances_part_->setVisible(!lists.empty());
    showAppliances();
}

void LoadListsPage::showAppliances() {
    const LoadList* list = document_.loadList(selected_);
    const Table table = list ? load_list_table(*list) : Table();
    const auto place = selectedAppliance();
    refreshing_ = true;
    appliances_model_->setTable(table);
    fit_list_columns(*appliances_);
    if (list && place) appliances_->setCurrentIndex(appliances_model_->index(static_cast<int>(*place), 0));
    refreshing_ = false;
    list_title_->setText(list ? text_of(list->name) : QString());
    const bool any = list && !list->appliances.empty();
    appliances_->setVisible(any);
    no_appliances_->setVisible(!any);
    QStringList words;
    if (any)
        for (const Message& remark : table.remarks) words << text_of(remark);
    totals_->setText(words.join(QLatin1Char('\n')));
    totals_->setVisible(!words.isEmpty());
    setChosen();
}

void LoadListsPage::setChosen() {
    const bool list = document_.loadList(selected_) != nullptr;
    for (auto* button : {edit_list_, withdraw_list_, add_appliance_}) button->setEnabled(list);
    const bool appliance = selectedAppliance().has_value();
    for (auto* button : {edit_appliance_, remove_appliance_}) button->setEnabled(appliance);
    emit applianceChosen();
}

} // namespace ullage
