// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

#include "base/number.h"
#include "gauge/findings/findings.h"
#include "gauge/findings_within.h"
#include "gauge/inside/error_curve.h"
#include "gauge/inside/gauge_line.h"
#include "gauge/inside/lone_reading.h"
#include "gauge/own_draw.h"

#include <algorithm>
#include <cmath>
#include <utility>

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
    case FindingKind::stopped_early: return "shuts off showing " + fixed_text(finding.size, 0) + " %";
    case FindingKind::hidden_reserve: return "reserve below 1 % (" + size + ")";
    case FindingKind::delivered_exceeds_gauge_implied: return "lags (" + size + ")";
    case FindingKind::bent: return "bent (" + size + ")";
    case FindingKind::coarse: return "coarse (" + size + ")";
    case FindingKind::omits_own_consumption: return "omits own consumption";
    case FindingKind::found_off_without_mark: return "found off";
    case FindingKind::infeasible: return "wrong by at least " + size;
    case FindingKind::outside_shares: return "off by at least " + fixed_text(std::floor(finding.size), 0) + " " + finding.size_unit;
    case FindingKind::lone_reading: return "one reading doubted (" + fixed_text(finding.size, 0) + " %)";
    case FindingKind::hidden_reset: return "register perhaps reset (" + size + ")";
    }
    return {};
}

/// While the gauge stands still its error only grows with the energy: the worst stands on either side of a change. Precondition: an error for each
/// point.
double worst_error_of(const GaugeAnalysis& analysis, const EnergyAnalysis& energy) {
    double worst_pt = 0;
    const auto look = [&](std::size_t i) { worst_pt = std::max(worst_pt, std::abs(analysis.errors[i].error_pt)); };
    for (const std::size_t change : energy.gauge_changes) {
        look(change - 1);
        look(change);
    }
    look(0);
    look(analysis.errors.size() - 1);
    return worst_pt;
}

/// How far the gauge may have been off at most where nothing contradicts it.
std::string no_fault_words(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    const std::size_t readings = evidence.energy.points.size();
    if (readings < 2) return readings == 0 ? "not judged: no gauge reading with the register" : "not judged: the gauge was read once";
    if (analysis.basis != ErrorBasis::delivered_depth)
        return evidence.judgeable() ? "no fault found" : "no fault in " + count_text(static_cast<long>(readings), "reading", "readings");
    if (!evidence.judgeable() && analysis.share_bounds.empty()) return "not judged: no reading between start and cut-off";
    return "no fault found, within " + fixed_text(std::max(1.0, std::ceil(worst_error_of(analysis, evidence.energy))), 0) + " pt" +
           (evidence.judgeable() ? "" : " at " + count_text(static_cast<long>(readings), "reading", "readings"));
}

std::string verdict_of(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    if (evidence.record.run.kind != RunKind::drain) return "not judged: no drain";
    std::vector<const Finding*> told;
    for (const Finding& finding : analysis.findings)
        if (finding.weight != Weight::note) told.push_back(&finding);
    if (told.empty()) return no_fault_words(analysis, evidence);
    // The bounds say how much at least; the named faults say what, and come first in a table.
    std::ranges::stable_partition(
        told, [](const Finding* finding) { return finding->kind != FindingKind::infeasible && finding->kind != FindingKind::outside_shares; });
    std::string verdict = short_words(*told.front());
    for (const Finding* finding : told)
        if (finding->kind != told.front()->kind) {
            verdict += ", " + short_words(*finding);
            break;
        }
    return verdict;
}

/// What two or three more readings would sharpen; empty where there are enough.
std::string sharpening(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    if (evidence.record.run.kind != RunKind::drain || evidence.judgeable()) return {};
    if (evidence.energy.points.size() < 2) return "Read gauge and register together at the start, once in the middle and at the end.";
    if (analysis.basis == ErrorBasis::delivered_depth && analysis.share_bounds.empty())
        return "One reading of gauge and register between start and cut-off would hold the gauge against its shares.";
    if (analysis.basis == ErrorBasis::delivered_depth)
        return "Each further reading of gauge and register between start and cut-off holds the gauge to one more point.";
    return "A drain to cut-off would hold each of these readings against the energy that came out.";
}

std::optional<NoLoadDraw> draw_of(const Quantity& draw) {
    if (draw.kind == Kind::bracket || !draw.value || !draw.lower || !draw.upper) return std::nullopt;
    return NoLoadDraw{*draw.value, *draw.lower, *draw.upper};
}

/// What is held against the gauge by a set of its readings.
struct Judgement {
    std::vector<Finding> findings;
    LossFit losses;
    GaugeFeasibility feasibility;
    std::vector<ShareBound> bounds;

    [[nodiscard]] bool accuses() const {
        return std::ranges::any_of(findings, [](const Finding& finding) { return finding.weight != Weight::note; });
    }
};

/// Standing still, leaping, the size of steps and the bottom show in what was shown, not in the means at the steps of a log.
EnergyAnalysis as_shown(const EnergyAnalysis& energy) {
    EnergyAnalysis shown = energy;
    shown.points = energy.shown;
    shown.gauge_changes.clear();
    for (std::size_t i = 1; i < shown.points.size(); ++i)
        if (shown.points[i].gauge_percent != shown.points[i - 1].gauge_percent) shown.gauge_changes.push_back(i);
    return shown;
}

void find_in_what_was_shown(const GaugeEvidence& evidence, std::vector<Finding>& findings) {
    find_stuck(evidence, findings);
    find_jump(evidence, findings);
    find_hidden_reserve(evidence, findings);
    find_coarse(evidence, findings);
}

void judge_drain(const GaugeEvidence& evidence, Judgement& judgement) {
    std::vector<Finding>& findings = judgement.findings;
    if (evidence.energy.shown.empty()) {
        find_in_what_was_shown(evidence, findings);
    } else {
        const EnergyAnalysis shown = as_shown(evidence.energy);
        find_in_what_was_shown(gather_evidence(evidence.record, shown, evidence.options), findings);
    }
    find_hidden_reset(evidence, findings);
    find_delivered_exceeds(evidence, findings);
    // A stick and its catching up are a hump already; calling it bent as well would be one fault told twice.
    const auto is_told = [&](FindingKind kind) { return std::ranges::find(findings, kind, &Finding::kind) != findings.end(); };
    // Energy that may be missing bends a gauge and makes it impossible: what rests on the energy of the whole run is not held against it then.
    const bool register_doubted = is_told(FindingKind::hidden_reset);
    if (!register_doubted && !is_told(FindingKind::stuck) && !is_told(FindingKind::held_at_full)) find_bent(evidence, findings);
    if (register_doubted) return;
    // Two bounds of one thing: the larger is told.
    const std::optional<ShareBound> worst = worst_share_bound(judgement.bounds);
    if (worst && std::abs(worst->off_pt) > judgement.feasibility.least_error_pt.value.value_or(0))
        find_outside_shares(evidence, judgement.bounds, findings);
    if (!is_told(FindingKind::outside_shares)) find_infeasible(evidence, judgement.feasibility, findings);
    find_omits_own_consumption(evidence, judgement.losses, findings);
}

Judgement judge(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    Judgement judgement;
    const GaugeEvidence evidence = gather_evidence(record, energy, options);
    judgement.losses = fit_losses(record, energy, options);
    judgement.feasibility = gauge_feasibility(record, energy, options);
    judgement.bounds = share_bounds(record, energy, options);
    if (record.run.kind == RunKind::drain) judge_drain(evidence, judgement);
    find_stopped_early(evidence, judgement.findings);
    // A gauge that ends early shows too much all along: told by where it ended.
    if (const auto early = std::ranges::find(judgement.findings, FindingKind::stopped_early, &Finding::kind); early != judgement.findings.end())
        std::erase_if(judgement.findings, [size = early->size](const Finding& f) { return f.kind == FindingKind::outside_shares && f.size <= size; });
    find_found_off(evidence, judgement.findings);
    find_rebound(evidence, judgement.findings);
    return judgement;
}

Finding lone_reading(const GaugeEvidence& evidence, const SlipCandidate& candidate) {
    const double shown = evidence.energy.points[candidate.point].gauge_percent;
    Finding finding{FindingKind::lone_reading};
    finding.weight = Weight::doubt;
    finding.sentence = gauge_text(shown) + " at " + evidence.clock_at(candidate.point) + " stands alone: mistyped for " +
                       gauge_text(candidate.meant_percent) + "? Without it nothing speaks against the gauge.";
    finding.evidence = "a slip of the pen makes " + gauge_text(shown) + " of " + gauge_text(candidate.meant_percent) +
                       ", which fits; amend the reading if it was mistyped";
    finding.readings = {evidence.reading_uuid(candidate.point)};
    finding.size = shown;
    finding.size_unit = "%";
    finding.statistic_name = "what would fit, %";
    finding.statistic = candidate.meant_percent;
    return finding;
}

/// Where leaving out one reading that may be mistyped leaves nothing against the gauge, that reading is doubted in its place.
Judgement with_lone_reading_doubted(const GaugeEvidence& evidence, Judgement judgement) {
    if (!judgement.accuses() || evidence.record.run.kind != RunKind::drain) return judgement;
    for (const SlipCandidate& candidate : slip_candidates(evidence.energy, judgement.bounds, evidence.step_pt)) {
        const EnergyAnalysis rest = without_gauge_reading(evidence.record, evidence.energy, candidate.point);
        Judgement without = judge(evidence.record, rest, evidence.options);
        if (without.accuses()) continue;
        without.bounds = std::move(judgement.bounds);
        without.findings.push_back(lone_reading(evidence, candidate));
        return without;
    }
    return judgement;
}

/// The larger of the two bounds.
Quantity least_error(const GaugeEvidence& evidence, const Judgement& judgement) {
    const Quantity& by_unit = judgement.feasibility.least_error_pt;
    const std::optional<ShareBound> worst = worst_share_bound(judgement.bounds);
    const bool doubted = std::ranges::any_of(judgement.findings, [](const Finding& finding) {
        return finding.kind == FindingKind::lone_reading || finding.kind == FindingKind::hidden_reset;
    });
    if (judgement.bounds.empty() || doubted) return by_unit;
    const double off_pt = worst ? std::abs(worst->off_pt) : 0;
    if (by_unit.value.value_or(-1) >= off_pt) return by_unit;
    return Quantity{"least_gauge_error_pt",
                    "pt",
                    off_pt,
                    off_pt,
                    {},
                    Kind::at_least,
                    worst ? "at " + evidence.clock_at(worst->point) + ", by the shares of energy and time gone, whatever the losses are"
                          : "by the shares of energy and time gone, whatever the losses are"};
}

} // namespace

GaugeAnalysis analyse_gauge(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    GaugeAnalysis analysis;
    const GaugeEvidence evidence = gather_evidence(record, energy, options);
    analysis.basis = error_basis(energy);
    Judgement judgement = with_lone_reading_doubted(evidence, judge(record, energy, options));
    analysis.least_error_pt = least_error(evidence, judgement);
    analysis.losses = std::move(judgement.losses);
    analysis.feasibility = std::move(judgement.feasibility);
    analysis.share_bounds = std::move(judgement.bounds);
    analysis.findings = std::move(judgement.findings);
    analysis.own_draw_w = own_draw_bracket(record, energy, analysis.losses, options);
    analysis.own_energy_wh = own_energy_bracket(record, energy, analysis.losses, options);
    analysis.losses.sentence = own_draw_sentence(analysis.own_draw_w, analysis.own_energy_wh, analysis.losses);
    if (record.run.kind == RunKind::drain) {
        analysis.errors = gauge_error_curve(record, energy, analysis.basis, options);
        if (Result<GaugeLine> line = fit_gauge_line(record, energy)) analysis.line = std::move(line).value();
        else analysis.line_reason = line.error().what;
    } else {
        analysis.line_reason = "a " + std::string(run_kind_text(record.run.kind)) + " run does not test the gauge against delivered energy";
    }
    if (Result<std::vector<ReferenceDepth>> depths = reference_depths(record, energy, draw_of(analysis.own_draw_w), options))
        analysis.depths = std::move(depths).value();
    std::ranges::stable_sort(analysis.findings, [](const Finding& a, const Finding& b) { return a.weight > b.weight; });
    const bool doubted = std::ranges::count(analysis.findings, FindingKind::lone_reading, &Finding::kind) > 0;
    if (analysis.basis == ErrorBasis::delivered_depth && analysis.errors.size() > 1 && !doubted)
        analysis.worst_error_pt = worst_error_of(analysis, energy);
    analysis.verdict = verdict_of(analysis, evidence);
    analysis.sharpening = sharpening(analysis, evidence);
    return analysis;
}

} // namespace ullage
