// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on runs.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

StoreCommand::Step run_withdrawn(const RunId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_run_withdrawn(uuid, withdrawn); };
}

QString kind_word(RunKind kind) { return text_of(say_run_kind(kind)); }

/// What the edit of a run did, in the words of the job where there are any.
StepWords edit_words(const Run& before, const Run& after) {
    auto only_end = before;
    only_end.end = after.end;
    if (!(only_end == after)) return {Document::tr("edit run"), Document::tr("Changed run")};
    return after.end == RunEnd::still_running ? StepWords{Document::tr("reopen run"), Document::tr("Reopened run")}
                                              : StepWords{Document::tr("end run"), Document::tr("Ended: run")};
}

Result<void> read_after_import(const Logbook& book, const std::vector<UnitId>& unit_uuids, LogbookContent& content,
                               std::map<UnitId, SharedRuns>& runs) {
    auto units = book.units();
    if (!units) return units.error();
    content.units = std::move(units).value();
    auto meters = book.meters();
    if (!meters) return meters.error();
    content.meters = std::move(meters).value();
    auto read = read_runs_of(book, unit_uuids);
    if (!read) return read.error();
    runs = std::move(read).value();
    return {};
}

} // namespace

Result<Run> Document::addRun(Run run) {
    if (!state_->book) return State::nothingOpen();
    auto added = state_->book->add(std::move(run));
    if (!added) return added;
    Change change;
    change.runs = true;
    const auto& stored = added.value();
    change.units_of_runs = {stored.unit_uuid};
    state_->push({tr("start %1").arg(kind_word(stored.kind)), tr("Started %1").arg(kind_word(stored.kind))}, change,
                 run_withdrawn(stored.uuid, false), run_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updateRun(const Run& run) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = this->run(run.uuid);
    if (!current) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    if (current->run == run) return {};
    const Run before = current->run;
    if (auto updated = state_->book->update(run); !updated) return updated;
    Change change;
    change.runs = true;
    change.units_of_runs = {current->unit.uuid, run.unit_uuid};
    change.readings.push_back(run.uuid);
    state_->push(
        edit_words(before, run), change, [run](Logbook& book) { return book.update(run); }, [before](Logbook& book) { return book.update(before); });
    return {};
}

Result<void> Document::withdrawRun(const RunId& uuid) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = run(uuid);
    if (!current) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    const auto kind = current->run.kind;
    const UnitId unit_uuid = current->unit.uuid;
    if (auto done = state_->book->set_run_withdrawn(uuid, true); !done) return done;
    Change change;
    change.runs = true;
    change.units_of_runs = {unit_uuid};
    state_->push({tr("withdraw %1").arg(kind_word(kind)), tr("Withdrawn: %1").arg(kind_word(kind))}, change, run_withdrawn(uuid, true),
                 run_withdrawn(uuid, false));
    return {};
}

Result<RunRecord> Document::import(const RunRecord& record) {
    auto imported = importAll(
        {record}, [](const std::function<void()>& work) { work(); }, [](std::size_t) { return true; });
    if (!imported.front()) return imported.front().error();
    return *run(imported.front().value().run_uuid);
}

std::vector<Result<ImportedRun>> Document::importAll(const std::vector<RunRecord>& records, const DoBeside& beside,
                                                     const std::function<bool(std::size_t)>& goes_on) {
    std::vector<Result<ImportedRun>> imported;
    if (!state_->book) {
        imported.assign(records.size(), Result<ImportedRun>(State::nothingOpen()));
        return imported;
    }
    Change change;
    change.units = change.meters = change.runs = true;
    LogbookContent fresh;
    std::map<UnitId, SharedRuns> fresh_runs;
    Result<void> outcome;
    {
        State::Lending lending(*state_);
        Logbook& book = *lending.book;
        beside([&] {
            for (std::size_t i = 0; i < records.size() && goes_on(i); ++i) {
                imported.push_back(book.import_run(records[i]));
                if (imported.back()) change.units_of_runs.push_back(imported.back().value().unit_uuid);
            }
            if (change.units_of_runs.empty()) return;
            outcome = read_after_import(book, change.units_of_runs, fresh, fresh_runs);
            if (const auto settled = book.settle(); !settled && outcome) outcome = settled.error();
        });
    }
    state_->keepLateDrafts();
    if (change.units_of_runs.empty()) return imported;
    for (std::size_t i = 0; i < imported.size(); ++i) {
        if (!imported[i]) continue;
        const ImportedRun& run = imported[i].value();
        Change own;
        own.units = own.meters = own.runs = true;
        own.units_of_runs = {run.unit_uuid};
        const QString words = tr("import %1 of %2").arg(kind_word(records[i].run.kind), text_of(records[i].unit.name));
        undo_stack_.push(new StoreCommand(*state_, words, own, run_withdrawn(run.run_uuid, false), run_withdrawn(run.run_uuid, true)));
    }
    state_->takeImported(outcome, std::move(fresh), fresh_runs, change);
    const auto count = std::ranges::count_if(imported, [](const Result<ImportedRun>& each) { return each.ok(); });
    emit stepDone(count == 1 ? tr("Imported a run") : tr("Imported %1 runs, the last of which Undo takes back").arg(count));
    return imported;
}

Result<std::vector<ImportedRun>> Document::importTogether(const std::vector<TableRun>& runs, const QString& name, const DoBeside& beside) {
    if (!state_->book) return State::nothingOpen();
    Change change;
    change.units = change.meters = change.runs = true;
    LogbookContent fresh;
    std::map<UnitId, SharedRuns> fresh_runs;
    Result<void> outcome;
    Result<std::vector<ImportedRun>> imported = std::vector<ImportedRun>();
    {
        State::Lending lending(*state_);
        Logbook& book = *lending.book;
        beside([&] {
            imported = import_table_runs(book, runs, utf8_of(name));
            if (!imported) return;
            for (const ImportedRun& run : imported.value()) change.units_of_runs.push_back(run.unit_uuid);
            outcome = read_after_import(book, change.units_of_runs, fresh, fresh_runs);
            if (const auto settled = book.settle(); !settled && outcome) outcome = settled.error();
        });
    }
    state_->keepLateDrafts();
    if (!imported) return imported;
    const auto all_withdrawn = [runs = imported.value()](bool withdrawn) -> StoreCommand::Step {
        return [runs, withdrawn](Logbook& book) -> Result<void> {
            for (const ImportedRun& run : runs)
                if (auto done = book.set_run_withdrawn(run.run_uuid, withdrawn); !done) return done;
            return {};
        };
    };
    undo_stack_.push(new StoreCommand(*state_, tr("import table"), change, all_withdrawn(false), all_withdrawn(true)));
    state_->takeImported(outcome, std::move(fresh), fresh_runs, change);
    const auto count = imported.value().size();
    emit stepDone(count == 1 ? tr("Imported a run") : tr("Imported %1 runs of one table").arg(count));
    return imported;
}

} // namespace ullage
