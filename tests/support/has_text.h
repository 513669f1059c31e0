// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace ullage::test {

/// The text with every line feed and run of blanks as one blank: lines are broken where they are full.
inline std::string unwrapped(const std::string& text) {
    std::string flat;
    for (const char c : text) {
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
