// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/run_presenter.h"

#include "measure/register_correction_acceptance.h"
#include "models/readings_rows.h"
#include "pages/parts/due_figures.h"
#include "pages/parts/run_figures.h"
#include "pages/run/run_tested.h"
#include "services/reminders.h"
#include "style/words.h"
#include "unit/known_depths.h"

#include <algorithm>

namespace ullage {

namespace {

const Reading* reading_of(const RunRecord* record, const ReadingId& uuid) {
    if (record == nullptr) return nullptr;
    const auto found = std::ranges::find(record->readings, uuid, &Reading::uuid);
    return found == record->readings.end() ? nullptr : &*found;
}

} // namespace

const RunRecord* RunPresenter::record() const { return document_.run(run_uuid_); }

std::vector<StripFigure> RunPresenter::figures() const {
    const UtcMs now_ms = document_.clock().now_ms();
    const RunRecord& run = *record();
    OpenRunView open;
    if (reminders_ && run.run.end == RunEnd::still_running) {
        open.forecast = &reminders_->forecast(run_uuid_);
        open.due = due_figure(reminders_->state(run_uuid_), now_ms);
    } else if (run.run.end == RunEnd::still_running) {
        open.forecast = &document_.forecast(run_uuid_, now_ms);
    }
    return run_figures(run, document_.analysis(run_uuid_), now_ms, open);
}

TestedOutcome RunPresenter::tested() const { return run_tested(*record(), document_.analysis(run_uuid_).energy); }

const TwoAccounts& RunPresenter::accounts() const { return document_.accounts(run_uuid_); }

std::vector<FindingItem> RunPresenter::findings() const {
    const RunRecord& run = *record();
    const RunAnalysis& analysis = document_.analysis(run_uuid_);
    // While a run goes on nobody asks where the energy went.
    std::optional<LossSplit> split;
    if (run.run.end != RunEnd::still_running) split = split_losses(run, analysis, document_.unitFit(run.unit.uuid));
    return finding_items(analysis, split, run.run.kind);
}

ChartedRun RunPresenter::charted() const {
    ChartedRun charted{document_.sharedRun(run_uuid_)};
    if (!charted.record) return charted;
    charted.analysis = &document_.analysis(run_uuid_);
    charted.accounts = &document_.accounts(run_uuid_);
    // Only a full drain has depths.
    if (!charted.analysis->gauge.depths.empty())
        charted.depths = known_depths(*charted.record, *charted.analysis, document_.unitFit(charted.record->unit.uuid));
    if (charted.record->run.end != RunEnd::still_running) return charted;
    charted.now_ms = document_.clock().now_ms();
    // Where there are reminders, it is the forecast which the strip takes from them.
    charted.forecast = reminders_ ? &reminders_->forecast(run_uuid_) : &document_.forecast(run_uuid_, document_.clock().now_ms());
    return charted;
}

std::optional<ReadingToAmend> RunPresenter::toAmend(const ReadingId& reading_uuid) const {
    const RunRecord* run = record();
    const Reading* reading = reading_of(run, reading_uuid);
    if (reading == nullptr) return std::nullopt;
    const auto history = document_.history(reading->uuid);
    const QStringList lines = history ? history_lines(history.value(), run->run.time_zone) : QStringList{text_of(history.error().sentence())};
    return ReadingToAmend{reading->uuid, reading->values, lines, run->run.time_zone, run->run.second_meter_uuid.has_value()};
}

ReadingId RunPresenter::lastEntered() const {
    const RunRecord* run = record();
    if (run == nullptr) return {};
    const Reading* last = nullptr;
    for (const Reading& reading : run->readings)
        if (!reading.withdrawn && (last == nullptr || reading.sequence > last->sequence)) last = &reading;
    return last == nullptr ? ReadingId() : last->uuid;
}

Result<void> RunPresenter::amend(const ReadingId& reading_uuid, const ReadingValues& values, const QString& reason) {
    const auto amended = document_.amend(reading_uuid, values, reason);
    return amended ? Result<void>{} : Result<void>{amended.error()};
}

Result<void> RunPresenter::withdraw(const std::vector<ReadingId>& reading_uuids) {
    for (const ReadingId& uuid : reading_uuids)
        if (const auto done = document_.withdrawReading(uuid, {}); !done) return done;
    return {};
}

Result<void> RunPresenter::acceptAssumption(const ReadingId& reading_uuid) {
    const Reading* reading = reading_of(record(), reading_uuid);
    if (reading == nullptr) return {};
    for (const RegisterCorrection& register_correction : document_.analysis(run_uuid_).energy.track.register_corrections) {
        if (register_correction.reading_uuid != reading->uuid) continue;
        const auto acceptance = accept_register_correction(register_correction, *reading);
        if (!acceptance) continue;
        const QString reason = text_of(acceptance->reason);
        return acceptance->withdraw ? document_.withdrawReading(reading->uuid, reason) : amend(reading->uuid, acceptance->values, reason);
    }
    return {};
}

} // namespace ullage
