// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/runs_source.h"

#include "cli/text/command_parts.h"
#include "cli/text/load_lists_source.h"
#include "cli/text/opened_logbook.h"
#include "comparison/joined_records.h"
#include "formats/files/whole_file.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/run_sheet.h"
#include "measure/method_settings.h"
#include "trace/run_load.h"

#include <sys/stat.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <set>
#include <utility>

namespace ullage {

namespace {

namespace fs = std::filesystem;

Result<std::vector<std::string>> sheets_in(const std::string& folder) {
    std::vector<std::string> sheets;
    std::error_code trouble;
    const bool of_logbook = is_logbook_folder(folder);
    for (fs::directory_iterator entry(folder, trouble), end; !trouble && entry != end; entry.increment(trouble))
        if (entry->path().extension() == ".csv" && !(of_logbook && entry->path().filename() == folder_contents_name))
            sheets.push_back(entry->path().string());
    if (trouble)
        return Error{Failure::io, say(phrase("commands", "the folder cannot be read: %1"), trouble.message()), folder,
                     say(phrase("commands", "check its permissions"))};
    if (sheets.empty())
        return Error{Failure::not_found, say(phrase("commands", "the folder holds no run sheet")), folder,
                     say(phrase("commands", "name a logbook or a folder with .csv run sheets"))};
    std::ranges::sort(sheets);
    return sheets;
}

Result<ImportedRun> import_sheet(Logbook& logbook, const std::string& sheet, std::vector<Message>& notices) {
    const Result<std::string> text = read_whole_file(sheet);
    if (!text) return text.error();
    const Result<SheetImport> import = read_run_sheet(text.value(), sheet);
    if (!import) return import.error();
    for (const Message& notice : import.value().notices) notices.push_back(say_joined({sheet, notice}, ", "));
    Result<ImportedRun> added = logbook.import_run(import.value().record);
    if (added) return added;
    return within(added.error(), sheet);
}

/// The sheets in a logbook in memory.
Result<Logbook> logbook_of_sheets(const std::vector<std::string>& sheets, const Clock& clock, std::vector<Message>& notices) {
    Result<Logbook> logbook = Logbook::in_memory(clock);
    if (!logbook) return logbook;
    for (const std::string& sheet : sheets)
        if (const Result<ImportedRun> added = import_sheet(logbook.value(), sheet, notices); !added) return added.error();
    return logbook;
}

/// All of a folder that a logbook was written to, in a logbook in memory.
Result<Logbook> logbook_of_folder(const std::string& folder, const Clock& clock, std::vector<Message>& notices) {
    Result<Logbook> logbook = Logbook::in_memory(clock);
    if (!logbook) return logbook;
    const Result<FolderTally> read = import_logbook_folder(logbook.value(), folder);
    if (!read) return read.error();
    for (const Message& notice : read.value().notices) notices.push_back(say(phrase("commands", "%1: %2"), folder, notice));
    return logbook;
}

/// "`a`, `b` and 3 more".
Message listed(const std::vector<std::string>& names) {
    constexpr std::size_t most = 8;
    if (names.size() <= most) return say_names(names);
    return say(phrase("commands", "%1 and %2 more"), say_names({names.begin(), names.begin() + most}), say_number(names.size() - most));
}

/// Each unit of the records once, as its maker and name may both be shared with others.
std::vector<std::string> unit_names(const UnitRuns& runs) {
    std::vector<std::string> names;
    std::set<UnitId> uuids;
    for (const RunRecord* record : runs)
        if (uuids.insert(record->unit.uuid).second) names.push_back(record->unit.name);
    return names;
}

bool is_sheets(const std::string& path) {
    std::error_code ignored;
    return fs::is_directory(path, ignored) || fs::path(path).extension() == ".csv";
}

/// Name of the file or folder, without what a folder's path may end in.
std::string file_name(const std::string& path) {
    const fs::path whole = fs::path(path).lexically_normal();
    const fs::path name = whole.has_filename() ? whole.filename() : whole.parent_path().filename();
    return name.empty() ? path : name.string();
}

/// How the rows of these paths are told apart from each other: the name of the file, or the path where two have one name.
std::vector<std::string> names_of(const std::vector<std::string>& paths) {
    std::map<std::string, int> how_often;
    for (const std::string& path : paths) ++how_often[file_name(path)];
    std::vector<std::string> names;
    for (const std::string& path : paths) {
        const std::string name = file_name(path);
        names.push_back(how_often[name] > 1 ? path : name);
    }
    return names;
}

struct NamedSheet {
    std::string path, source;
};

/// Adds the run sheets that a path names, each file once.
Result<void> add_sheets(const std::string& path, const std::string& source, std::set<std::pair<dev_t, ino_t>>& known,
                        std::vector<NamedSheet>& sheets) {
    std::vector<std::string> found{path};
    std::error_code ignored;
    if (fs::is_directory(path, ignored)) {
        Result<std::vector<std::string>> inside = sheets_in(path);
        if (!inside) return inside.error();
        found = std::move(inside).value();
    }
    for (const std::string& sheet : found) {
        struct stat file {};
        // One that cannot be asked is named by reading it.
        if (::stat(sheet.c_str(), &file) != 0 || known.emplace(file.st_dev, file.st_ino).second) sheets.push_back({sheet, source});
    }
    return {};
}

/// Adds the runs of the sheets, a source for each name. Their units and meters are those of the logbooks in `sources` where an import would take
/// them for the same.
Result<void> add_runs_of(const std::vector<NamedSheet>& sheets, std::vector<RecordSource>& sources, std::vector<Message>& notices) {
    if (sheets.empty()) return {};
    const SystemClock clock;
    Result<Logbook> memory = Logbook::in_memory(clock);
    if (!memory) return memory.error();
    std::set<UnitId> units;
    std::set<MeterId> meters;
    for (const RecordSource& logbook : sources)
        for (const RunRecord& record : logbook.records) {
            if (units.insert(record.unit.uuid).second)
                if (const auto added = memory.value().add(record.unit); !added) return added.error();
            for (const auto* meter : {&record.meter, &record.second_meter})
                if (*meter && meters.insert((*meter)->uuid).second)
                    if (const auto added = memory.value().add(**meter); !added) return added.error();
        }
    std::map<RunId, std::string> source_of;
    for (const NamedSheet& sheet : sheets) {
        const Result<ImportedRun> added = import_sheet(memory.value(), sheet.path, notices);
        if (!added) return added.error();
        source_of[added.value().run_uuid] = sheet.source;
    }
    Result<std::vector<RunRecord>> records = memory.value().run_records();
    if (!records) return records.error();
    std::map<std::string, std::size_t> place_of; // of a source of sheets, by its name
    for (RunRecord& record : records.value()) {
        const std::string& name = source_of[record.run.uuid];
        const auto [place, is_new] = place_of.emplace(name, sources.size());
        if (is_new) sources.push_back({name, {}});
        sources[place->second].records.push_back(std::move(record));
    }
    return {};
}

} // namespace

OpenedSource::OpenedSource(std::string path, bool of_sheets, std::unique_ptr<Clock> clock, Logbook logbook)
    : path_(std::move(path)), of_sheets_(of_sheets), clock_(std::move(clock)), logbook_(std::move(logbook)) {}

Result<OpenedSource> OpenedSource::open(const std::string& path, std::vector<Message>& notices) {
    auto clock = std::make_unique<SystemClock>();
    std::error_code ignored;
    if (fs::is_directory(path, ignored) && is_logbook_folder(path)) {
        Result<Logbook> logbook = logbook_of_folder(path, *clock, notices);
        if (!logbook) return logbook.error();
        return OpenedSource(path, false, std::move(clock), std::move(logbook).value());
    }
    const bool of_sheets = is_sheets(path);
    Result<std::vector<std::string>> sheets = fs::is_directory(path, ignored) ? sheets_in(path) : std::vector<std::string>{path};
    if (!sheets) return sheets.error();
    Result<Logbook> logbook =
        of_sheets ? logbook_of_sheets(sheets.value(), *clock, notices) : opened_logbook(path, OpenMode::read_only, *clock, notices);
    if (!logbook) return logbook.error();
    return OpenedSource(path, of_sheets, std::move(clock), std::move(logbook).value());
}

Result<std::vector<RunRecord>> OpenedSource::runs() const { return logbook_.run_records(); }

Result<std::vector<Unit>> OpenedSource::units() const { return logbook_.units(); }

Result<std::vector<LoadList>> OpenedSource::load_lists() const {
    if (of_sheets_) return no_load_lists(path_);
    return logbook_.load_lists();
}

Result<std::map<std::string, std::string>> OpenedSource::column_sets() const { return logbook_.column_sets(); }

Result<MeasureOptions> OpenedSource::method() const {
    const Result<std::map<std::string, double>> stated = logbook_.method_settings();
    if (!stated) return stated.error();
    return options_from(stated.value());
}

Result<std::unique_ptr<Casebook>> OpenedSource::casebook() const {
    Result<std::vector<RunRecord>> records = runs();
    if (!records) return records.error();
    const Result<MeasureOptions> options = method();
    if (!options) return options.error();
    Casebook::HistorySource histories;
    if (!of_sheets_) histories = [this](const ReadingId& reading_uuid) { return logbook_.history(reading_uuid); };
    auto casebook = std::make_unique<Casebook>(std::move(histories), options.value());
    casebook->set_runs(shared(std::move(records).value()));
    return casebook;
}

Result<std::vector<std::optional<LoadStatistics>>> OpenedSource::loads(const std::vector<RunRecord>& records) const {
    std::vector<std::optional<LoadStatistics>> loads(records.size());
    if (of_sheets_) return loads;
    for (std::size_t r = 0; r < records.size(); ++r) {
        const Result<std::optional<LoadStatistics>> of_run = load(records[r]);
        if (!of_run) return of_run.error();
        loads[r] = of_run.value();
    }
    return loads;
}

Result<std::vector<Photo>> OpenedSource::photos(const RunId& run_uuid) const {
    Result<std::vector<Photo>> photos = logbook_.photos(run_uuid);
    if (photos) std::erase_if(photos.value(), [](const Photo& photo) { return photo.withdrawn; });
    return photos;
}

Result<std::string> OpenedSource::photo_bytes(const PhotoId& photo_uuid) const { return logbook_.photo_bytes(photo_uuid); }

Result<Publisher> OpenedSource::publisher() const { return logbook_.publisher(); }

Result<std::optional<LoadStatistics>> OpenedSource::load(const RunRecord& record) const {
    if (of_sheets_) return std::optional<LoadStatistics>();
    return load_of_run(logbook_, record);
}

Result<std::vector<RunRecord>> runs_from(const std::string& path, std::vector<Message>& notices) {
    const Result<OpenedSource> source = OpenedSource::open(path, notices);
    if (!source) return source.error();
    return source.value().runs();
}

Result<SourcedRuns> runs_from_all(const std::vector<std::string>& paths, std::vector<Message>& notices) {
    SourcedRuns runs;
    std::vector<RecordSource> sources;
    std::vector<NamedSheet> sheets;
    const bool one = paths.size() == 1;
    const std::vector<std::string> names = names_of(paths);
    std::set<std::pair<dev_t, ino_t>> known_sheets;
    std::optional<std::string> method_of;
    for (std::size_t p = 0; p < paths.size(); ++p) {
        const std::string& path = paths[p];
        if (!one && is_sheets(path)) {
            if (auto found = add_sheets(path, names[p], known_sheets, sheets); !found) return found.error();
            if (is_logbook_folder(path))
                notices.push_back(say(
                    phrase("commands", "%1: beside other sources only its run sheets count, not its logs; `ullage import` makes it a logbook again"),
                    names[p]));
            continue;
        }
        const Result<OpenedSource> source = OpenedSource::open(path, notices);
        if (!source) return source.error();
        Result<std::vector<RunRecord>> records = source.value().runs();
        if (!records) return records.error();
        if (!is_sheets(path) || is_logbook_folder(path)) {
            const Result<std::vector<LoadList>> lists = source.value().load_lists();
            if (!lists) return lists.error();
            runs.load_lists.insert(runs.load_lists.end(), lists.value().begin(), lists.value().end());
            const Result<std::map<std::string, std::string>> sets = source.value().column_sets();
            if (!sets) return sets.error();
            runs.column_sets.insert(sets.value().begin(), sets.value().end());
            const Result<MeasureOptions> method = source.value().method();
            if (!method) return method.error();
            if (!method_of) {
                method_of = names[p];
                runs.method = method.value();
            } else if (method.value() != runs.method) {
                notices.push_back(say(phrase("commands", "%1 states another method than %2, by which all are compared"), names[p], *method_of));
            }
        }
        sources.push_back({names[p], std::move(records).value()});
    }
    if (auto added = add_runs_of(sheets, sources, notices); !added) return added.error();
    std::vector<const RecordSource*> all;
    for (const RecordSource& source : sources) all.push_back(&source);
    JoinedRecords joined = join_records(all);
    notices.insert(notices.end(), joined.notices.begin(), joined.notices.end());
    for (const RunRecord* record : joined.runs) runs.records.push_back(*record);
    runs.source_of = std::move(joined.source_of);
    return runs;
}

Result<UnitRuns> chosen_runs(UnitRuns runs, const std::string& unit, std::optional<int> run) {
    if (!unit.empty()) {
        const std::vector<std::string> names = unit_names(runs);
        std::erase_if(runs, [&](const RunRecord* record) { return record->unit.name != unit; });
        if (runs.empty())
            return Error{Failure::not_found, say(phrase("commands", "there is no run of a unit named `%1`"), unit), "--unit",
                         names.empty() ? say(phrase("commands", "the logbook has no runs yet"))
                                       : say(phrase("commands", "use one of %1"), listed(names))};
    }
    if (!run) return runs;
    if (unit.empty())
        if (const std::vector<std::string> names = unit_names(runs); names.size() > 1)
            return Error{Failure::bad_input, say(phrase("commands", "several units have runs")), "--run",
                         say(phrase("commands", "add --unit with one of %1"), listed(names))};
    std::vector<Message> numbers;
    for (const RunRecord* record : runs) numbers.push_back(say_number(record->number));
    std::erase_if(runs, [&](const RunRecord* record) { return record->number != *run; });
    if (runs.empty())
        return Error{Failure::not_found, say(phrase("commands", "there is no run %1"), say_number(*run)), "--run",
                     numbers.empty() ? say(phrase("commands", "the logbook has no runs yet"))
                                     : say(phrase("commands", "use one of %1"), say_joined(numbers, ", "))};
    return runs;
}

} // namespace ullage
