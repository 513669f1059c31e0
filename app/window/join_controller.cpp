// SPDX-License-Identifier: GPL-3.0-or-later
#include "window/join_controller.h"

#include "dialogs/join_form.h"
#include "services/background_work.h"
#include "services/prompts.h"
#include "services/settings.h"
#include "style/words.h"
#include "window/message_bar.h"

#include <QFileInfo>
#include <QMainWindow>

#include <memory>

namespace ullage {

void JoinController::chooseLogbook() {
    const auto files = prompts_.filesToOpen(window_, tr("Join another logbook"), startFolder(),
                                            tr("Logbooks and their copies (*.ullage *.ullage-copy);;All files (*)"), false);
    if (files.isEmpty()) return;
    messages_->dismiss();
    settings_.setFolderOf(files.constFirst());
    join(files.constFirst());
}

void JoinController::join(const QString& path) {
    const QString name = shown_path(QFileInfo(path).fileName());
    bool cancelled = false;
    const auto proposed = document_.proposeJoin(path, [&](const auto& work) {
        work_beside(window_, tr("Comparing with %1").arg(name), [&](WorkProgress& progress) {
            work(&progress.cancelling());
            cancelled = progress.cancelled();
        });
    });
    if (cancelled) return messages_->showNote(tr("Nothing was joined."));
    if (!proposed) return tell(proposed.error());
    const auto proposal = std::make_shared<const Document::JoinProposal>(proposed.value());
    if (proposal->plan.empty()) return messages_->showNote(tr("This logbook has all that %1 has already; nothing was changed.").arg(name));
    auto* form = new JoinForm(proposal->plan, name, window_);
    form->setAttribute(Qt::WA_DeleteOnClose);
    connect(form, &FormDialog::submitted, this, [this, form, proposal] {
        const auto joined = joinBeside(*proposal, form->taken());
        if (!joined) return form->refuse(text_of(joined.error().sentence()));
        form->accept();
        messages_->showNote(tr("Joined: %1.").arg(text_of(say_outcome(joined.value()))));
    });
    form->open();
}

Result<Joined> JoinController::joinBeside(const Document::JoinProposal& proposal, const std::set<std::string>& taken) {
    WorkProgress* showing = nullptr;
    return document_.join(
        *proposal.other, taken,
        [&](const std::function<void()>& work) {
            work_beside(window_, tr("Joining"), [&](WorkProgress& progress) {
                showing = &progress;
                work();
            });
        },
        [&](double share) {
            constexpr double parts = 1000;
            showing->at(static_cast<std::int64_t>(share * parts), static_cast<std::int64_t>(parts));
            return !showing->cancelled();
        });
}

} // namespace ullage
