// SPDX-License-Identifier: GPL-3.0-or-later
// Starting a run: the run, its first reading and the unit's gauge step as one step.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <utility>

namespace ullage {

Result<Run> Document::startRun(Run run, const std::optional<ReadingValues>& first, std::optional<double> gauge_step_percent) {
    if (!state_->book) return State::nothingOpen();
    const auto* known = unit(run.unit_uuid);
    if (!known) return State::noSuch(phrase("document", "this unit is no longer in the logbook"));
    const Unit before = *known;
    Unit after = before;
    if (gauge_step_percent) after.gauge_step_percent = *gauge_step_percent;

    auto added = state_->book->add(std::move(run));
    if (!added) return added;
    const RunId uuid = added.value().uuid;
    // Nothing is deleted in a logbook: what a later part refuses takes the run out of sight again.
    const auto given_up = [&](const Error& error) -> Result<Run> {
        if (const auto hidden = state_->book->set_run_withdrawn(uuid, true); !hidden) {
            Change change;
            change.runs = true;
            change.units_of_runs = {before.uuid};
            state_->applied(change);
        }
        return error;
    };
    if (first)
        if (const auto noted = state_->book->record(uuid, *first); !noted) return given_up(noted.error());
    const bool step_changes = !(after == before);
    if (step_changes)
        if (const auto updated = state_->book->update(after); !updated) return given_up(updated.error());

    Change change;
    change.units = step_changes;
    change.runs = true;
    change.units_of_runs = {before.uuid};
    if (step_changes)
        for (const auto* record : runs(before.uuid)) change.readings.push_back(record->run.uuid);
    change.readings.push_back(uuid);
    const auto put = [uuid, step_changes](bool withdrawn, const Unit& claims) -> StoreCommand::Step {
        return [uuid, step_changes, withdrawn, claims](Logbook& book) -> Result<void> {
            if (step_changes)
                if (const auto updated = book.update(claims); !updated) return updated.error();
            return book.set_run_withdrawn(uuid, withdrawn);
        };
    };
    const QString kind = text_of(say_run_kind(added.value().kind));
    state_->push({tr("start %1").arg(kind), tr("Started %1").arg(kind)}, change, put(false, after), put(true, before));
    return added;
}

} // namespace ullage
