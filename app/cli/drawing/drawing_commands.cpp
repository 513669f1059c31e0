// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/drawing/drawing_commands.h"

namespace ullage {

const std::vector<Command>& drawing_commands() {
    static const std::vector<Command> commands{
        {"pictures", phrase("commands", "Write the charts of every run and of the comparison as PNG and SVG"), read_pictures},
        {"report", phrase("commands", "Write the report of one run, the comparison, a sizing or a PV check as PDF or HTML"), read_report},
        {"tour", phrase("commands", "Open the window on a logbook, show every page and tab of it in turn, and end; records nothing"), read_tour},
        {"check-installation", phrase("commands", "Say what the program finds here: versions, fonts, writable places, desktop services"),
         read_check}};
    return commands;
}

} // namespace ullage
