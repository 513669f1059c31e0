// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/bench_controller.h"

#include "dialogs/leave_form.h"
#include "dialogs/reminder_form.h"
#include "pages/bench/bench_display.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/run_head.h"
#include "pages/run/run_page.h"
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
            QWidget* top = display_ && display_->isVisible() ? static_cast<QWidget*>(display_) : window_;
            top->setWindowState(top->windowState() & ~Qt::WindowMinimized);
            top->raise();
            top->activateWindow();
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
    std::set<RunId> overdue;
    for (const auto* record : reminders_.openRuns())
        if (reminders_.state(record->run.uuid).overdue()) overdue.insert(record->run.uuid);
    awake_->setWanted(!reminders_.openRuns().empty());
    emit looked(overdue, awake_->words());
}

void BenchController::editRule(const RunId& run_uuid) {
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
    messages_->showNote(at_ms ? tr("Nothing to snooze: the next reading of %1 is due only in %2 minutes.").arg(unit, QString::number(minutes_left))
                              : tr("Nothing to snooze: no reading of %1 is due.").arg(unit));
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
    if (!next) return;
    if (display_ && display_->isVisible()) display_->enterReading(next->run.uuid);
    else pages_.enterReading(next->run.uuid);
}

bool BenchController::askBeforeLeaving(int logs_followed, const std::function<void()>& leave) {
    QStringList tests;
    for (const auto* record : reminders_.openRuns()) {
        const auto state = reminders_.state(record->run.uuid);
        const auto due = due_words(state, document_.clock().now_ms());
        tests << QStringLiteral("%1, %2: %3")
                     .arg(text_of(record->unit.name), text_of(say_run_kind(record->run.kind)),
                          state.at_ms   ? tr("next reading %1").arg(due)
                          : state.asked ? due
                                        : tr("no reminder"));
    }
    if (tests.isEmpty()) return false;
    auto* form = new LeaveForm(tests, logs_followed, awake_->state() == Awake::State::held, window_);
    connect(form, &FormDialog::submitted, this, [form, leave] {
        form->accept();
        leave();
    });
    form->open();
    return true;
}

void BenchController::showDisplay() {
    if (!document_.isOpen()) return;
    if (!display_) {
        display_ = new BenchDisplay(document_, reminders_, settings_, window_);
        connect(display_, &BenchDisplay::left, window_, &QWidget::activateWindow);
        connect(display_, &BenchDisplay::draftChanged, this, [this](const RunId& run) {
            if (pages_.run().isMade()) pages_.run()->takeDraft(run);
        });
    }
    if (pages_.run().isMade()) pages_.run()->keepDraft();
    display_->open(*window_);
}

} // namespace ullage
