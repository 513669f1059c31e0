// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <cstdint>
#include <utility>

namespace ullage {

namespace {

constexpr char32_t replacement = 0xFFFD;

struct Decoded {
    char32_t letter = replacement;
    std::size_t bytes = 1;
};

/// The first character; an ill-formed beginning counts as one byte of U+FFFD. Precondition: not empty.
Decoded decode(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned first = byte(0);
    if (first < 0x80) return {first, 1};
    const std::size_t bytes = first >= 0xF0 ? 4 : first >= 0xE0 ? 3 : 2;
    if (first < 0xC2 || first > 0xF4 || text.size() < bytes) return {};
    char32_t letter = first & (0xFFu >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xC0) != 0x80) return {};
        letter = (letter << 6) | (byte(i) & 0x3F);
    }
    constexpr std::array<char32_t, 5> smallest{0, 0, 0x80, 0x800, 0x10000};
    if (letter < smallest[bytes] || letter > 0x10FFFF || (letter >= 0xD800 && letter <= 0xDFFF)) return {};
    return {letter, bytes};
}

template <class Use>
void for_each_letter(std::string_view text, Use use) {
    while (!text.empty()) {
        const Decoded next = decode(text);
        use(next.letter, text.substr(0, next.bytes));
        text.remove_prefix(next.bytes);
    }
}

bool within(char32_t letter, std::initializer_list<std::pair<char32_t, char32_t>> ranges) {
    return std::ranges::any_of(ranges, [&](auto range) { return letter >= range.first && letter <= range.second; });
}

bool is_space_control(char32_t letter) { return letter == '\t' || letter == '\n' || letter == '\r'; }

} // namespace

std::vector<Letter> letters_of(std::string_view text) {
    std::vector<Letter> letters;
    for_each_letter(text, [&](char32_t code, std::string_view bytes) { letters.push_back({code, bytes}); });
    return letters;
}

Letter first_letter(std::string_view text) {
    const Decoded next = decode(text);
    return {next.letter, text.substr(0, next.bytes)};
}

std::string shown_escape(char32_t letter) { return fmt::format("\\u{:04X}", static_cast<std::uint32_t>(letter)); }

bool acts_unseen(char32_t letter) {
    return (letter < 0x20 && !is_space_control(letter)) ||
           within(letter, {{0x7F, 0x9F}, {0x61C, 0x61C}, {0x200E, 0x200F}, {0x202A, 0x202E}, {0x2066, 0x2069}, {0xFEFF, 0xFEFF}, {0xFFFE, 0xFFFF}});
}

std::string clean_text(std::string_view text) {
    std::string clean;
    clean.reserve(text.size());
    for_each_letter(text, [&](char32_t letter, std::string_view bytes) {
        if (acts_unseen(letter)) clean += shown_escape(letter);
        else clean += letter == replacement ? std::string_view("\xEF\xBF\xBD") : bytes;
    });
    return clean;
}

std::string one_line(std::string_view text) {
    std::string line;
    bool gap = false;
    for_each_letter(text, [&](char32_t letter, std::string_view bytes) {
        if (is_space_control(letter) || letter == 0x85 || within(letter, {{0x2028, 0x2029}})) {
            gap = true;
            return;
        }
        if (gap && !line.empty()) line += ' ';
        gap = false;
        if (acts_unseen(letter)) line += shown_escape(letter);
        else line += letter == replacement ? std::string_view("\xEF\xBF\xBD") : bytes;
    });
    return line;
}

std::size_t display_width(std::string_view text) {
    std::size_t width = 0;
    for_each_letter(text, [&](char32_t letter, std::string_view) {
        if (within(letter, {{0x300, 0x36F}, {0x200B, 0x200F}, {0x20D0, 0x20FF}, {0xFE00, 0xFE0F}})) return;
        const bool wide = within(letter, {{0x1100, 0x115F},
                                          {0x2E80, 0xA4CF},
                                          {0xAC00, 0xD7A3},
                                          {0xF900, 0xFAFF},
                                          {0xFE30, 0xFE6F},
                                          {0xFF00, 0xFF60},
                                          {0xFFE0, 0xFFE6},
                                          {0x1F300, 0x1FAFF},
                                          {0x20000, 0x3FFFD}});
        width += wide ? 2 : 1;
    });
    return width;
}

std::string_view clipped_utf16(std::string_view text, std::size_t units) {
    std::size_t bytes = 0, used = 0;
    bool full = false;
    for_each_letter(text, [&](char32_t letter, std::string_view part) {
        const std::size_t more = letter > 0xFFFF ? 2 : 1;
        full = full || used + more > units;
        if (full) return;
        used += more;
        bytes += part.size();
    });
    return text.substr(0, bytes);
}

} // namespace ullage
