// SPDX-License-Identifier: GPL-3.0-or-later
// The menus.
#include "window/main_window.h"

#include "dialogs/help_dialog.h"
#include "dialogs/help_pages.h"
#include "pages/run/run_page.h"
#include "services/settings.h"
#include "style/icons.h"
#include "style/theme.h"
#include "style/words.h"
#include "window/bench_controller.h"
#include "window/comparison_controller.h"
#include "window/file_controller.h"
#include "window/guide_controller.h"
#include "window/load_list_controller.h"
#include "window/log_controller.h"
#include "window/page_stack.h"
#include "window/record_controller.h"
#include "window/reminder_bar.h"
#include "window/report_controller.h"
#include "window/settings_controller.h"
#include "window/table_controller.h"
#include "window/view_controller.h"

#include <QActionGroup>
#include <QMenu>
#include <QMenuBar>

namespace ullage {

namespace {

constexpr int first_mark_key = 3;    ///< marks are on F3 to F8
constexpr int most_running_keys = 9; ///< running tests on Ctrl+1 to Ctrl+9

/// "cut-off seen" to "Cut-off seen".
QString sentence_case(const QString& text) { return text.left(1).toUpper() + text.mid(1); }

} // namespace

QAction* MainWindow::addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys) {
    auto* made = new QAction(text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setShortcut(QKeySequence(keys));
    menu.addAction(made);
    actions_.insert(made->objectName(), made);
    return made;
}

template <class Receiver>
QAction* MainWindow::addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys, Receiver* receiver, void (Receiver::*does)()) {
    auto* made = addEntry(menu, name, text, keys);
    connect(made, &QAction::triggered, receiver, does);
    return made;
}

void MainWindow::makeActions() {
    makeLogbookMenu();
    makeEditMenu();
    makeRunMenu();
    makeCompareMenu();
    makeSizingMenu();
    makeViewMenu();
    makeHelpMenu();
    checkMenus();
}

void MainWindow::makeLogbookMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Logbook"));
    addEntry(menu, "newLogbookAction", tr("&New…"), "Ctrl+N", files_, &FileController::newLogbook);
    addEntry(menu, "openLogbookAction", tr("&Open…"), "Ctrl+O", files_, &FileController::chooseLogbook)->setIcon(glyph_icon(Glyph::open));
    auto* recent = menu.addMenu(tr("Open &recent"));
    recent->setObjectName(QStringLiteral("recentMenu"));
    connect(recent, &QMenu::aboutToShow, files_, [this, recent] { files_->fillRecentMenu(*recent); });
    addEntry(menu, "sampleLogbookAction", tr("Open the sa&mple logbook"), "Ctrl+Shift+O", files_, &FileController::openSample);
    addEntry(menu, "saveCopyAction", tr("&Save a copy…"), "Ctrl+Shift+S", files_, &FileController::saveCopy);
    addEntry(menu, "closeLogbookAction", tr("&Close"), "Ctrl+W", files_, &FileController::closeLogbook);
    menu.addSeparator();
    addEntry(menu, "importSheetAction", tr("&Import run sheet…"), "Ctrl+I", files_, &FileController::importSheet)
        ->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "importTableAction", tr("Import &table…"), "Ctrl+Shift+T", tables_, &TableController::chooseTable)
        ->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "pasteTableAction", tr("&Paste table…"), "Ctrl+Shift+B", tables_, &TableController::pasteTable);
    addEntry(menu, "exportSheetAction", tr("&Export run sheet…"), "Ctrl+E", files_, &FileController::exportSheet)
        ->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "exportReadingsAction", tr("Export rea&dings…"), "Ctrl+Alt+E", files_, &FileController::exportReadings);
    menu.addSeparator();
    addEntry(menu, "importFolderAction", tr("Import fo&lder…"), "Ctrl+Alt+T", files_, qOverload<>(&FileController::importFolder));
    addEntry(menu, "exportFolderAction", tr("Export as &folder…"), "Ctrl+Shift+W", files_, &FileController::exportFolder);
    menu.addSeparator();
    auto* quit = addEntry(menu, "quitAction", tr("&Quit"), "Ctrl+Q");
    connect(quit, &QAction::triggered, this, &QWidget::close);
}

void MainWindow::makeEditMenu() {
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
    addEntry(menu, "addUnitAction", tr("Add &unit…"), "Ctrl+U", records_, &RecordController::addUnit)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editUnitAction", tr("&Edit unit…"), "Ctrl+Shift+U", records_, &RecordController::editUnit);
    addEntry(menu, "unitReportAction", tr("Make re&port of the unit…"), "Ctrl+Alt+O", reports_, &ReportController::makeUnitReport)
        ->setIcon(glyph_icon(Glyph::report));
    addEntry(menu, "withdrawUnitAction", tr("Withdraw unit"), "Ctrl+Alt+U", records_, &RecordController::withdrawUnit);
    menu.addSeparator();
    addEntry(menu, "addMeterAction", tr("Add &meter…"), "Ctrl+G", records_, &RecordController::addMeter)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editMeterAction", tr("E&dit meter…"), "Ctrl+Shift+G", records_, &RecordController::editMeter);
    addEntry(menu, "withdrawMeterAction", tr("Withdraw meter"), "Ctrl+Alt+G", records_, &RecordController::withdrawMeter);
    menu.addSeparator();
    addEntry(menu, "editMethodAction", tr("Meth&od…"), "Ctrl+Shift+Y", records_, &RecordController::editMethod);
    makeLoadListMenu(menu);
    menu.addSeparator();
    addEntry(menu, "withdrawRunAction", tr("Withdraw run"), "Ctrl+Alt+R", records_, &RecordController::withdrawRun);
    menu.addSeparator();
    auto* settings = addEntry(menu, "settingsAction", tr("&Settings…"), "Ctrl+,", setting_, &SettingsController::showSettings);
    settings->setIcon(glyph_icon(Glyph::settings));
    settings->setMenuRole(QAction::PreferencesRole);
}

void MainWindow::makeLoadListMenu(QMenu& above) {
    auto& menu = *above.addMenu(tr("&Load lists"));
    menu.setObjectName(QStringLiteral("loadListsMenu"));
    addEntry(menu, "loadListsAction", tr("&Page of load lists"), "Ctrl+L", pages_, &PageStack::showLoadLists)->setIcon(glyph_icon(Glyph::load_list));
    menu.addSeparator();
    addEntry(menu, "addLoadListAction", tr("Add &load list…"), "Ctrl+J", load_lists_, &LoadListController::addLoadList)
        ->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "importLoadListAction", tr("&Import load list…"), "Ctrl+Shift+I", files_, &FileController::importLoadList)
        ->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "editLoadListAction", tr("&Edit load list…"), "Ctrl+Shift+J", load_lists_, &LoadListController::editLoadList);
    addEntry(menu, "withdrawLoadListAction", tr("Withdraw load list"), "Ctrl+Alt+J", load_lists_, &LoadListController::withdrawLoadList);
    menu.addSeparator();
    addEntry(menu, "addApplianceAction", tr("&Add appliance…"), "Ctrl+H", load_lists_, &LoadListController::addAppliance)
        ->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editApplianceAction", tr("Edit applia&nce…"), "Ctrl+Shift+H", load_lists_, &LoadListController::editAppliance);
    addEntry(menu, "removeApplianceAction", tr("Remove appliance"), "Ctrl+Alt+H", load_lists_, &LoadListController::removeAppliance);
}

void MainWindow::makeRunMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Run"));
    addEntry(menu, "startRunAction", tr("&Start run…"), "Ctrl+R", records_, &RecordController::startRun)->setIcon(glyph_icon(Glyph::run));
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
        auto* made = addEntry(end, way.name, sentence_case(text_of(say_run_end(way.end))) + QStringLiteral("…"), QString::fromLatin1(way.keys));
        connect(made, &QAction::triggered, this, [this, how = way.end] { records_->endRun(how); });
    }
    addEntry(menu, "reopenRunAction", tr("Re&open"), "Ctrl+Shift+R", records_, &RecordController::reopenRun);
    auto& marks = *menu.addMenu(tr("&Mark"));
    marks.setObjectName(QStringLiteral("markMenu"));
    int number = 1;
    for (const auto mark : all_mark_kinds) {
        const auto name = QStringLiteral("mark%1Action").arg(number);
        auto* made = addEntry(marks, name.toLatin1().constData(), sentence_case(text_of(say_mark(mark))),
                              QStringLiteral("F%1").arg(number + first_mark_key - 1));
        connect(made, &QAction::triggered, this, [this, mark] { markNow(mark); });
        ++number;
    }
    auto* choose = addEntry(marks, "chooseMarkAction", tr("&Choose in the entry row"), "Ctrl+M");
    connect(choose, &QAction::triggered, this, [this] { pages_->run()->askMark(); });
    menu.addSeparator();
    makeRunningMenu(menu);
    makeReminderMenu(menu);
    menu.addSeparator();
    addReadingActions(menu);
    addEntry(menu, "importLogAction", tr("Import &log…"), "Ctrl+Alt+I", logs_, &LogController::chooseLog)->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "editRunFormAction", tr("E&dit run…"), "Ctrl+Shift+E", records_, &RecordController::editRun)->setIcon(glyph_icon(Glyph::amend));
    addEntry(menu, "runReportAction", tr("Make re&port…"), "Ctrl+Alt+P", reports_, &ReportController::makeRunReport)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::markNow(MarkKind mark) {
    const RunRecord* record = document_.run(pages_->runUuid());
    // A unit that was seen to go off ends its run: the form asks what was shown then.
    if (mark == MarkKind::cut_off && record && record->run.end == RunEnd::still_running) records_->endRun(RunEnd::cut_off_seen);
    else pages_->run()->recordMark(mark);
}

void MainWindow::addReadingActions(QMenu& menu) {
    auto* entry = addEntry(menu, "enterReadingAction", tr("Enter &reading"), "Ctrl+Return");
    connect(entry, &QAction::triggered, this, [this] { pages_->run()->focusEntry(); });
    auto* amend = addEntry(menu, "amendReadingAction", tr("&Amend the last or the chosen reading…"), "F2");
    connect(amend, &QAction::triggered, this, [this] { pages_->run()->amendChosenOrLast(); });
    auto* withdraw = addEntry(menu, "withdrawReadingsAction", tr("Withdraw the chosen readings"), "Del");
    // Only the readings table answers the key: in a text field it deletes a letter.
    withdraw->setShortcutContext(Qt::WidgetShortcut);
    connect(withdraw, &QAction::triggered, this, [this] { pages_->run()->withdrawChosen(); });
    auto* withdrawn = addEntry(menu, "withdrawnReadingsAction", tr("Show withdrawn readings"), "Ctrl+Alt+A");
    withdrawn->setCheckable(true);
    connect(withdrawn, &QAction::toggled, this, [this](bool shown) { pages_->run()->setWithdrawnShown(shown); });
    addEntry(menu, "attachPhotoAction", tr("Attach &photo…"), "Ctrl+Shift+A", files_, &FileController::attachPhoto)
        ->setIcon(glyph_icon(Glyph::photo));
    auto* paste = addEntry(menu, "pastePhotoAction", tr("Paste p&hoto"), "Ctrl+V");
    connect(paste, &QAction::triggered, this, [this] {
        if (TableController::clipboardHoldsTable()) tables_->pasteTable();
        else pages_->run()->pastePhotos();
    });
}

void MainWindow::makeRunningMenu(QMenu& menu) {
    auto& running = *menu.addMenu(tr("Running &tests"));
    running.setObjectName(QStringLiteral("runningMenu"));
    connect(&running, &QMenu::aboutToShow, this, &MainWindow::nameRunningTests);
    addEntry(running, "benchAction", tr("&All side by side"), "Ctrl+B", pages_, &PageStack::showBench)->setIcon(glyph_icon(Glyph::clock));
    addEntry(running, "benchDisplayAction", tr("Bench &display, full screen"), "F11", bench_, &BenchController::showDisplay);
    running.addSeparator();
    for (int number = 1; number <= most_running_keys; ++number) {
        const auto name = QStringLiteral("running%1Action").arg(number);
        auto* made = addEntry(running, name.toLatin1().constData(), tr("Running test %1").arg(number), QStringLiteral("Ctrl+%1").arg(number));
        made->setProperty("helpText", made->text());
        connect(made, &QAction::triggered, this, [this, made] { pages_->enterReading(id_of<RunId>(made->data().toString())); });
    }
}

void MainWindow::makeReminderMenu(QMenu& menu) {
    auto& reminding = *menu.addMenu(tr("Re&minders"));
    reminding.setObjectName(QStringLiteral("reminderMenu"));
    auto* rule = addEntry(reminding, "reminderRuleAction", tr("&Next reading…"), "Ctrl+T");
    connect(rule, &QAction::triggered, this, [this] { bench_->editRule(pages_->runUuid()); });
    addEntry(reminding, "enterDueAction", tr("&Enter the reading that is due"), "Ctrl+D", bench_, &BenchController::enterDueReading);
    for (const int minutes : ReminderBar::snoozes_min) {
        const auto name = QStringLiteral("snooze%1Action").arg(minutes);
        // The first figure of the minutes: Alt+5, Alt+1, Alt+2.
        auto* made = addEntry(reminding, name.toLatin1().constData(), tr("Remind me again in %1 minutes").arg(minutes),
                              QStringLiteral("Alt+%1").arg(QString::number(minutes).at(0)));
        connect(made, &QAction::triggered, this, [this, minutes] { bench_->snooze(minutes); });
    }
    reminding.addSeparator();
    auto* sound = addEntry(reminding, "reminderSoundAction", tr("&Sound when a reading is due"), "Ctrl+Shift+D");
    sound->setCheckable(true);
    connect(sound, &QAction::toggled, this, [this](bool on) { settings_.setReminderSound(on); });
}

void MainWindow::makeCompareMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Compare"));
    addEntry(menu, "comparisonAction", tr("&Comparison page"), "Ctrl+K", pages_, &PageStack::showComparison)->setIcon(glyph_icon(Glyph::compare));
    addEntry(menu, "addComparedLogbooksAction", tr("&Add units of another logbook…"), "Ctrl+Shift+L", comparing_,
             &ComparisonController::addComparedLogbooks);
    addEntry(menu, "comparisonColumnsAction", tr("Co&lumns…"), "Ctrl+Alt+Y", comparing_, &ComparisonController::chooseColumns);
    addEntry(menu, "exportComparisonAction", tr("&Export…"), "Ctrl+Shift+K", comparing_, &ComparisonController::exportComparison)
        ->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "copyComparisonAction", tr("Copy &table"), "Ctrl+Alt+C", comparing_, &ComparisonController::copyComparison);
    addEntry(menu, "comparisonReportAction", tr("Make re&port…"), "Ctrl+Alt+K", reports_, &ReportController::makeComparisonReport)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::makeSizingMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Sizing"));
    addEntry(menu, "sizingAction", tr("&Sizing for a load list"), "Ctrl+Alt+Z", pages_, &PageStack::showSizing)->setIcon(glyph_icon(Glyph::sizing));
    addEntry(menu, "exportSizingAction", tr("&Export sizing…"), "Ctrl+Alt+N", load_lists_, &LoadListController::exportSizing)
        ->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "sizingReportAction", tr("Make &report of the sizing…"), "Ctrl+Alt+M", reports_, &ReportController::makeSizingReport)
        ->setIcon(glyph_icon(Glyph::report));
    menu.addSeparator();
    addEntry(menu, "pvInputAction", tr("&PV input check"), "Ctrl+Alt+V", pages_, &PageStack::showPvInput)->setIcon(glyph_icon(Glyph::panel_input));
    addEntry(menu, "addPvSheetAction", tr("&Add PV sheet"), "Ctrl+Shift+V", records_, &RecordController::addPvSheet)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "importPvSheetAction", tr("&Import PV sheet…"), "Ctrl+Alt+F", files_, &FileController::importPvSheet)
        ->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "withdrawPvSheetAction", tr("Withdraw PV sheet"), "Ctrl+Alt+W", records_, &RecordController::withdrawPvSheet);
    addEntry(menu, "pvReportAction", tr("Make re&port of the PV check…"), "Ctrl+Alt+B", reports_, &ReportController::makePvReport)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::makeViewMenu() {
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
        auto* made = addEntry(menu, choice.name, choice.text, QString::fromLatin1(choice.keys));
        made->setCheckable(true);
        themes->addAction(made);
        connect(made, &QAction::triggered, this, [this, theme = choice.theme] { view_->setTheme(theme); });
    }
    menu.addSeparator();
    auto* charts = addEntry(menu, "chartsAction", tr("&Charts beside the readings"), "F9");
    charts->setCheckable(true);
    charts->setChecked(settings_.chartsShown());
    connect(charts, &QAction::toggled, view_, &ViewController::showCharts);
    addEntry(menu, "copyPictureAction", tr("Cop&y picture"), "Ctrl+Shift+P", view_, &ViewController::copyShownPicture);
    addEntry(menu, "savePictureAction", tr("Sa&ve picture…"), "Ctrl+P", view_, &ViewController::saveShownPicture);
    menu.addSeparator();
    addEntry(menu, "largerTextAction", tr("Text l&arger"), "Ctrl++", view_, &ViewController::largerText);
    addEntry(menu, "smallerTextAction", tr("Text s&maller"), "Ctrl+-", view_, &ViewController::smallerText);
    addEntry(menu, "usualTextAction", tr("Text as &usual"), "Ctrl+0", view_, &ViewController::usualText);
}

void MainWindow::checkMenus() {
    const char* theme = settings_.theme() == Theme::light  ? "lightThemeAction"
                        : settings_.theme() == Theme::dark ? "darkThemeAction"
                                                           : "systemThemeAction";
    action(QString::fromLatin1(theme))->setChecked(true);
    action(QStringLiteral("reminderSoundAction"))->setChecked(settings_.reminderSound());
}

void MainWindow::makeHelpMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Help"));
    addEntry(menu, "keysAndWordsAction", tr("&Keys and words"), "F1", view_, &ViewController::showKeysAndWords)->setIcon(glyph_icon(Glyph::help));
    addEntry(menu, "keyCardAction", tr("Key ca&rd to print…"), "Ctrl+Alt+1", reports_, &ReportController::makeKeyCard);
    addEntry(menu, "guideAction", tr("&Guided first run…"), "Ctrl+Alt+2", guide_, &GuideController::begin);
    addEntry(menu, "exampleAction", tr("&Worked example"), "Ctrl+Alt+X", view_, &ViewController::showExample);
    addEntry(menu, "methodAction", tr("&Method"), "Shift+F1", view_, &ViewController::showMethod);
    menu.addSeparator();
    for (const HelpPage& page : help_pages()) {
        auto* made = addEntry(menu, page.action, page.entry, QString::fromLatin1(page.keys));
        connect(made, &QAction::triggered, this, [this, page] {
            const HelpText text = help_text(page);
            view_->help().showMarkdown(text.title, text.markdown);
        });
    }
    menu.addSeparator();
    addEntry(menu, "checkInstallationAction", tr("Check this &installation"), "Ctrl+Alt+3", view_, &ViewController::checkInstallation);
    addEntry(menu, "cautionsAction", tr("&Cautions"), "Ctrl+F1", view_, &ViewController::showCautions);
    addEntry(menu, "aboutAction", tr("&About Ullage"), "Ctrl+Shift+F1", view_, &ViewController::showAbout);
}

} // namespace ullage
