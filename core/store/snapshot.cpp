// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/snapshot.h"

#include "base/ids.h"
#include "model/photo.h"
#include "model/pv_sheet.h"
#include "model/reading.h"
#include "model/run.h"
#include "store/file_access.h"
#include "store/file_header.h"
#include "store/migrations.h"
#include "store/rows.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <cstring>
#include <fstream>
#include <iterator>
#include <string>
#include <tuple>
#include <vector>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

struct SqliteFree {
    void operator()(unsigned char* bytes) const { sqlite3_free(bytes); }
};

/// The bytes of a database file, in memory of SQLite's own so that it can take them over.
struct Image {
    std::unique_ptr<unsigned char, SqliteFree> bytes;
    std::size_t size = 0;
};

Error unreadable(const fs::path& path) {
    return {Failure::io, "the file cannot be read to its end", path.string(),
            "check the disk, or take a copy of the file"};
}

Error damaged(const fs::path& path, const std::string& detail) {
    return {Failure::damaged, "the logbook is damaged (" + detail + ")", path.string(),
            "restore it from a copy; nothing was changed"};
}

Result<Image> image_of(const SharedFile& file, const fs::path& path) {
    Image image{std::unique_ptr<unsigned char, SqliteFree>(
                    static_cast<unsigned char*>(sqlite3_malloc64(file.size()))),
                file.size()};
    if (!image.bytes) return Error{Failure::io, "the file is too large for the memory", path.string(), {}};
    if (!file.read(image.bytes.get(), image.size)) return unreadable(path);
    return image;
}

std::vector<fs::path> side_files(const fs::path& path) {
    std::vector<fs::path> found;
    for (const char* ending : {"-wal", "-journal"}) {
        const fs::path side = path.string() + ending;
        std::error_code code;
        if (fs::file_size(side, code) > 0 && !code) found.push_back(side);
    }
    return found;
}

/// A private folder for one recovery.
class Workshop {
public:
    Workshop() : folder_(fs::temp_directory_path() / ("ullage-" + new_uuid())) {
        fs::create_directory(folder_);
        fs::permissions(folder_, fs::perms::owner_all);
    }
    ~Workshop() {
        std::error_code ignored;
        fs::remove_all(folder_, ignored);
    }
    Workshop(const Workshop&) = delete;
    Workshop& operator=(const Workshop&) = delete;
    [[nodiscard]] fs::path file(const std::string& ending = {}) const {
        return folder_ / ("logbook" + ending);
    }

private:
    fs::path folder_;
};

/// What the file will say once SQLite has taken in the side files of a crashed writer; tried out on a copy.
Result<Image> recovered(const Image& image, const std::vector<fs::path>& sides, const fs::path& path) {
    try {
        const Workshop workshop;
        std::ofstream out(workshop.file(), std::ios::binary);
        out.write(reinterpret_cast<const char*>(image.bytes.get()), static_cast<std::streamsize>(image.size));
        if (!out.flush())
            return Error{Failure::io, "there is no room for a temporary copy of the logbook",
                         workshop.file().string(), "free space there, then open the logbook again"};
        out.close();
        for (const fs::path& side : sides)
            fs::copy_file(side, workshop.file(side.string().substr(path.string().size())));
        {
            SQLite::Database copy(workshop.file().string(), SQLite::OPEN_READWRITE);
            copy.exec("PRAGMA journal_mode = DELETE");
        }
        auto file = SharedFile::open(workshop.file());
        if (!file) return file.error();
        return image_of(file.value(), path);
    } catch (const fs::filesystem_error& error) {
        return Error{Failure::io, std::string("a temporary copy of the logbook failed: ") + error.what(),
                     path.string(), "check the space and permissions of the temporary folder"};
    }
}

std::unique_ptr<SQLite::Database> in_memory(Image image) {
    // A database in memory has no write-ahead log; these two bytes say which kind of journal the file asks
    // for.
    image.bytes.get()[18] = image.bytes.get()[19] = 1;
    auto database =
        std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    const auto size = static_cast<sqlite3_int64>(image.size);
    database->check(sqlite3_deserialize(database->getHandle(), "main", image.bytes.release(), size, size,
                                        SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE));
    return database;
}

using SchemaEntry = std::tuple<std::string, std::string, std::string>;

std::vector<SchemaEntry> schema_of(SQLite::Database& database) {
    std::vector<SchemaEntry> entries;
    SQLite::Statement query(database, "SELECT type, name, coalesce(sql, '') FROM sqlite_master "
                                      "WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\' ORDER BY type, name");
    while (query.executeStep())
        entries.emplace_back(query.getColumn(0).getString(), query.getColumn(1).getString(),
                             query.getColumn(2).getString());
    return entries;
}

std::vector<SchemaEntry> schema_at(int version) {
    SQLite::Database fresh(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    migrate(fresh, version);
    return schema_of(fresh);
}

/// Of a file that holds them already: the sheets' choices are known ones.
Result<void> check_pv_sheets(SQLite::Database& database, const fs::path& path) {
    if (!database.tableExists("pv_sheets")) return {};
    SQLite::Statement unknown(database, "SELECT 1 FROM pv_sheets WHERE max(coalesce(voc_per_c_unit, 1), coalesce(vmp_per_c_unit, 1), "
                                        "coalesce(power_per_c_unit, 1)) > ?1 UNION ALL SELECT 1 FROM runs WHERE charge_source > ?2");
    Binder(unknown).integer(static_cast<int>(PvPerDegree::milli)).integer(static_cast<int>(*std::prev(std::end(all_charge_sources))));
    if (unknown.executeStep()) return damaged(path, "a PV sheet or the source of a charge is of an unknown kind");
    return {};
}

Result<void> check_content(SQLite::Database& database, const fs::path& path) {
    const std::string finding = database.execAndGet("PRAGMA quick_check(1)").getString();
    if (finding != "ok") return damaged(path, finding);
    // The write-ahead log may have brought another version than the header of the file.
    const std::int64_t version = database.execAndGet("PRAGMA user_version").getInt64();
    if (version > newest_version()) return newer_version_error(version, path);
    if (version < 1) return damaged(path, "it has no version");
    if (schema_of(database) != schema_at(static_cast<int>(version)))
        return damaged(path, "its tables are not those of version " + std::to_string(version));
    SQLite::Statement orphans(database, "PRAGMA foreign_key_check");
    if (orphans.executeStep())
        return damaged(path, "a row of " + orphans.getColumn(0).getString() + " has lost its owner");
    SQLite::Statement unknown(database, "SELECT 1 FROM runs WHERE kind > ?1 OR ended > ?2 "
                                        "UNION ALL SELECT 1 FROM reading_versions WHERE mark > ?3");
    Binder(unknown)
        .integer(static_cast<int>(*std::prev(std::end(all_run_kinds))))
        .integer(static_cast<int>(*std::prev(std::end(all_run_ends))))
        .integer(static_cast<int>(*std::prev(std::end(all_mark_kinds))));
    if (unknown.executeStep()) return damaged(path, "a run or a mark is of an unknown kind");
    if (Result<void> sheets = check_pv_sheets(database, path); !sheets) return sheets;
    if (version < 3) return {};
    SQLite::Statement photos(database, "SELECT 1 FROM photos WHERE format > ?1");
    Binder(photos).integer(static_cast<int>(PhotoFormat::png));
    if (photos.executeStep()) return damaged(path, "a photo is of an unknown kind");
    return {};
}

Result<std::unique_ptr<SQLite::Database>> checked(Image image, const fs::path& path) {
    try {
        auto database = in_memory(std::move(image));
        if (auto sound = check_content(*database, path); !sound) return sound.error();
        return database;
    } catch (const SQLite::Exception& error) {
        // Nothing but the file's own content can fail here.
        if (error.getErrorCode() == SQLITE_NOMEM) throw;
        return damaged(path, error.what());
    }
}

/// The file, opened and of a kind that this program can check.
Result<SharedFile> known_file(const fs::path& path) {
    if (FileClaim::exists(path)) return in_use_error(path);
    auto file = SharedFile::open(path);
    if (!file) return file;

    std::array<unsigned char, header_bytes> head{};
    const std::size_t length = std::min(head.size(), file.value().size());
    if (!file.value().read(head.data(), length)) return unreadable(path);
    if (auto known = check_header({head.data(), length}, path); !known) return known.error();
    return file;
}

Result<std::unique_ptr<SQLite::Database>> snapshot_of(const SharedFile& file, const fs::path& path) {
    auto image = image_of(file, path);
    if (!image) return image.error();
    if (const auto sides = side_files(path); !sides.empty()) {
        try {
            image = recovered(image.value(), sides, path);
        } catch (const SQLite::Exception& error) {
            if (const int code = error.getErrorCode(); code == SQLITE_CORRUPT || code == SQLITE_NOTADB)
                return damaged(path, error.what());
            throw;
        }
        if (!image) return image.error();
        if (image.value().size < header_bytes) return damaged(path, "nothing is left of it");
    }
    return checked(std::move(image).value(), path);
}

/// The file as an address that lets SQLite neither write nor lock nor look for side files (SQLite, "Uniform Resource
/// Identifiers", 3.3).
std::string resting_address(const fs::path& path) {
    std::string address = "file://";
    for (const char letter : fs::absolute(path).string()) {
        if (letter == '?' || letter == '#' || letter == '%')
            address += letter == '?' ? "%3f" : letter == '#' ? "%23" : "%25";
        else
            address += letter;
    }
    return address + "?immutable=1";
}

} // namespace

Result<void> check_logbook(const fs::path& path) {
    auto file = known_file(path);
    if (!file) return file.error();
    if (!side_files(path).empty()) {
        const auto snapshot = snapshot_of(file.value(), path);
        return snapshot ? Result<void>() : Result<void>(snapshot.error());
    }
    try {
        SQLite::Database resting(resting_address(path), SQLite::OPEN_READONLY | SQLite::OPEN_URI);
        return check_content(resting, path);
    } catch (const SQLite::Exception& error) {
        switch (error.getErrorCode()) {
        case SQLITE_NOMEM: throw;
        case SQLITE_IOERR:
        case SQLITE_CANTOPEN: return unreadable(path);
        default: return damaged(path, error.what());
        }
    }
}

Result<std::unique_ptr<SQLite::Database>> checked_snapshot(const fs::path& path) {
    auto file = known_file(path);
    if (!file) return file.error();
    return snapshot_of(file.value(), path);
}

} // namespace ullage::store
