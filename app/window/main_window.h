// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "services/background_work.h"
#include "window/late_page.h"
#include "window/page_entry.h"

#include <QHash>
#include <QMainWindow>
#include <QSet>

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

class QActionGroup;
class QLabel;
class QMenu;
class QModelIndex;
class QSplitter;
class QStackedWidget;
class QTimer;
class QTreeView;

namespace ullage {

class Awake;
class BenchPage;
class DisplacedBar;
class ComparisonPage;
class HelpDialog;
class Inhibitor;
class LoadListsPage;
class LogFollower;
class LogForm;
class MessageBar;
class MetersPage;
class PhotoDialog;
class Notifier;
class Prompts;
class PvPage;
class ReminderBar;
class Reminders;
class ReportForm;
class RunPage;
class Settings;
class SizingPage;
struct ReportLook;
class UnitPage;
class WelcomePage;
enum class Theme;

/// What the window asks of the desktop; null where there is none to ask, as in most tests.
struct Desktop {
    Notifier* notifier = nullptr;
    Inhibitor* inhibitor = nullptr;
};

/// The one window: menus, the logbook's tree at the left, a page at the right, cautions and the last saving below.
///
/// All services must outlive the window. Its pages are made when they are needed, see LatePage. Its code stands in several files by meaning:
/// construction and navigation here, how pages are made in main_window_pages.cpp, menus in main_window_actions.cpp, running tests and reminders in
/// main_window_bench.cpp, files in main_window_files.cpp, forms in main_window_forms.cpp, logs of meters in main_window_logs.cpp, load lists and
/// sizing in main_window_loads.cpp, commands on runs and other things in main_window_commands.cpp, reports in main_window_reports.cpp, theme, text
/// size and help in main_window_view.cpp.
class MainWindow final : public QMainWindow {
    Q_OBJECT
public:
    MainWindow(Document& document, Settings& settings, Prompts& prompts, const Desktop& desktop = {}, QWidget* parent = nullptr);
    ~MainWindow() override;

    /// Opens a logbook; says why not where it cannot be opened, leaving what was open.
    void openLogbook(const QString& path);
    /// Opens the logbook that was open when the program last ended, where it still exists.
    void openLastLogbook();
    /// Imports run sheets and shows the last of them. Each that cannot be read is named with its reason.
    void importSheets(const QStringList& paths);
    /// Opens the form for a meter's log that goes into the run shown.
    void importLog(const QString& path);
    /// An action by its object name; null when there is none.
    [[nodiscard]] QAction* action(const QString& name) const { return actions_.value(name); }

    void showUnit(const std::string& unit_uuid);
    void showRun(const std::string& run_uuid);
    void showMeter(const std::string& meter_uuid);
    void showLoadList(const std::string& list_uuid);
    void showLoadLists(); ///< with the list selected last
    void showComparison();
    void showBench();
    void showPvInput();
    void showSizing(); ///< for the list selected on the page of load lists last
    /// Shows a run with the keyboard in its entry row.
    void enterReading(const std::string& run_uuid);
    /// Makes the pages that nobody has asked for yet. The window does so by itself, one after the other, once it has been painted.
    void makeAllPages();
    [[nodiscard]] Reminders& reminders() { return *reminders_; }
    [[nodiscard]] LogFollower& logFollower() { return *log_follower_; }

protected:
    void closeEvent(QCloseEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    // main_window.cpp
    void build();
    QWidget* makeSide();
    QWidget* makeStatus();
    void connectWelcome();
    void connectDocument();
    void logbookOpened();
    void logbookClosed();
    void contentChanged();
    /// Computes what pages show of these units beside the window, where there is much of it; false where that was cancelled.
    [[nodiscard]] bool analyseFirst(const std::vector<std::string>& unit_uuids, bool with_runs);
    void rowChosen(const QModelIndex& index);
    void selectInTree();
    void showDefaultPage();
    void rememberPage();
    [[nodiscard]] bool showRememberedPage(); ///< false where it is not of this logbook, or is gone
    void showStatus();
    void restoreLayout();
    void restoreSplitters(const QWidget& page);    ///< once a page, after it has its size
    [[nodiscard]] std::string currentUnit() const; ///< of the unit or run shown; empty elsewhere

    // main_window_pages.cpp
    void preparePages();
    /// Enters a page into the table of pages; what its parts mean: PageEntry. `connect_page` is called once it is made.
    template <class Page, class Make, class Show, class Uuid, class IsThere>
    void addPage(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, void (MainWindow::*connect_page)(), Show show, Uuid uuid,
                 IsThere is_there);
    template <class Page>
    void pageMade(LatePage<Page>& page);
    [[nodiscard]] const PageEntry* currentPage() const; ///< null for the welcome page
    void connectBenchPage();
    void connectPvPage();
    void connectUnitPage();
    void connectRunPage();
    void connectMetersPage();
    void connectComparisonPage();
    void showComparedLogbooks();
    bool makeNextPage(); ///< false where none is left
    void goOnMakingPages();

    // main_window_actions.cpp
    void makeActions();
    void makeLogbookMenu();
    void makeEditMenu();
    void makeRunMenu();
    void makeRunningMenu(QMenu& menu);
    void makeReminderMenu(QMenu& menu);
    void addReadingActions(QMenu& menu);
    void makeCompareMenu();
    void makeSizingMenu();
    void makeViewMenu();
    void makeHelpMenu();
    QAction* addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys, void (MainWindow::*does)());
    void updateActions();

    // main_window_bench.cpp
    void watchBench();
    void lookAtBench();
    void nameRunningTests();
    void editRule(const std::string& run_uuid);
    void snooze(int minutes);
    void enterDueReading();

    // main_window_files.cpp
    void newLogbook();
    void chooseLogbook();
    void openSample();
    void saveCopy();
    /// Saves what is open under another name and opens that, with what is half typed; for a file that others took away.
    void saveElsewhere();
    Result<void> saveBeside(const QString& path);
    std::optional<Result<void>> openBeside(const QString& path, Cancelling cancelling); ///< nothing where it was cancelled
    void tellOpeningCheck();
    void closeLogbook();
    void importSheet();
    void exportSheet();

    // main_window_logs.cpp
    void connectLogs();
    void chooseLog();
    void takeInLog(LogForm& form, const std::string& run_uuid);
    void followLog(const QString& trace_uuid);
    void addLogAppliance(const std::string& run_uuid);
    void attachPhoto();
    void savePhoto(const Photo& photo, PhotoDialog* dialog);
    void fillRecentMenu();
    [[nodiscard]] QString startFolder() const;

    // main_window_forms.cpp
    void addUnit();
    void editUnit();
    void editClaims(const std::string& unit_uuid);
    void addPvSheet();
    void withdrawPvSheet();
    void addMeter();
    void editMeter();
    void startRun();
    void editRun();

    // main_window_loads.cpp
    void makeLoadListMenu(QMenu& above);
    void connectLoadListsPage();
    void addLoadList();
    void importLoadList();
    void editLoadList();
    void withdrawLoadList();
    void addAppliance();
    void editAppliance();
    void removeAppliance();
    void connectSizingPage();
    void exportSizing();

    // main_window_commands.cpp
    void withdrawUnit();
    void withdrawRun();
    void withdrawMeter();
    void endRun(RunEnd end);
    void reopenRun();
    void addComparedLogbooks();
    void exportComparison();
    void copyComparison();
    void exportReadings();
    void tell(const Result<void>& outcome); ///< shows an error, or clears the message bar after a success

    // main_window_reports.cpp
    void makeRunReport();
    void makeComparisonReport();
    void makeSizingReport();
    void makePvReport();
    void askForReport(const QString& what, ReportForm& asking, std::function<Result<void>(const QString& path, const ReportLook& look)> write);

    // main_window_view.cpp
    void setTheme(Theme theme);
    void showCharts(bool shown);
    void largerText();
    void smallerText();
    void usualText();
    void setTextStep(int step);
    void copyShownPicture();
    void saveShownPicture();
    void showKeysAndWords();
    void showExample();
    void showMethod();
    void showCautions();
    void showAbout();
    HelpDialog& help();

    Document& document_;
    Settings& settings_;
    Prompts& prompts_;
    QHash<QString, QAction*> actions_;
    QMenu* recent_menu_ = nullptr;
    Notifier* notifier_;
    Reminders* reminders_;
    LogFollower* log_follower_;
    std::unique_ptr<Awake> awake_;
    LogbookTreeModel* tree_model_;
    QTreeView* tree_;
    QSplitter* splitter_;
    QStackedWidget* pages_;
    std::vector<PageEntry> page_table_;
    MessageBar* messages_;
    DisplacedBar* displaced_bar_;
    ReminderBar* reminder_bar_;
    WelcomePage* welcome_page_;
    LatePage<UnitPage> unit_page_{"unitPage"};
    LatePage<RunPage> run_page_{"runPage"};
    LatePage<MetersPage> meters_page_{"metersPage"};
    LatePage<LoadListsPage> load_lists_page_{"loadListsPage"};
    LatePage<ComparisonPage> comparison_page_{"comparisonPage"};
    LatePage<BenchPage> bench_page_{"benchPage"};
    LatePage<PvPage> pv_page_{"pvPage"};
    LatePage<SizingPage> sizing_page_{"sizingPage"};
    QLabel *caution_label_, *awake_label_, *saved_label_;
    QTimer* bench_timer_;
    HelpDialog* help_ = nullptr;
    std::string unit_uuid_, run_uuid_, meter_uuid_; ///< what is shown, as far as it is one of these
    QSet<const QWidget*> restored_;                 ///< pages whose splitters stand as the user left them
    bool selecting_ = false;
    bool painted_ = false;
};

} // namespace ullage
