// SPDX-License-Identifier: GPL-3.0-or-later
#include "document/document.h"

#include "document/document_state.h"
#include "style/words.h"

#include <QFile>
#include <QFileInfo>

#include <algorithm>
#include <filesystem>
#include <system_error>
#include <tuple>
#include <utility>

namespace ullage {

namespace {

std::filesystem::path file_path(const QString& path) { return {native_path(path)}; }

} // namespace

Document::Document(const Clock& clock, QObject* parent) : QObject(parent), state_(std::make_unique<State>(*this, clock)) {
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
    auto content = read_content(made.value());
    if (!content) return content.error();
    adopt({std::move(made).value(), std::move(content).value()});
    return {};
}

Result<void> Document::open(const QString& path) {
    if (isOpenAt(path) && !isLooking()) {
        emit opened();
        return {};
    }
    auto found = open_logbook(path, state_->clock);
    if (!found) return found.error();
    adopt(std::move(found).value());
    return {};
}

void Document::adopt(OpenedLogbook found) {
    if (state_->book) emit leaving();
    state_->takeOver(std::move(found));
    emit opened();
}

bool Document::isOpenAt(const QString& path) const {
    std::error_code unknown;
    return isOpen() && !displaced() && std::filesystem::equivalent(state_->path, file_path(path), unknown);
}

void Document::State::keepLateDrafts() {
    for (const auto& [run_uuid, draft] : std::exchange(late_drafts, {}))
        if (const auto kept = document.keepDraft(run_uuid, draft); !kept) emit document.error(text_of(kept.error().sentence()));
}

void Document::close() {
    if (!state_->book) return;
    emit leaving();
    undo_stack_.clear();
    state_->casebook.set_runs({});
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

bool Document::isOpen() const { return state_->book.has_value() || state_->lent; }

QString Document::path() const { return isOpen() ? path_text(state_->path.string()) : QString(); }

Result<void> Document::saveCopy(const QString& target, const DoBeside& beside) {
    if (!state_->book) return State::nothingOpen();
    Result<void> saved;
    {
        State::Lending lending(*state_);
        beside([&] { saved = lending.book->save_copy(file_path(target)); });
    }
    state_->keepLateDrafts();
    return saved;
}

std::optional<Error> Document::displaced() const { return state_->book ? state_->book->displaced() : std::nullopt; }

const OpeningCheck& Document::openingCheck() const { return state_->book->opening_check(); }

void Document::tendFile() {
    if (!state_->book || state_->importing || isLooking()) return;
    if (const auto displaced = state_->book->displaced()) {
        if (std::exchange(state_->displaced_told, true)) return;
        emit displacedFound(QStringLiteral("%1: %2").arg(shown_path(QFileInfo(path()).fileName()), text_of(displaced->what)));
        return;
    }
    if (state_->book->settled()) return;
    const auto settled = state_->book->settle();
    const std::string sentence = settled ? std::string() : settled.error().sentence();
    if (const bool news = !sentence.empty() && sentence != state_->unsettled_told; news) emit error(text_of(sentence));
    state_->unsettled_told = sentence;
}

const Clock& Document::clock() const { return state_->clock; }

QUndoStack& Document::undoStack() { return undo_stack_; }

const std::vector<Unit>& Document::units() const { return state_->units; }

const std::vector<Meter>& Document::meters() const { return state_->meters; }

std::vector<const RunRecord*> Document::runs(const UnitId& unit_uuid) const {
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

const RunRecord* Document::run(const RunId& run_uuid) const {
    const auto at = state_->record_at.find(run_uuid);
    return at == state_->record_at.end() ? nullptr : state_->records[at->second].get();
}

std::shared_ptr<const RunRecord> Document::sharedRun(const RunId& run_uuid) const {
    const auto at = state_->record_at.find(run_uuid);
    return at == state_->record_at.end() ? nullptr : state_->records[at->second];
}

const Unit* Document::unit(const UnitId& uuid) const {
    const auto found = std::find_if(state_->units.begin(), state_->units.end(), [&uuid](const Unit& candidate) { return candidate.uuid == uuid; });
    return found == state_->units.end() ? nullptr : &*found;
}

const Meter* Document::meter(const MeterId& uuid) const {
    const auto found = std::find_if(state_->meters.begin(), state_->meters.end(), [&uuid](const Meter& candidate) { return candidate.uuid == uuid; });
    return found == state_->meters.end() ? nullptr : &*found;
}

Result<std::vector<ReadingVersion>> Document::history(const ReadingId& reading_uuid) const {
    if (!state_->book) return State::nothingOpen();
    return state_->book->history(reading_uuid);
}

Result<void> Document::keepDraft(const RunId& run_uuid, const QString& draft) {
    if (state_->lent) {
        state_->late_drafts[run_uuid] = draft;
        return {};
    }
    if (!state_->book) return State::nothingOpen();
    if (isLooking()) return {}; // nothing can be typed, so what is kept is another's
    return state_->book->keep_draft(run_uuid, utf8_of(draft));
}

QString Document::draft(const RunId& run_uuid) const {
    if (const auto late = state_->late_drafts.find(run_uuid); late != state_->late_drafts.end()) return late->second;
    if (!state_->book || isLooking()) return {};
    const auto kept = state_->book->draft(run_uuid);
    return kept ? raw_text(kept.value()) : QString();
}

} // namespace ullage
