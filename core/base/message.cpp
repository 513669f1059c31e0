// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/message.h"

#include "base/language.h"
#include "base/number.h"

#include <algorithm>
#include <cctype>
#include <cstring>
#include <ostream>
#include <variant>

namespace ullage {
namespace {

struct Digits {
    std::string with_point;
    bool operator==(const Digits&) const = default;
};
struct Said {
    Phrase phrase;
    std::optional<long> count;
    std::vector<Message> arguments;
    bool operator==(const Said&) const = default;
};
struct Row {
    std::vector<Message> parts;
    std::string separator;
    bool operator==(const Row&) const = default;
};
struct SentenceBegin {
    Message message;
    bool operator==(const SentenceBegin&) const = default;
};

bool same_words(const char* a, const char* b) { return a == b || (a && b && std::strcmp(a, b) == 0); }

bool is_digit(char letter) { return std::isdigit(static_cast<unsigned char>(letter)) != 0; }

std::string with_decimal_sign(std::string text, char sign) {
    for (std::size_t i = 1; i + 1 < text.size(); ++i)
        if (text[i] == '.' && is_digit(text[i - 1]) && is_digit(text[i + 1])) text[i] = sign;
    return text;
}

} // namespace

struct Message::Content : std::variant<std::string, Digits, Said, Row, SentenceBegin> {
    using variant::variant;
};

Message say_content(Message::Content content) {
    Message message;
    message.content_ = std::make_shared<const Message::Content>(std::move(content));
    return message;
}

namespace {

std::string filled_in(const Said& said, const std::string& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i) {
        const char next = i + 1 < words.size() ? words[i + 1] : '\0';
        if (words[i] != '%' || (next != 'n' && !(next >= '1' && next <= '9'))) {
            text += words[i];
            continue;
        }
        ++i;
        const auto place = static_cast<std::size_t>(next - '1');
        if (next == 'n') text += std::to_string(said.count.value_or(0));
        else if (place < said.arguments.size()) text += said.arguments[place].text();
    }
    return text;
}

std::string with_capital(std::string text) {
    constexpr int from_small_to_capital = 'A' - 'a'; // in UTF-8 too, for the letters of Latin-1 behind 0xC3
    const bool latin = text.size() > 1 && text[0] == '\xC3' && text[1] >= '\xA0' && text[1] <= '\xBE' && text[1] != '\xB7';
    if (latin) text[1] = static_cast<char>(text[1] + from_small_to_capital);
    else if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] + from_small_to_capital);
    return text;
}

/// A separator as the language in use writes it.
std::string spoken_separator(const std::string& separator) {
    //: Parts two clauses, such as what is wrong and what to do. A language that sets a space before a semicolon sets one here that does not break.
    static constexpr Phrase clauses = phrase("base", "%1; %2");
    //: Parts where something is from what is there. A language that sets a space before a colon sets one here that does not break.
    static constexpr Phrase place = phrase("base", "%1: %2");
    for (const Phrase& each : {clauses, place})
        if (filled_in({each, {}, {}}, each.english) == separator) return filled_in({each, {}, {}}, language_in_use().words(each, {}));
    return separator;
}

struct InWords {
    std::string operator()(const std::string& name) const { return name; }
    std::string operator()(const Digits& digits) const { return with_decimal_sign(digits.with_point, decimal_sign_in_use()); }
    std::string operator()(const Said& said) const { return filled_in(said, language_in_use().words(said.phrase, said.count)); }
    std::string operator()(const Row& row) const {
        const std::string separator = spoken_separator(row.separator);
        std::string text;
        for (const Message& part : row.parts) {
            if (&part != &row.parts.front()) text += separator;
            text += part.text();
        }
        return text;
    }
    std::string operator()(const SentenceBegin& begin) const { return with_capital(begin.message.text()); }
};

Message listed(const std::vector<Message>& parts, const Phrase& last_two) {
    if (parts.empty()) return {};
    if (parts.size() == 1) return parts.front();
    return say(last_two, say_joined({parts.begin(), parts.end() - 1}, ", "), parts.back());
}

} // namespace

bool operator==(const Phrase& a, const Phrase& b) {
    return same_words(a.context, b.context) && same_words(a.english, b.english) && same_words(a.english_one, b.english_one);
}

bool operator==(const Message& a, const Message& b) { return a.content_ == b.content_ || (a.content_ && b.content_ && *a.content_ == *b.content_); }

std::ostream& operator<<(std::ostream& stream, const Message& message) { return stream << message.text(); }

Message::Message(std::string name) {
    if (!name.empty()) content_ = std::make_shared<const Content>(std::move(name));
}

std::string Message::text() const {
    if (!content_) return {};
    return std::visit(InWords(), static_cast<const std::variant<std::string, Digits, Said, Row, SentenceBegin>&>(*content_));
}

std::string Message::english() const {
    const SpeakingIn speaking(ullage::english());
    return text();
}

Message& Message::operator+=(const Message& next) {
    if (empty()) return *this = next;
    if (next.empty()) return *this;
    Row row{{*this, next}, {}};
    if (const auto* parts = std::get_if<Row>(content_.get()); parts && parts->separator.empty()) {
        row.parts = parts->parts;
        row.parts.push_back(next);
    }
    return *this = say_content(std::move(row));
}

Message say(const Phrase& phrase, std::vector<Message> arguments) { return say_content(Said{phrase, std::nullopt, std::move(arguments)}); }

Message say_count(long count, const Phrase& phrase, std::vector<Message> arguments) { return say_content(Said{phrase, count, std::move(arguments)}); }

Message say_digits(std::string text) { return say_content(Digits{std::move(text)}); }
Message say_number(double value, int decimals) { return say_digits(fixed_text(value, decimals)); }
Message say_signed(double value, int decimals) { return say_digits(signed_text(value, decimals)); }
Message say_measure(double value, int decimals, std::string_view unit) { return say_digits(fixed_text(value, decimals) + " " + std::string(unit)); }

Message say_joined(const std::vector<Message>& parts, std::string_view separator) {
    if (parts.empty()) return {};
    return say_content(Row{parts, std::string(separator)});
}

Message say_list(const std::vector<Message>& parts) { return listed(parts, phrase("base", "%1 and %2")); }
Message say_choice(const std::vector<Message>& parts) { return listed(parts, phrase("base", "%1 or %2")); }

Message without(const Message& message, std::string_view context) {
    const auto speaks = [context](const auto& itself, const Message& part) -> bool {
        if (!part.content_) return false;
        const auto any = [&itself](const std::vector<Message>& parts) {
            return std::ranges::any_of(parts, [&itself](const Message& each) { return itself(itself, each); });
        };
        if (const auto* said = std::get_if<Said>(part.content_.get())) return said->phrase.context == context || any(said->arguments);
        if (const auto* row = std::get_if<Row>(part.content_.get())) return any(row->parts);
        const auto* begin = std::get_if<SentenceBegin>(part.content_.get());
        return begin && itself(itself, begin->message);
    };
    if (!speaks(speaks, message)) return message; // as most do: their content is shared then
    const auto all_without = [context](std::vector<Message> messages) {
        for (Message& each : messages) each = without(each, context);
        return messages;
    };
    if (const auto* said = std::get_if<Said>(message.content_.get())) {
        if (said->phrase.context == context) return {};
        return say_content(Said{said->phrase, said->count, all_without(said->arguments)});
    }
    if (const auto* row = std::get_if<Row>(message.content_.get())) {
        Row left{all_without(row->parts), row->separator};
        std::erase_if(left.parts, [](const Message& part) { return part.empty(); });
        return left.parts.empty() ? Message() : say_content(std::move(left));
    }
    if (const auto* begin = std::get_if<SentenceBegin>(message.content_.get())) return begin_sentence(without(begin->message, context));
    return message;
}

std::vector<std::string> texts(const std::vector<Message>& messages) { return {messages.begin(), messages.end()}; }

Message begin_sentence(const Message& message) { return message.empty() ? message : say_content(SentenceBegin{message}); }

} // namespace ullage
