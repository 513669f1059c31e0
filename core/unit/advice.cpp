// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/advice.h"

#include "base/language.h"

#include <cstring>

namespace ullage {
namespace {

/// Another language, which has no words for advice.
class Unadvised : public Language {
public:
    explicit Unadvised(const Language& language) : language_(language) {}
    std::string words(const Phrase& phrase, std::optional<long> count) const override {
        return std::strcmp(phrase.context, advice_context) == 0 ? std::string() : language_.words(phrase, count);
    }
    char decimal_sign() const override { return language_.decimal_sign(); }
    std::string code() const override { return language_.code(); }

private:
    const Language& language_;
};

} // namespace

std::string without_advice(const Message& message) {
    const Unadvised unadvised(language_in_use());
    const SpeakingIn speaking(unadvised, decimal_sign_in_use());
    return message.text();
}

} // namespace ullage
