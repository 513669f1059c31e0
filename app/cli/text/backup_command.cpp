// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "formats/text/table_unicode.h"
#include "store/backup.h"

#include <fmt/format.h>

#include <ostream>

namespace ullage {

namespace {

std::string megabytes(std::int64_t bytes) {
    constexpr double megabyte = 1e6;
    return fixed_text(static_cast<double>(bytes) / megabyte, 1) + " MB";
}

} // namespace

int backup_command(const BackupArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    const BackupPlace place{arguments.into, arguments.days};
    if (arguments.list) {
        std::string lines;
        for (const BackupCopy& copy : backup_copies(arguments.logbook, place))
            lines += one_line(fmt::format("{}  {}  {}", copy.day, megabytes(copy.size_bytes), copy.path.string())) + "\n";
        return print(lines.empty() ? one_line(arguments.logbook + ": there is no copy") + "\n" : lines, out, err);
    }
    const Result<BackupOutcome> made = back_up(arguments.logbook, place, clock);
    if (!made) return refuse(err, made.error());
    if (!made.value().copy) return print(one_line(arguments.logbook + ": it holds nothing yet, so no copy was made") + "\n", out, err);
    std::string line = fmt::format("{}: copied to {}", arguments.logbook, made.value().copy->string());
    if (made.value().removed > 0) line += ", " + count_text(static_cast<long>(made.value().removed), "older copy", "older copies") + " removed";
    return print(one_line(line) + "\n", out, err, "the copy is complete");
}

} // namespace ullage
