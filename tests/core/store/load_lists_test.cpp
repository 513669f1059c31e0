// SPDX-License-Identifier: GPL-3.0-or-later
#include "samples.h"

#include <SQLiteCpp/SQLiteCpp.h>

namespace ullage {
namespace {

using namespace test;

LoadList show_night() {
    LoadList list;
    list.name = "Show night";
    list.remark = "without the popcorn \"machine\" ≈";
    Appliance projector;
    projector.name = "projector";
    projector.power_w = 240.5;
    projector.hours_per_day = 3;
    projector.night_hours = 2.5;
    projector.start_peak_w = 310;
    Appliance cold;
    cold.name = "cold box";
    cold.duty = 0.35;
    cold.measured = MeasuredUse{412.25, 23.5};
    cold.hours_per_day = 24;
    cold.night_hours = 10;
    cold.count = 2;
    cold.always_connected = true;
    list.appliances = {projector, cold};
    return list;
}

TEST(LoadLists, come_back_after_reopening_with_every_figure_and_their_order) {
    const TempFolder folder;
    const FakeClock clock;
    LoadList kept;
    {
        Logbook logbook = take(Logbook::create(folder / "a.ullage", clock));
        kept = take(logbook.add(show_night()));
        EXPECT_FALSE(kept.uuid.empty());
        LoadList other = show_night();
        other.name = "a quiet day";
        other.appliances.clear();
        take(logbook.add(other));
    }
    const Logbook logbook = take(Logbook::open(folder / "a.ullage", OpenMode::read_only, clock));
    const auto lists = take(logbook.load_lists());
    ASSERT_EQ(lists.size(), 2u);
    EXPECT_EQ(lists[0].name, "a quiet day") << "in order of name, capitals or not";
    EXPECT_EQ(lists[1], kept);
}

TEST(LoadLists, an_update_replaces_all_its_appliances_and_a_withdrawn_list_can_return) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    LoadList list = take(logbook.add(show_night()));
    list.name = "Late show";
    std::swap(list.appliances[0], list.appliances[1]);
    list.appliances.pop_back();
    take(logbook.update(list));
    EXPECT_EQ(take(logbook.load_lists()), std::vector{list});
    take(logbook.set_load_list_withdrawn(list.uuid, true));
    EXPECT_TRUE(take(logbook.load_lists()).empty());
    take(logbook.set_load_list_withdrawn(list.uuid, false));
    EXPECT_EQ(take(logbook.load_lists()), std::vector{list});
}

TEST(LoadLists, what_cannot_be_is_refused_and_leaves_the_logbook_as_it_was) {
    const FakeClock clock;
    Logbook logbook = take(Logbook::in_memory(clock));
    const LoadList list = take(logbook.add(show_night()));
    LoadList same_name = show_night();
    same_name.name = "SHOW NIGHT";
    EXPECT_EQ(failure_of(logbook.add(same_name)), Failure::refused);
    LoadList wrong = list;
    wrong.appliances[0].hours_per_day = 25;
    EXPECT_EQ(failure_of(logbook.update(wrong)), Failure::bad_input);
    wrong = list;
    wrong.uuid = LoadListId("no such");
    EXPECT_EQ(failure_of(logbook.update(wrong)), Failure::not_found);
    EXPECT_EQ(failure_of(logbook.set_load_list_withdrawn(LoadListId("no such"), true)), Failure::not_found);
    EXPECT_EQ(take(logbook.load_lists()), std::vector{list});
}

} // namespace
} // namespace ullage
