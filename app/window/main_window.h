// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "window/desktop.h"

#include <QHash>
#include <QMainWindow>

#include <set>
#include <string>

class QLabel;
class QMenu;
class QModelIndex;
class QSplitter;
class QTreeView;

namespace ullage {

class BenchController;
class ComparisonController;
class CopiesController;
class DoneLine;
class FileBar;
class FileController;
class GuideBar;
class GuideController;
class JoinController;
class LoadListController;
class LogbookAhead;
class LogbookTreeModel;
class LogController;
class TableController;
class LiveController;
class LiveReader;
class LogFollower;
class LookRefresher;
class MessageBar;
class PageStack;
class Prompts;
class RecordController;
class ReminderBar;
class Reminders;
class ReportController;
class Settings;
class SettingsController;
class ViewController;

/// The one window: menus, the logbook's tree at the left, a page at the right, cautions and the last saving below.
///
/// All services must outlive the window. It puts its parts together: PageStack knows the pages, the controllers do the work, and the window
/// connects menus, tree, bars and pages to them. Its code stands in files by meaning: construction and what follows the document here, how pages
/// are made in main_window_pages.cpp, menus in main_window_actions.cpp, which of their entries can be chosen in main_window_enabling.cpp, what is
/// dropped and pasted in main_window_drops.cpp.
class MainWindow final : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(Document& document, Settings& settings, Prompts& prompts, const Desktop& desktop = {}, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a logbook; says why not where it cannot be opened, leaving what was open.
    void openLogbook(const QString& path);
    /// Takes over a logbook that is being opened, see logbook_of_start(); says why not where it cannot be opened.
    void openAhead(LogbookAhead& ahead);
    /// Imports run sheets and shows the last of them. Each that cannot be read is named with its reason.
    void importSheets(const QStringList& paths);
    /// Opens the form for a meter's log that goes into the run shown.
    void importLog(const QString& path);
    /// An action by its object name; null when there is none.
    [[nodiscard]] QAction* action(const QString& name) const { return actions_.value(name); }

    void showUnit(const UnitId& unit_uuid);
    void showRun(const RunId& run_uuid);
    void showMeter(const MeterId& meter_uuid);
    void showLoadList(const LoadListId& list_uuid);
    void showLoadLists(); ///< with the list selected last
    void showComparison();
    void showBench();
    void showPvInput();
    void showSizing(); ///< for the list selected on the page of load lists last
    /// Shows a run with the keyboard in its entry row.
    void enterReading(const RunId& run_uuid);
    /// Makes the pages that nobody has asked for yet. The window does so by itself, one after the other, once it has been painted.
    void makeAllPages();
    [[nodiscard]] Reminders& reminders() { return *reminders_; }
    [[nodiscard]] LogFollower& logFollower() { return *log_follower_; }
    [[nodiscard]] LiveReader& liveReader() { return *live_reader_; }
    [[nodiscard]] CopiesController& copies() { return *copies_; }

protected:
    void changeEvent(QEvent* event) override;
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void keyPressEvent(QKeyEvent* event) override;
    void paintEvent(QPaintEvent* event) override;
    bool focusNextPrevChild(bool next) override; ///< as the window is read

private:
    // main_window.cpp
    void build();
    QWidget* makeSide();
    QWidget* makeStatus();
    void connectParts();
    void connectDocument();
    void logbookOpened();
    void logbookClosed();
    void contentChanged();
    void rowChosen(const QModelIndex& index);
    void selectInTree();
    void showStatus();
    void showLooking();                                                               ///< that another program records into the logbook, and who
    void showLooked(const std::set<RunId>& overdue_runs, const QString& awake_words); ///< how the running tests stand
    void restoreLayout();
    void fitSide();   ///< wide enough for a run's day and load
    void fitScreen(); ///< no larger than its screen, with its frame

    // main_window_pages.cpp
    void preparePages();
    void connectWelcomePage();
    void tellWelcomePage(); ///< what is open, and was lately
    void connectBenchPage();
    void connectPvPage();
    void connectUnitPage();
    void connectRunPage();
    void connectMetersPage();
    void connectComparisonPage();
    void connectLoadListsPage();
    void connectSizingPage();

    // main_window_actions.cpp
    void makeActions();
    void makeLogbookMenu();
    void makeEditMenu();
    void makeLoadListMenu(QMenu& above);
    void makeRunMenu();
    void makeRunningMenu(QMenu& menu);
    void makeReminderMenu(QMenu& menu);
    void markNow(MarkKind mark);
    void checkMenus(); ///< the entries that show a setting, as it is now
    void addReadingActions(QMenu& menu);
    void makeCompareMenu();
    void makeSizingMenu();
    void makeViewMenu();
    void makeHelpMenu();
    QAction* addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys);
    template <class Receiver>
    QAction* addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys, Receiver* receiver, void (Receiver::*does)());

    // main_window_enabling.cpp
    void nameRunningTests();
    void updateActions();

    Document& document_;
    Settings& settings_;
    Prompts& prompts_;
    QHash<QString, QAction*> actions_;
    Reminders* reminders_;
    LogFollower* log_follower_;
    LiveReader* live_reader_;
    LookRefresher* look_;
    LogbookTreeModel* tree_model_;
    QTreeView* tree_;
    QSplitter* splitter_;
    PageStack* pages_;
    MessageBar* messages_ = nullptr; ///< lies over the pages, so it comes after them
    FileBar* file_bar_;
    GuideBar* guide_bar_;
    ReminderBar* reminder_bar_;
    QLabel *caution_label_, *awake_label_, *saved_label_;
    DoneLine* done_line_;
    FileController* files_;
    CopiesController* copies_;
    JoinController* joining_;
    RecordController* records_;
    LogController* logs_;
    LiveController* live_;
    TableController* tables_;
    LoadListController* load_lists_;
    ComparisonController* comparing_;
    ReportController* reports_;
    ViewController* view_;
    BenchController* bench_;
    GuideController* guide_;
    SettingsController* setting_;
    bool selecting_ = false;
    bool painted_ = false;
    bool leaving_ = false; ///< the question whether to quit while tests run is answered
};

} // namespace ullage
