// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/opened_logbook.h"
#include "joining/join_table.h"
#include "store/logbook.h"

#include <ostream>

namespace ullage {

int join_command(const JoinArguments& arguments, std::ostream& out, std::ostream& err) {
    const Result<TableFormat> format = asked_format(arguments.output);
    if (!format) {
        (void)refuse(err, format.error());
        return exit_usage;
    }
    const SystemClock clock;
    if (const auto same = same_file_error(arguments.logbook, arguments.other)) return refuse(err, *same);
    std::vector<Message> notices;
    Result<Logbook> logbook = opened_logbook(arguments.logbook, arguments.dry_run ? OpenMode::read_only : OpenMode::record, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    const Result<Logbook> other = opened_logbook(arguments.other, OpenMode::read_only, clock, notices);
    if (!other) return refuse(err, other.error());
    tell(err, notices);
    // Whoever is refused the file would believe that nothing was joined.
    const std::vector<std::string> inputs{arguments.logbook, arguments.other};
    if (const auto free = check_output(format.value(), arguments.output, inputs); !free) return refuse(err, free.error());
    const Result<JoinPlan> plan = plan_join(logbook.value(), other.value());
    if (!plan) return refuse(err, plan.error());
    const auto keys = asked_keys(arguments.take_other, plan.value());
    if (!keys) return refuse(err, keys.error());
    Message answer = plan.value().empty() ? say(phrase("commands", "The logbook has all that the other has already"))
                                          : say(phrase("commands", "This is what joining would do; nothing was changed"));
    Message but;
    if (!arguments.dry_run && !plan.value().empty()) {
        const Result<Joined> joined = join(logbook.value(), other.value(), keys.value());
        if (!joined) return refuse(err, joined.error());
        answer = say(phrase("commands", "Joined: %1"), say_outcome(joined.value()));
        if (joined.value().changed()) but = say(phrase("commands", "what came in is in the logbook: %1"), arguments.logbook);
    }
    if (plan.value().empty() && format.value() == TableFormat::text && arguments.output.path.empty())
        return print(line_of(say(phrase("commands", "%1."), answer)), out, err);
    return put_table(join_table(plan.value(), keys.value(), answer), format.value(), arguments.output, inputs, out, err, but);
}

} // namespace ullage
