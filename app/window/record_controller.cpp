// SPDX-License-Identifier: GPL-3.0-or-later
// Forms are opened beside the event loop, so nothing waits for them; a refusal of the store is shown in the form. What needs no form can be undone,
// so it asks for no confirmation.
#include "window/record_controller.h"

#include "dialogs/end_form.h"
#include "dialogs/ended_words.h"
#include "dialogs/meter_form.h"
#include "dialogs/method_form.h"
#include "dialogs/run_form.h"
#include "dialogs/start_form.h"
#include "dialogs/unit_form.h"
#include "forecast/end_doubts.h"
#include "measure/entry_doubts.h"
#include "pages/meters/meters_page.h"
#include "pages/pv/pv_page.h"
#include "pages/run/run_page.h"
#include "services/reminders.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"
#include "window/run_defaults.h"

#include <QMainWindow>
#include <QTimer>

#include <algorithm>

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

void RecordController::editClaims(const UnitId& unit_uuid) {
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
        if (!settle(*form, added)) return;
        pages_.showMeter(added.value().uuid);
        pages_.meters()->focusTable();
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
    document_.prepareAnswers();
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
    auto* form = new StartForm(defaults, document_.units(), document_.meters(), document_.clock(), window_);
    connect(form, &FormDialog::submitted, this, [this, form] {
        const auto& start = form->start();
        if (!form->confirmed(startDoubts(start.run))) return;
        const auto added = document_.startRun(start.run, start.first, start.gauge_step_percent);
        if (!settle(*form, added)) return;
        keep_run_defaults(settings_, start);
        reminders_.setRule(added.value().uuid, start.rule);
        pages_.enterReading(added.value().uuid);
        // Again once the form is gone: where no window manager does it, the keyboard does not come back by itself.
        QTimer::singleShot(0, this, [this, run_uuid = added.value().uuid] {
            if (pages_.runUuid() != run_uuid) return;
            window_->activateWindow();
            pages_.enterReading(run_uuid);
        });
    });
    form->open();
}

QStringList RecordController::startDoubts(const Run& run) const {
    QStringList doubts;
    for (const auto* record : document_.runs()) {
        if (record->run.end != RunEnd::still_running) continue;
        const QString name = text_of(record->unit.name);
        if (record->run.unit_uuid == run.unit_uuid) {
            doubts << tr("a %1 of %2 is still running").arg(text_of(say_run_kind(record->run.kind)), name);
            continue;
        }
        for (const auto& meter_uuid : {run.meter_uuid, run.second_meter_uuid}) {
            const Meter* meter = meter_uuid ? document_.meter(*meter_uuid) : nullptr;
            if (meter && (record->run.meter_uuid == meter_uuid || record->run.second_meter_uuid == meter_uuid))
                doubts << tr("%1 is in the running test of %2").arg(text_of(meter->name), name);
        }
    }
    return doubts;
}

void RecordController::editRun() {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    auto* form = new RunForm(record->run, document_.units(), document_.meters(), window_);
    connect(form, &FormDialog::submitted, this, [this, form] { settle(*form, document_.updateRun(form->run())); });
    form->open();
}

void RecordController::endRun(std::optional<RunEnd> end) {
    const auto* record = document_.run(pages_.runUuid());
    if (!record || record->run.end != RunEnd::still_running) return;
    const RunId run_uuid = record->run.uuid;
    pages_.run()->keepDraft();
    auto* form = new EndForm(
        *record, end, EntryTexts::fromDraft(pages_.run()->draft()), document_.clock(),
        [this, run_uuid](const RunEnding& ending) {
            const RunRecord ended = asEnded(run_uuid, ending.run, ending.last);
            return ended_words(ended, analyse_run(ended, document_.casebook().options()));
        },
        window_);
    connect(form, &FormDialog::submitted, this, [this, form] { finishRun(*form); });
    form->open();
}

RunRecord RecordController::asEnded(const RunId& run_uuid, const Run& run, const std::optional<ReadingValues>& last) const {
    RunRecord ended = *document_.run(run_uuid);
    ended.run = run;
    if (!last) return ended;
    Reading reading;
    for (const Reading& each : ended.readings) reading.sequence = std::max(reading.sequence, each.sequence + 1);
    reading.values = *last;
    put_reading(ended.readings, reading);
    return ended;
}

void RecordController::finishRun(EndForm& form) {
    const RunEnding& ending = form.ending();
    const RunRecord* record = document_.run(ending.run.uuid);
    if (!record) return form.refuse(tr("This run is no longer in the open logbook."));
    QStringList doubts;
    const MeasureOptions options = document_.casebook().options();
    if (ending.last)
        for (const Doubt& doubt : entry_doubts(*record, *ending.last, document_.clock().now_ms(), options)) doubts << text_of(doubt.sentence);
    for (const Message& doubt : end_doubts(asEnded(ending.run.uuid, ending.run, ending.last), document_.unitFit(record->unit.uuid), options))
        doubts << text_of(doubt);
    if (!form.confirmed(doubts)) return;
    const auto photos = ending.last ? pages_.run()->waitingPhotos() : std::vector<PhotoId>();
    const bool row_taken = ending.row_taken;
    const QString how = text_of(say_run_end(ending.run.end));
    if (!settle(form, document_.endRun(ending.run, ending.last, photos))) return;
    if (row_taken) pages_.run()->clearEntry();
    messages_->dismiss();
    messages_->showNote(tr("The run is ended: %1; Edit, Undo lets it go on.").arg(how));
}

void RecordController::reopenRun() {
    const auto* record = document_.run(pages_.runUuid());
    if (!record) return;
    auto run = record->run;
    run.end = RunEnd::still_running;
    tell(document_.updateRun(run));
}

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
