// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/files/replacing.h"

#include "formats/files/inside/written_files.h"
#include "formats/text/sheet_keys.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <cerrno>
#include <cstring>
#include <mutex>
#include <string_view>

namespace ullage {

namespace {

namespace fs = std::filesystem;
using FileIdentity = std::pair<std::uint64_t, std::uint64_t>;

constexpr std::array<std::string_view, 3> side_endings{"-wal", "-journal", "-shm"};

struct HeldFiles {
    std::mutex mutex;
    std::vector<FileIdentity> identities;
};
HeldFiles& held_files() {
    static HeldFiles held;
    return held;
}

std::optional<FileIdentity> file_identity(const fs::path& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) return std::nullopt;
    return FileIdentity{status.st_dev, status.st_ino};
}

bool is_held(const FileIdentity& identity) {
    HeldFiles& held = held_files();
    const std::lock_guard lock(held.mutex);
    return std::ranges::count(held.identities, identity) > 0;
}

Error refused(const Message& what, const std::string& path, const Message& remedy) { return {Failure::refused, what, path, remedy}; }

Message other_name() { return say(phrase("files", "choose another file name")); }

bool named_logbook(const fs::path& path) { return lower_case(path.extension().string()) == ".ullage"; }

/// Asks the permission bits too: an administrator's account writes in spite of them.
bool is_write_protected(const fs::path& path) {
    struct stat status {};
    if (::stat(path.c_str(), &status) != 0) return false;
    const mode_t bits = status.st_uid == ::geteuid() ? S_IWUSR : S_IWUSR | S_IWGRP | S_IWOTH;
    return (status.st_mode & bits) == 0 || ::access(path.c_str(), W_OK) != 0;
}

/// SQLite's header and our number in it (SQLite, Database File Format, 1.3).
bool has_logbook_header(const fs::path& path) {
    constexpr std::string_view magic("SQLite format 3\0", 16), application("ULLG", 4);
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return false;
    std::array<char, 72> header{};
    const ssize_t got = ::pread(descriptor, header.data(), header.size(), 0);
    ::close(descriptor);
    const std::string_view bytes(header.data(), header.size());
    return got == static_cast<ssize_t>(header.size()) && bytes.starts_with(magic) && bytes.substr(68) == application;
}

/// A file beside it holds records that are not in it yet.
bool has_side_file(const fs::path& path) {
    return std::ranges::any_of(side_endings, [&](std::string_view ending) {
        std::error_code trouble;
        return fs::file_size(path.string() + std::string(ending), trouble) > 0 && !trouble;
    });
}

bool is_locked(const fs::path& path) {
    const int descriptor = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (descriptor < 0) return false;
    struct flock lock {};
    lock.l_type = F_WRLCK;
    lock.l_whence = SEEK_SET;
    const bool told = ::fcntl(descriptor, F_OFD_GETLK, &lock) == 0;
    ::close(descriptor);
    return told && lock.l_type != F_UNLCK;
}

bool is_input(const FileIdentity& identity, const std::vector<std::string>& inputs) {
    return std::ranges::any_of(inputs, [&](const std::string& input) {
        std::error_code trouble;
        if (!fs::is_directory(input, trouble)) return file_identity(input) == identity;
        for (fs::directory_iterator entry(input, trouble), end; !trouble && entry != end; entry.increment(trouble))
            if (entry->path().extension() == ".csv" && file_identity(entry->path()) == identity) return true;
        return false;
    });
}

/// "L.ullage" where `path` is "L.ullage-wal" and L.ullage, a logbook, is there or an input.
bool is_side_file(const fs::path& path, const std::vector<std::string>& inputs) {
    const std::string name = path.string();
    for (const std::string_view ending : side_endings) {
        if (!name.ends_with(ending)) continue;
        const fs::path base = name.substr(0, name.size() - ending.size());
        const auto identity = file_identity(base);
        if (named_logbook(base) || (identity && (is_held(*identity) || is_input(*identity, inputs) || has_logbook_header(base)))) return true;
    }
    return false;
}

Result<void> check_existing(const fs::path& target, const FileIdentity& identity, const std::string& path, const Replacing& replacing) {
    using Consent = Replacing::Consent;
    if (is_held(identity)) return refused(say(phrase("files", "this is the logbook that is open, which nothing replaces")), path, other_name());
    if (is_write_protected(target))
        return refused(say(phrase("files", "the file is write-protected")), path,
                       say(phrase("files", "make it writable, or choose another file name")));
    const Message forced = replacing.consent == Consent::own ? say(phrase("files", "choose another file name, or add --force")) : other_name();
    if (replacing.consent != Consent::any && is_input(identity, replacing.inputs))
        return refused(say(phrase("files", "this file is read by the same call")), path, forced);
    if (named_logbook(target) || named_logbook(path) || has_side_file(target) || has_logbook_header(target)) {
        if (replacing.consent != Consent::any) return refused(say(phrase("files", "this is a logbook, with all its readings")), path, forced);
        if (has_side_file(target) || is_locked(target))
            return refused(say(phrase("files", "this logbook is in use")), path, say(phrase("files", "close it first, or choose another file name")));
        return {};
    }
    if (replacing.consent == Consent::own && !is_as_written(target.string()))
        return refused(say(phrase("files", "a file of this name exists, and this program did not write it as it is now")), path, forced);
    return {};
}

} // namespace

Result<OutputTarget> output_target(const std::string& path, const Replacing& replacing) {
    if (path.empty()) return Error{Failure::refused, say(phrase("files", "no file name is given")), {}, say(phrase("files", "name a file"))};
    std::error_code trouble;
    const fs::file_status status = fs::status(path, trouble);
    const bool exists = fs::exists(status);
    if (!exists && fs::is_symlink(fs::symlink_status(path, trouble)))
        return refused(say(phrase("files", "this link leads to no file")), path,
                       say(phrase("files", "remove the link, or choose another file name")));
    if (exists && !fs::is_regular_file(status))
        return refused(fs::is_directory(status) ? say(phrase("files", "this is a folder")) : say(phrase("files", "this is no regular file")), path,
                       other_name());
    const fs::path target = exists ? fs::canonical(path, trouble) : fs::path(path);
    if (exists && trouble) return refused(say(phrase("files", "the file cannot be reached: %1"), trouble.message()), path, other_name());
    if (is_side_file(target, replacing.inputs) || is_side_file(path, replacing.inputs))
        return refused(say(phrase("files", "the name is kept for what a logbook has beside it")), path, other_name());
    if (!exists) {
        if (named_logbook(path) && replacing.consent != Replacing::Consent::any)
            return refused(say(phrase("files", "the ending .ullage is that of logbooks")), path, say(phrase("files", "choose another ending")));
        return OutputTarget{target, false};
    }
    const auto identity = file_identity(target);
    if (!identity) return refused(say(phrase("files", "the file has gone")), path, say(phrase("files", "try again")));
    if (Result<void> checked = check_existing(target, *identity, path, replacing); !checked) return checked.error();
    return OutputTarget{target, true};
}

HeldFile::HeldFile(const fs::path& path) : identity_(file_identity(path)) {
    if (!identity_) return;
    HeldFiles& held = held_files();
    const std::lock_guard lock(held.mutex);
    held.identities.push_back(*identity_);
}

HeldFile::~HeldFile() {
    if (!identity_) return;
    HeldFiles& held = held_files();
    const std::lock_guard lock(held.mutex);
    if (const auto at = std::ranges::find(held.identities, *identity_); at != held.identities.end()) held.identities.erase(at);
}

} // namespace ullage
