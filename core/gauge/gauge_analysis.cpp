// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

#include "base/number.h"
#include "gauge/findings/findings.h"
#include "gauge/findings_within.h"
#include "gauge/inside/error_curve.h"
#include "gauge/inside/gauge_line.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

/// Few words for a finding in a table.
std::string short_words(const Finding& finding) {
    const std::string size = fixed_text(finding.size, 0) + " " + finding.size_unit;
    switch (finding.kind) {
    case FindingKind::stuck: return "sticks (" + size + ")";
    case FindingKind::held_at_full: return "held at full (" + size + ")";
    case FindingKind::jump: return "jumps (" + size + ")";
    case FindingKind::rebound: return "rises (" + size + ")";
    case FindingKind::stopped_early: return "stops at " + fixed_text(finding.size, 0) + " %";
    case FindingKind::hidden_reserve: return "reserve below 1 % (" + size + ")";
    case FindingKind::delivered_exceeds_gauge_implied: return "lags (" + size + ")";
    case FindingKind::bent: return "bent (" + size + ")";
    case FindingKind::coarse: return "coarse (" + size + ")";
    case FindingKind::omits_own_consumption: return "omits own consumption";
    case FindingKind::found_off_without_mark: return "found off";
    case FindingKind::infeasible: return "wrong by at least " + size;
    case FindingKind::hidden_reset: return "register perhaps reset (" + size + ")";
    }
    return {};
}

std::string verdict_of(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    if (evidence.record.run.kind != RunKind::drain) return "not judged: no drain";
    std::vector<const Finding*> told;
    for (const Finding& finding : analysis.findings)
        if (finding.weight != Weight::note) told.push_back(&finding);
    if (told.empty()) {
        if (!evidence.judgeable()) return "not judged: too few readings";
        if (analysis.basis != ErrorBasis::delivered_depth) return "no fault found";
        // While the gauge stands still its error only grows with the energy: the worst stands on either side of a change.
        double worst_pt = 0;
        const auto look = [&](std::size_t i) { worst_pt = std::max(worst_pt, std::abs(analysis.errors[i].error_pt)); };
        for (const std::size_t change : evidence.energy.gauge_changes) {
            look(change - 1);
            look(change);
        }
        look(0);
        look(analysis.errors.size() - 1);
        return "no fault found, within " + fixed_text(std::max(1.0, std::ceil(worst_pt)), 0) + " pt";
    }
    // The bound says how much at least; the named faults say what, and come first in a table.
    std::ranges::stable_partition(told, [](const Finding* finding) { return finding->kind != FindingKind::infeasible; });
    std::string verdict = short_words(*told.front());
    for (const Finding* finding : told)
        if (finding->kind != told.front()->kind) {
            verdict += ", " + short_words(*finding);
            break;
        }
    return verdict;
}

std::optional<NoLoadDraw> draw_of(const LossFit& losses) {
    const Quantity& draw = losses.no_load_draw_w;
    if (!draw.value || !draw.lower || !draw.upper) return std::nullopt;
    return NoLoadDraw{*draw.value, *draw.lower, *draw.upper};
}

} // namespace

GaugeAnalysis analyse_gauge(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    GaugeAnalysis analysis;
    const GaugeEvidence evidence = gather_evidence(record, energy, options);
    analysis.basis = error_basis(energy);
    analysis.losses = fit_losses(record, energy, options);
    analysis.feasibility = gauge_feasibility(record, energy, options);
    if (record.run.kind == RunKind::drain) {
        analysis.errors = gauge_error_curve(record, energy, analysis.basis, options);
        if (Result<GaugeLine> line = fit_gauge_line(record, energy)) analysis.line = std::move(line).value();
        else analysis.line_reason = line.error().what;
        find_stuck(evidence, analysis.findings);
        find_jump(evidence, analysis.findings);
        find_hidden_reset(evidence, analysis.findings);
        find_hidden_reserve(evidence, analysis.findings);
        find_delivered_exceeds(evidence, analysis.findings);
        // A stick and its catching up are a hump already; calling it bent as well would be one fault told twice.
        const auto is_told = [&](FindingKind kind) { return std::ranges::find(analysis.findings, kind, &Finding::kind) != analysis.findings.end(); };
        // Energy that may be missing bends a gauge and makes it impossible: what rests on the energy of the whole run is not held against it then.
        const bool register_doubted = is_told(FindingKind::hidden_reset);
        if (!register_doubted && !is_told(FindingKind::stuck) && !is_told(FindingKind::held_at_full)) find_bent(evidence, analysis.findings);
        find_coarse(evidence, analysis.findings);
        if (!register_doubted) find_infeasible(evidence, analysis.feasibility, analysis.findings);
        if (!register_doubted) find_omits_own_consumption(evidence, analysis.losses, analysis.findings);
    } else {
        analysis.line_reason = "a " + std::string(run_kind_text(record.run.kind)) + " run does not test the gauge against delivered energy";
    }
    find_stopped_early(evidence, analysis.findings);
    find_found_off(evidence, analysis.findings);
    find_rebound(evidence, analysis.findings);
    if (Result<std::vector<ReferenceDepth>> depths = reference_depths(record, energy, draw_of(analysis.losses), options))
        analysis.depths = std::move(depths).value();
    std::ranges::stable_sort(analysis.findings, [](const Finding& a, const Finding& b) { return a.weight > b.weight; });
    analysis.verdict = verdict_of(analysis, evidence);
    return analysis;
}

} // namespace ullage
