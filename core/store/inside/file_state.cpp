// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/file_state.h"

#include <sys/stat.h>

namespace ullage::store {

namespace {

std::int64_t nanoseconds(const struct timespec& time) { return static_cast<std::int64_t>(time.tv_sec) * 1'000'000'000 + time.tv_nsec; }

FileState from(const struct stat& status) {
    return {status.st_dev, status.st_ino, status.st_size, nanoseconds(status.st_mtim), nanoseconds(status.st_ctim), status.st_nlink};
}

Error displaced(const Message& what, const std::filesystem::path& path) {
    return {Failure::displaced, say_joined({what, say(phrase("store", "nothing more is recorded"))}, "; "), path.string(),
            say(phrase("store", "save the open logbook under another name and go on there; what you entered stays in its fields"))};
}

} // namespace

std::optional<FileState> state_of(int descriptor) {
    struct stat status {};
    if (::fstat(descriptor, &status) != 0) return std::nullopt;
    return from(status);
}

std::optional<FileState> state_of(const std::filesystem::path& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) return std::nullopt;
    return from(status);
}

std::optional<Error> displacement(int descriptor, const FileState& left, const std::filesystem::path& path) {
    const auto open = state_of(descriptor);
    const auto named = state_of(path);
    if (!open) return displaced(say(phrase("store", "the logbook's file cannot be reached")), path);
    if (open->names == 0 && !named) return displaced(say(phrase("store", "the logbook's file was removed while it was open")), path);
    if (!named) return displaced(say(phrase("store", "the logbook's file was renamed or moved while it was open")), path);
    if (!named->same_file(*open)) return displaced(say(phrase("store", "another file has taken the place of the open logbook")), path);
    if (open->size < left.size) return displaced(say(phrase("store", "another program has cut the open logbook short")), path);
    if (open->size != left.size || open->modified_ns != left.modified_ns)
        return displaced(say(phrase("store", "another program has written to the open logbook")), path);
    return std::nullopt;
}

} // namespace ullage::store
