// SPDX-License-Identifier: GPL-3.0-or-later
// Commands that need no form. Each can be undone, so none asks for confirmation.
#include "window/main_window.h"

#include "pages/comparison/comparison_page.h"
#include "pages/run/readings_export.h"
#include "pages/run/run_page.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QStackedWidget>

namespace ullage {

void MainWindow::tell(const Result<void>& outcome) {
    messages_->dismiss();
    if (!outcome) messages_->showError(text_of(outcome.error().sentence()));
}

void MainWindow::withdrawUnit() {
    const auto* unit = document_.unit(currentUnit());
    if (!unit) return;
    const auto name = text_of(unit->name);
    const auto done = document_.withdrawUnit(unit->uuid);
    tell(done);
    if (done) messages_->showNote(tr("%1 and its runs are withdrawn; Edit, Undo brings them back.").arg(name));
}

void MainWindow::withdrawRun() {
    if (!document_.run(run_uuid_)) return;
    const auto done = document_.withdrawRun(run_uuid_);
    tell(done);
    if (done) messages_->showNote(tr("The run is withdrawn; Edit, Undo brings it back."));
}

void MainWindow::withdrawMeter() {
    if (document_.meter(meter_uuid_)) tell(document_.withdrawMeter(meter_uuid_));
}

void MainWindow::endRun(RunEnd end) {
    const auto* record = document_.run(run_uuid_);
    if (!record) return;
    auto run = record->run;
    run.end = end;
    tell(document_.updateRun(run));
}

void MainWindow::reopenRun() { endRun(RunEnd::still_running); }

void MainWindow::exportComparison() {
    showComparison();
    comparison_page_->exportComparison();
}

void MainWindow::copyComparison() {
    showComparison();
    comparison_page_->copyTable();
}

void MainWindow::exportReadings() {
    const bool run_shown = pages_->currentWidget() == run_page_;
    auto* dialog = new ExportDialog(readings_subjects(document_, run_shown ? run_uuid_ : std::string()), prompts_, this);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->open();
}

} // namespace ullage
