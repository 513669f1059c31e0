// SPDX-License-Identifier: GPL-3.0-or-later
#include "faulty_disk.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <limits>
#include <map>
#include <unistd.h>
#include <vector>

namespace ullage::test {

namespace {

constexpr long endless = std::numeric_limits<long>::max();

sqlite3_vfs* real_vfs = nullptr;
sqlite3_vfs faulty_vfs;
// SQLite has one set of methods for files that are locked and one for those that are not.
struct Methods {
    const sqlite3_io_methods* real = nullptr;
    sqlite3_io_methods faulty{};
};
std::array<Methods, 4> method_sets;
long room = endless;
long syncs = 0;
bool sync_broken = false;
long actions_left = endless;
long actions_done = 0;
long first_refused = endless;
std::map<const sqlite3_file*, const char*> file_kinds;
std::string step;
std::vector<std::string> action_names;
bool telling = false; ///< the process is watched

const char* kind_of(int flags) {
    if (flags & SQLITE_OPEN_WAL) return "log";
    if (flags & SQLITE_OPEN_MAIN_DB) return "logbook";
    if (flags & (SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL)) return "journal";
    return "other file";
}

/// Counts an action; whether it is the one in which the process shall die.
bool last_action(const char* verb, const sqlite3_file* file) {
    ++actions_done;
    const bool last = actions_left != endless && --actions_left == 0;
    if (telling) {
        action_names.push_back(step + ": " + verb + ' ' + file_kinds[file]);
        if (last) say_line("killed in " + action_names.back());
    }
    return last;
}

const sqlite3_io_methods& real_of(const sqlite3_file* file) {
    return *std::find_if(method_sets.begin(), method_sets.end(), [&](const Methods& set) { return &set.faulty == file->pMethods; })->real;
}

int write(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    if (last_action("write", file)) {
        real_of(file).xWrite(file, bytes, count / 2, offset);
        std::raise(SIGKILL);
    }
    if (actions_done >= first_refused) return SQLITE_FULL;
    sqlite3_int64 size = 0;
    real_of(file).xFileSize(file, &size);
    const long growth = static_cast<long>(std::max<sqlite3_int64>(0, offset + count - size));
    if (growth > room) return SQLITE_FULL;
    if (room != endless) room -= growth;
    return real_of(file).xWrite(file, bytes, count, offset);
}

int sync(sqlite3_file* file, int flags) {
    if (last_action("sync", file)) std::raise(SIGKILL);
    if (sync_broken) return SQLITE_IOERR_FSYNC;
    ++syncs;
    return real_of(file).xSync(file, flags);
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out_flags) {
    const int code = real_vfs->xOpen(real_vfs, name, file, flags, out_flags);
    if (code != SQLITE_OK || !file->pMethods) return code;
    file_kinds[file] = kind_of(flags);
    for (Methods& set : method_sets) {
        if (set.real && set.real != file->pMethods) continue;
        if (!set.real) {
            set = {file->pMethods, *file->pMethods};
            set.faulty.xWrite = write;
            set.faulty.xSync = sync;
        }
        file->pMethods = &set.faulty;
        return code;
    }
    file->pMethods->xClose(file);
    return SQLITE_CANTOPEN;
}

} // namespace

FaultyDisk::FaultyDisk() {
    sqlite3_initialize();
    real_vfs = sqlite3_vfs_find(nullptr);
    faulty_vfs = *real_vfs;
    faulty_vfs.zName = "faulty";
    faulty_vfs.xOpen = open;
    sqlite3_vfs_register(&faulty_vfs, 1);
    free_space();
    sync_broken = false;
    syncs = 0;
    actions_left = endless;
    actions_done = 0;
    first_refused = endless;
    file_kinds.clear();
    step.clear();
    action_names.clear();
    telling = false;
}

FaultyDisk::~FaultyDisk() {
    sqlite3_vfs_unregister(&faulty_vfs);
    sqlite3_vfs_register(real_vfs, 1);
}

void FaultyDisk::leave_room(long bytes) { room = bytes; }
void FaultyDisk::free_space() { room = endless; }
void FaultyDisk::break_sync(bool broken) { sync_broken = broken; }
long FaultyDisk::sync_count() const { return syncs; }
void FaultyDisk::kill_at(long count) { actions_left = count; }
void FaultyDisk::fill_at(long count) { first_refused = actions_done + count; }
long FaultyDisk::action_count() const { return actions_done; }
void FaultyDisk::set_fault(const std::string& fault, long count) {
    telling = true;
    if (fault == "killed") kill_at(count);
    if (fault == "full") fill_at(count);
}
void FaultyDisk::begin_step(const std::string& name) {
    step = name;
    say_line("step " + name);
}
void FaultyDisk::say_end(int code) const {
    for (const std::string& name : action_names) say_line("action " + name);
    say_line("ended " + std::to_string(code));
}

bool say_line(const std::string& line) {
    const std::string text = line + '\n';
    return ::write(STDOUT_FILENO, text.data(), text.size()) == static_cast<ssize_t>(text.size());
}

} // namespace ullage::test
