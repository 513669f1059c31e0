// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "shipped/program.h"
#include "support/child_process.h"

#include <atspi/atspi.h>

#include <memory>
#include <string>
#include <vector>

namespace ullage::test {

/// A display without a screen, a session bus with the registry of assistive technology on it, and the program's window there: all of this test
/// alone. The window is met through the accessibility tree (AT-SPI) and nothing else. Waits go on until what is waited for is there; where it does
/// not come they say so and end after a minute.
class SpokenWindow {
public:
    /// Starts all of it, with the program opened on nothing.
    explicit SpokenWindow(const TempFolder& home);
    ~SpokenWindow();
    SpokenWindow(const SpokenWindow&) = delete;
    SpokenWindow& operator=(const SpokenWindow&) = delete;

    /// Does the only action of a control: presses a button, chooses an entry of a menu. Says which control is missing where it is.
    void press(AtspiRole role, const std::string& name);
    /// Writes into the field of that name in place of what is there.
    void write(const std::string& name, const std::string& text);
    /// Waits for something whose name contains `part`; its name, or nothing where it does not come.
    [[nodiscard]] std::string awaited(const std::string& part);
    /// Waits until nothing in sight has the name.
    void await_gone(AtspiRole role, const std::string& name);
    /// Every name in sight with its role, line by line.
    [[nodiscard]] std::string told();

private:
    struct Found;
    [[nodiscard]] Found find(AtspiRole role, const std::string& name);

    std::unique_ptr<ChildProcess> display_, bus_;
    std::unique_ptr<Program> program_;
};

} // namespace ullage::test
