// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/work_folder.h"
#include "formats/files/whole_file.h"
#include "formats/folder/inside/file_names.h"
#include "formats/folder/inside/folder_contents.h"
#include "formats/folder/inside/log_columns.h"
#include "formats/folder/logbook_folder.h"
#include "formats/sheets/load_list_file.h"
#include "formats/sheets/pv_sheet_text.h"
#include "formats/sheets/run_sheet.h"

#include <fmt/format.h>

#include <algorithm>
#include <limits>
#include <map>
#include <set>
#include <system_error>
#include <utility>

namespace ullage {

namespace fs = std::filesystem;
using folder::Entry;
using folder::log_values;
using folder::LogValue;
using folder::What;

namespace {

constexpr UtcMs earliest_ms = std::numeric_limits<UtcMs>::min(), latest_ms = std::numeric_limits<UtcMs>::max();

/// A number for the head of a file's name, so that files stand in order and no name is a system's own.
std::string numbered(std::size_t number, std::string_view text) { return fmt::format("{:02}-{}", number, text); }

class FolderWriter {
public:
    FolderWriter(const Logbook& logbook, fs::path target, const FolderProgress& goes_on)
        : logbook_(logbook), target_(std::move(target)), goes_on_(goes_on) {}

    Result<FolderTally> write() {
        if (Result<void> free = target_is_free(); !free) return free.error();
        const fs::path parent = fs::absolute(target_).lexically_normal().parent_path();
        sweep_work_folders(parent);
        Result<WorkFolder> work = WorkFolder::make(parent);
        if (!work) return work.error();
        root_ = work.value() / "folder";
        if (Result<void> made = make_folder({}); !made) return made.error();
        for (const auto part : {&FolderWriter::write_runs, &FolderWriter::write_lists, &FolderWriter::write_rest})
            if (Result<void> done = (this->*part)(); !done) return done.error();
        if (Result<void> done = put(std::string(folder_contents_name), folder::contents_text(entries_)); !done) return done.error();
        std::error_code trouble;
        fs::rename(root_, target_, trouble);
        if (trouble)
            return Error{Failure::io, say(phrase("folder", "the folder cannot be named so: %1"), trouble.message()), target_.string(),
                         say(phrase("folder", "choose another name"))};
        return std::move(tally_);
    }

private:
    [[nodiscard]] Result<void> target_is_free() const {
        std::error_code trouble;
        const fs::file_status status = fs::symlink_status(target_, trouble);
        if (!fs::exists(status)) return {};
        if (fs::is_directory(status) && fs::is_empty(target_, trouble) && !trouble) return {};
        return Error{Failure::refused, say(phrase("folder", "there is something of this name already")), target_.string(),
                     say(phrase("folder", "name a new folder"))};
    }

    Result<void> make_folder(const std::string& name) {
        if (!made_.insert(name).second) return {};
        std::error_code trouble;
        fs::create_directories(root_ / name, trouble);
        if (trouble)
            return Error{Failure::io, say(phrase("folder", "the folder cannot be made: %1"), trouble.message()), target_.string(),
                         say(phrase("folder", "choose another place"))};
        return {};
    }

    /// Errors of files name the folder that was asked for, not the one in the making.
    Result<void> named(Result<void> written, const std::string& file) const {
        if (written) return written;
        Error error = written.error();
        error.where = (target_ / file).string();
        return error;
    }
    Result<void> put(const std::string& file, std::string_view bytes) const {
        return named(write_whole_file((root_ / file).string(), bytes, {Replacing::Consent::ordinary, {}}), file);
    }

    [[nodiscard]] Result<void> ask() {
        ++done_;
        if (goes_on_ && !goes_on_(std::min(1.0, static_cast<double>(done_) / static_cast<double>(std::max<std::size_t>(1, expected_)))))
            return Error{Failure::refused, say(phrase("folder", "stopped")), target_.string(), say(phrase("folder", "nothing was written"))};
        return {};
    }

    Result<void> write_runs() {
        Result<std::vector<RunRecord>> records = logbook_.run_records();
        if (!records) return records.error();
        const Result<std::vector<Meter>> meters = logbook_.meters();
        if (!meters) return meters.error();
        for (const Meter& meter : meters.value()) meter_names_.emplace(meter.uuid, meter.name);
        expected_ = records.value().size();
        for (const RunRecord& record : records.value()) {
            if (Result<void> going = ask(); !going) return going;
            const std::string about = numbered(tally_.runs + 1, record.unit.name + " " + std::string(run_kind_text(record.run.kind)));
            const std::string sheet = names_[""].next(about, ".csv");
            if (Result<void> done = put(sheet, write_run_sheet(record)); !done) return done;
            Entry entry;
            entry.file = sheet;
            entries_.push_back(std::move(entry));
            ++tally_.runs;
            told_units_.insert(record.unit.uuid);
            for (const auto* meter : {&record.meter, &record.second_meter})
                if (*meter) told_meters_.insert((*meter)->uuid);
            if (Result<void> done = write_photos(record, sheet); !done) return done;
            if (Result<void> done = write_logs(record, sheet); !done) return done;
        }
        return {};
    }

    Result<void> write_photos(const RunRecord& record, const std::string& sheet) {
        const Result<std::vector<Photo>> photos = logbook_.photos(record.run.uuid);
        if (!photos) return photos.error();
        std::map<ReadingId, std::pair<long, UtcMs>> rows; // as write_run_sheet() puts them
        for (const Reading& reading : record.readings)
            if (!reading.withdrawn) rows.emplace(reading.uuid, std::pair(static_cast<long>(rows.size()) + 1, reading.values.time_ms));
        for (const Photo& photo : photos.value()) {
            const auto row = photo.reading_uuid ? rows.find(*photo.reading_uuid) : rows.end();
            if (photo.withdrawn || (photo.reading_uuid && row == rows.end())) continue;
            if (Result<void> made = make_folder("photos"); !made) return made;
            const std::string ending = photo.format == PhotoFormat::png ? ".png" : ".jpg";
            Entry entry;
            entry.what = What::photo;
            entry.file = "photos/" + names_["photos"].next(numbered(tally_.runs, fs::path(photo.file_name).stem().string()), ending);
            entry.run_sheet = sheet;
            if (row != rows.end()) entry.reading = row->second.first, entry.time_ms = row->second.second;
            entry.name = photo.file_name;
            if (photo.taken) entry.taken_ms = photo.taken->time_ms, entry.taken_zone_assumed = photo.taken->zone_assumed;
            const Result<std::string> bytes = logbook_.photo_bytes(photo.uuid);
            if (!bytes) return bytes.error();
            if (Result<void> done = put(entry.file, bytes.value()); !done) return done;
            entries_.push_back(std::move(entry));
            ++tally_.photos;
        }
        return {};
    }

    Result<void> write_logs(const RunRecord& record, const std::string& sheet) {
        const Result<std::vector<Trace>> traces = logbook_.traces(record.run.uuid);
        if (!traces) return traces.error();
        for (const Trace& trace : traces.value()) {
            if (trace.withdrawn) continue;
            if (Result<void> made = make_folder("logs"); !made) return made;
            Entry entry;
            entry.what = What::log;
            entry.file = "logs/" + names_["logs"].next(numbered(tally_.runs, fs::path(trace.file_name).stem().string()), ".csv");
            entry.run_sheet = sheet;
            entry.name = trace.file_name;
            if (trace.meter_uuid)
                if (const auto known = meter_names_.find(*trace.meter_uuid); known != meter_names_.end()) entry.meter = known->second;
            entry.clock_offset_s = static_cast<double>(trace.offset_ms) / 1000;
            entry.clock_offset_u_s = trace.offset_u_s;
            if (Result<void> done = write_log(trace, entry.file); !done) return done;
            entries_.push_back(std::move(entry));
            ++tally_.logs;
        }
        return {};
    }

    /// The samples with the times that the log itself had, and a column for each value that occurs.
    Result<void> write_log(const Trace& trace, const std::string& file) const {
        std::vector<LogValue> columns;
        const Result<void> looked = logbook_.read_samples(trace.uuid, earliest_ms, latest_ms, [&](std::span<const TraceSample> samples) {
            for (const LogValue& one : log_values)
                if (std::ranges::find(columns, one.title, &LogValue::title) == columns.end() &&
                    std::ranges::any_of(samples, [&](const TraceSample& sample) { return (sample.*one.value).has_value(); }))
                    columns.push_back(one);
            return columns.size() < log_values.size();
        });
        if (!looked) return looked.error();
        Result<void> read;
        Result<void> written =
            write_whole_file((root_ / file).string(),
                             [&](const TextTaker& take) {
                                 TextPieces pieces(take);
                                 pieces.text() += folder::log_time_title;
                                 for (const LogValue& one : columns) pieces.text().append(",").append(one.title);
                                 pieces.text() += '\n';
                                 read = logbook_.read_samples(trace.uuid, earliest_ms, latest_ms, [&](std::span<const TraceSample> samples) {
                                     for (const TraceSample& sample : samples) {
                                         pieces.text() += format_iso8601(sample.time_ms - trace.offset_ms, "UTC");
                                         for (const LogValue& one : columns) {
                                             pieces.text() += ',';
                                             if (sample.*one.value) pieces.text() += exact_text(*(sample.*one.value));
                                         }
                                         pieces.text() += '\n';
                                         if (!pieces.pass_on()) return false;
                                     }
                                     return true;
                                 });
                                 return pieces.finish() && read.ok();
                             },
                             {Replacing::Consent::ordinary, {}});
        return read ? named(std::move(written), file) : read;
    }

    Result<void> write_lists() {
        const Result<std::vector<LoadList>> lists = logbook_.load_lists();
        if (!lists) return lists.error();
        for (const LoadList& list : lists.value()) {
            Result<void> done = put_listed(What::load_list, "load-lists", ++tally_.load_lists, list.name, ".csv", write_load_list(list));
            if (!done) return done;
        }
        const Result<std::vector<PvSheet>> sheets = logbook_.pv_sheets();
        const Result<std::vector<Unit>> units = logbook_.units();
        if (!sheets || !units) return sheets ? units.error() : sheets.error();
        for (const PvSheet& sheet : sheets.value()) {
            PvSheetText text{sheet, {}, {}};
            const auto unit = std::ranges::find(units.value(), sheet.unit_uuid, &Unit::uuid);
            if (unit != units.value().end()) text.unit = unit->name;
            Result<void> done = put_listed(What::pv_sheet, "pv", ++tally_.pv_sheets, sheet.name, ".txt", pv_sheet_text(text));
            if (!done) return done;
        }
        return {};
    }

    /// Units and meters that no run sheet tells of, each as a run sheet without readings, and figures of the method.
    Result<void> write_rest() {
        const Result<std::vector<Unit>> units = logbook_.units();
        const Result<std::vector<Meter>> meters = logbook_.meters();
        const Result<std::map<std::string, double>> settings = logbook_.method_settings();
        if (!units) return units.error();
        if (!meters) return meters.error();
        if (!settings) return settings.error();
        std::size_t number = 0;
        RunRecord alone;
        for (const Unit& unit : units.value()) {
            if (told_units_.contains(unit.uuid)) continue;
            alone.unit = unit;
            if (Result<void> done = put_listed(What::unit, "units", ++number, unit.name, ".csv", write_run_sheet(alone)); !done) return done;
        }
        number = 0;
        alone.unit = {};
        for (const Meter& meter : meters.value()) {
            if (told_meters_.contains(meter.uuid)) continue;
            alone.unit.name = meter.name;
            alone.meter = meter;
            if (Result<void> done = put_listed(What::meter, "meters", ++number, meter.name, ".csv", write_run_sheet(alone)); !done) return done;
        }
        for (const auto& [key, value] : settings.value()) {
            Entry entry;
            entry.what = What::setting;
            entry.name = key;
            entry.value = value;
            entries_.push_back(std::move(entry));
        }
        return {};
    }

    Result<void> put_listed(What what, const std::string& in, std::size_t number, const std::string& name, std::string_view ending,
                            std::string_view bytes) {
        if (Result<void> made = make_folder(in); !made) return made;
        Entry entry;
        entry.what = what;
        entry.file = in + '/' + names_[in].next(numbered(number, name), ending);
        if (Result<void> done = put(entry.file, bytes); !done) return done;
        entries_.push_back(std::move(entry));
        return {};
    }

    const Logbook& logbook_;
    fs::path target_, root_;
    const FolderProgress& goes_on_;
    FolderTally tally_;
    std::vector<Entry> entries_;
    std::set<std::string> made_;
    std::map<std::string, folder::FileNames> names_; ///< by folder
    std::map<MeterId, std::string> meter_names_;
    std::set<UnitId> told_units_;   ///< by run sheets
    std::set<MeterId> told_meters_; ///< likewise
    std::size_t done_ = 0, expected_ = 0;
};

} // namespace

Result<FolderTally> write_logbook_folder(const Logbook& logbook, const fs::path& target, const FolderProgress& goes_on) {
    return FolderWriter(logbook, target, goes_on).write();
}

Message say_folder_tally(const FolderTally& tally) {
    std::vector<Message> parts;
    const auto add = [&parts](std::size_t count, const Phrase& counted) {
        if (count > 0) parts.push_back(say_count(count, counted));
    };
    add(tally.runs, phrases("folder", "%n runs", "%n run"));
    add(tally.photos, phrases("folder", "%n photos", "%n photo"));
    add(tally.logs, phrases("folder", "%n logs", "%n log"));
    add(tally.load_lists, phrases("folder", "%n load lists", "%n load list"));
    add(tally.pv_sheets, phrases("folder", "%n PV sheets", "%n PV sheet"));
    return parts.empty() ? say(phrase("folder", "nothing")) : say_joined(parts, ", ");
}

} // namespace ullage
