// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

namespace ullage::test {

/// No-break spaces, which keep a line from ending within a value, as plain ones.
inline std::string with_plain_spaces(std::string text) {
    constexpr const char* no_break = "\u00A0";
    for (std::size_t at = text.find(no_break); at != std::string::npos; at = text.find(no_break, at)) text.replace(at, 2, " ");
    return text;
}

/// The text with every line feed and run of blanks as one blank: lines are broken where they are full.
inline std::string unwrapped(const std::string& text) {
    std::string flat;
    for (const char c : with_plain_spaces(text)) {
        const bool blank = c == ' ' || c == '\n';
        if (!blank) flat += c;
        else if (flat.empty() || flat.back() != ' ') flat += ' ';
    }
    return flat;
}

/// Wherever its lines may be broken.
inline bool contains(const std::string& text, const std::string& part) {
    return text.find(part) != std::string::npos || unwrapped(text).find(unwrapped(part)) != std::string::npos;
}

} // namespace ullage::test
