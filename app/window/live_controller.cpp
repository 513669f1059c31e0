// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/live_controller.h"

#include "dialogs/password_form.h"
#include "dialogs/source_form.h"
#include "services/live_reader.h"
#include "services/notifier.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"
#include "window/page_stack.h"

#include <QMainWindow>

namespace ullage {

LiveController::LiveController(const Workplace& at, LiveReader& reader, Notifier* notifier) : Controller(at), reader_(reader) {
    connect(&reader_, &LiveReader::error, messages_, &MessageBar::showError);
    connect(&reader_, &LiveReader::happened, this, [this, notifier](const RunId&, const QString& sentence, bool off) {
        messages_->showNote(sentence);
        if (notifier)
            notifier->notify(off ? tr("An output went off") : tr("A meter that is read live"), sentence,
                             off && settings_.reminderSound() ? Notifier::Sound::call : Notifier::Sound::none);
    });
}

void LiveController::editSource() {
    const auto* meter = document_.meter(pages_.meterUuid());
    if (!meter) return;
    std::optional<LiveSource> present;
    const auto sources = document_.meterSources();
    if (const auto found = sources.find(meter->uuid); found != sources.end()) {
        auto source = source_from(found->second);
        if (source) present = std::move(source).value();
        else messages_->showError(text_of(source.error().sentence()));
    }
    auto* form = new SourceForm(*meter, present, window_);
    form->setAttribute(Qt::WA_DeleteOnClose); // a trial ends with its form
    connect(form, &FormDialog::submitted, this, [this, form, uuid = meter->uuid] {
        if (!form->confirmed(form->doubts())) return;
        const auto kept = document_.setMeterSource(uuid, form->source() ? source_text(*form->source()) : std::string());
        if (!kept) form->refuse(text_of(kept.error().sentence()));
        else form->accept();
    });
    form->open();
}

void LiveController::readLive(const RunId& run_uuid) {
    const auto source = reader_.sourceOf(run_uuid);
    if (!source) return;
    if (source->user.empty()) {
        tell(reader_.start(run_uuid));
        return;
    }
    auto* form = new PasswordForm(text_of(source->user), text_of(source->address), window_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &FormDialog::submitted, this, [this, form, run_uuid] {
        const auto started = reader_.start(run_uuid, form->password());
        if (started) form->accept();
        else form->refuse(text_of(started.error().sentence()));
    });
    form->open();
}

} // namespace ullage
