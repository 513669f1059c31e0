// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/inside/table_cells.h"

#include "base/number.h"
#include "base/plain_text.h"
#include "foreign_tables/table_role.h"

#include <algorithm>
#include <cctype>
#include <cmath>

namespace ullage {

namespace {

std::string lowered(std::string_view text) {
    std::string low(text);
    std::ranges::transform(low, low.begin(), [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
    return low;
}

/// `~`, `≈`, `ca.`, `about` before a number, taken off.
bool take_about(std::string_view& text) {
    constexpr std::string_view words[] = {"~", "\u2248", "ca.", "ca ", "approx.", "approx ", "about ", "c. "};
    for (const std::string_view word : words) {
        if (text.size() <= word.size() || lowered(text.substr(0, word.size())) != word) continue;
        text.remove_prefix(word.size());
        text = trimmed(text);
        return true;
    }
    return false;
}

} // namespace

bool looks_numeric(std::string_view text) {
    if (text.starts_with('-') || text.starts_with('+')) text.remove_prefix(1);
    return !text.empty() && is_digit(text.front());
}

std::optional<NumberInCell> number_in_cell(const GridCell& cell, const NumberWriting& writing) {
    const std::string plain = with_plain_blanks(cell.text);
    std::string_view text = plain;
    NumberInCell found;
    found.about = take_about(text);
    LogNumber number;
    const char decimal = cell.typed ? '.' : writing.decimal, grouping = cell.typed ? '\0' : writing.grouping;
    if (!read_number(text, decimal, grouping, number)) return std::nullopt;
    std::string_view suffix = trimmed(number.suffix);
    if (suffix.ends_with('.')) suffix.remove_suffix(1);
    if (!suffix.empty()) {
        const auto unit = known_table_unit(suffix);
        if (!unit) return std::nullopt;
        found.unit = *unit;
    }
    const auto value = value_of(number, LogUnit());
    if (!value) return std::nullopt;
    found.value = *value;
    return found;
}

DecimalSays decimal_said_by(std::string_view text) {
    const std::size_t begin = text.find_first_of("0123456789");
    if (begin == std::string_view::npos) return DecimalSays::nothing;
    const std::size_t end = std::min(text.find_first_not_of("0123456789.,", begin), text.size());
    const std::string_view number = text.substr(begin, end - begin);
    const auto points = std::ranges::count(number, '.'), commas = std::ranges::count(number, ',');
    if (points == 0 && commas == 0) return DecimalSays::nothing;
    if (points > 0 && commas > 0) return number.rfind('.') > number.rfind(',') ? DecimalSays::point : DecimalSays::comma;
    if (points > 1) return DecimalSays::comma;
    if (commas > 1) return DecimalSays::point;
    const std::size_t at = number.find_first_of(".,"), after = number.size() - at - 1;
    const bool could_group = after == 3 && at >= 1 && at <= 3 && number.front() != '0';
    if (points == 1) return could_group ? DecimalSays::open_point : DecimalSays::point;
    return could_group ? DecimalSays::open_comma : DecimalSays::comma;
}

std::optional<std::int64_t> elapsed_ms_in_cell(const GridCell& cell, const NumberWriting& writing, double unit_s, bool& bare) {
    const std::string plain = lowered(with_plain_blanks(cell.text));
    ClockParts clock;
    if (read_clock(plain, false, clock) && !clock.offset_minutes) return clock.ms;
    const char decimal = cell.typed ? '.' : writing.decimal;
    std::string_view rest = plain;
    double seconds = 0;
    bool any = false;
    while (!rest.empty()) {
        const std::size_t digits = std::min(rest.find_first_not_of(std::string("0123456789") + decimal), rest.size());
        LogNumber number;
        if (digits == 0 || !read_number(rest.substr(0, digits), decimal, 0, number)) return std::nullopt;
        const auto value = value_of(number, LogUnit());
        rest = trimmed(rest.substr(digits));
        const std::string_view unit = rest.substr(0, std::min(rest.find_first_of("0123456789 "), rest.size()));
        double scale = 0;
        if (unit == "d" || unit == "day" || unit == "days") scale = 86'400;
        else if (unit == "h" || unit == "hr" || unit == "hrs" || unit == "std" || unit == "hours" || unit == "hour") scale = 3600;
        else if (unit == "m" || unit == "min" || unit == "mins" || unit == "minutes") scale = 60;
        else if (unit == "s" || unit == "sec" || unit == "seconds") scale = 1;
        else if (unit.empty() && !any) {
            bare = true;
            scale = unit_s;
        }
        if (!value || scale == 0) return std::nullopt;
        seconds += *value * scale;
        any = true;
        rest = trimmed(rest.substr(unit.size()));
    }
    if (!any || seconds > 1e8) return std::nullopt;
    return std::llround(seconds * 1000);
}

EventInCell event_in_cell(std::string_view text) {
    struct KnownNote {
        std::string_view words;
        std::optional<MarkKind> mark;
        bool whole; ///< names it only where the note says nothing else
    };
    static constexpr KnownNote known_notes[] = {
        {"cut off", MarkKind::cut_off, false},
        {"cut-off", MarkKind::cut_off, false},
        {"cutoff", MarkKind::cut_off, false},
        {"shut down", MarkKind::cut_off, false},
        {"shutdown", MarkKind::cut_off, false},
        {"shut off", MarkKind::cut_off, false},
        {"switched off", MarkKind::cut_off, false},
        {"switched itself off", MarkKind::cut_off, false},
        {"went off", MarkKind::cut_off, false},
        {"turned off", MarkKind::cut_off, false},
        {"off", MarkKind::cut_off, true},
        {"died", MarkKind::cut_off, true},
        {"dead", MarkKind::cut_off, true},
        {"aus", MarkKind::cut_off, true},
        {"abgeschaltet", MarkKind::cut_off, false},
        {"ausgeschaltet", MarkKind::cut_off, false},
        {"apagado", MarkKind::cut_off, false},
        {"meter reset", MarkKind::meter_zeroed, false},
        {"reset meter", MarkKind::meter_zeroed, false},
        {"reset the meter", MarkKind::meter_zeroed, false},
        {"meter zeroed", MarkKind::meter_zeroed, false},
        {"meter to 0", MarkKind::meter_zeroed, false},
        {"meter set to 0", MarkKind::meter_zeroed, false},
        {"z\u00E4hler auf 0", MarkKind::meter_zeroed, false},
        {"z\u00E4hler zur\u00FCckgesetzt", MarkKind::meter_zeroed, false},
        {"meter swapped", MarkKind::meter_swapped, false},
        {"new meter", MarkKind::meter_swapped, false},
        {"other meter", MarkKind::meter_swapped, false},
        {"output tripped", MarkKind::output_tripped, false},
        {"tripped", MarkKind::output_tripped, false},
        {"overload", MarkKind::output_tripped, true},
        {"output reset", MarkKind::output_reset, false},
        {"on again", MarkKind::output_reset, false},
        {"switched on again", MarkKind::output_reset, false},
        {"load changed", MarkKind::load_changed, false},
        {"changed load", MarkKind::load_changed, false},
        {"load change", MarkKind::load_changed, false},
    };
    std::string note = lowered(with_plain_blanks(text));
    while (!note.empty() && std::string_view("!.").find(note.back()) != std::string_view::npos) note.pop_back();
    EventInCell event;
    event.full = note == "full" || note == "started full" || note == "fully charged" || note == "voll" || note.starts_with("started, full") ||
                 note.starts_with("start, full");
    if (const auto stated = mark_from(note)) {
        event.mark = stated;
        return event;
    }
    for (const KnownNote& known : known_notes) {
        const bool begins = note.starts_with(known.words) && (note.size() == known.words.size() ||
                                                              std::string_view(" ,;:.(").find(note[known.words.size()]) != std::string_view::npos);
        if (!begins || (known.whole && note.size() != known.words.size())) continue;
        event.mark = known.mark;
        break;
    }
    return event;
}

bool names_total(std::string_view text) {
    constexpr std::string_view words[] = {"total",   "totals", "sum",    "sums",       "summe", "gesamt",
                                          "average", "mean",   "mittel", "mittelwert", "somme", "media"};
    const std::string low = lowered(text);
    const std::string_view first = std::string_view(low).substr(0, std::min(low.find_first_of(" :,="), low.size()));
    return std::ranges::find(words, first) != std::end(words);
}

std::optional<ClockParts> clock_in_cell(std::string_view text) {
    std::string clock = lowered(with_plain_blanks(text));
    if (clock.ends_with("uhr")) clock.resize(clock.size() - 3);
    if (clock.starts_with("at ")) clock.erase(0, 3);
    clock = trimmed(clock);
    if (clock == "noon") clock = "12:00";
    if (clock == "midnight") clock = "00:00";
    const std::size_t digits = std::min(clock.find_first_not_of("0123456789"), clock.size());
    const std::string_view behind = std::string_view(clock).substr(digits);
    if (digits == 4 && behind.empty()) {
        clock.insert(2, ":");
    } else if (digits >= 1 && digits <= 2 && !behind.empty()) {
        const bool minutes_follow = behind.size() >= 3 && is_digit(behind[1]) && is_digit(behind[2]);
        if ((behind.front() == '.' || behind.front() == 'h') && minutes_follow) clock[digits] = ':';
        else if (behind == "h" || behind == " h") clock = clock.substr(0, digits) + ":00";
        else if (const std::string_view half = trimmed(behind);
                 half.starts_with("am") || half.starts_with("pm") || half.starts_with("a.m") || half.starts_with("p.m"))
            clock.insert(digits, ":00");
    }
    // 18:00:00 with points between.
    if (clock.size() > 5 && clock[2] == ':' && clock[5] == '.') clock[5] = ':';
    ClockParts parts;
    if (!read_clock(clock, false, parts) || parts.ms > 86'400'000) return std::nullopt;
    return parts;
}

} // namespace ullage
