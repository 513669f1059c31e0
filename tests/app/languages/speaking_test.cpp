// SPDX-License-Identifier: GPL-3.0-or-later
// What the program says once it speaks another language.
#include "base/quantity.h"
#include "base/result.h"
#include "document/document.h"
#include "formats/entry/entry_text.h"
#include "models/readings_rows.h"
#include "style/clauses.h"
#include "style/languages.h"
#include "style/numbers.h"
#include "style/words.h"
#include "support/fake_clock.h"
#include "support/temp_folder.h"

#include <QDialogButtonBox>
#include <QPushButton>
#include <QUndoStack>
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

TEST_F(Speaking, french_sets_a_space_that_does_not_break_before_a_semicolon_and_a_colon) {
    const Error error{Failure::bad_input, "a", "b", "c"};
    EXPECT_EQ(error.sentence(), "b: a; c");
    speak(QStringLiteral("fr"));
    EXPECT_EQ(error.sentence(), "b\u00A0: a\u202F; c");
    EXPECT_EQ(joined_clauses({"a", "", "b"}), QStringLiteral("a\u202F; b"));
    EXPECT_EQ(error.message().english(), "b: a; c");
}

TEST_F(Speaking, a_moment_may_be_typed_in_english_and_in_the_language_of_the_window) {
    const UtcMs now = parse_iso8601("2027-05-15T02:41Z", "UTC").value();
    const auto moment = [now](const char* text) {
        const Result<UtcMs> read = parse_moment(text, now, "UTC");
        return read ? format_iso8601(read.value(), "UTC") : read.error().sentence();
    };
    struct {
        const char *code, *yesterday, *date, *ago;
    } const typed[] = {{"de", "gestern 23:50", "14. Mai 23:50", "vor 10 min"},
                       {"fr", "hier 23:50", "14 mai 23:50", "il y a 10 min"},
                       {"es", "ayer 23:50", "14 de mayo 23:50", "hace 10 min"}};
    for (const auto& each : typed) {
        speak(QString::fromLatin1(each.code));
        EXPECT_EQ(moment(each.yesterday), "2027-05-14T23:50Z");
        EXPECT_EQ(moment(each.date), "2027-05-14T23:50Z");
        EXPECT_EQ(moment(each.ago), "2027-05-15T02:31Z");
        EXPECT_EQ(moment("yesterday 23:50"), "2027-05-14T23:50Z");
        EXPECT_EQ(moment(date_text(now, "UTC").append(" 01:00").c_str()), "2027-05-15T01:00Z") << "what a field shows can be read back";
        EXPECT_FALSE(parse_moment("gest 23:50", now, "UTC").ok());
    }
}

TEST_F(Speaking, a_range_of_times_can_be_parted_at_its_word) {
    for (const SpokenLanguage& each : spoken_languages()) {
        speak(each.code);
        const std::string to = say(phrase("forecast", "%1 to %2"), Message(), Message()).text();
        EXPECT_TRUE(to.starts_with(' ') && to.ends_with(' ') && to.size() > 2) << to;
        EXPECT_NE(say(phrase("forecast", "in %1 to %2 h"), "3", "4").text().find(to), std::string::npos) << each.code.toStdString();
        EXPECT_NE(say(phrase("forecast", "in %1 to %2 min"), "3", "4").text().find(to), std::string::npos) << each.code.toStdString();
    }
}

TEST_F(Speaking, a_history_keeps_the_reasons_of_the_program_in_english_and_shows_them_translated) {
    speak(QStringLiteral("de"));
    const test::TempFolder folder;
    test::FakeClock clock;
    Document document(clock);
    ASSERT_TRUE(document.create(QString::fromStdString((folder / "bench.ullage").string())));
    Unit unit;
    unit.name = "Osk 1200";
    ullage::Run run;
    run.unit_uuid = document.addUnit(unit).value().uuid;
    ReadingValues values;
    values.time_ms = clock.now_ms();
    values.gauge_percent = 71;
    const ReadingId reading = document.record(document.addRun(run).value().uuid, values).value().uuid;
    document.undoStack().undo();
    document.undoStack().redo();
    const auto history = document.history(reading);
    ASSERT_TRUE(history && history.value().size() == 3);
    EXPECT_EQ(history.value()[1].reason, "undone");
    EXPECT_EQ(history.value()[2].reason, "redone");
    const QStringList shown = history_lines(history.value(), "UTC");
    EXPECT_TRUE(shown[1].endsWith(QStringLiteral("(rückgängig gemacht)"))) << shown[1].toStdString();
    EXPECT_TRUE(shown[2].endsWith(QStringLiteral("(wiederholt)"))) << shown[2].toStdString();
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
