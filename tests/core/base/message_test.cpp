// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/instant.h"
#include "base/language.h"
#include "base/message.h"
#include "base/quantity.h"
#include "base/result.h"

#include <gtest/gtest.h>

#include <map>
#include <sstream>
#include <thread>

namespace ullage {
namespace {

/// A language of the test's own: arguments change places, a comma, its own plural.
class Turned : public Language {
public:
    std::string words(const Phrase& phrase, std::optional<long> count) const override {
        static const std::map<std::string, std::string> known{{"%1 of %2", "%2: davon %1"},
                                                              {"%n readings", "%n Ablesungen"},
                                                              {"at least %1", "mindestens %1"},
                                                              {"it is over", "über ist es"},
                                                              {"%1 May", "%1. Mai"},
                                                              {"%1 and %2", "%1 und %2"},
                                                              {"%1; %2", "%1 -- %2"}};
        if (count == 1 && phrase.english_one) return "eine Ablesung";
        const auto found = known.find(phrase.english);
        return found == known.end() ? phrase.english : found->second;
    }
    char decimal_sign() const override { return ','; }
    std::string code() const override { return "de"; }
};

const Turned turned;

TEST(Message, is_text_in_the_language_where_it_is_shown) {
    const Message message = say(phrase("test", "%1 of %2"), say_measure(12.5, 1, "Wh"), "Osk 1.5");
    EXPECT_EQ(message.text(), "12.5 Wh of Osk 1.5");
    const SpeakingIn speaking(turned);
    EXPECT_EQ(message.text(), "Osk 1.5: davon 12,5 Wh") << "the name keeps its point";
    EXPECT_EQ(message.english(), "12.5 Wh of Osk 1.5");
}

TEST(Message, counts_in_the_form_of_its_language) {
    const auto readings = [](int count) { return say_count(count, phrases("test", "%n readings", "%n reading")); };
    EXPECT_EQ(readings(1).text(), "1 reading");
    EXPECT_EQ(readings(3).text(), "3 readings");
    const SpeakingIn speaking(turned);
    EXPECT_EQ(readings(1).text(), "eine Ablesung");
    EXPECT_EQ(readings(3).text(), "3 Ablesungen");
}

TEST(Message, an_argument_is_never_taken_for_a_place) {
    EXPECT_EQ(say(phrase("test", "%1 of %2"), "%2 100 %n", "%1").text(), "%2 100 %n of %1");
    EXPECT_EQ(say(phrase("test", "at 71 % of %1"), "x").text(), "at 71 % of x");
}

TEST(Message, numbers_have_the_decimal_sign_of_the_language_unless_another_is_asked_for) {
    const SpeakingIn speaking(turned);
    EXPECT_EQ(say_number(-0.25, 2).text(), "-0,25");
    EXPECT_EQ(say_signed(-3.1, 1).text(), "−3,1");
    EXPECT_EQ(say_quantity(known("delivered_wh", "Wh", 431.2, 1.7, Kind::measured)).text(), "431,2 ± 1,7 Wh");
    EXPECT_EQ(quantity_text(known("delivered_wh", "Wh", 400, {}, Kind::at_least)), "mindestens 400 Wh");
    const SpeakingIn with_point(turned, '.');
    EXPECT_EQ(say_number(0.25, 2).text(), "0.25");
}

TEST(Message, dates_are_in_the_order_of_the_language) {
    const auto moment = parse_iso8601("2027-05-14T18:00Z", "UTC").value();
    EXPECT_EQ(date_text(moment, "UTC"), "14 May 2027");
    const SpeakingIn speaking(turned);
    EXPECT_EQ(date_text(moment, "UTC"), "14. Mai 2027");
}

TEST(Message, lists_sentences_and_beginnings_follow_one_another) {
    EXPECT_EQ(say_list({"a", "b", "c"}).text(), "a, b and c");
    EXPECT_EQ(say_choice({"a", "b"}).text(), "a or b");
    EXPECT_TRUE(say_list({}).empty());
    Message sentences = say(phrase("test", "One."));
    sentences += Message(" ") + say(phrase("test", "Two."));
    EXPECT_EQ(sentences.text(), "One. Two.");
    EXPECT_EQ(begin_sentence(say(phrase("test", "it is over"))).text(), "It is over");
    const SpeakingIn speaking(turned);
    EXPECT_EQ(begin_sentence(say(phrase("test", "it is over"))).text(), "Über ist es");
    EXPECT_EQ(say_list({"a", "b"}).text(), "a und b");
}

TEST(Message, clauses_are_parted_as_the_language_parts_them) {
    const Error error{Failure::bad_input, say(phrase("test", "it is over")), "a.csv", "wait"};
    EXPECT_EQ(error.sentence(), "a.csv: it is over; wait");
    EXPECT_EQ(say_joined({"a", "b", "c"}, "; ").text(), "a; b; c");
    const SpeakingIn speaking(turned);
    EXPECT_EQ(error.sentence(), "a.csv: über ist es -- wait");
    EXPECT_EQ(error.message().english(), "a.csv: it is over; wait");
    EXPECT_EQ(say_joined({"a; b", "c"}, "; ").text(), "a; b -- c") << "a name keeps what it has";
    EXPECT_EQ(say_joined({"a", "b"}, ", ").text(), "a, b");
}

TEST(Message, leaves_out_what_is_said_in_a_context) {
    const Message advice = say(phrase("advice", ": make one"));
    const Message reason = say(phrase("test", "there is no drain")) + advice;
    EXPECT_EQ(without(reason, "advice").text(), "there is no drain");
    EXPECT_EQ(without(say(phrase("test", "not known (%1)."), reason), "advice").text(), "not known (there is no drain).");
    EXPECT_EQ(without(say_joined({advice, "a", "b"}, "; "), "advice").text(), "a; b");
    EXPECT_EQ(without(begin_sentence(reason), "advice").text(), "There is no drain");
    EXPECT_TRUE(without(advice, "advice").empty());
    EXPECT_EQ(without(reason, "another").text(), "there is no drain: make one");
}

TEST(Message, equals_what_says_the_same_of_the_same) {
    const auto one = [](double value) { return say(phrase("test", "%1 of %2"), say_number(value, 1), "x"); };
    EXPECT_TRUE(one(1) == one(1));
    EXPECT_FALSE(one(1) == one(2));
    EXPECT_TRUE(Message() == Message(""));
    std::ostringstream stream;
    stream << one(1);
    EXPECT_EQ(stream.str(), "1.0 of x");
}

TEST(Language, of_a_thread_is_its_own) {
    const SpeakingIn speaking(turned);
    std::string other;
    std::thread([&] { other = say(phrase("test", "%1 and %2"), "a", "b").text(); }).join();
    EXPECT_EQ(other, "a and b");
    EXPECT_EQ(language_in_use().code(), "de");
}

} // namespace
} // namespace ullage
