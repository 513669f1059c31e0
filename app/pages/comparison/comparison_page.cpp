// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/comparison/comparison_page.h"

#include "charts/bar_chart.h"
#include "charts/line_chart.h"
#include "charts/vessel_row.h"
#include "models/pairs_model.h"
#include "models/quantity_cell.h"
#include "models/table_model.h"
#include "pages/comparison/answer_view.h"
#include "pages/comparison/comparing_bar.h"
#include "pages/comparison/comparison_choice.h"
#include "pages/comparison/models_view.h"
#include "pages/parts/late_tabs.h"
#include "pages/parts/page_head.h"
#include "pages/parts/turn_steps.h"
#include "services/background_work.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QEvent>
#include <QFileInfo>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSortFilterProxyModel>
#include <QTabWidget>
#include <QTableView>
#include <QTimer>

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

constexpr int most_pair_letters = 34;            ///< of a line in a cell of the differences
constexpr std::size_t most_rows_in_a_turn = 200; ///< more come on the page in several turns of the event loop

} // namespace

ComparisonPage::ComparisonPage(Document& document, Prompts& prompts, QWidget* parent)
    : QWidget(parent), document_(document), prompts_(prompts), presenter_(document), choice_(new ComparisonChoice(this)),
      comparing_bar_(new ComparingBar(this)), answer_(new AnswerView(this)), model_(new TableModel(this)), pairs_model_(new PairsModel(this)),
      sorted_(new QSortFilterProxyModel(this)), about_label_(new QLabel(this)), remarks_label_(new QLabel(this)), pairs_label_(new QLabel(this)),
      unknown_label_(new QLabel(this)), rows_group_(new QButtonGroup(this)), columns_button_(new QPushButton(tr("Columns…"), this)),
      copy_button_(new QPushButton(tr("Copy table"), this)), export_button_(new QPushButton(tr("Export…"), this)), vessels_(new VesselRow(this)),
      table_(new QTableView(this)), bars_(new BarChart(this)), pairs_(new QTableView(this)), figure_combo_(new QComboBox(this)),
      errors_(new LineChart(this)), fractions_(new LineChart(this)), steps_(new TurnSteps(this)), models_view_(new ModelsView(this)),
      refresh_timer_(new QTimer(this)) {
    setObjectName(QStringLiteral("comparisonPage"));
    presenter_.comparer().setReader([this](const QString& path) {
        return result_beside(this, tr("Reading %1").arg(shown_path(QFileInfo(path).fileName())),
                             [&](WorkProgress& progress) { return read_other_logbook(path, document_.clock(), &progress.cancelling()); });
    });
    sorted_->setSourceModel(model_);
    sorted_->setSortRole(SortRole);
    build();
    for (auto signal : {&Document::opened, &Document::closed})
        connect(&document_, signal, this, [this] {
            load_settled_ = false;
            readColumns();
            setOtherLogbooks({});
        });
    for (auto signal : {&Document::opened, &Document::closed, &Document::unitsChanged, &Document::metersChanged, &Document::runsChanged,
                        &Document::loadListsChanged})
        connect(&document_, signal, this, &ComparisonPage::refresh);
    connect(&document_, &Document::readingsChanged, this, &ComparisonPage::refresh);
    connect(&presenter_.comparer(), &UnitComparer::logbooksChanged, this, &ComparisonPage::refresh);
    connect(&presenter_.comparer(), &UnitComparer::error, this, &ComparisonPage::error);
    connect(&presenter_.comparer(), &UnitComparer::error, this, [this] { presenter_.stop(); });
    connect(&presenter_.comparer(), &UnitComparer::ended, this, &ComparisonPage::refresh);
    connect(&presenter_.comparer(), &UnitComparer::progressed, comparing_bar_, &ComparingBar::showProgress);
    connect(comparing_bar_, &ComparingBar::cancelAsked, this, [this] {
        presenter_.stop();
        presenter_.comparer().cancel();
    });
    connect(comparing_bar_, &ComparingBar::resumeAsked, this, [this] {
        presenter_.resume();
        refresh();
    });
    readColumns();
    showComparison();
}

CompareRows ComparisonPage::rows() const { return static_cast<CompareRows>(rows_group_->checkedId()); }

PairFigure ComparisonPage::pairFigure() const { return static_cast<PairFigure>(figure_combo_->currentData().toInt()); }

void ComparisonPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (stale_) refresh();
    if (unfitted_) fitToText();
}

void ComparisonPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    QTimer::singleShot(0, this, &ComparisonPage::fitWideColumns); // the table has its new width only then
}

void ComparisonPage::refresh() {
    stale_ = true;
    late_->hold();
    if (!isVisible()) return;
    stale_ = false;
    if (!other_logbooks_.isEmpty()) {
        // Reading lets events through, which a page that is about to be shown must not.
        QTimer::singleShot(0, this, &ComparisonPage::readOtherLogbooks);
        return;
    }
    const auto progress = presenter_.look(rows());
    if (progress == ComparisonPresenter::Progress::complete) {
        if (!comparer().isWorking()) comparing_bar_->hide();
        showComparison();
        return;
    }
    steps_->start({}, false);
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(false);
    if (presenter_.isEmpty()) {
        const QString words = tr("The units are not compared yet.");
        vessels_->setContent({{}, {}, words});
        BarContent none;
        none.empty_text = words;
        bars_->setContent(none);
        about_label_->clear();
    }
    if (progress == ComparisonPresenter::Progress::stopped) comparing_bar_->showStopped(presenter_.waiting());
    else comparer().start(rows());
}

void ComparisonPage::readOtherLogbooks() {
    const QStringList paths = std::exchange(other_logbooks_, {});
    if (paths.isEmpty()) return;
    comparer().setLogbooks(paths); // which comes back to refresh()
    for (const QString& sentence : presenter_.logbookErrors()) emit error(sentence);
}

void ComparisonPage::showComparison() {
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(false);
    const bool in_turns = std::max(document_.runs().size(), static_cast<std::size_t>(model_->rowCount())) > most_rows_in_a_turn;
    steps_->start({[this] {
                       if (document_.isOpen() && presenter_.isComplete() && isVisible()) presenter_.compare(rows());
                       else presenter_.clear();
                       settleLoad();
                   },
                   [this] {
                       choice_->setTags(presenter_.tags());
                       choice_->setLoadLists(document_.loadLists());
                       presenter_.choose([this](const Unit& unit) { return choice_->wants(unit); }, choice_->load(),
                                         {choice_->bandLower(), choice_->bandUpper()});
                   },
                   [this] { takeTable(); }, [this] { showTable(); }, [this] { vessels_->setContent(presenter_.vessels()); },
                   [this] {
                       tabs_->setTabVisible(tabs_->indexOf(models_view_), presenter_.hasModels());
                       late_->refill();
                       showWords();
                   }},
                  in_turns);
}

void ComparisonPage::settleLoad() {
    if (load_settled_ || presenter_.isEmpty()) return;
    load_settled_ = true;
    const QSignalBlocker still(choice_);
    choice_->setLoad(presenter_.suggestedLoad());
}

bool ComparisonPage::isComplete() {
    if (stale_) refresh();
    if (presenter_.isComplete()) steps_->finish();
    else emit notice(tr("The units are not compared yet; the line above them says how far that is."));
    return presenter_.isComplete();
}

void ComparisonPage::addLogbooks(const QStringList& paths) {
    for (const QString& path : paths)
        if (const auto added = comparer().addLogbook(path); !added) emit error(text_of(added.error().sentence()));
    tellChosenLogbooks();
}

void ComparisonPage::setOtherLogbooks(const QStringList& paths) {
    comparer().setLogbooks({});
    other_logbooks_ = paths;
    refresh();
}

void ComparisonPage::tellChosenLogbooks() { emit otherLogbooksChosen(presenter_.logbookPaths()); }

void ComparisonPage::showPairs() {
    const ShownPairs pairs = presenter_.pairs(pairFigure());
    pairs_model_->setPairs(pairs.names, pairs.verdicts);
    const QString note = presenter_.pairsNote();
    pairs_label_->setText(note);
    pairs_label_->setVisible(!note.isEmpty());
    fitPairs();
}

void ComparisonPage::fitPairs() {
    // By the longest text of each column: measuring all of them at every change of style would hold up the window.
    const QFontMetrics text(pairs_->font()), head(pairs_->horizontalHeader()->font());
    const int margin = 4 * spacing::grid_px;
    int lines = 2;
    for (int column = 0; column < pairs_model_->columnCount(); ++column) {
        QString longest;
        for (int row = 0; row < pairs_model_->rowCount(); ++row) {
            int own_lines = 0;
            for (const QString& line : pairs_model_->index(row, column).data().toString().split(QLatin1Char('\n'))) {
                own_lines += 1 + static_cast<int>(line.size()) / most_pair_letters;
                if (line.size() > longest.size()) longest = line.left(most_pair_letters);
            }
            lines = std::max(lines, own_lines);
        }
        QFont bold = pairs_->font();
        bold.setBold(true);
        const int name = head.horizontalAdvance(pairs_model_->headerData(column, Qt::Horizontal, Qt::DisplayRole).toString());
        pairs_->horizontalHeader()->resizeSection(column, std::max(QFontMetrics(bold).horizontalAdvance(longest), name) + margin);
    }
    pairs_->verticalHeader()->setDefaultSectionSize(lines * text.height() + spacing::grid_px);
}

void ComparisonPage::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() != QEvent::StyleChange && event->type() != QEvent::FontChange) return;
    QTimer::singleShot(0, this, &ComparisonPage::fitToText);
}

void ComparisonPage::fitToText() {
    unfitted_ = !isVisible();
    if (unfitted_) return;
    fitColumns();
    fitPairs();
}

void ComparisonPage::showWords() {
    remarks_label_->setText(presenter_.remarks());
    answer_->setAnswer(presenter_.answer());
    about_label_->setToolTip(presenter_.loadInFull());
    about_label_->setText(presenter_.about());
    head_->fit();
    for (auto* button : {copy_button_, export_button_}) button->setEnabled(!presenter_.isEmpty());
}

} // namespace ullage
