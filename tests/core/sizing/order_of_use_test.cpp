// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sizing/sizing_samples.h"
#include "sizing/inside/order_of_use.h"

#include <gtest/gtest.h>

namespace ullage::test {
namespace {

OrderOfUse order_of(const LoadList& list) {
    const LoadTotals totals = load_totals(list);
    return {list, totals, UnitContent{1000, 0, 0}, 1, totals.running_w};
}

// A lamp of 10 W for 4 h of a night from 18:00 to 06:00; 15 Wh are 1.5 h of its light.
TEST(OrderOfUse, a_lamp_is_lit_at_once_or_as_late_as_its_night_allows_whenever_the_unit_begins) {
    const OrderOfUse use = order_of(sized_list({sized_appliance("lamp", 10, 4, 4)}));
    EXPECT_NEAR(use.spent_per_day_wh(), 40, 1e-12);
    const auto hours = [&](double start_h, UseOrder order) { return use.until_empty(15, start_h, order).hours; };
    EXPECT_NEAR(hours(12, UseOrder::soonest), 6 + 1.5, 1e-12) << "at dusk";
    EXPECT_NEAR(hours(12, UseOrder::latest), 14 + 1.5, 1e-12) << "the last four hours before dawn";
    EXPECT_NEAR(hours(20, UseOrder::soonest), 1.5, 1e-12);
    EXPECT_NEAR(hours(20, UseOrder::latest), 8 + 1.5, 1e-12) << "two of its hours may lie before 20:00, the other two end at dawn";
    EXPECT_NEAR(hours(0, UseOrder::soonest), 1.5, 1e-12);
    EXPECT_NEAR(hours(0, UseOrder::latest), 20 + 1.5, 1e-12) << "all four hours may lie before midnight, so none until the next evening";
    EXPECT_NEAR(use.until_empty(15, 12, UseOrder::latest).served_wh, 15, 1e-12);
}

TEST(OrderOfUse, whole_days_take_whole_lists) {
    const OrderOfUse use = order_of(sized_list({sized_appliance("lamp", 10, 4, 4)}));
    const OrderOfUse::Spent spent = use.until_empty(80 + 15, 12, UseOrder::soonest);
    EXPECT_NEAR(spent.hours, 48 + 7.5, 1e-12);
    EXPECT_NEAR(spent.served_wh, 95, 1e-12);
}

TEST(OrderOfUse, a_list_that_runs_all_day_leaves_no_choice) {
    // Used for all of 24 h by day: there is no night then.
    const OrderOfUse use = order_of(sized_list({sized_appliance("router", 5, 24)}));
    for (const double start_h : {0.0, 7.5, 12.0, 23.5})
        for (const UseOrder order : {UseOrder::soonest, UseOrder::latest})
            EXPECT_NEAR(use.until_empty(60, start_h, order).hours, 12, 1e-12) << start_h;
    // And all of it by night: there is no day.
    const OrderOfUse dark = order_of(sized_list({sized_appliance("router", 5, 24, 24)}));
    for (const double start_h : {0.0, 7.5, 12.0, 23.5})
        for (const UseOrder order : {UseOrder::soonest, UseOrder::latest})
            EXPECT_NEAR(dark.until_empty(60, start_h, order).hours, 12, 1e-12) << start_h;
}

} // namespace
} // namespace ullage::test
