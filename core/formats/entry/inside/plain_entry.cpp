// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/inside/plain_entry.h"

#include "base/number.h"

namespace ullage {

namespace {

struct Replacement {
    std::string_view from; ///< UTF-8 of one character
    char to;
};

/// No-break space U+00A0, thin space U+2009, narrow no-break space U+202F, minus sign U+2212.
constexpr Replacement replacements[] = {{"\xC2\xA0", ' '}, {"\xE2\x80\x89", ' '}, {"\xE2\x80\xAF", ' '}, {"\xE2\x88\x92", '-'}};

} // namespace

std::string plain_entry(std::string_view text) {
    std::string plain;
    for (std::size_t at = 0; at < text.size();) {
        char c = text[at];
        std::size_t length = 1;
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
        for (const Replacement& replacement : replacements)
            if (text.substr(at).starts_with(replacement.from)) {
                c = replacement.to;
                length = replacement.from.size();
            }
        plain += c;
        at += length;
    }
    return std::string(trimmed(plain));
}

} // namespace ullage
