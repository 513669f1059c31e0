// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on runs.
#include "document/document.h"
#include "document/document_state.h"

#include <utility>

namespace ullage {

namespace {

StoreCommand::Step run_withdrawn(const std::string& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_run_withdrawn(uuid, withdrawn); };
}

QString kind_word(RunKind kind) {
    const auto text = run_kind_text(kind);
    return QString::fromUtf8(text.data(), static_cast<qsizetype>(text.size()));
}

/// What the edit of a run did, in the words of the job where there are any.
QString edit_words(const Run& before, const Run& after) {
    auto only_end = before;
    only_end.end = after.end;
    if (!(only_end == after)) return QStringLiteral("edit run");
    return after.end == RunEnd::still_running ? QStringLiteral("reopen run") : QStringLiteral("end run");
}

} // namespace

Result<Run> Document::addRun(Run run) {
    if (!state_->book) return State::nothing_open();
    auto added = state_->book->add(std::move(run));
    if (!added) return added;
    Change change;
    change.runs = true;
    const auto& stored = added.value();
    state_->push(QStringLiteral("start %1").arg(kind_word(stored.kind)), change, run_withdrawn(stored.uuid, false),
                 run_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updateRun(const Run& run) {
    if (!state_->book) return State::nothing_open();
    const auto* current = this->run(run.uuid);
    if (!current) return State::no_such("run");
    if (current->run == run) return {};
    const Run before = current->run;
    if (auto updated = state_->book->update(run); !updated) return updated;
    Change change;
    change.runs = true;
    change.readings.push_back(run.uuid);
    state_->push(edit_words(before, run), change, [run](Logbook& book) { return book.update(run); },
                 [before](Logbook& book) { return book.update(before); });
    return {};
}

Result<void> Document::withdrawRun(const std::string& uuid) {
    if (!state_->book) return State::nothing_open();
    const auto* current = run(uuid);
    if (!current) return State::no_such("run");
    const auto kind = current->run.kind;
    if (auto done = state_->book->set_run_withdrawn(uuid, true); !done) return done;
    Change change;
    change.runs = true;
    state_->push(QStringLiteral("withdraw %1").arg(kind_word(kind)), change, run_withdrawn(uuid, true),
                 run_withdrawn(uuid, false));
    return {};
}

Result<RunRecord> Document::import(const RunRecord& record) {
    if (!state_->book) return State::nothing_open();
    auto brought = state_->book->import(record);
    if (!brought) return brought;
    Change change;
    change.units = change.meters = change.runs = true;
    const auto& uuid = brought.value().run.uuid;
    state_->push(QStringLiteral("import %1 of %2").arg(kind_word(record.run.kind), QString::fromStdString(record.unit.name)),
                 change, run_withdrawn(uuid, false), run_withdrawn(uuid, true));
    return brought;
}

} // namespace ullage
