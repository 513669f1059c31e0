// SPDX-License-Identifier: GPL-3.0-or-later
// A logbook that another program records into, seen from here.
#include "document/document.h"
#include "document/document_state.h"
#include "measure/method_settings.h"

#include <algorithm>
#include <map>
#include <set>
#include <utility>

namespace ullage {

namespace {

/// The runs of which one logbook has other logs, or grown ones.
std::set<RunId> runs_with_other_logs(const Logbook& before, const Logbook& after) {
    std::map<RunId, std::vector<Trace>> known, now;
    for (const auto& [book, by_run] : {std::pair(&before, &known), std::pair(&after, &now)})
        if (const auto found = book->traces())
            for (const Trace& trace : found.value()) (*by_run)[trace.run_uuid].push_back(trace);
    std::set<RunId> runs;
    for (const auto& [run, traces] : now)
        if (known[run] != traces) runs.insert(run);
    return runs;
}

std::vector<RunId> runs_with_other_photos(const Logbook& before, const Logbook& after, const SharedRuns& runs) {
    std::vector<RunId> found;
    for (const auto& record : runs) {
        const auto known = before.photos(record->run.uuid), now = after.photos(record->run.uuid);
        if (known && now && known.value() != now.value()) found.push_back(record->run.uuid);
    }
    return found;
}

/// Alike in all but readings and logs.
bool same_frame(const RunRecord& a, const RunRecord& b) {
    return a.unit == b.unit && a.meter == b.meter && a.second_meter == b.second_meter && a.run == b.run && a.number == b.number;
}

} // namespace

bool Document::isLooking() const { return state_->book && state_->book->mode() == OpenMode::read_only; }

CopyAge Document::lookAge() const { return isLooking() ? state_->book->copy_age() : CopyAge::present; }

void Document::adoptLook(OpenedLogbook look) {
    State& state = *state_;
    Change change;
    change.units = state.units != look.content.units;
    change.meters = state.meters != look.content.meters;
    if (const auto before = state.book->meter_sources(), after = look.book.meter_sources(); before && after)
        change.meters = change.meters || before.value() != after.value();
    change.pv_sheets = state.pv_sheets != look.content.pv_sheets;
    change.load_lists = state.load_lists != look.content.load_lists;
    change.method = state.method != look.content.method;
    change.photos = runs_with_other_photos(*state.book, look.book, look.content.runs);
    const std::set<RunId> grown = runs_with_other_logs(*state.book, look.book);
    const SharedRuns before = state.records;

    state.book.emplace(std::move(look.book));
    state.units = std::move(look.content.units);
    state.meters = std::move(look.content.meters);
    state.pv_sheets = std::move(look.content.pv_sheets);
    state.load_lists = std::move(look.content.load_lists);
    state.method = std::move(look.content.method);
    state.publisher = std::move(look.content.publisher);
    if (change.method) state.casebook.set_options(options_from(state.method));
    state.keepRuns(std::move(look.content.runs), grown);

    change.runs = !std::ranges::equal(before, state.records, [](const auto& a, const auto& b) { return a == b || same_frame(*a, *b); });
    for (const auto& record : state.records)
        if (std::ranges::find(before, record) == before.end()) change.readings.push_back(record->run.uuid);
    state.announceChanges(change, change.runs);
    emit looked(state.clock.now_ms());
}

} // namespace ullage
