// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/queries/photo_queries.h"

#include "store/queries/rows.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

const std::string select_photos = "SELECT current.id, current.uuid, runs.uuid, readings.uuid, format, file_name, size_bytes, taken_ms, zone_assumed, "
                                  "added_ms, version, current.withdrawn FROM current_photos AS current JOIN runs ON runs.id = current.run_id "
                                  "LEFT JOIN readings ON readings.id = current.reading_id ";

StoredPhoto photo_in(SQLite::Statement& statement) {
    Row row(statement);
    StoredPhoto stored;
    stored.id = row.integer();
    Photo& photo = stored.photo;
    photo.uuid = row.id<PhotoId>();
    photo.run_uuid = row.id<RunId>();
    photo.reading_uuid = row.maybe_id<ReadingId>();
    photo.format = static_cast<PhotoFormat>(row.integer());
    photo.file_name = row.text();
    photo.size_bytes = row.integer();
    const auto taken_ms = row.maybe_integer();
    const bool zone_assumed = row.flag();
    if (taken_ms) photo.taken = PhotoMoment{*taken_ms, zone_assumed};
    photo.added_ms = row.integer();
    photo.version = static_cast<int>(row.integer());
    photo.withdrawn = row.flag();
    return stored;
}

} // namespace

std::optional<StoredPhoto> find_photo(SQLite::Database& database, const PhotoId& uuid) {
    SQLite::Statement query(database, select_photos + "WHERE current.uuid = ?1");
    Binder(query).id(uuid);
    if (!query.executeStep()) return std::nullopt;
    return photo_in(query);
}

std::vector<Photo> run_photos(SQLite::Database& database, std::int64_t run_id) {
    SQLite::Statement query(database, select_photos + "WHERE current.run_id = ?1 ORDER BY current.id");
    Binder(query).integer(run_id);
    std::vector<Photo> photos;
    while (query.executeStep()) photos.push_back(photo_in(query).photo);
    return photos;
}

void insert_photo(SQLite::Database& database, const Photo& photo, std::int64_t run_id, const std::string& bytes) {
    SQLite::Statement insert(database, "INSERT INTO photos (uuid, run_id, format, file_name, size_bytes, taken_ms, "
                                       "zone_assumed, added_ms) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8)");
    std::optional<std::int64_t> taken_ms;
    if (photo.taken) taken_ms = photo.taken->time_ms;
    Binder binder(insert);
    binder.id(photo.uuid).integer(run_id).integer(static_cast<std::int64_t>(photo.format)).text(photo.file_name);
    binder.integer(photo.size_bytes).integer(taken_ms).integer(photo.taken && photo.taken->zone_assumed).integer(photo.added_ms);
    insert.exec();
    const std::int64_t id = database.getLastInsertRowid();
    SQLite::Statement content(database, "INSERT INTO photo_bytes (photo_id, bytes) VALUES (?1, ?2)");
    Binder(content).integer(id).blob(bytes);
    content.exec();
    insert_photo_version(database, {id, photo}, photo.added_ms);
}

void insert_photo_version(SQLite::Database& database, const StoredPhoto& stored, UtcMs written_ms) {
    SQLite::Statement insert(database, "INSERT INTO photo_versions (photo_id, version, reading_id, withdrawn, written_ms) "
                                       "VALUES (?1, ?2, (SELECT id FROM readings WHERE uuid = ?3), ?4, ?5)");
    Binder(insert)
        .integer(stored.id)
        .integer(stored.photo.version)
        .id(stored.photo.reading_uuid.value_or(ReadingId()))
        .integer(stored.photo.withdrawn)
        .integer(written_ms);
    insert.exec();
}

std::string read_photo_bytes(SQLite::Database& database, std::int64_t photo_id) {
    SQLite::Statement query(database, "SELECT bytes FROM photo_bytes WHERE photo_id = ?1");
    Binder(query).integer(photo_id);
    return query.executeStep() ? Row(query).text() : std::string();
}

std::int64_t all_photos_bytes(SQLite::Database& database) {
    return database.execAndGet("SELECT coalesce(sum(size_bytes), 0) FROM photos").getInt64();
}

} // namespace ullage::store
