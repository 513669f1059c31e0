// SPDX-License-Identifier: GPL-3.0-or-later
// Every page, form and dialog, opened once and looked at for all that it has to keep, as opening them takes far longer than looking.
#include "looks.h"

namespace ullage::test {

TEST_F(AccessTest, every_place_is_told_and_can_be_used_without_seeing_it_or_pointing_at_it) {
    struct Kept {
        const char* promise;
        void (*look)(Place&, Complaints&);
        int at_least;
        Complaints complaints{};
    };
    Kept all[] = {
        {"every control has a name and a role that tells what it does", look_at_names_and_roles, 1000},
        {"every area that scrolls is called as what it holds", look_at_scrolling_areas, 40},
        {"no two controls of a page or form are called alike", look_for_one_name_twice, 1000},
        {"a label with a field names that field", look_at_labels_of_fields, 60},
        {"every table tells its rows, columns and heads", look_at_tables, 20},
        {"every chart tells what it shows and its key figures", look_at_charts, 20},
        {"what Tab passes by has a key of its own", look_at_what_tab_passes_by, 1},
        // These press Tab.
        {"Tab comes to every control", look_at_what_tab_comes_to, 500},
        {"Tab goes on as one reads", look_at_order_of_tab, 500},
    };
    everywhere([&](Place& place) {
        for (Kept& each : all) each.look(place, each.complaints);
    });
    for (const Kept& each : all) {
        SCOPED_TRACE(each.promise);
        each.complaints.expect_none(each.at_least);
    }
}

} // namespace ullage::test
