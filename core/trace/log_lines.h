// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/fingerprint.h"

#include <cstdint>
#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// How the bytes of a log are read as text. `plain` is UTF-8 or any other writing whose first 128 codes are those of ASCII; its bytes pass
/// through as they are.
enum class LogEncoding { plain, latin1, utf16_le, utf16_be };

/// The encoding by the byte order mark, else by the bytes: every second one zero is UTF-16, ill-formed UTF-8 is Latin-1.
[[nodiscard]] LogEncoding detect_encoding(std::string_view first_bytes);

/// "UTF-8", "Latin-1", "UTF-16 (little-endian)", "UTF-16 (big-endian)".
[[nodiscard]] std::string_view encoding_text(LogEncoding encoding);

/// The lines of a log, one after the other, as UTF-8 without their line ends (LF, CRLF or CR, also mixed). Memory: one chunk and one line;
/// of a line over 64 KiB only the beginning is given. The stream must outlive the reader; where more is put into it after next() was false, reading
/// goes on with that.
class LogLines {
public:
    LogLines(std::istream& in, LogEncoding encoding);

    /// The next line, valid until the next call; false at the end.
    [[nodiscard]] bool next(std::string_view& line);

    [[nodiscard]] long line_number() const { return line_; }                      ///< of the line given last, from 1
    [[nodiscard]] bool cut_short() const { return cut_short_; }                   ///< the line given last was longer than 64 KiB
    [[nodiscard]] std::int64_t bytes_read() const { return bytes_; }              ///< of the stream so far
    [[nodiscard]] std::string fingerprint() const { return fingerprint_.text(); } ///< of all bytes read so far

private:
    bool refill();
    void decode(std::string_view bytes);

    std::istream& in_;
    LogEncoding encoding_;
    std::string raw_, text_; // a chunk as read, and what is not given out of it yet
    std::size_t at_ = 0;
    std::string carried_; // bytes of a character that the next chunk completes
    bool first_chunk_ = true, skip_lf_ = false, cut_short_ = false, skipping_ = false;
    long line_ = 0;
    std::int64_t bytes_ = 0;
    Fingerprint fingerprint_;
};

/// Splits a line into fields, blanks at their ends taken off. A blank as delimiter takes runs of blanks and tabs as one. Fields in double quotes may
/// hold the delimiter, and a quote written twice; a quote that the line does not close is none, and false is returned. No field spans lines: a stray
/// quote must not swallow the rest of a log. The fields point into `line` or, where a doubled quote was undone, into `scratch`.
[[nodiscard]] bool split_fields(std::string_view line, char delimiter, std::vector<std::string_view>& fields, std::vector<std::string>& scratch);

} // namespace ullage
