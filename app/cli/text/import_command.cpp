// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/clock.h"
#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/import_table.h"
#include "cli/text/load_lists_source.h"
#include "foreign_tables/table_runs.h"
#include "formats/files/whole_file.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/run_sheet.h"
#include "formats/text/table_unicode.h"
#include "store/logbook.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <ostream>

namespace ullage {

namespace {

namespace fs = std::filesystem;

Result<std::string> import_sheet(Logbook& logbook, const std::string& path, std::string bytes, std::ostream& out) {
    const Result<SheetImport> sheet = read_run_sheet(bytes, path);
    if (!sheet) return sheet.error();
    // The text may be as large as the run.
    bytes = {};
    for (const Message& notice : sheet.value().notices) out << one_line(path + ", " + notice.text()) << '\n';
    const RunRecord& record = sheet.value().record;
    const Result<std::optional<int>> known = logbook.number_of(record);
    if (!known) return known.error();
    if (known.value()) return fmt::format("{}: already in the logbook as run {} of {}, left out", path, *known.value(), record.unit.name);
    const Result<ImportedRun> added = logbook.import_run(record);
    if (!added) {
        return within(added.error(), path);
    }
    return fmt::format("{}: run {} of {}, {} with {}", path, added.value().number, record.unit.name, run_kind_text(record.run.kind),
                       count_text(static_cast<long>(record.readings.size()), "reading", "readings"));
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

Result<std::string> import_folder(Logbook& logbook, const std::string& path, std::ostream& out) {
    const Result<FolderTally> read = import_logbook_folder(logbook, path);
    if (!read) return read.error();
    for (const Message& notice : read.value().notices) out << one_line(path + ": " + notice.text()) << '\n';
    return path + ": " + say_folder_tally(read.value()).text();
}

} // namespace

int import_command(const ImportArguments& arguments, std::ostream& out, std::ostream& err) {
    const SystemClock clock;
    Result<Logbook> logbook = opened_or_made(arguments.logbook, clock);
    if (!logbook) return refuse(err, logbook.error());
    int code = exit_good;
    std::vector<std::string> sheets;
    for (const std::string& path : arguments.sheets) {
        std::error_code ignored;
        if (!fs::is_directory(path, ignored)) {
            sheets.push_back(path);
        } else if (is_logbook_folder(path)) {
            const Result<std::string> done = import_folder(logbook.value(), path, out);
            if (done) out << one_line(done.value()) << '\n';
            else code = refuse(err, done.error());
        } else if (const auto found = sheets_of(path); !found.empty()) {
            sheets.insert(sheets.end(), found.begin(), found.end());
        } else {
            code = refuse(err, {Failure::not_found, "the folder holds no run sheet", path, "name a folder with .csv run sheets"});
        }
    }
    for (const std::string& sheet : sheets) {
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
