// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/unit/unit_page.h"

#include "base/number.h"
#include "charts/vessel_row.h"
#include "delegates/quantity_delegate.h"
#include "models/unit_runs_model.h"
#include "pages/parts/page_parts.h"
#include "pages/unit/claims_view.h"
#include "pages/unit/unit_claims.h"
#include "pages/unit/unit_fit_view.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"
#include "style/wrapped_label.h"
#include "unit/loss_split.h"

#include <QFrame>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QResizeEvent>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabBar>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int vessel_panel_px = 260;
constexpr int most_whole_runs = 8; ///< that are in sight without scrolling their table
constexpr int least_runs = 3;      ///< that there is room for
constexpr int narrow_letters = 92; ///< a page with room for fewer puts its parts below one another
constexpr int stacked_vessel_lines = 18;

} // namespace

UnitPage::UnitPage(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), model_(new UnitRunsModel(document, this)), title_(new QLabel), about_(new QLabel), empty_(new QLabel),
      claims_(new QGridLayout), fit_(new UnitFitView), vessel_(new VesselRow), vessel_words_(new QLabel), runs_(new QTableView),
      below_(new QTabWidget), tested_(new ClaimsView) {
    setObjectName(QStringLiteral("unitPage"));
    top_ = new QHBoxLayout;
    top_->setSpacing(spacing::panel_gap_px);
    auto* left = new QVBoxLayout;
    left->setSpacing(spacing::grid_px + 2);
    left->addWidget(makeClaims());
    left->addWidget(fit_, 1);
    top_->addLayout(left, 1);
    vessel_panel_ = new QFrame;
    vessel_panel_->setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Ignored);
    make_panel(*vessel_panel_);
    auto* picture_column = new QVBoxLayout(vessel_panel_);
    picture_column->setContentsMargins(spacing::grid_px, spacing::grid_px, spacing::grid_px, spacing::panel_gap_px);
    picture_column->addWidget(vessel_, 1);
    vessel_words_->setWordWrap(true);
    vessel_words_->setAlignment(Qt::AlignHCenter);
    set_text_style(*vessel_words_, Tone::soft, TextSize::caption);
    picture_column->addWidget(vessel_words_);
    top_->addWidget(vessel_panel_);

    auto* content = new QWidget;
    auto* levels = new QVBoxLayout(content);
    levels->setContentsMargins(0, 0, 0, 0);
    levels->setSpacing(spacing::grid_px + 2);
    levels->addLayout(top_, 3);
    levels->addWidget(makeRuns(), 1);
    auto* page = new QVBoxLayout(this);
    page->setContentsMargins(spacing::page_margin_px, spacing::page_margin_px - 2, spacing::page_margin_px, spacing::grid_px);
    page->setSpacing(spacing::grid_px + 2);
    page->addWidget(makeHead());
    levels_ = scrolling(*content, this);
    levels_->setObjectName(QStringLiteral("unitLevels"));
    page->addWidget(levels_, 1);

    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged})
        connect(&document_, signal, this, &UnitPage::follow);
    connect(&document_, &Document::readingsChanged, this, [this](const RunId& run) {
        const auto* record = document_.run(run);
        if (record && record->unit.uuid == unit_uuid_) follow();
    });
}

QWidget* UnitPage::makeHead() {
    auto* head = new QWidget;
    title_->setObjectName(QStringLiteral("unitNameLabel"));
    title_->setTextFormat(Qt::PlainText);
    about_->setObjectName(QStringLiteral("unitAboutLabel"));
    about_->setTextFormat(Qt::PlainText);
    about_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    set_text_style(*title_, Tone::ink, TextSize::title);
    set_text_style(*about_, Tone::soft);
    import_ = new_button("importSheetButton", tr("Import run sheet"));
    edit_ = new_button("editUnitButton", tr("Edit claims"));
    report_ = new_button("unitReportButton", tr("Make report"));
    start_ = new_button("startRunButton", tr("Start run"));
    make_primary(*start_);
    connect(import_, &QPushButton::clicked, this, &UnitPage::importAsked);
    connect(edit_, &QPushButton::clicked, this, &UnitPage::editUnitAsked);
    connect(start_, &QPushButton::clicked, this, &UnitPage::startRunAsked);
    connect(report_, &QPushButton::clicked, this, &UnitPage::reportAsked);
    auto* line = new QHBoxLayout(head);
    line->setContentsMargins(0, 0, 0, 0);
    line->setSpacing(spacing::panel_gap_px);
    line->addWidget(title_, 0, Qt::AlignBaseline);
    line->addWidget(about_, 1, Qt::AlignBaseline);
    for (auto* action : {import_, edit_, report_, start_}) line->addWidget(action);
    return head;
}

QWidget* UnitPage::makeClaims() {
    auto* panel = new QFrame;
    panel->setObjectName(QStringLiteral("claimsPanel"));
    make_panel(*panel);
    auto* head = new QLabel(tr("What the maker claims"));
    set_text_style(*head, Tone::soft, TextSize::group);
    claims_->setHorizontalSpacing(spacing::group_gap_px);
    claims_->setVerticalSpacing(spacing::grid_px);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->setSpacing(spacing::panel_gap_px);
    column->addWidget(head);
    column->addLayout(claims_);
    column->addStretch();
    return panel;
}

QWidget* UnitPage::makeRuns() {
    auto* panel = new QFrame;
    make_panel(*panel);
    runs_->setObjectName(QStringLiteral("runsTable"));
    runs_->setAccessibleName(tr("runs of this unit"));
    runs_->setModel(model_);
    runs_->setItemDelegate(new QuantityDelegate(runs_));
    runs_->setSelectionMode(QAbstractItemView::SingleSelection);
    runs_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    runs_->setTabKeyNavigation(false);
    make_table(*runs_);
    runs_->horizontalHeader()->setStretchLastSection(true);
    connect(runs_, &QTableView::activated, this,
            [this](const QModelIndex& index) { emit runChosen(id_of<RunId>(index.data(UnitRunsModel::UuidRole).toString())); });
    empty_->setObjectName(QStringLiteral("noRunsLabel"));
    empty_->setText(tr("No runs yet. With the unit full and the meter between its socket and the load, choose Start run; a run "
                       "noted elsewhere comes in with Import run sheet."));
    empty_->setWordWrap(true);
    empty_->setAlignment(Qt::AlignCenter);
    empty_->setMargin(spacing::group_gap_px);
    set_text_style(*empty_, Tone::soft);
    auto* column = new QVBoxLayout(panel);
    column->setContentsMargins(1, 1, 1, 1);
    column->addWidget(runs_);
    column->addWidget(empty_);
    auto* scroll = new QScrollArea;
    scroll->setObjectName(QStringLiteral("testedScroll"));
    scroll->setFrameShape(QFrame::NoFrame);
    scroll->setWidgetResizable(true);
    scroll->setWidget(tested_);
    scroll->viewport()->setAutoFillBackground(false);
    tested_->setAutoFillBackground(false);
    below_->setObjectName(QStringLiteral("unitBelowTabs"));
    below_->setAccessibleName(tr("Runs, and claims tested"));
    below_->tabBar()->setExpanding(false);
    below_->addTab(panel, tr("Runs"));
    below_->addTab(scroll, tr("Claims tested"));
    connect(below_, &QTabWidget::currentChanged, this, [this](int tab) {
        fillTested(); // what they show is worked out only when somebody looks
        arrangeLevels();
        // Claims with their evidence are long: they come into sight where the page is too low for both.
        if (tab == 1) QTimer::singleShot(0, this, [this] { levels_->ensureWidgetVisible(below_, 0, 0); });
    });
    connect(tested_, &ClaimsView::priceChanged, this, [this] {
        fillTested();
        emit kwhPriceTyped(tested_->kwhPriceText());
    });
    return below_;
}

void UnitPage::showUnit(const UnitId& unit_uuid) {
    unit_uuid_ = unit_uuid;
    model_->setUnit(unit_uuid);
    refresh();
}

void UnitPage::follow() {
    stale_ = !isVisible();
    if (!stale_) refresh();
}

void UnitPage::refresh() {
    stale_ = false;
    const auto* unit = document_.unit(unit_uuid_);
    if (!unit) return;
    const auto runs = document_.runs(unit_uuid_);
    title_->setText(text_of(unit->name));
    QStringList about;
    if (!unit->maker.empty()) about << text_of(unit->maker);
    about << text_of(say_count(static_cast<long>(runs.size()), phrases("ullage", "%n runs", "%n run")));
    if (!unit->remark.empty()) about << text_of(unit->remark);
    about_->setText(about.join(QStringLiteral(", ")));
    about_->setToolTip(about_->text());
    fillClaims(*unit);
    fillVessel(*unit);
    fillFit(*unit);
    fillTested();
    runs_->setVisible(!runs.empty());
    report_->setEnabled(!runs.empty());
    for (QPushButton* changing : {import_, edit_, start_}) changing->setEnabled(!document_.isLooking());
    empty_->setVisible(runs.empty());
    columns_arranged_ = false;
    if (window()->isVisible()) arrange(); // else once it is shown, with the size of text that it has then
}

void UnitPage::arrange() {
    if (!std::exchange(columns_arranged_, true)) arrangeColumns();
    arrangeLevels();
}

void UnitPage::arrangeLevels() {
    const bool narrow = width() < narrow_letters * fontMetrics().averageCharWidth();
    top_->setDirection(narrow ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight);
    fit_->setStacked(narrow);
    vessel_panel_->setMinimumWidth(narrow ? 0 : vessel_panel_px);
    vessel_panel_->setMaximumWidth(narrow ? QWIDGETSIZE_MAX : vessel_panel_px);
    vessel_panel_->setMinimumHeight(narrow ? stacked_vessel_lines * fontMetrics().height() : 0);
    int below = 0;
    if (below_->currentIndex() == 0) {
        const int row_height = runs_->verticalHeader()->defaultSectionSize();
        below = runs_->horizontalHeader()->sizeHint().height() + runs_->horizontalScrollBar()->sizeHint().height() + 2 +
                std::clamp(model_->rowCount(), least_runs, most_whole_runs) * row_height;
        if (!empty_->isHidden()) below = empty_->heightForWidth(std::max(1, below_->width()));
    } else {
        below = tested_->layout()->totalHeightForWidth(std::max(1, below_->width() - spacing::page_margin_px));
    }
    below_->setMinimumHeight(below_->tabBar()->sizeHint().height() + below);
}

void UnitPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    QTimer::singleShot(0, this, [this] {
        if (window()->isVisible()) arrangeLevels();
    });
}

void UnitPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) arrangeLevels();
}

void UnitPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
    arrange(); // only now the page has the size of text that it is shown with
}

void UnitPage::fillClaims(const Unit& unit) {
    while (auto* item = claims_->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    constexpr int columns = 5;
    int at = 0;
    for (const auto& claim : unit_claims(unit)) {
        auto* name = new QLabel(claim.name);
        set_text_style(*name, Tone::soft, TextSize::caption);
        auto* value = new WrappedLabel(claim.value.isEmpty() ? tr("not stated") : claim.value);
        value->setTextFormat(Qt::PlainText);
        set_text_style(*value, claim.value.isEmpty() ? Tone::soft : Tone::ink);
        auto* pair = new QWidget;
        auto* lines = new QVBoxLayout(pair);
        lines->setContentsMargins(0, 0, 0, 0);
        lines->setSpacing(2);
        lines->addWidget(name);
        lines->addWidget(value);
        claims_->addWidget(pair, at / columns, at % columns, Qt::AlignTop);
        ++at;
    }
    for (int column = 0; column < columns; ++column) claims_->setColumnStretch(column, 1);
}

void UnitPage::fillVessel(const Unit& unit) {
    const auto told = representative_run(document_, unit.uuid);
    VesselRowContent content;
    content.description = tr("Vessel of %1").arg(text_of(unit.name));
    VesselColumn column;
    vessel_->setToolTip({});
    column.vessel.rated_wh = unit.rated_energy_wh.value_or(0);
    if (told) {
        column.vessel.delivered_wh = told->delivered.value;
        column.vessel.lower_wh = told->delivered.lower;
        column.vessel.upper_wh = told->delivered.upper;
        // Hatched only where the drains know the draw: a vessel has no room for "if".
        const auto split = split_losses(*document_.run(told->run_uuid), document_.analysis(told->run_uuid), document_.unitFit(unit.uuid));
        if (!split.draw_from_this_run) column.vessel.no_load_taken_wh = split.no_load_taken_wh.value;
        vessel_->setToolTip(text_of(split.sentence));
    }
    content.columns.push_back(column);
    vessel_->setContent(content);
    vessel_words_->setText(!unit.rated_energy_wh ? tr("No rated energy is stated, so there is nothing to fill.")
                           : told                ? told->words
                                                 : tr("Empty until a drain has been noted."));
}

void UnitPage::fillFit(const Unit& unit) {
    const auto& fit = document_.unitFit(unit.uuid);
    fit_->setUnit(analyse_unit(unit, fit),
                  measured_drains(fit, [this](const RunId& run) -> const EnergyAnalysis& { return document_.analysis(run).energy; }));
}

void UnitPage::fillTested() {
    const auto* unit = document_.unit(unit_uuid_);
    if (!unit || below_->currentIndex() != 1) return;
    std::optional<EnergyPrice> price;
    if (const auto per_kwh = tested_->kwhPrice()) price = EnergyPrice{*per_kwh, unit->currency};
    tested_->setClaims(check_claims(*unit, document_.runs(unit_uuid_), document_.unitFit(unit_uuid_), price), raw_text(unit->currency));
}

void UnitPage::setKwhPriceText(const QString& text) { tested_->setKwhPriceText(text); }

void UnitPage::arrangeColumns() {
    // The last column takes what is left.
    for (int column = 0; column + 1 < UnitRunsModel::ColumnCount; ++column) {
        runs_->resizeColumnToContents(column);
        runs_->setColumnWidth(column, runs_->columnWidth(column) + spacing::grid_px);
    }
}

} // namespace ullage
