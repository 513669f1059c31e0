// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "store/backup.h"

#include <ostream>

namespace ullage {

namespace {

Message megabytes(std::int64_t bytes) {
    constexpr double megabyte = 1e6;
    return say_measure(static_cast<double>(bytes) / megabyte, 1, "MB");
}

} // namespace

int backup_command(const BackupArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    const BackupPlace place{arguments.into, arguments.days};
    if (arguments.list) {
        std::string lines;
        for (const BackupCopy& copy : backup_copies(arguments.logbook, place))
            lines += line_of(say_joined({copy.day, megabytes(copy.size_bytes), copy.path.string()}, "  "));
        return print(lines.empty() ? line_of(say(phrase("commands", "%1: there is no copy"), arguments.logbook)) : lines, out, err);
    }
    const Result<BackupOutcome> made = back_up(arguments.logbook, place, clock);
    if (!made) return refuse(err, made.error());
    if (!made.value().copy)
        return print(line_of(say(phrase("commands", "%1: it holds nothing yet, so no copy was made"), arguments.logbook)), out, err);
    Message line = say(phrase("commands", "%1: copied to %2"), arguments.logbook, made.value().copy->string());
    if (made.value().removed > 0)
        line = say_count(made.value().removed, phrases("commands", "%1, %n older copies removed", "%1, %n older copy removed"), line);
    return print(line_of(line), out, err, say(phrase("commands", "the copy is complete: %1"), made.value().copy->string()));
}

} // namespace ullage
