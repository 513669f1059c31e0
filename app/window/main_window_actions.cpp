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

QAction* MainWindow::addEntry(QMenu& menu, const char* name, const QString& text, const QString& keys, void (MainWindow::*does)()) {
    auto* made = new QAction(text, this);
    made->setObjectName(QString::fromLatin1(name));
    made->setShortcut(QKeySequence(keys));
    if (does) connect(made, &QAction::triggered, this, does);
    menu.addAction(made);
    actions_.insert(made->objectName(), made);
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
}

void MainWindow::makeLogbookMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Logbook"));
    addEntry(menu, "newLogbookAction", tr("&New…"), "Ctrl+N", &MainWindow::newLogbook);
    addEntry(menu, "openLogbookAction", tr("&Open…"), "Ctrl+O", &MainWindow::chooseLogbook)->setIcon(glyph_icon(Glyph::open));
    recent_menu_ = menu.addMenu(tr("Open &recent"));
    recent_menu_->setObjectName(QStringLiteral("recentMenu"));
    connect(recent_menu_, &QMenu::aboutToShow, this, &MainWindow::fillRecentMenu);
    addEntry(menu, "sampleLogbookAction", tr("Open the sa&mple logbook"), "Ctrl+Shift+O", &MainWindow::openSample);
    addEntry(menu, "saveCopyAction", tr("&Save a copy…"), "Ctrl+Shift+S", &MainWindow::saveCopy);
    addEntry(menu, "closeLogbookAction", tr("&Close"), "Ctrl+W", &MainWindow::closeLogbook);
    menu.addSeparator();
    addEntry(menu, "importSheetAction", tr("&Import run sheet…"), "Ctrl+I", &MainWindow::importSheet)->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "exportSheetAction", tr("&Export run sheet…"), "Ctrl+E", &MainWindow::exportSheet)->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "exportReadingsAction", tr("Export rea&dings…"), "Ctrl+Alt+E", &MainWindow::exportReadings);
    menu.addSeparator();
    auto* quit = addEntry(menu, "quitAction", tr("&Quit"), "Ctrl+Q", nullptr);
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
    addEntry(menu, "addUnitAction", tr("Add &unit…"), "Ctrl+U", &MainWindow::addUnit)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editUnitAction", tr("&Edit unit…"), "Ctrl+Shift+U", &MainWindow::editUnit);
    addEntry(menu, "withdrawUnitAction", tr("&Withdraw unit"), "Ctrl+Alt+U", &MainWindow::withdrawUnit);
    menu.addSeparator();
    addEntry(menu, "addMeterAction", tr("Add &meter…"), "Ctrl+G", &MainWindow::addMeter)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "editMeterAction", tr("E&dit meter…"), "Ctrl+Shift+G", &MainWindow::editMeter);
    addEntry(menu, "withdrawMeterAction", tr("W&ithdraw meter"), "Ctrl+Alt+G", &MainWindow::withdrawMeter);
    menu.addSeparator();
    makeLoadListMenu(menu);
    menu.addSeparator();
    addEntry(menu, "withdrawRunAction", tr("Withdraw &run"), "Ctrl+Alt+R", &MainWindow::withdrawRun);
}

void MainWindow::makeRunMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Run"));
    addEntry(menu, "startRunAction", tr("&Start run…"), "Ctrl+R", &MainWindow::startRun)->setIcon(glyph_icon(Glyph::run));
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
        auto* made = addEntry(end, way.name, sentence_case(text_of(run_end_text(way.end))), QString::fromLatin1(way.keys), nullptr);
        connect(made, &QAction::triggered, this, [this, how = way.end] { endRun(how); });
    }
    addEntry(menu, "reopenRunAction", tr("Re&open"), "Ctrl+Shift+R", &MainWindow::reopenRun);
    auto& marks = *menu.addMenu(tr("&Mark"));
    marks.setObjectName(QStringLiteral("markMenu"));
    int number = 1;
    for (const auto mark : all_mark_kinds) {
        const auto name = QStringLiteral("mark%1Action").arg(number);
        auto* made = addEntry(marks, name.toLatin1().constData(), sentence_case(text_of(mark_text(mark))),
                              QStringLiteral("F%1").arg(number + first_mark_key - 1), nullptr);
        connect(made, &QAction::triggered, this, [this, mark] { run_page_->recordMark(mark); });
        ++number;
    }
    auto* choose = addEntry(marks, "chooseMarkAction", tr("&Choose in the entry row"), "Ctrl+M", nullptr);
    connect(choose, &QAction::triggered, this, [this] { run_page_->askMark(); });
    menu.addSeparator();
    makeRunningMenu(menu);
    makeReminderMenu(menu);
    menu.addSeparator();
    addReadingActions(menu);
    addEntry(menu, "importLogAction", tr("Import &log of a meter…"), "Ctrl+Alt+I", &MainWindow::chooseLog)->setIcon(glyph_icon(Glyph::import_in));
    addEntry(menu, "editRunFormAction", tr("E&dit run…"), "Ctrl+Shift+E", &MainWindow::editRun)->setIcon(glyph_icon(Glyph::amend));
    addEntry(menu, "runReportAction", tr("Make re&port…"), "Ctrl+Alt+P", &MainWindow::makeRunReport)->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::addReadingActions(QMenu& menu) {
    auto* entry = addEntry(menu, "enterReadingAction", tr("Enter &reading"), "Ctrl+Return", nullptr);
    connect(entry, &QAction::triggered, this, [this] { run_page_->focusEntry(); });
    auto* amend = addEntry(menu, "amendReadingAction", tr("&Amend the last or the chosen reading…"), "F2", nullptr);
    connect(amend, &QAction::triggered, this, [this] { run_page_->amendChosenOrLast(); });
    auto* withdraw = addEntry(menu, "withdrawReadingsAction", tr("Withdraw the &chosen readings"), "Del", nullptr);
    // Only the readings table answers the key: in a text field it deletes a letter.
    withdraw->setShortcutContext(Qt::WidgetShortcut);
    connect(withdraw, &QAction::triggered, this, [this] { run_page_->withdrawChosen(); });
    addEntry(menu, "attachPhotoAction", tr("Attach &photo…"), "Ctrl+Shift+A", &MainWindow::attachPhoto)->setIcon(glyph_icon(Glyph::photo));
    auto* paste = addEntry(menu, "pastePhotoAction", tr("Paste p&hoto"), "Ctrl+V", nullptr);
    connect(paste, &QAction::triggered, this, [this] { run_page_->pastePhotos(); });
}

void MainWindow::makeRunningMenu(QMenu& menu) {
    auto& running = *menu.addMenu(tr("Running &tests"));
    running.setObjectName(QStringLiteral("runningMenu"));
    connect(&running, &QMenu::aboutToShow, this, &MainWindow::nameRunningTests);
    addEntry(running, "benchAction", tr("&All side by side"), "Ctrl+B", &MainWindow::showBench)->setIcon(glyph_icon(Glyph::clock));
    running.addSeparator();
    for (int number = 1; number <= most_running_keys; ++number) {
        const auto name = QStringLiteral("running%1Action").arg(number);
        auto* made =
            addEntry(running, name.toLatin1().constData(), tr("Running test %1").arg(number), QStringLiteral("Ctrl+%1").arg(number), nullptr);
        made->setProperty("helpText", made->text());
        connect(made, &QAction::triggered, this, [this, made] { enterReading(utf8_of(made->data().toString())); });
    }
}

void MainWindow::makeReminderMenu(QMenu& menu) {
    auto& reminding = *menu.addMenu(tr("Re&minders"));
    reminding.setObjectName(QStringLiteral("reminderMenu"));
    auto* rule = addEntry(reminding, "reminderRuleAction", tr("&Next reading…"), "Ctrl+T", nullptr);
    connect(rule, &QAction::triggered, this, [this] { editRule(run_uuid_); });
    addEntry(reminding, "enterDueAction", tr("&Enter the reading that is due"), "Ctrl+D", &MainWindow::enterDueReading);
    for (const int minutes : ReminderBar::snoozes_min) {
        const auto name = QStringLiteral("snooze%1Action").arg(minutes);
        // The first figure of the minutes: Alt+5, Alt+1, Alt+2.
        auto* made = addEntry(reminding, name.toLatin1().constData(), tr("Call again in %1 minutes").arg(minutes),
                              QStringLiteral("Alt+%1").arg(QString::number(minutes).at(0)), nullptr);
        connect(made, &QAction::triggered, this, [this, minutes] { snooze(minutes); });
    }
    reminding.addSeparator();
    auto* sound = addEntry(reminding, "reminderSoundAction", tr("&Sound when a reading is due"), "Ctrl+Shift+D", nullptr);
    sound->setCheckable(true);
    sound->setChecked(settings_.reminderSound());
    connect(sound, &QAction::toggled, this, [this](bool on) { settings_.setReminderSound(on); });
}

void MainWindow::makeCompareMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Compare"));
    addEntry(menu, "comparisonAction", tr("&Comparison page"), "Ctrl+K", &MainWindow::showComparison)->setIcon(glyph_icon(Glyph::compare));
    addEntry(menu, "addComparedLogbooksAction", tr("&Add units of another logbook…"), "Ctrl+Shift+L", &MainWindow::addComparedLogbooks);
    addEntry(menu, "exportComparisonAction", tr("&Export…"), "Ctrl+Shift+K", &MainWindow::exportComparison)->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "copyComparisonAction", tr("Copy &table"), "Ctrl+Alt+C", &MainWindow::copyComparison);
    addEntry(menu, "comparisonReportAction", tr("Make re&port…"), "Ctrl+Alt+K", &MainWindow::makeComparisonReport)
        ->setIcon(glyph_icon(Glyph::report));
}

void MainWindow::makeSizingMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Sizing"));
    addEntry(menu, "sizingAction", tr("&Sizing for a load list"), "Ctrl+Alt+Z", &MainWindow::showSizing)->setIcon(glyph_icon(Glyph::sizing));
    addEntry(menu, "exportSizingAction", tr("&Export sizing…"), "Ctrl+Alt+N", &MainWindow::exportSizing)->setIcon(glyph_icon(Glyph::export_out));
    addEntry(menu, "sizingReportAction", tr("Make &report of the sizing…"), "Ctrl+Alt+M", &MainWindow::makeSizingReport)
        ->setIcon(glyph_icon(Glyph::report));
    menu.addSeparator();
    addEntry(menu, "pvInputAction", tr("&PV input check"), "Ctrl+Alt+V", &MainWindow::showPvInput)->setIcon(glyph_icon(Glyph::panel_input));
    addEntry(menu, "addPvSheetAction", tr("&Add PV sheet"), "Ctrl+Shift+V", &MainWindow::addPvSheet)->setIcon(glyph_icon(Glyph::add));
    addEntry(menu, "withdrawPvSheetAction", tr("&Withdraw PV sheet"), "Ctrl+Alt+W", &MainWindow::withdrawPvSheet);
    addEntry(menu, "pvReportAction", tr("Make re&port of the PV check…"), "Ctrl+Alt+B", &MainWindow::makePvReport)
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
        auto* made = addEntry(menu, choice.name, choice.text, QString::fromLatin1(choice.keys), nullptr);
        made->setCheckable(true);
        made->setChecked(settings_.theme() == choice.theme);
        themes->addAction(made);
        connect(made, &QAction::triggered, this, [this, theme = choice.theme] { setTheme(theme); });
    }
    menu.addSeparator();
    auto* charts = addEntry(menu, "chartsAction", tr("&Charts beside the readings"), "F9", nullptr);
    charts->setCheckable(true);
    charts->setChecked(settings_.chartsShown());
    connect(charts, &QAction::toggled, this, &MainWindow::showCharts);
    addEntry(menu, "copyPictureAction", tr("Cop&y picture"), "Ctrl+Shift+P", &MainWindow::copyShownPicture);
    addEntry(menu, "savePictureAction", tr("Sa&ve picture…"), "Ctrl+P", &MainWindow::saveShownPicture);
    menu.addSeparator();
    addEntry(menu, "largerTextAction", tr("Text l&arger"), "Ctrl++", &MainWindow::largerText);
    addEntry(menu, "smallerTextAction", tr("Text s&maller"), "Ctrl+-", &MainWindow::smallerText);
    addEntry(menu, "usualTextAction", tr("Text as &usual"), "Ctrl+0", &MainWindow::usualText);
}

void MainWindow::makeHelpMenu() {
    auto& menu = *menuBar()->addMenu(tr("&Help"));
    addEntry(menu, "keysAndWordsAction", tr("&Keys and words"), "F1", &MainWindow::showKeysAndWords)->setIcon(glyph_icon(Glyph::help));
    addEntry(menu, "exampleAction", tr("&Worked example"), "Ctrl+Alt+X", &MainWindow::showExample);
    addEntry(menu, "methodAction", tr("&Method"), "Shift+F1", &MainWindow::showMethod);
    menu.addSeparator();
    for (const HelpPage& page : help_pages()) {
        auto* made = addEntry(menu, page.action, page.entry, QString::fromLatin1(page.keys), nullptr);
        connect(made, &QAction::triggered, this, [this, page] {
            const HelpText text = help_text(page);
            help().showMarkdown(text.title, text.markdown);
        });
    }
    menu.addSeparator();
    addEntry(menu, "cautionsAction", tr("&Cautions"), "Ctrl+F1", &MainWindow::showCautions);
    addEntry(menu, "aboutAction", tr("&About Ullage"), "Ctrl+Shift+F1", &MainWindow::showAbout);
}

void MainWindow::updateActions() {
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
    enable({"editUnitAction", "withdrawUnitAction"}, open && document_.unit(currentUnit()) != nullptr);
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
