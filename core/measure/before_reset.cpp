// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/before_reset.h"

#include "base/number.h"
#include "measure/register.h"

#include <cmath>

namespace ullage {

Result<std::vector<ReadingValues>> readings_of_reset(const RunRecord& record, const ReadingValues& after, double before_wh) {
    const ReadingValues* earlier = nullptr;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.register_wh && reading.values.time_ms <= after.time_ms) earlier = &reading.values;
    if (earlier == nullptr || !after.register_wh)
        return Error{Failure::bad_input, say(phrase("measure", "there is no register before that to start from")), {}, {}};
    const Message shown = say_digits(exact_text(before_wh) + " Wh");
    const std::string then = clock_text(earlier->time_ms, record.run.time_zone);
    const double rise_wh = before_wh - *earlier->register_wh;
    if (rise_wh < 0)
        return Error{Failure::bad_input,
                     say(phrase("measure", "%1 is less than the %2 Wh read at %3"), shown, say_digits(exact_text(*earlier->register_wh)), then),
                     {},
                     say(phrase("measure", "type what it showed just before the reset"))};
    const MeasureOptions options;
    const double gap_h = hours_between(earlier->time_ms, after.time_ms);
    const double most_wh = believable_load_w(record.unit, options) * (gap_h + 2 * options.moment_doubt_min / 60);
    if (rise_wh + *after.register_wh > most_wh)
        return Error{Failure::bad_input,
                     say(phrase("measure", "%1 is more than this unit can be believed to deliver since %2"), shown, then),
                     {},
                     say(phrase("measure", "type what it showed just before the reset"))};
    const double all_wh = rise_wh + *after.register_wh;
    const double share = all_wh > 0 ? rise_wh / all_wh : 1;
    ReadingValues last;
    last.time_ms = earlier->time_ms + std::llround(share * static_cast<double>(after.time_ms - earlier->time_ms));
    last.register_wh = before_wh;
    last.remark = say(phrase("measure", "just before the reset; its time by the load"));
    ReadingValues zeroed;
    zeroed.time_ms = last.time_ms;
    zeroed.register_wh = 0;
    zeroed.mark = MarkKind::meter_zeroed;
    return std::vector<ReadingValues>{last, zeroed, after};
}

} // namespace ullage
