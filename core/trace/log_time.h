// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/instant.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace ullage {

/// Which of three numbers is the day. `unknown` is an open question: it is never guessed.
enum class DateOrder { unknown, year_first, day_first, month_first };

/// What the time of a row is written as.
enum class TimeForm {
    date_time,      ///< date and time in one cell: ISO 8601 or day, month, year in any order
    date_and_clock, ///< date in one column, time of day in another
    clock,          ///< time of day alone; the date is that of the start, midnight is passed where the clock falls
    epoch_s,        ///< seconds since 1970-01-01T00:00Z
    epoch_ms,       ///< milliseconds since then
    elapsed,        ///< a number counted from the start of the log, in the unit of its column (else seconds)
    elapsed_clock,  ///< hours:minutes[:seconds] counted from the start of the log
};

/// "date and time", "date and clock", "clock", "epoch s", "epoch ms", "elapsed", "elapsed h:m:s".
[[nodiscard]] Message say_time_form(TimeForm form);

/// True where the times say nothing without the moment at which the log was started.
[[nodiscard]] bool needs_start(TimeForm form);

/// Three parts of a date as they stand.
struct DateParts {
    int part[3] = {0, 0, 0};
    int digits[3] = {0, 0, 0}; ///< 0 for a month in letters
    char separator = '-';
};

/// A time of day, or hours counted from the start, which may be 24 and more.
struct ClockParts {
    std::int64_t ms = 0;
    std::optional<int> offset_minutes; ///< east of UTC, where the cell has Z or an offset
};

/// Reads a date (2027-05-14, 2027/5/14, 20270514, 14.05.2027, 5/14/27, 14-May-2027) from the front of `text` and takes it off.
[[nodiscard]] bool read_date(std::string_view& text, DateParts& parts);
/// Reads all of `text` as h:mm[:ss[.fff]], `basic` also as hhmm[ss], with AM or PM, with Z or an offset.
[[nodiscard]] bool read_clock(std::string_view text, bool basic, ClockParts& parts);
/// Both in one cell, with T or blanks between. A date alone is none.
[[nodiscard]] bool read_date_time(std::string_view text, DateParts& date, ClockParts& clock);

/// What a date itself says of its order; unknown where it could be read in two ways. Dots are written day first only (common practice, no source).
[[nodiscard]] DateOrder order_of(const DateParts& parts);
/// Days since 1970-01-01; absent where the calendar has no such date. Years of two digits are 2000 to 2099.
[[nodiscard]] std::optional<std::int64_t> days_of(const DateParts& parts, DateOrder order);

/// Turns the cells of a log's rows, in their order, into instants.
class LogClock {
public:
    struct Settings {
        TimeForm form = TimeForm::date_time;
        DateOrder order = DateOrder::unknown;
        char decimal = '.';
        double unit_s = 1;             ///< of `elapsed`
        std::string zone = "UTC";      ///< of times without an offset
        std::optional<UtcMs> start_ms; ///< for the forms that need it
    };
    enum class Outcome { good, unreadable, skipped };

    explicit LogClock(Settings settings) : settings_(std::move(settings)) {}

    /// The instant of a row; `date` is used by date_and_clock only. `skipped`: the local time does not exist, as the clocks went forward. Of a
    /// doubled hour the earlier instant is taken unless the row before is later. Precondition: needs_start() has its start.
    [[nodiscard]] Outcome read(std::string_view time, std::string_view date, UtcMs& instant);

    [[nodiscard]] long doubled_rows() const { return doubled_; } ///< rows whose local time occurs twice

private:
    Outcome from_civil(std::int64_t days, const ClockParts& clock, UtcMs& instant);
    [[nodiscard]] std::optional<std::int64_t> cached_days(const DateParts& parts);
    bool read_iso(std::string_view cell, Outcome& outcome, UtcMs& instant);

    Settings settings_;
    std::optional<UtcMs> last_ms_;
    long doubled_ = 0;
    // The zone's offset holds at least for the quarter of an hour for which it was asked.
    std::int64_t quarter_ = INT64_MIN;
    std::int64_t quarter_offset_s_ = 0;
    DateParts seen_date_;
    std::optional<std::int64_t> seen_days_;
    std::optional<std::int64_t> clock_day_, clock_last_ms_;
};

} // namespace ullage
