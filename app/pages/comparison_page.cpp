// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "exchange/quantity_title.h"
#include "model/tags.h"
#include "models/pairs_model.h"
#include "models/quantity_cell.h"
#include "models/table_model.h"
#include "pages/comparing_bar.h"
#include "pages/comparison_choice.h"
#include "pages/comparison_overlays.h"
#include "pages/other_logbooks_line.h"
#include "pages/page_head.h"
#include "pages/page_parts.h"
#include "pages/vessel_key.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QFrame>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSortFilterProxyModel>
#include <QSplitter>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>
#include <QVBoxLayout>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int key_width_px = 300;
constexpr int least_table_lines = 8; ///< of text: the heads, two units and the scroll bar
constexpr int least_levels_lines = 30; ///< of text: vessels, table and pictures; a page with less room scrolls
constexpr std::size_t most_paired = 40;   ///< units; a larger matrix can no longer be read
constexpr std::size_t most_at_once = 40;  ///< units compared while the window waits; that takes less than a blink
constexpr int many_rows = 200;            ///< from which on what is typed may settle before the page follows
constexpr int settle_ms = 250;

/// Remarks and key: never less high than their lines, which a scroll area would not ask for.
class WordsColumn final : public QWidget {
public:
    using QWidget::QWidget;
    [[nodiscard]] QSize minimumSizeHint() const override { return {key_width_px, layout()->totalHeightForWidth(key_width_px)}; }
};

} // namespace

ComparisonPage::ComparisonPage(Document& document, Prompts& prompts, QWidget* parent)
    : QWidget(parent), document_(document), prompts_(prompts), comparer_(document), choice_(new ComparisonChoice(this)),
      comparing_bar_(new ComparingBar(this)), model_(new TableModel(this)),
      pairs_model_(new PairsModel(this)), sorted_(new QSortFilterProxyModel(this)),
      about_label_(new QLabel(this)), remarks_label_(new QLabel(this)), pairs_label_(new QLabel(this)), rows_group_(new QButtonGroup(this)),
      copy_button_(new QPushButton(tr("Copy table"), this)), export_button_(new QPushButton(tr("Export…"), this)), vessels_(new VesselRow(this)),
      table_(new QTableView(this)), bars_(new BarChart(this)), pairs_(new QTableView(this)), figure_combo_(new QComboBox(this)),
      errors_(new LineChart(this)), fractions_(new LineChart(this)), refresh_timer_(new QTimer(this)) {
    setObjectName(QStringLiteral("comparisonPage"));
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(SortRole);
    build();
    for (auto signal : {&Document::opened, &Document::closed})
        connect(&document_, signal, this, [this] { setOtherLogbooks({}); });
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged, &Document::loadListsChanged})
        connect(&document_, signal, this, &ComparisonPage::refresh);
    connect(&document_, &Document::readingsChanged, this, &ComparisonPage::refresh);
    connect(&comparer_, &UnitComparer::logbooksChanged, this, &ComparisonPage::refresh);
    connect(&comparer_, &UnitComparer::failed, this, &ComparisonPage::refused);
    connect(&comparer_, &UnitComparer::failed, this, [this] { stopped_ = true; });
    connect(&comparer_, &UnitComparer::ended, this, &ComparisonPage::refresh);
    connect(&comparer_, &UnitComparer::progressed, comparing_bar_, &ComparingBar::showProgress);
    connect(comparing_bar_, &ComparingBar::cancelAsked, this, [this] {
        stopped_ = true;
        comparer_.cancel();
    });
    connect(comparing_bar_, &ComparingBar::resumeAsked, this, [this] {
        stopped_ = false;
        refresh();
    });
    showComparison();
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
    // While a filter is being typed, very many rows need not follow each letter.
    refresh_timer_->setSingleShot(true);
    connect(refresh_timer_, &QTimer::timeout, this, &ComparisonPage::refresh);
    connect(choice_, &ComparisonChoice::changed, this, [this] {
        stale_ = true;
        if (model_->rowCount() > many_rows) refresh_timer_->start(settle_ms);
        else refresh();
    });
    auto* others = new OtherLogbooksLine(comparer_, this);
    connect(others, &OtherLogbooksLine::removeAsked, this, [this](const QString& path) {
        comparer_.removeLogbook(path);
        tellChosenLogbooks();
    });
    column->addWidget(others);
    column->addWidget(comparing_bar_);
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
    auto* words = new WordsColumn(frame);
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

CompareRows ComparisonPage::rows() const { return static_cast<CompareRows>(rows_group_->checkedId()); }

ExpectationBand ComparisonPage::band() const { return {choice_->bandLower(), choice_->bandUpper()}; }

QTabWidget* ComparisonPage::buildTabs() {
    auto* tabs = new QTabWidget(this);
    tabs->setObjectName(QStringLiteral("comparisonTabs"));
    tabs->setAccessibleName(tr("Pictures of the comparison"));
    tabs->addTab(scrolling(*bars_, tabs), tr("Usable fraction"));
    tabs->addTab(buildPairs(), tr("Differences"));
    fractions_->setObjectName(QStringLiteral("fractionsChart"));
    tabs->addTab(fractions_, tr("Against load"));
    errors_->setObjectName(QStringLiteral("errorsChart"));
    tabs->addTab(errors_, tr("Gauge errors"));
    return tabs;
}

QWidget* ComparisonPage::buildPairs() {
    auto* part = new QWidget(this);
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(spacing::grid_px, spacing::half_px, 0, 0);
    column->setSpacing(spacing::half_px);
    auto* line = new QHBoxLayout;
    auto* label = new QLabel(tr("how far the row's unit exceeds the column's in"), part);
    set_text_style(*label, Tone::soft);
    figure_combo_->setObjectName(QStringLiteral("pairFigureCombo"));
    figure_combo_->setAccessibleName(tr("Figure in which units are held against each other"));
    for (const PairFigure figure : all_pair_figures)
        figure_combo_->addItem(QString::fromStdString(quantity_title(pair_figure_key(figure))), static_cast<int>(figure));
    connect(figure_combo_, &QComboBox::currentIndexChanged, this, &ComparisonPage::showPairs);
    label->setBuddy(figure_combo_);
    line->addWidget(label);
    line->addWidget(figure_combo_);
    pairs_label_->setObjectName(QStringLiteral("pairsLabel"));
    pairs_label_->setWordWrap(true);
    set_text_style(*pairs_label_, Tone::soft, TextSize::caption);
    line->addSpacing(spacing::page_margin_px);
    line->addWidget(pairs_label_, 1);
    column->addLayout(line);
    pairs_->setObjectName(QStringLiteral("pairsView"));
    pairs_->setAccessibleName(tr("Differences between units"));
    pairs_->setModel(pairs_model_);
    make_table(*pairs_);
    pairs_->setSelectionBehavior(QAbstractItemView::SelectItems);
    pairs_->verticalHeader()->show();
    pairs_->verticalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    pairs_->horizontalHeader()->setSectionResizeMode(QHeaderView::ResizeToContents);
    column->addWidget(pairs_, 1);
    return part;
}

PairFigure ComparisonPage::pairFigure() const { return static_cast<PairFigure>(figure_combo_->currentData().toInt()); }

void ComparisonPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
}

void ComparisonPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    QTimer::singleShot(0, this, &ComparisonPage::fitWideColumns); // the table has its new width only then
}

void ComparisonPage::refresh() {
    stale_ = true;
    if (!isVisible()) return;
    stale_ = false;
    if (const QStringList paths = std::exchange(other_logbooks_, {}); !paths.isEmpty()) {
        comparer_.setLogbooks(paths); // which comes back here
        for (const OtherLogbook& other : comparer_.logbooks())
            if (!other.trouble.isEmpty()) emit refused(other.trouble);
        return;
    }
    const std::size_t waiting = comparer_.waitingUnits(rows());
    complete_ = waiting <= most_at_once;
    if (complete_) {
        stopped_ = false;
        if (!comparer_.isWorking()) comparing_bar_->hide();
        showComparison();
        return;
    }
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(false);
    if (comparison_.rows.empty()) {
        const QString words = tr("The units are not compared yet.");
        vessels_->setContent({{}, {}, words});
        BarContent none;
        none.empty_text = words;
        bars_->setContent(none);
        about_label_->clear();
    }
    if (stopped_ && !comparer_.isWorking()) comparing_bar_->showStopped(static_cast<int>(waiting));
    else comparer_.start(rows());
}

void ComparisonPage::showComparison() {
    comparison_ = document_.isOpen() && complete_ && isVisible() ? comparer_.comparison(rows()) : Comparison{};
    std::vector<std::string> tags;
    for (const ComparisonRow& row : comparison_.rows) tags.insert(tags.end(), row.unit.tags.begin(), row.unit.tags.end());
    choice_->setTags(sorted_tags(std::move(tags)));
    choice_->setLoadLists(document_.loadLists());
    keep_units(comparison_, [this](const Unit& unit) { return choice_->wants(unit); });
    fair_ = compare_at(comparison_, choice_->load());
    showTable();
    showPairs();
    showPictures();
    showWords();
}

bool ComparisonPage::isComplete() {
    if (stale_) refresh();
    if (!complete_) emit told(tr("The units are not compared yet; the line above them says how far that is."));
    return complete_;
}

void ComparisonPage::addLogbooks(const QStringList& paths) {
    for (const QString& path : paths)
        if (const auto added = comparer_.addLogbook(path); !added) emit refused(QString::fromStdString(added.error().sentence()));
    tellChosenLogbooks();
}

void ComparisonPage::setOtherLogbooks(const QStringList& paths) {
    comparer_.setLogbooks({});
    other_logbooks_ = paths;
    refresh();
}

void ComparisonPage::tellChosenLogbooks() {
    QStringList paths;
    for (const OtherLogbook& other : comparer_.logbooks()) paths << other.path;
    emit otherLogbooksChosen(paths);
}

void ComparisonPage::showPairs() {
    const std::vector<std::string> names = row_names(comparison_);
    paired_ = fair_order(fair_);
    paired_.resize(std::min(paired_.size(), most_paired));
    std::ranges::sort(paired_); // as in the table
    std::vector<std::string> shown_names;
    for (const std::size_t row : paired_) shown_names.push_back(names[row]);
    pairs_model_->setPairs(shown_names, compare_pairs(comparison_, fair_, paired_, pairFigure()));
    pairs_label_->setText(tr("Of %1 rows the %2 with the largest usable fraction; filter to see others.").arg(names.size()).arg(most_paired));
    pairs_label_->setVisible(names.size() > most_paired);
}

void ComparisonPage::showPictures() {
    vessels_->setContent(comparison_vessels(comparison_, fair_, band()));
    bars_->setContent(comparison_bars(comparison_, fair_, band()));
    fractions_->setContent(fraction_overlay(comparison_, fair_));
    errors_->setContent(gauge_error_overlay(
        comparison_, [this](const std::string& run_uuid) -> const RunAnalysis& { return comparer_.analysis(run_uuid); }));
}

void ComparisonPage::showWords() {
    QString remarks;
    for (const auto* list : {&fair_.remarks, &comparison_.remarks})
        for (const std::string& remark : *list) remarks += QString::fromStdString(remark) + QStringLiteral("\n");
    for (const std::string& notice : comparer_.notices()) remarks += QString::fromStdString(notice) + QStringLiteral("\n");
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
    QString where = tr("as tested"), in_full;
    if (fair_.load) {
        // What a load that is switched consists of would push the buttons out of the line.
        in_full = QString::fromStdString(common_load_text(*fair_.load));
        where = tr("at %1").arg(fair_.load->duty < 1 ? in_full.left(in_full.lastIndexOf(QLatin1String(" ("))) : in_full);
    }
    about_label_->setToolTip(in_full);
    about_label_->setText(units == 0 ? tr("no drains to show") : tr("%1 units, %2 drains, %3").arg(units).arg(drains).arg(where));
    head_->fit();
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(!comparison_.rows.empty());
}

} // namespace ullage
