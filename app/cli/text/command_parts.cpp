// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_parts.h"

#include "cli/text/commands.h"
#include "formats/text/table_unicode.h"

#include <ostream>

namespace ullage {

int refuse(std::ostream& err, const Error& error) {
    err << "ullage: " << one_line(error.sentence()) << '\n';
    return exit_bad_input;
}

int print(const std::string& text, std::ostream& out, std::ostream& err, const std::string& but) {
    out << text << std::flush;
    if (out) return exit_good;
    return refuse(err,
                  {Failure::io, "the result could not be written", "standard output", "check where it goes to" + (but.empty() ? but : "; " + but)});
}

} // namespace ullage
