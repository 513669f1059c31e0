// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/growing_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <utility>

namespace ullage {
namespace {

constexpr std::int64_t kept_bytes = 256;
constexpr std::size_t late_bytes = std::size_t{1} << 20;

} // namespace

std::size_t end_of_lines(std::string_view bytes, LogEncoding encoding) {
    if (encoding == LogEncoding::plain || encoding == LogEncoding::latin1) {
        const auto last = bytes.rfind('\n');
        return last == std::string_view::npos ? 0 : last + 1;
    }
    const std::size_t low = encoding == LogEncoding::utf16_le ? 0 : 1;
    for (std::size_t end = bytes.size() / 2 * 2; end >= 2; end -= 2)
        if (bytes[end - 2 + low] == '\n' && bytes[end - 1 - low] == '\0') return end;
    return 0;
}

GrowingFile::GrowingFile(std::string path, LogEncoding encoding, std::int64_t taken_bytes)
    : path_(std::move(path)), encoding_(encoding), taken_bytes_(taken_bytes) {
    // Opened at once, so that the file is held even if it is renamed before the first look; that look says what is wrong with it.
    if (const auto opened = open(); opened && opened.value()) (void)remember();
}

GrowingFile::~GrowingFile() { close(); }

void GrowingFile::close() {
    if (descriptor_ >= 0) ::close(descriptor_);
    descriptor_ = -1;
}

Error GrowingFile::unreadable() const {
    return {Failure::io, say(phrase("trace", "the log cannot be read")), path_, say(phrase("trace", "check its permissions and the medium"))};
}

/// False where there is no such file.
Result<bool> GrowingFile::open() {
    close();
    descriptor_ = ::open(path_.c_str(), O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    if (descriptor_ < 0) return errno == ENOENT ? Result<bool>(false) : Result<bool>(unreadable());
    struct stat about {};
    if (::fstat(descriptor_, &about) == 0 && S_ISREG(about.st_mode)) return true;
    close();
    return Error{Failure::refused, say(phrase("trace", "this is no regular file")), path_, say(phrase("trace", "name a log file"))};
}

Result<std::string> GrowingFile::read(std::int64_t at, std::size_t count) const {
    std::string bytes(count, '\0');
    std::size_t have = 0;
    while (have < count) {
        const ssize_t got = ::pread(descriptor_, bytes.data() + have, count - have, static_cast<off_t>(at) + static_cast<off_t>(have));
        if (got < 0 && errno == EINTR) continue;
        if (got < 0) return unreadable();
        if (got == 0) break;
        have += static_cast<std::size_t>(got);
    }
    bytes.resize(have);
    return bytes;
}

Result<bool> GrowingFile::same_so_far() const {
    const auto head = read(0, head_.size());
    if (!head) return head.error();
    const auto tail = read(taken_bytes_ - static_cast<std::int64_t>(tail_.size()), tail_.size());
    if (!tail) return tail.error();
    return head.value() == head_ && tail.value() == tail_; // a file cut short gives a shorter tail
}

Result<void> GrowingFile::remember() {
    const auto size = static_cast<std::size_t>(std::min(taken_bytes_, kept_bytes));
    auto head = read(0, size);
    if (!head) return head.error();
    auto tail = read(taken_bytes_ - static_cast<std::int64_t>(size), size);
    if (!tail) return tail.error();
    head_ = std::move(head).value();
    tail_ = std::move(tail).value();
    remembered_ = true;
    return {};
}

GrowingFile::Named GrowingFile::named() const {
    struct stat mine {
    }, there{};
    if (::stat(path_.c_str(), &there) != 0) return Named::nowhere;
    if (::fstat(descriptor_, &mine) != 0) return Named::elsewhere;
    return mine.st_ino == there.st_ino && mine.st_dev == there.st_dev ? Named::here : Named::elsewhere;
}

/// The name belongs to another file now: it goes on where this one ended if it begins alike, else it is a new log. A line that this one was left
/// in the middle of is dropped, as nobody can tell what it would have said.
Result<void> GrowingFile::switch_file(Piece& piece) {
    const int before = std::exchange(descriptor_, -1);
    const auto opened = open();
    struct stat about {};
    const bool usable = opened && opened.value() && ::fstat(descriptor_, &about) == 0 && about.st_size > 0;
    if (!usable) { // not written yet
        close();
        descriptor_ = before;
        return opened ? Result<void>() : Result<void>(opened.error());
    }
    const int after = std::exchange(descriptor_, before);
    const auto late = read(taken_bytes_, late_bytes); // written between the last look at it and its renaming
    if (late && end_of_lines(late.value(), encoding_) > 0) {
        ::close(after);
        piece.more = true;
        return {};
    }
    ::close(before);
    descriptor_ = after;
    piece.more = true;
    const auto same = same_so_far();
    if (!same) return same.error();
    if (same.value()) return {};
    taken_bytes_ = 0;
    piece.change = LogChange::started_anew;
    return remember();
}

Result<GrowingFile::Piece> GrowingFile::next(std::size_t limit_bytes) {
    Piece piece;
    if (descriptor_ < 0) {
        const auto opened = open();
        if (!opened) return opened.error();
        if (!opened.value()) {
            piece.change = LogChange::vanished;
            return piece;
        }
    }
    if (!remembered_)
        if (auto kept = remember(); !kept) return kept.error();
    struct stat about {};
    if (::fstat(descriptor_, &about) != 0) return unreadable();
    // A file of no length is being written anew; what it will hold is not known yet.
    if (about.st_size > 0) {
        const auto same = same_so_far();
        if (!same) return same.error();
        if (!same.value()) {
            taken_bytes_ = 0;
            piece.change = LogChange::started_anew;
        }
        auto bytes = read(taken_bytes_, limit_bytes);
        if (!bytes) return bytes.error();
        const std::size_t end = end_of_lines(bytes.value(), encoding_);
        piece.more = bytes.value().size() == limit_bytes;
        if (end == 0 && piece.more)
            return Error{Failure::bad_input, say(phrase("trace", "a line is longer than %1 bytes"), say_number(limit_bytes)), path_,
                         say(phrase("trace", "choose a log of lines"))};
        if (end > 0 || piece.change == LogChange::started_anew) {
            if (piece.change == LogChange::none) piece.change = LogChange::grown;
            const std::int64_t before = std::exchange(taken_bytes_, taken_bytes_ + static_cast<std::int64_t>(end));
            if (auto kept = remember(); !kept) {
                taken_bytes_ = before;
                return kept.error();
            }
            piece.lines = std::move(bytes).value();
            piece.lines.resize(end);
            piece.more = piece.more || named() == Named::elsewhere;
            return piece;
        }
        if (named() == Named::elsewhere) {
            if (auto switched = switch_file(piece); !switched) return switched.error();
            return piece;
        }
    } else if (named() == Named::elsewhere) {
        if (auto switched = switch_file(piece); !switched) return switched.error();
        return piece;
    }
    if (named() == Named::nowhere) piece.change = LogChange::vanished;
    return piece;
}

} // namespace ullage
