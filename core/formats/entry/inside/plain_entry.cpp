// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/entry/inside/plain_entry.h"

#include "base/plain_text.h"

namespace ullage {

std::string plain_entry(std::string_view text) {
    std::string plain = with_plain_blanks(text);
    for (char& c : plain)
        if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    return plain;
}

} // namespace ullage
