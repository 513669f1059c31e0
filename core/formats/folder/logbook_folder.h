// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "store/logbook.h"

#include <filesystem>
#include <functional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace ullage {

/// A logbook as a folder that people and other programs can read: a run sheet for each run, beside them photos, logs of meters, load lists, PV
/// sheets, and a file `contents.csv` that says what belongs to what. It is UTF-8 and RFC 4180 after the line `# logbook_folder: 1`; a row for each
/// file, with the columns
///
///   what            run sheet, photo, log, load list, PV sheet, unit or meter (of which no run sheet tells), setting
///   file            within the folder, with `/` between names
///   run_sheet       file of the run that a photo or a log belongs to
///   reading         row of the reading in that sheet, from 1; empty for a photo that waits for one
///   time            of that reading as its row has it, so that a sheet that was sorted anew is noticed
///   name            of a photo as its camera named it; key of a setting
///   taken           when a photo was taken, ISO 8601 UTC; `taken_zone_assumed` is `yes` where its camera gave no offset
///   meter           that wrote a log
///   clock_offset_s  added to the times of a log; `clock_offset_u_s` its standard uncertainty where it was estimated
///   value           of a setting of the method
///
/// Not in it: earlier versions of readings and meters, what was withdrawn, sets of columns, who publishes.

inline constexpr std::string_view folder_contents_name = "contents.csv";

/// What went into a folder or came out of it.
struct FolderTally {
    std::size_t runs = 0, photos = 0, logs = 0, load_lists = 0, pv_sheets = 0;
    std::size_t known_runs = 0; ///< that the logbook had already; left out with their photos and logs
    /// What was added, by uuid, for taking it back as one step.
    std::vector<RunId> run_uuids{};
    std::vector<LoadListId> load_list_uuids{};
    std::vector<PvSheetId> pv_sheet_uuids{};
    std::vector<UnitId> unit_uuids{};
    std::vector<MeterId> meter_uuids{};
    std::vector<std::pair<std::string, double>> settings{};
    std::vector<Message> notices{}; ///< for people
};

/// Asked before each file with the share done, 0 to 1; false cancels.
using FolderProgress = std::function<bool(double share)>;

/// "3 runs, 12 photos, 1 log": what there is some of.
[[nodiscard]] Message say_folder_tally(const FolderTally& tally);

/// Whether a folder has a `contents.csv` of this sort.
[[nodiscard]] bool is_logbook_folder(const std::filesystem::path& folder);

/// Writes all that the logbook holds into a new folder, whole or not at all: it is made beside the target and takes its name when it is complete.
/// Errors: refused (the target is there and no empty folder, or `goes_on` said no), disk_full, io, those of reading the logbook.
[[nodiscard]] Result<FolderTally> write_logbook_folder(const Logbook& logbook, const std::filesystem::path& target,
                                                       const FolderProgress& goes_on = {});

/// Brings such a folder into the logbook, all of it or nothing, and reads back the same runs, readings, photos, logs, lists and sheets. A run that
/// the logbook has already is left out with its photos and logs, so is a load list or PV sheet of a name that is there, each with a notice where it
/// differs. Settings come in where the logbook states none of its own. Errors, with file and line: no such folder or file, a contents file that
/// cannot be read, a path that leads out of the folder, a reading that is not where the contents say, and those of the sheets and the store.
[[nodiscard]] Result<FolderTally> import_logbook_folder(Logbook& logbook, const std::filesystem::path& folder, const FolderProgress& goes_on = {});

} // namespace ullage
