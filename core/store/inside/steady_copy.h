// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"
#include "store/inside/file_access.h"
#include "store/inside/file_state.h"

#include <atomic>
#include <filesystem>
#include <memory>
#include <optional>
#include <string>

namespace ullage::store {

struct SqliteFree {
    void operator()(unsigned char* bytes) const;
};

/// The bytes of a database file, in memory of SQLite's own so that it can take them over.
struct Image {
    std::unique_ptr<unsigned char, SqliteFree> bytes;
    std::size_t size = 0;
};

/// The first `size` bytes of a file. Error: io.
[[nodiscard]] Result<Image> image_of(const SharedFile& file, std::size_t size, const std::filesystem::path& path);

/// The write-ahead log beside a logbook, where it has one.
[[nodiscard]] std::filesystem::path write_ahead_log(const std::filesystem::path& path);

/// A logbook's two files as somebody saw them.
struct LookedAt {
    FileState file;
    std::optional<FileState> log; ///< the write-ahead log; absent without one
};

/// A logbook that somebody records into, as it stood at one moment.
struct SteadyCopy {
    Image image;
    std::string log; ///< the bytes of the write-ahead log: what is recorded and not yet in the file; empty where all is
    LookedAt seen;
};

/// Copies both files in a SettlingPause. Until it ends the file stays as it is and the log only grows, so that the file with any beginning of the log
/// is what SQLite itself would find after a crash: a state that was once committed. That neither changed otherwise is looked at afterwards, by times
/// and by the head of the log, since a recorder passes over a pause that lasts for a minute.
///
/// Errors: in_use where it never rests; io; refused soon after `*cancelled` is set.
[[nodiscard]] Result<SteadyCopy> steady_copy(const SharedFile& file, const std::filesystem::path& path, const std::atomic<bool>* cancelled);

[[nodiscard]] Error unreadable_error(const std::filesystem::path& path);

} // namespace ullage::store
