// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sizing/day_of_use.h"

#include <vector>

namespace ullage {

/// The order in which the appliances of a list are used within the hours that the list leaves open.
enum class UseOrder { soonest, latest };

/// How a full unit is spent where only the hours by day and by night are known. Every day is like the other, so over any 24 hours each appliance
/// has its hours; after whole days the rest of the content is spent with each appliance in use as soon, or as late, as its hours of the day and of
/// the night allow. That bounds the time to cut-off for every order of use that a day may have. While in use an appliance takes its
/// mean (cycles are short against a day). The own draw is spent while anything is in use, or always where something is always connected; else the
/// standby draw.
class OrderOfUse {
public:
    /// As DayOfUse.
    OrderOfUse(const LoadList& list, const LoadTotals& totals, const UnitContent& content, int units, double most_together_w);

    [[nodiscard]] double content_wh() const { return day_.content_wh(); }
    [[nodiscard]] double spent_per_day_wh() const { return day_.spent_per_day_wh(); }

    struct Spent {
        double hours = 0;     ///< by the clock until the content is spent
        double served_wh = 0; ///< taken by the appliances by then, at the socket
    };
    /// `start_h`: hour of the clock at which the unit begins, 0 to 24.
    [[nodiscard]] Spent until_empty(double content_wh, double start_h, UseOrder order) const;

private:
    struct Use {
        double watts = 0, day_h = 0, night_h = 0;
    };
    /// Part of a use, from and to in hours since the beginning.
    struct Span {
        double from_h = 0, to_h = 0, watts = 0;
    };
    [[nodiscard]] std::vector<Span> spans(double start_h, UseOrder order) const;

    DayOfUse day_;
    std::vector<Use> uses_;
    double daily_wh_, dusk_h_, dawn_h_, with_loss_, own_w_, standby_w_;
    bool always_on_;
};

} // namespace ullage
