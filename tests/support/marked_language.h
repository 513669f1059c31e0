// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/language.h"

#include <string>

namespace ullage::test {

/// A language in which every text begins with a mark, so that what has none was not said in it; with a comma as its decimal sign.
class MarkedLanguage : public Language {
public:
    std::string words(const Phrase& phrase, std::optional<long> count) const override {
        return std::string(mark) + (count == 1 && phrase.english_one ? phrase.english_one : phrase.english);
    }
    char decimal_sign() const override { return ','; }
    std::string code() const override { return "de"; }

    static constexpr const char* mark = "§";
};

inline const MarkedLanguage marked_language;

inline bool is_marked(const std::string& text) { return text.starts_with(MarkedLanguage::mark); }

} // namespace ullage::test
