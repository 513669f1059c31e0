// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document_state.h"

#include "document/same_record.h"
#include "measure/method_settings.h"
#include "style/words.h"

#include <algorithm>
#include <iterator>
#include <utility>

namespace ullage {

namespace {

std::optional<UtcMs> first_moment(const RunRecord& record) {
    for (const auto& reading : record.readings)
        if (!reading.withdrawn) return reading.values.time_ms;
    return std::nullopt;
}

/// Whether the run, or a log of it, rests on what is known of this meter.
bool uses_meter(const RunRecord& record, const MeterId& uuid) {
    return record.run.meter_uuid == uuid || record.run.second_meter_uuid == uuid ||
           std::ranges::any_of(record.other_logs, [&uuid](const MeterLog& log) { return log.meter && log.meter->uuid == uuid; });
}

} // namespace

Error Document::State::nothingOpen() {
    return Error{Failure::refused, say(phrase("document", "no logbook is open")), {}, say(phrase("document", "open or make one first"))};
}

Error Document::State::noSuch(const Phrase& what) { return Error{Failure::not_found, say(what), {}, {}}; }

void Document::State::takeOver(OpenedLogbook opened) {
    document.undo_stack_.clear();
    displaced_told = false;
    unsettled_told.clear();
    path = opened.book.path();
    book.emplace(std::move(opened.book));
    held = HeldFile(path);
    units = std::move(opened.content.units);
    meters = std::move(opened.content.meters);
    pv_sheets = std::move(opened.content.pv_sheets);
    load_lists = std::move(opened.content.load_lists);
    method = std::move(opened.content.method);
    publisher = std::move(opened.content.publisher);
    if (opened.judged) casebook.take_over(*opened.judged);
    casebook.set_options(options_from(method));
    keepRuns(std::move(opened.content.runs));
}

void Document::State::push(const StepWords& words, const Change& change, StoreCommand::Step apply, StoreCommand::Step revert) {
    document.undo_stack_.push(new StoreCommand(*this, words.step, change, std::move(apply), std::move(revert)));
    applied(change);
    emit document.stepDone(words.done);
}

void Document::State::applied(const Change& change) {
    Result<void> outcome;
    const auto also = [&outcome](Result<void> step) {
        if (outcome && !step) outcome = std::move(step);
    };
    if (change.units) also(readUnits());
    if (change.meters) also(readMeters());
    if (change.pv_sheets) also(readPvSheets());
    if (change.load_lists) also(readLoadLists());
    if (change.method) also(readMethod());
    if (change.publisher) also(readPublisher());
    std::vector<UnitId> reordered;
    if (!change.meter.empty()) putMeter(change.meter);
    if (!change.runs) {
        for (const auto& uuid : change.readings) {
            const auto* before = document.run(uuid);
            const auto moment = before ? first_moment(*before) : std::nullopt;
            also(readRun(uuid, change.reading));
            const auto* after = document.run(uuid);
            // The first reading decides the order and numbers of a unit's runs.
            if (after && first_moment(*after) != moment) reordered.push_back(after->unit.uuid);
        }
    }
    if (change.runs) also(readRuns(change.units_of_runs, {change.readings.begin(), change.readings.end()}));
    else if (!reordered.empty()) also(readRuns(reordered));
    if (!outcome) emit document.error(text_of(outcome.error().sentence()));
    announce(change, change.runs || !reordered.empty());
}

void Document::State::takeImported(const Result<void>& outcome, LogbookContent fresh, const std::map<UnitId, SharedRuns>& runs,
                                   const Change& change) {
    if (outcome) {
        units = std::move(fresh.units);
        meters = std::move(fresh.meters);
        putRuns(runs);
    } else {
        emit document.error(text_of(outcome.error().sentence()));
    }
    announce(change, true);
}

void Document::State::announce(const Change& change, bool runs) {
    announceChanges(change, runs);
    emit document.saved(clock.now_ms());
}

void Document::State::announceChanges(const Change& change, bool runs) {
    if (runs || change.method || !change.meter.empty()) document.prepareAnswers();
    // All that is said of runs and units follows the method.
    if (change.units || change.method) emit document.unitsChanged();
    if (change.meters) emit document.metersChanged();
    if (change.pv_sheets) emit document.pvSheetsChanged();
    if (change.load_lists) emit document.loadListsChanged();
    if (runs || change.method) emit document.runsChanged();
    for (const auto& uuid : change.readings)
        if (document.run(uuid)) emit document.readingsChanged(uuid);
    for (const auto& uuid : change.photos)
        if (document.run(uuid)) emit document.photosChanged(uuid);
}

void Document::State::refused(const Error& error, bool forward, bool try_again) {
    if (try_again) put_back = forward ? PutBack::undo : PutBack::redo;
    emit document.error(text_of(error.sentence()));
}

Change Document::State::changeOfRuns(const std::function<bool(const RunRecord&)>& uses) const {
    Change change;
    change.runs = true;
    for (const auto& record : records)
        if (uses(*record)) {
            change.readings.push_back(record->run.uuid);
            if (change.units_of_runs.empty() || change.units_of_runs.back() != record->unit.uuid) change.units_of_runs.push_back(record->unit.uuid);
        }
    change.runs = !change.readings.empty();
    return change;
}

Document::State::ReadingPlace Document::State::placeOfReading(const ReadingId& uuid) const {
    for (const auto& record : records)
        for (const auto& candidate : record->readings)
            if (candidate.uuid == uuid) return {record.get(), &candidate};
    return {};
}

Result<void> Document::State::readUnits() {
    auto read = book->units();
    if (!read) return read.error();
    units = std::move(read).value();
    return {};
}

Result<void> Document::State::readMeters() {
    auto read = book->meters();
    if (!read) return read.error();
    meters = std::move(read).value();
    return {};
}

Result<void> Document::State::readPvSheets() {
    auto read = book->pv_sheets();
    if (!read) return read.error();
    pv_sheets = std::move(read).value();
    return {};
}

void Document::State::putMeter(const MeterId& uuid) {
    const auto meter = std::ranges::find(meters, uuid, &Meter::uuid);
    if (meter == meters.end()) return;
    for (auto& record : records) {
        if (!uses_meter(*record, uuid)) continue;
        auto fresh = std::make_shared<RunRecord>(*record);
        if (fresh->run.meter_uuid == uuid) fresh->meter = *meter;
        if (fresh->run.second_meter_uuid == uuid) fresh->second_meter = *meter;
        for (MeterLog& log : fresh->other_logs)
            if (log.meter && log.meter->uuid == uuid) log.meter = *meter;
        record = std::move(fresh);
    }
    casebook.set_runs(records);
}

Result<void> Document::State::readRuns(const std::vector<UnitId>& unit_uuids, const std::set<RunId>& changed) {
    std::set<UnitId> there;
    for (const Unit& unit : units) there.insert(unit.uuid);
    std::vector<UnitId> to_read; // units that are gone have no runs to be read
    std::ranges::copy_if(unit_uuids, std::back_inserter(to_read), [&there](const UnitId& uuid) { return there.contains(uuid); });
    // One unit after the other takes longer than all at once where they are many.
    constexpr std::size_t most_of_all = 4;
    if (unit_uuids.empty() || to_read.size() > units.size() / most_of_all + 1) {
        auto read = read_content(*book);
        if (!read) return read.error();
        keepRuns(std::move(read.value().runs), changed);
    } else {
        const auto read = read_runs_of(*book, to_read);
        if (!read) return read.error();
        putRuns(read.value(), changed);
    }
    return {};
}

Result<void> Document::State::readRun(const RunId& run_uuid, const ReadingId& reading_uuid) {
    const auto at = record_at.find(run_uuid);
    if (at == record_at.end()) return {};
    auto read = reading_uuid.empty() ? book->run_record(run_uuid) : book->with_reading(*records[at->second], reading_uuid);
    if (!read) return read.error();
    records[at->second] = std::make_shared<const RunRecord>(std::move(read).value());
    casebook.set_runs(records);
    return {};
}

std::vector<UnitId> Document::State::unitsOfNewRuns(const SharedRuns& fresh, const std::set<RunId>& named) const {
    std::vector<UnitId> found;
    for (const auto& record : fresh) {
        const bool is_new = !record_at.contains(record->run.uuid) || named.contains(record->run.uuid);
        if (is_new && (found.empty() || found.back() != record->unit.uuid)) found.push_back(record->unit.uuid);
    }
    return found;
}

void Document::State::putRuns(const std::map<UnitId, SharedRuns>& fresh, const std::set<RunId>& changed_logs) {
    SharedRuns all;
    all.reserve(records.size());
    for (const Unit& unit : units) {
        if (const auto found = fresh.find(unit.uuid); found != fresh.end()) {
            all.insert(all.end(), found->second.begin(), found->second.end());
        } else if (const auto known = records_of.find(unit.uuid); known != records_of.end()) {
            const auto first = records.begin() + static_cast<std::ptrdiff_t>(known->second.first);
            all.insert(all.end(), first, first + static_cast<std::ptrdiff_t>(known->second.second));
        }
    }
    keepRuns(std::move(all), changed_logs);
}

void Document::State::keepRuns(SharedRuns read, const std::set<RunId>& changed_logs) {
    for (auto& record : read) {
        const auto before = record_at.find(record->run.uuid);
        if (before == record_at.end() || changed_logs.contains(record->run.uuid)) continue;
        const auto& known = records[before->second];
        if (known != record && same_record(*known, *record)) record = known;
    }
    records = std::move(read);
    record_at.clear();
    records_of.clear();
    for (std::size_t i = 0; i < records.size(); ++i) {
        record_at[records[i]->run.uuid] = i;
        // Runs of a unit stand together.
        ++records_of.try_emplace(records[i]->unit.uuid, i, 0).first->second.second;
    }
    casebook.set_runs(records);
}

} // namespace ullage
