// SPDX-License-Identifier: GPL-3.0-or-later
#include "model/run_record.h"

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

} // namespace ullage
