// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <iosfwd>
#include <span>
#include <string>

namespace ullage {

/// `ullage report LOGBOOK (--run UNIT/N | --compare [--every-drain] | --size LIST [choices of ullage size] | --pv SHEET) [--output FILE.pdf|.html]
/// [--paper a4|letter] [--locale NAME]`: writes the report of one run, of the comparison, of a sizing or of a PV check. LOGBOOK may also be a run
/// sheet or a folder of run sheets. Without --output a PDF is written into the present folder under a name of its own, which is said. Paper and
/// decimal sign are the system's where they are not given. `args` without the program's name and beginning with "report". Needs a QApplication, on
/// any platform plug-in. Returns 0; 1 for bad input or a file that cannot be written (one line on `err`); 2 for wrong usage.
[[nodiscard]] int run_report_command(std::span<const std::string> args, std::ostream& out, std::ostream& err);

} // namespace ullage
