// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on readings.
#include "document/document.h"
#include "document/document_state.h"
#include "style/words.h"

#include <utility>

namespace ullage {

namespace {

StoreCommand::Step reading_withdrawn(const std::string& uuid, bool withdrawn, const std::string& reason) {
    return [uuid, withdrawn, reason](Logbook& book) -> Result<void> {
        if (const auto done = book.set_withdrawn(uuid, withdrawn, reason); !done) return done.error();
        return {};
    };
}

StoreCommand::Step amended(const std::string& uuid, const ReadingValues& values, const std::string& reason) {
    return [uuid, values, reason](Logbook& book) -> Result<void> {
        if (const auto done = book.amend(uuid, values, reason); !done) return done.error();
        return {};
    };
}

/// "reading of 14:36", or "mark of 14:36" for a note that is nothing but a mark.
QString reading_words(const Document& document, const std::string& run_uuid, const ReadingValues& values) {
    const auto* record = document.run(run_uuid);
    const auto clock = clock_text(values.time_ms, record ? record->run.time_zone : std::string("UTC"));
    const bool only_mark =
        values.mark && !values.gauge_percent && !values.register_wh && !values.second_register_wh && !values.meter_w && !values.display_w;
    return QStringLiteral("%1 of %2").arg(only_mark ? QStringLiteral("mark") : QStringLiteral("reading"), raw_text(clock));
}

Change of_reading(const std::string& reading_uuid, const std::string& run_uuid) {
    Change change;
    change.readings.push_back(run_uuid);
    change.reading = reading_uuid;
    return change;
}

} // namespace

Result<Reading> Document::record(const std::string& run_uuid, const ReadingValues& values, const std::vector<std::string>& photo_uuids) {
    if (!state_->book) return State::nothingOpen();
    auto noted = state_->book->record(run_uuid, values, photo_uuids);
    if (!noted) return noted;
    const auto& uuid = noted.value().uuid;
    Change change = of_reading(uuid, run_uuid);
    if (!photo_uuids.empty()) change.photos.push_back(run_uuid);
    state_->push(QStringLiteral("record %1").arg(reading_words(*this, run_uuid, values)), change, reading_withdrawn(uuid, false, "redone"),
                 reading_withdrawn(uuid, true, "undone"));
    return noted;
}

Result<Reading> Document::amend(const std::string& reading_uuid, const ReadingValues& values, const QString& reason) {
    if (!state_->book) return State::nothingOpen();
    const auto current = state_->placeOfReading(reading_uuid);
    if (!current.record) return State::noSuch("reading");
    const auto before = current.reading->values;
    const auto run_uuid = current.record->run.uuid;
    const auto why = utf8_of(reason);
    auto changed = state_->book->amend(reading_uuid, values, why);
    if (!changed) return changed;
    state_->push(QStringLiteral("amend %1").arg(reading_words(*this, run_uuid, values)), of_reading(reading_uuid, run_uuid),
                 amended(reading_uuid, values, why.empty() ? "redone" : why), amended(reading_uuid, before, "undone"));
    return changed;
}

Result<void> Document::withdrawReading(const std::string& reading_uuid, const QString& reason) {
    if (!state_->book) return State::nothingOpen();
    const auto current = state_->placeOfReading(reading_uuid);
    if (!current.record) return State::noSuch("reading");
    const auto run_uuid = current.record->run.uuid;
    const auto why = utf8_of(reason);
    const auto done = state_->book->set_withdrawn(reading_uuid, true, why);
    if (!done) return done.error();
    state_->push(QStringLiteral("withdraw %1").arg(reading_words(*this, run_uuid, done.value().values)), of_reading(reading_uuid, run_uuid),
                 reading_withdrawn(reading_uuid, true, why.empty() ? "redone" : why), reading_withdrawn(reading_uuid, false, "undone"));
    return {};
}

} // namespace ullage
