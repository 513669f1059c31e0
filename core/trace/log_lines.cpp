// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/log_lines.h"

#include <algorithm>
#include <istream>

namespace ullage {
namespace {

constexpr std::size_t chunk_bytes = 1 << 18;
constexpr std::size_t longest_line = 1 << 16;

void append_utf8(std::string& text, std::uint32_t code) {
    if (code < 0x80) {
        text += static_cast<char>(code);
    } else if (code < 0x800) {
        text += static_cast<char>(0xC0 | (code >> 6));
        text += static_cast<char>(0x80 | (code & 0x3F));
    } else if (code < 0x10000) {
        text += static_cast<char>(0xE0 | (code >> 12));
        text += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (code & 0x3F));
    } else {
        text += static_cast<char>(0xF0 | (code >> 18));
        text += static_cast<char>(0x80 | ((code >> 12) & 0x3F));
        text += static_cast<char>(0x80 | ((code >> 6) & 0x3F));
        text += static_cast<char>(0x80 | (code & 0x3F));
    }
}

bool is_utf8(std::string_view bytes) {
    for (std::size_t i = 0; i < bytes.size();) {
        const auto lead = static_cast<unsigned char>(bytes[i]);
        const std::size_t more = lead < 0x80                   ? 0
                                 : lead >= 0xC2 && lead < 0xE0 ? 1
                                 : lead >= 0xE0 && lead < 0xF0 ? 2
                                 : lead >= 0xF0 && lead < 0xF5 ? 3
                                                               : 9;
        if (more == 9) return false;
        if (i + more >= bytes.size()) return true; // a character that the end of the sample cuts off
        for (std::size_t k = 1; k <= more; ++k)
            if ((static_cast<unsigned char>(bytes[i + k]) & 0xC0) != 0x80) return false;
        i += more + 1;
    }
    return true;
}

} // namespace

LogEncoding detect_encoding(std::string_view bytes) {
    if (bytes.starts_with("\xFF\xFE")) return LogEncoding::utf16_le;
    if (bytes.starts_with("\xFE\xFF")) return LogEncoding::utf16_be;
    if (bytes.starts_with("\xEF\xBB\xBF")) return LogEncoding::plain;
    std::size_t zeros[2] = {0, 0};
    for (std::size_t i = 0; i < bytes.size(); ++i)
        if (bytes[i] == '\0') ++zeros[i % 2];
    const std::size_t many = bytes.size() / 4;
    if (zeros[1] > many && zeros[0] < many / 4) return LogEncoding::utf16_le;
    if (zeros[0] > many && zeros[1] < many / 4) return LogEncoding::utf16_be;
    return is_utf8(bytes) ? LogEncoding::plain : LogEncoding::latin1;
}

std::string_view encoding_text(LogEncoding encoding) {
    switch (encoding) {
    case LogEncoding::plain: return "UTF-8";
    case LogEncoding::latin1: return "Latin-1";
    case LogEncoding::utf16_le: return "UTF-16 (little-endian)";
    case LogEncoding::utf16_be: return "UTF-16 (big-endian)";
    }
    return "";
}

LogLines::LogLines(std::istream& in, LogEncoding encoding) : in_(in), encoding_(encoding) { raw_.resize(chunk_bytes); }

void LogLines::decode(std::string_view bytes) {
    if (encoding_ == LogEncoding::plain) {
        if (first_chunk_ && bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
        text_ += bytes;
    } else if (encoding_ == LogEncoding::latin1) {
        for (const char c : bytes) append_utf8(text_, static_cast<unsigned char>(c));
    } else {
        std::string held = carried_;
        held += bytes;
        carried_.clear();
        const auto unit = [&](std::size_t i) {
            const auto a = static_cast<unsigned char>(held[i]), b = static_cast<unsigned char>(held[i + 1]);
            return static_cast<std::uint32_t>(encoding_ == LogEncoding::utf16_le ? a | b << 8 : a << 8 | b);
        };
        std::size_t i = 0;
        for (; i + 2 <= held.size(); i += 2) {
            std::uint32_t code = unit(i);
            if (first_chunk_ && i == 0 && code == 0xFEFF) continue;
            if (code >= 0xD800 && code < 0xDC00) {
                if (i + 4 > held.size()) break;
                const std::uint32_t low = unit(i + 2);
                const bool paired = low >= 0xDC00 && low < 0xE000;
                code = paired ? 0x10000 + ((code - 0xD800) << 10) + (low - 0xDC00) : 0xFFFD;
                if (paired) i += 2;
            } else if (code >= 0xDC00 && code < 0xE000) {
                code = 0xFFFD;
            }
            append_utf8(text_, code);
        }
        carried_ = held.substr(i);
    }
    first_chunk_ = false;
}

bool LogLines::refill() {
    in_.clear(in_.rdstate() & std::ios::badbit); // more may have been put in since its end
    in_.read(raw_.data(), static_cast<std::streamsize>(raw_.size()));
    const auto count = static_cast<std::size_t>(std::max<std::streamsize>(in_.gcount(), 0));
    if (count == 0) return false;
    text_.erase(0, at_);
    at_ = 0;
    bytes_ += static_cast<std::int64_t>(count);
    const std::string_view bytes(raw_.data(), count);
    fingerprint_.add(bytes);
    decode(bytes);
    return true;
}

bool LogLines::next(std::string_view& line) {
    cut_short_ = false;
    std::size_t searched = 0;
    for (;;) {
        if (skip_lf_ && at_ < text_.size()) {
            if (text_[at_] == '\n') ++at_;
            skip_lf_ = false;
        }
        const std::string_view rest(text_.data() + at_, text_.size() - at_);
        std::size_t end = rest.substr(0, rest.find('\n', searched)).find('\r', searched);
        if (end == std::string_view::npos) end = rest.find('\n', searched);
        const bool skipped = skipping_;
        if (end != std::string_view::npos) {
            line = rest.substr(0, std::min(end, longest_line));
            cut_short_ = end > longest_line;
            skip_lf_ = rest[end] == '\r';
            at_ += end + 1;
            skipping_ = false;
            if (skipped) { // the end of a line whose beginning was given already
                searched = 0;
                continue;
            }
            ++line_;
            return true;
        }
        if (rest.size() > longest_line) {
            at_ = text_.size();
            skipping_ = true;
            searched = 0;
            if (skipped) continue;
            line = rest.substr(0, longest_line);
            cut_short_ = true;
            ++line_;
            return true;
        }
        searched = rest.size();
        if (refill()) continue;
        at_ = text_.size();
        if (rest.empty() || skipped) return false;
        line = rest;
        ++line_;
        return true;
    }
}

bool split_fields(std::string_view line, char delimiter, std::vector<std::string_view>& fields, std::vector<std::string>& scratch) {
    fields.clear();
    scratch.clear();
    const auto blank = [delimiter](char c) { return c != delimiter && (c == ' ' || c == '\t'); };
    const bool by_blanks = delimiter == ' ';
    scratch.reserve(line.find('"') == std::string_view::npos ? 0 : line.size() / 2 + 1);
    std::size_t at = 0;
    for (;;) {
        while (at < line.size() && (by_blanks ? line[at] == ' ' || line[at] == '\t' : blank(line[at]))) ++at;
        if (by_blanks && at >= line.size()) return true;
        if (at < line.size() && line[at] == '"') {
            std::size_t end = at + 1;
            bool doubled = false;
            for (;; end += 2) {
                end = line.find('"', end);
                if (end == std::string_view::npos) return false;
                if (end + 1 >= line.size() || line[end + 1] != '"') break;
                doubled = true;
            }
            std::string_view content = line.substr(at + 1, end - at - 1);
            if (doubled) {
                std::string& plain = scratch.emplace_back();
                for (std::size_t i = 0; i < content.size(); ++i) {
                    plain += content[i];
                    if (content[i] == '"') ++i;
                }
                content = plain;
            }
            at = end + 1;
            while (at < line.size() && blank(line[at])) ++at;
            if (at < line.size() && line[at] != delimiter && !(by_blanks && line[at] == '\t')) return false;
            while (!content.empty() && (content.front() == ' ' || content.front() == '\t')) content.remove_prefix(1);
            while (!content.empty() && (content.back() == ' ' || content.back() == '\t')) content.remove_suffix(1);
            fields.push_back(content);
        } else {
            std::size_t end = by_blanks ? line.find_first_of(" \t", at) : line.find(delimiter, at);
            if (end == std::string_view::npos) end = line.size();
            std::size_t last = end;
            while (last > at && blank(line[last - 1])) --last;
            fields.push_back(line.substr(at, last - at));
            at = end;
        }
        if (at >= line.size()) return true;
        ++at;
    }
}

} // namespace ullage
