// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "casebook/casebook.h"
#include "document/logbook_content.h"
#include "foreign_tables/table_log.h"
#include "formats/folder/logbook_folder.h"
#include "joining/join.h"
#include "live/live_trace.h"
#include "measure/load_statistics.h"
#include "store/logbook.h"
#include "trace/log_follow.h"
#include "trace/trace_import.h"

#include <QObject>
#include <QString>
#include <QTimer>
#include <QUndoStack>

#include <atomic>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <vector>

namespace ullage {

/// The open logbook: content as it stands, change events, and undoable commands. The only part of the front end that
/// touches the store. Lives in the GUI thread.
///
/// A command that returns an error has changed nothing; the caller shows the error where it arose. Each successful
/// command is on the disk when it returns, stands on the undo stack, and is followed by the events that name what changed.
/// Undo and redo are commands to the store too (a withdrawn reading stays in its history); when one of them fails,
/// error() carries the words.
class Document : public QObject {
    Q_OBJECT
public:
    explicit Document(const Clock& clock, QObject* parent = nullptr);
    ~Document() override;

    Result<void> create(const QString& path); ///< makes and opens a new logbook, closing the one before
    Result<void> open(const QString& path);   ///< see open_logbook(); on failure the logbook before stays open
    /// Takes over what open_logbook() has opened and read, in another thread perhaps, closing the one before.
    void adopt(OpenedLogbook opened);
    /// The logbook is open for looking, since another program recorded into it when it was opened: commands are refused, nothing is written.
    [[nodiscard]] bool isLooking() const;
    /// How what is shown stands to the file, see Logbook::copy_age(); `present` where the logbook is not open for looking, or lent out.
    [[nodiscard]] CopyAge lookAge() const;
    /// Puts a newer look at the same file in place of the one that is open, and announces what differs. Precondition: isLooking(), !isImporting().
    void adoptLook(OpenedLogbook look);
    void close();
    [[nodiscard]] bool isOpen() const;
    [[nodiscard]] bool isOpenAt(const QString& path) const; ///< this file is the open one, whatever it is called, and not displaced
    [[nodiscard]] QString path() const;
    /// Works at a task, in another thread perhaps, and returns when it has ended.
    using DoBeside = std::function<void(const std::function<void()>& work)>;
    /// Writes all that the open logbook holds to a file of its own, by `beside`; until it has ended nobody else reaches the logbook.
    Result<void> saveCopy(
        const QString& target, const DoBeside& beside = [](const std::function<void()>& work) { work(); });
    /// See Logbook::displaced(): while it says why, nothing can be recorded, and saveCopy() saves what is open.
    [[nodiscard]] std::optional<Error> displaced() const;
    /// How the open logbook was checked. Precondition: isOpen().
    [[nodiscard]] const OpeningCheck& openingCheck() const;

    [[nodiscard]] const Clock& clock() const;
    [[nodiscard]] QUndoStack& undoStack();

    // Content, without withdrawn units, meters and runs.
    [[nodiscard]] const std::vector<Unit>& units() const;
    [[nodiscard]] const std::vector<Meter>& meters() const;
    [[nodiscard]] const std::vector<PvSheet>& pvSheets() const;
    [[nodiscard]] const PvSheet* pvSheet(const PvSheetId& uuid) const;
    /// Runs of a unit (all units when empty), in order of unit name and time, each with its readings.
    [[nodiscard]] std::vector<const RunRecord*> runs(const UnitId& unit_uuid = {}) const;
    /// All of them, to be kept: what another thread works on stays as it is when the logbook changes; an unchanged run is the same object.
    [[nodiscard]] const std::vector<std::shared_ptr<const RunRecord>>& sharedRuns() const;
    [[nodiscard]] const RunRecord* run(const RunId& run_uuid) const; ///< null when there is none
    [[nodiscard]] std::shared_ptr<const RunRecord> sharedRun(const RunId& run_uuid) const;
    [[nodiscard]] const Unit* unit(const UnitId& uuid) const;
    [[nodiscard]] const Meter* meter(const MeterId& uuid) const;
    [[nodiscard]] const std::vector<LoadList>& loadLists() const; ///< in order of name
    /// The figures that the logbook states of the method, by key (measure/method_settings.h).
    [[nodiscard]] const std::map<std::string, double>& method() const;
    /// States these in place of those before; what is not named goes by the program's own again. Errors: a figure out of range; those of the store.
    Result<void> setMethod(const std::map<std::string, double>& stated);
    /// Who publishes what the logbook says; empty where nothing is stated.
    [[nodiscard]] const Publisher& publisher() const;
    /// Errors: a text that is too long; those of the store.
    Result<void> setPublisher(const Publisher& publisher);
    /// Columns that the logbook keeps, by the name of their set (Logbook::column_sets); none while it is lent out.
    [[nodiscard]] std::map<std::string, std::string> columnSets() const;
    /// Keeps a set in place of one of that name, or leaves it out where `keys` is empty. What is looked at, not what was tested: no undo.
    Result<void> setColumnSet(const std::string& name, const std::string& keys);
    [[nodiscard]] const LoadList* loadList(const LoadListId& uuid) const;
    /// What all runs say, for whoever asks more than the window's thread may wait for; any thread, as long as the document lives.
    [[nodiscard]] const Casebook& casebook() const;
    /// Analysis of a run, a projection through an earlier run's gauge curve where there is one; computed once after each
    /// change. Precondition: run(run_uuid) is not null.
    [[nodiscard]] const RunAnalysis& analysis(const RunId& run_uuid) const;
    /// What all runs of a unit say together, computed once after each change of anything. Valid until the next change; a unit
    /// without runs, or an unknown one, has a fit without drains.
    [[nodiscard]] const UnitFit& unitFit(const UnitId& unit_uuid) const;
    /// Forecast of a run as of `now_ms` from its analysis and its unit's fit, kept until the next change or another minute. Precondition: as
    /// analysis(). Valid until the next call for the run.
    [[nodiscard]] const RunForecast& forecast(const RunId& run_uuid, UtcMs now_ms) const;
    /// A running or stopped drain told twice (Casebook::accounts).
    [[nodiscard]] const TwoAccounts& accounts(const RunId& run_uuid) const;
    /// How many readings unitFit() of these units, and with `with_runs` analysis() of their runs, would have to go through.
    [[nodiscard]] std::size_t readingsToAnalyse(const std::vector<UnitId>& unit_uuids, bool with_runs) const;
    static constexpr std::size_t most_analysed_at_once = 2000; ///< readings for which the window may wait
    /// Computes these by `beside`, so that they are there when they are asked for. `goes_on` is asked before each unit, with how many are done. What
    /// changed meanwhile is computed when it is asked for.
    void analyseBeside(const std::vector<UnitId>& unit_uuids, bool with_runs, const DoBeside& beside,
                       const std::function<bool(std::size_t)>& goes_on);
    /// How prepareAnswers() works: beside the window, say; in this thread unless it is set.
    void setBeside(DoBeside beside) { beside_ = std::move(beside); }
    /// Works out what the answers of all units rest on (Casebook::options) where that takes longer than the window may wait. Done before a change of
    /// the method, of the data of a meter or of runs is announced, as whoever hears of it asks.
    void prepareAnswers();
    Result<std::vector<ReadingVersion>> history(const ReadingId& reading_uuid) const;

    // Undoable commands.
    Result<Unit> addUnit(Unit unit);
    Result<void> updateUnit(const Unit& unit);
    Result<void> withdrawUnit(const UnitId& uuid);
    Result<Meter> addMeter(Meter meter);
    Result<void> updateMeter(const Meter& meter, const std::string& reason = {});
    Result<std::vector<MeterVersion>> meterHistory(const MeterId& uuid) const; ///< see Logbook::meter_history()
    Result<void> withdrawMeter(const MeterId& uuid);
    Result<PvSheet> addPvSheet(PvSheet sheet);
    Result<void> updatePvSheet(const PvSheet& sheet);
    Result<void> withdrawPvSheet(const PvSheetId& uuid);
    Result<LoadList> addLoadList(LoadList list);
    Result<void> updateLoadList(const LoadList& list); ///< also its appliances
    Result<void> withdrawLoadList(const LoadListId& uuid);
    Result<Run> addRun(Run run);
    /// Starts a run as one step: adds it, notes its first reading if there is one, and corrects the step of the unit's gauge (percentage
    /// points) where it is given. When a part is refused none of it stays in sight. Undoing withdraws the run and restores the step.
    Result<Run> startRun(Run run, const std::optional<ReadingValues>& first, std::optional<double> gauge_step_percent);
    Result<void> updateRun(const Run& run);
    /// Ends a run as one step: notes what was read at its end, if anything was, with these waiting photos, and states how it ended. When a part is
    /// refused none of it stays in sight. Undoing withdraws the reading and lets the run go on.
    Result<void> endRun(const Run& run, const std::optional<ReadingValues>& last, const std::vector<PhotoId>& photo_uuids = {});
    Result<void> withdrawRun(const RunId& uuid);
    /// Records a reading and ties these waiting photos of the run to it; undone, the reading is withdrawn and keeps them.
    Result<Reading> record(const RunId& run_uuid, const ReadingValues& values, const std::vector<PhotoId>& photo_uuids = {});
    /// Records several, in this order, as one step; the photos are tied to the last. When one is refused none stays in sight. Precondition: one at
    /// least.
    Result<Reading> recordTogether(const RunId& run_uuid, const std::vector<ReadingValues>& values, const std::vector<PhotoId>& photo_uuids = {});
    Result<Reading> amend(const ReadingId& reading_uuid, const ReadingValues& values, const QString& reason);
    Result<void> withdrawReading(const ReadingId& reading_uuid, const QString& reason);
    /// Imports a run sheet's record; undoing withdraws the run.
    Result<RunRecord> import(const RunRecord& record);
    /// As import() for many, each with an undo step of its own. The work is given to `beside`, which may do it in another thread and returns when it
    /// has ended; until then nobody else reaches the logbook, and commands to it are refused. `goes_on` is asked there before each record; when
    /// it says no, the records before stay. An outcome for each record that was taken up.
    std::vector<Result<ImportedRun>> importAll(const std::vector<RunRecord>& records, const DoBeside& beside,
                                               const std::function<bool(std::size_t)>& goes_on);
    /// Imports the runs of the table `name`, all or none, as one step; undoing withdraws them all. `beside` as for importAll(). Precondition: one at
    /// least.
    Result<std::vector<ImportedRun>> importTogether(const std::vector<TableRun>& runs, const QString& name, const DoBeside& beside);

    /// Writes the open logbook into a new folder (formats/folder/logbook_folder.h), by `beside`.
    Result<FolderTally> exportFolder(const QString& target, const DoBeside& beside, const FolderProgress& goes_on);
    /// Brings such a folder in, all or nothing, as one step; undoing withdraws what came with it. `beside` as for importAll().
    Result<FolderTally> importFolder(const QString& folder, const DoBeside& beside, const FolderProgress& goes_on);

    /// Another logbook as it was read, and what joining it with the open one comes to.
    struct JoinProposal {
        std::shared_ptr<const Logbook> other;
        JoinPlan plan;
    };
    /// As DoBeside; the task heeds what may be set meanwhile to have it end soon.
    using DoCancellable = std::function<void(const std::function<void(const std::atomic<bool>* cancelled)>& work)>;
    /// Opens the logbook at `path` for looking and compares it with the open one, by `beside`. Errors: those of Logbook::open and plan_join();
    /// refused where it is the open one, or the task was cancelled.
    Result<JoinProposal> proposeJoin(const QString& path, const DoCancellable& beside);
    /// Joins it with the open one, all or nothing, as one step (joining/join.h). `beside` as for importAll().
    Result<Joined> join(const Logbook& other, const std::set<std::string>& taken_keys, const DoBeside& beside, const FolderProgress& goes_on = {});

    // Photos. Nothing of them is held here: lists and bytes are read from the file each time.
    /// Keeps a photo with a reading of the run, or waiting for the next one when `reading_uuid` is empty; the time that its
    /// camera wrote is read from it (see formats/entry/photo_time.h). Undoing withdraws it. Errors: as Logbook::add_photo.
    Result<Photo> addPhoto(const RunId& run_uuid, const ReadingId& reading_uuid, NewPhoto photo);
    Result<void> withdrawPhoto(const PhotoId& photo_uuid);
    /// The photos of a run that are not withdrawn, in order of adding. Errors: as Logbook::photos.
    Result<std::vector<Photo>> photos(const RunId& run_uuid) const;
    Result<std::string> photoBytes(const PhotoId& photo_uuid) const;

    // Logs of meters. Their samples are read from the file each time.
    /// Imports a log into a run, see import_trace(); undoing withdraws it. options.progress may let events through, as long as no other command
    /// to the document comes of them.
    Result<ImportedTrace> importTrace(const RunId& run_uuid, const std::optional<MeterId>& meter_uuid, const QString& path,
                                      const TraceDetection& detection, const TraceReadOptions& options);
    /// Work that lets events through, such as an import, is under way: nobody may change the logbook of his own accord, as who follows logs does.
    [[nodiscard]] bool isImporting() const;
    void setHeld(bool held);
    Result<void> withdrawTrace(const Trace& trace);
    /// The log of the run that this file continues, or is: see trace_continued_by().
    Result<std::optional<Trace>> traceContinuedBy(const RunId& run_uuid, const QString& path) const;
    /// What a followed log has gained goes into its run, see LogFollow; it cannot be undone apart from its log. Nothing is announced: that is for
    /// announceGrowth(), which may wait for more.
    Result<LogFollow> beginFollow(const Trace& trace, const QString& path, bool maybe_anew) const;
    Result<FollowLook> lookAtLog(LogFollow& follow);
    void announceGrowth(const RunId& run_uuid);
    // Meters that are read live.
    /// How meters are read, by uuid: source_from() understands each. None while the logbook is lent out.
    [[nodiscard]] std::map<MeterId, std::string> meterSources() const;
    /// Keeps it with the meter in place of the one before; empty: it is not read. A setting, so there is no undo.
    Result<void> setMeterSource(const MeterId& meter_uuid, const std::string& source);
    /// See LiveTrace. What is written cannot be undone apart from its log, and is announced by announceGrowth().
    Result<LiveTrace> beginLive(const RunId& run_uuid, const LiveSource& source) const;
    Result<void> writeLive(LiveTrace& live, std::span<const TraceSample> samples, long left_out);
    /// What the samples of a run propose, see proposed_events(); reads all of them.
    Result<std::vector<LiveEvent>> proposedEvents(const RunId& run_uuid) const;
    /// The logs of a run (of all when empty) that are not withdrawn, in order of their first sample. Errors: as Logbook::traces.
    Result<std::vector<Trace>> traces(const RunId& run_uuid) const;
    Result<void> readSamples(const TraceId& trace_uuid, UtcMs from_ms, UtcMs to_ms, const SampleVisitor& visit) const;
    /// What the logs of a run say of its load, see load_of_run(); two passes over all samples.
    Result<std::optional<LoadStatistics>> load(const RunId& run_uuid) const;
    Result<std::map<std::string, std::string>> traceAnswers() const; ///< as Logbook::trace_answers, for preview_trace()

    // Half-typed entries, not undoable.
    Result<void> keepDraft(const RunId& run_uuid, const QString& draft);
    [[nodiscard]] QString draft(const RunId& run_uuid) const;

signals:
    void opened();
    void closed();
    void leaving(); ///< the open logbook is about to be closed, or left for another: what waits can still be written
    void unitsChanged();
    void metersChanged();
    void pvSheetsChanged();
    void loadListsChanged();
    void runsChanged();                           ///< runs were added, withdrawn, renamed or ended
    void readingsChanged(const RunId& runUuid);   ///< readings of one run changed: redraw it
    void photosChanged(const RunId& runUuid);     ///< a photo of the run was added, tied to a reading, withdrawn or restored
    void stepDone(const QString& words);          ///< a command has just been done and can be undone: "Recorded 88 %, 2033 Wh"
    void saved(qint64 timeMs);                    ///< something has just reached the disk
    void looked(qint64 timeMs);                   ///< open for looking, a newer state is shown
    void error(const QString& sentence);          ///< an undo or redo could not be done, or what is recorded cannot reach the file itself
    void displacedFound(const QString& sentence); ///< the open file was removed, replaced or changed by others; said once

private:
    /// Takes what is recorded into the file itself, and sees whether the file is still the one that was opened.
    void tendFile();

    struct State;
    std::unique_ptr<State> state_;
    DoBeside beside_ = [](const std::function<void()>& work) { work(); };
    QUndoStack undo_stack_;
    QTimer tend_timer_;
};

} // namespace ullage
