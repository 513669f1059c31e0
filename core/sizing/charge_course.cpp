// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/charge_course.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numbers>

namespace ullage {

namespace {

constexpr int day_hours = 24;

/// The content from hour to hour, between empty and full.
class Tank {
public:
    explicit Tank(double size_wh) : size_wh_(size_wh), content_wh_(size_wh) {}

    struct Hour {
        double missing_wh = 0, over_wh = 0;
        std::optional<double> empty_at; ///< within the hour, 0 to 1
    };
    Hour pass(double gain_wh, double use_wh) {
        Hour hour;
        const double next_wh = content_wh_ + gain_wh - use_wh;
        if (next_wh < 0) {
            hour.missing_wh = -next_wh;
            hour.empty_at = content_wh_ / (content_wh_ - next_wh);
        }
        hour.over_wh = std::max(0.0, next_wh - size_wh_);
        content_wh_ = std::clamp(next_wh, 0.0, size_wh_);
        return hour;
    }
    [[nodiscard]] double percent() const { return 100 * content_wh_ / size_wh_; }

private:
    double size_wh_, content_wh_;
};

/// One content, with and without PV.
struct Tanks {
    Tank with, without;
    explicit Tanks(double size_wh) : with(size_wh), without(size_wh) {}
};

double part_of_value(const std::optional<double>& limit, double value) { return limit && value > 0 ? *limit / value : 1; }

} // namespace

double daylight_share(double from_h, double to_h, double daylight_h) {
    const double sunrise_h = 12 - daylight_h / 2;
    const auto angle = [&](double hour) { return std::numbers::pi * std::clamp((hour - sunrise_h) / daylight_h, 0.0, 1.0); };
    return (std::cos(angle(from_h)) - std::cos(angle(to_h))) / 2;
}

std::optional<ChargeCourse> charge_course(const LoadTotals& totals, const SizedUnit& unit, const SizingChoices& choices, int days) {
    const int units = choices.units;
    if (!unit.content || !totals.mean_on_w) return std::nullopt;
    const DayOfUse use(totals, *unit.content, units, together_w(totals, unit.unit, units));
    const double array_wh = pv_array(totals.daily_wh, choices).daily_wh;
    const double limit_w = unit.unit.pv_max_w && *unit.unit.pv_max_w > 0 ? units * *unit.unit.pv_max_w : std::numeric_limits<double>::infinity();
    const double middle = unit.days.value ? *unit.days.value : unit.days.lower && unit.days.upper ? (*unit.days.lower + *unit.days.upper) / 2 : 0;

    ChargeCourse course;
    course.units = units;
    Tanks likely(use.content_wh());
    Tanks low(use.content_wh() * part_of_value(unit.days.lower, middle)), high(use.content_wh() * part_of_value(unit.days.upper, middle));
    for (int hour = 0;; ++hour) {
        course.points.push_back({static_cast<double>(hour), likely.with.percent(), low.with.percent(), high.with.percent(), likely.without.percent(),
                                 low.without.percent(), high.without.percent()});
        if (hour == days * day_hours) return course;
        const double of_day = hour % day_hours;
        const double pv_wh = array_wh * daylight_share(of_day, of_day + 1, choices.daylight_h), taken_wh = std::min(pv_wh, limit_w);
        const double gain_wh = taken_wh * choices.inverter_efficiency, spent_wh = use.spent_wh(of_day, of_day + 1);
        const Tank::Hour with = likely.with.pass(gain_wh, spent_wh), without = likely.without.pass(0, spent_wh);
        low.with.pass(gain_wh, spent_wh);
        high.with.pass(gain_wh, spent_wh);
        low.without.pass(0, spent_wh);
        high.without.pass(0, spent_wh);
        course.clipped_wh += pv_wh - taken_wh;
        course.surplus_wh += with.over_wh / choices.inverter_efficiency;
        if (spent_wh > 0) course.unserved_wh += with.missing_wh / spent_wh * use.load_wh(of_day, of_day + 1);
        if (with.empty_at && !course.empty_with_pv_h) course.empty_with_pv_h = hour + *with.empty_at;
        if (without.empty_at && !course.empty_without_pv_h) course.empty_without_pv_h = hour + *without.empty_at;
    }
}

} // namespace ullage
