// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <span>
#include <string>

namespace ullage {

/// `ullage pictures LOGBOOK --into FOLDER [--dark]`: writes the charts of every run and of the comparison as PNG and SVG into a
/// folder (made when missing). LOGBOOK may also be a run sheet or a folder of run sheets. `args` without the program's name and
/// beginning with "pictures". Needs a QApplication, on any platform plug-in. Returns 0; 1 for bad input or a file that cannot
/// be written (one line on `err`); 2 for wrong usage.
[[nodiscard]] int run_pictures_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);

} // namespace ullage
