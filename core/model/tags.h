// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <string>
#include <string_view>
#include <vector>

namespace ullage {

inline constexpr std::size_t longest_tag = 40; ///< bytes of UTF-8

/// The tags of a text such as "lent; tent": parted at semicolons and commas, blanks around each dropped, empty ones left out, sorted as
/// sorted_tags(). Error bad_input: a tag longer than `longest_tag`, or with a control character; more than `most_tags` (model/limits.h).
[[nodiscard]] Result<std::vector<std::string>> tags_from(std::string_view text);

/// In order of their bytes, each once; two that differ only in the case of ASCII letters are one, spelt as the first of them.
[[nodiscard]] std::vector<std::string> sorted_tags(std::vector<std::string> tags);

/// "lent;tent", which tags_from() reads back. Precondition: no tag holds a semicolon or comma.
[[nodiscard]] std::string tags_text(const std::vector<std::string>& tags, std::string_view separator = ";");

/// Whether a unit's tags have this one, in any case of ASCII letters.
[[nodiscard]] bool has_tag(const std::vector<std::string>& tags, std::string_view tag);

} // namespace ullage
