// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/bench_controller.h"

#include "dialogs/reminder_form.h"
#include "pages/parts/run_head.h"
#include "services/awake.h"
#include "services/notifier.h"
#include "services/reminders.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QMainWindow>
#include <QStringList>

#include <optional>

namespace ullage {

namespace {

constexpr int look_every_ms = 5000;

} // namespace

BenchController::BenchController(const Workplace& at, Reminders& reminders, const Desktop& desktop)
    : Controller(at), reminders_(reminders), notifier_(desktop.notifier), awake_(std::make_unique<Awake>(desktop.inhibitor)) {
    connect(&reminders_, &Reminders::looked, this, &BenchController::look);
    if (notifier_) {
        notifier_->setClicked([this] {
            window_->setWindowState(window_->windowState() & ~Qt::WindowMinimized);
            window_->raise();
            window_->activateWindow();
            enterDueReading();
        });
    }
    connect(&timer_, &QTimer::timeout, &reminders_, &Reminders::tick);
    timer_.start(look_every_ms);
}

BenchController::~BenchController() {
    if (notifier_) notifier_->setClicked({});
}

void BenchController::look() {
    QSet<QString> overdue;
    for (const auto* record : reminders_.openRuns())
        if (reminders_.state(record->run.uuid).overdue()) overdue << raw_text(record->run.uuid);
    awake_->setWanted(!reminders_.openRuns().empty());
    emit looked(overdue, awake_->words());
}

void BenchController::editRule(const std::string& run_uuid) {
    const auto* record = document_.run(run_uuid);
    if (!record) return;
    const auto title = QStringLiteral("%1, %2").arg(text_of(record->unit.name), run_about(*record));
    auto* form = new ReminderForm(title, reminders_.rule(run_uuid), window_);
    connect(form, &FormDialog::submitted, this, [this, form, run_uuid] {
        reminders_.setRule(run_uuid, form->rule());
        form->accept();
    });
    form->open();
}

void BenchController::snooze(int minutes) {
    // The run that calls; else the one in sight.
    const auto* calling = reminders_.mostOverdue();
    const auto* record = calling ? calling : document_.run(pages_.runUuid());
    if (!record || reminders_.snooze(record->run.uuid, minutes)) return;
    const QString unit = text_of(record->unit.name);
    const auto at_ms = reminders_.state(record->run.uuid).at_ms;
    const auto minutes_left = at_ms ? (*at_ms - document_.clock().now_ms() + 59'999) / 60'000 : 0;
    messages_->showNote(at_ms ? tr("Nothing to put off: the next reading of %1 is due only in %2 minutes.").arg(unit, QString::number(minutes_left))
                              : tr("Nothing to put off: no reading of %1 is due.").arg(unit));
}

void BenchController::enterDueReading() {
    const RunRecord* next = reminders_.mostOverdue();
    std::optional<UtcMs> next_ms;
    if (next == nullptr)
        for (const auto* record : reminders_.openRuns()) {
            const auto at_ms = reminders_.state(record->run.uuid).at_ms;
            if (!at_ms || (next_ms && *next_ms <= *at_ms)) continue;
            next_ms = at_ms;
            next = record;
        }
    if (next) pages_.enterReading(next->run.uuid);
}

} // namespace ullage
