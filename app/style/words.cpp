// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/words.h"

#include "formats/text/table_unicode.h"

#include <algorithm>

namespace ullage {

QString text_of(std::string_view text) {
    // Most text is plain ASCII, and tables ask for it at every painting.
    const auto plain = [](char c) { return c >= 0x20 && c < 0x7F; };
    return std::ranges::all_of(text, plain) ? QString::fromLatin1(text.data(), static_cast<qsizetype>(text.size()))
                                            : QString::fromStdString(clean_text(text));
}

} // namespace ullage
