// SPDX-License-Identifier: GPL-3.0-or-later
// PV sheets and the commands on them.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

StoreCommand::Step sheet_withdrawn(const PvSheetId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_pv_sheet_withdrawn(uuid, withdrawn); };
}

Change of_sheets() {
    Change change;
    change.pv_sheets = true;
    return change;
}

} // namespace

const std::vector<PvSheet>& Document::pvSheets() const { return state_->pv_sheets; }

const PvSheet* Document::pvSheet(const PvSheetId& uuid) const {
    const auto found = std::ranges::find(state_->pv_sheets, uuid, &PvSheet::uuid);
    return found == state_->pv_sheets.end() ? nullptr : &*found;
}

Result<PvSheet> Document::addPvSheet(PvSheet sheet) {
    if (!state_->book) return State::nothingOpen();
    auto added = state_->book->add(std::move(sheet));
    if (!added) return added;
    const PvSheet& stored = added.value();
    state_->push({tr("add PV sheet %1").arg(text_of(stored.name)), tr("Added PV sheet %1").arg(text_of(stored.name))}, of_sheets(),
                 sheet_withdrawn(stored.uuid, false), sheet_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updatePvSheet(const PvSheet& sheet) {
    if (!state_->book) return State::nothingOpen();
    const PvSheet* current = pvSheet(sheet.uuid);
    if (!current) return State::noSuch(phrase("document", "this PV sheet is no longer in the logbook"));
    if (*current == sheet) return {};
    const PvSheet before = *current;
    if (auto updated = state_->book->update(sheet); !updated) return updated;
    state_->push(
        {tr("edit PV sheet %1").arg(text_of(sheet.name)), tr("Changed PV sheet %1").arg(text_of(sheet.name))}, of_sheets(),
        [sheet](Logbook& book) { return book.update(sheet); }, [before](Logbook& book) { return book.update(before); });
    return {};
}

Result<void> Document::withdrawPvSheet(const PvSheetId& uuid) {
    if (!state_->book) return State::nothingOpen();
    const PvSheet* current = pvSheet(uuid);
    if (!current) return State::noSuch(phrase("document", "this PV sheet is no longer in the logbook"));
    const PvSheet sheet = *current;
    if (auto done = state_->book->set_pv_sheet_withdrawn(uuid, true); !done) return done;
    state_->push({tr("withdraw PV sheet %1").arg(text_of(sheet.name)), tr("Withdrawn: PV sheet %1").arg(text_of(sheet.name))}, of_sheets(),
                 sheet_withdrawn(uuid, true), sheet_withdrawn(uuid, false));
    return {};
}

} // namespace ullage
