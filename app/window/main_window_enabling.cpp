// SPDX-License-Identifier: GPL-3.0-or-later
// Which entries of the menus can be chosen, and what those of running tests say.
#include "window/main_window.h"

#include "base/number.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/run_head.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "services/reminders.h"
#include "style/words.h"
#include "window/page_stack.h"
#include "window/reminder_bar.h"

#include <QAction>

#include <algorithm>
#include <optional>

namespace ullage {

namespace {

/// What changes the logbook, which is refused while another program records into it.
constexpr std::initializer_list<const char*> that_record{
    "importSheetAction",   "importFolderAction",     "importTableAction",  "pasteTableAction",       "addUnitAction",
    "addMeterAction",      "editMethodAction",       "addLoadListAction",  "importLoadListAction",   "addPvSheetAction",
    "importPvSheetAction", "withdrawPvSheetAction",  "startRunAction",     "editUnitAction",         "withdrawUnitAction",
    "editMeterAction",     "withdrawMeterAction",    "editLoadListAction", "withdrawLoadListAction", "addApplianceAction",
    "editApplianceAction", "removeApplianceAction",  "editRunFormAction",  "withdrawRunAction",      "enterReadingAction",
    "amendReadingAction",  "withdrawReadingsAction", "chooseMarkAction",   "attachPhotoAction",      "pastePhotoAction",
    "importLogAction",     "endCutOffSeenAction",    "endFoundOffAction",  "endStoppedAction",       "reopenRunAction",
    "joinLogbookAction"};

} // namespace

void MainWindow::nameRunningTests() {
    const auto open = reminders_->openRuns();
    const auto now_ms = document_.clock().now_ms();
    for (std::size_t i = 0; auto* entry = action(QStringLiteral("running%1Action").arg(i + 1)); ++i) {
        const bool there = i < open.size();
        entry->setVisible(there);
        entry->setEnabled(there);
        if (!there) continue;
        const auto& record = *open[i];
        QStringList parts{text_of(record.unit.name), run_about(record)};
        std::optional<double> gauge_percent;
        for (const auto& reading : record.readings)
            if (!reading.withdrawn && reading.values.gauge_percent) gauge_percent = reading.values.gauge_percent;
        if (gauge_percent) parts << tr("gauge %1 %").arg(text_of(say_digits(exact_text(*gauge_percent))));
        const auto state = reminders_->state(record.run.uuid);
        if (state.at_ms) parts << tr("next reading %1").arg(due_words(state, now_ms));
        entry->setText(parts.join(QStringLiteral(", ")).replace(QLatin1Char('&'), QStringLiteral("&&")));
        entry->setData(raw_text(record.run.uuid));
    }
    const bool any_due =
        std::ranges::any_of(open, [this](const RunRecord* record) { return reminders_->state(record->run.uuid).due.due_ms.has_value(); });
    for (const int minutes : ReminderBar::snoozes_min)
        if (auto* snoozing = action(QStringLiteral("snooze%1Action").arg(minutes))) snoozing->setEnabled(any_due);
    if (auto* enter = action(QStringLiteral("enterDueAction"))) enter->setEnabled(any_due);
}

void MainWindow::updateActions() {
    const auto enable = [this](std::initializer_list<const char*> names, bool enabled) {
        for (const auto* name : names)
            if (auto* known = action(QString::fromLatin1(name))) known->setEnabled(enabled);
    };
    const bool open = document_.isOpen();
    const auto* record = pages_->currentWidget() == pages_->run() ? document_.run(pages_->runUuid()) : nullptr;
    const bool running = record && record->run.end == RunEnd::still_running;
    enable({"benchAction",        "benchDisplayAction", "saveCopyAction",       "closeLogbookAction", "importSheetAction",
            "importFolderAction", "exportFolderAction", "addUnitAction",        "addMeterAction",     "editMethodAction",
            "loadListsAction",    "addLoadListAction",  "importLoadListAction", "comparisonAction",   "addComparedLogbooksAction",
            "pvInputAction",      "addPvSheetAction",   "importPvSheetAction",  "sizingAction",       "joinLogbookAction"},
           open);
    enable({"exportSizingAction", "sizingReportAction"}, open && !document_.loadLists().empty());
    enable({"withdrawPvSheetAction", "pvReportAction"}, open && pages_->currentWidget() == pages_->pv() && !document_.pvSheets().empty());
    enable({"startRunAction"}, open && !document_.units().empty());
    enable({"comparisonColumnsAction", "exportComparisonAction", "copyComparisonAction", "exportReadingsAction", "comparisonReportAction"},
           open && !document_.runs().empty());
    enable({"editUnitAction", "withdrawUnitAction", "unitReportAction"}, open && document_.unit(pages_->currentUnit()) != nullptr);
    enable({"editMeterAction", "withdrawMeterAction"}, open && document_.meter(pages_->meterUuid()) != nullptr);
    const bool lists = pages_->currentWidget() == pages_->loadLists() && document_.loadList(pages_->loadLists()->selectedList());
    enable({"editLoadListAction", "withdrawLoadListAction", "addApplianceAction"}, lists);
    enable({"editApplianceAction", "removeApplianceAction"}, lists && pages_->loadLists()->selectedAppliance());
    enable({"exportSheetAction", "editRunFormAction", "withdrawRunAction", "enterReadingAction", "amendReadingAction", "withdrawReadingsAction",
            "withdrawnReadingsAction", "chooseMarkAction", "attachPhotoAction", "pastePhotoAction", "importLogAction", "runReportAction"},
           record != nullptr);
    enable({"reminderRuleAction"}, running);
    enable({"endCutOffSeenAction", "endFoundOffAction", "endStoppedAction"}, running);
    enable({"reopenRunAction"}, record && !running);
    for (int number = 1; number <= static_cast<int>(std::size(all_mark_kinds)); ++number)
        enable({QStringLiteral("mark%1Action").arg(number).toLatin1().constData()}, record != nullptr && !document_.isLooking());
    enable({"importTableAction", "pasteTableAction"}, true); // without a logbook they make one
    if (document_.isLooking()) enable(that_record, false);
}

} // namespace ullage
