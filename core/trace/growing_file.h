// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "trace/log_lines.h"

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

namespace ullage {

enum class LogChange {
    none,         ///< no new complete line
    grown,        ///< new complete lines after those given
    started_anew, ///< cut short or replaced by another file: lines are given from its beginning, possibly none yet
    vanished,     ///< there is no file of this name now; a writer may put it back
};

/// Where the last complete line of `bytes`, which begin at a character, ends with LF; 0 where there is none.
[[nodiscard]] std::size_t end_of_lines(std::string_view bytes, LogEncoding encoding);

/// A log that another program is still writing. Gives its lines as they are completed: a last line without its line end (LF or CRLF) waits for the
/// rest. The file stays open, so that lines written just before it was renamed are not missed; one that was never ended is. A file cut short loses
/// what was written between the last look and the cut. One replaced by another that has the same first and last 256 of the bytes given passes for the
/// same.
class GrowingFile {
public:
    /// `taken_bytes`: how much of the file as it stands has been read already, up to the end of a line.
    GrowingFile(std::string path, LogEncoding encoding, std::int64_t taken_bytes = 0);
    ~GrowingFile();
    GrowingFile(const GrowingFile&) = delete;
    GrowingFile& operator=(const GrowingFile&) = delete;

    struct Piece {
        LogChange change = LogChange::none;
        std::string lines; ///< new complete lines with their line ends, bytes as they stand
        bool more = false; ///< the limit left some unread: look again at once
    };
    /// Looks once. Memory: `limit_bytes`. Errors: io; bad_input where a line is longer than the limit.
    Result<Piece> next(std::size_t limit_bytes = std::size_t{1} << 20);

    [[nodiscard]] std::int64_t taken_bytes() const { return taken_bytes_; }
    [[nodiscard]] const std::string& path() const { return path_; }

private:
    enum class Named { here, elsewhere, nowhere };

    Result<bool> open();
    [[nodiscard]] Named named() const;
    [[nodiscard]] Result<std::string> read(std::int64_t at, std::size_t count) const;
    [[nodiscard]] Result<bool> same_so_far() const;
    Result<void> remember();
    Result<void> switch_file(Piece& piece);
    void close();
    [[nodiscard]] Error unreadable() const;

    std::string path_;
    LogEncoding encoding_;
    std::int64_t taken_bytes_;
    std::string head_, tail_; ///< the first and the last bytes given, up to 256 each
    bool remembered_ = false;
    int descriptor_ = -1;
};

} // namespace ullage
