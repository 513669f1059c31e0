// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/clock.h"
#include "base/result.h"
#include "model/load_list.h"
#include "model/photo.h"
#include "model/publisher.h"
#include "model/pv_sheet.h"
#include "model/run_record.h"
#include "model/trace.h"
#include "store/copy_age.h"
#include "store/opening_check.h"
#include "store/whole_content.h"

#include <atomic>
#include <filesystem>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace ullage {

/// Takes samples of a trace, each later than the one before; an error of its own ends the import.
using SampleTaker = std::function<Result<void>(std::span<const TraceSample>)>;
/// Hands the samples of a log over and fills in what it learns about the file on the way.
using TraceSource = std::function<Result<void>(Trace& trace, const SampleTaker& take)>;
/// What a log has gained since it was read last.
struct TraceGrowth {
    std::span<const TraceSample> samples; ///< each later than the one before
    std::int64_t size_bytes = 0;          ///< of the file that has been read now,
    std::string fingerprint;              ///< and of these bytes
    std::int64_t rows_left_out = 0;       ///< of the new rows
    bool started_anew = false;            ///< the file was cut short or replaced since, and read from its beginning
};
/// Sees samples in order of time; false ends the reading.
using SampleVisitor = std::function<bool(std::span<const TraceSample>)>;

/// What a run that was brought in was given.
struct ImportedRun {
    UnitId unit_uuid;
    RunId run_uuid;
    int number = 1; ///< within the unit
};

/// How a logbook is opened.
enum class OpenMode {
    record,   ///< for reading and writing; one instance at a time
    read_only ///< for reading only; of a file that another instance records into, what was recorded at one moment
};

/// The one door to a logbook file: SQLite, WAL, synchronous=FULL. What a call has returned is on the disk.
///
/// Every failure is a value; a failed call leaves the file as it was. Not thread-safe; one thread at a time.
/// In mode `read_only` every change is refused (read_only), and the calls tell what the file said when it was
/// opened, from a copy in memory: the file is neither held nor written to. Every change is refused (displaced) once the file at the path is no longer
/// the one that was opened, or another program has written to it. Text is kept byte for byte; a number that is not finite or a name that is empty is
/// refused (bad_input). A file that is recorded into may be read by other means, also by this process. The clock must outlive the logbook. Readings
/// are append-only: changes add versions, nothing is updated in place or deleted (a trigger sees to it); photos and traces too. Units, meters, load
/// lists and runs can be withdrawn and restored; withdrawn ones are left out of the lists.
class Logbook {
public:
    /// Makes a new file. Errors: the file exists (refused), the folder cannot be written (io), read_only,
    /// disk_full.
    static Result<Logbook> create(const std::filesystem::path& path, const Clock& clock);
    /// Opens a file, migrating an older one forward in mode `record` (in mode `read_only` on a copy in memory).
    /// Errors, each leaving the file unchanged: not_found, not_a_logbook, newer_version, damaged, read_only,
    /// in_use (in mode `read_only` only where who records never leaves the file at rest); refused soon after `*cancelled` is set, by another thread
    /// perhaps, while the file is being checked.
    static Result<Logbook> open(const std::filesystem::path& path, OpenMode mode, const Clock& clock, const std::atomic<bool>* cancelled = nullptr);
    /// A logbook in memory that nothing keeps: for comparing run sheets without a file, and for tests.
    static Result<Logbook> in_memory(const Clock& clock);

    Logbook(Logbook&&) noexcept;
    Logbook& operator=(Logbook&&) noexcept;
    ~Logbook();

    [[nodiscard]] const std::filesystem::path& path() const;
    [[nodiscard]] OpenMode mode() const;
    /// Of one open for looking: another instance, of this process perhaps, recorded into the file then.
    [[nodiscard]] bool recorded_elsewhere() const;
    /// Of one open for looking: how it stands to the file. Two questions to the system, so it may be asked every second.
    [[nodiscard]] CopyAge copy_age() const;

    // Units and meters. `add` fills an empty uuid; `update` finds the record by uuid.
    Result<Unit> add(Unit unit);
    Result<void> update(const Unit& unit);
    Result<std::vector<Unit>> units() const; ///< in order of name
    Result<Meter> add(Meter meter);
    /// Adds a version of what is stated of the meter; the reason may be empty. Nothing is added where nothing changes.
    Result<void> update(const Meter& meter, const std::string& reason = {});
    Result<std::vector<Meter>> meters() const; ///< in order of name
    /// What was stated of a meter, from the first version on; the last is what stands. Error: not_found.
    Result<std::vector<MeterVersion>> meter_history(const MeterId& uuid) const;
    Result<void> set_unit_withdrawn(const UnitId& uuid, bool withdrawn);   ///< hides its runs with it
    Result<void> set_meter_withdrawn(const MeterId& uuid, bool withdrawn); ///< refused while runs name it

    /// Who publishes what the logbook says; empty where nothing is stated. Errors of setting it: a text that is too long or no UTF-8.
    Result<Publisher> publisher() const;
    Result<void> set_publisher(const Publisher& publisher);

    // Options of the method that hold for the whole logbook: numbers by key, without a meaning of their own here.
    Result<std::map<std::string, double>> method_settings() const;
    Result<void> set_method_setting(const std::string& key, double value);
    Result<void> clear_method_setting(const std::string& key); ///< one that is not set is good
    // Columns of a table: sets of keys by name, and under an empty name those in use. Keys are words with commas between; they have no meaning here.
    Result<std::map<std::string, std::string>> column_sets() const;
    Result<void> set_column_set(const std::string& name, const std::string& keys);
    Result<void> clear_column_set(const std::string& name); ///< one that is not there is good

    /// How meters are read by the program: by uuid, a text that is owned by core/live and holds no secret.
    Result<std::map<MeterId, std::string>> meter_sources() const;
    /// Replaces that of a meter; empty: it is not read. Errors: not_found; a text that is too long.
    Result<void> set_meter_source(const MeterId& meter_uuid, const std::string& source);

    // PV sheets: a module and how it is wired, to be checked against a unit's PV input.
    Result<PvSheet> add(PvSheet sheet);
    Result<void> update(const PvSheet& sheet);
    Result<std::vector<PvSheet>> pv_sheets() const; ///< in order of name
    Result<void> set_pv_sheet_withdrawn(const PvSheetId& uuid, bool withdrawn);
    // Load lists, each with its appliances; no two that are listed have one name (refused), in any case of letters.
    Result<LoadList> add(LoadList list); ///< fills an empty uuid
    Result<void> update(const LoadList& list);
    Result<std::vector<LoadList>> load_lists() const; ///< in order of name
    Result<void> set_load_list_withdrawn(const LoadListId& uuid, bool withdrawn);

    // Runs. `created_ms` 0 is filled with the present.
    Result<Run> add(Run run);
    Result<void> update(const Run& run);
    Result<void> set_run_withdrawn(const RunId& uuid, bool withdrawn);
    Result<std::vector<Run>> runs() const; ///< all units' runs, by unit and by first reading (else creation)
    /// The run with its unit, meter and readings.
    Result<RunRecord> run_record(const RunId& run_uuid) const;
    /// `known`, a record as this logbook gave it, with one of its readings as it stands now, be it changed or new; so that a long run need not be
    /// read again for each reading. All but readings and trace is taken over as known. Errors: not_found (a reading of no run, or of another).
    Result<RunRecord> with_reading(RunRecord known, const ReadingId& reading_uuid) const;
    /// Every run of every unit (or of one), in the order of runs().
    Result<std::vector<RunRecord>> run_records(const UnitId& unit_uuid = {}) const;

    // Readings. Each call is one durable transaction.
    /// Adds a reading and ties these waiting photos of the run to it. Errors beside bad_input: not_found; refused when a
    /// photo is another run's, withdrawn or tied already.
    Result<Reading> record(const RunId& run_uuid, const ReadingValues& values, const std::vector<PhotoId>& photo_uuids = {});
    /// Adds a version; the reason may be empty. Errors: not_found; refused when nothing changes.
    Result<Reading> amend(const ReadingId& reading_uuid, const ReadingValues& values, const std::string& reason);
    Result<Reading> set_withdrawn(const ReadingId& reading_uuid, bool withdrawn, const std::string& reason);
    Result<std::vector<Reading>> readings(const RunId& run_uuid) const;
    Result<std::vector<ReadingVersion>> history(const ReadingId& reading_uuid) const;

    // Photos (core/model/photo.h states the limits). They stay with their reading when that is withdrawn.
    /// Keeps a photo of a run: of one of its readings, withdrawn or not, or waiting for one when `reading_uuid` is empty.
    /// Errors: bad_input (no JPEG or PNG by its content, damaged, too large), not_found, refused (another run's reading;
    /// the logbook's photos would exceed photos_limit_bytes together).
    Result<Photo> add_photo(const RunId& run_uuid, const ReadingId& reading_uuid, const NewPhoto& photo);
    /// All photos of a run, withdrawn ones too, in order of adding; their bytes are not read.
    Result<std::vector<Photo>> photos(const RunId& run_uuid) const;
    Result<std::string> photo_bytes(const PhotoId& photo_uuid) const; ///< the file as it came in
    /// Adds a version. Refused when nothing changes.
    Result<Photo> set_photo_withdrawn(const PhotoId& photo_uuid, bool withdrawn);

    // Traces. Append-only too: one may grow at its end, and can be withdrawn and restored. The traces of one meter do not overlap
    // within a run, nor do those that tell the gauge.
    /// Adds a trace as `source` produces its samples, in one transaction: when anything fails or the source gives up, nothing stays. Memory does
    /// not grow with the number of samples. How the log was read is kept with it for logs of the same header. `source` must not use the logbook.
    /// Errors beside the source's: not_found (run, meter), bad_input (no sample, not in order of time), refused (the run has this file already, a
    /// trace of another meter, or one that overlaps).
    Result<Trace> add_trace(Trace trace, const TraceSource& source);
    /// Adds to the end of a trace what its log has gained, in one transaction. `known` is the trace as last returned. Errors: not_found, bad_input
    /// (not in order of time, or not after the samples it has), refused (withdrawn or grown meanwhile, or it would reach another trace of the run).
    Result<Trace> extend_trace(const Trace& known, const TraceGrowth& growth);
    /// The traces of a run, or of every run, withdrawn ones too, in order of their first sample.
    Result<std::vector<Trace>> traces(const RunId& run_uuid = {}) const;
    Result<void> set_trace_withdrawn(const TraceId& trace_uuid, bool withdrawn);
    /// Streams the samples from `from_ms` to `to_ms`, both included. `visit` must not use the logbook.
    Result<void> read_samples(const TraceId& trace_uuid, UtcMs from_ms, UtcMs to_ms, const SampleVisitor& visit) const;
    /// How logs with each header (Trace::signature) were read last: Trace::layout, a text owned by core/trace.
    Result<std::map<std::string, std::string>> trace_answers() const;

    /// Brings a whole record in as new, in one transaction: unit and meter are matched by name (and maker)
    /// and used as they stand when they agree, added when new; where a known unit or meter of that name
    /// differs in a claim, the call is refused with the first difference named. A claim that the record
    /// leaves unstated agrees (a correction of 1 counts as unstated); one that only the record states does
    /// not. The result carries the uuids given.
    Result<RunRecord> import(const RunRecord& record);
    /// The same, without a copy of the readings in memory.
    Result<ImportedRun> import_run(const RunRecord& record);
    /// Several, in this order, in one transaction: all of them or none.
    Result<std::vector<ImportedRun>> import_together(std::span<const RunRecord> records);
    /// The number of a run that has the same readings already, so that a second import can be left out: of a unit of that name and maker, of the
    /// same kind, withdrawn readings left out. Absent: there is none, or the record has no readings. What a series of imports asks is read once,
    /// until another call changes the logbook.
    Result<std::optional<int>> number_of(const RunRecord& record) const;

    /// The changes that `work` asks of this logbook as one: all of them, or none where it or any of them fails. Nothing of them stands in the file
    /// before it returns. Not within itself.
    Result<void> all_or_none(const std::function<Result<void>()>& work);

    // What joins two logbooks (core/joining).
    /// All records, withdrawn ones too.
    Result<WholeContent> whole_content() const;
    /// Takes records over from another logbook as they stand there, with their identifiers, versions and times, in one transaction. `goes_on` is
    /// asked before each photo and trace with the share of these that is done. Errors: not_found (a record that is not there, or the owner of one
    /// that is not here); refused (one is here already; the photos would exceed photos_limit_bytes together; `goes_on` said no).
    Result<void> take_over(const Logbook& other, const RecordSelection& what, const std::function<bool(double share)>& goes_on = {});
    /// As set_meter_withdrawn(), where the runs that name the meter are withdrawn with it: only other runs keep it.
    Result<void> set_meter_withdrawn_with_runs(const MeterId& uuid, bool withdrawn);

    // Half-typed entry of a run, kept so that an interruption loses nothing; free text owned by the front
    // end.
    Result<void> keep_draft(const RunId& run_uuid, const std::string& draft);
    Result<std::string> draft(const RunId& run_uuid) const; ///< empty when there is none

    /// Takes what is recorded, and durable in the write-ahead log beside the file, into the file itself, so that a copy of the file alone has it.
    /// Readings and all that is entered by hand go there before their call returns; half-typed entries, imports and growing logs when they are three
    /// seconds old and another change comes. Call this every second for the rest. True when all is in the file; false while another program reads
    /// the file, which must not find half a change. Error (disk_full, io): all of it stays safe in the write-ahead log.
    Result<bool> settle();
    /// False while something recorded is only in the write-ahead log.
    [[nodiscard]] bool settled() const;
    /// Why the file at the path is no longer the one that was opened, or as it was left by this program; nothing while all is well. Two questions to
    /// the system, so it may be asked every second.
    [[nodiscard]] std::optional<Error> displaced() const;
    /// How the file was checked when it was opened.
    [[nodiscard]] const OpeningCheck& opening_check() const;

    /// A complete copy under another name, also of a file that was removed, renamed or replaced while open, and of what is still known of one that
    /// was cut short. Errors: refused when the target exists, io, disk_full; damaged when not all of the content can be read any more.
    Result<void> save_copy(const std::filesystem::path& target) const;

private:
    struct Impl;
    explicit Logbook(std::unique_ptr<Impl> impl);
    std::unique_ptr<Impl> impl_;
};

} // namespace ullage
