// SPDX-License-Identifier: GPL-3.0-or-later
#include "text/runs_source.h"

#include "base/clock.h"
#include "exchange/run_sheet.h"
#include "exchange/whole_file.h"
#include "store/logbook.h"
#include "trace/run_load.h"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>

namespace ullage {

namespace {

namespace fs = std::filesystem;

Result<std::vector<std::string>> sheets_in(const std::string& folder) {
    std::vector<std::string> sheets;
    std::error_code trouble;
    for (fs::directory_iterator entry(folder, trouble), end; !trouble && entry != end; entry.increment(trouble))
        if (entry->path().extension() == ".csv") sheets.push_back(entry->path().string());
    if (trouble)
        return Error{Failure::io, "the folder cannot be read: " + trouble.message(), folder, "check its permissions"};
    if (sheets.empty())
        return Error{Failure::not_found, "the folder holds no run sheet", folder, "name a logbook or a folder with .csv run sheets"};
    std::ranges::sort(sheets);
    return sheets;
}

Result<std::vector<RunRecord>> runs_of_sheets(const std::vector<std::string>& sheets, std::vector<std::string>& notices) {
    const SystemClock clock;
    Result<Logbook> logbook = Logbook::in_memory(clock);
    if (!logbook) return logbook.error();
    for (const std::string& sheet : sheets) {
        const Result<std::string> text = read_whole_file(sheet);
        if (!text) return text.error();
        const Result<SheetImport> import = read_run_sheet(text.value(), sheet);
        if (!import) return import.error();
        for (const std::string& notice : import.value().notices) notices.push_back(sheet + ", " + notice);
        const Result<RunRecord> added = logbook.value().import(import.value().record);
        if (added) continue;
        Error error = added.error();
        error.where = error.where.empty() ? sheet : sheet + ", " + error.where;
        return error;
    }
    return logbook.value().run_records();
}

/// "`a`, `b` and 3 more".
std::string listed(const std::vector<std::string>& names) {
    constexpr std::size_t most = 8;
    std::string text;
    for (std::size_t i = 0; i < std::min(names.size(), most); ++i) text += (i > 0 ? ", `" : "`") + names[i] + '`';
    return names.size() > most ? fmt::format("{} and {} more", text, names.size() - most) : text;
}

/// Each unit of the records once, as its maker and name may both be shared with others.
std::vector<std::string> unit_names(const std::vector<RunRecord>& records) {
    std::vector<std::string> names, uuids;
    for (const RunRecord& record : records) {
        if (std::ranges::find(uuids, record.unit.uuid) != uuids.end()) continue;
        uuids.push_back(record.unit.uuid);
        names.push_back(record.unit.name);
    }
    return names;
}

bool is_sheets(const std::string& path) {
    std::error_code ignored;
    return fs::is_directory(path, ignored) || fs::path(path).extension() == ".csv";
}

} // namespace

Result<std::vector<RunRecord>> runs_from(const std::string& path, std::vector<std::string>& notices) {
    std::error_code ignored;
    if (fs::is_directory(path, ignored)) {
        const Result<std::vector<std::string>> sheets = sheets_in(path);
        if (!sheets) return sheets.error();
        return runs_of_sheets(sheets.value(), notices);
    }
    if (fs::path(path).extension() == ".csv") return runs_of_sheets({path}, notices);
    const SystemClock clock;
    const Result<Logbook> logbook = Logbook::open(path, OpenMode::look, clock);
    if (!logbook) return logbook.error();
    return logbook.value().run_records();
}

Result<std::vector<std::optional<std::vector<ReadingHistory>>>> histories_from(const std::string& path,
                                                                               const std::vector<RunRecord>& records) {
    std::vector<std::optional<std::vector<ReadingHistory>>> all(records.size());
    if (is_sheets(path)) return all;
    const SystemClock clock;
    const Result<Logbook> logbook = Logbook::open(path, OpenMode::look, clock);
    if (!logbook) return logbook.error();
    for (std::size_t r = 0; r < records.size(); ++r) {
        auto& histories = all[r].emplace();
        for (const Reading& reading : records[r].readings) {
            if (reading.version < 2) continue;
            Result<std::vector<ReadingVersion>> versions = logbook.value().history(reading.uuid);
            if (!versions) return versions.error();
            histories.push_back({reading.uuid, std::move(versions).value()});
        }
    }
    return all;
}

Result<std::vector<std::optional<LoadStatistics>>> loads_from(const std::string& path, const std::vector<RunRecord>& records) {
    std::vector<std::optional<LoadStatistics>> loads(records.size());
    if (is_sheets(path)) return loads;
    const SystemClock clock;
    const Result<Logbook> logbook = Logbook::open(path, OpenMode::look, clock);
    if (!logbook) return logbook.error();
    for (std::size_t r = 0; r < records.size(); ++r) {
        const Result<std::optional<LoadStatistics>> load = load_of_run(logbook.value(), records[r]);
        if (!load) return load.error();
        loads[r] = load.value();
    }
    return loads;
}

Result<std::vector<RunRecord>> chosen_runs(std::vector<RunRecord> records, const std::string& unit, std::optional<int> run) {
    if (!unit.empty()) {
        const std::vector<std::string> names = unit_names(records);
        std::erase_if(records, [&](const RunRecord& record) { return record.unit.name != unit; });
        if (records.empty())
            return Error{Failure::not_found, fmt::format("there is no run of a unit named `{}`", unit), "--unit",
                         names.empty() ? std::string("the logbook has no runs yet") : "use one of " + listed(names)};
    }
    if (!run) return records;
    const std::vector<std::string> names = unit_names(records);
    if (names.size() > 1 && unit.empty())
        return Error{Failure::bad_input, "several units have runs", "--run", "add --unit with one of " + listed(names)};
    std::string numbers;
    for (const RunRecord& record : records) numbers += fmt::format("{}{}", numbers.empty() ? "" : ", ", record.number);
    std::erase_if(records, [&](const RunRecord& record) { return record.number != *run; });
    if (records.empty())
        return Error{Failure::not_found, fmt::format("there is no run {}", *run), "--run",
                     numbers.empty() ? std::string("the logbook has no runs yet") : "use one of " + numbers};
    return records;
}

} // namespace ullage
