// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <span>
#include <string>
#include <string_view>

namespace ullage {

/// Exit codes of the commands.
inline constexpr int exit_good = 0, exit_bad_input = 1, exit_usage = 2;

/// True when the first argument asks for a command without a display: import, import-trace, analyse, compare,
/// export-readings, export-sheet, pv-check, import-loads, loads, --version, --help or -h.
[[nodiscard]] bool is_text_command(std::string_view first_argument);

/// Runs a command without a display. `args` without the program's name. Results go to `out`; problems to `err`, one line each,
/// beginning "ullage: ". Returns 0; 1 for bad input or a result that cannot be written; 2 for wrong usage. Never throws for what a
/// person can cause.
[[nodiscard]] int run_text_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);

} // namespace ullage
