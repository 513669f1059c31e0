// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>

namespace ullage::test {

/// The text with every line feed and run of blanks as one blank: lines are broken where they are full, and kept from it by no-break spaces.
inline std::string unwrapped(const std::string& text) {
    std::string flat;
    for (std::size_t at = 0; at < text.size(); ++at) {
        const char c = text[at];
        const bool no_break = text.compare(at, 2, "\u00A0") == 0;
        if (no_break) ++at;
        const bool blank = no_break || c == ' ' || c == '\n';
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
