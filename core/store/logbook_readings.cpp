// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/photo_queries.h"
#include "store/queries/reading_queries.h"

namespace ullage {

namespace {

/// Ties a waiting photo to a reading of the run. Refused when it does not wait.
Result<void> tie(SQLite::Database& database, const PhotoId& photo_uuid, const RunId& run_uuid, const Reading& reading, UtcMs now_ms) {
    auto stored = store::find_photo(database, photo_uuid);
    if (!stored || stored->photo.run_uuid != run_uuid || stored->photo.withdrawn || stored->photo.reading_uuid)
        return Error{Failure::refused,
                     say(phrase("store", "a photo no longer waits for this entry; nothing was recorded")),
                     {},
                     say(phrase("store", "look at the photos, then record again"))};
    stored->photo.reading_uuid = reading.uuid;
    ++stored->photo.version;
    store::insert_photo_version(database, *stored, now_ms);
    return {};
}

} // namespace

Result<Reading> Logbook::record(const RunId& run_uuid, const ReadingValues& values, const std::vector<PhotoId>& photo_uuids) {
    if (auto sound = store::check(values); !sound) return sound.error();
    return impl_->change([&]() -> Result<Reading> {
        const auto run = store::run_id(impl_->database(), run_uuid);
        if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        Reading reading;
        reading.uuid = ReadingId(new_uuid());
        reading.values = values;
        store::insert_reading(impl_->database(), reading, *run, impl_->clock->now_ms());
        for (const PhotoId& photo_uuid : photo_uuids)
            if (auto tied = tie(impl_->database(), photo_uuid, run_uuid, reading, impl_->clock->now_ms()); !tied) return tied.error();
        return reading;
    });
}

Result<Reading> Logbook::amend(const ReadingId& reading_uuid, const ReadingValues& values, const std::string& reason) {
    if (auto sound = store::check(values); !sound) return sound.error();
    if (auto sound = store::check_reason(reason); !sound) return sound.error();
    return impl_->change([&]() -> Result<Reading> {
        auto stored = store::find_reading(impl_->database(), reading_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such reading"));
        if (stored->reading.values == values)
            return Error{Failure::refused,
                         say(phrase("store", "the reading says this already")),
                         {},
                         say(phrase("store", "change a value or leave it as it is"))};
        stored->reading.values = values;
        ++stored->reading.version;
        store::insert_version(impl_->database(), *stored, impl_->clock->now_ms(), reason);
        return stored->reading;
    });
}

Result<Reading> Logbook::set_withdrawn(const ReadingId& reading_uuid, bool withdrawn, const std::string& reason) {
    if (auto sound = store::check_reason(reason); !sound) return sound.error();
    return impl_->change([&]() -> Result<Reading> {
        auto stored = store::find_reading(impl_->database(), reading_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such reading"));
        if (stored->reading.withdrawn == withdrawn)
            return Error{Failure::refused,
                         withdrawn ? say(phrase("store", "the reading is withdrawn already")) : say(phrase("store", "the reading is not withdrawn")),
                         {},
                         {}};
        stored->reading.withdrawn = withdrawn;
        ++stored->reading.version;
        store::insert_version(impl_->database(), *stored, impl_->clock->now_ms(), reason);
        return stored->reading;
    });
}

Result<std::vector<Reading>> Logbook::readings(const RunId& run_uuid) const {
    return impl_->read([&]() -> Result<std::vector<Reading>> {
        const auto run = store::run_id(impl_->database(), run_uuid);
        if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        return store::run_readings(impl_->database(), *run);
    });
}

Result<std::vector<ReadingVersion>> Logbook::history(const ReadingId& reading_uuid) const {
    return impl_->read([&]() -> Result<std::vector<ReadingVersion>> {
        const auto stored = store::find_reading(impl_->database(), reading_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such reading"));
        return store::reading_versions(impl_->database(), stored->id);
    });
}

} // namespace ullage
