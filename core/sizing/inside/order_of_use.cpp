// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/inside/order_of_use.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double clock_h = 24;

/// A stretch of day or night, hours since the beginning; `other_h`: the rest of that day or night, at the
/// other end of the 24 hours.
struct Stretch {
    double from_h, to_h, other_h;
    bool night, first;
};

/// The 24 hours from `start_h` on as stretches of day and night in order.
std::vector<Stretch> stretches(double start_h, double dawn_h, double dusk_h) {
    std::vector<Stretch> made;
    const double turns[] = {dawn_h, dusk_h, clock_h + dawn_h, clock_h + dusk_h, 2 * clock_h + dawn_h};
    double hour = std::fmod(start_h, clock_h);
    bool night = hour < dawn_h || hour >= dusk_h;
    const double end_h = hour + clock_h, begin_h = hour;
    for (const double turn_h : turns) {
        if (turn_h <= hour) {
            if (!made.empty()) night = !night; // a day or a night of no length
            continue;
        }
        const double to_h = std::min(turn_h, end_h);
        made.push_back({hour - begin_h, to_h - begin_h, 0, night, made.empty()});
        if (turn_h >= end_h) break;
        hour = to_h;
        night = !night;
    }
    if (made.size() > 1 && made.front().night == made.back().night) { // begun within a day or a night, whose other part comes last
        made.front().other_h = made.back().to_h - made.back().from_h;
        made.back().other_h = made.front().to_h - made.front().from_h;
    }
    return made;
}

} // namespace

OrderOfUse::OrderOfUse(const LoadList& list, const LoadTotals& totals, const UnitContent& content, int units, double most_together_w)
    : day_(totals, content, units, most_together_w), daily_wh_(totals.daily_wh), dusk_h_(clock_h - totals.night_h / 2), dawn_h_(totals.night_h / 2),
      with_loss_(1 + content.curvature_per_w * most_together_w / units), own_w_(units * content.own_w), standby_w_(units * content.standby_w),
      always_on_(totals.always_connected) {
    for (const Appliance& one : list.appliances)
        uses_.push_back({one.count * mean_in_use_w(one), std::min(one.hours_per_day - one.night_hours, clock_h - totals.night_h),
                         std::min(one.night_hours, totals.night_h)});
}

std::vector<OrderOfUse::Span> OrderOfUse::spans(double start_h, UseOrder order) const {
    std::vector<Span> made;
    for (const Stretch& stretch : stretches(start_h, dawn_h_, dusk_h_))
        for (const Use& use : uses_) {
            const double length_h = stretch.to_h - stretch.from_h, wanted_h = stretch.night ? use.night_h : use.day_h;
            // Of a day or night in two parts one takes what it can, the other what is left.
            const bool greedy = stretch.first == (order == UseOrder::soonest) || stretch.other_h == 0;
            const double hours = greedy ? std::min(wanted_h, length_h) : std::max(0.0, wanted_h - stretch.other_h);
            if (hours <= 0) continue;
            if (order == UseOrder::soonest) made.push_back({stretch.from_h, stretch.from_h + hours, use.watts});
            else made.push_back({stretch.to_h - hours, stretch.to_h, use.watts});
        }
    return made;
}

OrderOfUse::Spent OrderOfUse::until_empty(double content_wh, double start_h, UseOrder order) const {
    const double whole_days = std::floor(content_wh / spent_per_day_wh());
    double left_wh = content_wh - whole_days * spent_per_day_wh();
    Spent spent{whole_days * clock_h, whole_days * daily_wh_};
    const std::vector<Span> uses = spans(start_h, order);
    std::vector<double> turns{0, clock_h};
    for (const Span& use : uses) turns.insert(turns.end(), {use.from_h, use.to_h});
    std::ranges::sort(turns);
    for (std::size_t i = 0; i + 1 < turns.size() && left_wh > 0; ++i) {
        const double from_h = turns[i], to_h = std::min(turns[i + 1], clock_h);
        if (to_h <= from_h) continue;
        double load_w = 0;
        for (const Span& use : uses)
            if (use.from_h <= from_h && use.to_h >= to_h) load_w += use.watts;
        const double rate_w = load_w * with_loss_ + (always_on_ || load_w > 0 ? own_w_ : standby_w_);
        const double hours = rate_w * (to_h - from_h) > left_wh ? left_wh / rate_w : to_h - from_h;
        left_wh -= hours * rate_w;
        spent.hours += hours;
        spent.served_wh += hours * load_w;
    }
    return spent;
}

} // namespace ullage
