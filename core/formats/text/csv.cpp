// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/csv.h"

#include <algorithm>

namespace ullage {

Error CsvReader::error_at(std::size_t position, long line, const Message& what, const Message& remedy) const {
    const std::string_view before = text_.substr(0, position);
    const auto line_break = before.rfind('\n');
    const std::string_view in_line = line_break == std::string_view::npos ? before : before.substr(line_break + 1);
    // Bytes that continue a UTF-8 character are not counted.
    const auto characters = std::ranges::count_if(in_line, [](char c) { return (c & 0xC0) != 0x80; });
    return Error{Failure::bad_input, what, say(phrase("text", "line %1, character %2"), say_number(line), say_number(characters + 1)), remedy};
}

bool CsvReader::at_line_end() const { return at_ >= text_.size() || text_[at_] == '\n' || text_.substr(at_, 2) == "\r\n"; }

Result<void> CsvReader::quoted_field(std::string& field) {
    const std::size_t opened_at = at_++;
    const long opened_line = line_;
    for (;;) {
        const auto quote = text_.find('"', at_);
        if (quote == std::string_view::npos)
            return error_at(opened_at, opened_line, say(phrase("text", "this quote is never closed")),
                            say(phrase("text", "close it, or write a quote within a field twice")));
        const std::string_view piece = text_.substr(at_, quote - at_);
        field += piece;
        line_ += std::ranges::count(piece, '\n');
        at_ = quote + 1;
        if (at_ >= text_.size() || text_[at_] != '"') break;
        field += '"';
        ++at_;
    }
    if (!at_line_end() && text_[at_] != ',')
        return error_at(at_, line_, say(phrase("text", "text follows a closing quote")),
                        say(phrase("text", "put a comma after the field, or write a quote within it twice")));
    return {};
}

Result<void> CsvReader::plain_field(std::string& field) {
    const std::size_t end = std::min(text_.find_first_of(",\"\r\n", at_), text_.size());
    field = text_.substr(at_, end - at_);
    at_ = end;
    if (at_line_end() || text_[at_] == ',') return {};
    if (text_[at_] == '"')
        return error_at(at_, line_, say(phrase("text", "a quote stands inside a field without quotes")),
                        say(phrase("text", "put the field in quotes and write the quote twice")));
    return error_at(at_, line_, say(phrase("text", "a carriage return without line feed")),
                    say(phrase("text", "save the file with LF or CRLF line ends")));
}

Result<bool> CsvReader::next(CsvRecord& record) {
    record.line = line_;
    // Fields of the record before are used again, with the memory that they have.
    std::size_t count = 0;
    while (at_ < text_.size() || count > 0) {
        if (count == record.fields.size()) record.fields.emplace_back();
        std::string& field = record.fields[count++];
        field.clear();
        const bool quoted = at_ < text_.size() && text_[at_] == '"';
        if (Result<void> read = quoted ? quoted_field(field) : plain_field(field); !read) return read.error();
        if (at_line_end()) break;
        ++at_; // the comma
    }
    record.fields.resize(count);
    if (count == 0) return false;
    if (at_ < text_.size()) {
        at_ += text_[at_] == '\r' ? 2 : 1;
        ++line_;
    }
    return true;
}

char foreign_separator(std::string_view header_line) {
    if (header_line.find(',') != std::string_view::npos) return '\0';
    if (header_line.find(';') != std::string_view::npos) return ';';
    return header_line.find('\t') != std::string_view::npos ? '\t' : '\0';
}

void append_csv_field(std::string& text, std::string_view field) {
    const bool blank_end = !field.empty() && (field.front() == ' ' || field.front() == '\t' || field.back() == ' ' || field.back() == '\t');
    if (!blank_end && field.find_first_of(",\"\r\n") == std::string_view::npos) {
        text += field;
        return;
    }
    append_quoted_csv_field(text, field);
}

void append_quoted_csv_field(std::string& text, std::string_view field) {
    text += '"';
    for (char c : field) {
        if (c == '"') text += '"';
        text += c;
    }
    text += '"';
}

void append_csv_record(std::string& text, const std::vector<std::string>& fields) {
    if (fields.size() == 1 && fields.front().empty()) text += "\"\"";
    for (std::size_t i = 0; i < fields.size(); ++i) {
        if (i > 0) text += ',';
        append_csv_field(text, fields[i]);
    }
    text += '\n';
}

} // namespace ullage
