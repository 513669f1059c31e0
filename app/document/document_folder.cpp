// SPDX-License-Identifier: GPL-3.0-or-later
// A whole logbook as a folder, and back.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <algorithm>
#include <functional>
#include <utility>
#include <vector>

namespace ullage {

namespace {

/// Withdraws, or restores, all that a folder brought; a unit or meter that came alone goes last and comes back first.
Result<void> set_withdrawn(Logbook& book, const FolderTally& tally, bool withdrawn) {
    using Step = std::function<Result<void>()>;
    const auto each = [&book, withdrawn](const auto& uuids, auto set) -> Step {
        return [&book, withdrawn, &uuids, set]() -> Result<void> {
            for (const auto& uuid : uuids)
                if (auto done = (book.*set)(uuid, withdrawn); !done) return done;
            return {};
        };
    };
    std::vector<Step> all{each(tally.run_uuids, &Logbook::set_run_withdrawn), each(tally.load_list_uuids, &Logbook::set_load_list_withdrawn),
                          each(tally.pv_sheet_uuids, &Logbook::set_pv_sheet_withdrawn), each(tally.unit_uuids, &Logbook::set_unit_withdrawn),
                          each(tally.meter_uuids, &Logbook::set_meter_withdrawn)};
    if (!withdrawn) std::reverse(all.begin(), all.end());
    return book.all_or_none([&]() -> Result<void> {
        for (const auto& [key, value] : tally.settings)
            if (auto done = withdrawn ? book.clear_method_setting(key) : book.set_method_setting(key, value); !done) return done;
        for (const Step& step : all)
            if (auto done = step(); !done) return done;
        return {};
    });
}

} // namespace

Result<FolderTally> Document::exportFolder(const QString& target, const DoBeside& beside, const FolderProgress& goes_on) {
    if (!state_->book) return State::nothingOpen();
    Result<FolderTally> written = FolderTally();
    {
        State::Lending lending(*state_);
        beside([&] { written = write_logbook_folder(*lending.book, native_path(target), goes_on); });
    }
    state_->keepLateDrafts();
    return written;
}

Result<FolderTally> Document::importFolder(const QString& folder, const DoBeside& beside, const FolderProgress& goes_on) {
    if (!state_->book) return State::nothingOpen();
    Result<FolderTally> read = FolderTally();
    Result<LogbookContent> fresh = LogbookContent();
    {
        State::Lending lending(*state_);
        Logbook& book = *lending.book;
        beside([&] {
            read = import_logbook_folder(book, native_path(folder), goes_on);
            if (!read) return;
            fresh = read_content(book);
            if (const auto settled = book.settle(); !settled && fresh) fresh = settled.error();
        });
    }
    state_->keepLateDrafts();
    if (!read) return read;
    const FolderTally& tally = read.value();
    Change change;
    change.units = change.meters = change.pv_sheets = change.load_lists = change.method = true;
    if (fresh) change.units_of_runs = state_->unitsOfNewRuns(fresh.value().runs, {});
    change.runs = !fresh || !change.units_of_runs.empty();
    undo_stack_.push(new StoreCommand(
        *state_, tr("import folder"), change, [tally](Logbook& book) { return set_withdrawn(book, tally, false); },
        [tally](Logbook& book) { return set_withdrawn(book, tally, true); }));
    if (fresh) {
        state_->units = std::move(fresh.value().units);
        state_->meters = std::move(fresh.value().meters);
        state_->pv_sheets = std::move(fresh.value().pv_sheets);
        state_->load_lists = std::move(fresh.value().load_lists);
        state_->method = std::move(fresh.value().method);
        state_->keepRuns(std::move(fresh.value().runs));
    } else {
        emit error(text_of(fresh.error().sentence()));
    }
    state_->announce(change, true);
    emit stepDone(tr("Imported %1").arg(text_of(say_folder_tally(tally))));
    return read;
}

} // namespace ullage
