// SPDX-License-Identifier: GPL-3.0-or-later
#include "shipped/access/spoken_window.h"

#include <gtest/gtest.h>

#include <chrono>
#include <cstdlib>
#include <filesystem>
#include <functional>
#include <optional>
#include <thread>

namespace ullage::test {

namespace {

constexpr auto patience = std::chrono::minutes(1);
constexpr auto between_looks = std::chrono::milliseconds(50);
constexpr int deepest = 40;

using Accessible = std::shared_ptr<AtspiAccessible>;

Accessible owned(AtspiAccessible* accessible) {
    return {accessible, [](AtspiAccessible* each) {
                if (each) g_object_unref(each);
            }};
}

std::string taken(char* text) {
    const std::string words = text ? text : "";
    g_free(text);
    return words;
}

std::string name_of(const Accessible& accessible) { return taken(atspi_accessible_get_name(accessible.get(), nullptr)); }

bool in_state(const Accessible& accessible, AtspiStateType state) {
    AtspiStateSet* states = atspi_accessible_get_state_set(accessible.get());
    if (!states) return false;
    const bool is = atspi_state_set_contains(states, state) != 0;
    g_object_unref(states);
    return is;
}

/// Entries of menus are in no sight before their menu is opened; they can be chosen all the same.
bool may_be_met(AtspiRole role, const Accessible& accessible) {
    const bool of_menu = role == ATSPI_ROLE_MENU_ITEM || role == ATSPI_ROLE_MENU || role == ATSPI_ROLE_POPUP_MENU || role == ATSPI_ROLE_MENU_BAR;
    return of_menu || in_state(accessible, ATSPI_STATE_SHOWING);
}

/// Goes through the tree below `from` until `look` says that it has seen enough. What is not in sight is passed by, with all in it.
bool walk(const Accessible& from, int depth, const std::function<bool(const Accessible&, AtspiRole, const std::string&)>& look) {
    if (!from || depth > deepest) return false;
    const AtspiRole role = atspi_accessible_get_role(from.get(), nullptr);
    if (depth > 1 && !may_be_met(role, from)) return false;
    if (look(from, role, name_of(from))) return true;
    // A table tells its cells; nothing that is waited for stands there.
    if (role == ATSPI_ROLE_TABLE) return false;
    const int count = atspi_accessible_get_child_count(from.get(), nullptr);
    for (int n = 0; n < count; ++n)
        if (walk(owned(atspi_accessible_get_child_at_index(from.get(), n, nullptr)), depth + 1, look)) return true;
    return false;
}

Accessible desktop() { return owned(atspi_get_desktop(0)); }

template <class Condition>
bool wait_until(const Condition& holds) {
    const auto until = std::chrono::steady_clock::now() + patience;
    while (!holds()) {
        if (std::chrono::steady_clock::now() > until) return false;
        std::this_thread::sleep_for(between_looks);
    }
    return true;
}

} // namespace

struct SpokenWindow::Found {
    Accessible at;
};

SpokenWindow::SpokenWindow(const TempFolder& home) {
    const std::string runtime = (home / "runtime").string();
    std::filesystem::create_directories(runtime);
    std::filesystem::permissions(runtime, std::filesystem::perms::owner_all);
    for (const char* name : {"AT_SPI_BUS_ADDRESS", "WAYLAND_DISPLAY", "LANGUAGE", "NO_AT_BRIDGE"}) ::unsetenv(name);
    for (const auto& [name, value] :
         {std::pair("XDG_RUNTIME_DIR", runtime), std::pair("HOME", home.path().string()), std::pair("LC_ALL", std::string("C.UTF-8")),
          std::pair("XDG_STATE_HOME", (home / "state").string()), std::pair("TZ", std::string("UTC"))})
        ::setenv(name, value.c_str(), 1);
    display_ = std::make_unique<ChildProcess>(
        std::vector<std::string>{"/usr/bin/Xvfb", "-displayfd", "1", "-screen", "0", "1280x1024x24", "-nolisten", "tcp"});
    ::setenv("DISPLAY", (":" + display_->line().value_or("none")).c_str(), 1);
    bus_ = std::make_unique<ChildProcess>(std::vector<std::string>{"/usr/bin/dbus-daemon", "--session", "--nofork", "--print-address"});
    ::setenv("DBUS_SESSION_BUS_ADDRESS", bus_->line().value_or("none").c_str(), 1);
    atspi_init();
    atspi_set_timeout(1500, 1500);
    program_ = std::make_unique<Program>(home, std::vector<std::string>{},
                                         std::map<std::string, std::string>{{"QT_QPA_PLATFORM", "xcb"}, {"QT_LINUX_ACCESSIBILITY_ALWAYS_ON", "1"}});
    EXPECT_TRUE(wait_until([] { return atspi_accessible_get_child_count(desktop().get(), nullptr) > 0; })) << "the program is not in the tree";
    atspi_accessible_set_cache_mask(desktop().get(), ATSPI_CACHE_NONE); // the tree as it is, not as events told
}

SpokenWindow::~SpokenWindow() {
    program_.reset();
    bus_.reset();
    display_.reset();
}

SpokenWindow::Found SpokenWindow::find(AtspiRole role, const std::string& name) {
    Found found;
    const bool there = wait_until([&] {
        found.at = nullptr;
        // The last of them: a form stands behind the page that it lies over.
        walk(desktop(), 0, [&](const Accessible& each, AtspiRole its_role, const std::string& its_name) {
            if (its_role == role && its_name == name && in_state(each, ATSPI_STATE_ENABLED)) found.at = each;
            return false;
        });
        return found.at != nullptr;
    });
    EXPECT_TRUE(there) << "nothing called " << name << " can be used among\n" << told();
    return found;
}

void SpokenWindow::press(AtspiRole role, const std::string& name) {
    const Found found = find(role, name);
    if (!found.at) return;
    AtspiAction* action = atspi_accessible_get_action_iface(found.at.get());
    ASSERT_NE(action, nullptr) << name;
    // A form that keeps the program busy answers late; what it does is looked at, not the answer.
    atspi_action_do_action(action, 0, nullptr);
    g_object_unref(action);
}

void SpokenWindow::write(const std::string& name, const std::string& text) {
    const Found found = find(ATSPI_ROLE_TEXT, name);
    if (!found.at) return;
    AtspiEditableText* field = atspi_accessible_get_editable_text_iface(found.at.get());
    ASSERT_NE(field, nullptr) << name;
    EXPECT_TRUE(atspi_editable_text_set_text_contents(field, text.c_str(), nullptr)) << name;
    g_object_unref(field);
}

std::string SpokenWindow::awaited(const std::string& part) {
    std::string whole;
    wait_until([&] {
        return walk(desktop(), 0, [&](const Accessible&, AtspiRole, const std::string& name) {
            if (name.find(part) == std::string::npos) return false;
            whole = name;
            return true;
        });
    });
    EXPECT_FALSE(whole.empty()) << part << " is not told among\n" << told();
    return whole;
}

void SpokenWindow::await_gone(AtspiRole role, const std::string& name) {
    EXPECT_TRUE(wait_until([&] {
        return !walk(desktop(), 0,
                     [&](const Accessible&, AtspiRole its_role, const std::string& its_name) { return its_role == role && its_name == name; });
    })) << name
        << " is still there";
}

std::string SpokenWindow::told() {
    std::string all;
    walk(desktop(), 0, [&](const Accessible& each, AtspiRole, const std::string& name) {
        if (!name.empty()) all += taken(atspi_accessible_get_role_name(each.get(), nullptr)) + ": " + name + '\n';
        return false;
    });
    return all;
}

} // namespace ullage::test
