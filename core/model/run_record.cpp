// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/run_record.h"

#include <algorithm>
#include <utility>

namespace ullage {

UnitRuns addresses_of(const std::vector<RunRecord>& records) {
    UnitRuns addresses;
    addresses.reserve(records.size());
    for (const RunRecord& record : records) addresses.push_back(&record);
    return addresses;
}

UnitRuns addresses_of(const SharedRuns& runs) {
    UnitRuns addresses;
    addresses.reserve(runs.size());
    for (const auto& run : runs) addresses.push_back(run.get());
    return addresses;
}

SharedRuns shared(std::vector<RunRecord> records) {
    SharedRuns runs;
    runs.reserve(records.size());
    for (RunRecord& record : records) runs.push_back(std::make_shared<const RunRecord>(std::move(record)));
    return runs;
}

std::optional<double> last_shown_percent(const RunRecord& record) {
    const auto last = std::ranges::find_if(record.readings.rbegin(), record.readings.rend(),
                                           [](const Reading& reading) { return !reading.withdrawn && reading.values.gauge_percent; });
    const bool noted = last != record.readings.rend();
    const bool goes_on = record.run.end == RunEnd::still_running && record.gauge_log && record.gauge_log->samples > 0 &&
                         (!noted || record.gauge_log->last_ms > last->values.time_ms);
    if (goes_on) return record.gauge_log->last_percent;
    return noted ? last->values.gauge_percent : std::nullopt;
}

} // namespace ullage
