// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cli/text/commands.h"

#include <string>
#include <vector>

namespace ullage {

/// The manual page of the program, section 1, in the macros of man(7): what it does, each command with its arguments and options as its help states
/// them, files, environment and exit codes.
[[nodiscard]] std::string manual_page(const std::vector<Command>& commands);

/// Completion of commands, options and the words that an option takes, for bash; file names elsewhere.
[[nodiscard]] std::string bash_completion(const std::vector<Command>& commands);

} // namespace ullage
