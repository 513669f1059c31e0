// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/comparison_page.h"

#include "chart_content/comparison_overlays.h"
#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "model/tags.h"
#include "models/pairs_model.h"
#include "models/quantity_cell.h"
#include "models/table_model.h"
#include "pages/comparison/comparing_bar.h"
#include "pages/comparison/comparison_choice.h"
#include "pages/parts/page_head.h"
#include "services/background_work.h"
#include "style/roles.h"
#include "style/spacing.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTableView>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr std::size_t most_paired = 40;  ///< units; a larger matrix can no longer be read
constexpr std::size_t most_at_once = 40; ///< units compared while the window waits; that takes less than a blink

} // namespace

ComparisonPage::ComparisonPage(Document& document, Prompts& prompts, QWidget* parent)
    : QWidget(parent), document_(document), prompts_(prompts), comparer_(document), choice_(new ComparisonChoice(this)),
      comparing_bar_(new ComparingBar(this)), model_(new TableModel(this)), pairs_model_(new PairsModel(this)),
      sorted_(new QSortFilterProxyModel(this)), about_label_(new QLabel(this)), remarks_label_(new QLabel(this)), pairs_label_(new QLabel(this)),
      rows_group_(new QButtonGroup(this)), copy_button_(new QPushButton(tr("Copy table"), this)),
      export_button_(new QPushButton(tr("Export…"), this)), vessels_(new VesselRow(this)), table_(new QTableView(this)), bars_(new BarChart(this)),
      pairs_(new QTableView(this)), figure_combo_(new QComboBox(this)), errors_(new LineChart(this)), fractions_(new LineChart(this)),
      refresh_timer_(new QTimer(this)) {
    setObjectName(QStringLiteral("comparisonPage"));
    comparer_.setReader([this](const QString& path) {
        return result_beside(this, tr("Reading %1").arg(QFileInfo(path).fileName()),
                             [&](WorkProgress&) { return look_into_logbook(path, document_.clock()); });
    });
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(SortRole);
    build();
    for (auto signal : {&Document::opened, &Document::closed}) connect(&document_, signal, this, [this] { setOtherLogbooks({}); });
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged,
                        &Document::loadListsChanged})
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

CompareRows ComparisonPage::rows() const { return static_cast<CompareRows>(rows_group_->checkedId()); }

ExpectationBand ComparisonPage::band() const { return {choice_->bandLower(), choice_->bandUpper()}; }

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
    if (!other_logbooks_.isEmpty()) {
        // Reading lets events through, which a page that is about to be shown must not.
        QTimer::singleShot(0, this, &ComparisonPage::readOtherLogbooks);
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

void ComparisonPage::readOtherLogbooks() {
    const QStringList paths = std::exchange(other_logbooks_, {});
    if (paths.isEmpty()) return;
    comparer_.setLogbooks(paths); // which comes back to refresh()
    for (const OtherLogbook& other : comparer_.logbooks())
        if (!other.trouble.isEmpty()) emit refused(other.trouble);
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
    fitPairs();
}

void ComparisonPage::fitPairs() {
    // By the longest text of each column: measuring all of them at every change of style would hold up the window.
    const QFontMetrics text(pairs_->font()), head(pairs_->horizontalHeader()->font());
    const int margin = 4 * spacing::grid_px;
    for (int column = 0; column < pairs_model_->columnCount(); ++column) {
        QString longest;
        for (int row = 0; row < pairs_model_->rowCount(); ++row)
            for (const QString& line : pairs_model_->index(row, column).data().toString().split(QLatin1Char('\n')))
                if (line.size() > longest.size()) longest = line;
        QFont bold = pairs_->font();
        bold.setBold(true);
        const int name = head.horizontalAdvance(pairs_model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        pairs_->horizontalHeader()->resizeSection(column, std::max(QFontMetrics(bold).horizontalAdvance(longest), name) + margin);
    }
    pairs_->verticalHeader()->setDefaultSectionSize(2 * text.height() + spacing::grid_px);
}

void ComparisonPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    QTimer::singleShot(0, this, [this] {
        make_table(*table_); // its rows are as high as their text
        if (!isVisible()) return;
        fitColumns();
        fitPairs();
    });
}

void ComparisonPage::showPictures() {
    vessels_->setContent(comparison_vessels(comparison_, fair_, band()));
    bars_->setContent(comparison_bars(comparison_, fair_, band()));
    fractions_->setContent(fraction_overlay(comparison_, fair_));
    errors_->setContent(
        gauge_error_overlay(comparison_, [this](const std::string& run_uuid) -> const RunAnalysis& { return comparer_.analysis(run_uuid); }));
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
