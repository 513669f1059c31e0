// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/finding.h"

namespace ullage {

std::string_view finding_key(FindingKind kind) {
    switch (kind) {
    case FindingKind::stuck: return "stuck";
    case FindingKind::jump: return "jump";
    case FindingKind::rebound: return "rebound";
    case FindingKind::stopped_early: return "stopped_early";
    case FindingKind::hidden_reserve: return "hidden_reserve";
    case FindingKind::delivered_exceeds_gauge_implied: return "delivered_exceeds_gauge_implied";
    case FindingKind::held_at_full: return "held_at_full";
    case FindingKind::bent: return "bent";
    case FindingKind::coarse: return "coarse";
    case FindingKind::omits_own_consumption: return "omits_own_consumption";
    case FindingKind::found_off_without_mark: return "found_off_without_mark";
    case FindingKind::infeasible: return "infeasible";
    case FindingKind::outside_shares: return "outside_shares";
    case FindingKind::lone_reading: return "lone_reading";
    case FindingKind::hidden_reset: return "hidden_reset";
    }
    return "";
}

std::string_view weight_text(Weight weight) {
    switch (weight) {
    case Weight::note: return "note";
    case Weight::doubt: return "doubt";
    case Weight::fault: return "fault";
    }
    return "";
}

Message say_weight(Weight weight) {
    switch (weight) {
    case Weight::note: return say(phrase("gauge", "note"));
    case Weight::doubt: return say(phrase("gauge", "doubt"));
    case Weight::fault: return say(phrase("gauge", "fault"));
    }
    return {};
}

} // namespace ullage
