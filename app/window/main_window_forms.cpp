// SPDX-License-Identifier: GPL-3.0-or-later
// Forms: opened beside the event loop, so nothing waits for them; a refusal of the store is shown in the form.
#include "window/main_window.h"

#include "dialogs/meter_form.h"
#include "dialogs/run_form.h"
#include "dialogs/start_form.h"
#include "dialogs/unit_form.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "services/reminders.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/run_defaults.h"

#include <QStackedWidget>

namespace ullage {

namespace {

/// Closes the form after a success, else shows the store's words in it; true after a success.
template <class T>
bool settle(FormDialog& form, const Result<T>& outcome) {
    if (!outcome) {
        form.refuse(text_of(outcome.error().sentence()));
        return false;
    }
    form.accept();
    return true;
}

} // namespace

void MainWindow::addUnit() {
    if (!document_.isOpen()) return;
    auto* form = new UnitForm(Unit{}, this);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addUnit(form->unit());
        if (settle(*form, added)) showUnit(added.value().uuid);
    });
    form->open();
}

void MainWindow::editUnit() { editClaims(currentUnit()); }

void MainWindow::editClaims(const std::string& unit_uuid) {
    const auto* unit = document_.unit(unit_uuid);
    if (!unit) return;
    auto* form = new UnitForm(*unit, this);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateUnit(form->unit())); });
    form->open();
}

void MainWindow::showPvInput() {
    if (!document_.isOpen()) return;
    pv_page_->refresh();
    pages_->setCurrentWidget(pv_page_);
    selectInTree();
    rememberPage();
}

void MainWindow::addPvSheet() {
    if (!document_.isOpen()) return;
    showPvInput();
    pv_page_->addSheet();
}

void MainWindow::withdrawPvSheet() { pv_page_->withdrawSheet(); }

void MainWindow::addMeter() {
    if (!document_.isOpen()) return;
    auto* form = new MeterForm(Meter{}, this);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addMeter(form->meter());
        if (settle(*form, added)) showMeter(added.value().uuid);
    });
    form->open();
}

void MainWindow::editMeter() {
    const auto* meter = document_.meter(meter_uuid_);
    if (!meter) return;
    auto* form = new MeterForm(*meter, this);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateMeter(form->meter())); });
    form->open();
}

void MainWindow::startRun() {
    if (document_.units().empty()) {
        messages_->showError(tr("A run needs a unit: choose Edit, Add unit first."));
        return;
    }
    auto defaults = run_defaults(settings_, document_);
    defaults.unit_uuid = currentUnit().empty() ? document_.units().front().uuid : currentUnit();
    // The next run of a unit is most often noted with the meter of its last one.
    const auto earlier = document_.runs(defaults.unit_uuid);
    if (!earlier.empty()) defaults.meter_uuid = earlier.back()->run.meter_uuid;
    auto* form = new StartForm(defaults, document_.units(), document_.meters(), document_.clock(), this);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto& start = form->start();
        const auto added = document_.startRun(start.run, start.first, start.gauge_step_percent);
        if (!settle(*form, added)) return;
        keep_run_defaults(settings_, start);
        reminders_->setRule(added.value().uuid, start.rule);
        showRun(added.value().uuid);
        run_page_->focusEntry();
    });
    form->open();
}

void MainWindow::editRun() {
    const auto* record = document_.run(run_uuid_);
    if (!record) return;
    auto* form = new RunForm(record->run, document_.units(), document_.meters(), this);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateRun(form->run())); });
    form->open();
}

} // namespace ullage
