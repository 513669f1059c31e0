// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/main_window.h"

#include "delegates/tree_row_delegate.h"
#include "dialogs/cautions.h"
#include "models/logbook_tree_model.h"
#include "services/background_work.h"
#include "services/live_reader.h"
#include "services/log_follower.h"
#include "services/look_refresher.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "style/enter_presses.h"
#include "style/reading_order.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/wheel_scrolls.h"
#include "style/words.h"
#include "window/bench_controller.h"
#include "window/comparison_controller.h"
#include "window/copies_controller.h"
#include "window/done_line.h"
#include "window/file_bar.h"
#include "window/file_controller.h"
#include "window/guide_bar.h"
#include "window/guide_controller.h"
#include "window/join_controller.h"
#include "window/live_controller.h"
#include "window/load_list_controller.h"
#include "window/log_controller.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/record_controller.h"
#include "window/reminder_bar.h"
#include "window/report_controller.h"
#include "window/settings_controller.h"
#include "window/table_controller.h"
#include "window/view_controller.h"

#include <QAction>
#include <QApplication>
#include <QCloseEvent>
#include <QFileInfo>
#include <QHBoxLayout>
#include <QLabel>
#include <QScreen>
#include <QSplitter>
#include <QTimer>
#include <QTreeView>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int side_px = 216;
constexpr int widest_side_px = 420;
constexpr QSize usual_size(1280, 800);

} // namespace

MainWindow::MainWindow(Document& document, Settings& settings, Prompts& prompts, const Desktop& desktop, QWidget* parent)
    : QMainWindow(parent), document_(document), settings_(settings), prompts_(prompts),
      reminders_(new Reminders(document, settings, desktop.notifier, this)), log_follower_(new LogFollower(document, settings, this)),
      live_reader_(new LiveReader(document, settings, this)), look_(new LookRefresher(document, this)),
      tree_model_(new LogbookTreeModel(document, this)), tree_(new QTreeView), splitter_(new QSplitter), pages_(new PageStack(document, settings)),
      file_bar_(new FileBar), guide_bar_(new GuideBar), reminder_bar_(new ReminderBar(document, *reminders_)), caution_label_(new QLabel),
      awake_label_(new QLabel), saved_label_(new QLabel), done_line_(new DoneLine(document)) {
    setObjectName(QStringLiteral("mainWindow"));
    setAcceptDrops(true);
    document_.setBeside([this](const std::function<void()>& work) {
        work_beside(
            this, tr("Analysing the runs anew"), [&work](WorkProgress&) { work(); }, Cancelling::not_possible);
    });
    new EnterPresses(this);
    new WheelScrolls(this);
    build();
    const Workplace here{*this, document, settings, prompts, *messages_, *pages_};
    files_ = new FileController(here);
    copies_ = new CopiesController(here, desktop.backups);
    joining_ = new JoinController(here);
    records_ = new RecordController(here, *reminders_);
    logs_ = new LogController(here, *log_follower_, desktop.notifier);
    live_ = new LiveController(here, *live_reader_, desktop);
    tables_ = new TableController(here);
    load_lists_ = new LoadListController(here);
    comparing_ = new ComparisonController(here);
    reports_ = new ReportController(here);
    view_ = new ViewController(here);
    bench_ = new BenchController(here, *reminders_, desktop);
    guide_ = new GuideController(here, *guide_bar_, *records_);
    setting_ = new SettingsController(here);
    makeActions();
    connectParts();
    preparePages();
    connectDocument();
    restoreLayout();
    if (document_.isOpen()) logbookOpened();
    else logbookClosed();
}

MainWindow::~MainWindow() {
    // The document outlives the window; nothing of it may reach pages that are being destroyed.
    document_.disconnect(this);
    document_.setBeside([](const std::function<void()>& work) { work(); });
    document_.undoStack().disconnect(this);
    reminders_->disconnect();
    log_follower_->disconnect();
    live_reader_->disconnect();
    bench_->disconnect();
    pages_->disconnect(this);
}

void MainWindow::build() {
    auto* right = new QWidget;
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(0);
    column->addWidget(reminder_bar_);
    column->addWidget(file_bar_);
    column->addWidget(guide_bar_);
    column->addWidget(pages_, 1);
    messages_ = new MessageBar(*pages_);
    column->addWidget(makeStatus());

    splitter_->setObjectName(QStringLiteral("mainSplitter"));
    make_thin(*splitter_);
    splitter_->setChildrenCollapsible(false);
    splitter_->addWidget(makeSide());
    splitter_->addWidget(right);
    splitter_->setStretchFactor(0, 0);
    splitter_->setStretchFactor(1, 1);
    splitter_->setSizes({side_px, usual_size.width() - side_px});
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
    fitSide();
    tree_->setMaximumWidth(widest_side_px);
    connect(tree_->selectionModel(), &QItemSelectionModel::currentChanged, this, [this](const QModelIndex& current) { rowChosen(current); });
    // "None yet" is a link to what would be the first.
    const auto follow_hint = [this](const QModelIndex& index) {
        if (tree_model_->rowKind(index) != LogbookTreeModel::Row::hint) return;
        if (auto* offered = action(index.data(LogbookTreeModel::UuidRole).toString())) offered->trigger();
    };
    connect(tree_, &QTreeView::clicked, this, follow_hint);
    connect(tree_, &QTreeView::activated, this, follow_hint);
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
    row->addWidget(done_line_);
    row->addSpacing(spacing::page_margin_px);
    row->addWidget(saved_label_);
    return line;
}

void MainWindow::connectParts() {
    connect(setting_, &SettingsController::changed, this, &MainWindow::checkMenus);
    connect(pages_, &PageStack::moved, this, &MainWindow::selectInTree);
    connect(pages_, &PageStack::notice, messages_, &MessageBar::showNote);
    connect(pages_, &PageStack::error, messages_, &MessageBar::showError);
    connect(pages_, &PageStack::done, messages_, &MessageBar::dismiss);
    connect(pages_, &PageStack::analysed, tree_->viewport(), qOverload<>(&QWidget::update)); // what was delivered is known now
    connect(pages_, &PageStack::made, this, [this] {
        // The window answers an event of the document after its pages, since it may show one of them then.
        document_.disconnect(this);
        connectDocument();
    });
    connect(file_bar_, &FileBar::saveAsked, files_, &FileController::saveElsewhere);
    connect(file_bar_, &FileBar::recordAsked, this, [this] { files_->openLogbook(document_.path()); });
    connect(copies_, &CopiesController::openAsked, files_, &FileController::openLogbook);
    connect(look_, &LookRefresher::changed, this, &MainWindow::showLooking);
    connect(reminder_bar_, &ReminderBar::readingAsked, this, [this](const RunId& run) { pages_->enterReading(run); });
    connect(bench_, &BenchController::looked, this, &MainWindow::showLooked);
    bench_->look();
}

void MainWindow::showLooked(const std::set<RunId>& overdue_runs, const QString& awake_words) {
    tree_model_->setOverdue(overdue_runs);
    awake_label_->setText(awake_words);
    awake_label_->setVisible(!awake_words.isEmpty());
    nameRunningTests();
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
        file_bar_->tellDisplaced(sentence);
    });
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
    file_bar_->dismiss();
    messages_->dismiss();
    showLooking();
    files_->tellOpeningCheck();
    const QString name = shown_path(QFileInfo(path).completeBaseName());
    setWindowTitle(document_.isLooking() ? tr("%1, looking only – Ullage").arg(name) : tr("%1 – Ullage").arg(name));
    pages_->forget();
    tellWelcomePage();
    // A tree that gets the keyboard chooses its first row; that is not what was last shown.
    selecting_ = true;
    tree_->show();
    tree_->expandAll();
    tree_->setFocus();
    selecting_ = false;
    if (pages_->comparison().isMade()) comparing_->showComparedLogbooks();
    if (!pages_->showRememberedPage()) pages_->showDefaultPage();
}

void MainWindow::logbookClosed() {
    setWindowTitle(tr("Ullage"));
    saved_label_->clear();
    file_bar_->dismiss();
    pages_->forget();
    tellWelcomePage();
    pages_->showWelcome();
    tree_->hide();
    showStatus();
    updateActions();
}

void MainWindow::contentChanged() {
    pages_->leaveWhatIsGone();
    showStatus();
    updateActions();
}

void MainWindow::rowChosen(const QModelIndex& index) {
    if (selecting_ || !index.isValid()) return;
    pages_->showRow(tree_model_->rowKind(index), utf8_of(index.data(LogbookTreeModel::UuidRole).toString()));
}

void MainWindow::selectInTree() {
    const PageEntry* page = pages_->currentPage();
    const auto index = page ? tree_model_->indexOf(page->row, page->uuid()) : QModelIndex();
    selecting_ = true;
    tree_->setCurrentIndex(index);
    selecting_ = false;
    showStatus();
    updateActions();
}

void MainWindow::showStatus() {
    const auto runs = document_.runs();
    const bool any_open = std::any_of(runs.begin(), runs.end(), [](const RunRecord* record) { return record->run.end == RunEnd::still_running; });
    caution_label_->setText(any_open ? caution_line() : document_.isOpen() ? specimen_line() : QString());
}

void MainWindow::showLooking() {
    if (!document_.isLooking()) return;
    const auto& recorder = look_->recorder();
    QString who = tr("Another program records into this logbook");
    if (!recorder) who = tr("Nobody records into this logbook any more");
    else if (recorder->command == "watch" || recorder->command == "follow")
        who = tr("`ullage %1` (process %2) records into this logbook").arg(text_of(recorder->command)).arg(recorder->process);
    else if (recorder->process > 0) who = tr("Another window or command (process %1) records into this logbook").arg(recorder->process);
    const QString time = text_of(format_iso8601(look_->looked_ms(), machine_zone())).section(QLatin1Char('T'), 1).left(8);
    QString words = tr("%1. You see it as of %2; nothing can be entered here.").arg(who, time);
    if (!look_->trouble().isEmpty()) words += QLatin1Char(' ') + tr("It cannot be read anew: %1").arg(look_->trouble());
    file_bar_->tellLooking(words, !recorder);
}

void MainWindow::restoreLayout() {
    resize(usual_size);
    restoreGeometry(settings_.layout(objectName()));
    splitter_->restoreState(settings_.layout(splitter_->objectName()));
    view_->showCharts(settings_.chartsShown());
}

void MainWindow::closeEvent(QCloseEvent* event) {
    settings_.setLayout(objectName(), saveGeometry());
    settings_.setLayout(splitter_->objectName(), splitter_->saveState());
    pages_->keepSplitters();
    // Who ends the session waits for nobody.
    const bool ask = !leaving_ && !qApp->isSavingSession() && !document_.isLooking(); // then nothing stops
    if (ask && bench_->askBeforeLeaving(log_follower_->count(), [this] {
            leaving_ = true;
            close();
        })) {
        event->ignore();
        return;
    }
    QMainWindow::closeEvent(event);
}

bool MainWindow::focusNextPrevChild(bool next) { return move_as_read(*this, next) || QMainWindow::focusNextPrevChild(next); }

void MainWindow::paintEvent(QPaintEvent* event) {
    QMainWindow::paintEvent(event);
    if (painted_) return;
    painted_ = true;
    if (QApplication::activeWindow() == nullptr) activateWindow(); // without a window manager nobody else does
    QTimer::singleShot(0, this, &MainWindow::fitScreen);
    QTimer::singleShot(0, pages_, &PageStack::makePagesInTurns);
}

void MainWindow::fitSide() {
    constexpr int letters = 12, around_px = 62; // of "12 May, 311 W", with indent and edges
    const int wanted = around_px + letters * QFontMetrics(text_font(TextSize::body)).averageCharWidth();
    tree_->setMinimumWidth(std::clamp(wanted, side_px * 2 / 3, widest_side_px));
}

void MainWindow::changeEvent(QEvent* event) {
    QMainWindow::changeEvent(event);
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::FontChange) fitSide();
}

void MainWindow::fitScreen() {
    // The frame is known only now that the window stands. A screen that does not hold the least window is left to the window manager.
    if (!screen() || isMaximized() || isFullScreen()) return;
    const QRect room = screen()->availableGeometry();
    const QSize frame = frameGeometry().size() - size(), fitting = size().boundedTo(room.size() - frame);
    if (fitting == size() || room.width() < usual_size.width()) return;
    resize(fitting);
    move(std::max(room.left(), std::min(x(), room.right() + 1 - fitting.width() - frame.width())),
         std::max(room.top(), std::min(y(), room.bottom() + 1 - fitting.height() - frame.height())));
}

void MainWindow::openLogbook(const QString& path) { files_->openLogbook(path); }
void MainWindow::openAhead(LogbookAhead& ahead) { files_->openAhead(ahead); }
void MainWindow::importSheets(const QStringList& paths) { files_->importSheets(paths); }
void MainWindow::importLog(const QString& path) { logs_->importLog(path); }
void MainWindow::showUnit(const UnitId& unit_uuid) { pages_->showUnit(unit_uuid); }
void MainWindow::showRun(const RunId& run_uuid) { pages_->showRun(run_uuid); }
void MainWindow::showMeter(const MeterId& meter_uuid) { pages_->showMeter(meter_uuid); }
void MainWindow::showLoadList(const LoadListId& list_uuid) { pages_->showLoadList(list_uuid); }
void MainWindow::showLoadLists() { pages_->showLoadLists(); }
void MainWindow::showComparison() { pages_->showComparison(); }
void MainWindow::showBench() { pages_->showBench(); }
void MainWindow::showPvInput() { pages_->showPvInput(); }
void MainWindow::showSizing() { pages_->showSizing(); }
void MainWindow::enterReading(const RunId& run_uuid) { pages_->enterReading(run_uuid); }
void MainWindow::makeAllPages() { pages_->makeAllPages(); }

} // namespace ullage
