// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store. All functions throw SQLite::Exception.
#pragma once

#include "model/photo.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace SQLite {
class Database;
}

namespace ullage::store {

struct StoredPhoto {
    std::int64_t id = 0;
    Photo photo;
};

/// The photo as it stands, without its bytes.
[[nodiscard]] std::optional<StoredPhoto> find_photo(SQLite::Database& database, const PhotoId& uuid);
/// All photos of a run as they stand, in order of adding.
[[nodiscard]] std::vector<Photo> run_photos(SQLite::Database& database, std::int64_t run_id);
/// Adds a photo with its bytes; what it says now becomes version 1. Call it within a transaction.
void insert_photo(SQLite::Database& database, const Photo& photo, std::int64_t run_id, const std::string& bytes);
/// Adds what `stored` now says as its version `version`. Precondition: its reading is in the logbook.
void insert_photo_version(SQLite::Database& database, const StoredPhoto& stored, UtcMs written_ms);

[[nodiscard]] std::string read_photo_bytes(SQLite::Database& database, std::int64_t photo_id);
/// Of all photos, withdrawn ones too.
[[nodiscard]] std::int64_t all_photos_bytes(SQLite::Database& database);

} // namespace ullage::store
