// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/charge_course.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>
#include <numbers>

namespace ullage {

namespace {

constexpr int day_hours = 24;

/// What each hour of a day brings to the content and takes from it.
struct DayOfHours {
    std::array<double, day_hours> gain_wh{}, spent_wh{}, load_wh{};
};

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
    void lose(double wh) { content_wh_ = std::max(0.0, content_wh_ - wh); }
    [[nodiscard]] double wh() const { return content_wh_; }
    [[nodiscard]] double percent() const { return size_wh_ > 0 ? 100 * content_wh_ / size_wh_ : 0; }

private:
    double size_wh_, content_wh_;
};

/// A course followed until it repeats.
struct Followed {
    std::optional<double> empty_h;
    double alike_from_day = 1;
    double unserved_wh = 0, surplus_wh = 0; ///< of each day from then on, at the socket and in the content
};

/// One day of a tank, and what it was like.
struct DayPassed {
    double least_wh = 0, missing_load_wh = 0, over_wh = 0;
    bool met_an_end = false; ///< it was empty or full within the day
    std::optional<double> empty_at_h;
};

DayPassed pass_day(Tank& tank, const DayOfHours& day) {
    DayPassed passed;
    passed.least_wh = tank.wh();
    for (std::size_t hour = 0; hour < day_hours; ++hour) {
        const Tank::Hour one = tank.pass(day.gain_wh[hour], day.spent_wh[hour]);
        passed.least_wh = std::min(passed.least_wh, tank.wh());
        passed.over_wh += one.over_wh;
        if (day.spent_wh[hour] > 0) passed.missing_load_wh += one.missing_wh / day.spent_wh[hour] * day.load_wh[hour];
        if (one.empty_at && !passed.empty_at_h) passed.empty_at_h = static_cast<double>(hour) + *one.empty_at;
        if (one.missing_wh > 0 || one.over_wh > 0) passed.met_an_end = true;
    }
    return passed;
}

Followed follow(double size_wh, const DayOfHours& day) {
    // A loss so small is a rounding of the sums, and a course of a million days an answer to nobody.
    const double same_wh = 1e-9 * size_wh;
    Followed followed;
    Tank tank(size_wh);
    for (double days = 0;; ++days) {
        const double before_wh = tank.wh();
        const DayPassed passed = pass_day(tank, day);
        if (passed.empty_at_h && !followed.empty_h) followed.empty_h = days * day_hours + *passed.empty_at_h;
        const double loss_wh = before_wh - tank.wh();
        if (std::abs(loss_wh) <= same_wh) {
            followed.alike_from_day = days + 1;
            followed.unserved_wh = passed.missing_load_wh;
            followed.surplus_wh = passed.over_wh;
            return followed;
        }
        if (passed.met_an_end || loss_wh <= 0) continue;
        // Each of the next days loses as much, until the lowest hour of one would be below empty.
        const double alike_days = std::floor(passed.least_wh / loss_wh) - 1;
        if (alike_days <= 0) continue;
        tank.lose(alike_days * loss_wh);
        days += alike_days;
    }
}

DayOfHours hours_of(const DayOfUse& use, double array_wh, double daylight_h, double limit_w, double efficiency, double& clipped_wh) {
    DayOfHours day;
    for (std::size_t hour = 0; hour < day_hours; ++hour) {
        const double from_h = static_cast<double>(hour), pv_wh = array_wh * daylight_share(from_h, from_h + 1, daylight_h);
        const double taken_wh = std::min(pv_wh, limit_w);
        clipped_wh += pv_wh - taken_wh;
        day.gain_wh[hour] = taken_wh * efficiency;
        day.spent_wh[hour] = use.spent_wh(from_h, from_h + 1);
        day.load_wh[hour] = use.load_wh(from_h, from_h + 1);
    }
    return day;
}

double part_of_value(const std::optional<double>& limit, double value) { return limit && value > 0 ? *limit / value : 1; }

int shown_days(const ChargeCourse& course) {
    const double empty_h = std::max(course.empty_with_pv_h.value_or(0), course.empty_without_pv_h.value_or(0));
    const double days = std::max(std::ceil(empty_h / day_hours), course.alike_from_day + 1.0);
    return static_cast<int>(std::clamp<double>(days, least_shown_days, most_shown_days));
}

} // namespace

double daylight_share(double from_h, double to_h, double daylight_h) {
    const double sunrise_h = 12 - daylight_h / 2;
    const auto angle = [&](double hour) { return std::numbers::pi * std::clamp((hour - sunrise_h) / daylight_h, 0.0, 1.0); };
    return (std::cos(angle(from_h)) - std::cos(angle(to_h))) / 2;
}

std::optional<ChargeCourse> charge_course(const LoadTotals& totals, const SizedUnit& unit, const SizingChoices& choices, double array_daily_wh) {
    const int units = choices.units;
    if (!unit.content || !totals.mean_on_w) return std::nullopt;
    const DayOfUse use(totals, *unit.content, units, together_w(totals, unit.unit, units));
    const double limit_w = unit.unit.pv_max_w && *unit.unit.pv_max_w > 0 ? units * *unit.unit.pv_max_w : std::numeric_limits<double>::infinity();
    const double middle = unit.days.value ? *unit.days.value : unit.days.lower && unit.days.upper ? (*unit.days.lower + *unit.days.upper) / 2 : 0;

    ChargeCourse course;
    course.units = units;
    const DayOfHours sunny = hours_of(use, array_daily_wh, choices.daylight_h, limit_w, choices.inverter_efficiency, course.clipped_wh);
    DayOfHours dark = sunny;
    dark.gain_wh.fill(0);
    const double size_wh = use.content_wh();
    const double lower_wh = size_wh * part_of_value(unit.days.lower, middle), upper_wh = size_wh * part_of_value(unit.days.upper, middle);
    const Followed likely = follow(size_wh, sunny);
    course.empty_with_pv_h = likely.empty_h;
    course.alike_from_day = static_cast<int>(std::min(likely.alike_from_day, 1e9));
    course.unserved_wh = likely.unserved_wh;
    course.surplus_wh = likely.surplus_wh / choices.inverter_efficiency;
    course.empty_without_pv_h = follow(size_wh, dark).empty_h;
    course.lower_empty_with_pv_h = follow(lower_wh, sunny).empty_h;

    std::array<Tank, 3> with{Tank(size_wh), Tank(lower_wh), Tank(upper_wh)}, without = with;
    const int last_hour = shown_days(course) * day_hours;
    for (int hour = 0;; ++hour) {
        course.points.push_back({static_cast<double>(hour), with[0].percent(), with[1].percent(), with[2].percent(), without[0].percent(),
                                 without[1].percent(), without[2].percent()});
        if (hour == last_hour) return course;
        const auto of_day = static_cast<std::size_t>(hour % day_hours);
        for (Tank& tank : with) tank.pass(sunny.gain_wh[of_day], sunny.spent_wh[of_day]);
        for (Tank& tank : without) tank.pass(0, sunny.spent_wh[of_day]);
    }
}

} // namespace ullage
