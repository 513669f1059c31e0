// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "formats/files/whole_file.h"
#include "formats/folder/inside/folder_contents.h"
#include "formats/folder/inside/log_columns.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/load_list_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/sheets/run_sheet.h"
#include "trace/trace_import.h"

#include <algorithm>
#include <cmath>
#include <fstream>
#include <map>
#include <set>
#include <span>
#include <string_view>

namespace ullage {

namespace fs = std::filesystem;
using folder::Entry;
using folder::What;

namespace {

/// A run of the folder as it came in.
struct RunOfFolder {
    RunId run_uuid;
    std::string zone;
    std::vector<std::pair<ReadingId, UtcMs>> rows; ///< and the time of each reading, in order of the sheet's rows
    bool known = false;                            ///< the logbook had it already
};

/// The columns of a log that this program wrote, by their titles: only there does it stand for sure who measured what, a meter or the unit itself.
/// None where a title is another, as somebody else wrote it then.
LayoutAnswers answers_of_header(const fs::path& log) {
    std::ifstream file(log, std::ios::binary);
    constexpr std::size_t longest_header = 200;
    std::string header(longest_header, '\0');
    file.read(header.data(), static_cast<std::streamsize>(header.size()));
    header.resize(static_cast<std::size_t>(std::max<std::streamsize>(0, file.gcount())));
    std::string_view rest = std::string_view(header).substr(0, header.find_first_of("\r\n"));
    LayoutAnswers answers;
    for (std::size_t index = 0; !rest.empty(); ++index) {
        const std::string_view title = rest.substr(0, rest.find(','));
        rest.remove_prefix(std::min(rest.size(), title.size() + 1));
        const auto known = std::ranges::find(folder::log_values, title, &folder::LogValue::title);
        if (index == 0 && title == folder::log_time_title) answers.columns.push_back({ColumnRole::time, index, {}});
        else if (index > 0 && known != folder::log_values.end()) answers.columns.push_back({known->role, index, {}});
        else return {};
    }
    return answers;
}

class FolderImport {
public:
    FolderImport(Logbook& logbook, const fs::path& root, const FolderProgress& goes_on) : logbook_(logbook), root_(root), goes_on_(goes_on) {}

    Result<FolderTally> bring_in() {
        const Result<std::string> text = read_whole_file((root_ / folder_contents_name).string());
        if (!text) return text.error();
        Result<std::vector<Entry>> entries = folder::read_contents(text.value());
        if (!entries) return at_root(entries.error());
        if (Result<void> sound = check_runs(entries.value()); !sound) return sound.error();
        const Result<void> done = logbook_.all_or_none([&]() -> Result<void> {
            std::size_t at = 0;
            // What others refer to first.
            for (const What what : {What::unit, What::meter, What::run_sheet, What::photo, What::log, What::load_list, What::pv_sheet, What::setting})
                for (const Entry& entry : entries.value()) {
                    if (entry.what != what) continue;
                    if (goes_on_ && !goes_on_(static_cast<double>(at) / static_cast<double>(entries.value().size())))
                        return Error{Failure::refused, say(phrase("folder", "stopped")), root_.string(),
                                     say(phrase("folder", "nothing was imported"))};
                    ++at;
                    if (Result<void> taken = take(entry); !taken) return taken;
                }
            return {};
        });
        if (!done) return done.error();
        return std::move(tally_);
    }

private:
    [[nodiscard]] Error at_root(Error error) const { return within(std::move(error), (root_ / folder_contents_name).string()); }
    [[nodiscard]] Error at_entry(const Entry& entry, const Message& what, const Message& remedy) const {
        return at_root(Error{Failure::bad_input, what, say(phrase("folder", "line %1"), say_number(entry.line)), remedy});
    }
    /// Where the store refused something of a file, the file is named.
    [[nodiscard]] Error of_file(Error error, const Entry& entry) const {
        const std::string file = (root_ / entry.file).string();
        return within(std::move(error), file);
    }

    /// A link would bring in what lies elsewhere on this machine, and whoever passes the logbook on would pass it on too.
    [[nodiscard]] bool lies_in_folder(const std::string& file) const {
        std::error_code unknown;
        const fs::path root = fs::weakly_canonical(root_, unknown);
        const fs::path inside = fs::weakly_canonical(root_ / file, unknown).lexically_relative(root);
        return !unknown && !inside.empty() && *inside.begin() != "..";
    }

    /// Each photo and log needs its run, each file is named once, and none lies out of the folder.
    [[nodiscard]] Result<void> check_runs(const std::vector<Entry>& entries) const {
        std::set<std::string> sheets, files;
        for (const Entry& entry : entries) {
            if (entry.what == What::run_sheet) sheets.insert(entry.file);
            if (entry.what != What::setting && !files.insert(entry.file).second)
                return at_entry(entry, say(phrase("folder", "`%1` is named twice"), entry.file), say(phrase("folder", "delete one of the rows")));
            if (entry.what != What::setting && !lies_in_folder(entry.file))
                return at_entry(entry, say(phrase("folder", "`%1` is a link out of the folder"), entry.file),
                                say(phrase("folder", "put the file itself there")));
        }
        for (const Entry& entry : entries)
            if ((entry.what == What::photo || entry.what == What::log) && !sheets.contains(entry.run_sheet))
                return at_entry(entry, say(phrase("folder", "`%1` is no run sheet of this folder"), entry.run_sheet),
                                say(phrase("folder", "correct `run_sheet`")));
        return {};
    }

    Result<void> take(const Entry& entry) {
        switch (entry.what) {
        case What::unit: return take_unit(entry);
        case What::meter: return take_meter(entry);
        case What::run_sheet: return take_run(entry);
        case What::photo: return take_photo(entry);
        case What::log: return take_log(entry);
        case What::load_list: return take_load_list(entry);
        case What::pv_sheet: return take_pv_sheet(entry);
        case What::setting: return take_setting(entry);
        }
        return {};
    }

    Result<SheetImport> sheet_of(const Entry& entry) {
        const std::string path = (root_ / entry.file).string();
        Result<std::string> text = read_whole_file(path);
        if (!text) return text.error();
        return read_run_sheet(text.value(), path);
    }

    Result<void> take_unit(const Entry& entry) {
        const Result<SheetImport> sheet = sheet_of(entry);
        if (!sheet) return sheet.error();
        const Unit& unit = sheet.value().record.unit;
        const Result<std::vector<Unit>> known = logbook_.units();
        if (!known) return known.error();
        if (std::ranges::any_of(known.value(), [&](const Unit& other) { return other.name == unit.name && other.maker == unit.maker; })) return {};
        const Result<Unit> added = logbook_.add(unit);
        if (!added) return of_file(added.error(), entry);
        tally_.unit_uuids.push_back(added.value().uuid);
        return {};
    }

    Result<void> take_meter(const Entry& entry) {
        const Result<SheetImport> sheet = sheet_of(entry);
        if (!sheet) return sheet.error();
        if (!sheet.value().record.meter)
            return at_entry(entry, say(phrase("folder", "`%1` states no meter"), entry.file), say(phrase("folder", "name a sheet that does")));
        const Result<std::vector<Meter>> known = logbook_.meters();
        if (!known) return known.error();
        const Meter& meter = *sheet.value().record.meter;
        if (std::ranges::find(known.value(), meter.name, &Meter::name) != known.value().end()) return {};
        const Result<Meter> added = logbook_.add(meter);
        if (!added) return of_file(added.error(), entry);
        tally_.meter_uuids.push_back(added.value().uuid);
        return {};
    }

    Result<void> take_run(const Entry& entry) {
        Result<SheetImport> sheet = sheet_of(entry);
        if (!sheet) return sheet.error();
        const RunRecord& record = sheet.value().record;
        for (const Message& notice : sheet.value().notices) tally_.notices.push_back(say_joined({entry.file, notice}, ", "));
        RunOfFolder& run = runs_[entry.file];
        const Result<std::optional<int>> known = logbook_.number_of(record);
        if (!known) return known.error();
        if (known.value()) {
            run.known = true;
            ++tally_.known_runs;
            tally_.notices.push_back(say(phrase("folder", "%1: already in the logbook as run %2 of %3, left out"), entry.file,
                                         say_number(*known.value()), record.unit.name));
            return {};
        }
        Result<RunRecord> added = logbook_.import(record);
        if (!added) return of_file(added.error(), entry);
        run.run_uuid = added.value().run.uuid;
        run.zone = added.value().run.time_zone;
        std::vector<Reading>& readings = added.value().readings;
        std::ranges::sort(readings, {}, &Reading::sequence); // the order of the rows
        for (const Reading& reading : readings) run.rows.emplace_back(reading.uuid, reading.values.time_ms);
        tally_.run_uuids.push_back(run.run_uuid);
        ++tally_.runs;
        return {};
    }

    Result<void> take_photo(const Entry& entry) {
        const RunOfFolder& run = runs_.at(entry.run_sheet);
        if (run.known) return {};
        ReadingId reading_uuid;
        if (entry.reading) {
            const auto row = static_cast<std::size_t>(*entry.reading) - 1;
            if (row >= run.rows.size())
                return at_entry(entry, say(phrase("folder", "`%1` has no reading %2"), entry.run_sheet, say_number(*entry.reading)),
                                say(phrase("folder", "correct `reading`")));
            if (entry.time_ms && *entry.time_ms != run.rows[row].second)
                return at_entry(entry,
                                say(phrase("folder", "reading %1 of `%2` is of %3, not of %4"), say_number(*entry.reading), entry.run_sheet,
                                    format_iso8601(run.rows[row].second, run.zone), format_iso8601(*entry.time_ms, run.zone)),
                                say(phrase("folder", "give the row of the reading that the photo shows")));
            reading_uuid = run.rows[row].first;
        }
        Result<std::string> bytes = read_whole_file((root_ / entry.file).string());
        if (!bytes) return bytes.error();
        NewPhoto photo;
        photo.file_name = entry.name.empty() ? fs::path(entry.file).filename().string() : entry.name;
        photo.bytes = std::move(bytes).value();
        if (entry.taken_ms) photo.taken = PhotoMoment{*entry.taken_ms, entry.taken_zone_assumed};
        const Result<Photo> added = logbook_.add_photo(run.run_uuid, reading_uuid, photo);
        if (!added) return of_file(added.error(), entry);
        ++tally_.photos;
        return {};
    }

    Result<void> take_log(const Entry& entry) {
        const RunOfFolder& run = runs_.at(entry.run_sheet);
        if (run.known) return {};
        std::optional<MeterId> meter_uuid;
        if (!entry.meter.empty()) {
            const Result<std::vector<Meter>> meters = logbook_.meters();
            if (!meters) return meters.error();
            const auto meter = std::ranges::find(meters.value(), entry.meter, &Meter::name);
            if (meter == meters.value().end())
                return at_entry(entry, say(phrase("folder", "there is no meter `%1`"), entry.meter),
                                say(phrase("folder", "correct `meter`, or add a row of the sort `meter`")));
            meter_uuid = meter->uuid;
        }
        TraceReadOptions options;
        options.offset_ms = static_cast<UtcMs>(std::llround(entry.clock_offset_s * 1000));
        options.offset_u_s = entry.clock_offset_u_s;
        options.file_name = entry.name;
        const std::string path = (root_ / entry.file).string();
        const Result<TracePreview> preview = preview_trace(path, answers_of_header(root_ / entry.file), {}, options);
        if (!preview) return preview.error();
        const Result<ImportedTrace> added = import_trace(logbook_, path, run.run_uuid, meter_uuid, preview.value().detection, options);
        if (!added) return added.error();
        if (const long left_out = added.value().tally.left_out(); left_out > 0)
            tally_.notices.push_back(say_count(left_out, phrases("folder", "%1: %n rows left out", "%1: %n row left out"), entry.file));
        ++tally_.logs;
        return {};
    }

    Result<void> take_load_list(const Entry& entry) {
        const std::string path = (root_ / entry.file).string();
        const Result<std::string> text = read_whole_file(path);
        if (!text) return text.error();
        const Result<LoadList> list = read_load_list(text.value(), path);
        if (!list) return list.error();
        const Result<std::vector<LoadList>> known = logbook_.load_lists();
        if (!known) return known.error();
        for (const LoadList& other : known.value()) {
            if (other.name != list.value().name) continue;
            if (write_load_list(other) != write_load_list(list.value()))
                tally_.notices.push_back(say(phrase("folder", "%1: the logbook has another load list of this name; left out"), entry.file));
            return {};
        }
        const Result<LoadList> added = logbook_.add(list.value());
        if (!added) return of_file(added.error(), entry);
        tally_.load_list_uuids.push_back(added.value().uuid);
        ++tally_.load_lists;
        return {};
    }

    Result<void> take_pv_sheet(const Entry& entry) {
        const std::string path = (root_ / entry.file).string();
        const Result<std::string> text = read_whole_file(path);
        if (!text) return text.error();
        Result<PvSheetText> read = read_pv_sheet(text.value(), path);
        if (!read) return read.error();
        PvSheet& sheet = read.value().sheet;
        const Result<std::vector<Unit>> units = logbook_.units();
        const Result<std::vector<PvSheet>> known = logbook_.pv_sheets();
        if (!units || !known) return units ? known.error() : units.error();
        const auto unit = std::ranges::find(units.value(), read.value().unit, &Unit::name);
        if (unit != units.value().end()) sheet.unit_uuid = unit->uuid;
        for (PvSheet other : known.value()) {
            if (other.name != sheet.name) continue;
            other.uuid = sheet.uuid;
            if (other != sheet)
                tally_.notices.push_back(say(phrase("folder", "%1: the logbook has another PV sheet of this name; left out"), entry.file));
            return {};
        }
        const Result<PvSheet> added = logbook_.add(sheet);
        if (!added) return of_file(added.error(), entry);
        tally_.pv_sheet_uuids.push_back(added.value().uuid);
        ++tally_.pv_sheets;
        return {};
    }

    Result<void> take_setting(const Entry& entry) {
        const Result<std::map<std::string, double>> stated = logbook_.method_settings();
        if (!stated) return stated.error();
        const auto known = stated.value().find(entry.name);
        if (known == stated.value().end()) {
            tally_.settings.emplace_back(entry.name, *entry.value);
            return logbook_.set_method_setting(entry.name, *entry.value);
        }
        if (known->second != *entry.value)
            tally_.notices.push_back(say(phrase("folder", "setting `%1`: the logbook states %2, the folder %3; that of the logbook stays"),
                                         entry.name, say_digits(exact_text(known->second)), say_digits(exact_text(*entry.value))));
        return {};
    }

    Logbook& logbook_;
    const fs::path& root_;
    const FolderProgress& goes_on_;
    FolderTally tally_;
    std::map<std::string, RunOfFolder> runs_; ///< by file of the sheet
};

} // namespace

bool is_logbook_folder(const fs::path& folder) {
    std::ifstream file(folder / folder_contents_name, std::ios::binary);
    std::string beginning(64, '\0');
    file.read(beginning.data(), static_cast<std::streamsize>(beginning.size()));
    beginning.resize(static_cast<std::size_t>(std::max<std::streamsize>(0, file.gcount())));
    return folder::is_contents(beginning);
}

Result<FolderTally> import_logbook_folder(Logbook& logbook, const fs::path& folder, const FolderProgress& goes_on) {
    return FolderImport(logbook, folder, goes_on).bring_in();
}

} // namespace ullage
