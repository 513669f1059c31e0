// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "casebook/casebook.h"
#include "measure/load_statistics.h"
#include "model/load_list.h"
#include "model/photo.h"
#include "model/publisher.h"
#include "model/run_record.h"
#include "store/logbook.h"

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

/// Where a command takes runs from: a logbook (opened for looking only), one run sheet (a file whose name ends in .csv), or all run sheets of
/// a folder (in order of name). Opened once for all that the command shows, as a logbook is read and checked as a whole each time; its photos are
/// then in memory with it. Sheets go through a logbook in memory, so that runs are numbered and claims that differ between sheets of one unit
/// are found.
class OpenedSource {
public:
    /// Notices of sheets are appended to `notices`. Errors: those of Logbook::open, read_run_sheet and Logbook::import, with the file named; a
    /// folder without sheets.
    [[nodiscard]] static Result<OpenedSource> open(const std::string& path, std::vector<Message>& notices);

    [[nodiscard]] Result<std::vector<RunRecord>> runs() const;
    /// A logbook's units, those without runs too; for run sheets those of the runs.
    [[nodiscard]] Result<std::vector<Unit>> units() const;
    /// Those of a logbook. Error (bad_input): a run sheet or a folder, which hold none.
    [[nodiscard]] Result<std::vector<LoadList>> load_lists() const;
    /// Sets of columns that a logbook keeps, by name (Logbook::column_sets); none for run sheets.
    [[nodiscard]] Result<std::map<std::string, std::string>> column_sets() const;
    /// What its analyses take for granted, as a logbook states it; the program's own for run sheets.
    [[nodiscard]] Result<MeasureOptions> method() const;
    /// What the runs of the source say; histories of readings only of a logbook. The source must outlive it. Errors: those of runs().
    [[nodiscard]] Result<std::unique_ptr<Casebook>> casebook() const;
    /// What the traces of each of these runs of the source say of the load, in their order; absent where there is no trace of power, and for run
    /// sheets, which carry none. Errors: those of load_of_run.
    [[nodiscard]] Result<std::vector<std::optional<LoadStatistics>>> loads(const std::vector<RunRecord>& records) const;

    /// A logbook's photos of a run, none of them withdrawn, in order of adding; none of run sheets.
    [[nodiscard]] Result<std::vector<Photo>> photos(const RunId& run_uuid) const;
    [[nodiscard]] Result<std::string> photo_bytes(const PhotoId& photo_uuid) const;
    /// Who publishes what a logbook says; empty for run sheets.
    [[nodiscard]] Result<Publisher> publisher() const;

    [[nodiscard]] Result<std::optional<LoadStatistics>> load(const RunRecord& record) const; ///< the same of one run

private:
    OpenedSource(std::string path, bool of_sheets, std::unique_ptr<Clock> clock, Logbook logbook);
    std::string path_;
    bool of_sheets_;
    std::unique_ptr<Clock> clock_; ///< outlives the logbook
    Logbook logbook_;
};

/// The runs of a source of which nothing else is wanted.
[[nodiscard]] Result<std::vector<RunRecord>> runs_from(const std::string& path, std::vector<Message>& notices);

/// Runs of several sources, and where each was read from.
struct SourcedRuns {
    std::vector<RunRecord> records;
    std::map<RunId, std::string> source_of;           ///< name of the source; empty for a single source
    std::vector<LoadList> load_lists;                 ///< of the logbooks among them, in their order
    std::map<std::string, std::string> column_sets{}; ///< of the logbooks among them; of one name that of the first
    MeasureOptions method;                            ///< of the first logbook among them; a notice tells of another that differs
};

/// The runs of several such sources side by side, mixed at will: logbooks, run sheets and folders of them, each under the name of its file, or
/// of the sheets' folder; under its path where two have one name. The units and meters of run sheets are those of the logbooks where `import`
/// would take them for the same (name, for a unit also the maker). What several sources hold, see join_records; `notices` says so. Of one
/// path: as runs_from. Precondition: at least one path. Errors: as above; and a claim of a sheet that differs from a logbook's.
[[nodiscard]] Result<SourcedRuns> runs_from_all(const std::vector<std::string>& paths, std::vector<Message>& notices);

/// Of these runs those of a unit (empty name: of every unit) with a number (absent: every run). Errors name what there is: no such unit, no such run,
/// a run number without a unit where there are several.
[[nodiscard]] Result<UnitRuns> chosen_runs(UnitRuns runs, const std::string& unit, std::optional<int> run);

} // namespace ullage
