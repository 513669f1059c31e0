// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <optional>
#include <string>

namespace ullage {

/// How a language says the phrases of the program and writes its numbers. Objects outlive every use; their functions may be called from any thread.
class Language {
public:
    virtual ~Language() = default;
    /// The words of the phrase in this language, with the places of its arguments; `count` chooses the form of plural and absent where there is none.
    [[nodiscard]] virtual std::string words(const Phrase& phrase, std::optional<long> count) const = 0;
    [[nodiscard]] virtual char decimal_sign() const = 0;
    /// "en", "de", …: ISO 639-1.
    [[nodiscard]] virtual std::string code() const = 0;
};

/// The words as they stand in the source, numbers with a point.
[[nodiscard]] const Language& english();

/// That of the innermost SpeakingIn of this thread, else of use_language(), else English.
[[nodiscard]] const Language& language_in_use();

/// The language of all threads from now on. Call it before the program says anything.
void use_language(const Language& language);

/// The decimal sign of the innermost SpeakingIn of this thread that names one, else that of the language in use.
[[nodiscard]] char decimal_sign_in_use();

/// While it lives, this thread speaks another language: for a report in that of its readers, for files that machines read. May be nested.
class SpeakingIn {
public:
    explicit SpeakingIn(const Language& language);
    SpeakingIn(const Language& language, char decimal_sign);
    ~SpeakingIn();
    SpeakingIn(const SpeakingIn&) = delete;
    SpeakingIn& operator=(const SpeakingIn&) = delete;

private:
    const Language* before_;
    std::optional<char> sign_before_;
};

} // namespace ullage
