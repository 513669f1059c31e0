// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on units and meters.
#include "document/document.h"
#include "document/document_state.h"
#include "model/history_reason.h"
#include "style/words.h"

#include <utility>

namespace ullage {

namespace {

StoreCommand::Step unit_withdrawn(const UnitId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_unit_withdrawn(uuid, withdrawn); };
}

StoreCommand::Step meter_withdrawn(const MeterId& uuid, bool withdrawn) {
    return [uuid, withdrawn](Logbook& book) { return book.set_meter_withdrawn(uuid, withdrawn); };
}

} // namespace

Result<Unit> Document::addUnit(Unit unit) {
    if (!state_->book) return State::nothingOpen();
    auto added = state_->book->add(std::move(unit));
    if (!added) return added;
    Change change;
    change.units = true;
    const auto& stored = added.value();
    state_->push({tr("add unit %1").arg(text_of(stored.name)), tr("Added unit %1").arg(text_of(stored.name))}, change,
                 unit_withdrawn(stored.uuid, false), unit_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updateUnit(const Unit& unit) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = this->unit(unit.uuid);
    if (!current) return State::noSuch(phrase("document", "this unit is no longer in the logbook"));
    if (*current == unit) return {};
    const Unit before = *current;
    if (auto updated = state_->book->update(unit); !updated) return updated;
    auto change = state_->changeOfRuns([&unit](const RunRecord& record) { return record.unit.uuid == unit.uuid; });
    change.units = true;
    state_->push(
        {tr("edit unit %1").arg(text_of(unit.name)), tr("Changed unit %1").arg(text_of(unit.name))}, change,
        [unit](Logbook& book) { return book.update(unit); }, [before](Logbook& book) { return book.update(before); });
    return {};
}

Result<void> Document::withdrawUnit(const UnitId& uuid) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = unit(uuid);
    if (!current) return State::noSuch(phrase("document", "this unit is no longer in the logbook"));
    const auto name = current->name;
    if (auto done = state_->book->set_unit_withdrawn(uuid, true); !done) return done;
    Change change;
    change.units = change.runs = true;
    change.units_of_runs = {uuid};
    state_->push({tr("withdraw unit %1").arg(text_of(name)), tr("Withdrawn: unit %1").arg(text_of(name))}, change, unit_withdrawn(uuid, true),
                 unit_withdrawn(uuid, false));
    return {};
}

Result<Meter> Document::addMeter(Meter meter) {
    if (!state_->book) return State::nothingOpen();
    auto added = state_->book->add(std::move(meter));
    if (!added) return added;
    Change change;
    change.meters = true;
    const auto& stored = added.value();
    state_->push({tr("add meter %1").arg(text_of(stored.name)), tr("Added meter %1").arg(text_of(stored.name))}, change,
                 meter_withdrawn(stored.uuid, false), meter_withdrawn(stored.uuid, true));
    return added;
}

Result<void> Document::updateMeter(const Meter& meter, const std::string& reason) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = this->meter(meter.uuid);
    if (!current) return State::noSuch(phrase("document", "this meter is no longer in the logbook"));
    if (*current == meter) return {};
    const Meter before = *current;
    if (auto updated = state_->book->update(meter, reason); !updated) return updated;
    Change change;
    change.meters = true;
    change.meter = meter.uuid;
    state_->push(
        {tr("edit meter %1").arg(text_of(meter.name)), tr("Changed meter %1").arg(text_of(meter.name))}, change,
        [meter, reason](Logbook& book) { return book.update(meter, reason); },
        [before](Logbook& book) { return book.update(before, kept_reason(HistoryReason::undone)); });
    return {};
}

Result<std::vector<MeterVersion>> Document::meterHistory(const MeterId& uuid) const {
    if (!state_->book) return State::nothingOpen();
    return state_->book->meter_history(uuid);
}

Result<void> Document::withdrawMeter(const MeterId& uuid) {
    if (!state_->book) return State::nothingOpen();
    const auto* current = meter(uuid);
    if (!current) return State::noSuch(phrase("document", "this meter is no longer in the logbook"));
    const auto name = current->name;
    if (auto done = state_->book->set_meter_withdrawn(uuid, true); !done) return done;
    Change change;
    change.meters = true;
    state_->push({tr("withdraw meter %1").arg(text_of(name)), tr("Withdrawn: meter %1").arg(text_of(name))}, change, meter_withdrawn(uuid, true),
                 meter_withdrawn(uuid, false));
    return {};
}

} // namespace ullage
