// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/snapshot.h"

#include "base/work_folder.h"
#include "store/inside/content_check.h"
#include "store/inside/descriptor_locks.h"
#include "store/inside/file_access.h"
#include "store/inside/file_header.h"
#include "store/inside/interruption.h"
#include "store/inside/sound_files.h"
#include "store/inside/steady_copy.h"
#include "store/migrations/migrations.h"

#include <SQLiteCpp/Database.h>
#include <SQLiteCpp/Statement.h>
#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <fstream>
#include <functional>
#include <span>
#include <string>
#include <vector>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

std::vector<fs::path> side_files(const fs::path& path) {
    std::vector<fs::path> found;
    for (const char* ending : {"-wal", "-journal"}) {
        const fs::path side = path.string() + ending;
        std::error_code code;
        if (fs::file_size(side, code) > 0 && !code) found.push_back(side);
    }
    return found;
}

/// Puts what lies beside a logbook beside a copy of it.
using PutSides = std::function<void(const fs::path& copied)>;

/// What the file says once SQLite has taken in what lies beside it; tried out on a copy.
Result<Image> recovered(const Image& image, const PutSides& put_sides, const fs::path& path) {
    try {
        const Result<WorkFolder> workshop = WorkFolder::make(fs::temp_directory_path());
        if (!workshop) return workshop.error();
        const fs::path copied = workshop.value() / "logbook";
        std::ofstream out(copied, std::ios::binary);
        out.write(reinterpret_cast<const char*>(image.bytes.get()), static_cast<std::streamsize>(image.size));
        if (!out.flush())
            return Error{Failure::io, say(phrase("store", "there is no room for a temporary copy of the logbook")), copied.string(),
                         say(phrase("store", "free space there, then open the logbook again"))};
        out.close();
        put_sides(copied);
        {
            SQLite::Database copy(copied.string(), SQLite::OPEN_READWRITE);
            copy.exec("PRAGMA journal_mode = DELETE");
        }
        auto file = SharedFile::open(copied);
        if (!file) return file.error();
        return image_of(file.value(), file.value().size(), path);
    } catch (const fs::filesystem_error& error) {
        return Error{Failure::io, say(phrase("store", "a temporary copy of the logbook failed: %1"), error.what()), path.string(),
                     say(phrase("store", "check the space and permissions of the temporary folder"))};
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
        if (sides.empty() && !file.recorded()) remember_sound(file.state(), counter);
    }
};

Result<KnownFile> known_file(const fs::path& path, WhileRecorded recorded) {
    auto file = SharedFile::open(path, recorded);
    if (!file) return file.error();
    std::array<unsigned char, header_bytes> head{};
    const std::size_t length = std::min(head.size(), file.value().size());
    if (!file.value().read(head.data(), length)) return unreadable_error(path);
    if (auto known = check_header({head.data(), length}, path); !known) return known.error();
    KnownFile known{std::move(file).value(), change_counter(head), side_files(path), false};
    known.sound = known.sides.empty() && !known.file.recorded() && known_sound(known.file.state(), known.counter);
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
        if (error.getErrorCode() == SQLITE_IOERR || error.getErrorCode() == SQLITE_CANTOPEN) return unreadable_error(path);
        return damaged_error(path, error.what());
    }
}

/// The file's bytes with all that is committed beside them.
struct Present {
    Image image;
    LookedAt seen; ///< only of a file that somebody records into
};

Result<Present> present_image(const KnownFile& known, const fs::path& path, const std::atomic<bool>* cancelled) {
    Present present;
    PutSides put_sides;
    if (known.file.recorded()) {
        auto copy = steady_copy(known.file, path, cancelled);
        if (!copy) return copy.error();
        present.image = std::move(copy.value().image);
        present.seen = copy.value().seen;
        if (copy.value().log.empty()) return present;
        put_sides = [log = std::move(copy.value().log)](const fs::path& copied) {
            std::ofstream(copied.string() + "-wal", std::ios::binary).write(log.data(), static_cast<std::streamsize>(log.size()));
        };
    } else {
        auto image = image_of(known.file, known.file.size(), path);
        if (!image) return image.error();
        present.image = std::move(image).value();
        if (known.sides.empty()) return present;
        put_sides = [&](const fs::path& copied) {
            for (const fs::path& side : known.sides) fs::copy_file(side, copied.string() + side.string().substr(path.string().size()));
        };
    }
    auto whole = content_only(path, cancelled, [&] { return recovered(present.image, put_sides, path); });
    if (!whole) return whole.error();
    if (whole.value().size < header_bytes) return damaged_error(path, say(phrase("store", "nothing is left of it")));
    present.image = std::move(whole).value();
    return present;
}

Result<CheckedCopy> checked_copy(Present present, const KnownFile& known, const fs::path& path, const Clock& clock,
                                 const std::atomic<bool>* cancelled) {
    const double start_s = clock.running_s();
    auto checked = content_only(path, cancelled, [&]() -> Result<CheckedCopy> {
        CheckedCopy copy{in_memory(std::move(present.image)), {}, known.file.recorded(), present.seen};
        const Interruption interruption(*copy.database, cancelled);
        harden(*copy.database);
        if (auto schema = check_schema(*copy.database, path); !schema) return schema.error();
        if (!known.sound)
            if (auto structure = check_structure(*copy.database, path); !structure) return structure.error();
        migrate(*copy.database, newest_version());
        if (known.sound) return copy;
        if (auto values = check_values(*copy.database, path); !values) return values.error();
        copy.check = {true, clock.running_s() - start_s};
        return copy;
    });
    if (checked && checked.value().check.full) known.remember();
    return checked;
}

} // namespace

std::string resting_address(const fs::path& path) {
    std::string address = "file://";
    for (const char letter : fs::absolute(path).string()) {
        if (letter == '?' || letter == '#' || letter == '%') address += letter == '?' ? "%3f" : letter == '#' ? "%23" : "%25";
        else address += letter;
    }
    return address + "?immutable=1";
}

Result<CheckedFile> check_logbook(const fs::path& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    hold_locks_by_descriptor();
    auto known = known_file(path, WhileRecorded::refused);
    if (!known) return known.error();
    CheckedFile checked{known.value().file.state(), !known.value().sides.empty(), {}};
    const auto in_copy = [&]() -> Result<CheckedFile> {
        auto present = present_image(known.value(), path, cancelled);
        if (!present) return present.error();
        const auto copy = checked_copy(std::move(present).value(), known.value(), path, clock, cancelled);
        if (!copy) return copy.error();
        checked.check = copy.value().check;
        return checked;
    };
    if (checked.left_open) return in_copy();
    const double start_s = clock.running_s();
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
        checked.check = {true, clock.running_s() - start_s};
        known.value().remember();
    }
    return checked;
}

Result<CheckedCopy> checked_snapshot(const fs::path& path, const Clock& clock, const std::atomic<bool>* cancelled) {
    hold_locks_by_descriptor();
    auto known = known_file(path, WhileRecorded::opened);
    if (!known) return known.error();
    auto present = present_image(known.value(), path, cancelled);
    if (!present) return present.error();
    if (!known.value().file.recorded()) present.value().seen = {known.value().file.state(), state_of(write_ahead_log(path))};
    known.value().file.close(); // nobody who wants to record waits for the checks
    return checked_copy(std::move(present).value(), known.value(), path, clock, cancelled);
}

} // namespace ullage::store
