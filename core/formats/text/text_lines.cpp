// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/text_lines.h"

#include "formats/text/table_unicode.h"

#include <algorithm>

namespace ullage {

namespace {

void append_fitted(std::string& out, std::string_view line, std::size_t width) {
    const std::size_t begin = std::min(line.find_first_not_of(' '), line.size());
    std::string indent(begin, ' ');
    out += indent;
    std::size_t used = begin;
    bool first = true;
    for (std::size_t at = begin; at < line.size();) {
        const std::size_t end = std::min(line.find(' ', at), line.size());
        const std::string_view word = line.substr(at, end - at);
        const std::size_t length = display_width(word);
        if (!first && used + 1 + length > width) {
            if (indent.size() == begin) indent += "  ";
            out.erase(out.find_last_not_of(' ') + 1);
            out += '\n' + indent;
            used = indent.size();
        } else if (!first) {
            out += ' ';
            ++used;
        }
        out += word;
        used += length;
        first = false;
        at = end + 1;
    }
}

} // namespace

std::string fitted_lines(std::string_view text, std::size_t width) {
    std::string out;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string_view line = text.substr(0, end);
        if (display_width(line) <= width) out += line;
        else append_fitted(out, line, width);
        if (end < text.size()) out += '\n';
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return out;
}

} // namespace ullage
