// SPDX-License-Identifier: GPL-3.0-or-later
// Private to the room joining.
#pragma once

#include "joining/join_plan.h"

#include <map>

namespace ullage::joining {

/// What a logbook holds, found by identifier. Points into `whole`, which must not change.
struct Contents {
    explicit Contents(WholeContent content);
    Contents(const Contents&) = delete;
    Contents& operator=(const Contents&) = delete;

    WholeContent whole;
    std::map<UnitId, const KeptRecord<Unit>*> units;
    std::map<MeterId, const KeptMeter*> meters;
    std::map<RunId, const KeptRun*> runs;
    std::map<LoadListId, const KeptRecord<LoadList>*> load_lists;
    std::map<PvSheetId, const KeptRecord<PvSheet>*> pv_sheets;

    [[nodiscard]] bool is_shown(const KeptRun& run) const;         ///< neither it nor its unit is withdrawn
    [[nodiscard]] std::string unit_name(const UnitId& uuid) const; ///< empty where there is none
};

/// A plan with what it was made of.
struct Comparison {
    std::unique_ptr<const Contents> here, there;
    JoinPlan plan;
};

/// See plan_join().
[[nodiscard]] Result<Comparison> compare(const Logbook& here, const Logbook& there);

} // namespace ullage::joining
