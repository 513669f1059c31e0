// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on readings.
#include "base/number.h"
#include "document/document.h"
#include "document/document_state.h"
#include "model/history_reason.h"
#include "style/words.h"

#include <utility>

namespace ullage {

namespace {

StoreCommand::Step reading_withdrawn(const ReadingId& uuid, bool withdrawn, const std::string& reason) {
    return [uuid, withdrawn, reason](Logbook& book) -> Result<void> {
        if (const auto done = book.set_withdrawn(uuid, withdrawn, reason); !done) return done.error();
        return {};
    };
}

StoreCommand::Step amended(const ReadingId& uuid, const ReadingValues& values, const std::string& reason) {
    return [uuid, values, reason](Logbook& book) -> Result<void> {
        if (const auto done = book.amend(uuid, values, reason); !done) return done.error();
        return {};
    };
}

/// "reading of 14:36", or "mark of 14:36" for a note that is nothing but a mark.
QString reading_words(const Document& document, const RunId& run_uuid, const ReadingValues& values) {
    const auto* record = document.run(run_uuid);
    const auto clock = clock_text(values.time_ms, record ? record->run.time_zone : std::string("UTC"));
    const bool only_mark =
        values.mark && !values.gauge_percent && !values.register_wh && !values.second_register_wh && !values.meter_w && !values.display_w;
    return (only_mark ? Document::tr("mark of %1") : Document::tr("reading of %1")).arg(raw_text(clock));
}

/// "88 %, 2033 Wh", with the marks and remarks of a note that has neither.
QString values_words(const Document& document, const RunId& run_uuid, const ReadingValues& values) {
    QStringList parts;
    if (values.gauge_percent) parts << text_of(say_digits(exact_text(*values.gauge_percent))) + QStringLiteral(" %");
    if (values.register_wh) parts << text_of(say_digits(exact_text(*values.register_wh))) + QStringLiteral(" Wh");
    if (parts.isEmpty() && values.meter_w) parts << text_of(say_digits(exact_text(*values.meter_w))) + QStringLiteral(" W");
    if (values.mark) parts << text_of(say_mark(*values.mark));
    return parts.isEmpty() ? reading_words(document, run_uuid, values) : parts.join(QStringLiteral(", "));
}

Change of_reading(const ReadingId& reading_uuid, const RunId& run_uuid) {
    Change change;
    change.readings.push_back(run_uuid);
    change.reading = reading_uuid;
    return change;
}

} // namespace

Result<Reading> Document::record(const RunId& run_uuid, const ReadingValues& values, const std::vector<PhotoId>& photo_uuids) {
    if (!state_->book) return State::nothingOpen();
    auto noted = state_->book->record(run_uuid, values, photo_uuids);
    if (!noted) return noted;
    const auto& uuid = noted.value().uuid;
    Change change = of_reading(uuid, run_uuid);
    if (!photo_uuids.empty()) change.photos.push_back(run_uuid);
    state_->push({tr("record %1").arg(reading_words(*this, run_uuid, values)), tr("Recorded %1").arg(values_words(*this, run_uuid, values))}, change,
                 reading_withdrawn(uuid, false, kept_reason(HistoryReason::redone)),
                 reading_withdrawn(uuid, true, kept_reason(HistoryReason::undone)));
    return noted;
}

Result<Reading> Document::recordTogether(const RunId& run_uuid, const std::vector<ReadingValues>& values, const std::vector<PhotoId>& photo_uuids) {
    if (values.size() == 1) return record(run_uuid, values.front(), photo_uuids);
    if (!state_->book) return State::nothingOpen();
    std::vector<ReadingId> uuids;
    const auto put = [](const std::vector<ReadingId>& readings, bool withdrawn, const std::string& reason) -> StoreCommand::Step {
        return [readings, withdrawn, reason](Logbook& book) -> Result<void> {
            for (const ReadingId& uuid : readings)
                if (const auto done = book.set_withdrawn(uuid, withdrawn, reason); !done) return done.error();
            return {};
        };
    };
    Change change;
    change.readings.push_back(run_uuid);
    if (!photo_uuids.empty()) change.photos.push_back(run_uuid);
    std::optional<Reading> last;
    for (std::size_t i = 0; i < values.size(); ++i) {
        auto noted = state_->book->record(run_uuid, values[i], i + 1 == values.size() ? photo_uuids : std::vector<PhotoId>());
        if (!noted) {
            // Nothing is deleted in a logbook: what was noted before is taken out of sight again.
            if (!uuids.empty() && put(uuids, true, kept_reason(HistoryReason::not_all_recorded))(*state_->book)) state_->applied(change);
            return noted;
        }
        last = noted.value();
        uuids.push_back(last->uuid);
    }
    state_->push(
        {tr("record %1").arg(reading_words(*this, run_uuid, values.back())), tr("Recorded %1").arg(values_words(*this, run_uuid, values.back()))},
        change, put(uuids, false, kept_reason(HistoryReason::redone)), put(uuids, true, kept_reason(HistoryReason::undone)));
    return *last;
}

Result<Reading> Document::amend(const ReadingId& reading_uuid, const ReadingValues& values, const QString& reason) {
    if (!state_->book) return State::nothingOpen();
    const auto current = state_->placeOfReading(reading_uuid);
    if (!current.record) return State::noSuch(phrase("document", "this reading is no longer in the logbook"));
    const auto before = current.reading->values;
    const auto run_uuid = current.record->run.uuid;
    const auto why = utf8_of(reason);
    auto changed = state_->book->amend(reading_uuid, values, why);
    if (!changed) return changed;
    state_->push({tr("amend %1").arg(reading_words(*this, run_uuid, values)), tr("Amended to %1").arg(values_words(*this, run_uuid, values))},
                 of_reading(reading_uuid, run_uuid), amended(reading_uuid, values, why.empty() ? kept_reason(HistoryReason::redone) : why),
                 amended(reading_uuid, before, kept_reason(HistoryReason::undone)));
    return changed;
}

Result<void> Document::withdrawReading(const ReadingId& reading_uuid, const QString& reason) {
    if (!state_->book) return State::nothingOpen();
    const auto current = state_->placeOfReading(reading_uuid);
    if (!current.record) return State::noSuch(phrase("document", "this reading is no longer in the logbook"));
    const auto run_uuid = current.record->run.uuid;
    const auto why = utf8_of(reason);
    const auto done = state_->book->set_withdrawn(reading_uuid, true, why);
    if (!done) return done.error();
    const ReadingValues& left = done.value().values;
    state_->push({tr("withdraw %1").arg(reading_words(*this, run_uuid, left)), tr("Withdrawn: %1").arg(values_words(*this, run_uuid, left))},
                 of_reading(reading_uuid, run_uuid), reading_withdrawn(reading_uuid, true, why.empty() ? kept_reason(HistoryReason::redone) : why),
                 reading_withdrawn(reading_uuid, false, kept_reason(HistoryReason::undone)));
    return {};
}

} // namespace ullage
