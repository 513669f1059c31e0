// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/spreadsheet_text.h"

#include "formats/text/table_unicode.h"

namespace ullage {

namespace {

constexpr std::u32string_view operators = U"=+-@\uFF1D\uFF0B\uFF0D\uFF20";
constexpr std::u32string_view line_characters = U"\t\r\n";
// Unicode's White_Space and what is as invisible: soft hyphen, zero-width characters, direction marks, U+FEFF.
constexpr std::u32string_view blanks = U" \x0B\x0C\x85\u00A0\u00AD\u061C\u1680\u180E\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008"
                                       U"\u2009\u200A\u200B\u200C\u200D\u200E\u200F\u2028\u2029\u202A\u202B\u202C\u202D\u202E\u202F\u205F\u2060"
                                       U"\u2066\u2067\u2068\u2069\u3000\uFEFF";

bool is_one_of(char32_t letter, std::u32string_view set) { return set.find(letter) != std::u32string_view::npos; }

} // namespace

bool looks_like_formula(std::string_view text) {
    bool first = true;
    for (std::size_t at = text.find_first_not_of('\''); at < text.size();) {
        const Letter letter = first_letter(text.substr(at));
        if (is_one_of(letter.code, operators) || (first && is_one_of(letter.code, line_characters))) return true;
        if (!is_one_of(letter.code, blanks) && !is_one_of(letter.code, line_characters) && letter.code != U'\'') return false;
        first = false;
        at += letter.bytes.size();
    }
    return false;
}

std::string guarded_text(std::string_view text) { return looks_like_formula(text) ? "'" + std::string(text) : std::string(text); }

std::string_view unguarded_text(std::string_view text) { return text.starts_with('\'') && looks_like_formula(text) ? text.substr(1) : text; }

std::string spreadsheet_text(std::string_view text) { return looks_like_formula(text) ? "'" + clean_text(text) : clean_text(text); }

} // namespace ullage
