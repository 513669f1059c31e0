// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document.h"

#include "document/document_state.h"
#include "fleet/curve_projection.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <tuple>
#include <utility>

namespace ullage {

namespace {

std::filesystem::path file_path(const QString& path) { return {QFile::encodeName(path).toStdString()}; }

} // namespace

Document::Document(const Clock& clock, QObject* parent)
    : QObject(parent), state_(std::make_unique<State>(*this, clock)) {
    // A refused undo has moved the stack although the store stands where it stood: move the stack back.
    connect(&undo_stack_, &QUndoStack::indexChanged, this, [this] {
        const auto put_back = std::exchange(state_->put_back, State::PutBack::nothing);
        if (put_back == State::PutBack::redo) undo_stack_.redo();
        if (put_back == State::PutBack::undo) undo_stack_.undo();
    });
    constexpr int tend_ms = 1000;
    connect(&tend_timer_, &QTimer::timeout, this, &Document::tendFile);
    tend_timer_.start(tend_ms);
}

Document::~Document() {
    // Clearing the stack emits signals, which nobody may answer from here on.
    undo_stack_.disconnect();
}

Result<void> Document::create(const QString& path) {
    auto made = Logbook::create(file_path(path), state_->clock);
    if (!made) return made.error();
    if (auto taken = state_->take_over(std::move(made).value()); !taken) return taken;
    emit opened();
    return {};
}

Result<void> Document::open(const QString& path) {
    std::error_code unknown;
    if (state_->book && !displaced() && std::filesystem::equivalent(state_->book->path(), file_path(path), unknown)) {
        emit opened();
        return {};
    }
    auto found = Logbook::open(file_path(path), OpenMode::record, state_->clock);
    if (!found) return found.error();
    if (auto taken = state_->take_over(std::move(found).value()); !taken) return taken;
    emit opened();
    return {};
}

void Document::close() {
    if (!state_->book) return;
    undo_stack_.clear();
    state_->analyses.clear();
    state_->unit_fits.clear();
    state_->forecasts.clear();
    state_->records.clear();
    state_->record_at.clear();
    state_->records_of.clear();
    state_->units.clear();
    state_->meters.clear();
    state_->pv_sheets.clear();
    state_->load_lists.clear();
    state_->book.reset();
    state_->held = HeldFile();
    emit closed();
}

bool Document::isOpen() const { return state_->book.has_value(); }

QString Document::path() const {
    return state_->book ? QFile::decodeName(QByteArray::fromStdString(state_->book->path().string())) : QString();
}

Result<void> Document::saveCopy(const QString& target) const {
    if (!state_->book) return State::nothing_open();
    return state_->book->save_copy(file_path(target));
}

std::optional<Error> Document::displaced() const { return state_->book ? state_->book->displaced() : std::nullopt; }

const OpeningCheck& Document::openingCheck() const { return state_->book->opening_check(); }

void Document::tendFile() {
    if (!state_->book || state_->importing) return;
    if (const auto displaced = state_->book->displaced()) {
        if (std::exchange(state_->displaced_told, true)) return;
        emit displacedFound(QStringLiteral("%1: %2").arg(QFileInfo(path()).fileName(), QString::fromStdString(displaced->what)));
        return;
    }
    if (state_->book->settled()) return;
    const auto settled = state_->book->settle();
    const std::string sentence = settled ? std::string() : settled.error().sentence();
    if (const bool news = !sentence.empty() && sentence != state_->unsettled_told; news) emit failed(QString::fromStdString(sentence));
    state_->unsettled_told = sentence;
}

const Clock& Document::clock() const { return state_->clock; }

QUndoStack& Document::undoStack() { return undo_stack_; }

const std::vector<Unit>& Document::units() const { return state_->units; }

const std::vector<Meter>& Document::meters() const { return state_->meters; }

std::vector<const RunRecord*> Document::runs(const std::string& unit_uuid) const {
    std::size_t first = 0, count = state_->records.size();
    if (!unit_uuid.empty()) {
        const auto known = state_->records_of.find(unit_uuid);
        if (known == state_->records_of.end()) return {};
        std::tie(first, count) = known->second;
    }
    std::vector<const RunRecord*> found;
    for (std::size_t i = first; i < first + count; ++i) found.push_back(state_->records[i].get());
    return found;
}

const std::vector<std::shared_ptr<const RunRecord>>& Document::sharedRuns() const { return state_->records; }

const RunRecord* Document::run(const std::string& run_uuid) const {
    const auto at = state_->record_at.find(run_uuid);
    return at == state_->record_at.end() ? nullptr : state_->records[at->second].get();
}

const Unit* Document::unit(const std::string& uuid) const {
    const auto found = std::find_if(state_->units.begin(), state_->units.end(),
                                    [&uuid](const Unit& candidate) { return candidate.uuid == uuid; });
    return found == state_->units.end() ? nullptr : &*found;
}

const Meter* Document::meter(const std::string& uuid) const {
    const auto found = std::find_if(state_->meters.begin(), state_->meters.end(),
                                    [&uuid](const Meter& candidate) { return candidate.uuid == uuid; });
    return found == state_->meters.end() ? nullptr : &*found;
}

const RunAnalysis& Document::analysis(const std::string& run_uuid) const {
    if (const auto kept = state_->analyses.find(run_uuid); kept != state_->analyses.end()) return kept->second;
    const RunRecord& record = *run(run_uuid);
    RunAnalysis analysis = analyse_run(record);
    // Only a projection asks what the unit's other runs say.
    if (analysis.energy.usable_fraction.kind == Kind::projected) project_through_curve(record, unitFit(record.unit.uuid), analysis);
    return state_->analyses.emplace(run_uuid, std::move(analysis)).first->second;
}

const UnitFit& Document::unitFit(const std::string& unit_uuid) const {
    if (const auto kept = state_->unit_fits.find(unit_uuid); kept != state_->unit_fits.end()) return kept->second;
    const std::vector<const RunRecord*> records = runs(unit_uuid);
    const MeasureOptions options;
    std::vector<EnergyAnalysis> energies;
    for (const RunRecord* record : records) energies.push_back(analyse_energy(*record, options));
    return state_->unit_fits.emplace(unit_uuid, fit_unit(records, energies, options)).first->second;
}

const RunForecast& Document::forecast(const std::string& run_uuid, UtcMs now_ms) const {
    const RunRecord& record = *run(run_uuid);
    const auto kept = state_->forecasts.find(run_uuid);
    constexpr UtcMs minute_ms = 60'000;
    if (kept != state_->forecasts.end() && kept->second.as_of_ms / minute_ms == now_ms / minute_ms) return kept->second;
    RunForecast made = forecast_run(record, analysis(run_uuid).energy, unitFit(record.unit.uuid), now_ms);
    return state_->forecasts.insert_or_assign(run_uuid, std::move(made)).first->second;
}

Result<std::vector<ReadingVersion>> Document::history(const std::string& reading_uuid) const {
    if (!state_->book) return State::nothing_open();
    return state_->book->history(reading_uuid);
}

Result<void> Document::keepDraft(const std::string& run_uuid, const QString& draft) {
    if (!state_->book) return State::nothing_open();
    return state_->book->keep_draft(run_uuid, draft.toStdString());
}

QString Document::draft(const std::string& run_uuid) const {
    if (!state_->book) return {};
    const auto kept = state_->book->draft(run_uuid);
    return kept ? QString::fromStdString(kept.value()) : QString();
}

} // namespace ullage
