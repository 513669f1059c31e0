// SPDX-License-Identifier: GPL-3.0-or-later
// Another logbook joined with the open one.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <QFileInfo>

#include <utility>

namespace ullage {

Result<Document::JoinProposal> Document::proposeJoin(const QString& path, const DoCancellable& beside) {
    if (!state_->book) return State::nothingOpen();
    if (const auto same = same_file_error(state_->path, native_path(path))) return *same;
    Result<JoinProposal> proposal = State::nothingOpen();
    {
        State::Lending lending(*state_);
        beside([&](const std::atomic<bool>* cancelled) {
            auto other = Logbook::open(native_path(path), OpenMode::read_only, state_->clock, cancelled);
            if (!other) {
                proposal = other.error();
                return;
            }
            JoinProposal made{std::make_shared<const Logbook>(std::move(other).value()), {}};
            auto plan = plan_join(*lending.book, *made.other);
            if (!plan) {
                proposal = plan.error();
                return;
            }
            made.plan = std::move(plan).value();
            proposal = std::move(made);
        });
    }
    state_->keepLateDrafts();
    return proposal;
}

Result<Joined> Document::join(const Logbook& other, const std::set<std::string>& taken_keys, const DoBeside& beside, const FolderProgress& goes_on) {
    if (!state_->book) return State::nothingOpen();
    Result<Joined> joined = Joined();
    Result<LogbookContent> fresh = LogbookContent();
    {
        State::Lending lending(*state_);
        Logbook& book = *lending.book;
        beside([&] {
            joined = ullage::join(book, other, taken_keys, goes_on);
            if (!joined) return;
            fresh = read_content(book);
            if (const auto settled = book.settle(); !settled && fresh) fresh = settled.error();
        });
    }
    state_->keepLateDrafts();
    if (!joined || !joined.value().changed()) return joined;
    const auto steps = std::make_shared<const Joined>(joined.value());
    Change change;
    change.units = change.meters = change.runs = change.pv_sheets = change.load_lists = true;
    change.readings.assign(steps->changed_runs.begin(), steps->changed_runs.end());
    change.photos = change.readings;
    // A difference that was taken may have changed a unit or a meter of any run.
    if (fresh && steps->taken == 0) {
        change.units_of_runs = state_->unitsOfNewRuns(fresh.value().runs, steps->changed_runs);
        change.runs = !change.units_of_runs.empty();
    }
    const QString name = shown_path(QFileInfo(path_text(other.path().string())).fileName());
    undo_stack_.push(new StoreCommand(
        *state_, tr("join %1").arg(name), change, [steps](Logbook& book) { return redo_join(book, *steps); },
        [steps](Logbook& book) { return undo_join(book, *steps); }));
    if (fresh) {
        state_->units = std::move(fresh.value().units);
        state_->meters = std::move(fresh.value().meters);
        state_->pv_sheets = std::move(fresh.value().pv_sheets);
        state_->load_lists = std::move(fresh.value().load_lists);
        state_->keepRuns(std::move(fresh.value().runs), steps->changed_runs);
    } else {
        emit error(text_of(fresh.error().sentence()));
    }
    state_->announce(change, true);
    emit stepDone(tr("Joined %1").arg(name));
    return joined;
}

} // namespace ullage
