// SPDX-License-Identifier: GPL-3.0-or-later
// The menus and which of their entries can be chosen.
#include "window/main_window.h"

#include "dialogs/help_dialog.h"
#include "dialogs/help_pages.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "services/settings.h"
#include "style/icons.h"
#include "style/theme.h"
#include "style/words.h"
#include "window/reminder_bar.h"

#include <QAction>
#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>
#include <QStackedWidget>

#include <string_view>

namespace ullage {

namespace {

constexpr int first_mark_key = 3;    ///< marks are on F3 to F8
constexpr int most_running_keys = 9; ///< running tests on Ctrl+1 to Ctrl+9

/// "cut-off seen" to "Cut-off seen".
QString sentence_case(const QString& text) { return text.left(1).toUpper() + text.mid(1); }

} // namespace

QAction* MainWindow::add_action(QMenu& menu, const char* name, const QString& text, const QString& keys, void (MainWindow::*does)()) {
    auto* made = new QAction(text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setShortcut(QKeySequence(keys));
    if (does) connect(made, &QAction::triggered, this, does);
    menu.addAction(made);
    actions_.insert(made->objectName(), made);
    return made;
}

void MainWindow::make_actions() {
    make_logbook_menu();
    make_edit_menu();
    make_run_menu();
    make_compare_menu();
    make_sizing_menu();
    make_view_menu();
    make_help_menu();
}

void MainWindow::make_logbook_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Logbook"));
    add_action(menu, "newLogbookAction", tr("&New…"), "Ctrl+N", &MainWindow::new_logbook);
    add_action(menu, "openLogbookAction", tr("&Open…"), "Ctrl+O", &MainWindow::open_logbook)->setIcon(glyph_icon(Glyph::open));
    recent_menu_ = menu.addMenu(tr("Open &recent"));
    recent_menu_->setObjectName(QStringLiteral("recentMenu"));
    connect(recent_menu_, &QMenu::aboutToShow, this, &MainWindow::fill_recent_menu);
    add_action(menu, "sampleLogbookAction", tr("Open the sa&mple logbook"), "Ctrl+Shift+O", &MainWindow::open_sample);
    add_action(menu, "saveCopyAction", tr("&Save a copy…"), "Ctrl+Shift+S", &MainWindow::save_copy);
    add_action(menu, "closeLogbookAction", tr("&Close"), "Ctrl+W", &MainWindow::close_logbook);
    menu.addSeparator();
    add_action(menu, "importSheetAction", tr("&Import run sheet…"), "Ctrl+I", &MainWindow::import_sheet)->setIcon(glyph_icon(Glyph::import_in));
    add_action(menu, "exportSheetAction", tr("&Export run sheet…"), "Ctrl+E", &MainWindow::export_sheet)->setIcon(glyph_icon(Glyph::export_out));
    add_action(menu, "exportReadingsAction", tr("Export rea&dings…"), "Ctrl+Alt+E", &MainWindow::export_readings);
    menu.addSeparator();
    auto* quit = add_action(menu, "quitAction", tr("&Quit"), "Ctrl+Q", nullptr);
    connect(quit, &QAction::triggered, this, &QWidget::close);
}

void MainWindow::make_edit_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Edit"));
    auto& stack = document_.undoStack();
    const auto add_step = [&](QAction* step, const char* name, const QString& keys, Glyph glyph) {
        step->setObjectName(QString::fromLatin1(name));
        step->setShortcut(QKeySequence(keys));
        step->setIcon(glyph_icon(glyph));
        menu.addAction(step);
        actions_.insert(step->objectName(), step);
    };
    add_step(stack.createUndoAction(this, tr("Undo")), "undoAction", "Ctrl+Z", Glyph::undo);
    add_step(stack.createRedoAction(this, tr("Redo")), "redoAction", "Ctrl+Shift+Z", Glyph::redo);
    menu.addSeparator();
    add_action(menu, "addUnitAction", tr("Add &unit…"), "Ctrl+U", &MainWindow::add_unit)->setIcon(glyph_icon(Glyph::add));
    add_action(menu, "editUnitAction", tr("&Edit unit…"), "Ctrl+Shift+U", &MainWindow::edit_unit);
    add_action(menu, "withdrawUnitAction", tr("&Withdraw unit"), "Ctrl+Alt+U", &MainWindow::withdraw_unit);
    menu.addSeparator();
    add_action(menu, "addMeterAction", tr("Add &meter…"), "Ctrl+G", &MainWindow::add_meter)->setIcon(glyph_icon(Glyph::add));
    add_action(menu, "editMeterAction", tr("E&dit meter…"), "Ctrl+Shift+G", &MainWindow::edit_meter);
    add_action(menu, "withdrawMeterAction", tr("W&ithdraw meter"), "Ctrl+Alt+G", &MainWindow::withdraw_meter);
    menu.addSeparator();
    make_load_list_menu(menu);
    menu.addSeparator();
    add_action(menu, "withdrawRunAction", tr("Withdraw &run"), "Ctrl+Alt+R", &MainWindow::withdraw_run);
}

void MainWindow::make_run_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Run"));
    add_action(menu, "startRunAction", tr("&Start run…"), "Ctrl+R", &MainWindow::start_run)->setIcon(glyph_icon(Glyph::run));
    auto& end = *menu.addMenu(tr("&End run"));
    end.setObjectName(QStringLiteral("endRunMenu"));
    const struct {
        RunEnd end;
        const char* name;
        const char* keys;
    } ends[] = {{RunEnd::cut_off_seen, "endCutOffSeenAction", "Ctrl+Shift+C"},
                {RunEnd::found_off, "endFoundOffAction", "Ctrl+Shift+F"},
                {RunEnd::stopped_by_tester, "endStoppedAction", "Ctrl+Shift+X"}};
    for (const auto& way : ends) {
        auto* made = add_action(end, way.name, sentence_case(text_of(run_end_text(way.end))), QString::fromLatin1(way.keys), nullptr);
        connect(made, &QAction::triggered, this, [this, how = way.end] { end_run(how); });
    }
    add_action(menu, "reopenRunAction", tr("Re&open"), "Ctrl+Shift+R", &MainWindow::reopen_run);
    auto& marks = *menu.addMenu(tr("&Mark"));
    marks.setObjectName(QStringLiteral("markMenu"));
    int number = 1;
    for (const auto mark : all_mark_kinds) {
        const auto name = QStringLiteral("mark%1Action").arg(number);
        auto* made = add_action(marks, name.toLatin1().constData(), sentence_case(text_of(mark_text(mark))),
                                QStringLiteral("F%1").arg(number + first_mark_key - 1), nullptr);
        connect(made, &QAction::triggered, this, [this, mark] { run_page_->recordMark(mark); });
        ++number;
    }
    auto* choose = add_action(marks, "chooseMarkAction", tr("&Choose in the entry row"), "Ctrl+M", nullptr);
    connect(choose, &QAction::triggered, this, [this] { run_page_->askMark(); });
    menu.addSeparator();
    make_running_menu(menu);
    make_reminder_menu(menu);
    menu.addSeparator();
    add_reading_actions(menu);
    add_action(menu, "importLogAction", tr("Import &log of a meter…"), "Ctrl+Alt+I", &MainWindow::import_log)->setIcon(glyph_icon(Glyph::import_in));
    add_action(menu, "editRunFormAction", tr("E&dit run…"), "Ctrl+Shift+E", &MainWindow::edit_run)->setIcon(glyph_icon(Glyph::amend));
    add_action(menu, "runReportAction", tr("Make re&port…"), "Ctrl+Alt+P", &MainWindow::make_run_report)->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::add_reading_actions(QMenu& menu) {
    auto* entry = add_action(menu, "enterReadingAction", tr("Enter &reading"), "Ctrl+Return", nullptr);
    connect(entry, &QAction::triggered, this, [this] { run_page_->focusEntry(); });
    auto* amend = add_action(menu, "amendReadingAction", tr("&Amend the last or the chosen reading…"), "F2", nullptr);
    connect(amend, &QAction::triggered, this, [this] { run_page_->amendChosenOrLast(); });
    auto* withdraw = add_action(menu, "withdrawReadingsAction", tr("Withdraw the &chosen readings"), "Del", nullptr);
    // Only the readings table answers the key: in a text field it deletes a letter.
    withdraw->setShortcutContext(Qt::WidgetShortcut);
    connect(withdraw, &QAction::triggered, this, [this] { run_page_->withdrawChosen(); });
    add_action(menu, "attachPhotoAction", tr("Attach &photo…"), "Ctrl+Shift+A", &MainWindow::attach_photo)->setIcon(glyph_icon(Glyph::photo));
    auto* paste = add_action(menu, "pastePhotoAction", tr("Paste p&hoto"), "Ctrl+V", nullptr);
    connect(paste, &QAction::triggered, this, [this] { run_page_->pastePhotos(); });
}

void MainWindow::make_running_menu(QMenu& menu) {
    auto& running = *menu.addMenu(tr("Running &tests"));
    running.setObjectName(QStringLiteral("runningMenu"));
    connect(&running, &QMenu::aboutToShow, this, &MainWindow::name_running_tests);
    add_action(running, "benchAction", tr("&All side by side"), "Ctrl+B", &MainWindow::showBench)->setIcon(glyph_icon(Glyph::clock));
    running.addSeparator();
    for (int number = 1; number <= most_running_keys; ++number) {
        const auto name = QStringLiteral("running%1Action").arg(number);
        auto* made =
            add_action(running, name.toLatin1().constData(), tr("Running test %1").arg(number), QStringLiteral("Ctrl+%1").arg(number), nullptr);
        made->setProperty("helpText", made->text());
        connect(made, &QAction::triggered, this, [this, made] { enterReading(utf8_of(made->data().toString())); });
    }
}

void MainWindow::make_reminder_menu(QMenu& menu) {
    auto& reminding = *menu.addMenu(tr("Re&minders"));
    reminding.setObjectName(QStringLiteral("reminderMenu"));
    auto* rule = add_action(reminding, "reminderRuleAction", tr("&Next reading…"), "Ctrl+T", nullptr);
    connect(rule, &QAction::triggered, this, [this] { edit_rule(run_uuid_); });
    add_action(reminding, "enterDueAction", tr("&Enter the reading that is due"), "Ctrl+D", &MainWindow::enter_due_reading);
    for (const int minutes : ReminderBar::snoozes_min) {
        const auto name = QStringLiteral("snooze%1Action").arg(minutes);
        // The first figure of the minutes: Alt+5, Alt+1, Alt+2.
        auto* made = add_action(reminding, name.toLatin1().constData(), tr("Call again in %1 minutes").arg(minutes),
                                QStringLiteral("Alt+%1").arg(QString::number(minutes).at(0)), nullptr);
        connect(made, &QAction::triggered, this, [this, minutes] { snooze(minutes); });
    }
    reminding.addSeparator();
    auto* sound = add_action(reminding, "reminderSoundAction", tr("&Sound when a reading is due"), "Ctrl+Shift+D", nullptr);
    sound->setCheckable(true);
    sound->setChecked(settings_.reminderSound());
    connect(sound, &QAction::toggled, this, [this](bool on) { settings_.setReminderSound(on); });
}

void MainWindow::make_compare_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Compare"));
    add_action(menu, "comparisonAction", tr("&Comparison page"), "Ctrl+K", &MainWindow::showComparison)->setIcon(glyph_icon(Glyph::compare));
    add_action(menu, "addComparedLogbooksAction", tr("&Add units of another logbook…"), "Ctrl+Shift+L", &MainWindow::add_compared_logbooks);
    add_action(menu, "exportComparisonAction", tr("&Export…"), "Ctrl+Shift+K", &MainWindow::export_comparison)
        ->setIcon(glyph_icon(Glyph::export_out));
    add_action(menu, "copyComparisonAction", tr("Copy &table"), "Ctrl+Alt+C", &MainWindow::copy_comparison);
    add_action(menu, "comparisonReportAction", tr("Make re&port…"), "Ctrl+Alt+K", &MainWindow::make_comparison_report)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::make_sizing_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Sizing"));
    add_action(menu, "sizingAction", tr("&Sizing for a load list"), "Ctrl+Alt+Z", &MainWindow::showSizing)->setIcon(glyph_icon(Glyph::sizing));
    add_action(menu, "exportSizingAction", tr("&Export sizing…"), "Ctrl+Alt+N", &MainWindow::export_sizing)->setIcon(glyph_icon(Glyph::export_out));
    add_action(menu, "sizingReportAction", tr("Make &report of the sizing…"), "Ctrl+Alt+M", &MainWindow::make_sizing_report)
        ->setIcon(glyph_icon(Glyph::report));
    menu.addSeparator();
    add_action(menu, "pvInputAction", tr("&PV input check"), "Ctrl+Alt+V", &MainWindow::showPvInput)->setIcon(glyph_icon(Glyph::panel_input));
    add_action(menu, "addPvSheetAction", tr("&Add PV sheet"), "Ctrl+Shift+V", &MainWindow::add_pv_sheet)->setIcon(glyph_icon(Glyph::add));
    add_action(menu, "withdrawPvSheetAction", tr("&Withdraw PV sheet"), "Ctrl+Alt+W", &MainWindow::withdraw_pv_sheet);
    add_action(menu, "pvReportAction", tr("Make re&port of the PV check…"), "Ctrl+Alt+B", &MainWindow::make_pv_report)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::make_view_menu() {
    auto& menu = *menuBar()->addMenu(tr("&View"));
    auto* themes = new QActionGroup(this);
    const struct {
        Theme theme;
        const char* name;
        QString text;
        const char* keys;
    } choices[] = {{Theme::system, "systemThemeAction", tr("&System colours"), "Ctrl+Alt+S"},
                   {Theme::light, "lightThemeAction", tr("&Light"), "Ctrl+Alt+L"},
                   {Theme::dark, "darkThemeAction", tr("&Dark"), "Ctrl+Alt+D"}};
    for (const auto& choice : choices) {
        auto* made = add_action(menu, choice.name, choice.text, QString::fromLatin1(choice.keys), nullptr);
        made->setCheckable(true);
        made->setChecked(settings_.theme() == choice.theme);
        themes->addAction(made);
        connect(made, &QAction::triggered, this, [this, theme = choice.theme] { set_theme(theme); });
    }
    menu.addSeparator();
    auto* charts = add_action(menu, "chartsAction", tr("&Charts beside the readings"), "F9", nullptr);
    charts->setCheckable(true);
    charts->setChecked(settings_.chartsShown());
    connect(charts, &QAction::toggled, this, &MainWindow::show_charts);
    add_action(menu, "copyPictureAction", tr("Cop&y picture"), "Ctrl+Shift+P", &MainWindow::copy_shown_picture);
    add_action(menu, "savePictureAction", tr("Sa&ve picture…"), "Ctrl+P", &MainWindow::save_shown_picture);
    menu.addSeparator();
    add_action(menu, "largerTextAction", tr("Text l&arger"), "Ctrl++", &MainWindow::larger_text);
    add_action(menu, "smallerTextAction", tr("Text s&maller"), "Ctrl+-", &MainWindow::smaller_text);
    add_action(menu, "usualTextAction", tr("Text as &usual"), "Ctrl+0", &MainWindow::usual_text);
}

void MainWindow::make_help_menu() {
    auto& menu = *menuBar()->addMenu(tr("&Help"));
    add_action(menu, "keysAndWordsAction", tr("&Keys and words"), "F1", &MainWindow::show_keys_and_words)->setIcon(glyph_icon(Glyph::help));
    add_action(menu, "exampleAction", tr("&Worked example"), "Ctrl+Alt+X", &MainWindow::show_example);
    add_action(menu, "methodAction", tr("&Method"), "Shift+F1", &MainWindow::show_method);
    menu.addSeparator();
    for (const HelpPage& page : help_pages()) {
        auto* made = add_action(menu, page.action, page.entry, QString::fromLatin1(page.keys), nullptr);
        connect(made, &QAction::triggered, this, [this, page] {
            const HelpText text = help_text(page);
            help().showMarkdown(text.title, text.markdown);
        });
    }
    menu.addSeparator();
    add_action(menu, "cautionsAction", tr("&Cautions"), "Ctrl+F1", &MainWindow::show_cautions);
    add_action(menu, "aboutAction", tr("&About Ullage"), "Ctrl+Shift+F1", &MainWindow::show_about);
}

void MainWindow::update_actions() {
    const auto enable = [this](std::initializer_list<const char*> names, bool enabled) {
        for (const auto* name : names)
            if (auto* known = action(QString::fromLatin1(name))) known->setEnabled(enabled);
    };
    const bool open = document_.isOpen();
    const auto* record = pages_->currentWidget() == run_page_ ? document_.run(run_uuid_) : nullptr;
    const bool running = record && record->run.end == RunEnd::still_running;
    enable({"benchAction", "saveCopyAction", "closeLogbookAction", "importSheetAction", "addUnitAction", "addMeterAction", "loadListsAction",
            "addLoadListAction", "importLoadListAction", "comparisonAction", "addComparedLogbooksAction", "pvInputAction", "addPvSheetAction",
            "sizingAction"},
           open);
    enable({"exportSizingAction", "sizingReportAction"}, open && !document_.loadLists().empty());
    enable({"withdrawPvSheetAction", "pvReportAction"}, open && pages_->currentWidget() == pv_page_ && !document_.pvSheets().empty());
    enable({"startRunAction"}, open && !document_.units().empty());
    enable({"exportComparisonAction", "copyComparisonAction", "exportReadingsAction", "comparisonReportAction"}, open && !document_.runs().empty());
    enable({"editUnitAction", "withdrawUnitAction"}, open && document_.unit(current_unit()) != nullptr);
    enable({"editMeterAction", "withdrawMeterAction"}, open && document_.meter(meter_uuid_) != nullptr);
    const bool lists = pages_->currentWidget() == load_lists_page_ && document_.loadList(load_lists_page_->selectedList());
    enable({"editLoadListAction", "withdrawLoadListAction", "addApplianceAction"}, lists);
    enable({"editApplianceAction", "removeApplianceAction"}, lists && load_lists_page_->selectedAppliance());
    enable({"exportSheetAction", "editRunFormAction", "withdrawRunAction", "enterReadingAction", "amendReadingAction", "withdrawReadingsAction",
            "chooseMarkAction", "attachPhotoAction", "pastePhotoAction", "importLogAction", "runReportAction"},
           record != nullptr);
    enable({"reminderRuleAction"}, running);
    enable({"endCutOffSeenAction", "endFoundOffAction", "endStoppedAction"}, running);
    enable({"reopenRunAction"}, record && !running);
    for (int number = 1; number <= static_cast<int>(std::size(all_mark_kinds)); ++number)
        enable({QStringLiteral("mark%1Action").arg(number).toLatin1().constData()}, record != nullptr);
}

} // namespace ullage
