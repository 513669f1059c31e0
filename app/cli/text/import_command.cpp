// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/import_table.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/opened_logbook.h"
#include "foreign_tables/table_runs.h"
#include "formats/files/whole_file.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/run_sheet.h"
#include "store/logbook.h"

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace ullage {

namespace {

namespace fs = std::filesystem;

Result<Message> import_sheet(Logbook& logbook, const std::string& path, std::string bytes, std::ostream& out) {
    const Result<SheetImport> sheet = read_run_sheet(bytes, path);
    if (!sheet) return sheet.error();
    // The text may be as large as the run.
    bytes = {};
    for (const Message& notice : sheet.value().notices) out << line_of(say_joined({path, notice}, ", "));
    const RunRecord& record = sheet.value().record;
    const Result<std::optional<int>> known = logbook.number_of(record);
    if (!known) return known.error();
    if (known.value())
        return say(phrase("commands", "%1: already in the logbook as run %2 of %3, left out"), path, say_number(*known.value()), record.unit.name);
    const Result<ImportedRun> added = logbook.import_run(record);
    if (!added) {
        return within(added.error(), path);
    }
    return say_count(record.readings.size(), phrases("commands", "%1: run %2 of %3, %4 with %n readings", "%1: run %2 of %3, %4 with %n reading"),
                     path, say_number(added.value().number), record.unit.name, say_run_kind(record.run.kind));
}

/// All run sheets of a folder that names none, in order of name.
std::vector<std::string> sheets_of(const fs::path& folder) {
    std::vector<std::string> sheets;
    std::error_code ignored;
    for (const auto& entry : fs::directory_iterator(folder, ignored))
        if (entry.path().extension() == ".csv") sheets.push_back(entry.path().string());
    std::ranges::sort(sheets);
    return sheets;
}

Result<Message> import_folder(Logbook& logbook, const std::string& path, std::ostream& out) {
    const Result<FolderTally> read = import_logbook_folder(logbook, path);
    if (!read) return read.error();
    for (const Message& notice : read.value().notices) out << line_of(say(phrase("commands", "%1: %2"), path, notice));
    return say(phrase("commands", "%1: %2"), path, say_folder_tally(read.value()));
}

Result<Message> no_preview_of(const std::string& folder) {
    return Error{Failure::bad_input, say(phrase("commands", "a whole logbook as a folder has no preview; nothing was imported")), folder,
                 say(phrase("commands", "import it without --preview, into a new logbook if you only want to look"))};
}

} // namespace

int import_command(const ImportArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    std::vector<Message> notices;
    Result<Logbook> logbook = opened_or_made(arguments.logbook, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    tell(err, notices);
    int code = exit_good;
    Message but;
    const auto tell_outcome = [&](const Result<Message>& done) {
        if (!done) {
            code = refuse(err, done.error());
            return;
        }
        out << line_of(done.value()) << std::flush; // the next may take long
        if (!arguments.table.preview) but = say(phrase("commands", "what could be imported is in the logbook: %1"), arguments.logbook);
    };
    std::vector<std::string> sheets;
    for (const std::string& path : arguments.sheets) {
        std::error_code ignored;
        if (!fs::is_directory(path, ignored)) {
            sheets.push_back(path);
        } else if (is_logbook_folder(path)) {
            tell_outcome(arguments.table.preview ? no_preview_of(path) : import_folder(logbook.value(), path, out));
        } else if (const auto found = sheets_of(path); !found.empty()) {
            sheets.insert(sheets.end(), found.begin(), found.end());
        } else {
            tell_outcome(Error{Failure::not_found, say(phrase("commands", "the folder holds no run sheet")), path,
                               say(phrase("commands", "name a folder with .csv run sheets"))});
        }
    }
    for (const std::string& sheet : sheets) {
        Result<std::string> bytes = read_whole_file(sheet);
        const bool foreign = bytes && (may_be_foreign_table(bytes.value()) || !(arguments.table == TableImportArguments()));
        tell_outcome(!bytes    ? Result<Message>(bytes.error())
                     : foreign ? import_table(logbook.value(), sheet, bytes.value(), arguments.table, clock, out)
                               : import_sheet(logbook.value(), sheet, std::move(bytes).value(), out));
    }
    const int printed = print({}, out, err, but);
    return code == exit_good ? printed : code;
}

} // namespace ullage
