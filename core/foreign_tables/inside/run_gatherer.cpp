// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/inside/run_gatherer.h"

#include "base/plain_text.h"

#include <fmt/format.h>

#include <algorithm>
#include <chrono>

namespace ullage {

namespace {

constexpr double gauge_up_again_pt = 10; ///< a rise that no pause of a drain brings
constexpr std::int64_t day_of_ms = 86'400'000;
constexpr std::int64_t past_midnight_ms = 6 * 3'600'000; ///< a fall of the clock by less is a row out of order

std::chrono::year_month_day civil(std::int64_t day) { return std::chrono::sys_days(std::chrono::days(day)); }

std::string local_text(std::int64_t day, const ClockParts& clock) {
    if (clock.ms >= day_of_ms) ++day; // 24:00
    const auto date = civil(day);
    const std::int64_t ms = clock.ms % day_of_ms;
    std::string text = fmt::format("{:04}-{:02}-{:02} {:02}:{:02}:{:02}.{:03}", static_cast<int>(date.year()), static_cast<unsigned>(date.month()),
                                   static_cast<unsigned>(date.day()), ms / 3'600'000, ms / 60'000 % 60, ms / 1000 % 60, ms % 1000);
    if (clock.offset_minutes) {
        const int away = std::abs(*clock.offset_minutes);
        text += fmt::format("{}{:02}:{:02}", *clock.offset_minutes < 0 ? '-' : '+', away / 60, away % 60);
    }
    return text;
}

/// A day and perhaps a time of day somewhere in a title, such as `Run 2, 14.05.2027 18:00, 120 W`.
std::optional<DateInCell> date_in_title(const std::string& title) {
    for (std::size_t at = 0; at < title.size(); ++at) {
        if (at > 0 && std::isalnum(static_cast<unsigned char>(title[at - 1])) != 0) continue;
        if (!looks_numeric(std::string_view(title).substr(at, 1))) continue;
        for (std::size_t end = title.size(); end > at + 5; --end) {
            if (end < title.size() && std::string_view(" ,;)").find(title[end]) == std::string_view::npos) continue;
            if (const auto date = date_in_cell(std::string_view(title).substr(at, end - at), false); date && date->has_year) return date;
        }
    }
    return std::nullopt;
}

} // namespace

void RunGatherer::gap() { next_.after_gap = true; }

void RunGatherer::title(std::size_t row, std::string text) {
    (void)row;
    if (const auto date = date_in_title(text)) {
        next_.title_day = day_of(*date);
        if (date->clock) next_.title_clock_ms = date->clock->ms;
        if (next_.title_day) {
            current_day_ = next_.title_day;
            fresh_heading_ = true;
        }
    }
    next_.title = std::move(text);
}

void RunGatherer::newHead(const TableSheet& sheet, const TableSection& section, const TableBlock& block) {
    if (begun_) next_.after_head = true;
    if (!block.title.empty()) {
        title(*section.head, block.title);
        block_title_ = block.title;
        return;
    }
    if (begun_ || section.blocks.size() > 1) return;
    // What stands in one cell alone above the first head.
    for (std::size_t up = *section.head; up-- > 0;) {
        const auto& cells = sheet.rows[up];
        const auto filled = std::ranges::count_if(cells, [](const GridCell& cell) { return !cell.text.empty(); });
        if (filled == 0) continue;
        const auto cell = std::ranges::find_if(cells, [](const GridCell& each) { return !each.text.empty(); });
        if (filled == 1 && cell->text.find(": ") == std::string::npos && !takeHeading(up, *cell, false)) title(up, with_plain_blanks(cell->text));
        return;
    }
}

std::optional<std::int64_t> RunGatherer::day_of(const DateInCell& date) {
    DateParts parts = date.parts;
    DateOrder order = order_of(parts);
    const bool lettered = parts.digits[0] == 0 || parts.digits[1] == 0;
    if (!lettered && order != DateOrder::year_first) order = plan_.date_order == DateOrder::unknown ? DateOrder::day_first : plan_.date_order;
    if (lettered) order = DateOrder::day_first;
    if (!date.has_year) {
        if (!answers_.year && !current_year_)
            ask_once(reading_, TableQuestion::year,
                     say(phrase("foreign_tables", "the dates name no year (day %1, month %2)"),
                         say_number(parts.part[order == DateOrder::month_first ? 1 : 0]),
                         say_number(parts.part[order == DateOrder::month_first ? 0 : 1])));
        parts.part[2] = current_year_ ? *current_year_ : answers_.year.value_or(to_local(now_ms_, zone_).year);
        parts.digits[2] = 4;
    }
    auto day = days_of(parts, order);
    // While the order is asked for, a date that is none in one order is shown in the other.
    if (!day && plan_.date_order == DateOrder::unknown) day = days_of(parts, DateOrder::month_first);
    if (day && (date.has_year || answers_.year)) current_year_ = static_cast<int>(civil(*day).year());
    return day;
}

bool RunGatherer::takeDay(const TableSheet& sheet, std::size_t row, std::optional<std::size_t> date_column, DateOrder) {
    if (!date_column) return false;
    return takeHeading(row, sheet.at(row, *date_column), true);
}

bool RunGatherer::takeHeading(std::size_t, const GridCell& cell, bool bare) {
    const auto date = date_in_cell(cell.text, bare);
    if (!date || date->clock) return false;
    const auto day = day_of(*date);
    if (!day) return false;
    current_day_ = day;
    fresh_heading_ = true;
    return true;
}

bool RunGatherer::readMoment(std::size_t row, const MomentCells& cells, Entry& entry) {
    if (cells.date && !cells.date->text.empty() && !says_nothing(cells.date->text)) {
        const auto date = date_in_cell(cells.date->text, true);
        const auto day = date ? day_of(*date) : std::nullopt;
        if (!day) {
            leave(row, say(phrase("foreign_tables", "the date `%1` cannot be read"), cells.date->text));
            return false;
        }
        current_day_ = day;
        fresh_heading_ = true;
        if (date->clock) entry.clock = date->clock;
    }
    entry.day = current_day_;
    entry.fresh = fresh_heading_;
    if (cells.elapsed && !cells.time) {
        if (cells.elapsed->text.empty()) {
            leave(row, say(phrase("foreign_tables", "it has no time")));
            return false;
        }
        bool bare = false;
        entry.elapsed_ms = elapsed_ms_in_cell(*cells.elapsed, plan_.writing, cells.elapsed_unit_s > 0 ? cells.elapsed_unit_s : 3600, bare);
        if (bare && cells.elapsed_unit_s <= 0)
            ask_once(reading_, TableQuestion::elapsed_unit,
                     say(phrase("foreign_tables", "the time `%1` counts from the start, but in no unit"), cells.elapsed->text), {"h", "min", "s"});
        if (!entry.elapsed_ms) leave(row, say(phrase("foreign_tables", "the time `%1` cannot be read"), cells.elapsed->text));
        return entry.elapsed_ms.has_value();
    }
    const std::string text = cells.time ? cells.time->text : std::string();
    if (text.empty() || says_nothing(text)) {
        if (entry.clock) return true; // the column of dates holds the time too
        leave(row, say(phrase("foreign_tables", "it has no time")));
        return false;
    }
    if (const auto moment = date_in_cell(text, false)) {
        const auto day = day_of(*moment);
        if (!day) {
            leave(row, say(phrase("foreign_tables", "the date `%1` cannot be read"), text));
            return false;
        }
        entry.day = current_day_ = day;
        entry.fresh = true;
        entry.clock = moment->clock;
        if (!entry.clock) leave(row, say(phrase("foreign_tables", "`%1` is a date without a time"), text));
        return entry.clock.has_value();
    }
    entry.clock = clock_in_cell(text);
    if (entry.clock) return true;
    // 26:30 is no time of day; whether such times count from the start is asked once for all.
    ClockParts hours;
    if (read_clock(with_plain_blanks(text), false, hours) && !hours.offset_minutes) {
        entry.clock = hours;
        return true;
    }
    leave(row, say(phrase("foreign_tables", "the time `%1` cannot be read"), text));
    return false;
}

RunGatherer::Segment& RunGatherer::segment() {
    const bool breaks = next_.after_gap || next_.after_head || !next_.title.empty();
    if (segments_.empty() || breaks) segments_.push_back(std::move(next_));
    next_ = {};
    return segments_.back();
}

void RunGatherer::add(std::size_t row, const MomentCells& cells, ReadingValues values, const EventInCell& event, const RowLabels& labels) {
    Entry entry{};
    entry.row = row;
    if (!readMoment(row, cells, entry)) return;
    fresh_heading_ = false;
    begun_ = true;
    entry.values = std::move(values);
    entry.full = event.full;
    if (labels.unit.empty() && labels.run.empty()) {
        segment().entries.push_back(std::move(entry));
        return;
    }
    const std::pair key{labels.unit, labels.run};
    if (!labelled_.contains(key)) label_order_.push_back(key);
    GatheredRun& run = labelled_[key];
    run.run.unit_name = labels.unit;
    if (run.run.title.empty()) run.run.title = labels.run;
    run.entries.push_back(std::move(entry));
}

/// The gauge is up again, or without a gauge the register begins anew.
bool RunGatherer::beginsAnew(const GatheredRun& before, const Segment& after) const {
    const auto last = [&](std::optional<double> ReadingValues::*part) {
        std::optional<double> value;
        for (const Entry& entry : before.entries)
            if (entry.values.*part) value = entry.values.*part;
        return value;
    };
    const auto first = [&](std::optional<double> ReadingValues::*part) {
        for (const Entry& entry : after.entries)
            if (entry.values.*part) return entry.values.*part;
        return std::optional<double>();
    };
    const auto gauge_before = last(&ReadingValues::gauge_percent), gauge_after = first(&ReadingValues::gauge_percent);
    if (gauge_before && gauge_after) return *gauge_after >= *gauge_before + gauge_up_again_pt;
    const auto register_before = last(&ReadingValues::register_wh), register_after = first(&ReadingValues::register_wh);
    return register_before && register_after && *register_after < *register_before;
}

void RunGatherer::joinSegments(std::vector<GatheredRun>& runs) {
    for (Segment& segment : segments_) {
        if (segment.entries.empty()) continue;
        const long row = static_cast<long>(segment.entries.front().row) + 1;
        bool parts = runs.empty();
        if (!parts && beginsAnew(runs.back(), segment)) {
            parts = true;
            if (segment.title.empty() && !segment.after_head) {
                if (answers_.gaps_part_runs) parts = *answers_.gaps_part_runs;
                else
                    ask_once(reading_, TableQuestion::runs,
                             say(phrase("foreign_tables", "from row %1 on, behind an empty row, the figures begin anew: this may be another run"),
                                 say_number(row)),
                             {"separate", "one"});
            }
        }
        if (parts) {
            GatheredRun& run = runs.emplace_back();
            run.run.title = segment.title.empty() && runs.size() == 1 ? block_title_ : segment.title;
            run.title_day = segment.title_day;
            run.title_clock_ms = segment.title_clock_ms;
        } else if (!segment.title.empty()) {
            note_once(reading_,
                      say(phrase("foreign_tables", "`%1` above row %2 is taken for a heading within the run"), segment.title, say_number(row)));
        }
        auto& entries = runs.back().entries;
        entries.insert(entries.end(), std::make_move_iterator(segment.entries.begin()), std::make_move_iterator(segment.entries.end()));
    }
}

bool RunGatherer::place(const Entry& entry, LogClock& clock, std::int64_t day, UtcMs& moment) {
    const std::string text = local_text(day, *entry.clock);
    const LogClock::Outcome outcome = clock.read(text, {}, moment);
    if (outcome == LogClock::Outcome::skipped)
        leave(entry.row, say(phrase("foreign_tables", "the time %1 does not exist, as the clocks went forward"), text.substr(0, 16)));
    else if (outcome != LogClock::Outcome::good) leave(entry.row, say(phrase("foreign_tables", "the time %1 cannot be read"), text.substr(0, 16)));
    return outcome == LogClock::Outcome::good;
}

void RunGatherer::timeEntries(GatheredRun& gathered, std::size_t number) {
    LogClock::Settings settings;
    settings.form = TimeForm::date_time;
    settings.order = DateOrder::year_first;
    settings.zone = zone_;
    LogClock clock(settings);
    const bool has_elapsed = std::ranges::any_of(gathered.entries, [](const Entry& entry) { return entry.elapsed_ms.has_value(); });
    const bool has_day = std::ranges::any_of(gathered.entries, [](const Entry& entry) { return entry.day.has_value(); });
    bool counted = has_elapsed;
    if (!has_elapsed && !has_day && !gathered.title_day && !gathered.entries.empty()) {
        // Times such as 2:40 without any date.
        const bool beyond_a_day = std::ranges::any_of(gathered.entries, [](const Entry& entry) { return entry.clock->ms > day_of_ms; });
        const bool from_zero = gathered.entries.front().clock->ms < 60'000;
        counted = answers_.times_are_elapsed.value_or(beyond_a_day);
        if (!answers_.times_are_elapsed && from_zero && !beyond_a_day)
            ask_once(reading_, TableQuestion::clock_meaning,
                     say(phrase("foreign_tables", "times that begin with 0:00 may be times of day, or count from the start")), {"clock", "elapsed"});
    }
    // The start that was named, or that a title names.
    std::optional<std::int64_t> start_day = gathered.title_day;
    std::optional<UtcMs> start_ms;
    if (start_day && gathered.title_clock_ms) {
        UtcMs moment = 0;
        if (clock.read(local_text(*start_day, {*gathered.title_clock_ms, std::nullopt}), {}, moment) == LogClock::Outcome::good) start_ms = moment;
    }
    if (number < answers_.starts.size() && !answers_.starts[number].empty())
        if (const auto date = date_in_cell(answers_.starts[number], false)) {
            start_day = day_of(*date);
            UtcMs moment = 0;
            if (start_day && date->clock && clock.read(local_text(*start_day, *date->clock), {}, moment) == LogClock::Outcome::good)
                start_ms = moment;
        }
    const bool only = number == 0;
    const Message which = say_number(number + 1);
    if (counted && !start_ms) {
        ask_once(reading_, TableQuestion::start,
                 only ? say(phrase("foreign_tables", "the times count from the start of the run, and nothing says when that was"))
                      : say(phrase("foreign_tables", "the times count from the start of run %1, and nothing says when that was"), which));
        start_ms = now_ms_ - 7 * day_of_ms;
    } else if (!counted && !has_day && !start_day) {
        ask_once(reading_, TableQuestion::start,
                 only ? say(phrase("foreign_tables", "the times of the run name no date"))
                      : say(phrase("foreign_tables", "the times of run %1 name no date"), which));
        start_day = now_ms_ / day_of_ms - 7;
    }
    std::optional<std::int64_t> day, named_day;
    std::int64_t last_clock_ms = 0;
    bool passed_midnight = false, past_bounds = false;
    for (Entry& entry : gathered.entries) {
        UtcMs moment = 0;
        if (counted) {
            moment = *start_ms + (entry.elapsed_ms ? *entry.elapsed_ms : entry.clock->ms);
        } else {
            const bool names_day = entry.day && (entry.fresh || entry.day != named_day || !day);
            if (names_day) {
                day = named_day = entry.day;
            } else {
                if (!day) day = start_day ? start_day : entry.day;
                if (entry.clock->ms + past_midnight_ms < last_clock_ms) {
                    ++*day;
                    passed_midnight = true;
                }
            }
            if (!day) {
                leave(entry.row, say(phrase("foreign_tables", "no date is known for it")));
                continue;
            }
            last_clock_ms = entry.clock->ms;
            if (!place(entry, clock, *day, moment)) continue;
        }
        // While the dates are asked for, what they seem to be is no reason to refuse.
        const bool dates_open = std::ranges::any_of(reading_.questions, [](const OpenTableQuestion& question) {
            return question.about == TableQuestion::date_order || question.about == TableQuestion::year || question.about == TableQuestion::start;
        });
        const bool early = to_local(moment, zone_).year < earliest_table_year;
        if ((early || hours_between(now_ms_, moment) > most_ahead_h) && !dates_open && !past_bounds) {
            past_bounds = true;
            if (!reading_.refusal)
                reading_.refusal =
                    early ? say(phrase("foreign_tables", "row %1: %2 lies before %3, so the clock or the date was never set"),
                                say_number(entry.row + 1), format_iso8601(moment, zone_), say_number(earliest_table_year))
                          : say(phrase("foreign_tables", "row %1: %2 lies in the future"), say_number(entry.row + 1), format_iso8601(moment, zone_));
        }
        entry.values.time_ms = moment;
        gathered.run.cut_off = gathered.run.cut_off || entry.values.mark == MarkKind::cut_off;
        if (gathered.run.readings.empty()) gathered.run.first_row = static_cast<long>(entry.row) + 1;
        gathered.run.full = gathered.run.full || entry.full;
        gathered.run.last_row = static_cast<long>(entry.row) + 1;
        gathered.run.readings.push_back(std::move(entry.values));
    }
    if (passed_midnight)
        note_once(reading_, say(phrase("foreign_tables", "where the time of day falls below that of the row before, midnight was passed")));
    if (!std::ranges::is_sorted(gathered.run.readings, {}, &ReadingValues::time_ms)) {
        note_once(reading_, say(phrase("foreign_tables", "the rows are not in order of time; they are put in order")));
        std::ranges::stable_sort(gathered.run.readings, {}, &ReadingValues::time_ms);
    }
}

void RunGatherer::finish() {
    std::vector<GatheredRun> runs;
    joinSegments(runs);
    for (const auto& key : label_order_) runs.push_back(std::move(labelled_[key]));
    for (GatheredRun& gathered : runs) {
        if (gathered.entries.empty()) continue;
        timeEntries(gathered, reading_.runs.size());
        if (gathered.run.unit_name.empty())
            if (const auto unit = reading_.preface.find("unit"); unit != reading_.preface.end()) gathered.run.unit_name = unit->second;
        reading_.runs.push_back(std::move(gathered.run));
    }
}

} // namespace ullage
