// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/known_depths.h"

#include <utility>

namespace ullage {

std::vector<ReferenceDepth> known_depths(const RunRecord& record, const RunAnalysis& analysis, const UnitFit& fit) {
    const std::vector<ReferenceDepth>& own = analysis.gauge.depths;
    const Quantity& draw = fit.no_load_draw_w;
    if (own.empty() || own.front().stored_percent || !draw.value || !draw.lower || !draw.upper) return own;
    Result<std::vector<ReferenceDepth>> depths =
        reference_depths(record, analysis.energy, NoLoadDraw{*draw.value, *draw.lower, *draw.upper}, fit.options);
    return depths ? std::move(depths).value() : own;
}

} // namespace ullage
