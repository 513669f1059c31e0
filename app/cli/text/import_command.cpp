// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/import_table.h"
#include "cli/text/load_lists_source.h"
#include "foreign_tables/table_runs.h"
#include "formats/files/whole_file.h"
#include "formats/sheets/run_sheet.h"
#include "formats/text/table_unicode.h"
#include "store/logbook.h"

#include <fmt/format.h>

#include <algorithm>
#include <ostream>

namespace ullage {

namespace {

Result<std::string> import_sheet(Logbook& logbook, const std::string& path, std::string bytes, std::ostream& out) {
    const Result<SheetImport> sheet = read_run_sheet(bytes, path);
    if (!sheet) return sheet.error();
    // The text may be as large as the run.
    bytes = {};
    for (const std::string& notice : sheet.value().notices) out << one_line(path + ", " + notice) << '\n';
    const RunRecord& record = sheet.value().record;
    const Result<std::optional<int>> known = logbook.number_of(record);
    if (!known) return known.error();
    if (known.value()) return fmt::format("{}: already in the logbook as run {} of {}, left out", path, *known.value(), record.unit.name);
    const Result<ImportedRun> added = logbook.import_run(record);
    if (!added) {
        Error error = added.error();
        error.where = error.where.empty() ? path : path + ", " + error.where;
        return error;
    }
    return fmt::format("{}: run {} of {}, {} with {}", path, added.value().number, record.unit.name, run_kind_text(record.run.kind),
                       count_text(static_cast<long>(record.readings.size()), "reading", "readings"));
}

} // namespace

int import_command(const ImportArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    Result<Logbook> logbook = opened_or_made(arguments.logbook, clock);
    if (!logbook) return refuse(err, logbook.error());
    int code = exit_good;
    for (const std::string& sheet : arguments.sheets) {
        Result<std::string> bytes = read_whole_file(sheet);
        const bool foreign = bytes && (may_be_foreign_table(bytes.value()) || !(arguments.table == TableImportArguments()));
        const Result<std::string> done = !bytes    ? Result<std::string>(bytes.error())
                                         : foreign ? import_table(logbook.value(), sheet, bytes.value(), arguments.table, clock, out)
                                                   : import_sheet(logbook.value(), sheet, std::move(bytes).value(), out);
        if (done) out << one_line(done.value()) << '\n';
        else code = refuse(err, done.error());
    }
    const int printed = print({}, out, err, "what could be imported is in the logbook");
    return code == exit_good ? printed : code;
}

} // namespace ullage
