// SPDX-License-Identifier: GPL-3.0-or-later
// Text with columns: as RFC 4180 has it, with any delimiter and encoding.
#include "base/utf8.h"
#include "foreign_tables/inside/sheet_filler.h"

#include <iconv.h>

#include <algorithm>
#include <map>
#include <memory>

namespace ullage {

namespace {

constexpr std::size_t longest_quoted = 64 * 1024; ///< a quote that is closed no sooner is none
constexpr std::size_t rows_to_judge = 300;

struct DecodedText {
    std::string text;
    std::string_view encoding;
};

/// UTF-16 without a mark has a zero in every second byte of what is ASCII.
bool zeros_at(std::string_view bytes, std::size_t parity) {
    const std::size_t looked_at = std::min<std::size_t>(bytes.size() & ~std::size_t{1}, 4096);
    std::size_t zeros = 0;
    for (std::size_t i = parity; i < looked_at; i += 2) zeros += bytes[i] == '\0' ? 1 : 0;
    return looked_at >= 4 && zeros * 10 > looked_at / 2 * 7;
}

struct ConverterCloser {
    using pointer = iconv_t;
    void operator()(iconv_t converter) const { iconv_close(converter); }
};

/// What cannot be read of it is left out, a byte at a time.
std::string converted(std::string_view bytes, const char* encoding) {
    const iconv_t opened = iconv_open("UTF-8", encoding);
    if (opened == reinterpret_cast<iconv_t>(-1)) return {};
    const std::unique_ptr<void, ConverterCloser> converter(opened);
    std::string text(bytes.size() * 3 + 4, '\0');
    char* in = const_cast<char*>(bytes.data());
    std::size_t in_left = bytes.size(), out_left = text.size();
    char* out = text.data();
    while (in_left > 0 && iconv(converter.get(), &in, &in_left, &out, &out_left) == static_cast<std::size_t>(-1)) {
        if (in_left == 0 || out_left == 0) break;
        ++in;
        --in_left;
    }
    text.resize(text.size() - out_left);
    return text;
}

DecodedText decoded(std::string_view bytes) {
    if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
    if (bytes.starts_with("\xFF\xFE")) return {converted(bytes.substr(2), "UTF-16LE"), "UTF-16"};
    if (bytes.starts_with("\xFE\xFF")) return {converted(bytes.substr(2), "UTF-16BE"), "UTF-16"};
    if (zeros_at(bytes, 1)) return {converted(bytes, "UTF-16LE"), "UTF-16"};
    if (zeros_at(bytes, 0)) return {converted(bytes, "UTF-16BE"), "UTF-16"};
    if (!first_bad_utf8(bytes)) return {std::string(bytes), "UTF-8"};
    return {converted(bytes, "WINDOWS-1252"), "Windows-1252"};
}

/// Cells one after the other. A quote opens a quoted cell only at its beginning, and only where a quote closes it before a delimiter or line end.
class CellCutter {
public:
    CellCutter(std::string_view text, char delimiter) : text_(text), delimiter_(delimiter) {}

    /// The next cell; `last` where its row ends with it. False at the end of the text.
    bool next(std::string& cell, bool& last) {
        if (at_ >= text_.size()) return false;
        cell.clear();
        last = false;
        if (delimiter_ == ' ') return nextByBlanks(cell, last);
        if (text_[at_] == '"' && quoted(cell)) {
            // quoted() stands behind the closing quote
        } else {
            const std::size_t end = std::min(text_.find_first_of(stops(), at_), text_.size());
            cell = text_.substr(at_, end - at_);
            at_ = end;
        }
        endCell(last);
        return true;
    }

private:
    std::string_view stops() {
        stops_[0] = delimiter_;
        return {stops_, 3};
    }

    bool quoted(std::string& cell) {
        std::size_t at = at_ + 1;
        while (at < text_.size() && at - at_ <= longest_quoted) {
            if (text_[at] != '"') {
                cell += text_[at] == '\n' || text_[at] == '\r' ? ' ' : text_[at];
                ++at;
            } else if (at + 1 < text_.size() && text_[at + 1] == '"') {
                cell += '"';
                at += 2;
            } else {
                const std::size_t behind = at + 1;
                if (behind < text_.size() && text_[behind] != delimiter_ && text_[behind] != '\n' && text_[behind] != '\r') break;
                at_ = behind;
                return true;
            }
        }
        cell.clear();
        return false;
    }

    /// Two blanks or more, or a tab, end a column; one alone is a part of its text.
    bool nextByBlanks(std::string& cell, bool& last) {
        while (at_ < text_.size() && (text_[at_] == ' ' || text_[at_] == '\t')) ++at_;
        std::size_t end = at_;
        while (end < text_.size() && text_[end] != '\n' && text_[end] != '\r' && text_[end] != '\t' && text_.substr(end, 2) != "  ") ++end;
        cell = text_.substr(at_, end - at_);
        at_ = end;
        while (at_ < text_.size() && (text_[at_] == ' ' || text_[at_] == '\t')) ++at_;
        if (at_ >= text_.size() || text_[at_] == '\n' || text_[at_] == '\r') endCell(last);
        return true;
    }

    void endCell(bool& last) {
        if (at_ >= text_.size()) {
            last = true;
        } else if (text_[at_] == delimiter_) {
            ++at_;
            // A delimiter at the very end closes the last cell; there is no further one.
            last = at_ >= text_.size();
        } else {
            at_ += text_.substr(at_, 2) == "\r\n" ? 2 : 1;
            last = true;
        }
    }

    std::string_view text_;
    char delimiter_;
    std::size_t at_ = 0;
    char stops_[3] = {',', '\n', '\r'};
};

/// Of the rows that hold more than one cell, how many have the commonest number of cells; 0 for one that parts nothing. Tabs, semicolons and bars
/// stand in no number, so that all rows that they part count: empty cells at the end of a row may be left out.
std::size_t rows_alike(std::string_view text, char delimiter) {
    CellCutter cutter(text, delimiter);
    std::string cell;
    std::map<std::size_t, std::size_t> widths;
    std::size_t cells = 0, rows = 0;
    bool last = false;
    while (rows < rows_to_judge && cutter.next(cell, last)) {
        ++cells;
        if (!last) continue;
        if (cells > 1) ++widths[cells];
        cells = 0;
        ++rows;
    }
    const bool ragged = delimiter == '\t' || delimiter == ';' || delimiter == '|';
    std::size_t most = 0;
    for (const auto& [width, count] : widths) most = ragged ? most + count : std::max(most, count);
    return most;
}

char detected_delimiter(std::string_view text) {
    // In the order in which they are believed: a comma may be a decimal sign, and blanks stand in every text.
    constexpr char candidates[] = {'\t', ';', '|', ',', ' '};
    std::size_t most = 0;
    for (const char candidate : candidates) most = std::max(most, rows_alike(text, candidate));
    for (const char candidate : candidates)
        if (const std::size_t alike = rows_alike(text, candidate); alike > 0 && alike * 10 >= most * 7) return candidate;
    return ',';
}

Message say_form(std::string_view encoding, char delimiter) {
    switch (delimiter) {
    case '\t': return say(phrase("foreign_tables", "text, %1, columns end at a tab"), encoding);
    case ';': return say(phrase("foreign_tables", "text, %1, columns end at a semicolon"), encoding);
    case '|': return say(phrase("foreign_tables", "text, %1, columns end at an upright bar"), encoding);
    case ',': return say(phrase("foreign_tables", "text, %1, columns end at a comma"), encoding);
    default: return say(phrase("foreign_tables", "text, %1, columns end at several blanks"), encoding);
    }
}

} // namespace

Result<TableBook> read_delimited(std::string_view bytes, const std::string& where, char delimiter) {
    const DecodedText text = decoded(bytes);
    if (text.text.find('\0') != std::string::npos)
        return Error{Failure::bad_input, say(phrase("foreign_tables", "this is no table: neither a workbook nor a text")), where,
                     say(phrase("foreign_tables", "choose an XLSX or ODS workbook, or a text with columns"))};
    if (delimiter == 0) delimiter = detected_delimiter(text.text);
    TableBook book;
    book.form = say_form(text.encoding, delimiter);
    TableSheet& sheet = book.sheets.emplace_back();
    std::size_t cells_left = most_table_cells, row = 0, column = 0;
    SheetFiller filler(sheet, cells_left);
    CellCutter cutter(text.text, delimiter);
    std::string cell;
    bool last = false;
    while (cutter.next(cell, last)) {
        if (!filler.put(row, column, cell, false)) return too_large_table(where);
        ++column;
        if (!last) continue;
        ++row;
        column = 0;
    }
    return book;
}

} // namespace ullage
