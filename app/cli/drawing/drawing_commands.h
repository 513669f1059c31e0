// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/text/commands.h"

namespace ullage {

/// The commands that draw with Qt, or ask it what is here, for which a QApplication must live while they run: pictures, report, tour,
/// check-installation.
[[nodiscard]] const std::vector<Command>& drawing_commands();

// What reads the words of each; see Command::read.
[[nodiscard]] Command::Run read_pictures(CLI::App& command);
[[nodiscard]] Command::Run read_report(CLI::App& command);
[[nodiscard]] Command::Run read_tour(CLI::App& command);
[[nodiscard]] Command::Run read_check(CLI::App& command);

} // namespace ullage
