// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/day_of_use.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double whole_day_h = 24;

} // namespace

double together_w(const LoadTotals& totals, const Unit& unit, int units) {
    const double mean_w = totals.mean_on_w.value_or(0), rated_w = unit.rated_output_w.value_or(0);
    return std::max(mean_w, rated_w > 0 ? std::min(totals.running_w, units * rated_w) : totals.running_w);
}

DayOfUse::DayOfUse(const LoadTotals& totals, const UnitContent& content, int units, double most_together_w)
    : night_h_(totals.night_h), content_wh_(units * content.deliverable_wh) {
    const double day_h = whole_day_h - night_h_;
    const auto spread = [](double amount, double hours) { return hours > 0 ? amount / hours : 0.0; };
    load_ = {spread(totals.daily_wh - totals.night_wh, day_h), spread(totals.night_wh, night_h_)};
    // Of each watt-hour the share c × power is lost while that power runs; of several units each runs its
    // part of it.
    const double with_loss = 1 + content.curvature_per_w * most_together_w / units;
    const auto itself_wh = [&](double on_h, double hours) {
        return units * (content.own_w * on_h + content.standby_w * std::max(0.0, hours - on_h));
    };
    spent_ = {load_.day_w * with_loss + spread(itself_wh(totals.hours_on - totals.night_hours_on, day_h), day_h),
              load_.night_w * with_loss + spread(itself_wh(totals.night_hours_on, night_h_), night_h_)};
}

double DayOfUse::spent_per_day_wh() const { return spent_.day_w * (whole_day_h - night_h_) + spent_.night_w * night_h_; }

double DayOfUse::of_day(const Rates& rates, double from_h, double to_h) const {
    // Night up to an hour of the clock, counted from midnight before.
    const auto night_until = [this](double hour) {
        const double days = std::floor(hour / whole_day_h), rest = hour - days * whole_day_h;
        return days * night_h_ + std::min(rest, night_h_ / 2) + std::max(0.0, rest - (whole_day_h - night_h_ / 2));
    };
    const double night = night_until(to_h) - night_until(from_h);
    return rates.night_w * night + rates.day_w * (to_h - from_h - night);
}

} // namespace ullage
