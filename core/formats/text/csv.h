// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// One record of a CSV file.
struct CsvRecord {
    std::vector<std::string> fields; ///< at least one; blanks are part of a field
    long line = 1;                   ///< of its first character
};

/// Reads records one after the other from text in memory, by RFC 4180: fields between commas, quotes around
/// fields with commas, quotes or line breaks, a quote within quotes doubled. Lines end in CRLF or LF, the
/// last with or without; records may differ in length. A byte order mark is not expected here. The text must
/// outlive the reader.
class CsvReader {
public:
    /// `first_line` is the number of the text's first line, for messages.
    explicit CsvReader(std::string_view text, long first_line = 1) : text_(text), line_(first_line) {}

    /// Reads the next record into `record`; false when there is none (`record` is then empty). Errors, with
    /// line and character (not byte) in `where`: a quote inside an unquoted field, text after a closing
    /// quote, a quote that is never closed, a lone CR.
    [[nodiscard]] Result<bool> next(CsvRecord& record);

    /// Where the next record begins in the text, and in which line.
    [[nodiscard]] std::size_t position() const { return at_; }
    [[nodiscard]] long line() const { return line_; }

private:
    [[nodiscard]] Result<void> quoted_field(std::string& field);
    [[nodiscard]] Result<void> plain_field(std::string& field);
    [[nodiscard]] bool at_line_end() const;
    [[nodiscard]] Error error_at(std::size_t position, long line, const Message& what, const Message& remedy) const;

    std::string_view text_;
    std::size_t at_ = 0;
    long line_ = 1;
};

/// The separator that a header line seems to use when it is no comma: ';' or a tab; '\0' when it has a comma
/// or neither.
[[nodiscard]] char foreign_separator(std::string_view header_line);

/// Appends a field, in quotes where it holds a comma, a quote or a line break, or blanks at an end.
void append_csv_field(std::string& text, std::string_view field);

/// Appends a field in quotes, whatever it holds.
void append_quoted_csv_field(std::string& text, std::string_view field);

/// Appends a record with LF. A record of one empty field is written as `""`, which an empty line would not
/// be.
void append_csv_record(std::string& text, const std::vector<std::string>& fields);

} // namespace ullage
