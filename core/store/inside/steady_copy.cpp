// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/steady_copy.h"

#include "store/inside/descriptor_locks.h"
#include "store/inside/interruption.h"

#include <sqlite3.h>

#include <algorithm>
#include <chrono>
#include <cstdlib>
#include <fstream>
#include <thread>

namespace ullage::store {

namespace {

namespace fs = std::filesystem;

// SQLite, "Write-Ahead Log File Format" ("Database File Format", 4.1): the header with the salts that each new log changes.
constexpr std::size_t log_header_bytes = 32;
// Times of files move in steps of the system's tick, 10 ms at most: what changed within one could change again unseen.
constexpr std::int64_t unsure_ns = 20'000'000;

bool at_rest(const FileState& state) {
    const auto now_ns = std::chrono::duration_cast<std::chrono::nanoseconds>(std::chrono::system_clock::now().time_since_epoch()).count();
    return std::abs(now_ns - state.modified_ns) > unsure_ns; // a clock that was set back is no reason to wait for
}

/// Nothing where there is none, or it cannot be read.
std::string bytes_of(const fs::path& log, std::size_t most) {
    std::error_code code;
    const std::uintmax_t size = fs::file_size(log, code);
    if (code || size == 0) return {};
    std::string bytes(std::min<std::uintmax_t>(size, most), '\0');
    std::ifstream in(log, std::ios::binary);
    in.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    bytes.resize(static_cast<std::size_t>(in.gcount()));
    return bytes;
}

bool grew_only(const std::string& before, const fs::path& log) {
    return before.empty() || bytes_of(log, log_header_bytes) == before.substr(0, log_header_bytes);
}

/// One attempt; nothing where something moved meanwhile.
Result<std::optional<SteadyCopy>> attempt(const SharedFile& file, const fs::path& path) {
    constexpr int patience_ms = 2000; // a slow disk may take that long to settle
    constexpr auto longest_rest = std::chrono::milliseconds(100);
    const SettlingPause pause(file.descriptor(), patience_ms);
    if (!pause.held()) return std::optional<SteadyCopy>();
    const auto until = std::chrono::steady_clock::now() + longest_rest;
    auto before = state_of(file.descriptor());
    for (; before && !at_rest(*before) && std::chrono::steady_clock::now() < until; before = state_of(file.descriptor()))
        std::this_thread::sleep_for(std::chrono::milliseconds(2));
    if (!before) return unreadable_error(path);
    if (!at_rest(*before)) return std::optional<SteadyCopy>();

    const fs::path log = write_ahead_log(path);
    SteadyCopy copy;
    copy.seen = {*before, state_of(log)};
    auto image = image_of(file, static_cast<std::size_t>(before->size), path);
    copy.log = bytes_of(log, std::string().max_size());
    const bool same_log = grew_only(copy.log, log);
    const auto after = state_of(file.descriptor());
    const auto named = state_of(path);
    // The log belongs to the file of that name.
    if (after != before || !same_log || !named || !named->same_file(*before)) return std::optional<SteadyCopy>();
    if (!image) return image.error();
    copy.image = std::move(image).value();
    return std::optional(std::move(copy));
}

} // namespace

void SqliteFree::operator()(unsigned char* bytes) const { sqlite3_free(bytes); }

Error unreadable_error(const fs::path& path) {
    return {Failure::io, say(phrase("store", "the file cannot be read to its end")), path.string(),
            say(phrase("store", "check the disk, or take a copy of the file"))};
}

fs::path write_ahead_log(const fs::path& path) { return path.string() + "-wal"; }

Result<Image> image_of(const SharedFile& file, std::size_t size, const fs::path& path) {
    Image image{std::unique_ptr<unsigned char, SqliteFree>(static_cast<unsigned char*>(sqlite3_malloc64(size))), size};
    if (!image.bytes) return Error{Failure::io, say(phrase("store", "the file is too large for the memory")), path.string(), {}};
    if (!file.read(image.bytes.get(), image.size)) return unreadable_error(path);
    return image;
}

Result<SteadyCopy> steady_copy(const SharedFile& file, const fs::path& path, const std::atomic<bool>* cancelled) {
    constexpr int most_attempts = 20;
    constexpr auto between = std::chrono::milliseconds(10);
    for (int i = 0; i < most_attempts; ++i) {
        if (is_set(cancelled)) return opening_cancelled_error(path);
        auto copy = attempt(file, path);
        if (!copy) return copy.error();
        if (copy.value()) return std::move(*copy.value());
        std::this_thread::sleep_for(between);
    }
    return Error{Failure::in_use, say(phrase("store", "the logbook is open elsewhere and changes all the time")), path.string(),
                 say(phrase("store", "try again in a moment"))};
}

} // namespace ullage::store
