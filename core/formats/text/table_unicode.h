// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace ullage {

/// A character and the bytes that it takes.
struct Letter {
    char32_t code = 0;
    std::string_view bytes;
};

/// The characters of a text, which must outlive them; each byte of an ill-formed sequence is a U+FFFD.
[[nodiscard]] std::vector<Letter> letters_of(std::string_view text);

/// The first of them. Precondition: not empty.
[[nodiscard]] Letter first_letter(std::string_view text);

/// Whether a character does something that nobody sees where a text is shown: controls other than tab, line feed and carriage return; marks,
/// embeddings, overrides and isolates of direction (Unicode Standard Annex 9, 2), by which a text may look like another; U+FEFF; U+FFFE and U+FFFF.
[[nodiscard]] bool acts_unseen(char32_t letter);

/// "\u202E": how such a character is shown.
[[nodiscard]] std::string shown_escape(char32_t letter);

/// UTF-8 that every format can hold: characters that act unseen become their shown_escape(), ill-formed sequences U+FFFD. Tab,
/// line feed and carriage return stay.
[[nodiscard]] std::string clean_text(std::string_view text);

/// clean_text on one line: each run of tabs, line ends and line separators becomes one space, so that a text cannot break a
/// table apart or send commands to a terminal.
[[nodiscard]] std::string one_line(std::string_view text);

/// Columns that the text takes on a terminal with fixed-width letters: combining marks take none, East Asian wide letters and
/// emoji two. The ranges are the large blocks of Unicode's East Asian Width list, not each single character.
[[nodiscard]] std::size_t display_width(std::string_view text);

/// The longest beginning of `text` of at most `units` UTF-16 code units (what spreadsheets count) that splits no character.
[[nodiscard]] std::string_view clipped_utf16(std::string_view text, std::size_t units);

} // namespace ullage
