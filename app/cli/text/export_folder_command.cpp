// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_options.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/opened_logbook.h"
#include "formats/folder/logbook_folder.h"
#include "store/logbook.h"

#include <ostream>

namespace ullage {

int export_folder_command(const ExportFolderArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    std::vector<Message> notices;
    const Result<Logbook> logbook = opened_logbook(arguments.logbook, OpenMode::read_only, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    tell(err, notices);
    const Result<FolderTally> written = write_logbook_folder(logbook.value(), arguments.into);
    if (!written) return refuse(err, written.error());
    return print(line_of(say(phrase("commands", "%1: %2"), arguments.into, say_folder_tally(written.value()))), out, err,
                 say(phrase("commands", "the folder is complete: %1"), arguments.into));
}

} // namespace ullage
