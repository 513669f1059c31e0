// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/descriptor_locks.h"

#include <sqlite3.h>

#include <cerrno>
#include <chrono>
#include <csignal>
#include <cstdarg>
#include <fcntl.h>
#include <mutex>
#include <string>
#include <thread>

namespace ullage::store {

namespace {

thread_local const std::string* awaited_path = nullptr;
thread_local int caught_descriptor = -1;

int open_and_tell(const char* path, int flags, int mode) {
    const int descriptor = ::open(path, flags, mode);
    if (descriptor >= 0 && awaited_path && *awaited_path == path && (flags & O_ACCMODE) == O_RDWR) caught_descriptor = descriptor;
    return descriptor;
}

int by_description(int command) {
    switch (command) {
    case F_SETLK: return F_OFD_SETLK;
    case F_SETLKW: return F_OFD_SETLKW;
    default: return F_OFD_GETLK;
    }
}

// SQLite calls it as it would call fcntl, with or without a third argument.
int lock_by_description(int descriptor, int command, ...) {
    va_list arguments;
    va_start(arguments, command);
    int outcome = -1;
    if (command == F_SETLK || command == F_SETLKW || command == F_GETLK) {
        auto* const lock = va_arg(arguments, struct flock*);
        lock->l_pid = 0; // asked for by these commands
        outcome = ::fcntl(descriptor, by_description(command), lock);
    } else if (command == F_GETFD || command == F_GETFL) {
        outcome = ::fcntl(descriptor, command);
    } else {
        outcome = ::fcntl(descriptor, command, va_arg(arguments, long));
    }
    va_end(arguments);
    return outcome;
}

// Beyond the range that SQLite locks (os.h: from 0x40000000, 512 bytes). No data lies there: the page of that range is never used.
constexpr off_t settling_byte = 0x40000000 + 1024;

bool lock_settling_byte(int descriptor, short type) {
    struct flock lock {};
    lock.l_type = type;
    lock.l_whence = SEEK_SET;
    lock.l_start = settling_byte;
    lock.l_len = 1;
    // Another errno tells that the medium knows no locks.
    return ::fcntl(descriptor, F_OFD_SETLK, &lock) == 0 || (errno != EACCES && errno != EAGAIN);
}

/// Asks `get` again every millisecond until it says yes.
template <class Get>
bool within(int patience_ms, Get get) {
    const auto until = std::chrono::steady_clock::now() + std::chrono::milliseconds(patience_ms);
    while (!get()) {
        if (std::chrono::steady_clock::now() >= until) return false;
        std::this_thread::sleep_for(std::chrono::milliseconds(1));
    }
    return true;
}

template <class Function>
sqlite3_syscall_ptr as_system_call(Function* function) {
    return reinterpret_cast<sqlite3_syscall_ptr>(function);
}

} // namespace

void hold_locks_by_descriptor() {
    static std::once_flag done;
    std::call_once(done, [] {
        sqlite3_initialize();
        sqlite3_vfs* const disk = sqlite3_vfs_find("unix");
        disk->xSetSystemCall(disk, "fcntl", as_system_call(&lock_by_description));
        disk->xSetSystemCall(disk, "open", as_system_call(&open_and_tell));
    });
}

DescriptorCatch::DescriptorCatch(const std::filesystem::path& path) : path_(path.string()) {
    caught_descriptor = -1;
    awaited_path = &path_;
}

DescriptorCatch::~DescriptorCatch() { awaited_path = nullptr; }

int DescriptorCatch::descriptor() const { return caught_descriptor; }

ReaderPause::ReaderPause(int descriptor, int patience_ms) : descriptor_(descriptor), state_(State::others_read) {
    // Whoever opens the file meanwhile makes the system send a signal; this one is ignored unless somebody asks for it.
    ::fcntl(descriptor_, F_SETSIG, SIGURG);
    within(patience_ms, [this] {
        if (!lock_settling_byte(descriptor_, F_WRLCK)) return false;
        if (::fcntl(descriptor_, F_SETLEASE, F_WRLCK) == 0) state_ = State::held;
        else if (errno != EAGAIN && errno != EBUSY) state_ = State::not_offered;
        // Who has the file open may be waiting for the byte.
        if (state_ == State::others_read) lock_settling_byte(descriptor_, F_UNLCK);
        return state_ != State::others_read;
    });
}

ReaderPause::~ReaderPause() {
    if (state_ == State::held) ::fcntl(descriptor_, F_SETLEASE, F_UNLCK);
    if (state_ != State::others_read) lock_settling_byte(descriptor_, F_UNLCK);
}

SettlingPause::SettlingPause(int descriptor, int patience_ms)
    : descriptor_(descriptor), held_(within(patience_ms, [descriptor] { return lock_settling_byte(descriptor, F_RDLCK); })) {}

SettlingPause::~SettlingPause() {
    if (held_) lock_settling_byte(descriptor_, F_UNLCK);
}

} // namespace ullage::store
