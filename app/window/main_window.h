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
    QWidget* make_side();
    QWidget* make_status();
    void connect_welcome();
    void connect_document();
    void logbook_opened();
    void logbook_closed();
    void content_changed();
    /// Computes what pages show of these units beside the window, where there is much of it; false where that was cancelled.
    [[nodiscard]] bool analyse_first(const std::vector<std::string>& unit_uuids, bool with_runs);
    void row_chosen(const QModelIndex& index);
    void select_in_tree();
    void show_default_page();
    void remember_page();
    [[nodiscard]] bool show_remembered_page(); ///< false where it is not of this logbook, or is gone
    void show_status();
    void restore_layout();
    void restore_splitters(const QWidget& page);    ///< once a page, after it has its size
    [[nodiscard]] std::string current_unit() const; ///< of the unit or run shown; empty elsewhere

    // main_window_pages.cpp
    void prepare_pages();
    /// Enters a page into the table of pages; what its parts mean: PageEntry. `connect_page` is called once it is made.
    template <class Page, class Make, class Show, class Uuid, class IsThere>
    void add_page(LatePage<Page>& page, LogbookTreeModel::Row row, Make make, void (MainWindow::*connect_page)(), Show show, Uuid uuid,
                  IsThere is_there);
    template <class Page>
    void page_made(LatePage<Page>& page);
    [[nodiscard]] const PageEntry* current_page() const; ///< null for the welcome page
    void connect_bench_page();
    void connect_pv_page();
    void connect_unit_page();
    void connect_run_page();
    void connect_meters_page();
    void connect_comparison_page();
    void show_compared_logbooks();
    bool make_next_page(); ///< false where none is left
    void go_on_making_pages();

    // main_window_actions.cpp
    void make_actions();
    void make_logbook_menu();
    void make_edit_menu();
    void make_run_menu();
    void make_running_menu(QMenu& menu);
    void make_reminder_menu(QMenu& menu);
    void add_reading_actions(QMenu& menu);
    void make_compare_menu();
    void make_sizing_menu();
    void make_view_menu();
    void make_help_menu();
    QAction* add_action(QMenu& menu, const char* name, const QString& text, const QString& keys, void (MainWindow::*does)());
    void update_actions();

    // main_window_bench.cpp
    void watch_bench();
    void look_at_bench();
    void name_running_tests();
    void edit_rule(const std::string& run_uuid);
    void snooze(int minutes);
    void enter_due_reading();

    // main_window_files.cpp
    void new_logbook();
    void open_logbook();
    void open_sample();
    void save_copy();
    /// Saves what is open under another name and opens that, with what is half typed; for a file that others took away.
    void save_elsewhere();
    Result<void> save_beside(const QString& path);
    std::optional<Result<void>> open_beside(const QString& path, Cancelling cancelling); ///< nothing where it was cancelled
    void tell_opening_check();
    void close_logbook();
    void import_sheet();
    void export_sheet();

    // main_window_logs.cpp
    void connect_logs();
    void import_log();
    void take_in_log(LogForm& form, const std::string& run_uuid);
    void follow_log(const QString& trace_uuid);
    void add_log_appliance(const std::string& run_uuid);
    void attach_photo();
    void save_photo(const Photo& photo, PhotoDialog* dialog);
    void fill_recent_menu();
    [[nodiscard]] QString start_folder() const;

    // main_window_forms.cpp
    void add_unit();
    void edit_unit();
    void edit_claims(const std::string& unit_uuid);
    void add_pv_sheet();
    void withdraw_pv_sheet();
    void add_meter();
    void edit_meter();
    void start_run();
    void edit_run();

    // main_window_loads.cpp
    void make_load_list_menu(QMenu& above);
    void connect_load_lists_page();
    void add_load_list();
    void import_load_list();
    void edit_load_list();
    void withdraw_load_list();
    void add_appliance();
    void edit_appliance();
    void remove_appliance();
    void connect_sizing_page();
    void export_sizing();

    // main_window_commands.cpp
    void withdraw_unit();
    void withdraw_run();
    void withdraw_meter();
    void end_run(RunEnd end);
    void reopen_run();
    void add_compared_logbooks();
    void export_comparison();
    void copy_comparison();
    void export_readings();
    void tell(const Result<void>& outcome); ///< shows an error, or clears the message bar after a success

    // main_window_reports.cpp
    void make_run_report();
    void make_comparison_report();
    void make_sizing_report();
    void make_pv_report();
    void ask_for_report(const QString& what, ReportForm& asking, std::function<Result<void>(const QString& path, const ReportLook& look)> write);

    // main_window_view.cpp
    void set_theme(Theme theme);
    void show_charts(bool shown);
    void larger_text();
    void smaller_text();
    void usual_text();
    void set_text_step(int step);
    void copy_shown_picture();
    void save_shown_picture();
    void show_keys_and_words();
    void show_example();
    void show_method();
    void show_cautions();
    void show_about();
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
