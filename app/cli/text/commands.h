// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"

#include <functional>
#include <iosfwd>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace CLI {
class App;
}

namespace ullage {

/// Exit codes of the commands.
inline constexpr int exit_good = 0, exit_bad_input = 1, exit_usage = 2;

/// One command of the program: a row of the table that finds it, reads its words and makes the help.
struct Command {
    /// Does it with the words that were read; an exit code.
    using Run = std::function<int(std::ostream& out, std::ostream& err)>;

    std::string_view name;                      ///< "compare"
    Phrase summary;                             ///< for the help
    std::function<Run(CLI::App& command)> read; ///< adds positionals and options, and gives what runs the command once they are read
};

/// Those that need no Qt: import, import-trace, analyse, compare, export-readings, export-sheet, pv-check, import-loads, loads, size.
[[nodiscard]] const std::vector<Command>& text_commands();

/// True when the first argument asks for one of these commands, or for help or the version of the program.
[[nodiscard]] bool names_command(std::string_view first_argument, const std::vector<Command>& commands);

/// Runs the command that `args`, without the program's name, ask for. Results go to `out`; problems to `err`, one line each, beginning "ullage: ".
/// Returns 0; 1 for bad input or a result that cannot be written; 2 for wrong usage. Never throws for what a person can cause.
[[nodiscard]] int run_command(std::span<const std::string> args, const std::vector<Command>& commands, std::ostream& out, std::ostream& err);

} // namespace ullage
