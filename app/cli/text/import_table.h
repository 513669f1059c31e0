// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "store/logbook.h"

#include <iosfwd>
#include <string>
#include <string_view>

namespace ullage {

/// Brings the runs of a foreign table into a logbook, all or none: says to `out` how the table is understood and which rows are not taken. Errors:
/// what is open, with the options that answer it; what hinders the import. The result says what went in.
[[nodiscard]] Result<Message> import_table(Logbook& logbook, const std::string& path, std::string_view bytes, const TableImportArguments& arguments,
                                           const Clock& clock, std::ostream& out);

} // namespace ullage
