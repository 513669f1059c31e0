// SPDX-License-Identifier: GPL-3.0-or-later
// What every place keeps to those who see nothing of it, or have no pointer. Each looks at a place and complains of what is wrong there.
#pragma once

#include "places.h"

namespace ullage::test {

// names.cpp: what a screen reader says
void look_at_names_and_roles(Place& place, Complaints& complaints);
void look_at_scrolling_areas(Place& place, Complaints& complaints);
void look_for_one_name_twice(Place& place, Complaints& complaints);
void look_at_labels_of_fields(Place& place, Complaints& complaints);
void look_at_tables(Place& place, Complaints& complaints);

// alternatives.cpp: what charts and vessels say to who does not see them
void look_at_charts(Place& place, Complaints& complaints);

// keyboard.cpp
void look_at_what_tab_passes_by(Place& place, Complaints& complaints);
void look_at_what_tab_comes_to(Place& place, Complaints& complaints);
void look_at_order_of_tab(Place& place, Complaints& complaints);

} // namespace ullage::test
