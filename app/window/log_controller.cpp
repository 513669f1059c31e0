// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/log_controller.h"

#include "dialogs/appliance_form.h"
#include "dialogs/log_form.h"
#include "dialogs/skipped_rows_table.h"
#include "pages/sizing/load_lists_page.h"
#include "services/log_follower.h"
#include "services/notifier.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QFileInfo>

#include <algorithm>

namespace ullage {

namespace {

QString log_files() { return LogController::tr("Logs (*.csv *.txt *.log *.tsv *.dat);;All files (*)"); }

} // namespace

LogController::LogController(const Workplace& at, LogFollower& follower, Notifier* notifier) : Controller(at), follower_(follower) {
    connect(&follower_, &LogFollower::error, messages_, &MessageBar::showError);
    connect(&follower_, &LogFollower::fellQuiet, this, [this, notifier](const RunId&, const QString& sentence) {
        messages_->showNote(sentence);
        if (notifier) notifier->notify(tr("A log is quiet"), sentence);
    });
}

void LogController::chooseLog() {
    if (!document_.run(pages_.runUuid())) return;
    const auto files = prompts_.filesToOpen(window_, tr("Import log"), startFolder(), log_files(), false);
    if (!files.isEmpty()) importLog(files.constFirst());
}

void LogController::importLog(const QString& path) {
    const RunRecord* record = document_.run(pages_.runUuid());
    if (!record) return;
    messages_->dismiss();
    auto kept = document_.traceAnswers();
    if (!kept) {
        messages_->showError(text_of(kept.error().sentence()));
        return;
    }
    settings_.setFolderOf(path);
    auto* form = new LogForm(*record, document_.meters(), path, std::move(kept).value(), window_);
    connect(form, &FormDialog::submitted, this, [this, form, run = pages_.runUuid()] { takeInLog(*form, run); });
    form->open();
}

/// Of a log that goes on where one of the run's ended only the rest is taken; else all of it.
void LogController::takeInLog(LogForm& form, const RunId& run_uuid) {
    const auto refuse = [&form](const Error& error) { form.refuseImport(text_of(error.sentence())); };
    const QString file_name = shown_path(QFileInfo(form.path()).fileName());
    const auto known = document_.traceContinuedBy(run_uuid, form.path());
    if (!known) return refuse(known.error());
    const bool longer = known.value() && known.value()->size_bytes < QFileInfo(form.path()).size();
    if (longer || (known.value() && form.follow())) {
        const bool followed_already = follower_.state(known.value()->uuid).has_value();
        const auto done = follower_.follow(*known.value(), form.path());
        if (!done) return refuse(done.error());
        if (!form.follow() && !followed_already) follower_.stop(known.value()->uuid);
        form.showTaken();
        const auto rest = document_.traceContinuedBy(run_uuid, form.path());
        const bool unfinished = !form.follow() && rest && rest.value() && rest.value()->size_bytes < QFileInfo(form.path()).size();
        messages_->showNote(form.follow() ? tr("%1 is followed from now on, from where the run's log of it ended.").arg(file_name)
                                          : tr("The run has this log already; what %1 has more was added to it, read as before.").arg(file_name) +
                                                (unfinished ? tr(" Its last line is incomplete and was skipped.") : QString()));
        return;
    }
    const auto imported = document_.importTrace(run_uuid, form.meterUuid(), form.path(), form.detection(), form.options());
    if (!imported) return refuse(imported.error());
    QString words = tr("%1: %2.").arg(file_name, tally_words(imported.value().tally));
    if (form.follow()) {
        const auto followed = follower_.follow(imported.value().trace, form.path());
        words += QLatin1Char(' ') + (followed ? tr("It is followed from now on.") : text_of(followed.error().sentence()));
    }
    form.showImported(imported.value().tally);
    messages_->showNote(words);
}

void LogController::followLog(const TraceId& trace_uuid) {
    const auto traces = document_.traces(pages_.runUuid());
    if (!traces) return;
    const auto trace = std::ranges::find(traces.value(), trace_uuid, &Trace::uuid);
    if (trace == traces.value().end()) return;
    const auto files = prompts_.filesToOpen(window_, tr("The file of the log %1").arg(text_of(trace->file_name)), startFolder(), log_files(), false);
    if (files.isEmpty()) return;
    settings_.setFolderOf(files.constFirst());
    const auto done = follower_.follow(*trace, files.constFirst());
    if (!done) messages_->showError(text_of(done.error().sentence()));
    else messages_->showNote(tr("%1 is followed from now on.").arg(shown_path(QFileInfo(files.constFirst()).fileName())));
}

void LogController::addLogAppliance(const RunId& run_uuid) {
    const auto load = document_.load(run_uuid);
    if (!load || !load.value()) return;
    const auto* list = document_.loadList(pages_.loadLists()->selectedList());
    if (!list) {
        messages_->showError(tr("There is no load list for it yet: add one first (Edit, Load lists)."));
        return;
    }
    Appliance appliance;
    appliance.measured = MeasuredUse{load.value()->energy_wh, load.value()->covered_h};
    if (load.value()->cycle) {
        appliance.power_w = load.value()->cycle->on_w;
        appliance.duty = load.value()->cycle->duty;
    }
    if (load.value()->peak_w > appliance.power_w.value_or(load.value()->mean_w)) appliance.start_peak_w = load.value()->peak_w;
    auto* form = new ApplianceForm(appliance, list->name, window_);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list] {
        LoadList with_one_more = before;
        with_one_more.appliances.push_back(form->appliance());
        const auto done = document_.updateLoadList(with_one_more);
        if (!done) {
            form->refuse(text_of(done.error().sentence()));
            return;
        }
        form->accept();
        pages_.showLoadList(before.uuid);
    });
    form->open();
}

} // namespace ullage
