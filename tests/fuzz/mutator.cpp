// SPDX-License-Identifier: GPL-3.0-or-later
#include "fuzz/mutator.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace ullage::test {
namespace {

constexpr std::size_t most_bytes = 200'000;

/// What readers of tables and times stumble over.
constexpr std::array<std::string_view, 44> tokens = {",",
                                                     ";",
                                                     "\t",
                                                     "|",
                                                     "\"",
                                                     "\"\"",
                                                     "\r\n",
                                                     "\n",
                                                     "\r",
                                                     ".",
                                                     "-",
                                                     "+",
                                                     "e",
                                                     "E308",
                                                     "1e-320",
                                                     "nan",
                                                     "inf",
                                                     "-0",
                                                     "0",
                                                     "999999999999999999999",
                                                     "1,234.5",
                                                     "1.234,5",
                                                     "12:00:00 AM",
                                                     "24:00",
                                                     "31/02/2027",
                                                     "2027-02-30",
                                                     "2027-03-28 02:30:00",
                                                     "2027-10-31 02:30:00",
                                                     "9999-12-31T23:59:59Z",
                                                     "0000-00-00",
                                                     "1970-01-01T00:00:00+99:99",
                                                     "kWh",
                                                     "mW",
                                                     "Wh",
                                                     "J",
                                                     "# ",
                                                     "//",
                                                     "# meter_step_wh: ",
                                                     "# time_zone: ",
                                                     "cut-off",
                                                     "meter zeroed",
                                                     "\xEF\xBB\xBF",
                                                     "\xFF\xFE",
                                                     "\xC3\x28"};

} // namespace

template <class Change>
std::string Mutator::changed(Change change) {
    std::string text = last_.empty() || pick(4) != 0 ? corpus_[pick(corpus_.size())] : last_;
    for (std::size_t changes = 1 + pick(1 + pick(8)); changes > 0; --changes) change(text);
    if (text.size() > most_bytes) text.resize(most_bytes);
    last_ = text;
    return text;
}

std::string Mutator::next() {
    return changed([this](std::string& text) { change(text); });
}

std::string Mutator::next_bytes() {
    return changed([this](std::string& bytes) { change_bytes(bytes); });
}

void Mutator::change_bytes(std::string& bytes) {
    const std::size_t at = place(bytes);
    if (bytes.empty()) {
        bytes.assign(1 + pick(40), static_cast<char>(pick(256)));
        return;
    }
    switch (pick(9)) {
    case 0: bytes[at] = static_cast<char>(bytes[at] ^ (1 << pick(8))); break;
    case 1: bytes[at] = static_cast<char>(pick(256)); break;
    case 2: // the ends of what a length or an offset can be
        for (std::size_t i = at, size = std::size_t{1} << pick(3), first = pick(2); i < std::min(bytes.size(), at + size); ++i)
            bytes[i] = static_cast<char>(pick(3) == 0 ? (i == at ? 0x80 : first * 255) : (first ? 0xff : 0));
        break;
    case 3: bytes.erase(at, 1 + pick(64)); break;
    case 4: bytes.resize(at); break;
    case 5: bytes.insert(at, bytes.substr(place(bytes), 1 + pick(200))); break;
    case 6: { // a stretch over another
        const std::string part = bytes.substr(place(bytes), 1 + pick(600));
        bytes.replace(at, part.size(), part);
        break;
    }
    case 7: { // the rest of another
        const std::string& other = corpus_[pick(corpus_.size())];
        if (!other.empty()) bytes = bytes.substr(0, at) + other.substr(pick(other.size()));
        break;
    }
    default: bytes.insert(at, 1 + pick(300), static_cast<char>(pick(4) == 0 ? pick(256) : 0)); break;
    }
}

void Mutator::change(std::string& text) {
    const std::size_t at = place(text);
    switch (pick(11)) {
    case 0: // a bit
        if (!text.empty()) text[at] = static_cast<char>(text[at] ^ (1 << pick(8)));
        break;
    case 1: // a byte
        if (!text.empty()) text[at] = static_cast<char>(pick(256));
        break;
    case 2: text.insert(at, tokens[pick(tokens.size())]); break;
    case 3: text.erase(at, 1 + pick(40)); break;
    case 4: text.resize(at); break;
    case 5: { // a line again, elsewhere
        const std::size_t from = text.rfind('\n', at) + 1, to = std::min(text.size(), text.find('\n', at));
        if (from <= to) text.insert(place(text), text.substr(from, to - from) + '\n');
        break;
    }
    case 6: { // a stretch again, many times
        const std::string part = text.substr(at, 1 + pick(200));
        for (std::size_t k = 1 + pick(60); k > 0 && text.size() < most_bytes; --k) text.insert(std::min(at, text.size()), part);
        break;
    }
    case 7: { // the rest of another text
        const std::string& other = corpus_[pick(corpus_.size())];
        text = text.substr(0, at) + other.substr(other.empty() ? 0 : pick(other.size()));
        break;
    }
    case 8: { // a digit
        const std::size_t digit = text.find_first_of("0123456789", at);
        if (digit != std::string::npos) text[digit] = static_cast<char>('0' + pick(10));
        break;
    }
    case 9: { // one sign for another, everywhere
        const std::string_view signs = ",;\t|.: \"/-";
        const char from = signs[pick(signs.size())], to = signs[pick(signs.size())];
        std::ranges::replace(text, from, to);
        break;
    }
    default: { // a field for a token
        const std::size_t from = text.find_first_of(",;\t\n", at);
        if (from == std::string::npos) break;
        const std::size_t to = std::min(text.size(), text.find_first_of(",;\t\n", from + 1));
        text.replace(from + 1, to - from - 1, tokens[pick(tokens.size())]);
    }
    }
}

} // namespace ullage::test
