// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include "delegates/tree_row_delegate.h"
#include "dialogs/cautions.h"
#include "dialogs/help_dialog.h"
#include "models/logbook_tree_model.h"
#include "pages/bench/bench_page.h"
#include "pages/comparison/comparison_page.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"
#include "services/analyse_units.h"
#include "services/awake.h"
#include "services/log_follower.h"
#include "services/notifier.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"
#include "window/displaced_bar.h"
#include "window/message_bar.h"
#include "window/reminder_bar.h"
#include "window/welcome_page.h"

#include <QAction>
#include <QCloseEvent>
#include <QFileInfo>
#include <QFrame>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QStackedWidget>
#include <QTimer>
#include <QTreeView>
#include <QUrl>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int side_px = 216;
constexpr int widest_side_px = 420;

} // namespace

MainWindow::MainWindow(Document& document, Settings& settings, Prompts& prompts, const Desktop& desktop, QWidget* parent)
    : QMainWindow(parent), document_(document), settings_(settings), prompts_(prompts), notifier_(desktop.notifier),
      reminders_(new Reminders(document, settings, desktop.notifier, this)), log_follower_(new LogFollower(document, settings, this)),
      awake_(std::make_unique<Awake>(desktop.inhibitor)), tree_model_(new LogbookTreeModel(document, this)), tree_(new QTreeView),
      splitter_(new QSplitter), pages_(new QStackedWidget), messages_(new MessageBar), displaced_bar_(new DisplacedBar),
      reminder_bar_(new ReminderBar(document, *reminders_)), welcome_page_(new WelcomePage), caution_label_(new QLabel), awake_label_(new QLabel),
      saved_label_(new QLabel), bench_timer_(new QTimer(this)) {
    setObjectName(QStringLiteral("mainWindow"));
    setAcceptDrops(true);
    build();
    makeActions();
    connectWelcome();
    preparePages();
    connectLogs();
    connectDocument();
    watchBench();
    restoreLayout();
    if (document_.isOpen()) logbookOpened();
    else logbookClosed();
}

MainWindow::~MainWindow() {
    // The document outlives the window; nothing of it may reach pages that are being destroyed.
    document_.disconnect(this);
    document_.undoStack().disconnect(this);
    reminders_->disconnect();
    log_follower_->disconnect();
    if (notifier_) notifier_->setClicked({});
}

void MainWindow::build() {
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(reminder_bar_);
    column->addWidget(displaced_bar_);
    column->addWidget(messages_);
    pages_->addWidget(welcome_page_);
    pages_->setObjectName(QStringLiteral("pagesStack"));
    column->addWidget(pages_, 1);
    column->addWidget(makeStatus());

    splitter_->setObjectName(QStringLiteral("mainSplitter"));
    make_thin(*splitter_);
    splitter_->setChildrenCollapsible(false);
    splitter_->addWidget(makeSide());
    splitter_->addWidget(right);
    splitter_->setStretchFactor(0, 0);
    splitter_->setStretchFactor(1, 1);
    splitter_->setSizes({side_px, 1280 - side_px});
    setCentralWidget(splitter_);
}

QWidget* MainWindow::makeSide() {
    tree_->setObjectName(QStringLiteral("logbookTree"));
    tree_->setAccessibleName(tr("logbook"));
    make_side_tree(*tree_);
    tree_->setModel(tree_model_);
    tree_->setItemDelegate(new TreeRowDelegate(tree_));
    tree_->setIndentation(0);
    tree_->setItemsExpandable(false);
    tree_->setExpandsOnDoubleClick(false);
    tree_->setMouseTracking(true);
    tree_->setEditTriggers(QAbstractItemView::NoEditTriggers);
    tree_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    tree_->setMinimumWidth(side_px * 2 / 3);
    tree_->setMaximumWidth(widest_side_px);
    connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) { rowChosen(current); });
    connect(tree_model_, &QAbstractItemModel::modelReset, this, [this] {
        tree_->expandAll();
        selectInTree();
    });
    return tree_;
}

QWidget* MainWindow::makeStatus() {
    auto* line = new QWidget;
    line->setObjectName(QStringLiteral("statusLine"));
    caution_label_->setObjectName(QStringLiteral("cautionLabel"));
    saved_label_->setObjectName(QStringLiteral("savedLabel"));
    saved_label_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    caution_label_->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Preferred);
    set_text_style(*caution_label_, Tone::soft, TextSize::caption);
    awake_label_->setObjectName(QStringLiteral("awakeLabel"));
    awake_label_->setWordWrap(true);
    awake_label_->setAlignment(Qt::AlignRight | Qt::AlignVCenter);
    caution_label_->setWordWrap(true);
    set_text_style(*awake_label_, Tone::soft, TextSize::caption);
    set_text_style(*saved_label_, Tone::soft, TextSize::caption);
    auto* row = new QHBoxLayout(line);
    row->setContentsMargins(spacing::page_margin_px, spacing::half_px, spacing::page_margin_px, spacing::half_px + 2);
    // At large text both need several lines.
    row->addWidget(caution_label_, 3);
    row->addSpacing(spacing::page_margin_px);
    row->addWidget(awake_label_, 2);
    row->addSpacing(spacing::page_margin_px);
    row->addWidget(saved_label_);
    return line;
}

void MainWindow::connectWelcome() {
    connect(welcome_page_, &WelcomePage::newLogbookAsked, this, &MainWindow::newLogbook);
    connect(welcome_page_, &WelcomePage::openLogbookAsked, this, &MainWindow::chooseLogbook);
    connect(welcome_page_, &WelcomePage::sampleLogbookAsked, this, &MainWindow::openSample);
    connect(welcome_page_, &WelcomePage::recentFileAsked, this, &MainWindow::openLogbook);
    connect(welcome_page_, &WelcomePage::addUnitAsked, this, &MainWindow::addUnit);
    connect(welcome_page_, &WelcomePage::addMeterAsked, this, &MainWindow::addMeter);
    connect(welcome_page_, &WelcomePage::importAsked, this, &MainWindow::importSheet);
}

void MainWindow::connectDocument() {
    connect(&document_, &Document::opened, this, &MainWindow::logbookOpened);
    connect(&document_, &Document::closed, this, &MainWindow::logbookClosed);
    for (auto signal : {&Document::unitsChanged, &Document::metersChanged, &Document::runsChanged, &Document::pvSheetsChanged})
        connect(&document_, signal, this, &MainWindow::contentChanged);
    connect(&document_, &Document::loadListsChanged, this, [this] {
        contentChanged();
        selectInTree(); // the page may have taken another list by now
    });
    connect(&document_, &Document::error, this, [this](const QString& sentence) { messages_->showError(sentence); });
    connect(&document_, &Document::displacedFound, this, [this](const QString& sentence) {
        saved_label_->clear();
        displaced_bar_->tell(sentence);
    });
    connect(displaced_bar_, &DisplacedBar::saveAsked, this, &MainWindow::saveElsewhere);
    connect(&document_, &Document::saved, this, [this](qint64 time_ms) {
        const auto local = to_local(time_ms, machine_zone());
        saved_label_->setText(tr("saved %1 ✓")
                                  .arg(QStringLiteral("%1:%2:%3")
                                           .arg(local.hour, 2, 10, QLatin1Char('0'))
                                           .arg(local.minute, 2, 10, QLatin1Char('0'))
                                           .arg(local.second, 2, 10, QLatin1Char('0'))));
    });
}

void MainWindow::logbookOpened() {
    const auto path = document_.path();
    settings_.addRecentFile(path);
    settings_.setLastFile(path);
    settings_.setFolderOf(path);
    saved_label_->clear();
    displaced_bar_->dismiss();
    messages_->dismiss();
    tellOpeningCheck();
    setWindowTitle(tr("%1 – Ullage").arg(shown_path(QFileInfo(path).completeBaseName())));
    unit_uuid_.clear();
    run_uuid_.clear();
    meter_uuid_.clear();
    welcome_page_->setLogbookOpen(true);
    // A tree that gets the keyboard chooses its first row; that is not what was last shown.
    selecting_ = true;
    tree_->show();
    tree_->expandAll();
    tree_->setFocus();
    selecting_ = false;
    if (comparison_page_.isMade()) showComparedLogbooks();
    if (!showRememberedPage()) showDefaultPage();
}

void MainWindow::logbookClosed() {
    setWindowTitle(tr("Ullage"));
    saved_label_->clear();
    displaced_bar_->dismiss();
    unit_uuid_.clear();
    run_uuid_.clear();
    meter_uuid_.clear();
    welcome_page_->setLogbookOpen(false);
    welcome_page_->setRecentFiles(settings_.recentFiles());
    pages_->setCurrentWidget(welcome_page_);
    tree_->hide();
    showStatus();
    updateActions();
}

void MainWindow::showDefaultPage() {
    for (const auto* record : document_.runs())
        if (record->run.end == RunEnd::still_running) return showRun(record->run.uuid);
    if (!document_.units().empty()) return showUnit(document_.units().front().uuid);
    unit_uuid_.clear();
    run_uuid_.clear();
    pages_->setCurrentWidget(welcome_page_);
    selectInTree();
}

void MainWindow::contentChanged() {
    // What was shown may have been withdrawn, or have come back on undo.
    const auto* page = pages_->currentWidget();
    if (page == run_page_ && !document_.run(run_uuid_)) {
        if (document_.unit(unit_uuid_)) showUnit(unit_uuid_);
        else showDefaultPage();
    } else if ((page == unit_page_ && !document_.unit(unit_uuid_)) || (page == welcome_page_ && !document_.units().empty())) {
        showDefaultPage();
    }
    showStatus();
    updateActions();
}

void MainWindow::rowChosen(const QModelIndex& index) {
    if (selecting_ || !index.isValid()) return;
    const auto uuid = utf8_of(index.data(LogbookTreeModel::UuidRole).toString());
    const auto entry = std::ranges::find(page_table_, tree_model_->rowKind(index), &PageEntry::row);
    if (entry != page_table_.end()) entry->show(uuid);
}

bool MainWindow::analyseFirst(const std::vector<std::string>& unit_uuids, bool with_runs) {
    if (document_.readingsToAnalyse(unit_uuids, with_runs) <= Document::most_analysed_at_once) return true;
    const bool analysed = analyse_units_beside(document_, unit_uuids, with_runs, this);
    tree_->viewport()->update(); // what was delivered is known now
    return analysed;
}

void MainWindow::showUnit(const std::string& unit_uuid) {
    if (!document_.unit(unit_uuid) || !analyseFirst({unit_uuid}, true)) return selectInTree();
    unit_uuid_ = unit_uuid;
    run_uuid_.clear();
    unit_page_->showUnit(unit_uuid);
    pages_->setCurrentWidget(unit_page_);
    selectInTree();
    rememberPage();
}

void MainWindow::showRun(const std::string& run_uuid) {
    const auto* record = document_.run(run_uuid);
    if (!record) return;
    if (const std::string unit = record->unit.uuid; !analyseFirst({unit}, true)) return selectInTree();
    record = document_.run(run_uuid);
    if (!record) return;
    unit_uuid_ = record->unit.uuid;
    const bool other = run_uuid_ != run_uuid || pages_->currentWidget() != run_page_;
    run_uuid_ = run_uuid;
    if (other) run_page_->showRun(raw_text(run_uuid));
    pages_->setCurrentWidget(run_page_);
    QTimer::singleShot(0, this, [this] { restoreSplitters(*run_page_); });
    selectInTree();
    rememberPage();
}

void MainWindow::showMeter(const std::string& meter_uuid) {
    if (!document_.meter(meter_uuid)) return;
    meter_uuid_ = meter_uuid;
    meters_page_->showMeter(meter_uuid);
    pages_->setCurrentWidget(meters_page_);
    selectInTree();
    rememberPage();
}

void MainWindow::showComparison() {
    if (!document_.isOpen()) return;
    pages_->setCurrentWidget(comparison_page_); // which brings itself up to date
    QTimer::singleShot(0, this, [this] { restoreSplitters(*comparison_page_); });
    selectInTree();
    rememberPage();
}

void MainWindow::selectInTree() {
    const PageEntry* page = currentPage();
    const auto index = page ? tree_model_->indexOf(page->row, page->uuid()) : QModelIndex();
    selecting_ = true;
    tree_->setCurrentIndex(index);
    selecting_ = false;
    showStatus();
    updateActions();
}

std::string MainWindow::currentUnit() const {
    const auto* page = pages_->currentWidget();
    return page == run_page_ || page == unit_page_ ? unit_uuid_ : std::string();
}

void MainWindow::showStatus() {
    const auto runs = document_.runs();
    const bool any_open = std::any_of(runs.begin(), runs.end(), [](const RunRecord* record) { return record->run.end == RunEnd::still_running; });
    caution_label_->setText(any_open ? caution_line() : document_.isOpen() ? specimen_line() : QString());
}

void MainWindow::restoreLayout() {
    resize(1280, 800);
    restoreGeometry(settings_.layout(objectName()));
    splitter_->restoreState(settings_.layout(splitter_->objectName()));
    showCharts(settings_.chartsShown());
}

void MainWindow::restoreSplitters(const QWidget& page) {
    if (!page.isVisible() || restored_.contains(&page)) return;
    restored_.insert(&page);
    for (auto* splitter : page.findChildren<QSplitter*>()) {
        const auto orientation = splitter->orientation();
        const auto sizes = splitter->sizes();
        if (!splitter->restoreState(settings_.layout(splitter->objectName()))) continue;
        // The page stacks its parts by its own width: places of the other arrangement do not fit.
        if (splitter->orientation() == orientation) continue;
        splitter->setOrientation(orientation);
        splitter->setSizes(sizes);
    }
}

void MainWindow::closeEvent(QCloseEvent* event) {
    settings_.setLayout(objectName(), saveGeometry());
    settings_.setLayout(splitter_->objectName(), splitter_->saveState());
    for (const auto* page : restored_)
        for (const auto* splitter : page->findChildren<QSplitter*>()) settings_.setLayout(splitter->objectName(), splitter->saveState());
    QMainWindow::closeEvent(event);
}

} // namespace ullage
