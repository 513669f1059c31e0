// SPDX-License-Identifier: GPL-3.0-or-later
// Logs of meters: import into a run, and a run's load as an appliance.
#include "pages/main_window.h"

#include "dialogs/appliance_form.h"
#include "dialogs/log_form.h"
#include "dialogs/odd_rows_table.h"
#include "pages/load_lists_page.h"
#include "pages/message_bar.h"
#include "services/prompts.h"
#include "services/settings.h"

#include <QFileInfo>

namespace ullage {

void MainWindow::import_log() {
    if (!document_.run(run_uuid_)) return;
    const auto files = prompts_.filesToOpen(this, tr("Import log of a meter"), start_folder(),
                                            tr("Logs (*.csv *.txt *.log *.tsv *.dat);;All files (*)"), false);
    if (!files.isEmpty()) importLog(files.constFirst());
}

void MainWindow::importLog(const QString& path) {
    const RunRecord* record = document_.run(run_uuid_);
    if (!record) return;
    messages_->dismiss();
    auto kept = document_.traceAnswers();
    if (!kept) {
        messages_->showError(QString::fromStdString(kept.error().sentence()));
        return;
    }
    settings_.setFolderOf(path);
    auto* form = new LogForm(*record, document_.meters(), path, std::move(kept).value(), this);
    connect(form, &FormDialog::submitted, this, [this, form, run = run_uuid_] {
        const auto options = form->options();
        const auto imported = document_.importTrace(run, form->meterUuid(), form->path(), form->detection(), options);
        if (!imported) {
            form->refuseImport(QString::fromStdString(imported.error().sentence()));
            return;
        }
        form->showImported(imported.value().tally);
        messages_->showNote(tr("%1: %2.").arg(QFileInfo(form->path()).fileName(), tally_words(imported.value().tally)));
    });
    form->open();
}

void MainWindow::add_log_appliance(const std::string& run_uuid) {
    const auto load = document_.load(run_uuid);
    if (!load || !load.value()) return;
    const auto* list = document_.loadList(load_lists_page_->selectedList());
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
    auto* form = new ApplianceForm(appliance, list->name, this);
    connect(form, &FormDialog::submitted, this, [this, form, before = *list] {
        LoadList with_one_more = before;
        with_one_more.appliances.push_back(form->appliance());
        const auto done = document_.updateLoadList(with_one_more);
        if (!done) {
            form->refuse(QString::fromStdString(done.error().sentence()));
            return;
        }
        form->accept();
        showLoadList(before.uuid);
    });
    form->open();
}

} // namespace ullage
