// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/runs_source.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/run_sheet.h"

#include <ostream>

namespace ullage {

int export_sheet_command(const ExportSheetArguments& arguments, std::ostream& out, std::ostream& err) {
    std::vector<Message> notices;
    const Result<std::vector<RunRecord>> records = runs_from(arguments.logbook, notices);
    tell(err, notices);
    if (!records) return refuse(err, records.error());
    const Result<UnitRuns> chosen = chosen_runs(addresses_of(records.value()), arguments.unit, arguments.run);
    if (!chosen) return refuse(err, chosen.error());
    if (chosen.value().size() > 1)
        return refuse(err, {Failure::bad_input, say(phrase("commands", "units of several makers have this name and run")), "--unit",
                            say(phrase("commands", "rename one of them"))});
    const std::string sheet = write_run_sheet(*chosen.value().front());
    if (arguments.output.empty()) return print(sheet, out, err);
    const Result<void> written = write_whole_file(arguments.output, sheet, replacing_of(arguments.force, {arguments.logbook}));
    return written ? exit_good : refuse(err, written.error());
}

} // namespace ullage
