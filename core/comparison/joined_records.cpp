// SPDX-License-Identifier: GPL-3.0-or-later
#include "comparison/joined_records.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <unordered_map>
#include <utility>

namespace ullage {
namespace {

/// Readings and their amendments: of two copies of a run the one that was worked on longer has more.
long entries_of(const RunRecord& record) {
    long entries = 0;
    for (const Reading& reading : record.readings) entries += reading.version;
    return entries;
}

std::vector<ReadingValues> values_of(const RunRecord& record) {
    std::vector<ReadingValues> values;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) values.push_back(reading.values);
    return values;
}

/// What two runs must at least have in common to be one, cheap to look up.
using Outline = std::tuple<std::string, std::string, RunKind, UtcMs, std::size_t>;

Outline outline_of(const RunRecord& record) {
    const auto kept = [](const Reading& reading) { return !reading.withdrawn; };
    const auto first = std::ranges::find_if(record.readings, kept);
    const auto count = static_cast<std::size_t>(std::ranges::count_if(record.readings, kept));
    return {record.unit.name, record.unit.maker, record.run.kind, first == record.readings.end() ? 0 : first->values.time_ms, count};
}

class Joiner {
public:
    explicit Joiner(JoinedRecords& joined) : joined_(joined) {}

    void take(const RunRecord& record, const std::string& source) {
        learn(record);
        if (const auto known = by_uuid_.find(record.run.uuid); known != by_uuid_.end()) {
            const RunRecord*& kept = joined_.runs[known->second];
            std::string& kept_source = joined_.source_of[record.run.uuid];
            ++counted_once_[{kept_source, source}];
            if (entries_of(record) <= entries_of(*kept)) return;
            kept = &record;
            kept_source = source;
            return;
        }
        const Outline outline = outline_of(record);
        const auto [from, to] = by_outline_.equal_range(outline);
        for (auto like = from; like != to; ++like) {
            const RunRecord& kept = *joined_.runs[like->second];
            const std::string& kept_source = joined_.source_of[kept.run.uuid];
            if (std::get<4>(outline) == 0 || kept_source == source || values_of(kept) != values_of(record)) continue;
            ++counted_once_[{kept_source, source}];
            return;
        }
        by_uuid_.emplace(record.run.uuid, joined_.runs.size());
        by_outline_.emplace(outline, joined_.runs.size());
        joined_.runs.push_back(&record);
        joined_.source_of[record.run.uuid] = source;
    }

    void finish() {
        for (const RunRecord*& record : joined_.runs) {
            const Unit& unit = *units_.at(record->unit.uuid);
            const bool other_unit = !(unit == record->unit);
            const Meter* meter = record->meter ? meters_.at(record->meter->uuid) : nullptr;
            const bool other_meter = meter != nullptr && !(*meter == *record->meter);
            const Meter* second = record->second_meter ? meters_.at(record->second_meter->uuid) : nullptr;
            const bool other_second = second != nullptr && !(*second == *record->second_meter);
            if (!other_unit && !other_meter && !other_second) continue;
            if (other_unit) units_that_differ_.insert(unit.name);
            if (other_meter) meters_that_differ_.insert(meter->name);
            if (other_second) meters_that_differ_.insert(second->name);
            RunRecord& copy = joined_.altered.emplace_back(*record);
            copy.unit = unit;
            if (meter != nullptr) copy.meter = *meter;
            if (second != nullptr) copy.second_meter = *second;
            record = &copy;
        }
        for (const auto& [places, count] : counted_once_)
            joined_.notices.push_back(say_count(
                count, phrases("comparison", "%n runs are both in %1 and in %2; counted once", "%n run is both in %1 and in %2; counted once"),
                places.first, places.second));
        for (const std::string& name : units_that_differ_)
            joined_.notices.push_back(say(phrase("comparison", "the claims of %1 differ between the logbooks; those of the first one hold"), name));
        for (const std::string& name : meters_that_differ_)
            joined_.notices.push_back(
                say(phrase("comparison", "what is stated of the meter %1 differs between the logbooks; the first one holds"), name));
    }

private:
    void learn(const RunRecord& record) {
        units_.emplace(record.unit.uuid, &record.unit);
        for (const auto* meter : {&record.meter, &record.second_meter})
            if (*meter) meters_.emplace((*meter)->uuid, &**meter);
    }

    JoinedRecords& joined_;
    std::unordered_map<RunId, std::size_t> by_uuid_;
    std::multimap<Outline, std::size_t> by_outline_;
    std::unordered_map<UnitId, const Unit*> units_;
    std::unordered_map<MeterId, const Meter*> meters_;
    std::map<std::pair<std::string, std::string>, long> counted_once_;
    std::set<std::string> units_that_differ_, meters_that_differ_; ///< their names
};

} // namespace

JoinedRecords join_runs(const std::vector<RunSource>& sources) {
    JoinedRecords joined;
    if (sources.size() == 1) {
        joined.runs = sources.front().runs;
        return joined;
    }
    Joiner joiner(joined);
    for (const RunSource& source : sources)
        for (const RunRecord* record : source.runs) joiner.take(*record, source.name);
    joiner.finish();
    return joined;
}

JoinedRecords join_records(const std::vector<const RecordSource*>& sources) {
    std::vector<RunSource> by_address;
    for (const RecordSource* source : sources) {
        RunSource& made = by_address.emplace_back(RunSource{source->name, {}});
        for (const RunRecord& record : source->records) made.runs.push_back(&record);
    }
    return join_runs(by_address);
}

} // namespace ullage
