// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says once it speaks another language.
#include "base/quantity.h"
#include "style/languages.h"
#include "style/numbers.h"
#include "style/words.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <gtest/gtest.h>

#include <thread>

namespace ullage {
namespace {

class Speaking : public testing::Test {
protected:
    void TearDown() override { speak(QStringLiteral("en")); }
};

} // namespace

TEST(LanguageToSpeak, is_the_one_chosen_else_the_desktops_best_that_is_spoken_else_english) {
    EXPECT_EQ(language_to_speak("fr", {"de-AT"}), "fr");
    EXPECT_EQ(language_to_speak("", {"de-AT", "en"}), "de");
    EXPECT_EQ(language_to_speak("", {"sv-SE", "es-MX", "de"}), "es");
    EXPECT_EQ(language_to_speak("tlh", {"C"}), "en");
    EXPECT_EQ(language_to_speak("", {}), "en");
}

TEST_F(Speaking, core_window_and_toolkit_speak_alike) {
    speak(QStringLiteral("de"));
    EXPECT_EQ(say_kind(Kind::not_known).text(), "unbekannt");
    EXPECT_EQ(say_kind(Kind::not_known).english(), "not known");
    EXPECT_EQ(shown_number(std::nullopt, 0), "unbekannt");
    const QDialogButtonBox buttons(QDialogButtonBox::Cancel);
    EXPECT_EQ(buttons.button(QDialogButtonBox::Cancel)->text().remove('&'), "Abbrechen");
}

TEST_F(Speaking, numbers_and_dates_take_the_form_of_the_language) {
    const Quantity quantity = known("delivered_wh", "Wh", 431.26, 1.7, Kind::measured);
    EXPECT_EQ(shown_quantity(quantity).plain(), "431.3 ± 1.7 Wh");
    speak(QStringLiteral("de"));
    EXPECT_EQ(shown_quantity(quantity).plain(), "431,3 ± 1,7 Wh");
    const UtcMs moment = parse_iso8601("2027-05-14T18:00Z", "UTC").value();
    EXPECT_EQ(date_text(moment, "UTC"), "14. Mai 2027");
    speak(QStringLiteral("es"));
    EXPECT_EQ(date_text(moment, "UTC"), "14 de mayo de 2027");
    speak(QStringLiteral("fr"));
    EXPECT_EQ(date_text(moment, "UTC"), "14 mai 2027");
}

TEST_F(Speaking, a_thread_that_makes_a_report_in_another_language_changes_no_other) {
    speak(QStringLiteral("de"));
    QString there;
    std::thread([&] {
        const SpeakingIn speaking(spoken_language(QStringLiteral("fr")));
        there = shown_number(std::nullopt, 0);
    }).join();
    EXPECT_EQ(there, QStringLiteral("inconnu"));
    EXPECT_EQ(shown_number(std::nullopt, 0), QStringLiteral("unbekannt"));
}

} // namespace ullage
