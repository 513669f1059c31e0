// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/plain_text.h"

#include "base/number.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

struct Spelling {
    std::string_view from; ///< UTF-8 of one character
    char to;
};

constexpr Spelling spellings[] = {{"\xC2\xA0", ' '}, {"\xE2\x80\x89", ' '}, {"\xE2\x80\xAF", ' '}, {"\xE2\x88\x92", '-'}};

} // namespace

std::string with_plain_blanks(std::string_view text) {
    // Most texts hold nothing that is spelled otherwise.
    if (text.find_first_of("\xC2\xE2") == std::string_view::npos) return std::string(trimmed(text));
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        const auto* const found =
            std::ranges::find_if(spellings, [&](const Spelling& spelling) { return text.substr(at).starts_with(spelling.from); });
        plain += found == std::end(spellings) ? text[at] : found->to;
        at += found == std::end(spellings) ? 1 : found->from.size();
    }
    return std::string(trimmed(plain));
}

} // namespace ullage
