// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/snapshot.h"

#include "base/work_folder.h"
#include "store/inside/content_check.h"
#include "store/inside/descriptor_locks.h"
#include "store/inside/file_access.h"
#include "store/inside/file_header.h"
#include "store/inside/interruption.h"
#include "store/inside/sound_files.h"
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <chrono>
#include <fstream>
#include <span>
#include <string>
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
    return {Failure::io, "the file cannot be read to its end", path.string(), "check the disk, or take a copy of the file"};
}

Result<Image> image_of(const SharedFile& file, const fs::path& path) {
    Image image{std::unique_ptr<unsigned char, SqliteFree>(static_cast<unsigned char*>(sqlite3_malloc64(file.size()))), file.size()};
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

/// What the file will say once SQLite has taken in the side files of a crashed writer; tried out on a copy.
Result<Image> recovered(const Image& image, const std::vector<fs::path>& sides, const fs::path& path) {
    try {
        const Result<WorkFolder> workshop = WorkFolder::make(fs::temp_directory_path());
        if (!workshop) return workshop.error();
        const fs::path copied = workshop.value() / "logbook";
        std::ofstream out(copied, std::ios::binary);
        out.write(reinterpret_cast<const char*>(image.bytes.get()), static_cast<std::streamsize>(image.size));
        if (!out.flush())
            return Error{Failure::io, "there is no room for a temporary copy of the logbook", copied.string(),
                         "free space there, then open the logbook again"};
        out.close();
        for (const fs::path& side : sides) fs::copy_file(side, copied.string() + side.string().substr(path.string().size()));
        {
            SQLite::Database copy(copied.string(), SQLite::OPEN_READWRITE);
            copy.exec("PRAGMA journal_mode = DELETE");
        }
        auto file = SharedFile::open(copied);
        if (!file) return file.error();
        return image_of(file.value(), path);
    } catch (const fs::filesystem_error& error) {
        return Error{Failure::io, std::string("a temporary copy of the logbook failed: ") + error.what(), path.string(),
                     "check the space and permissions of the temporary folder"};
    }
}

std::unique_ptr<SQLite::Database> in_memory(Image image) {
    // A database in memory has no write-ahead log; these two bytes say which kind of journal the file asks
    // for.
    image.bytes.get()[18] = image.bytes.get()[19] = 1;
    auto database = std::make_unique<SQLite::Database>(":memory:", SQLite::OPEN_READWRITE | SQLite::OPEN_CREATE);
    const auto size = static_cast<sqlite3_int64>(image.size);
    database->check(sqlite3_deserialize(database->getHandle(), "main", image.bytes.release(), size, size,
                                        SQLITE_DESERIALIZE_FREEONCLOSE | SQLITE_DESERIALIZE_RESIZEABLE));
    return database;
}

/// A file of a kind that this program can check, and what is known of it already.
struct KnownFile {
    SharedFile file;
    std::uint32_t counter = 0;
    std::vector<fs::path> sides;
    bool sound = false; ///< closed properly, and found sound as it is now

    void remember() const {
        if (sides.empty()) remember_sound(file.state(), counter);
    }
};

Result<KnownFile> known_file(const fs::path& path) {
    auto file = SharedFile::open(path);
    if (!file) return file.error();
    std::array<unsigned char, header_bytes> head{};
    const std::size_t length = std::min(head.size(), file.value().size());
    if (!file.value().read(head.data(), length)) return unreadable(path);
    if (auto known = check_header({head.data(), length}, path); !known) return known.error();
    KnownFile known{std::move(file).value(), change_counter(head), side_files(path), false};
    known.sound = known.sides.empty() && known_sound(known.file.state(), known.counter);
    return known;
}

/// Runs a check in which nothing but the file's own content can fail, unless it is cancelled.
template <class Check>
auto content_only(const fs::path& path, const std::atomic<bool>* cancelled, Check check) -> decltype(check()) {
    try {
        auto found = check();
        // What was interrupted may say anything.
        if (is_set(cancelled)) return opening_cancelled_error(path);
        return found;
    } catch (const SQLite::Exception& error) {
        if (is_set(cancelled)) return opening_cancelled_error(path);
        if (error.getErrorCode() == SQLITE_NOMEM) throw;
        if (error.getErrorCode() == SQLITE_IOERR || error.getErrorCode() == SQLITE_CANTOPEN) return unreadable(path);
        return damaged_error(path, error.what());
    }
}

double seconds_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double>(std::chrono::steady_clock::now() - start).count();
}

Result<CheckedCopy> copy_of(const KnownFile& known, const fs::path& path, const std::atomic<bool>* cancelled) {
    const auto start = std::chrono::steady_clock::now();
    auto image = image_of(known.file, path);
    if (!image) return image.error();
    if (!known.sides.empty()) {
        image = content_only(path, cancelled, [&] { return recovered(image.value(), known.sides, path); });
        if (!image) return image.error();
        if (image.value().size < header_bytes) return damaged_error(path, "nothing is left of it");
    }
    auto checked = content_only(path, cancelled, [&]() -> Result<CheckedCopy> {
        CheckedCopy copy{in_memory(std::move(image).value()), {}};
        const Interruption interruption(*copy.database, cancelled);
        harden(*copy.database);
        if (auto schema = check_schema(*copy.database, path); !schema) return schema.error();
        if (!known.sound)
            if (auto structure = check_structure(*copy.database, path); !structure) return structure.error();
        migrate(*copy.database, newest_version());
        if (known.sound) return copy;
        if (auto values = check_values(*copy.database, path); !values) return values.error();
        copy.check = {true, seconds_since(start)};
        return copy;
    });
    if (checked && checked.value().check.full) known.remember();
    return checked;
}

/// The file as an address that lets SQLite neither write nor lock nor look for side files (SQLite, "Uniform Resource
/// Identifiers", 3.3).
std::string resting_address(const fs::path& path) {
    std::string address = "file://";
    for (const char letter : fs::absolute(path).string()) {
        if (letter == '?' || letter == '#' || letter == '%') address += letter == '?' ? "%3f" : letter == '#' ? "%23" : "%25";
        else address += letter;
    }
    return address + "?immutable=1";
}

} // namespace

Result<CheckedFile> check_logbook(const fs::path& path, const std::atomic<bool>* cancelled) {
    hold_locks_by_descriptor();
    auto known = known_file(path);
    if (!known) return known.error();
    CheckedFile checked{known.value().file.state(), !known.value().sides.empty(), {}};
    const auto in_copy = [&]() -> Result<CheckedFile> {
        auto copy = copy_of(known.value(), path, cancelled);
        if (!copy) return copy.error();
        checked.check = copy.value().check;
        return checked;
    };
    if (checked.left_open) return in_copy();
    const auto start = std::chrono::steady_clock::now();
    bool older = false;
    auto sound = content_only(path, cancelled, [&]() -> Result<void> {
        SQLite::Database resting(resting_address(path), SQLite::OPEN_READONLY | SQLite::OPEN_URI);
        const Interruption interruption(resting, cancelled);
        harden(resting);
        if (auto schema = check_schema(resting, path); !schema) return schema;
        older = resting.execAndGet("PRAGMA user_version").getInt() < newest_version();
        if (known.value().sound || older) return {};
        if (auto structure = check_structure(resting, path); !structure) return structure;
        return check_values(resting, path);
    });
    if (!sound) return sound.error();
    // The values of an older one can be read only once it is migrated, which a file that may be refused must not be.
    if (older) return in_copy();
    if (!known.value().sound) {
        checked.check = {true, seconds_since(start)};
        known.value().remember();
    }
    return checked;
}

Result<CheckedCopy> checked_snapshot(const fs::path& path, const std::atomic<bool>* cancelled) {
    hold_locks_by_descriptor();
    auto known = known_file(path);
    if (!known) return known.error();
    return copy_of(known.value(), path, cancelled);
}

} // namespace ullage::store
