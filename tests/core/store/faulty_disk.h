// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage::test {

/// Stands between SQLite and the disk for its scope (as SQLite's default VFS), for files opened meanwhile:
/// refuses to let files grow beyond a given room, counts how often content is made safe, and ends the process in the midst
/// of its work. The store knows nothing of it. One at a time.
class FaultyDisk {
public:
    FaultyDisk();
    ~FaultyDisk();
    FaultyDisk(const FaultyDisk&) = delete;
    FaultyDisk& operator=(const FaultyDisk&) = delete;

    /// All files together can grow by so many bytes from now on.
    void leave_room(long bytes);
    void free_space();
    /// From now on nothing is made safe: the disk reports a fault instead.
    void break_sync(bool broken);
    [[nodiscard]] long sync_count() const;
    /// The process kills itself (SIGKILL) in its `count`-th action on the disk from now on: in a write after half of its bytes, or
    /// instead of making content safe.
    void kill_at(long count);
    /// The disk is full from the `count`-th action from now on: nothing is written any more, what is there can still be made safe.
    void fill_at(long count);
    /// Writes and syncs so far.
    [[nodiscard]] long action_count() const;

    // For a process that a test watches (support/watched_process.h):
    /// "killed", as kill_at(), or "full", as fill_at(); "none" sets no fault. Before it dies the process says "killed in" and what that action was.
    void set_fault(const std::string& fault, long count);
    /// What the process does from now on, as part of the names of its actions.
    void begin_step(const std::string& name);
    /// Says of each action so far what it was, and that the process ends with this code.
    void say_end(int code) const;
};

/// Writes a line to standard output at once, so that a kill leaves no half line; false where that failed.
bool say_line(const std::string& line);

} // namespace ullage::test
