// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"

#include <atomic>
#include <utility>

namespace ullage {
namespace {

class English : public Language {
public:
    std::string words(const Phrase& phrase, std::optional<long> count) const override {
        return count == 1 && phrase.english_one ? phrase.english_one : phrase.english;
    }
    char decimal_sign() const override { return '.'; }
    std::string code() const override { return "en"; }
};

std::atomic<const Language*> language_of_all = nullptr;
thread_local const Language* language_of_this_thread = nullptr;
thread_local std::optional<char> sign_of_this_thread;

} // namespace

const Language& english() {
    static const English language;
    return language;
}

const Language& language_in_use() {
    if (language_of_this_thread) return *language_of_this_thread;
    const Language* chosen = language_of_all.load();
    return chosen ? *chosen : english();
}

void use_language(const Language& language) { language_of_all = &language; }

char decimal_sign_in_use() { return sign_of_this_thread.value_or(language_in_use().decimal_sign()); }

SpeakingIn::SpeakingIn(const Language& language)
    : before_(std::exchange(language_of_this_thread, &language)), sign_before_(std::exchange(sign_of_this_thread, std::nullopt)) {}

SpeakingIn::SpeakingIn(const Language& language, char decimal_sign) : SpeakingIn(language) { sign_of_this_thread = decimal_sign; }

SpeakingIn::~SpeakingIn() {
    language_of_this_thread = before_;
    sign_of_this_thread = sign_before_;
}

} // namespace ullage
