// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/live_controller.h"

#include "dialogs/password_form.h"
#include "dialogs/source_form.h"
#include "services/live_reader.h"
#include "services/notifier.h"
#include "services/secret_store.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QMainWindow>
#include <QPointer>

#include <algorithm>
#include <map>
#include <utility>

namespace ullage {

LiveController::LiveController(const Workplace& at, LiveReader& reader, const Desktop& desktop)
    : Controller(at), reader_(reader), secrets_(desktop.secrets) {
    for (const RunId& run : reader_.waitingRuns()) resume(run);
    connect(&reader_, &LiveReader::waits, this, [this](const RunId& run) { resume(run); });
    connect(&reader_, &LiveReader::error, messages_, &MessageBar::showError);
    connect(&reader_, &LiveReader::happened, this, [this, notifier = desktop.notifier](const RunId&, const QString& sentence, bool off) {
        messages_->showNote(sentence);
        if (notifier)
            notifier->notify(off ? tr("An output went off") : tr("A meter that is read live"), sentence,
                             off && settings_.reminderSound() ? Notifier::Sound::call : Notifier::Sound::none);
    });
}

std::optional<LiveSource> LiveController::sourceOfMeter(const MeterId& meter_uuid) const {
    const auto sources = document_.meterSources();
    const auto found = sources.find(meter_uuid);
    if (found == sources.end()) return std::nullopt;
    auto source = source_from(found->second);
    if (!source) messages_->showError(text_of(source.error().sentence()));
    return source ? std::optional(std::move(source).value()) : std::nullopt;
}

void LiveController::editSource() {
    const auto* meter = document_.meter(pages_.meterUuid());
    if (!meter) return;
    const std::optional<LiveSource> present = sourceOfMeter(meter->uuid);
    auto* form = new SourceForm(*meter, present, window_);
    form->setAttribute(Qt::WA_DeleteOnClose); // a trial ends with its form
    connect(form, &FormDialog::submitted, this, [this, form, present, uuid = meter->uuid] {
        if (!form->confirmed(form->doubts())) return;
        const auto kept = document_.setMeterSource(uuid, form->source() ? source_text(*form->source()) : std::string());
        if (!kept) return form->refuse(text_of(kept.error().sentence()));
        if (present) forget(*present);
        form->accept();
    });
    connect(form, &SourceForm::forgetAsked, this, [this, form, present] {
        if (present) forget(*present, form);
    });
    if (secrets_ && present && !present->user.empty())
        secrets_->find(secret_key(*present), [shown = QPointer(form)](const Result<std::optional<QString>>& found) {
            if (shown && found && found.value()) shown->setKeptPassword(*found.value());
        });
    form->open();
}

void LiveController::forget(const LiveSource& source, SourceForm* form) {
    if (!secrets_ || source.user.empty()) return;
    const QString key = secret_key(source);
    // Whoever presses the button means it for all meters that are read with it.
    const auto sources = form ? std::map<MeterId, std::string>() : document_.meterSources();
    const bool still_used = std::ranges::any_of(sources, [&key](const auto& kept) {
        const auto other = source_from(kept.second);
        return other && secret_key(other.value()) == key;
    });
    if (still_used) return;
    secrets_->forget(key, [here = QPointer(this), shown = QPointer(form)](const Result<void>& done) {
        if (done && shown) shown->passwordForgotten();
        // A desktop without a store has kept nothing.
        if (!done && shown && here) shown->refuse(text_of(done.error().sentence()));
    });
}

void LiveController::readLive(const RunId& run_uuid) {
    const auto source = reader_.sourceOf(run_uuid);
    if (!source) return;
    if (source->user.empty()) return start(run_uuid, {});
    if (!secrets_) return askPassword(run_uuid, *source, tr("there is no desktop that could keep it"));
    secrets_->find(secret_key(*source), [here = QPointer(this), run_uuid, source](const Result<std::optional<QString>>& found) {
        if (!here) return;
        if (!found) here->askPassword(run_uuid, *source, text_of(found.error().what));
        else if (found.value()) here->start(run_uuid, *found.value());
        else here->askPassword(run_uuid, *source, {});
    });
}

void LiveController::resume(const RunId& run_uuid) {
    const auto source = reader_.sourceOf(run_uuid);
    if (!source || !secrets_) return;
    secrets_->find(secret_key(*source), [here = QPointer(this), run_uuid](const Result<std::optional<QString>>& found) {
        if (here && found && found.value() && here->reader_.waitsForPassword(run_uuid)) here->start(run_uuid, *found.value());
    });
}

void LiveController::start(const RunId& run_uuid, const QString& password) { tell(reader_.start(run_uuid, password)); }

void LiveController::askPassword(const RunId& run_uuid, const LiveSource& source, const QString& no_store) {
    auto* form = new PasswordForm(text_of(source.user), text_of(source.address), no_store, window_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &FormDialog::submitted, this, [this, form, run_uuid, key = secret_key(source)] {
        const auto started = reader_.start(run_uuid, form->password());
        if (!started) return form->refuse(text_of(started.error().sentence()));
        if (secrets_ && form->keeps())
            secrets_->keep(key, form->password(), [here = QPointer(this)](const Result<void>& kept) {
                if (here && !kept)
                    here->messages_->showError(tr("The meter is read, but its password was not kept: %1").arg(text_of(kept.error().sentence())));
            });
        form->accept();
    });
    form->open();
}

} // namespace ullage
