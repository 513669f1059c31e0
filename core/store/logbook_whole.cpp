// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/inside/logbook_impl.h"
#include "store/logbook.h"
#include "store/queries/load_list_queries.h"
#include "store/queries/meter_queries.h"
#include "store/queries/method_queries.h"
#include "store/queries/photo_queries.h"
#include "store/queries/pv_queries.h"
#include "store/queries/reading_queries.h"
#include "store/queries/rows.h"
#include "store/queries/run_queries.h"
#include "store/queries/trace_queries.h"
#include "store/queries/unit_queries.h"

#include <set>
#include <utility>

namespace ullage {

namespace {

std::set<std::int64_t> withdrawn_rows(SQLite::Database& database, const char* table) {
    SQLite::Statement query(database, std::string("SELECT id FROM ") + table + " WHERE withdrawn = 1");
    std::set<std::int64_t> ids;
    while (query.executeStep()) ids.insert(store::Row(query).integer());
    return ids;
}

} // namespace

Result<WholeContent> Logbook::whole_content() const {
    return impl_->read([&]() -> Result<WholeContent> {
        SQLite::Database& database = impl_->database();
        WholeContent whole;
        const auto units_out = withdrawn_rows(database, "units"), meters_out = withdrawn_rows(database, "meters");
        for (auto& [id, unit] : store::all_units(database)) whole.units.push_back({unit, units_out.contains(id)});
        for (const std::int64_t id : store::meter_ids(database)) {
            std::vector<MeterVersion> versions = store::meter_versions(database, id);
            MeterId uuid = versions.back().meter.uuid;
            whole.meters.push_back({std::move(uuid), meters_out.contains(id), std::move(versions)});
        }
        auto readings = store::readings_by_run(database, std::nullopt);
        std::map<RunId, std::vector<Trace>> traces;
        for (Trace& trace : store::listed_traces(database, std::nullopt)) traces[trace.run_uuid].push_back(std::move(trace));
        const auto runs_out = withdrawn_rows(database, "runs");
        for (store::ListedRun& listed : store::listed_runs(database, std::nullopt)) {
            KeptRun& kept = whole.runs.emplace_back();
            kept.run = std::move(listed.run);
            kept.withdrawn = runs_out.contains(listed.id);
            kept.number = listed.number;
            kept.readings = std::move(readings[listed.id]);
            kept.photos = store::run_photos(database, listed.id);
            if (auto found = traces.find(kept.run.uuid); found != traces.end()) kept.traces = std::move(found->second);
        }
        whole.load_lists = store::all_load_lists(database);
        whole.pv_sheets = store::all_pv_sheets(database);
        whole.method = store::method_settings(database);
        return whole;
    });
}

} // namespace ullage
