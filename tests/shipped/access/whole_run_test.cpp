// SPDX-License-Identifier: GPL-3.0-or-later
// A whole run by somebody who does not see the window: every step by what the accessibility tree tells and does.
#include "shipped/access/spoken_window.h"
#include "support/temp_folder.h"

#include <gtest/gtest.h>

namespace ullage::test {

TEST(ShippedAccess, a_whole_run_is_recorded_and_its_energy_read_through_the_accessibility_tree) {
    const TempFolder home;
    SpokenWindow window(home);
    window.press(ATSPI_ROLE_MENU_ITEM, "New…");
    window.write("File name:", (home / "spoken.ullage").string());
    window.press(ATSPI_ROLE_PUSH_BUTTON, "Save");
    window.press(ATSPI_ROLE_MENU_ITEM, "Add unit…");
    window.write("name", "Osk 1200");
    window.write("rated energy", "1200 Wh");
    window.press(ATSPI_ROLE_PUSH_BUTTON, "Add unit");
    window.await_gone(ATSPI_ROLE_DIALOG, "Add unit");
    window.press(ATSPI_ROLE_MENU_ITEM, "Add meter…");
    window.write("name", "Socket meter A");
    window.write("register step", "1 Wh");
    window.write("error limit", "1 %");
    window.press(ATSPI_ROLE_PUSH_BUTTON, "Add meter");
    window.await_gone(ATSPI_ROLE_DIALOG, "Add meter");
    window.press(ATSPI_ROLE_MENU_ITEM, "Start run…");
    window.write("load", "100 W");
    window.press(ATSPI_ROLE_PUSH_BUTTON, "Start run");
    window.await_gone(ATSPI_ROLE_DIALOG, "Start run");
    const struct {
        const char *time, *gauge, *register_wh, *recorded;
    } readings[] = {
        {"-3h", "100", "0", "Recorded 100 %, 0 Wh"}, {"-2h", "90", "100", "Recorded 90 %, 100 Wh"}, {"-1h", "80", "200", "Recorded 80 %, 200 Wh"}};
    for (const auto& reading : readings) {
        window.write("Time of the reading", reading.time);
        window.write("Gauge in percent", reading.gauge);
        window.write("Register in watt hours", reading.register_wh);
        window.press(ATSPI_ROLE_PUSH_BUTTON, "Record");
        EXPECT_EQ(window.awaited(reading.recorded), reading.recorded);
    }
    window.press(ATSPI_ROLE_MENU_ITEM, "Stopped by tester…");
    EXPECT_EQ(window.awaited("End run"), "End run…") << "the button of the page behind";
    window.press(ATSPI_ROLE_PUSH_BUTTON, "End run");
    window.await_gone(ATSPI_ROLE_DIALOG, "End run");
    EXPECT_EQ(window.awaited("stopped by tester"), "stopped by tester");
    // It went on after the last reading.
    EXPECT_EQ(window.awaited("delivered: "), "delivered: at least 198 Wh");
}

} // namespace ullage::test
