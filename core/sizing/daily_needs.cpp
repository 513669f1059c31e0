// SPDX-License-Identifier: GPL-3.0-or-later
#include "sizing/daily_needs.h"

namespace ullage {

DailyNeeds daily_needs(const LoadTotals& totals, const Unit& unit, const std::optional<UnitContent>& content, const SizingChoices& choices) {
    DailyNeeds needs;
    needs.load_wh = totals.daily_wh;
    if (content && totals.mean_on_w) {
        const DayOfUse use(totals, *content, choices.units, together_w(totals, unit, choices.units));
        needs.own_wh = use.spent_per_day_wh() - totals.daily_wh;
        needs.own_draw_known = content->own_draw_known && (content->standby_known || totals.hours_on >= 24);
    }
    const double spent_wh = needs.load_wh + needs.own_wh;
    needs.array = pv_array(spent_wh, choices);
    needs.months = pv_months(needs.array, choices);
    needs.battery = battery_by_rule(spent_wh, choices);
    return needs;
}

} // namespace ullage
