// SPDX-License-Identifier: GPL-3.0-or-later
// Ending a run: how it ended and what was read then, as one step.
#include "document/document.h"
#include "document/document_state.h"
#include "model/history_reason.h"

#include <utility>

namespace ullage {

Result<void> Document::endRun(const Run& run, const std::optional<ReadingValues>& last, const std::vector<PhotoId>& photo_uuids) {
    if (!last) return updateRun(run);
    if (!state_->book) return State::nothingOpen();
    const auto* current = this->run(run.uuid);
    if (!current) return State::noSuch(phrase("document", "this run is no longer in the logbook"));
    const Run before = current->run;
    const UnitId unit_uuid = current->unit.uuid;
    const auto noted = state_->book->record(run.uuid, *last, photo_uuids);
    if (!noted) return noted.error();
    const ReadingId reading_uuid = noted.value().uuid;
    Change change;
    change.runs = true;
    change.units_of_runs = {unit_uuid};
    change.readings.push_back(run.uuid);
    if (!photo_uuids.empty()) change.photos.push_back(run.uuid);
    if (auto updated = state_->book->update(run); !updated) {
        // Nothing is deleted in a logbook: the reading is taken out of sight again.
        if (const auto hidden = state_->book->set_withdrawn(reading_uuid, true, kept_reason(HistoryReason::run_not_ended)); hidden)
            state_->applied(change);
        return updated;
    }
    const auto put = [reading_uuid](bool withdrawn, const Run& stated) -> StoreCommand::Step {
        return [reading_uuid, withdrawn, stated](Logbook& book) -> Result<void> {
            if (auto updated = book.update(stated); !updated) return updated;
            if (const auto done = book.set_withdrawn(reading_uuid, withdrawn, kept_reason(withdrawn ? HistoryReason::undone : HistoryReason::redone));
                !done)
                return done.error();
            return {};
        };
    };
    state_->push({tr("end run"), tr("Ended: run")}, change, put(false, run), put(true, before));
    return {};
}

} // namespace ullage
