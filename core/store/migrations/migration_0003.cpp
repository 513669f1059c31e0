// SPDX-License-Identifier: GPL-3.0-or-later
// Step 3: photos as evidence for readings. What came in stands in `photos`, its bytes apart so that a list need not pass
// over them; which reading it belongs to and whether it is withdrawn are versions.
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>

namespace ullage::store {

namespace {

constexpr const char* photos = R"sql(
CREATE TABLE photos (
    id INTEGER PRIMARY KEY,
    uuid TEXT NOT NULL UNIQUE CHECK (uuid <> ''),
    run_id INTEGER NOT NULL REFERENCES runs (id),
    format INTEGER NOT NULL CHECK (format >= 1),
    file_name TEXT NOT NULL,
    size_bytes INTEGER NOT NULL CHECK (size_bytes > 0),
    taken_ms INTEGER,
    zone_assumed INTEGER NOT NULL CHECK (zone_assumed IN (0, 1)),
    added_ms INTEGER NOT NULL
) STRICT;
CREATE INDEX photos_by_run ON photos (run_id);

CREATE TABLE photo_bytes (
    photo_id INTEGER PRIMARY KEY REFERENCES photos (id),
    bytes BLOB NOT NULL
) STRICT;

CREATE TABLE photo_versions (
    photo_id INTEGER NOT NULL REFERENCES photos (id),
    version INTEGER NOT NULL,
    reading_id INTEGER REFERENCES readings (id),
    withdrawn INTEGER NOT NULL CHECK (withdrawn IN (0, 1)),
    written_ms INTEGER NOT NULL,
    PRIMARY KEY (photo_id, version)
) STRICT, WITHOUT ROWID;

CREATE VIEW current_photos AS
SELECT photos.id, photos.uuid, photos.run_id, photos.format, photos.file_name, photos.size_bytes, photos.taken_ms,
       photos.zone_assumed, photos.added_ms, versions.version, versions.reading_id, versions.withdrawn
FROM photos JOIN photo_versions AS versions ON versions.photo_id = photos.id
WHERE versions.version = (SELECT max(version) FROM photo_versions WHERE photo_id = photos.id);
)sql";

// As for readings: any program that opens the file is bound by these.
constexpr const char* photos_only_growing = R"sql(
CREATE TRIGGER photos_are_not_updated BEFORE UPDATE ON photos
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END;

CREATE TRIGGER photos_are_not_deleted BEFORE DELETE ON photos
BEGIN SELECT RAISE(ABORT, 'a photo is never deleted'); END;

CREATE TRIGGER photos_are_not_replaced BEFORE INSERT ON photos
WHEN EXISTS (SELECT 1 FROM photos WHERE id = NEW.id OR uuid = NEW.uuid)
BEGIN SELECT RAISE(ABORT, 'a photo is added beside the others'); END;

CREATE TRIGGER photo_bytes_are_not_updated BEFORE UPDATE ON photo_bytes
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END;

CREATE TRIGGER photo_bytes_are_not_deleted BEFORE DELETE ON photo_bytes
BEGIN SELECT RAISE(ABORT, 'a photo is never deleted'); END;

CREATE TRIGGER photo_bytes_are_not_replaced BEFORE INSERT ON photo_bytes
WHEN EXISTS (SELECT 1 FROM photo_bytes WHERE photo_id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a photo is never changed'); END;

CREATE TRIGGER photo_versions_are_not_updated BEFORE UPDATE ON photo_versions
BEGIN SELECT RAISE(ABORT, 'a version of a photo is never changed'); END;

CREATE TRIGGER photo_versions_are_not_deleted BEFORE DELETE ON photo_versions
BEGIN SELECT RAISE(ABORT, 'a version of a photo is never deleted'); END;

CREATE TRIGGER photo_versions_are_not_replaced BEFORE INSERT ON photo_versions
WHEN NEW.version <> (SELECT coalesce(max(version), 0) + 1 FROM photo_versions WHERE photo_id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a version of a photo is added after its earlier ones'); END;

CREATE TRIGGER photos_stay_with_their_reading BEFORE INSERT ON photo_versions
WHEN EXISTS (SELECT 1 FROM photo_versions WHERE photo_id = NEW.photo_id AND reading_id IS NOT NULL
                                            AND reading_id IS NOT NEW.reading_id)
BEGIN SELECT RAISE(ABORT, 'a photo stays with its reading'); END;

CREATE TRIGGER photos_stay_in_their_run BEFORE INSERT ON photo_versions
WHEN NEW.reading_id IS NOT NULL AND (SELECT run_id FROM readings WHERE id = NEW.reading_id)
                             IS NOT (SELECT run_id FROM photos WHERE id = NEW.photo_id)
BEGIN SELECT RAISE(ABORT, 'a photo belongs to a reading of its own run'); END;
)sql";

} // namespace

void migration_0003(SQLite::Database& database) {
    database.exec(photos);
    database.exec(photos_only_growing);
}

} // namespace ullage::store
