// SPDX-License-Identifier: GPL-3.0-or-later
#include "faulty_disk.h"

#include <sqlite3.h>

#include <algorithm>
#include <array>
#include <csignal>
#include <limits>

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

/// Counts an action; whether it is the one in which the process shall die.
bool last_action() {
    ++actions_done;
    return actions_left != endless && --actions_left == 0;
}

const sqlite3_io_methods& real_of(const sqlite3_file* file) {
    return *std::find_if(method_sets.begin(), method_sets.end(), [&](const Methods& set) {
                return &set.faulty == file->pMethods;
            })->real;
}

int write(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    if (last_action()) {
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
    if (last_action()) std::raise(SIGKILL);
    if (sync_broken) return SQLITE_IOERR_FSYNC;
    ++syncs;
    return real_of(file).xSync(file, flags);
}

int open(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* out_flags) {
    const int code = real_vfs->xOpen(real_vfs, name, file, flags, out_flags);
    if (code != SQLITE_OK || !file->pMethods) return code;
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
}

FaultyDisk::~FaultyDisk() {
    sqlite3_vfs_unregister(&faulty_vfs);
    sqlite3_vfs_register(real_vfs, 1);
}

void FaultyDisk::leave_room(long bytes) {
    room = bytes;
}
void FaultyDisk::free_space() {
    room = endless;
}
void FaultyDisk::break_sync(bool broken) {
    sync_broken = broken;
}
long FaultyDisk::sync_count() const {
    return syncs;
}
void FaultyDisk::kill_at(long count) {
    actions_left = count;
}
void FaultyDisk::fill_at(long count) {
    first_refused = actions_done + count;
}
long FaultyDisk::action_count() const {
    return actions_done;
}

} // namespace ullage::test
