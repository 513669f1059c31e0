// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <span>
#include <string>

class QApplication;

namespace ullage {

/// `ullage tour LOGBOOK [--into FOLDER]`: opens the window on a logbook, shows every page of it with each of its tabs, writes a line for each and
/// ends; with a folder, which must be new or empty, also a PNG of each. Records nothing and keeps nothing in the user's settings. `args` without the
/// program's name and beginning with "tour". Works on any platform plug-in. Returns 0; 1 for a logbook that cannot be opened or a picture that cannot
/// be written (one line on `err`); 2 for wrong usage.
[[nodiscard]] int run_tour_command(QApplication& application, std::span<const std::string> args, std::ostream& out, std::ostream& err);

} // namespace ullage
