// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room store.
#pragma once

#include "base/result.h"

#include <atomic>
#include <condition_variable>
#include <filesystem>
#include <mutex>
#include <thread>

namespace SQLite {
class Database;
}

namespace ullage::store {

/// While it lives, what the database is at ends with SQLITE_INTERRUPT soon after `*cancelled` is set, be it a statement of many rows or the check of
/// the pages, which asks no progress handler before SQLite 3.42. What an interrupted check has found by then means nothing. Without `cancelled` it
/// does nothing.
class Interruption {
public:
    Interruption(SQLite::Database& database, const std::atomic<bool>* cancelled);
    ~Interruption() = default;
    Interruption(const Interruption&) = delete;
    Interruption& operator=(const Interruption&) = delete;

private:
    std::mutex mutex_;
    std::condition_variable_any ended_;
    std::jthread watcher_; ///< last, so that it ends before what it waits by
};

[[nodiscard]] inline bool is_set(const std::atomic<bool>* cancelled) { return cancelled && *cancelled; }

/// What an opening that was cancelled gives: refused.
[[nodiscard]] Error opening_cancelled_error(const std::filesystem::path& path);

} // namespace ullage::store
