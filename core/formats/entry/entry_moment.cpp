// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "formats/entry/entry_text.h"
#include "formats/entry/inside/plain_entry.h"

#include <array>
#include <charconv>
#include <set>
#include <string>
#include <tuple>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr UtcMs minute_ms = 60'000;
constexpr UtcMs ahead_ms = 10 * minute_ms;
constexpr long longest_ago_minutes = 366L * 24 * 60;
/// The longest stretch without a 29 February is eight years (1896 to 1904).
constexpr int years_back = 8;

constexpr std::array<std::string_view, 12> months = {"january", "february", "march",     "april",   "may",      "june",
                                                     "july",    "august",   "september", "october", "november", "december"};

Error no_moment(std::string_view text) {
    return Error{Failure::bad_input,
                 say(phrase("entry", "`%1` is no moment"), text),
                 {},
                 say(phrase("entry", "type a time such as 02:40, -10m, yesterday 23:50, 14 May 23:50 or 2027-05-14T18:00, or "
                                     "nothing for now"))};
}

/// A whole number of `least` to `most` digits that makes up all of `text`.
std::optional<int> whole(std::string_view text, std::size_t least, std::size_t most) {
    if (text.size() < least || text.size() > most) return std::nullopt;
    if (text.find_first_not_of("0123456789") != std::string_view::npos) return std::nullopt;
    int value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

std::vector<std::string_view> split(std::string_view text, char separator) {
    std::vector<std::string_view> parts;
    for (;;) {
        const auto at = text.find(separator);
        parts.push_back(text.substr(0, at));
        if (at == std::string_view::npos) return parts;
        text.remove_prefix(at + 1);
    }
}

/// Words between any number of blanks.
std::vector<std::string_view> words_of(std::string_view text) {
    std::vector<std::string_view> words;
    for (std::string_view word : split(text, ' '))
        if (!word.empty()) words.push_back(word);
    return words;
}

/// `2:40`, `02:40`, `02.40`, `0240` or `02:40:30` put into `time`; from_local judges the numbers.
bool take_clock(std::string_view text, LocalTime& time) {
    if (const auto four = whole(text, 4, 4)) {
        time.hour = *four / 100, time.minute = *four % 100, time.second = time.millisecond = 0;
        return true;
    }
    const auto parts = split(text, text.find(':') == std::string_view::npos ? '.' : ':');
    if (parts.size() < 2 || parts.size() > 3) return false;
    const auto hour = whole(parts[0], 1, 2), minute = whole(parts[1], 2, 2);
    const auto second = parts.size() == 3 ? whole(parts[2], 2, 2) : std::optional<int>(0);
    if (!hour || !minute || !second) return false;
    time.hour = *hour, time.minute = *minute, time.second = *second, time.millisecond = 0;
    return true;
}

/// `am` or `pm` at the end, apart from the time or joined to it, taken off.
std::optional<bool> take_half_of_day(std::vector<std::string_view>& words) {
    for (const bool afternoon : {false, true}) {
        const std::string_view half = afternoon ? "pm" : "am";
        if (words.empty() || !words.back().ends_with(half)) continue;
        words.back().remove_suffix(half.size());
        if (words.back().empty()) words.pop_back();
        return afternoon;
    }
    return std::nullopt;
}

/// 12:05 am is 00:05, 12:05 pm is 12:05. False for an hour that no such clock shows.
bool by_half_of_day(std::optional<bool> afternoon, LocalTime& time) {
    if (!afternoon) return true;
    if (time.hour < 1 || time.hour > 12) return false;
    time.hour = time.hour % 12 + (*afternoon ? 12 : 0);
    return true;
}

/// The same letters as plain_entry() gives of what is typed.
std::string as_typed(const Message& message) { return plain_entry(message.text()); }

/// Whether somebody typed this word, in English or in the language in use.
bool is_word(std::string_view typed, const Phrase& word) { return typed == word.english || typed == as_typed(say(word)); }

/// What stands at %1 of a phrase that was typed whole, in English or in the language in use.
std::optional<std::string_view> typed_as(std::string_view typed, const Phrase& phrase) {
    constexpr std::string_view place = "|";
    for (const std::string& pattern : {as_typed(say(phrase, place)), say(phrase, place).english()}) {
        const std::size_t at = pattern.find(place);
        const std::string_view before = std::string_view(pattern).substr(0, at), after = std::string_view(pattern).substr(at + place.size());
        if (typed.size() > before.size() + after.size() && typed.starts_with(before) && typed.ends_with(after))
            return typed.substr(before.size(), typed.size() - before.size() - after.size());
    }
    return std::nullopt;
}

/// The month whose name begins so, in English or in the language in use; absent where several do.
std::optional<int> month_from(std::string_view text) {
    if (text.size() < 3) return std::nullopt;
    std::set<int> meant;
    for (int month = 1; month <= 12; ++month)
        if (months[std::size_t(month - 1)].starts_with(text) || as_typed(say_month(month)).starts_with(text)) meant.insert(month);
    return meant.size() == 1 ? std::optional(*meant.begin()) : std::nullopt;
}

/// The words of a date as every language has them: "14.", "de" and "mayo" become "14" and "mayo".
std::vector<std::string_view> plain_date(std::vector<std::string_view> words) {
    std::erase(words, "de");
    if (words.size() > 2 && words.front().ends_with('.')) words.front().remove_suffix(1);
    return words;
}

/// A local day and its neighbours, counted at noon, which no zone skips without skipping the day.
LocalTime day_before(const LocalTime& day) {
    LocalTime noon = day;
    noon.hour = 12, noon.minute = noon.second = noon.millisecond = 0;
    const Result<UtcMs> there = from_local(noon, "UTC");
    return there ? to_local(there.value() - 24 * 60 * minute_ms, "UTC") : day;
}

class MomentReader {
public:
    MomentReader(UtcMs now_ms, std::string_view zone)
        : now_ms_(now_ms - ((now_ms % 1000) + 1000) % 1000), limit_ms_(now_ms + ahead_ms), zone_(zone) {}

    Result<UtcMs> read(std::string_view typed, std::string_view original) const {
        if (typed.empty() || is_word(typed, phrase("entry", "now"))) return now_ms_;
        if (typed.front() == '-') return ago(typed.substr(1), original);
        if (const auto before = typed_as(typed, phrase("entry", "%1 ago"))) return ago(*before, original);
        if (typed.size() > 4 && typed[4] == '-') return iso(typed);
        auto words = words_of(typed);
        const std::optional<bool> afternoon = take_half_of_day(words);
        LocalTime time;
        if (words.empty() || !take_clock(words.back(), time) || !by_half_of_day(afternoon, time)) return no_moment(original);
        if (words.size() == 1) return latest_clock(time);
        if (words.size() == 2 && is_word(words[0], phrase("entry", "today"))) return on_day(to_local(now_ms_, zone_), time);
        if (words.size() == 2 && is_word(words[0], phrase("entry", "yesterday"))) return on_day(day_before(to_local(now_ms_, zone_)), time);
        words = plain_date(std::move(words));
        if (words.size() == 3 || words.size() == 4) return on_date(words, time, original);
        return no_moment(original);
    }

private:
    /// The instant of a local time: of two the later if it is past.
    Result<UtcMs> resolved(const LocalTime& time) const {
        const Result<UtcMs> later = from_local(time, zone_, Doubled::later);
        if (!later || later.value() <= limit_ms_) return later;
        return from_local(time, zone_, Doubled::earlier);
    }

    Result<UtcMs> on_day(const LocalTime& day, LocalTime time) const {
        time.year = day.year, time.month = day.month, time.day = day.day;
        return resolved(time);
    }

    Result<UtcMs> latest_clock(const LocalTime& time) const {
        const LocalTime limit = to_local(limit_ms_, zone_);
        const Result<UtcMs> today = on_day(limit, time);
        if (today && today.value() <= limit_ms_) return today;
        const bool to_come = std::tie(time.hour, time.minute, time.second) > std::tie(limit.hour, limit.minute, limit.second);
        if (!today && !to_come) return today; // skipped earlier today
        return on_day(day_before(limit), time);
    }

    /// `h` and `m` (or `min`) with their numbers.
    Result<UtcMs> ago(std::string_view text, std::string_view original) const {
        long minutes = 0;
        bool hours_given = false, minutes_given = false;
        text = trimmed(text);
        if (text.empty()) return no_moment(original);
        while (!text.empty()) {
            const auto digits_end = text.find_first_not_of("0123456789");
            const auto number = whole(text.substr(0, digits_end), 1, 6);
            if (!number || digits_end == std::string_view::npos) return no_moment(original);
            text = trimmed(text.substr(digits_end));
            const std::string_view unit = text.substr(0, text.find_first_of("0123456789 "));
            text = trimmed(text.substr(unit.size()));
            if (unit == "h" && !hours_given && !minutes_given) {
                minutes += *number * 60L;
                hours_given = true;
            } else if ((unit == "m" || unit == "min") && !minutes_given) {
                minutes += *number;
                minutes_given = true;
            } else {
                return no_moment(original);
            }
        }
        if (minutes > longest_ago_minutes)
            return Error{
                Failure::bad_input, say(phrase("entry", "`%1` is more than a year ago"), original), {}, say(phrase("entry", "type date and time"))};
        return now_ms_ - minutes * minute_ms;
    }

    Result<UtcMs> iso(std::string_view typed) const {
        const Result<UtcMs> later = parse_iso8601(typed, zone_, Doubled::later);
        if (!later || later.value() <= limit_ms_) return later;
        return parse_iso8601(typed, zone_, Doubled::earlier);
    }

    /// Day, month and perhaps year before the time of day.
    Result<UtcMs> on_date(const std::vector<std::string_view>& words, LocalTime time, std::string_view original) const {
        const auto day = whole(words[0], 1, 2);
        const auto month = month_from(words[1]);
        if (!day || !month) return no_moment(original);
        time.day = *day, time.month = *month;
        if (words.size() == 4) {
            const auto year = whole(words[2], 4, 4);
            if (!year) return no_moment(original);
            time.year = *year;
            return resolved(time);
        }
        const int this_year = to_local(limit_ms_, zone_).year;
        Result<UtcMs> first_try = no_moment(original);
        for (int back = 0; back <= years_back; ++back) {
            time.year = this_year - back;
            const Result<UtcMs> found = resolved(time);
            if (back == 0) first_try = found;
            if (found && found.value() <= limit_ms_) return found;
            // Only 29 February is looked for in earlier years; a skipped time or an impossible date is told
            // at once.
            const bool leap_day = *month == 2 && *day == 29;
            if (!found && !leap_day) return found;
        }
        return first_try;
    }

    UtcMs now_ms_;
    UtcMs limit_ms_;
    std::string_view zone_;
};

} // namespace

Result<UtcMs> parse_moment(std::string_view text, UtcMs now_ms, std::string_view zone) {
    const std::string typed = plain_entry(text);
    return MomentReader(now_ms, zone).read(typed, text);
}

} // namespace ullage
