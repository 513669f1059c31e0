// SPDX-License-Identifier: GPL-3.0-or-later
// Forms are opened beside the event loop, so nothing waits for them; a refusal of the store is shown in the form. What needs no form can be undone,
// so it asks for no confirmation.
#include "window/record_controller.h"

#include "dialogs/meter_form.h"
#include "dialogs/method_form.h"
#include "dialogs/run_form.h"
#include "dialogs/start_form.h"
#include "dialogs/unit_form.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "services/reminders.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/run_defaults.h"

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

void RecordController::addUnit() {
    if (!document_.isOpen()) return;
    auto* form = new UnitForm(Unit{}, window_);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addUnit(form->unit());
        if (settle(*form, added)) pages_.showUnit(added.value().uuid);
    });
    form->open();
}

void RecordController::editUnit() { editClaims(pages_.currentUnit()); }

void RecordController::editClaims(const std::string& unit_uuid) {
    const auto* unit = document_.unit(unit_uuid);
    if (!unit) return;
    auto* form = new UnitForm(*unit, window_);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateUnit(form->unit())); });
    form->open();
}

void RecordController::withdrawUnit() {
    const auto* unit = document_.unit(pages_.currentUnit());
    if (!unit) return;
    const auto name = text_of(unit->name);
    const auto done = document_.withdrawUnit(unit->uuid);
    tell(done);
    if (done) messages_->showNote(tr("%1 and its runs are withdrawn; Edit, Undo brings them back.").arg(name));
}

void RecordController::addMeter() {
    if (!document_.isOpen()) return;
    auto* form = new MeterForm(Meter{}, window_);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto added = document_.addMeter(form->meter());
        if (settle(*form, added)) pages_.showMeter(added.value().uuid);
    });
    form->open();
}

void RecordController::editMeter() {
    const auto* meter = document_.meter(pages_.meterUuid());
    if (!meter) return;
    auto* form = new MeterForm(*meter, window_);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateMeter(form->meter(), form->reason())); });
    form->open();
}

void RecordController::editMethod() {
    auto* form = new MethodForm(document_.method(), document_.casebook().options(), window_);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.setMethod(form->stated())); });
    form->open();
}

void RecordController::withdrawMeter() {
    if (document_.meter(pages_.meterUuid())) tell(document_.withdrawMeter(pages_.meterUuid()));
}

void RecordController::startRun() {
    if (document_.units().empty()) {
        messages_->showError(tr("A run needs a unit: choose Edit, Add unit first."));
        return;
    }
    auto defaults = run_defaults(settings_, document_);
    defaults.unit_uuid = pages_.currentUnit().empty() ? document_.units().front().uuid : pages_.currentUnit();
    // The next run of a unit is most often noted with the meter of its last one.
    const auto earlier = document_.runs(defaults.unit_uuid);
    if (!earlier.empty()) defaults.meter_uuid = earlier.back()->run.meter_uuid;
    auto* form = new StartForm(defaults, document_.units(), document_.meters(), document_.clock(), window_);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto& start = form->start();
        const auto added = document_.startRun(start.run, start.first, start.gauge_step_percent);
        if (!settle(*form, added)) return;
        keep_run_defaults(settings_, start);
        reminders_.setRule(added.value().uuid, start.rule);
        pages_.showRun(added.value().uuid);
        pages_.run()->focusEntry();
    });
    form->open();
}

void RecordController::editRun() {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    auto* form = new RunForm(record->run, document_.units(), document_.meters(), window_);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateRun(form->run())); });
    form->open();
}

void RecordController::endRun(RunEnd end) {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    auto run = record->run;
    run.end = end;
    tell(document_.updateRun(run));
}

void RecordController::reopenRun() { endRun(RunEnd::still_running); }

void RecordController::withdrawRun() {
    if (!document_.run(pages_.runUuid())) return;
    const auto done = document_.withdrawRun(pages_.runUuid());
    tell(done);
    if (done) messages_->showNote(tr("The run is withdrawn; Edit, Undo brings it back."));
}

void RecordController::addPvSheet() {
    if (!document_.isOpen()) return;
    pages_.showPvInput();
    pages_.pv()->addSheet();
}

void RecordController::withdrawPvSheet() { pages_.pv()->withdrawSheet(); }

} // namespace ullage
