// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/unit.h"
#include "sizing/load_totals.h"

namespace ullage {

/// What a full unit holds and how it spends it, seen from the socket: E*, P* and c of core/unit/between_runs.h.
struct UnitContent {
    double deliverable_wh = 0;  ///< E*, at no time cost
    double own_w = 0;           ///< P*, while the output is on; at least 0
    double curvature_per_w = 0; ///< c
    double standby_w{};         ///< while the output is off; at least 0
    bool own_draw_known{};      ///< own_w was measured; else what is usual, or 0
    bool standby_known{};       ///< standby_w was measured; else 0
};

/// Power that runs at once on so many units side by side, W: all appliances, or as much as the rated outputs carry where the list needs less on
/// average.
[[nodiscard]] double together_w(const LoadTotals& totals, const Unit& unit, int units);

/// A load list laid out over the day: what it takes by day spread evenly over the day, what it takes by night over the night, which lies about
/// midnight. `night_h` and the hours of output on are those of LoadTotals; the quadratic loss is that of common_load_of(). The own draw is spent for
/// the hours of output on, the standby draw for the others.
///
/// Each unit of several alike carries its part: `units` of them hold `units` times the content and spend as many own draws.
class DayOfUse {
public:
    /// Preconditions: daily_wh > 0, units >= 1, `most_together_w` >= mean_on_w: the power that runs at once.
    DayOfUse(const LoadTotals& totals, const UnitContent& content, int units, double most_together_w);

    /// Spent of the content between two hours of the clock, from <= to; whole days are 24 h apart.
    [[nodiscard]] double spent_wh(double from_h, double to_h) const { return of_day(spent_, from_h, to_h); }
    /// Taken by the appliances, at the socket.
    [[nodiscard]] double load_wh(double from_h, double to_h) const { return of_day(load_, from_h, to_h); }
    [[nodiscard]] double spent_per_day_wh() const;
    [[nodiscard]] double content_wh() const { return content_wh_; }

private:
    struct Rates {
        double day_w = 0, night_w = 0;
    };
    [[nodiscard]] double of_day(const Rates& rates, double from_h, double to_h) const;

    double night_h_;
    double content_wh_;
    Rates load_, spent_;
};

} // namespace ullage
