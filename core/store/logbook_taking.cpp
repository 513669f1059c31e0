// SPDX-License-Identifier: GPL-3.0-or-later
// Records that are taken over from another logbook as they stand there.
#include "store/inside/logbook_impl.h"
#include "store/inside/row_copier.h"
#include "store/logbook.h"
#include "store/queries/load_list_queries.h"
#include "store/queries/meter_queries.h"
#include "store/queries/photo_queries.h"
#include "store/queries/pv_queries.h"
#include "store/queries/rows.h"
#include "store/queries/run_queries.h"
#include "store/queries/unit_queries.h"

#include <algorithm>
#include <map>
#include <string>
#include <string_view>
#include <utility>

namespace ullage {

namespace {

using RowId = std::int64_t;

/// What is said of a sort of record that is not there, or is there already.
struct KindPhrases {
    std::string_view kind;
    Phrase missing, known;
};
constexpr KindPhrases kind_phrases[] = {
    {"unit", phrase("store", "a unit to be taken over, or what it belongs to, is not there"), phrase("store", "the logbook has this unit already")},
    {"meter", phrase("store", "a meter to be taken over, or what it belongs to, is not there"),
     phrase("store", "the logbook has this meter already")},
    {"run", phrase("store", "a run to be taken over, or what it belongs to, is not there"), phrase("store", "the logbook has this run already")},
    {"reading", phrase("store", "a reading to be taken over, or what it belongs to, is not there"),
     phrase("store", "the logbook has this reading already")},
    {"photo", phrase("store", "a photo to be taken over, or what it belongs to, is not there"),
     phrase("store", "the logbook has this photo already")},
    {"log", phrase("store", "a log to be taken over, or what it belongs to, is not there"), phrase("store", "the logbook has this log already")},
    {"load list", phrase("store", "a load list to be taken over, or what it belongs to, is not there"),
     phrase("store", "the logbook has this load list already")},
    {"PV sheet", phrase("store", "a PV sheet to be taken over, or what it belongs to, is not there"),
     phrase("store", "the logbook has this PV sheet already")},
};

const KindPhrases& phrases_of(std::string_view kind) { return *std::ranges::find(kind_phrases, kind, &KindPhrases::kind); }

std::optional<RowId> row_of(SQLite::Database& database, const std::string& table, const std::string& uuid) {
    SQLite::Statement query(database, "SELECT id FROM " + table + " WHERE uuid = ?1");
    store::Binder(query).text(uuid);
    if (!query.executeStep()) return std::nullopt;
    return store::Row(query).integer();
}

/// One taking over, within its transaction.
class TakingOver {
public:
    TakingOver(SQLite::Database& from, SQLite::Database& to, const RecordSelection& what, const std::function<bool(double)>& goes_on,
               std::string where)
        : from_(from), to_(to), what_(what), goes_on_(goes_on), where_(std::move(where)), copier_(from, to) {}

    Result<void> all() {
        count_pieces();
        for (const UnitId& uuid : what_.units)
            if (auto done = whole("units", "unit", uuid.text()); !done) return done;
        for (const MeterId& uuid : what_.meters)
            if (auto done = meter(uuid); !done) return done;
        for (const RunId& uuid : what_.runs)
            if (auto done = run(uuid); !done) return done;
        for (const ReadingId& uuid : what_.readings)
            if (auto done = reading(uuid); !done) return done;
        for (const PhotoId& uuid : what_.photos)
            if (auto done = photo(uuid); !done) return done;
        for (const auto& [uuid, renamed] : what_.traces)
            if (auto done = trace(uuid, renamed); !done) return done;
        for (const LoadListId& uuid : what_.load_lists)
            if (auto done = load_list(uuid); !done) return done;
        for (const PvSheetId& uuid : what_.pv_sheets)
            if (auto done = pv_sheet(uuid); !done) return done;
        if (auto done = continued(); !done) return done;
        if (store::all_photos_bytes(to_) > photos_limit_bytes)
            return Error{
                Failure::refused,
                say(phrase("store", "the photos of both logbooks take more than %1 MB together"), say_number(photos_limit_bytes / 1'000'000)), where_,
                say(phrase("store", "a logbook holds no more; nothing was taken over"))};
        return {};
    }

private:
    [[nodiscard]] Error missing(const std::string& kind) const {
        return {Failure::not_found, say(phrases_of(kind).missing), where_, say(phrase("store", "compare the logbooks again"))};
    }
    [[nodiscard]] Error known(const std::string& kind) const {
        return {Failure::refused, say(phrases_of(kind).known), where_, say(phrase("store", "compare the logbooks again; nothing was taken over"))};
    }

    /// The row here of what the row there names; absent where it names none. Fails where that is not here.
    Result<std::optional<RowId>> owner(const std::string& table, const std::string& column, RowId row, const std::string& owners,
                                       const std::string& kind) {
        SQLite::Statement query(from_, "SELECT owners.uuid FROM " + table + " JOIN " + owners + " AS owners ON owners.id = " + table + "." + column +
                                           " WHERE " + table + ".id = ?1");
        store::Binder(query).integer(row);
        if (!query.executeStep()) return std::optional<RowId>();
        const auto here = row_of(to_, owners, store::Row(query).text());
        if (!here) return missing(kind);
        return here;
    }

    /// A record that owns nothing and is owned by nothing.
    Result<void> whole(const std::string& table, const std::string& kind, const std::string& uuid) {
        const auto there = row_of(from_, table, uuid);
        if (!there) return missing(kind);
        if (row_of(to_, table, uuid)) return known(kind);
        copier_.copy(table, "id = ?1", {*there}, "id", {});
        return {};
    }

    Result<void> meter(const MeterId& uuid) {
        if (auto done = whole("meters", "meter", uuid.text()); !done) return done;
        const RowId there = *row_of(from_, "meters", uuid.text()), here = *row_of(to_, "meters", uuid.text());
        meter_versions(there, here, 0);
        copier_.copy("meter_sources", "meter_id = ?1", {there}, "meter_id", {{"meter_id", here}});
        return {};
    }

    /// Those after `known`; a point comes with its version.
    void meter_versions(RowId there, RowId here, RowId known) {
        const RowId last = newest(from_, "meter_versions", "meter_id", there);
        for (RowId version = known + 1; version <= last; ++version) {
            copier_.copy("meter_versions", "meter_id = ?1 AND version = ?2", {there, version}, "version", {{"meter_id", here}});
            copier_.copy("meter_points", "meter_id = ?1 AND version = ?2", {there, version}, "place", {{"meter_id", here}});
        }
    }

    Result<void> run(const RunId& uuid) {
        const auto there = row_of(from_, "runs", uuid.text());
        if (!there) return missing("run");
        if (row_of(to_, "runs", uuid.text())) return known("run");
        auto unit = owner("runs", "unit_id", *there, "units", "run");
        if (!unit) return unit.error();
        auto first = owner("runs", "meter_id", *there, "meters", "run"), second = owner("runs", "second_meter_id", *there, "meters", "run");
        if (!first || !second) return first ? second.error() : first.error();
        RowId here = 0;
        copier_.copy("runs", "id = ?1", {*there}, "id", {{"unit_id", unit.value()}, {"meter_id", first.value()}, {"second_meter_id", second.value()}},
                     [&](RowId, RowId copied) { here = copied; });
        copier_.copy("run_extras", "run_id = ?1", {*there}, "position", {{"run_id", here}});
        std::map<RowId, RowId> readings;
        copier_.copy("readings", "run_id = ?1", {*there}, "sequence", {{"run_id", here}},
                     [&](RowId old, RowId copied) { readings.emplace(old, copied); });
        for (const auto& [old, copied] : readings) copier_.copy("reading_versions", "reading_id = ?1", {old}, "version", {{"reading_id", copied}});
        if (auto done = each_of("photos", *there, [&](const std::string& photo_uuid) { return photo(PhotoId(photo_uuid)); }); !done) return done;
        return each_of("traces", *there, [&](const std::string& trace_uuid) { return trace(TraceId(trace_uuid), {}); });
    }

    template <class Work>
    Result<void> each_of(const std::string& table, RowId run, const Work& work) {
        SQLite::Statement query(from_, "SELECT uuid FROM " + table + " WHERE run_id = ?1 ORDER BY id");
        store::Binder(query).integer(run);
        std::vector<std::string> uuids;
        while (query.executeStep()) uuids.push_back(store::Row(query).text());
        for (const std::string& uuid : uuids)
            if (auto done = work(uuid); !done) return done;
        return {};
    }

    Result<void> reading(const ReadingId& uuid) {
        const auto there = row_of(from_, "readings", uuid.text());
        if (!there) return missing("reading");
        if (row_of(to_, "readings", uuid.text())) return known("reading");
        auto run = owner("readings", "run_id", *there, "runs", "reading");
        if (!run) return run.error();
        SQLite::Statement add(to_, "INSERT INTO readings (uuid, run_id, sequence) VALUES (?1, ?2, "
                                   "(SELECT coalesce(max(sequence), 0) + 1 FROM readings WHERE run_id = ?2))");
        store::Binder(add).id(uuid).integer(run.value());
        add.exec();
        copier_.copy("reading_versions", "reading_id = ?1", {*there}, "version", {{"reading_id", to_.getLastInsertRowid()}});
        return {};
    }

    Result<void> photo(const PhotoId& uuid) {
        if (auto on = next_piece(); !on) return on;
        const auto there = row_of(from_, "photos", uuid.text());
        if (!there) return missing("photo");
        if (row_of(to_, "photos", uuid.text())) return known("photo");
        auto run = owner("photos", "run_id", *there, "runs", "photo");
        if (!run) return run.error();
        RowId here = 0;
        copier_.copy("photos", "id = ?1", {*there}, "id", {{"run_id", run.value()}}, [&](RowId, RowId copied) { here = copied; });
        copier_.copy("photo_bytes", "photo_id = ?1", {*there}, "photo_id", {{"photo_id", here}});
        return photo_versions(*there, here, 0);
    }

    Result<void> photo_versions(RowId there, RowId here, RowId known) {
        SQLite::Statement versions(from_, "SELECT version, readings.uuid FROM photo_versions LEFT JOIN readings ON readings.id = reading_id "
                                          "WHERE photo_id = ?1 AND version > ?2 ORDER BY version");
        store::Binder(versions).integer(there).integer(known);
        while (versions.executeStep()) {
            store::Row row(versions);
            const RowId version = row.integer();
            std::optional<RowId> reading;
            if (const auto named = row.maybe_id<ReadingId>()) {
                reading = row_of(to_, "readings", named->text());
                if (!reading) return missing("photo");
            }
            copier_.copy("photo_versions", "photo_id = ?1 AND version = ?2", {there, version}, "version",
                         {{"photo_id", here}, {"reading_id", reading}});
        }
        return {};
    }

    Result<void> trace(const TraceId& uuid, const TraceId& renamed) {
        if (auto on = next_piece(); !on) return on;
        const auto there = row_of(from_, "traces", uuid.text());
        if (!there) return missing("log");
        const TraceId& name = renamed.empty() ? uuid : renamed;
        if (row_of(to_, "traces", name.text())) return known("log");
        auto run = owner("traces", "run_id", *there, "runs", "log"), meter = owner("traces", "meter_id", *there, "meters", "log");
        if (!run || !meter) return run ? meter.error() : run.error();
        RowId here = 0;
        copier_.rename_next(name.text());
        copier_.copy("traces", "id = ?1", {*there}, "id", {{"run_id", run.value()}, {"meter_id", meter.value()}},
                     [&](RowId, RowId copied) { here = copied; });
        copier_.copy("trace_blocks", "trace_id = ?1", {*there}, "first_ms", {{"trace_id", here}});
        return {};
    }

    Result<void> load_list(const LoadListId& uuid) {
        if (auto done = whole("load_lists", "load list", uuid.text()); !done) return done;
        const RowId there = *row_of(from_, "load_lists", uuid.text()), here = *row_of(to_, "load_lists", uuid.text());
        copier_.copy("appliances", "list_id = ?1", {there}, "place", {{"list_id", here}});
        return {};
    }

    Result<void> pv_sheet(const PvSheetId& uuid) {
        const auto there = row_of(from_, "pv_sheets", uuid.text());
        if (!there) return missing("PV sheet");
        if (row_of(to_, "pv_sheets", uuid.text())) return known("PV sheet");
        const auto unit = owner("pv_sheets", "unit_id", *there, "units", "PV sheet");
        copier_.copy("pv_sheets", "id = ?1", {*there}, "id", {{"unit_id", unit ? unit.value() : std::nullopt}});
        return {};
    }

    /// The highest version of a record.
    static RowId newest(SQLite::Database& database, const std::string& table, const std::string& key, RowId row) {
        SQLite::Statement query(database, "SELECT max(version) FROM " + table + " WHERE " + key + " = ?1");
        store::Binder(query).integer(row);
        query.executeStep();
        return store::Row(query).integer();
    }

    Result<void> continued() {
        for (const ReadingId& uuid : what_.continued_readings) {
            const auto there = row_of(from_, "readings", uuid.text()), here = row_of(to_, "readings", uuid.text());
            if (!there || !here) return missing("reading");
            copier_.copy("reading_versions", "reading_id = ?1 AND version > ?2", {*there, newest(to_, "reading_versions", "reading_id", *here)},
                         "version", {{"reading_id", here}});
        }
        for (const MeterId& uuid : what_.continued_meters) {
            const auto there = row_of(from_, "meters", uuid.text()), here = row_of(to_, "meters", uuid.text());
            if (!there || !here) return missing("meter");
            meter_versions(*there, *here, newest(to_, "meter_versions", "meter_id", *here));
        }
        for (const PhotoId& uuid : what_.continued_photos) {
            const auto there = row_of(from_, "photos", uuid.text()), here = row_of(to_, "photos", uuid.text());
            if (!there || !here) return missing("photo");
            if (auto done = photo_versions(*there, *here, newest(to_, "photo_versions", "photo_id", *here)); !done) return done;
        }
        return {};
    }

    /// Photos and traces are what takes time.
    void count_pieces() {
        pieces_ = what_.photos.size() + what_.traces.size();
        for (const RunId& uuid : what_.runs)
            if (const auto run = row_of(from_, "runs", uuid.text()))
                for (const char* table : {"photos", "traces"}) {
                    SQLite::Statement query(from_, std::string("SELECT count(*) FROM ") + table + " WHERE run_id = ?1");
                    store::Binder(query).integer(*run);
                    query.executeStep();
                    pieces_ += static_cast<std::size_t>(store::Row(query).integer());
                }
    }
    Result<void> next_piece() {
        if (goes_on_ && !goes_on_(static_cast<double>(piece_) / static_cast<double>(pieces_)))
            return Error{Failure::refused, say(phrase("store", "stopped")), where_, say(phrase("store", "nothing was taken over"))};
        ++piece_;
        return {};
    }

    SQLite::Database& from_;
    SQLite::Database& to_;
    const RecordSelection& what_;
    const std::function<bool(double)>& goes_on_;
    std::string where_;
    store::RowCopier copier_;
    std::size_t pieces_ = 0, piece_ = 0;
};

} // namespace

Result<void> Logbook::take_over(const Logbook& other, const RecordSelection& what, const std::function<bool(double share)>& goes_on) {
    return impl_->change(
        [&]() -> Result<void> { return TakingOver(other.impl_->database(), impl_->database(), what, goes_on, other.impl_->path.string()).all(); });
}

Result<void> Logbook::set_meter_withdrawn_with_runs(const MeterId& uuid, bool withdrawn) {
    return impl_->change([&]() -> Result<void> {
        const auto id = store::meter_id(impl_->database(), uuid);
        if (!id) return impl_->not_found(phrase("store", "the logbook has no such meter"));
        SQLite::Statement named(impl_->database(), "SELECT count(*) FROM runs WHERE (meter_id = ?1 OR second_meter_id = ?1) AND withdrawn = 0");
        store::Binder(named).integer(*id);
        named.executeStep();
        if (withdrawn && store::Row(named).integer() > 0) return {};
        store::withdraw_meter(impl_->database(), *id, withdrawn);
        return {};
    });
}

} // namespace ullage
