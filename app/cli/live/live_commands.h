// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/text/commands.h"

namespace ullage {

/// The command that reads meters, for which a QCoreApplication must live while it runs: watch.
[[nodiscard]] const std::vector<Command>& live_commands();

} // namespace ullage
