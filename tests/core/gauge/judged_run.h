// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "gauge/gauge_analysis.h"
#include "support/record_builder.h"

#include <algorithm>

namespace ullage::test {

inline GaugeAnalysis judge(RecordBuilder& run) { return analyse_gauge(run.record(), analyse_energy(run.record())); }

inline const Finding* find(const GaugeAnalysis& analysis, FindingKind kind) {
    const auto place = std::ranges::find(analysis.findings, kind, &Finding::kind);
    return place == analysis.findings.end() ? nullptr : &*place;
}

} // namespace ullage::test
