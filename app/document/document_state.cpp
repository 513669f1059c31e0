// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document_state.h"

#include "document/same_record.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

std::optional<UtcMs> first_moment(const RunRecord& record) {
    for (const auto& reading : record.readings)
        if (!reading.withdrawn) return reading.values.time_ms;
    return std::nullopt;
}

} // namespace

Error Document::State::nothing_open() {
    return Error{Failure::refused, "no logbook is open", {}, "open or make one first"};
}

Error Document::State::no_such(const char* what) {
    return Error{Failure::not_found, std::string("this ") + what + " is no longer in the logbook", {}, {}};
}

Result<void> Document::State::take_over(Logbook opened) {
    auto new_units = opened.units();
    if (!new_units) return new_units.error();
    auto new_meters = opened.meters();
    if (!new_meters) return new_meters.error();
    auto new_sheets = opened.pv_sheets();
    if (!new_sheets) return new_sheets.error();
    auto new_load_lists = opened.load_lists();
    if (!new_load_lists) return new_load_lists.error();
    auto new_records = opened.run_records();
    if (!new_records) return new_records.error();
    document.undo_stack_.clear();
    displaced_told = false;
    unsettled_told.clear();
    analyses.clear();
    unit_fits.clear();
    forecasts.clear();
    book.emplace(std::move(opened));
    held = HeldFile(book->path());
    units = std::move(new_units).value();
    meters = std::move(new_meters).value();
    pv_sheets = std::move(new_sheets).value();
    load_lists = std::move(new_load_lists).value();
    keep_runs(std::move(new_records).value());
    return {};
}

void Document::State::push(const QString& text, const Change& change, StoreCommand::Step apply,
                           StoreCommand::Step revert) {
    document.undo_stack_.push(new StoreCommand(*this, text, change, std::move(apply), std::move(revert)));
    applied(change);
}

void Document::State::applied(const Change& change) {
    bool runs = change.runs;
    // Each of these may reach a unit's fit: its claims bound it, its meters weigh it, its runs and their readings make it.
    if (change.units || change.meters || runs || !change.readings.empty()) {
        unit_fits.clear();
        forecasts.clear();
        // A projection rests on the unit's other runs.
        std::erase_if(analyses, [](const auto& entry) {
            return entry.second.energy.usable_fraction.kind == Kind::projected || !entry.second.curve_run_uuid.empty();
        });
    }
    Result<void> outcome;
    const auto also = [&outcome](Result<void> step) {
        if (outcome && !step) outcome = std::move(step);
    };
    if (change.units) also(read_units());
    if (change.meters) also(read_meters());
    if (change.pv_sheets) also(read_pv_sheets());
    if (change.load_lists) also(read_load_lists());
    for (const auto& uuid : change.readings) analyses.erase(uuid);
    if (!runs) {
        for (const auto& uuid : change.readings) {
            const auto* before = document.run(uuid);
            const auto moment = before ? first_moment(*before) : std::nullopt;
            also(read_run(uuid));
            const auto* after = document.run(uuid);
            // The first reading decides the order and numbers of a unit's runs.
            runs = runs || (after && first_moment(*after) != moment);
        }
    }
    if (runs) also(read_runs());
    if (!outcome) emit document.failed(QString::fromStdString(outcome.error().sentence()));

    if (change.units) emit document.unitsChanged();
    if (change.meters) emit document.metersChanged();
    if (change.pv_sheets) emit document.pvSheetsChanged();
    if (change.load_lists) emit document.loadListsChanged();
    if (runs) emit document.runsChanged();
    for (const auto& uuid : change.readings)
        if (document.run(uuid)) emit document.readingsChanged(QString::fromStdString(uuid));
    for (const auto& uuid : change.photos)
        if (document.run(uuid)) emit document.photosChanged(QString::fromStdString(uuid));
    emit document.saved(clock.now_ms());
}

void Document::State::refused(const Error& error, bool forward, bool try_again) {
    if (try_again) put_back = forward ? PutBack::undo : PutBack::redo;
    emit document.failed(QString::fromStdString(error.sentence()));
}

Change Document::State::change_of_runs(bool (*uses)(const RunRecord&, const std::string&),
                                       const std::string& uuid) const {
    Change change;
    change.runs = true;
    for (const auto& record : records)
        if (uses(*record, uuid)) change.readings.push_back(record->run.uuid);
    return change;
}

const Reading* Document::State::reading(const std::string& uuid) const {
    for (const auto& record : records)
        for (const auto& candidate : record->readings)
            if (candidate.uuid == uuid) return &candidate;
    return nullptr;
}

Result<void> Document::State::read_units() {
    auto read = book->units();
    if (!read) return read.error();
    units = std::move(read).value();
    return {};
}

Result<void> Document::State::read_meters() {
    auto read = book->meters();
    if (!read) return read.error();
    meters = std::move(read).value();
    return {};
}

Result<void> Document::State::read_pv_sheets() {
    auto read = book->pv_sheets();
    if (!read) return read.error();
    pv_sheets = std::move(read).value();
    return {};
}

Result<void> Document::State::read_runs() {
    auto read = book->run_records();
    if (!read) return read.error();
    keep_runs(std::move(read).value());
    std::erase_if(analyses, [this](const auto& entry) { return !record_at.contains(entry.first); });
    return {};
}

Result<void> Document::State::read_run(const std::string& run_uuid) {
    const auto at = record_at.find(run_uuid);
    if (at == record_at.end()) return {};
    auto read = book->run_record(run_uuid);
    if (!read) return read.error();
    records[at->second] = std::make_shared<const RunRecord>(std::move(read).value());
    return {};
}

void Document::State::keep_runs(std::vector<RunRecord> read) {
    std::vector<std::shared_ptr<const RunRecord>> kept;
    kept.reserve(read.size());
    for (RunRecord& record : read) {
        const auto before = record_at.find(record.run.uuid);
        const bool same = before != record_at.end() && same_record(*records[before->second], record);
        kept.push_back(same ? records[before->second] : std::make_shared<const RunRecord>(std::move(record)));
    }
    records = std::move(kept);
    record_at.clear();
    records_of.clear();
    for (std::size_t i = 0; i < records.size(); ++i) {
        record_at[records[i]->run.uuid] = i;
        // Runs of a unit stand together.
        ++records_of.try_emplace(records[i]->unit.uuid, i, 0).first->second.second;
    }
}

} // namespace ullage
