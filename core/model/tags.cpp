// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/tags.h"

#include "base/number.h"
#include "model/limits.h"

#include <algorithm>
#include <unordered_set>

namespace ullage {

namespace {

std::string folded(std::string_view text) {
    std::string lower(text);
    for (char& letter : lower)
        if (letter >= 'A' && letter <= 'Z') letter = static_cast<char>(letter - 'A' + 'a');
    return lower;
}

} // namespace

Result<std::vector<std::string>> tags_from(std::string_view text) {
    std::vector<std::string> tags;
    while (!text.empty()) {
        const std::size_t end = text.find_first_of(";,");
        const std::string tag(trimmed(text.substr(0, end)));
        text.remove_prefix(end == std::string_view::npos ? text.size() : end + 1);
        if (tag.empty()) continue;
        if (tag.size() > longest_tag)
            return Error{Failure::bad_input,
                         say_count(tag.size(), phrases("model", "a tag of %n letters is too long", "a tag of %n letter is too long")),
                         say(phrase("model", "tags")),
                         say_count(longest_tag, phrases("model", "give short words of at most %n letters with semicolons between them",
                                                        "give short words of at most %n letter with semicolons between them"))};
        if (std::ranges::any_of(tag, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7f; }))
            return Error{Failure::bad_input, say(phrase("model", "a tag holds a tab, a line break or another control character")),
                         say(phrase("model", "tags")), say(phrase("model", "give it as one word"))};
        tags.push_back(tag);
        if (tags.size() > most_tags)
            return check_count(say(phrase("model", "tags")), phrases("model", "there are %n or more tags", "there is %n or more tags"), tags.size(),
                               most_tags)
                .error();
    }
    return sorted_tags(std::move(tags));
}

std::vector<std::string> sorted_tags(std::vector<std::string> tags) {
    std::unordered_set<std::string> seen;
    std::vector<std::string> kept;
    for (std::string& tag : tags)
        if (seen.insert(folded(tag)).second) kept.push_back(std::move(tag));
    std::ranges::sort(kept);
    return kept;
}

std::string tags_text(const std::vector<std::string>& tags, std::string_view separator) {
    std::string text;
    for (const std::string& tag : tags) {
        if (!text.empty()) text += separator;
        text += tag;
    }
    return text;
}

bool has_tag(const std::vector<std::string>& tags, std::string_view tag) {
    const std::string wanted = folded(tag);
    return std::ranges::any_of(tags, [&](const std::string& known) { return folded(known) == wanted; });
}

} // namespace ullage
