// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/result.h"

#include <filesystem>

namespace ullage::test {

/// Makes a logbook of simulated honest drains at `path`, through the doors that the program itself uses: `units` units of `runs_each` drains from
/// full to cut-off, each at a load of its own between 3 and 60 % of the rated output, some `readings_each` readings each, three meters. The same
/// numbers each time. Errors: those of Logbook.
[[nodiscard]] Result<void> make_large_logbook(const std::filesystem::path& path, int units, int runs_each, int readings_each = 30);

} // namespace ullage::test
