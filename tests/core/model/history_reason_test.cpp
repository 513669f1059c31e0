// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/language.h"
#include "model/history_reason.h"

#include <gtest/gtest.h>

namespace ullage {
namespace {

/// Says everything but names in capitals.
class Loud : public Language {
public:
    std::string words(const Phrase& phrase, std::optional<long>) const override {
        std::string text = phrase.english;
        for (char& letter : text)
            if (letter >= 'a' && letter <= 'z') letter = static_cast<char>(letter - 'a' + 'A');
        return text;
    }
    char decimal_sign() const override { return '.'; }
    std::string code() const override { return "xx"; }
};

const Loud loud;

TEST(HistoryReason, of_the_program_is_kept_in_english_and_shown_in_the_language_in_use) {
    const SpeakingIn speaking(loud);
    EXPECT_EQ(kept_reason(HistoryReason::undone), "undone");
    EXPECT_EQ(say_reason("undone").text(), "UNDONE");
    EXPECT_EQ(kept_reason(HistoryReason::joined, "joined with me.ullage"), "joined with joined with me.ullage");
    EXPECT_EQ(say_reason("joined with joined with me.ullage").text(), "JOINED WITH joined with me.ullage");
    for (const auto reason : {HistoryReason::undone, HistoryReason::redone, HistoryReason::not_all_recorded, HistoryReason::run_not_ended})
        EXPECT_NE(say_reason(kept_reason(reason)).text(), kept_reason(reason));
}

TEST(HistoryReason, of_a_person_stays_as_it_was_written) {
    const SpeakingIn speaking(loud);
    for (const char* written : {"misread", "undone by the cat", "joined with ", "r\u00FCckg\u00E4ngig gemacht", ""})
        EXPECT_EQ(say_reason(written).text(), written);
}

} // namespace
} // namespace ullage
