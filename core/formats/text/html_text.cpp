// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/html_text.h"

#include "formats/text/table_unicode.h"

namespace ullage {

std::string html_text(std::string_view text) {
    std::string out;
    for (const char c : one_line(text)) {
        switch (c) {
        case '&': out += "&amp;"; break;
        case '<': out += "&lt;"; break;
        case '>': out += "&gt;"; break;
        case '"': out += "&quot;"; break;
        case '\'': out += "&#39;"; break;
        default: out += c;
        }
    }
    return out;
}

} // namespace ullage
