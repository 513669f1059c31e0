// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <initializer_list>
#include <iosfwd>
#include <memory>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <vector>

namespace ullage {

/// The id of a text: where it is said, and its English words, which stand for it in every language. `%1` to `%9` are the places of its arguments,
/// `%n` that of its count.
struct Phrase {
    const char* context; ///< the room, e.g. "gauge": the same words may be others elsewhere
    const char* english;
    const char* english_one = nullptr; ///< for a count of 1; only where it has a count

    friend bool operator==(const Phrase& a, const Phrase& b);
};

// The tool that gathers the texts to be translated knows these two by name and wants literals.

/// A text without a count.
[[nodiscard]] consteval Phrase phrase(const char* context, const char* english) { return {context, english}; }
/// A text with a count: "%n readings", "%n reading".
[[nodiscard]] consteval Phrase phrases(const char* context, const char* english, const char* english_one) { return {context, english, english_one}; }

/// What is said to people, not yet in any language: a phrase with its arguments, a number, a name, or several of them in a row. It becomes text where
/// it is shown, in the language in use there (base/language.h). Cheap to copy.
class Message {
public:
    Message() = default; ///< says nothing
    /// A name, or what a person or another program wrote: the same in every language.
    Message(std::string name);
    Message(const char* name) : Message(std::string(name)) {}
    Message(std::string_view name) : Message(std::string(name)) {}

    [[nodiscard]] bool empty() const { return !content_; }
    /// In the language in use.
    [[nodiscard]] std::string text() const;
    /// As files for machines have it.
    [[nodiscard]] std::string english() const;
    operator std::string() const { return text(); }

    /// One after the other, as whole sentences follow each other.
    Message& operator+=(const Message& next);
    friend Message operator+(Message first, const Message& next) { return std::move(first += next); }

    friend bool operator==(const Message& a, const Message& b); ///< say the same of the same
    template <class Text, std::enable_if_t<std::is_same_v<Text, std::string>, int> = 0>
    friend bool operator==(const Message& a, const Text& text) {
        return a.text() == text;
    }
    friend bool operator==(const Message& a, const char* text) { return a.text() == text; }
    friend std::ostream& operator<<(std::ostream& stream, const Message& message);

    struct Content;

private:
    friend Message say_content(Content content);
    friend Message without(const Message& message, std::string_view context);
    std::shared_ptr<const Content> content_;
};

/// The phrase without arguments, or with those of the places %1, %2, …
[[nodiscard]] Message say(const Phrase& phrase, std::vector<Message> arguments);
template <class... Arguments>
[[nodiscard]] Message say(const Phrase& phrase, Arguments&&... arguments) {
    std::vector<Message> all;
    all.reserve(sizeof...(arguments));
    (all.emplace_back(std::forward<Arguments>(arguments)), ...);
    return say(phrase, std::move(all));
}

/// A phrase of phrases() with its count, which stands at %n.
[[nodiscard]] Message say_count(long count, const Phrase& phrase, std::vector<Message> arguments);
template <class Count, class... Arguments, std::enable_if_t<std::is_integral_v<Count>, int> = 0>
[[nodiscard]] Message say_count(Count count, const Phrase& phrase, Arguments&&... arguments) {
    std::vector<Message> all;
    all.reserve(sizeof...(arguments));
    (all.emplace_back(std::forward<Arguments>(arguments)), ...);
    return say_count(static_cast<long>(count), phrase, std::move(all));
}

/// A number with so many decimals, see fixed_text(); with the language's decimal sign.
[[nodiscard]] Message say_number(double value, int decimals);
/// The same with its sign, see signed_text().
[[nodiscard]] Message say_signed(double value, int decimals);
/// A whole number.
template <class Whole, std::enable_if_t<std::is_integral_v<Whole>, int> = 0>
[[nodiscard]] Message say_number(Whole value) {
    return Message(std::to_string(value));
}
/// A number as fixed_text(), with_interval_text() and their like write it, with a point, that is to have the language's decimal sign: only a point
/// between two digits is one.
[[nodiscard]] Message say_digits(std::string text);
/// A number with its unit: "431 Wh", "71 %". `unit` is one that every language writes alike.
[[nodiscard]] Message say_measure(double value, int decimals, std::string_view unit);

/// Several with a separator between them.
[[nodiscard]] Message say_joined(const std::vector<Message>& parts, std::string_view separator);
/// "a", "a and b", "a, b and c".
[[nodiscard]] Message say_list(const std::vector<Message>& parts);
/// "a or b", "a, b or c".
[[nodiscard]] Message say_choice(const std::vector<Message>& parts);

/// The message but for what is said in this context, wherever it stands in it.
[[nodiscard]] Message without(const Message& message, std::string_view context);

/// Each in the language in use.
[[nodiscard]] std::vector<std::string> texts(const std::vector<Message>& messages);

/// The message with a capital as its first letter, for a clause that opens a sentence. Not for one that opens with a name.
[[nodiscard]] Message begin_sentence(const Message& message);

} // namespace ullage
