// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"
#include "sizing/sizing.h"

#include <string>
#include <vector>

namespace CLI {
class App;
}

namespace ullage {

/// Sizes the units of a logbook, run sheet or folder of run sheets for a load list: the file of one (.csv), or the name of one in the logbook. A
/// logbook's units without runs stand with the expectation. `unit`: only the one of this name; empty for all. Errors: those of runs_from,
/// load_list_of_file, load_list_named and check(choices); no such unit. `notices` as runs_from.
[[nodiscard]] Result<Sizing> sizing_from(const std::string& source, const std::string& load_list, const std::string& unit,
                                         const SizingChoices& choices, std::vector<Message>& notices);

/// The options of the choices; `choices` must outlive the parsing.
void add_sizing_options(CLI::App& command, SizingChoices& choices);

} // namespace ullage
