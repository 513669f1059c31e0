// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/help_topics.h"

#include "dialogs/cautions.h"
#include "style/words.h"

#include <QAction>
#include <QKeySequence>
#include <QObject>

#include <initializer_list>
#include <utility>

namespace ullage {

namespace {

/// The entries of menus by these object names.
KeyList keys_of(const QObject& window, std::initializer_list<const char*> names) {
    KeyList keys;
    for (const char* name : names)
        if (const auto* entry = window.findChild<QAction*>(QString::fromLatin1(name)); entry && !entry->shortcut().isEmpty()) keys << key_of(*entry);
    return keys;
}

KeyList entry_keys() {
    return {{tr("store the reading in the entry row"), tr("Enter")},
            {tr("next or previous field"), tr("Tab, Shift+Tab")},
            {tr("clear the entry row"), tr("Esc")},
            {tr("answer a doubt: as meant, keep, correct, reset, swapped"), tr("M, K, C, Z, W")}};
}

KeyList display_keys() {
    return {{tr("take the reading of that card"), tr("1 to 9")},
            {tr("dim the display: by the hours, always, never"), tr("N")},
            {tr("take the last step back"), tr("Ctrl+Z")},
            {tr("leave the entry, then the display"), tr("Esc")}};
}

struct PageWords {
    const char *page, *title, *about;
};

constexpr PageWords page_words[] = {
    {"runPage", QT_TRANSLATE_NOOP("ullage", "The page of a run"),
     QT_TRANSLATE_NOOP("ullage",
                       "Type what the gauge and the register show into the row below the readings and press Enter. A doubtful value is asked "
                       "about; nothing is recorded before you answer. F3 to F7 note an event at once, F8 ends the run. Charts, budget and "
                       "log stand in the tabs; what the readings say stands below.")},
    {"benchPage", QT_TRANSLATE_NOOP("ullage", "Running tests"),
     QT_TRANSLATE_NOOP("ullage",
                       "All tests that run, side by side: what each is at, when its cut-off should come, and when its next reading is due. F11 "
                       "shows them over the whole screen, to be read from two metres.")},
    {"unitPage", QT_TRANSLATE_NOOP("ullage", "The page of a unit"),
     QT_TRANSLATE_NOOP("ullage",
                       "What all runs of the unit say together, its claims against what was tested, and the next run worth making. Start run "
                       "(Ctrl+R) begins one.")},
    {"comparisonPage", QT_TRANSLATE_NOOP("ullage", "Comparison"),
     QT_TRANSLATE_NOOP("ullage",
                       "Units side by side, as tested or at one load. The sentence above says which order the meters resolve; units that they "
                       "cannot tell apart share a rank.")},
    {"sizingPage", QT_TRANSLATE_NOOP("ullage", "Sizing"),
     QT_TRANSLATE_NOOP("ullage", "How many days each unit carries a load list, how many units that takes, and which PV array.")},
    {"loadListsPage", QT_TRANSLATE_NOOP("ullage", "Load lists"),
     QT_TRANSLATE_NOOP("ullage", "Appliances that a unit is to feed: what each takes while on, how long a day, and when.")},
    {"pvPage", QT_TRANSLATE_NOOP("ullage", "PV input"),
     QT_TRANSLATE_NOOP("ullage", "Whether a string of modules fits the PV input of a unit, cold and hot. PV strings are live in light.")},
    {"metersPage", QT_TRANSLATE_NOOP("ullage", "Meters"),
     QT_TRANSLATE_NOOP("ullage", "What is stated of each meter. Without its error limit no interval can be stated.")},
};

KeyList page_keys(const QString& page, const QObject& window) {
    if (page == QLatin1String("unitPage")) return keys_of(window, {"startRunAction", "editUnitAction", "unitReportAction", "importSheetAction"});
    if (page == QLatin1String("comparisonPage"))
        return keys_of(window, {"exportComparisonAction", "copyComparisonAction", "comparisonColumnsAction", "comparisonReportAction",
                                "addComparedLogbooksAction"}) +
               KeyList{{tr("from vessel to vessel, each with its figures"), tr("Left, Right")}};
    if (page == QLatin1String("sizingPage")) return keys_of(window, {"loadListsAction", "exportSizingAction", "sizingReportAction"});
    if (page == QLatin1String("loadListsPage"))
        return keys_of(window, {"addLoadListAction", "addApplianceAction", "editApplianceAction", "removeApplianceAction"});
    if (page == QLatin1String("pvPage")) return keys_of(window, {"addPvSheetAction", "importPvSheetAction", "pvReportAction"});
    if (page == QLatin1String("metersPage")) return keys_of(window, {"addMeterAction", "editMeterAction", "withdrawMeterAction"});
    KeyList keys;
    const auto groups = bench_keys(window);
    for (const KeyGroup& group : groups) keys += group.keys;
    return keys;
}

} // namespace

QPair<QString, QString> key_of(const QAction& entry) {
    const QString text = entry.objectName() == QLatin1String("undoAction")   ? tr("Undo")
                         : entry.objectName() == QLatin1String("redoAction") ? tr("Redo")
                         : entry.property("helpText").isValid()              ? entry.property("helpText").toString()
                                                                             : entry.text();
    return {QString(text).remove(QLatin1Char('&')).remove(QChar(0x2026)), entry.shortcut().toString(QKeySequence::NativeText)};
}

QList<KeyGroup> bench_keys(const QObject& window) {
    return {
        {tr("Entering a reading"),
         entry_keys() + keys_of(window, {"enterReadingAction", "amendReadingAction", "withdrawReadingsAction", "undoAction", "pastePhotoAction"})},
        {tr("Something happened"), keys_of(window, {"mark1Action", "mark2Action", "mark3Action", "mark4Action", "mark5Action", "mark6Action"})},
        {tr("Tests and reminders"), keys_of(window, {"startRunAction", "endFoundOffAction", "endStoppedAction", "benchAction", "running1Action",
                                                     "running2Action", "running3Action", "enterDueAction", "snooze10Action", "reminderRuleAction"})},
        {tr("Bench display"), keys_of(window, {"benchDisplayAction"}) + display_keys()}};
}

PageHelp page_help(const QString& page, const QObject& window) {
    for (const PageWords& words : page_words)
        if (page == QLatin1String(words.page)) return {tr(words.title), tr(words.about), page_keys(page, window)};
    return {};
}

Report key_card(const QObject& window, const QString& made) {
    Report report;
    report.title = utf8_of(tr("Keys at the bench"));
    report.made = utf8_of(made);
    const auto groups = bench_keys(window);
    for (const KeyGroup& group : groups) {
        ReportTable table;
        table.title = utf8_of(group.title);
        table.table.heads = {utf8_of(tr("key")), utf8_of(tr("what it does"))};
        table.table.right = {false, false};
        for (const auto& [does, key] : group.keys) {
            PrintedCell key_cell, words_cell;
            key_cell.value = utf8_of(key);
            words_cell.value = utf8_of(does);
            table.table.rows.push_back({key_cell, words_cell});
        }
        report.blocks.emplace_back(std::move(table));
    }
    report.blocks.emplace_back(ReportParagraph{utf8_of(tr("Always.")), utf8_of(caution_line())});
    return report;
}

} // namespace ullage
