// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/folder/inside/file_names.h"

#include "formats/text/sheet_keys.h"

#include <cctype>

namespace ullage::folder {
namespace {

constexpr std::size_t most_bytes = 80;

/// Length of the UTF-8 character at the head of a text, and whether it may stand in a name: letters from Latin-1 on, no signs, no controls, none of
/// the marks that turn the direction of writing.
struct Character {
    std::size_t bytes = 1;
    bool kept = false;
};

Character character_at(std::string_view text) {
    const auto byte = [&](std::size_t i) { return i < text.size() ? static_cast<unsigned char>(text[i]) : 0U; };
    const unsigned first = byte(0);
    if (first < 0x80) return {1, std::isalnum(static_cast<int>(first)) != 0};
    if (first < 0xE0) return {2, ((first & 0x1FU) << 6U | (byte(1) & 0x3FU)) >= 0xC0};
    if (first < 0xF0) {
        const unsigned code = (first & 0xFU) << 12U | (byte(1) & 0x3FU) << 6U | (byte(2) & 0x3FU);
        const bool sign = (code >= 0x2000 && code < 0x2C00) || (code >= 0x3000 && code < 0x3040) || code >= 0xD800;
        return {3, !sign};
    }
    return {4, false};
}

std::string stem_of(std::string_view text, std::size_t most) {
    std::string stem;
    while (!text.empty()) {
        const Character character = character_at(text);
        const std::string_view piece = text.substr(0, character.bytes);
        text.remove_prefix(piece.size());
        if (character.kept && stem.size() + piece.size() > most) break;
        if (character.kept) stem += piece;
        else if (!stem.empty() && stem.back() != '-' && stem.size() < most) stem += '-';
    }
    while (!stem.empty() && stem.back() == '-') stem.pop_back();
    return stem.empty() ? "unnamed" : stem;
}

} // namespace

std::string FileNames::next(std::string_view text, std::string_view ending) {
    const std::string first = lower_case(stem_of(text, most_bytes - ending.size()));
    std::string name = first + std::string(ending);
    for (int number = 2; !taken_.insert(name).second; ++number) {
        const std::string behind = '-' + std::to_string(number);
        name = stem_of(first, most_bytes - ending.size() - behind.size()) + behind + std::string(ending);
    }
    return name;
}

} // namespace ullage::folder
