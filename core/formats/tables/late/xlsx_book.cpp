// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/late/xlsx_book.h"

#include "formats/text/table_unicode.h"

#include <fcntl.h>
#include <unistd.h>

#include <filesystem>

namespace ullage {

namespace {

constexpr std::size_t longest_text = 32'767; // characters in a cell, in UTF-16 code units
constexpr lxw_color_t soft_ink = 0x5E6973;

/// Keeps what the library prints off the standard error, since what went wrong is said in our words.
class QuietStandardError {
public:
    QuietStandardError() : kept_(::dup(STDERR_FILENO)) {
        const int nowhere = ::open("/dev/null", O_WRONLY | O_CLOEXEC);
        if (kept_ >= 0 && nowhere >= 0) (void)::dup2(nowhere, STDERR_FILENO);
        if (nowhere >= 0) ::close(nowhere);
    }
    ~QuietStandardError() {
        if (kept_ < 0) return;
        (void)::dup2(kept_, STDERR_FILENO);
        ::close(kept_);
    }
    QuietStandardError(const QuietStandardError&) = delete;
    QuietStandardError& operator=(const QuietStandardError&) = delete;

private:
    int kept_;
};

/// Lines in a cell end in LF.
std::string with_line_feeds(std::string text) {
    for (auto at = text.find('\r'); at != std::string::npos; at = text.find('\r', at)) {
        if (at + 1 < text.size() && text[at + 1] == '\n') text.erase(at, 1);
        else text[at] = '\n';
    }
    return text;
}

} // namespace

Book::Book(const std::string& path, bool row_by_row) {
    std::string folder = std::filesystem::path(path).parent_path().string();
    if (folder.empty()) folder = ".";
    lxw_workbook_options options{};
    options.tmpdir = folder.data();
    options.constant_memory = row_by_row ? LXW_TRUE : LXW_FALSE;
    book_ = workbook_new_opt(path.c_str(), &options);
}

Book::~Book() {
    const QuietStandardError quiet;
    if (book_) (void)workbook_close(book_);
}

std::size_t Book::cells(const lxw_worksheet* sheet) const {
    const auto found = cells_.find(sheet);
    return found == cells_.end() ? 0 : found->second;
}

lxw_error Book::close() {
    const QuietStandardError quiet;
    take(workbook_close(std::exchange(book_, nullptr)));
    return error_;
}

void Book::put_text(lxw_worksheet* sheet, lxw_row_t row, lxw_col_t column, std::string_view text, lxw_format* format) {
    const std::string clean = with_line_feeds(clean_text(text));
    const std::string cell(clipped_utf16(clean, longest_text));
    if (!cell.empty()) take_cell(sheet, worksheet_write_string(sheet, row, column, cell.c_str(), format));
}

lxw_format* Book::head(bool right) {
    lxw_format*& format = heads_[right];
    if (format) return format;
    format = workbook_add_format(book_);
    format_set_bold(format);
    format_set_text_wrap(format);
    format_set_bottom(format, LXW_BORDER_THIN);
    format_set_align(format, LXW_ALIGN_VERTICAL_BOTTOM);
    format_set_align(format, right ? LXW_ALIGN_RIGHT : LXW_ALIGN_LEFT);
    return format;
}

lxw_format* Book::number(int decimals, bool soft) {
    lxw_format*& format = numbers_[{decimals, soft}];
    if (format) return format;
    format = workbook_add_format(book_);
    format_set_num_format(format, ("0" + (decimals > 0 ? "." + std::string(static_cast<std::size_t>(decimals), '0') : "")).c_str());
    if (soft) format_set_font_color(format, soft_ink);
    return format;
}

lxw_format* Book::date() {
    if (date_) return date_;
    date_ = workbook_add_format(book_);
    format_set_num_format(date_, "yyyy-mm-dd hh:mm:ss");
    return date_;
}

lxw_format* Book::text(bool soft, bool wrapped, bool right) {
    lxw_format*& format = texts_[{soft, wrapped, right}];
    if (format) return format;
    format = workbook_add_format(book_);
    if (soft) format_set_font_color(format, soft_ink);
    if (wrapped) format_set_text_wrap(format);
    if (right) format_set_align(format, LXW_ALIGN_RIGHT);
    format_set_align(format, LXW_ALIGN_VERTICAL_TOP);
    return format;
}

lxw_format* Book::title() {
    if (title_) return title_;
    title_ = workbook_add_format(book_);
    format_set_bold(title_);
    format_set_font_size(title_, 14);
    return title_;
}

} // namespace ullage
