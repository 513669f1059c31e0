// SPDX-License-Identifier: GPL-3.0-or-later
#include "foreign_tables/table_log.h"

#include "base/ids.h"

#include <algorithm>
#include <optional>
#include <utility>

namespace ullage {

namespace {

constexpr std::size_t least_rows_of_device = 1000;
constexpr UtcMs longest_interval_ms = 120'000; ///< of half the rows
constexpr const char* table_layout = "table";  ///< no log that could be followed

TraceSample sample_of(const ReadingValues& values) {
    TraceSample sample;
    sample.time_ms = values.time_ms;
    sample.register_wh = values.register_wh;
    sample.power_w = values.meter_w;
    sample.gauge_percent = values.gauge_percent;
    sample.output_w = values.display_w;
    return sample;
}

int held_by(std::span<const TraceSample> samples) {
    int holds = 0;
    for (const TraceSample& sample : samples) {
        if (sample.register_wh || sample.power_w) holds |= holds_meter;
        if (sample.gauge_percent) holds |= holds_gauge;
        if (sample.output_w) holds |= holds_output;
    }
    return holds;
}

Result<void> add_log(Logbook& logbook, const TableRun& run, const std::string& run_uuid, const std::string& name) {
    Trace trace;
    trace.uuid = new_uuid();
    trace.run_uuid = run_uuid;
    trace.holds = held_by(run.log);
    trace.file_name = name;
    trace.fingerprint = trace.uuid; // a table that is pasted has no bytes to know it by; its run is known by its readings
    trace.layout = table_layout;
    trace.zone = run.record.run.time_zone;
    const Result<Trace> added = logbook.add_trace(std::move(trace), [&](Trace&, const SampleTaker& take) { return take(run.log); });
    if (!added) return added.error();
    return {};
}

} // namespace

bool written_by_device(const ForeignRun& run) {
    if (run.readings.size() < least_rows_of_device) return false;
    if (std::ranges::any_of(run.readings, [](const ReadingValues& values) { return values.second_register_wh.has_value(); })) return false;
    std::vector<UtcMs> intervals;
    for (std::size_t i = 1; i < run.readings.size(); ++i) intervals.push_back(run.readings[i].time_ms - run.readings[i - 1].time_ms);
    const auto middle = intervals.begin() + static_cast<std::ptrdiff_t>(intervals.size() / 2);
    std::ranges::nth_element(intervals, middle);
    return *middle <= longest_interval_ms;
}

TableRun run_of_table(const ForeignRun& run, const TableFacts& facts, bool as_log) {
    if (!as_log || run.readings.size() < 2) return {record_of_table(run, facts)};
    ForeignRun noted = run;
    noted.readings.clear();
    std::vector<TraceSample> log;
    for (std::size_t i = 0; i < run.readings.size(); ++i) {
        const ReadingValues& values = run.readings[i];
        const bool later = log.empty() || values.time_ms > log.back().time_ms;
        if (later) log.push_back(sample_of(values));
        if (i == 0 || i + 1 == run.readings.size() || values.mark || !values.remark.empty() || !later) noted.readings.push_back(values);
    }
    return {record_of_table(noted, facts), std::move(log)};
}

Result<std::vector<ImportedRun>> import_table_runs(Logbook& logbook, std::span<const TableRun> runs, const std::string& name) {
    std::vector<RunRecord> records;
    for (const TableRun& run : runs) records.push_back(run.record);
    if (std::ranges::all_of(runs, [](const TableRun& run) { return run.log.empty(); })) return logbook.import_together(records);
    std::optional<std::vector<ImportedRun>> imported;
    const Result<void> done = logbook.all_or_none([&]() -> Result<void> {
        auto added = logbook.import_together(records);
        if (!added) return added.error();
        imported = std::move(added).value();
        for (std::size_t i = 0; i < runs.size(); ++i)
            if (!runs[i].log.empty())
                if (auto log = add_log(logbook, runs[i], (*imported)[i].run_uuid, name); !log) return log;
        return {};
    });
    if (!done) return done.error();
    return std::move(*imported);
}

} // namespace ullage
