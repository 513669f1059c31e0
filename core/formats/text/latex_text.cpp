// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/latex_text.h"

#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <cctype>
#include <map>

namespace ullage {

namespace {

const std::map<char32_t, std::string_view>& commands() {
    static const std::map<char32_t, std::string_view> known{{U'\\', "\\textbackslash{}"},
                                                            {U'{', "\\{"},
                                                            {U'}', "\\}"},
                                                            {U'$', "\\$"},
                                                            {U'&', "\\&"},
                                                            {U'#', "\\#"},
                                                            {U'%', "\\%"},
                                                            {U'_', "\\_"},
                                                            {U'^', "\\textasciicircum{}"},
                                                            {U'~', "\\textasciitilde{}"},
                                                            {U'<', "\\textless{}"},
                                                            {U'>', "\\textgreater{}"},
                                                            {U'|', "\\textbar{}"},
                                                            {U'"', "\\textquotedbl{}"},
                                                            {U'`', "\\textasciigrave{}"},
                                                            // After the end of a row these two would be read as its options.
                                                            {U'[', "{[}"},
                                                            {U']', "{]}"},
                                                            {U'*', "{*}"},
                                                            {U'\u00A0', "~"},
                                                            {U'\u00AD', "\\-"},
                                                            {U'\u00B0', "\\textdegree{}"},
                                                            {U'\u00B1', "$\\pm$"},
                                                            {U'\u00B2', "$^{2}$"},
                                                            {U'\u00B3', "$^{3}$"},
                                                            {U'\u00B9', "$^{1}$"},
                                                            {U'\u00B5', "$\\mu$"},
                                                            {U'\u03BC', "$\\mu$"},
                                                            {U'\u00B7', "$\\cdot$"},
                                                            {U'\u00D7', "$\\times$"},
                                                            {U'\u00F7', "$\\div$"},
                                                            {U'\u00AC', "$\\neg$"},
                                                            {U'\u2009', "\\,"},
                                                            {U'\u202F', "\\,"},
                                                            {U'\u2010', "-"},
                                                            {U'\u2011', "\\mbox{-}"},
                                                            {U'\u2013', "\\textendash{}"},
                                                            {U'\u2014', "\\textemdash{}"},
                                                            {U'\u2018', "\\textquoteleft{}"},
                                                            {U'\u2019', "\\textquoteright{}"},
                                                            {U'\u201A', "\\quotesinglbase{}"},
                                                            {U'\u201C', "\\textquotedblleft{}"},
                                                            {U'\u201D', "\\textquotedblright{}"},
                                                            {U'\u201E', "\\quotedblbase{}"},
                                                            {U'\u2022', "\\textbullet{}"},
                                                            {U'\u2026', "\\ldots{}"},
                                                            {U'\u20AC', "\\texteuro{}"},
                                                            {U'\u2192', "$\\rightarrow$"},
                                                            {U'\u2212', "$-$"},
                                                            {U'\u2248', "$\\approx$"},
                                                            {U'\u2260', "$\\neq$"},
                                                            {U'\u2264', "$\\leq$"},
                                                            {U'\u2265', "$\\geq$"},
                                                            {U'\u221E', "$\\infty$"},
                                                            {U'\u0394', "$\\Delta$"},
                                                            {U'\u03A3', "$\\Sigma$"},
                                                            {U'\u03A9', "$\\Omega$"},
                                                            {U'\u2126', "$\\Omega$"},
                                                            {U'\u03B1', "$\\alpha$"},
                                                            {U'\u03B2', "$\\beta$"},
                                                            {U'\u03C3', "$\\sigma$"},
                                                            {U'\u03C7', "$\\chi$"}};
    return known;
}

/// Letters that T1 has, or sets with an accent.
bool stays(char32_t code) {
    const bool missing = code == 0x126 || code == 0x127 || code == 0x138 || code == 0x13F || code == 0x140 || code == 0x149 || code == 0x166 ||
                         code == 0x167 || code == 0x17F;
    return code < 0x80 || (code >= 0xA1 && code <= 0x17F && !missing);
}

/// Two of these in a row are one sign to TeX.
bool joins(char32_t code) { return code == U'-' || code == U'\'' || code == U','; }

} // namespace

std::string latex_text(std::string_view text) {
    const std::string line = one_line(text);
    std::string out;
    char32_t before = 0;
    for (const Letter& letter : letters_of(line)) {
        if (joins(letter.code) && letter.code == before) out += "{}";
        before = letter.code;
        if (const auto command = commands().find(letter.code); command != commands().end()) out += command->second;
        else if (stays(letter.code)) out += letter.bytes;
        else out += fmt::format("\\ullageletter{{{:04X}}}{{{}}}", static_cast<unsigned>(letter.code), letter.bytes);
    }
    return out;
}

std::string latex_number_text(std::string_view text) {
    const std::string plain = latex_text(text);
    std::string out;
    for (std::size_t i = 0; i < plain.size(); ++i) {
        const bool before_digit = i + 1 < plain.size() && std::isdigit(static_cast<unsigned char>(plain[i + 1]));
        if (plain[i] == ' ') out += '~';
        else if (plain[i] == '-' && before_digit && (i == 0 || plain[i - 1] == ' ')) out += "$-$";
        else out += plain[i];
    }
    return out;
}

} // namespace ullage
