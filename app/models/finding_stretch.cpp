// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/finding_stretch.h"

namespace ullage {

bool names_a_stretch(const Finding& finding) {
    switch (finding.kind) {
    case FindingKind::stuck:
    case FindingKind::jump:
    case FindingKind::rebound: return finding.readings.size() >= 2;
    default: return false;
    }
}

std::vector<ReadingId> doubtful_readings(const Finding& finding) {
    if (!names_a_stretch(finding)) return {};
    return {finding.readings.begin() + 1, finding.readings.end()};
}

} // namespace ullage
