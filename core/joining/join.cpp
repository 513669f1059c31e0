// SPDX-License-Identifier: GPL-3.0-or-later
#include "joining/join.h"

#include "base/ids.h"
#include "formats/text/sheet_keys.h"
#include "joining/inside/comparing.h"
#include "model/history_reason.h"
#include "model/trace_overlap.h"

#include <fmt/format.h>

#include <algorithm>
#include <ranges>
#include <utility>

namespace ullage {

namespace {

using joining::Contents;

/// One joining, within its transaction.
class Joining {
public:
    Joining(Logbook& here, const Logbook& there, const joining::Comparison& compared, const std::set<std::string>& taken_keys,
            const std::function<bool(double)>& goes_on)
        : here_(here), there_(there), h_(*compared.here), t_(*compared.there), plan_(compared.plan), taken_(taken_keys), goes_on_(goes_on),
          reason_(kept_reason(HistoryReason::joined, there.path().filename().string())) {}

    Result<void> all() {
        for (const JoinArrival& arrival : plan_.arrivals) choose(arrival);
        for (const JoinDifference& difference : plan_.differences) {
            const bool taken = taken_.contains(difference.key()) && is_met(difference.needs);
            ++(taken ? joined_.taken : joined_.kept);
            if (taken && !names_others(difference.kind))
                if (auto done = take(difference); !done) return done;
        }
        for (const MeterId& uuid : needed_meters_)
            if (auto done = bring_back(uuid); !done) return done;
        if (auto done = here_.take_over(there_, what_, goes_on_); !done) return done;
        note_arrivals();
        for (const JoinDifference& difference : plan_.differences)
            if (names_others(difference.kind) && taken_.contains(difference.key()) && is_met(difference.needs))
                if (auto done = take(difference); !done) return done;
        return rename_lists();
    }

    Joined result() { return std::move(joined_); }

private:
    using Change = std::function<Result<void>(Logbook&)>;

    /// Makes a change and keeps it with what reverts it.
    Result<void> change(Change redo, Change undo) {
        if (auto done = redo(here_); !done) return done;
        joined_.steps.push_back({std::move(redo), std::move(undo)});
        return {};
    }
    /// What came in already, and is withdrawn and restored.
    template <class Id>
    void came(Result<void> (Logbook::*set)(const Id&, bool), const Id& uuid) {
        joined_.steps.push_back(
            {[set, uuid](Logbook& book) { return (book.*set)(uuid, false); }, [set, uuid](Logbook& book) { return (book.*set)(uuid, true); }});
    }

    /// What may name a record that comes in is taken after it.
    static bool names_others(JoinedKind kind) {
        return kind == JoinedKind::run || kind == JoinedKind::photo || kind == JoinedKind::log || kind == JoinedKind::pv_sheet;
    }

    [[nodiscard]] bool is_met(const std::set<std::string>& needs) const { return std::ranges::includes(taken_, needs); }

    void choose(const JoinArrival& arrival) {
        if (!is_met(arrival.needs)) {
            ++joined_.left_out;
            return;
        }
        switch (arrival.kind) {
        case JoinedKind::unit: what_.units.emplace_back(arrival.uuid); break;
        case JoinedKind::meter: what_.meters.emplace_back(arrival.uuid); break;
        case JoinedKind::run: choose_run(arrival); break;
        case JoinedKind::load_list:
            what_.load_lists.emplace_back(arrival.uuid);
            if (!arrival.name.empty()) renamed_.emplace_back(LoadListId(arrival.uuid), arrival.name);
            break;
        case JoinedKind::pv_sheet: what_.pv_sheets.emplace_back(arrival.uuid); break;
        case JoinedKind::reading:
        case JoinedKind::photo:
        case JoinedKind::log: break; // they come with their run
        }
    }

    void choose_run(const JoinArrival& arrival) {
        joined_.readings += arrival.readings;
        joined_.photos += arrival.photos;
        joined_.logs += arrival.logs;
        const KeptRun& run = *t_.runs.at(RunId(arrival.uuid));
        if (!arrival.known) {
            what_.runs.push_back(run.run.uuid);
            ++joined_.runs;
            need(run.run.meter_uuid);
            need(run.run.second_meter_uuid);
            for (const Trace& trace : run.traces) need(trace.meter_uuid);
            return;
        }
        joined_.changed_runs.insert(run.run.uuid);
        what_.readings.insert(what_.readings.end(), arrival.reading_uuids.begin(), arrival.reading_uuids.end());
        what_.photos.insert(what_.photos.end(), arrival.photo_uuids.begin(), arrival.photo_uuids.end());
        for (const TraceId& uuid : arrival.trace_uuids) {
            what_.traces.emplace_back(uuid, TraceId());
            need(std::ranges::find(run.traces, uuid, &Trace::uuid)->meter_uuid);
        }
    }

    void need(const std::optional<MeterId>& meter) {
        if (meter) needed_meters_.insert(*meter);
    }

    /// A meter that was withdrawn here and that runs name.
    Result<void> bring_back(const MeterId& uuid) {
        const auto known = h_.meters.find(uuid);
        if (known == h_.meters.end() || !known->second->withdrawn || taken_.contains(key_of(JoinedKind::meter, uuid.text()))) return {};
        return change([uuid](Logbook& book) { return book.set_meter_withdrawn(uuid, false); },
                      [uuid](Logbook& book) { return book.set_meter_withdrawn_with_runs(uuid, true); });
    }

    static std::string key_of(JoinedKind kind, const std::string& uuid) { return JoinDifference{kind, JoinMatter::differs, uuid, {}}.key(); }

    /// What take_over() has brought can be taken back: what stands in nothing else first.
    void note_arrivals() {
        joined_.units = what_.units.size();
        joined_.meters = what_.meters.size();
        joined_.load_lists = what_.load_lists.size();
        joined_.pv_sheets = what_.pv_sheets.size();
        for (const MeterId& uuid : what_.meters) came(&Logbook::set_meter_withdrawn_with_runs, uuid);
        for (const UnitId& uuid : what_.units) came(&Logbook::set_unit_withdrawn, uuid);
        for (const RunId& uuid : what_.runs) came(&Logbook::set_run_withdrawn, uuid);
        for (const LoadListId& uuid : what_.load_lists) came(&Logbook::set_load_list_withdrawn, uuid);
        for (const PvSheetId& uuid : what_.pv_sheets) came(&Logbook::set_pv_sheet_withdrawn, uuid);
        auto known_runs = t_.whole.runs | std::views::filter([&](const KeptRun& run) { return h_.runs.contains(run.run.uuid); });
        const std::set<ReadingId> readings(what_.readings.begin(), what_.readings.end());
        const std::set<PhotoId> photos(what_.photos.begin(), what_.photos.end());
        for (const KeptRun& run : known_runs) {
            for (const Reading& reading : run.readings)
                if (!reading.withdrawn && readings.contains(reading.uuid)) reading_came(reading.uuid);
            for (const Photo& photo : run.photos)
                if (!photo.withdrawn && photos.contains(photo.uuid)) photo_came(photo.uuid);
        }
        for (const auto& [uuid, renamed] : what_.traces) came(&Logbook::set_trace_withdrawn, uuid);
    }

    void reading_came(const ReadingId& uuid) {
        const auto set = [uuid](bool withdrawn) -> Change {
            return [uuid, withdrawn](Logbook& book) -> Result<void> {
                const auto done = book.set_withdrawn(uuid, withdrawn, kept_reason(withdrawn ? HistoryReason::undone : HistoryReason::redone));
                return done ? Result<void>() : done.error();
            };
        };
        joined_.steps.push_back({set(false), set(true)});
    }
    void photo_came(const PhotoId& uuid) { joined_.steps.push_back({photo_set(uuid, false), photo_set(uuid, true)}); }
    static Change photo_set(const PhotoId& uuid, bool withdrawn) {
        return [uuid, withdrawn](Logbook& book) -> Result<void> {
            const auto done = book.set_photo_withdrawn(uuid, withdrawn);
            return done ? Result<void>() : done.error();
        };
    }

    Result<void> take(const JoinDifference& difference) {
        if (!difference.run_uuid.empty()) joined_.changed_runs.insert(difference.run_uuid);
        switch (difference.kind) {
        case JoinedKind::unit: return take_unit(difference);
        case JoinedKind::meter: return take_meter(difference);
        case JoinedKind::run: return take_run(difference);
        case JoinedKind::reading: return take_reading(difference);
        case JoinedKind::photo: return take_photo(difference);
        case JoinedKind::log: return take_log(difference);
        case JoinedKind::load_list: return take_load_list(difference);
        case JoinedKind::pv_sheet: return take_pv_sheet(difference);
        }
        return {};
    }

    /// Deletes, or brings back as it stands there, a record that is withdrawn in one of the logbooks.
    template <class Id>
    Result<void> take_deletion(Result<void> (Logbook::*set)(const Id&, bool), const Id& uuid, JoinMatter matter) {
        if (matter != JoinMatter::withdrawn_here && matter != JoinMatter::withdrawn_there) return {};
        const bool withdrawn = matter == JoinMatter::withdrawn_there;
        return change([set, uuid, withdrawn](Logbook& book) { return (book.*set)(uuid, withdrawn); },
                      [set, uuid, withdrawn](Logbook& book) { return (book.*set)(uuid, !withdrawn); });
    }
    /// Puts the other's record in the place of the one here.
    template <class Thing>
    Result<void> replace(const Thing& before, const Thing& after) {
        if (before == after) return {};
        return change([after](Logbook& book) { return book.update(after); }, [before](Logbook& book) { return book.update(before); });
    }

    Result<void> take_unit(const JoinDifference& difference) {
        const UnitId uuid(difference.uuid);
        if (difference.matter != JoinMatter::withdrawn_there)
            if (auto done = replace(h_.units.at(uuid)->record, t_.units.at(uuid)->record); !done) return done;
        return take_deletion(&Logbook::set_unit_withdrawn, uuid, difference.matter);
    }

    Result<void> take_meter(const JoinDifference& difference) {
        const MeterId uuid(difference.uuid);
        const Meter before = h_.meters.at(uuid)->versions.back().meter, after = t_.meters.at(uuid)->versions.back().meter;
        if (difference.matter != JoinMatter::withdrawn_there && before != after) {
            if (auto done = take_versions(difference, &RecordSelection::continued_meters, uuid); !done) return done;
            const auto set = [](const Meter& meter, const std::string& reason) -> Change {
                return [meter, reason](Logbook& book) { return book.update(meter, reason); };
            };
            if (auto done = change(set(after, reason_), set(before, kept_reason(HistoryReason::undone))); !done)
                return done; // nothing is added where nothing changes
        }
        return take_deletion(&Logbook::set_meter_withdrawn_with_runs, uuid, difference.matter);
    }

    /// Of a record that was changed there alone: its versions there, with their times and reasons.
    template <class Id>
    Result<void> take_versions(const JoinDifference& difference, std::vector<Id> RecordSelection::*of, const Id& uuid) {
        if (!difference.changed_there_only) return {};
        RecordSelection versions;
        (versions.*of).push_back(uuid);
        return here_.take_over(there_, versions);
    }

    Result<void> take_run(const JoinDifference& difference) {
        if (difference.matter == JoinMatter::same_readings) return {}; // it came in as a further run
        const RunId uuid(difference.uuid);
        if (difference.matter != JoinMatter::withdrawn_there) {
            const Run& before = h_.runs.at(uuid)->run;
            Run after = t_.runs.at(uuid)->run;
            after.created_ms = before.created_ms;
            // A unit that is withdrawn, or not here, would hide the run.
            if (!stands(after.unit_uuid)) after.unit_uuid = before.unit_uuid;
            for (const auto& meter : {after.meter_uuid, after.second_meter_uuid})
                if (meter)
                    if (auto done = bring_back(*meter); !done) return done;
            if (auto done = replace(before, after); !done) return done;
        }
        return take_deletion(&Logbook::set_run_withdrawn, uuid, difference.matter);
    }

    /// Whether the unit is in the list of units by now.
    [[nodiscard]] bool stands(const UnitId& uuid) const {
        const auto units = here_.units();
        return units && std::ranges::find(units.value(), uuid, &Unit::uuid) != units.value().end();
    }

    Result<void> take_reading(const JoinDifference& difference) {
        const ReadingId uuid(difference.uuid);
        const auto here = here_.history(uuid), there = there_.history(uuid);
        if (!here || !there) return here ? there.error() : here.error();
        const ReadingVersion before = here.value().back(), after = there.value().back();
        if (auto done = take_versions(difference, &RecordSelection::continued_readings, uuid); !done) return done;
        return change([uuid, after, reason = reason_](Logbook& book) { return set_reading(book, uuid, after, reason); },
                      [uuid, before](Logbook& book) { return set_reading(book, uuid, before, kept_reason(HistoryReason::undone)); });
    }

    /// Adds the versions that make the reading say this; none where it does.
    static Result<void> set_reading(Logbook& book, const ReadingId& uuid, const ReadingVersion& wanted, const std::string& reason) {
        const auto history = book.history(uuid);
        if (!history) return history.error();
        const ReadingVersion& present = history.value().back();
        if (present.values != wanted.values)
            if (const auto done = book.amend(uuid, wanted.values, reason); !done) return done.error();
        if (present.withdrawn != wanted.withdrawn)
            if (const auto done = book.set_withdrawn(uuid, wanted.withdrawn, reason); !done) return done.error();
        return {};
    }

    Result<void> take_photo(const JoinDifference& difference) {
        const PhotoId uuid(difference.uuid);
        if (auto done = take_versions(difference, &RecordSelection::continued_photos, uuid); !done) return done;
        if (difference.matter == JoinMatter::differs) return {}; // tied to its reading, and a photo stays with that
        const bool withdrawn = difference.matter == JoinMatter::withdrawn_there;
        if (difference.changed_there_only) {
            joined_.steps.push_back({photo_set(uuid, withdrawn), photo_set(uuid, !withdrawn)});
            return {};
        }
        return change(photo_set(uuid, withdrawn), photo_set(uuid, !withdrawn));
    }

    Result<void> take_log(const JoinDifference& difference) {
        const TraceId uuid(difference.uuid);
        if (difference.matter == JoinMatter::withdrawn_here || difference.matter == JoinMatter::withdrawn_there)
            return take_deletion(&Logbook::set_trace_withdrawn, uuid, difference.matter);
        const KeptRun &own = *h_.runs.at(difference.run_uuid), &run = *t_.runs.at(difference.run_uuid);
        const Trace& trace = *std::ranges::find(run.traces, uuid, &Trace::uuid);
        if (trace.meter_uuid)
            if (auto done = bring_back(*trace.meter_uuid); !done) return done;
        bool known = false;
        for (const Trace& other : own.traces) {
            known = known || other.uuid == uuid;
            if (other.withdrawn || trace_overlap(trace, other, own.run.meter_uuid) == TraceOverlap::none) continue;
            if (auto done = take_deletion(&Logbook::set_trace_withdrawn, other.uuid, JoinMatter::withdrawn_there); !done) return done;
        }
        // A log that has grown there is a log of its own here: what is in the logbook never changes.
        RecordSelection log;
        log.traces.emplace_back(uuid, known ? TraceId(new_uuid()) : TraceId());
        if (auto done = here_.take_over(there_, log); !done) return done;
        came(&Logbook::set_trace_withdrawn, known ? log.traces.front().second : uuid);
        return {};
    }

    Result<void> take_load_list(const JoinDifference& difference) {
        const LoadListId uuid(difference.uuid);
        if (difference.matter != JoinMatter::withdrawn_there) {
            LoadList after = t_.load_lists.at(uuid)->record;
            after.name = free_name(after);
            if (auto done = replace(h_.load_lists.at(uuid)->record, after); !done) return done;
        }
        return take_deletion(&Logbook::set_load_list_withdrawn, uuid, difference.matter);
    }

    /// The list's name, with a number where another list that is listed by now has it.
    [[nodiscard]] std::string free_name(const LoadList& list) const {
        const auto listed = here_.load_lists();
        const auto is_taken = [&](const std::string& name) {
            return listed && std::ranges::any_of(listed.value(), [&](const LoadList& other) {
                       return other.uuid != list.uuid && lower_case(other.name) == lower_case(name);
                   });
        };
        std::string name = list.name;
        for (int number = 2; is_taken(name); ++number) name = fmt::format("{} ({})", list.name, number);
        return name;
    }

    Result<void> rename_lists() {
        for (const auto& [uuid, name] : renamed_) {
            LoadList list = t_.load_lists.at(uuid)->record;
            list.name = name;
            list.name = free_name(list);
            if (auto done = here_.update(list); !done) return done;
        }
        return {};
    }

    Result<void> take_pv_sheet(const JoinDifference& difference) {
        const PvSheetId uuid(difference.uuid);
        if (difference.matter != JoinMatter::withdrawn_there) {
            const PvSheet& before = h_.pv_sheets.at(uuid)->record;
            PvSheet after = t_.pv_sheets.at(uuid)->record;
            if (!after.unit_uuid.empty() && !stands(after.unit_uuid)) after.unit_uuid = before.unit_uuid;
            if (auto done = replace(before, after); !done) return done;
        }
        return take_deletion(&Logbook::set_pv_sheet_withdrawn, uuid, difference.matter);
    }

    Logbook& here_;
    const Logbook& there_;
    const Contents& h_;
    const Contents& t_;
    const JoinPlan& plan_;
    const std::set<std::string>& taken_;
    const std::function<bool(double)>& goes_on_;
    std::string reason_;
    RecordSelection what_;
    std::set<MeterId> needed_meters_;
    std::vector<std::pair<LoadListId, std::string>> renamed_;
    Joined joined_;
};

} // namespace

Result<Joined> join(Logbook& here, const Logbook& there, const std::set<std::string>& taken_keys, const std::function<bool(double share)>& goes_on) {
    const Result<joining::Comparison> compared = joining::compare(here, there);
    if (!compared) return compared.error();
    Joining joining(here, there, compared.value(), taken_keys, goes_on);
    if (auto done = here.all_or_none([&] { return joining.all(); }); !done) return done.error();
    Joined joined = joining.result();
    joined.notices = compared.value().plan.notices;
    return joined;
}

} // namespace ullage
