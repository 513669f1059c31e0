// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/utf8.h"

namespace ullage {

namespace {

bool within(std::string_view text, std::size_t at, unsigned char low, unsigned char high) {
    if (at >= text.size()) return false;
    const auto byte = static_cast<unsigned char>(text[at]);
    return byte >= low && byte <= high;
}

/// Length of the well-formed character at `at`, 0 when there is none. The second byte's range depends on the
/// first.
std::size_t character_length(std::string_view text, std::size_t at) {
    const auto lead = static_cast<unsigned char>(text[at]);
    if (lead < 0x80) return 1;
    if (lead < 0xC2 || lead > 0xF4) return 0;
    const std::size_t length = lead < 0xE0 ? 2 : lead < 0xF0 ? 3 : 4;
    const unsigned char low = lead == 0xE0 ? 0xA0 : lead == 0xF0 ? 0x90 : 0x80;
    const unsigned char high = lead == 0xED ? 0x9F : lead == 0xF4 ? 0x8F : 0xBF;
    if (!within(text, at + 1, low, high)) return 0;
    for (std::size_t i = 2; i < length; ++i)
        if (!within(text, at + i, 0x80, 0xBF)) return 0;
    return length;
}

} // namespace

std::optional<std::size_t> first_bad_utf8(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t length = character_length(text, at);
        if (length == 0) return at;
        at += length;
    }
    return std::nullopt;
}

} // namespace ullage
