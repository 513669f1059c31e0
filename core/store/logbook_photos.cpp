// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/ids.h"
#include "store/inside/logbook_impl.h"
#include "store/inside/photo_check.h"
#include "store/inside/value_checks.h"
#include "store/logbook.h"
#include "store/queries/photo_queries.h"
#include "store/queries/reading_queries.h"

namespace ullage {

Result<Photo> Logbook::add_photo(const RunId& run_uuid, const ReadingId& reading_uuid, const NewPhoto& photo) {
    const auto format = store::check_photo(photo.bytes, photo.file_name);
    if (!format) return format.error();
    return impl_->change([&]() -> Result<Photo> {
        SQLite::Database& database = impl_->database();
        const auto run = store::run_id(database, run_uuid);
        if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        Photo added;
        if (!reading_uuid.empty()) {
            const auto reading = store::find_reading(database, reading_uuid);
            if (!reading) return impl_->not_found(phrase("store", "the logbook has no such reading"));
            if (reading->run_uuid != run_uuid)
                return Error{Failure::refused, say(phrase("store", "the reading is of another run")), photo.file_name,
                             say(phrase("store", "choose a reading of this run"))};
            added.reading_uuid = reading_uuid;
        }
        added.size_bytes = static_cast<std::int64_t>(photo.bytes.size());
        if (store::all_photos_bytes(database) + added.size_bytes > photos_limit_bytes)
            return Error{Failure::refused,
                         say(phrase("store", "the photos of a logbook take at most %1 MB together, and this one would exceed that"),
                             say_number(photos_limit_bytes / 1'000'000)),
                         impl_->path.string(), say(phrase("store", "save photos smaller, or start a new logbook"))};
        added.uuid = PhotoId(new_uuid());
        added.run_uuid = run_uuid;
        added.format = format.value();
        added.file_name = photo.file_name;
        added.taken = photo.taken;
        added.added_ms = impl_->clock->now_ms();
        if (auto sound = store::check(added); !sound) return sound.error();
        store::insert_photo(database, added, *run, photo.bytes);
        return added;
    });
}

Result<std::vector<Photo>> Logbook::photos(const RunId& run_uuid) const {
    return impl_->read([&]() -> Result<std::vector<Photo>> {
        const auto run = store::run_id(impl_->database(), run_uuid);
        if (!run) return impl_->not_found(phrase("store", "the logbook has no such run"));
        return store::run_photos(impl_->database(), *run);
    });
}

Result<std::string> Logbook::photo_bytes(const PhotoId& photo_uuid) const {
    return impl_->read([&]() -> Result<std::string> {
        const auto stored = store::find_photo(impl_->database(), photo_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such photo"));
        return store::read_photo_bytes(impl_->database(), stored->id);
    });
}

Result<Photo> Logbook::set_photo_withdrawn(const PhotoId& photo_uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<Photo> {
        auto stored = store::find_photo(impl_->database(), photo_uuid);
        if (!stored) return impl_->not_found(phrase("store", "the logbook has no such photo"));
        if (stored->photo.withdrawn == withdrawn)
            return Error{Failure::refused,
                         withdrawn ? say(phrase("store", "the photo is withdrawn already")) : say(phrase("store", "the photo is not withdrawn")),
                         {},
                         {}};
        stored->photo.withdrawn = withdrawn;
        ++stored->photo.version;
        store::insert_photo_version(impl_->database(), *stored, impl_->clock->now_ms());
        return stored->photo;
    });
}

} // namespace ullage
