// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/interruption.h"

#include <SQLiteCpp/Database.h>
#include <sqlite3.h>

#include <chrono>
#include <stop_token>

namespace ullage::store {

Interruption::Interruption(SQLite::Database& database, const std::atomic<bool>* cancelled) {
    if (!cancelled) return;
    watcher_ = std::jthread([this, handle = database.getHandle(), cancelled](const std::stop_token& over) {
        constexpr auto look_every = std::chrono::milliseconds(20);
        std::unique_lock lock(mutex_);
        // Again and again: between two statements it is not heeded.
        while (!ended_.wait_for(lock, over, look_every, [&over] { return over.stop_requested(); }))
            if (*cancelled) sqlite3_interrupt(handle);
    });
}

Error opening_cancelled_error(const std::filesystem::path& path) {
    return {Failure::refused, say(phrase("store", "opening it was cancelled")), path.string(), {}};
}

} // namespace ullage::store
