// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/meters/meters_page.h"

#include "base/number.h"
#include "delegates/quantity_delegate.h"
#include "models/meters_model.h"
#include "pages/meters/meter_story.h"
#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QItemSelectionModel>
#include <QLabel>
#include <QPushButton>
#include <QScopedValueRollback>
#include <QTableView>
#include <QVBoxLayout>

namespace ullage {

MetersPage::MetersPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), model_(new MetersModel(document, this)), table_(new QTableView), about_(new QLabel),
      empty_(new QLabel(tr("No meters yet. Add meter takes what its data sheet says; without a meter a run has the gauge only."))),
      story_(new_paragraph("meterStoryLabel", Tone::ink)), edit_(new QPushButton(tr("Edit meter"))), withdraw_(new QPushButton(tr("Withdraw"))),
      live_(new QPushButton(tr("Read live…"))) {
    setObjectName(QStringLiteral("metersPage"));
    auto* title = new QLabel(tr("Meters"));
    set_text_style(*title, Tone::ink, TextSize::title);
    set_text_style(*about_, Tone::soft);
    auto* add = new QPushButton(tr("Add meter"));
    add->setObjectName(QStringLiteral("addMeterButton"));
    edit_->setObjectName(QStringLiteral("editMeterButton"));
    withdraw_->setObjectName(QStringLiteral("withdrawMeterButton"));
    live_->setObjectName(QStringLiteral("meterSourceButton"));
    make_primary(*add);
    connect(add, &QPushButton::clicked, this, &MetersPage::addMeterAsked);
    connect(edit_, &QPushButton::clicked, this, &MetersPage::editMeterAsked);
    connect(withdraw_, &QPushButton::clicked, this, &MetersPage::withdrawMeterAsked);
    connect(live_, &QPushButton::clicked, this, &MetersPage::sourceAsked);
    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(title, 0, Qt::AlignBaseline);
    head->addWidget(about_, 1, Qt::AlignBaseline);
    for (auto* action : {withdraw_, live_, edit_, add}) head->addWidget(action);

    auto* panel = new QFrame;
    make_panel(*panel);
    table_->setObjectName(QStringLiteral("metersTable"));
    table_->setAccessibleName(tr("meters"));
    table_->setModel(model_);
    table_->setItemDelegate(new QuantityDelegate(table_));
    table_->setSelectionMode(QAbstractItemView::SingleSelection);
    table_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table_->setTabKeyNavigation(false);
    make_table(*table_);
    table_->horizontalHeader()->setStretchLastSection(true);
    connect(table_, &QTableView::activated, this, &MetersPage::editMeterAsked);
    connect(table_->selectionModel(), &QItemSelectionModel::currentRowChanged, this, [this](const QModelIndex& current) {
        tell();
        if (!current.isValid() || restoring_) return;
        chosen_ = selectedMeter();
        emit meterChosen(chosen_);
    });
    empty_->setObjectName(QStringLiteral("noMetersLabel"));
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setWordWrap(true);
    empty_->setMargin(spacing::group_gap_px);
    set_text_style(*empty_, Tone::soft);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(1, 1, 1, 1);
    column->addWidget(table_);
    column->addWidget(empty_);

    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    page->addLayout(head);
    page->addWidget(panel, 2);
    story_->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    story_->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::grid_px, spacing::grid_px);
    page->addWidget(scrolling(*story_, this), 3);
    for (auto signal : {&Document::opened, &Document::closed, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &MetersPage::refresh);
    refresh();
}

void MetersPage::showMeter(const MeterId& meter_uuid) {
    const int row = model_->rowOf(meter_uuid);
    if (row >= 0) table_->setCurrentIndex(model_->index(row, 0));
    refresh();
}

void MetersPage::focusTable() { table_->setFocus(Qt::OtherFocusReason); }

void MetersPage::choose() {
    const int row = model_->rowOf(chosen_);
    if (row < 0 || table_->currentIndex().isValid()) return;
    const QScopedValueRollback restoring(restoring_, true); // nobody asked to be shown this page
    table_->setCurrentIndex(model_->index(row, 0));
}

void MetersPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    tell();
}

void MetersPage::tell() {
    if (!isVisible()) return; // the story is worked out from the runs, for those who read it
    const MeterStory story = meter_story(document_, selectedMeter());
    QStringList lines;
    for (const QString& line : {story.certificate, story.runs, story.moved})
        if (!line.isEmpty()) lines << line;
    if (!story.in_series.isEmpty()) lines << QString() << tr("In series with other meters") << story.in_series;
    if (!story.history.isEmpty()) lines << QString() << tr("History of its data") << story.history;
    story_->setText(lines.join(QLatin1Char('\n')));
}

MeterId MetersPage::selectedMeter() const {
    const auto current = table_->currentIndex();
    return current.isValid() ? id_of<MeterId>(current.data(MetersModel::UuidRole).toString()) : MeterId();
}

void MetersPage::refresh() {
    const auto count = document_.meters().size();
    about_->setText(text_of(say_count(static_cast<long>(count), phrases("ullage", "%n meters", "%n meter"))));
    table_->setVisible(count > 0);
    empty_->setVisible(count == 0);
    choose();
    const bool chosen = table_->currentIndex().isValid();
    for (auto* button : {edit_, withdraw_, live_}) button->setEnabled(chosen && !document_.isLooking());
    tell();
    // The last column takes what is left.
    for (int column = 0; column + 1 < MetersModel::ColumnCount; ++column) {
        table_->resizeColumnToContents(column);
        table_->setColumnWidth(column, table_->columnWidth(column) + spacing::grid_px);
    }
}

} // namespace ullage
