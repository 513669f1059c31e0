// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/vessel_row.h"
#include "delegates/quantity_delegate.h"
#include "dialogs/export_dialog.h"
#include "exchange/comparison_table.h"
#include "models/quantity_cell.h"
#include "models/table_copy.h"
#include "models/table_model.h"
#include "pages/comparison_pictures.h"
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
#include <QPushButton>
#include <QScrollArea>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

namespace ullage {

namespace {

constexpr int key_width_px = 300;

} // namespace

ComparisonPage::ComparisonPage(Document& document, Prompts& prompts, QWidget* parent)
    : QWidget(parent), document_(document), prompts_(prompts), model_(new TableModel(this)), sorted_(new QSortFilterProxyModel(this)),
      about_label_(new QLabel(this)), remarks_label_(new QLabel(this)), rows_group_(new QButtonGroup(this)),
      copy_button_(new QPushButton(tr("Copy table"), this)), export_button_(new QPushButton(tr("Export…"), this)), vessels_(new VesselRow(this)), table_(new QTableView(this)),
      bars_(new BarChart(this)) {
    setObjectName(QStringLiteral("comparisonPage"));
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(SortRole);
    build();
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &ComparisonPage::refresh);
    connect(&document_, &Document::readingsChanged, this, &ComparisonPage::refresh);
    refresh();
}

void ComparisonPage::build() {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px + 2);
    column->addWidget(buildHead());
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
    QFrame* bars_panel = new_panel(levels);
    auto* bars_column = new QVBoxLayout(bars_panel);
    bars_column->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::grid_px, spacing::grid_px);
    bars_column->addWidget(bars_);
    levels->addWidget(bars_panel);
    levels->setStretchFactor(0, 5);
    levels->setStretchFactor(1, 3);
    levels->setStretchFactor(2, 4);
    column->addWidget(levels, 1);
}

QWidget* ComparisonPage::buildHead() {
    auto* head = new QWidget(this);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::grid_px);
    auto* title = new QLabel(tr("Comparison"), head);
    set_text_style(*title, Tone::ink, TextSize::title);
    set_text_style(*about_label_, Tone::soft);
    about_label_->setObjectName(QStringLiteral("comparisonAboutLabel"));
    line->addWidget(title);
    line->addWidget(about_label_, 1);
    auto* rows_label = new QLabel(tr("rows"), head);
    set_text_style(*rows_label, Tone::soft);
    line->addWidget(rows_label);
    const std::pair<CompareRows, QString> choices[] = {{CompareRows::one_per_unit, tr("one for each unit")},
                                                       {CompareRows::every_drain, tr("every drain")}};
    for (const auto& [rows, words] : choices) {
        auto* button = new QPushButton(words, head);
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
    return head;
}

QWidget* ComparisonPage::buildVessels() {
    QFrame* frame = new_panel(this);
    auto* line = new QHBoxLayout(frame);
    line->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::page_margin_px, spacing::grid_px);
    line->setSpacing(spacing::page_margin_px);
    auto* scroll = new QScrollArea(frame);
    scroll->setWidgetResizable(true);
    scroll->setFrameShape(QFrame::NoFrame);
    vessels_->setObjectName(QStringLiteral("vesselsWidget"));
    scroll->setWidget(vessels_);
    // The panel's own ground shows through; setWidget() had filled it.
    scroll->viewport()->setAutoFillBackground(false);
    vessels_->setAutoFillBackground(false);
    line->addWidget(scroll, 1);
    auto* rule = new QFrame(frame);
    make_rule(*rule, true);
    line->addWidget(rule);
    auto* side = new QVBoxLayout;
    auto* key = new VesselKey(frame);
    key->setFixedWidth(key_width_px);
    side->addWidget(key);
    side->addStretch();
    remarks_label_->setObjectName(QStringLiteral("comparisonRemarksLabel"));
    remarks_label_->setWordWrap(true);
    remarks_label_->setTextFormat(Qt::PlainText);
    remarks_label_->setFixedWidth(key_width_px);
    set_text_style(*remarks_label_, Tone::soft, TextSize::caption);
    side->addWidget(remarks_label_);
    line->addLayout(side);
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
    table_->verticalHeader()->hide();
    table_->setSelectionMode(QAbstractItemView::ExtendedSelection);
    offer_table_copy(*table_, [this] { return shownTable(true); });
    connect(table_, &QTableView::activated, this, [this](const QModelIndex& index) {
        const int row = sorted_->mapToSource(index).row();
        if (row >= 0 && row < static_cast<int>(comparison_.rows.size()))
            emit runRequested(QString::fromStdString(comparison_.rows[static_cast<std::size_t>(row)].run.uuid));
    });
}

CompareRows ComparisonPage::rows() const { return static_cast<CompareRows>(rows_group_->checkedId()); }

void ComparisonPage::refresh() {
    comparison_ = document_.isOpen() ? document_.comparison(rows()) : Comparison{};
    model_->setTable(comparison_table(comparison_));
    // Maker and meter are in every export; the run of a single row a unit is named under its bar.
    for (const char* hidden : {"maker", "meter"}) table_->setColumnHidden(model_->columnOf(hidden), true);
    table_->setColumnHidden(model_->columnOf("run"), rows() == CompareRows::one_per_unit);
    // Without the room that each head keeps for the sort indicator all columns fit into the smallest window.
    table_->horizontalHeader()->setSortIndicatorShown(false);
    table_->resizeColumnsToContents();
    table_->horizontalHeader()->setSortIndicatorShown(true);
    table_->horizontalHeader()->setStretchLastSection(false);
    if (const int gauge = model_->columnOf("gauge_verdict"); gauge >= 0)
        table_->horizontalHeader()->setSectionResizeMode(gauge, QHeaderView::Stretch);
    vessels_->setContent(comparison_vessels(comparison_));
    bars_->setContent(comparison_bars(comparison_));
    QString remarks;
    for (const std::string& remark : comparison_.remarks) remarks += QString::fromStdString(remark) + QStringLiteral("\n");
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
    about_label_->setText(units == 0 ? tr("no drains yet") : tr("%1 units, %2 drains, as tested").arg(units).arg(drains));
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(!comparison_.rows.empty());
}

Table ComparisonPage::shownTable(bool chosen_only) const {
    std::vector<std::size_t> rows, chosen;
    for (int row = 0; row < sorted_->rowCount(); ++row) {
        const auto source = static_cast<std::size_t>(sorted_->mapToSource(sorted_->index(row, 0)).row());
        rows.push_back(source);
        if (table_->selectionModel()->isRowSelected(row)) chosen.push_back(source);
    }
    return with_rows(model_->table(), chosen_only && !chosen.empty() ? chosen : rows);
}

void ComparisonPage::copyTable() {
    if (copy_table(shownTable(false))) emit told(tr("The table is on the clipboard, ready to be pasted into a spreadsheet."));
}

void ComparisonPage::exportComparison() {
    if (comparison_.rows.empty()) return;
    std::vector<ExportSubject> subjects;
    subjects.push_back({tr("Comparison"), QStringLiteral("comparison"), [this] { return model_->table(); },
                        {{tr("vessels"), comparison_vessels(comparison_)}, {tr("usable fraction"), comparison_bars(comparison_)}}});
    auto* dialog = new ExportDialog(std::move(subjects), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage
