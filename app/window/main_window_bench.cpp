// SPDX-License-Identifier: GPL-3.0-or-later
// Running tests, reminders, staying awake, and where the program stood when it last ended.
#include "window/main_window.h"

#include "base/number.h"
#include "dialogs/reminder_form.h"
#include "models/logbook_tree_model.h"
#include "pages/bench/bench_page.h"
#include "pages/comparison/comparison_page.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/run_head.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "pages/sizing/load_lists_page.h"
#include "pages/sizing/sizing_page.h"
#include "pages/unit/unit_page.h"
#include "services/awake.h"
#include "services/notifier.h"
#include "services/reminders.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/reminder_bar.h"
#include "window/welcome_page.h"

#include <QAction>
#include <QLabel>
#include <QStackedWidget>
#include <QStringList>
#include <QTimer>

#include <algorithm>
#include <optional>

namespace ullage {

namespace {

constexpr int look_every_ms = 5000;
const QString page_name = QStringLiteral("page");

} // namespace

void MainWindow::watchBench() {
    connect(reminders_, &Reminders::looked, this, &MainWindow::lookAtBench);
    connect(reminder_bar_, &ReminderBar::readingAsked, this, [this](const QString& run) { enterReading(utf8_of(run)); });
    if (notifier_) {
        notifier_->setClicked([this] {
            setWindowState(windowState() & ~Qt::WindowMinimized);
            raise();
            activateWindow();
            enterDueReading();
        });
    }
    connect(bench_timer_, &QTimer::timeout, reminders_, &Reminders::tick);
    bench_timer_->start(look_every_ms);
    lookAtBench();
}

void MainWindow::lookAtBench() {
    QSet<QString> overdue;
    for (const auto* record : reminders_->openRuns())
        if (reminders_->state(record->run.uuid).overdue()) overdue << raw_text(record->run.uuid);
    tree_model_->setOverdue(overdue);
    awake_->setWanted(!reminders_->openRuns().empty());
    awake_label_->setText(awake_->words());
    awake_label_->setVisible(!awake_->words().isEmpty());
    nameRunningTests();
}

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
        if (gauge_percent) parts << tr("gauge %1 %").arg(raw_text(exact_text(*gauge_percent)));
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

void MainWindow::showBench() {
    if (!document_.isOpen()) return;
    pages_->setCurrentWidget(bench_page_);
    selectInTree();
    rememberPage();
}

void MainWindow::enterReading(const std::string& run_uuid) {
    if (!document_.run(run_uuid)) return;
    showRun(run_uuid);
    run_page_->focusEntry();
}

void MainWindow::editRule(const std::string& run_uuid) {
    const auto* record = document_.run(run_uuid);
    if (!record) return;
    const auto title = QStringLiteral("%1, %2").arg(text_of(record->unit.name), run_about(*record));
    auto* form = new ReminderForm(title, reminders_->rule(run_uuid), this);
    connect(form, &FormDialog::submitted, this, [this, form, run_uuid] {
        reminders_->setRule(run_uuid, form->rule());
        form->accept();
    });
    form->open();
}

void MainWindow::snooze(int minutes) {
    // The run that calls; else the one in sight.
    const auto* calling = reminders_->mostOverdue();
    const auto* record = calling ? calling : document_.run(run_uuid_);
    if (!record || reminders_->snooze(record->run.uuid, minutes)) return;
    const QString unit = text_of(record->unit.name);
    const auto at_ms = reminders_->state(record->run.uuid).at_ms;
    const auto minutes_left = at_ms ? (*at_ms - document_.clock().now_ms() + 59'999) / 60'000 : 0;
    messages_->showNote(at_ms ? tr("Nothing to put off: the next reading of %1 is due only in %2 minutes.").arg(unit, QString::number(minutes_left))
                              : tr("Nothing to put off: no reading of %1 is due.").arg(unit));
}

void MainWindow::enterDueReading() {
    const RunRecord* next = reminders_->mostOverdue();
    std::optional<UtcMs> next_ms;
    if (next == nullptr)
        for (const auto* record : reminders_->openRuns()) {
            const auto at_ms = reminders_->state(record->run.uuid).at_ms;
            if (!at_ms || (next_ms && *next_ms <= *at_ms)) continue;
            next_ms = at_ms;
            next = record;
        }
    if (next) enterReading(next->run.uuid);
}

void MainWindow::rememberPage() {
    if (!document_.isOpen()) return;
    const PageEntry* page = currentPage();
    if (!page) return; // what stands there while a logbook is being opened was not chosen
    settings_.remember(page_name, QStringList{document_.path(), page->name, raw_text(page->uuid())}.join(QLatin1Char('\n')));
}

bool MainWindow::showRememberedPage() {
    const auto parts = settings_.remembered(page_name).split(QLatin1Char('\n'));
    if (parts.size() != 3 || parts[0] != document_.path()) return false;
    const auto uuid = utf8_of(parts[2]);
    const auto entry = std::ranges::find(page_table_, parts[1], &PageEntry::name);
    if (entry == page_table_.end() || !entry->is_there(uuid)) return false;
    entry->show(uuid);
    return true;
}

} // namespace ullage
