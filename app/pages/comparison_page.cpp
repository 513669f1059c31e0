// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "delegates/quantity_delegate.h"
#include "dialogs/export_dialog.h"
#include "exchange/comparison_table.h"
#include "model/tags.h"
#include "models/pairs_model.h"
#include "models/quantity_cell.h"
#include "models/table_copy.h"
#include "models/table_model.h"
#include "pages/comparison_choice.h"
#include "pages/comparison_overlays.h"
#include "pages/page_head.h"
#include "pages/page_parts.h"
#include "pages/vessel_key.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QButtonGroup>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int key_width_px = 300;
constexpr int least_table_lines = 8; ///< of text: the heads, two units and the scroll bar
constexpr int least_levels_lines = 30; ///< of text: vessels, table and pictures; a page with less room scrolls
constexpr std::size_t most_paired = 40; ///< units; beyond, a matrix can no longer be read

} // namespace

ComparisonPage::ComparisonPage(Document& document, Prompts& prompts, QWidget* parent)
    : QWidget(parent), document_(document), prompts_(prompts), choice_(new ComparisonChoice(this)), model_(new TableModel(this)),
      pairs_model_(new PairsModel(this)), sorted_(new QSortFilterProxyModel(this)),
      about_label_(new QLabel(this)), remarks_label_(new QLabel(this)), rows_group_(new QButtonGroup(this)),
      copy_button_(new QPushButton(tr("Copy table"), this)), export_button_(new QPushButton(tr("Export…"), this)), vessels_(new VesselRow(this)),
      table_(new QTableView(this)), bars_(new BarChart(this)), pairs_(new QTableView(this)), errors_(new LineChart(this)),
      fractions_(new LineChart(this)) {
    setObjectName(QStringLiteral("comparisonPage"));
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(SortRole);
    build();
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged, &Document::loadListsChanged})
        connect(&document_, signal, this, &ComparisonPage::refresh);
    connect(&document_, &Document::readingsChanged, this, &ComparisonPage::refresh);
    refresh();
}

void ComparisonPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addWidget(buildHead());
    // With large text the line is wider than a small screen: it scrolls rather than hold the window wide.
    QScrollArea* choice_area = scrolling(*choice_, this);
    choice_area->setObjectName(QStringLiteral("choiceArea"));
    choice_area->setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    choice_area->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Fixed);
    connect(choice_area->horizontalScrollBar(), &QScrollBar::rangeChanged, choice_area, [this, choice_area](int, int most) {
        choice_area->setMinimumHeight(choice_->sizeHint().height() + (most > 0 ? choice_area->horizontalScrollBar()->sizeHint().height() : 0));
    });
    column->addWidget(choice_area);
    connect(choice_, &ComparisonChoice::changed, this, &ComparisonPage::refresh);
    buildTable();
    auto* levels = new QSplitter(Qt::Vertical, this);
    levels->setObjectName(QStringLiteral("comparisonSplitter"));
    levels->setChildrenCollapsible(false);
    levels->addWidget(buildVessels());
    QFrame* table_panel = new_panel(levels);
    auto* table_column = new QVBoxLayout(table_panel);
    table_column->setContentsMargins(1, 1, 1, 1);
    table_column->addWidget(table_);
    levels->addWidget(table_panel);
    levels->addWidget(buildTabs());
    levels->setStretchFactor(0, 4);
    levels->setStretchFactor(1, 3);
    levels->setStretchFactor(2, 3);
    keep_lines(*table_, least_table_lines);
    keep_lines(*levels, least_levels_lines);
    column->addWidget(scrolling(*levels, this), 1);
}

QWidget* ComparisonPage::buildHead() {
    auto* words = new QWidget(this);
    auto* words_line = new QHBoxLayout(words);
    words_line->setContentsMargins(0, 0, 0, 0);
    words_line->setSpacing(spacing::grid_px);
    auto* title = new QLabel(tr("Comparison"), words);
    set_text_style(*title, Tone::ink, TextSize::title);
    set_text_style(*about_label_, Tone::soft);
    about_label_->setObjectName(QStringLiteral("comparisonAboutLabel"));
    words_line->addWidget(title);
    words_line->addWidget(about_label_, 1);
    auto* buttons = new QWidget(this);
    auto* line = new QHBoxLayout(buttons);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    auto* rows_label = new QLabel(tr("rows"), buttons);
    set_text_style(*rows_label, Tone::soft);
    line->addWidget(rows_label);
    const std::pair<CompareRows, QString> choices[] = {{CompareRows::one_per_unit, tr("one for each unit")},
                                                       {CompareRows::every_drain, tr("every drain")}};
    for (const auto& [rows, name] : choices) {
        auto* button = new QPushButton(name, buttons);
        button->setCheckable(true);
        button->setObjectName(rows == CompareRows::one_per_unit ? QStringLiteral("onePerUnitButton") : QStringLiteral("everyDrainButton"));
        rows_group_->addButton(button, static_cast<int>(rows));
        line->addWidget(button);
    }
    rows_group_->button(static_cast<int>(CompareRows::one_per_unit))->setChecked(true);
    connect(rows_group_, &QButtonGroup::idClicked, this, &ComparisonPage::refresh);
    copy_button_->setObjectName(QStringLiteral("copyTableButton"));
    copy_button_->setToolTip(tr("The table with every column, for a spreadsheet"));
    connect(copy_button_, &QPushButton::clicked, this, &ComparisonPage::copyTable);
    line->addWidget(copy_button_);
    export_button_->setObjectName(QStringLiteral("exportButton"));
    make_primary(*export_button_);
    connect(export_button_, &QPushButton::clicked, this, &ComparisonPage::exportComparison);
    line->addWidget(export_button_);
    head_ = new PageHead(words, buttons, this);
    return head_;
}

QWidget* ComparisonPage::buildVessels() {
    QFrame* frame = new_panel(this);
    auto* line = new QHBoxLayout(frame);
    line->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::page_margin_px, spacing::grid_px);
    line->setSpacing(spacing::page_margin_px);
    vessels_->setObjectName(QStringLiteral("vesselsWidget"));
    line->addWidget(scrolling(*vessels_, frame), 1);
    auto* rule = new QFrame(frame);
    make_rule(*rule, true);
    line->addWidget(rule);
    // What is remarked on the units comes first; the key below it is soon known by heart and may be scrolled to.
    auto* words = new QWidget(frame);
    auto* side = new QVBoxLayout(words);
    side->setContentsMargins(0, 0, 0, 0);
    remarks_label_->setObjectName(QStringLiteral("comparisonRemarksLabel"));
    remarks_label_->setWordWrap(true);
    remarks_label_->setTextFormat(Qt::PlainText);
    remarks_label_->setFixedWidth(key_width_px);
    set_text_style(*remarks_label_, Tone::soft, TextSize::caption);
    side->addWidget(remarks_label_);
    side->addSpacing(spacing::grid_px);
    auto* key = new VesselKey(words);
    key->setFixedWidth(key_width_px);
    side->addWidget(key);
    side->addStretch();
    QScrollArea* side_scroll = scrolling(*words, frame);
    side_scroll->setObjectName(QStringLiteral("vesselWordsArea"));
    side_scroll->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    side_scroll->setFixedWidth(key_width_px + 2 * spacing::page_margin_px);
    line->addWidget(side_scroll);
    return frame;
}

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
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) {
        const int row = sorted_->mapToSource(index).row();
        if (row >= 0 && row < static_cast<int>(comparison_.rows.size()))
            emit runRequested(QString::fromStdString(comparison_.rows[static_cast<std::size_t>(row)].run.uuid));
    });
}

CompareRows ComparisonPage::rows() const { return static_cast<CompareRows>(rows_group_->checkedId()); }

ExpectationBand ComparisonPage::band() const { return {choice_->bandLower(), choice_->bandUpper()}; }

QTabWidget* ComparisonPage::buildTabs() {
    auto* tabs = new QTabWidget(this);
    tabs->setObjectName(QStringLiteral("comparisonTabs"));
    tabs->setAccessibleName(tr("Pictures of the comparison"));
    tabs->addTab(scrolling(*bars_, tabs), tr("Usable fraction"));
    pairs_->setObjectName(QStringLiteral("pairsView"));
    pairs_->setAccessibleName(tr("Differences of usable fraction between units"));
    pairs_->setModel(pairs_model_);
    make_table(*pairs_);
    pairs_->setSelectionBehavior(QAbstractItemView::SelectItems);
    pairs_->verticalHeader()->show();
    pairs_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    pairs_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    tabs->addTab(pairs_, tr("Differences"));
    fractions_->setObjectName(QStringLiteral("fractionsChart"));
    tabs->addTab(fractions_, tr("Against load"));
    errors_->setObjectName(QStringLiteral("errorsChart"));
    tabs->addTab(errors_, tr("Gauge errors"));
    return tabs;
}

void ComparisonPage::refresh() {
    comparison_ = document_.isOpen() ? document_.comparison(rows()) : Comparison{};
    std::vector<std::string> tags;
    for (const ComparisonRow& row : comparison_.rows) tags.insert(tags.end(), row.unit.tags.begin(), row.unit.tags.end());
    choice_->setTags(sorted_tags(std::move(tags)));
    choice_->setLoadLists(document_.loadLists());
    keep_units(comparison_, [this](const Unit& unit) { return choice_->wants(unit); });
    fair_ = compare_at(comparison_, choice_->load());
    showTable();
    showPictures();
    showWords();
}

bool ComparisonPage::isColumnHidden(const std::string& key) const {
    if (const auto chosen = columns_chosen_.shown.find(key); chosen != columns_chosen_.shown.end()) return !chosen->second;
    // Maker, meter and claims are in every export; the run of a single row a unit is named under its bar. At one load, what was tested is
    // told by the fraction alone.
    if (key == "maker" || key == "meter" || key == "warranty_years" || key == "wh_per_kg" || key == "tags") return true;
    const auto& table = model_->table();
    if (const int column = model_->columnOf(key); column >= 0 && is_unused(table, static_cast<std::size_t>(column))) return true;
    if (key == "rank") return rows() != CompareRows::one_per_unit;
    if (key == "run") return rows() == CompareRows::one_per_unit;
    return fair_.load && (key == "delivered_wh" || key == "duration_h" || key == "wh_per_gauge_point" || key == "price_per_rated_kwh" || key == "paid_per_rated_kwh");
}

void ComparisonPage::showTable() {
    model_->setTable(comparison_table(comparison_, fair_));
    arrangeColumns();
    const auto& columns = model_->table().columns;
    for (std::size_t i = 0; i < columns.size(); ++i) table_->setColumnHidden(static_cast<int>(i), isColumnHidden(columns[i].key));
    // Without the room that each head keeps for the sort indicator all columns fit into the smallest window.
    table_->horizontalHeader()->setSortIndicatorShown(false);
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setSortIndicatorShown(true);
    table_->horizontalHeader()->setStretchLastSection(false);
    for (const char* wide : {"gauge_verdict", "standing"})
        if (const int column = model_->columnOf(wide); column >= 0) table_->horizontalHeader()->setSectionResizeMode(column, QHeaderView::Stretch);
    pairs_model_->setPairs(comparison_, comparison_.rows.size() <= most_paired ? compare_pairs(comparison_, fair_) : std::vector<PairVerdict>());
}

void ComparisonPage::showPictures() {
    vessels_->setContent(comparison_vessels(comparison_, fair_, band()));
    bars_->setContent(comparison_bars(comparison_, fair_, band()));
    fractions_->setContent(fraction_overlay(comparison_, fair_));
    errors_->setContent(gauge_error_overlay(
        comparison_, [this](const std::string& run_uuid) -> const RunAnalysis& { return document_.analysis(run_uuid); }));
}

void ComparisonPage::showWords() {
    QString remarks;
    for (const auto* list : {&fair_.remarks, &comparison_.remarks})
        for (const std::string& remark : *list) remarks += QString::fromStdString(remark) + QStringLiteral("\n");
    for (const std::string& left_out : comparison_.left_out) remarks += tr("Left out: %1\n").arg(QString::fromStdString(left_out));
    remarks_label_->setText(remarks.trimmed());
    int drains = 0;
    std::string last_unit;
    int units = 0;
    for (const ComparisonRow& row : comparison_.rows) {
        if (row.unit.uuid == last_unit) continue;
        last_unit = row.unit.uuid;
        ++units;
        drains += row.drains;
    }
    const QString where = fair_.load ? tr("at %1").arg(QString::fromStdString(common_load_text(*fair_.load))) : tr("as tested");
    about_label_->setText(units == 0 ? tr("no drains to show") : tr("%1 units, %2 drains, %3").arg(units).arg(drains).arg(where));
    head_->fit();
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(!comparison_.rows.empty());
}

std::vector<std::string> ComparisonPage::columnsInOrder() const {
    std::vector<std::string> keys;
    const auto* heads = table_->horizontalHeader();
    for (int place = 0; place < heads->count(); ++place) keys.push_back(model_->table().columns[static_cast<std::size_t>(heads->logicalIndex(place))].key);
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
    if (copy_table(shownTable(false))) emit told(tr("The table is on the clipboard, ready to be pasted into a spreadsheet."));
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
    if (comparison_.rows.empty()) return;
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Comparison"), QStringLiteral("comparison"), [this] { return without_unused(shownTable(false)); },
                        {{tr("vessels"), comparison_vessels(comparison_, fair_, band())},
                         {tr("usable fraction"), comparison_bars(comparison_, fair_, band())}}});
    subjects.push_back({tr("Differences between units"), QStringLiteral("differences"), [this] { return pairs_table(comparison_, fair_); }, {}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage
