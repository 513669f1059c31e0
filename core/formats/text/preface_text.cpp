// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/preface_text.h"

#include "base/number.h"
#include "formats/text/spreadsheet_text.h"

#include <algorithm>
#include <iterator>

namespace ullage {

namespace {

/// The character after the backslash and the character it stands for.
struct Escape {
    char letter;
    char meaning;
};
constexpr Escape escapes[] = {{'\\', '\\'}, {'n', '\n'}, {'r', '\r'}, {'s', ' '}, {'t', '\t'}, {',', ','}, {'c', ','}, {'e', ';'}};

/// Backslash, line ends always; blanks at either end; commas in the run of blanks and commas that ends the value; commas and
/// semicolons before what a spreadsheet would run.
bool needs_escape(std::string_view value, std::size_t at, std::size_t tail_begin) {
    switch (value[at]) {
    case '\\':
    case '\n':
    case '\r': return true;
    case ' ':
    case '\t': return at == 0 || at >= tail_begin;
    case ',':
    case ';': return (value[at] == ',' && at >= tail_begin) || looks_like_formula(value.substr(at + 1));
    default: return false;
    }
}

} // namespace

std::string escaped_preface(std::string_view value) {
    const auto last = value.find_last_not_of(" \t,");
    const std::size_t tail_begin = last == std::string_view::npos ? 0 : last + 1;
    std::string text;
    for (std::size_t at = 0; at < value.size(); ++at) {
        if (!needs_escape(value, at, tail_begin)) {
            text += value[at];
            continue;
        }
        text += '\\';
        // A spreadsheet that cuts the line at a bare one would run what follows.
        if (value[at] == ',' && at < tail_begin) text += 'c';
        else text += std::ranges::find(escapes, value[at], &Escape::meaning)->letter;
    }
    return text;
}

Result<std::string> unescaped_preface(std::string_view text) {
    text = trimmed(text);
    std::string value;
    std::size_t kept = 0; // length up to the last character that is neither a bare blank nor a bare comma
    for (std::size_t at = 0; at < text.size(); ++at) {
        if (text[at] != '\\') {
            value += text[at];
            if (text[at] != ' ' && text[at] != '\t' && text[at] != ',') kept = value.size();
            continue;
        }
        const char letter = at + 1 < text.size() ? text[++at] : '\0';
        const auto escape = std::ranges::find(escapes, letter, &Escape::letter);
        if (escape == std::end(escapes))
            return Error{Failure::bad_input,
                         letter == '\0' ? say(phrase("text", "a backslash ends the value"))
                                        : say(phrase("text", "a backslash stands before a character that it has no meaning for")),
                         {},
                         say(phrase("text", "write `\\\\` for a backslash"))};
        value += escape->meaning;
        kept = value.size();
    }
    value.resize(kept);
    return value;
}

} // namespace ullage
