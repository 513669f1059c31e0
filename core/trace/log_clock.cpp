// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/zone_table.h"
#include "trace/log_number.h"
#include "trace/log_time.h"

#include <cmath>

namespace ullage {
namespace {

constexpr std::int64_t day_ms = 86'400'000;

bool two_digits(const char* at, int& value) {
    const int a = at[0] - '0', b = at[1] - '0';
    value = a * 10 + b;
    return a >= 0 && a <= 9 && b >= 0 && b <= 9;
}

std::int64_t floor_div(std::int64_t a, std::int64_t b) { return a / b - (a % b < 0 ? 1 : 0); }

} // namespace

std::optional<std::int64_t> LogClock::cached_days(const DateParts& parts) {
    bool same = seen_days_.has_value();
    for (int i = 0; i < 3; ++i) same = same && parts.part[i] == seen_date_.part[i] && parts.digits[i] == seen_date_.digits[i];
    if (same) return seen_days_;
    // A month in letters and a year in front say their order themselves.
    const DateOrder own = order_of(parts);
    const bool lettered = parts.digits[0] == 0 || parts.digits[1] == 0;
    seen_days_ = days_of(parts, lettered || own == DateOrder::year_first ? own : settings_.order);
    seen_date_ = parts;
    return seen_days_;
}

LogClock::Outcome LogClock::from_civil(std::int64_t days, const ClockParts& clock, UtcMs& instant) {
    const std::int64_t local_ms = days * day_ms + clock.ms;
    if (clock.offset_minutes) {
        instant = local_ms - *clock.offset_minutes * 60'000LL;
    } else {
        const std::int64_t quarter = floor_div(local_ms, 900'000);
        if (quarter != quarter_) {
            const auto offsets = zone_table::offsets_at_local(floor_div(local_ms, 1000), settings_.zone);
            if (!offsets) return Outcome::unreadable;
            using Sort = zone_table::LocalOffsets::Sort;
            if (offsets->sort == Sort::skipped) return Outcome::skipped;
            if (offsets->sort == Sort::doubled) {
                ++doubled_;
                const UtcMs earlier = local_ms - offsets->first * 1000LL, later = local_ms - offsets->second * 1000LL;
                // Two seconds back are a row out of order, not the second pass through the hour.
                constexpr std::int64_t jitter_ms = 2000;
                const bool first_pass = !last_ms_ || earlier > *last_ms_ || (earlier < *last_ms_ && earlier + jitter_ms >= *last_ms_);
                instant = first_pass ? earlier : later;
                last_ms_ = instant;
                return Outcome::good;
            }
            quarter_ = quarter;
            quarter_offset_s_ = offsets->first;
        }
        instant = local_ms - quarter_offset_s_ * 1000;
    }
    last_ms_ = instant;
    return Outcome::good;
}

/// The commonest form, YYYY-MM-DD hh:mm:ss[.fff], without the general reader; false for any other.
bool LogClock::read_iso(std::string_view cell, Outcome& outcome, UtcMs& instant) {
    if (cell.size() < 19 || cell[4] != '-' || cell[7] != '-' || (cell[10] != 'T' && cell[10] != ' ') || cell[13] != ':' || cell[16] != ':')
        return false;
    const char* at = cell.data();
    int century = 0, year = 0, hour = 0, minute = 0, second = 0;
    DateParts date;
    if (!two_digits(at, century) || !two_digits(at + 2, year) || !two_digits(at + 5, date.part[1]) || !two_digits(at + 8, date.part[2]) ||
        !two_digits(at + 11, hour) || !two_digits(at + 14, minute) || !two_digits(at + 17, second) || hour > 23 || minute > 59 || second > 59)
        return false;
    date.part[0] = century * 100 + year;
    date.digits[0] = 4;
    date.digits[1] = date.digits[2] = 2;
    ClockParts clock;
    clock.ms = ((hour * 60LL + minute) * 60 + second) * 1000;
    std::string_view rest = cell.substr(19);
    if (!rest.empty() && rest.front() == '.') {
        rest.remove_prefix(1);
        for (int scale = 100; !rest.empty() && rest.front() >= '0' && rest.front() <= '9'; rest.remove_prefix(1), scale /= 10)
            clock.ms += (rest.front() - '0') * scale;
    }
    if (rest == "Z") clock.offset_minutes = 0;
    else if (!rest.empty()) return false;
    const auto days = cached_days(date);
    outcome = days ? from_civil(*days, clock, instant) : Outcome::unreadable;
    return true;
}

LogClock::Outcome LogClock::read(std::string_view time, std::string_view date, UtcMs& instant) {
    DateParts parts;
    ClockParts clock;
    switch (settings_.form) {
    case TimeForm::date_time: {
        Outcome outcome = Outcome::unreadable;
        if (read_iso(time, outcome, instant)) return outcome;
        if (!read_date_time(time, parts, clock)) return Outcome::unreadable;
        const auto days = cached_days(parts);
        return days ? from_civil(*days, clock, instant) : Outcome::unreadable;
    }
    case TimeForm::date_and_clock: {
        if (!read_date(date, parts) || !date.empty() || !read_clock(time, true, clock) || clock.ms >= day_ms) return Outcome::unreadable;
        const auto days = cached_days(parts);
        return days ? from_civil(*days, clock, instant) : Outcome::unreadable;
    }
    case TimeForm::clock: {
        if (!read_clock(time, false, clock) || clock.ms >= day_ms) return Outcome::unreadable;
        if (!clock_day_) {
            const LocalTime start = to_local(settings_.start_ms.value_or(0), settings_.zone);
            const UtcMs local = settings_.start_ms.value_or(0) + start.offset_minutes * 60'000LL;
            clock_day_ = floor_div(local, day_ms);
            // The log may have been started shortly before or after the given moment, across midnight.
            const std::int64_t ahead = *clock_day_ * day_ms + clock.ms - local;
            if (ahead > day_ms / 2) --*clock_day_;
            if (ahead < -day_ms / 2) ++*clock_day_;
        } else if (clock.ms < *clock_last_ms_ - day_ms / 2) {
            ++*clock_day_;
        }
        clock_last_ms_ = clock.ms;
        return from_civil(*clock_day_, clock, instant);
    }
    case TimeForm::elapsed_clock:
        if (!read_clock(time, false, clock) || clock.offset_minutes) return Outcome::unreadable;
        instant = settings_.start_ms.value_or(0) + clock.ms;
        return Outcome::good;
    case TimeForm::epoch_s:
    case TimeForm::epoch_ms:
    case TimeForm::elapsed: {
        LogNumber number;
        if (!read_number(time, settings_.decimal, 0, number)) return Outcome::unreadable;
        LogUnit unit;
        if (!number.suffix.empty()) {
            const auto named = unit_named(number.suffix);
            if (!named || named->quantity != LogQuantity::time || settings_.form != TimeForm::elapsed) return Outcome::unreadable;
            unit = *named;
        } else if (settings_.form == TimeForm::elapsed) {
            unit.factor = settings_.unit_s;
        }
        if (settings_.form != TimeForm::epoch_ms) unit.exponent += 3;
        const auto ms = value_of(number, unit);
        if (!ms || std::abs(*ms) > 2e14) return Outcome::unreadable;
        instant = std::llround(*ms) + (settings_.form == TimeForm::elapsed ? settings_.start_ms.value_or(0) : 0);
        return Outcome::good;
    }
    }
    return Outcome::unreadable;
}

} // namespace ullage
