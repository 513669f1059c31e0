// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/store_command.h"

#include <utility>

namespace ullage {

StoreCommand::StoreCommand(CommandHost& host, const QString& text, Change change, Step apply, Step revert)
    : QUndoCommand(text), host_(host), change_(std::move(change)), apply_(std::move(apply)), revert_(std::move(revert)) {}

void StoreCommand::redo() { take(apply_, true); }

void StoreCommand::undo() { take(revert_, false); }

void StoreCommand::take(const Step& step, bool forward) {
    if (done_ == forward) return; // the first redo, or the stack being put back after a refusal
    if (const auto result = step(host_.logbook()); !result) {
        const auto failure = result.error().failure;
        const bool for_good = failure == Failure::refused || failure == Failure::not_found || failure == Failure::bad_input;
        // An obsolete command leaves the stack, so that the steps before it can still be reached.
        if (for_good) setObsolete(true);
        host_.refused(result.error(), forward, !for_good);
        return;
    }
    done_ = forward;
    host_.applied(change_);
}

} // namespace ullage
