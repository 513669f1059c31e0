// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/files/replacing.h"

#include <CLI/CLI.hpp>

#include <string>
#include <vector>

namespace ullage {

// What the options of all commands have in common.

/// Beyond this, either way, no number of an option has a meaning.
inline constexpr double largest_option = 1e9;

/// Refuses for every option that takes a number, also of subcommands, what is no ordinary one: nan, infinities, and those beyond largest_option.
/// Called once all options are there.
void check_numbers(CLI::App& app);

/// Number checks for single options that say in words what is wrong.
[[nodiscard]] CLI::Validator above_zero();
[[nodiscard]] CLI::Validator zero_or_more();
[[nodiscard]] CLI::Validator between(double lowest, double highest);

/// "--force".
void add_force_option(CLI::App& command, bool& force);

/// What a command may replace that was called with or without --force and reads `inputs`; empty ones, and names of things that are no files, do
/// not matter.
[[nodiscard]] Replacing replacing_of(bool force, std::vector<std::string> inputs);

} // namespace ullage
