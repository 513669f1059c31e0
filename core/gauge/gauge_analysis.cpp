// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/gauge_analysis.h"

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
Message short_words(const Finding& finding) {
    const Message size = say_measure(finding.size, 0, finding.size_unit), percent = say_number(finding.size, 0);
    switch (finding.kind) {
    case FindingKind::stuck: return say(phrase("gauge", "sticks (%1)"), size);
    case FindingKind::held_at_full: return say(phrase("gauge", "held at full (%1)"), size);
    case FindingKind::jump: return say(phrase("gauge", "jumps (%1)"), size);
    case FindingKind::rebound: return say(phrase("gauge", "rises (%1)"), size);
    case FindingKind::stopped_early: return say(phrase("gauge", "shuts off showing %1 %"), percent);
    case FindingKind::hidden_reserve: return say(phrase("gauge", "reserve below 1 % (%1)"), size);
    case FindingKind::delivered_exceeds_gauge_implied: return say(phrase("gauge", "lags (%1)"), size);
    case FindingKind::bent: return say(phrase("gauge", "bent (%1)"), size);
    case FindingKind::coarse: return say(phrase("gauge", "coarse (%1)"), size);
    case FindingKind::omits_own_consumption: return say(phrase("gauge", "omits own consumption"));
    case FindingKind::found_off_without_mark: return say(phrase("gauge", "found off"));
    case FindingKind::infeasible: return say(phrase("gauge", "wrong by at least %1"), size);
    case FindingKind::outside_shares: return say(phrase("gauge", "off by at least %1"), say_measure(std::floor(finding.size), 0, finding.size_unit));
    case FindingKind::lone_reading: return say(phrase("gauge", "one reading doubted (%1 %)"), percent);
    case FindingKind::hidden_reset: return say(phrase("gauge", "register perhaps reset (%1)"), size);
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
Message no_fault_words(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    const std::size_t readings = evidence.energy.points.size();
    if (readings == 0) return say(phrase("gauge", "not judged: no gauge reading with the register"));
    if (readings == 1) return say(phrase("gauge", "not judged: the gauge was read once"));
    const bool judgeable = evidence.judgeable();
    if (analysis.basis != ErrorBasis::delivered_depth)
        return judgeable ? say(phrase("gauge", "no fault found"))
                         : say_count(readings, phrases("gauge", "no fault in %n readings", "no fault in %n reading"));
    if (!judgeable && analysis.share_bounds.empty()) return say(phrase("gauge", "not judged: no reading between start and cut-off"));
    const Message within = say_number(std::max(1.0, std::ceil(worst_error_of(analysis, evidence.energy))), 0);
    return judgeable
               ? say(phrase("gauge", "no fault found, within %1 pt"), within)
               : say_count(readings, phrases("gauge", "no fault found, within %1 pt at %n readings", "no fault found, within %1 pt at %n reading"),
                           within);
}

Message verdict_of(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    if (evidence.record.run.kind != RunKind::drain) return say(phrase("gauge", "not judged: no drain"));
    std::vector<const Finding*> told;
    for (const Finding& finding : analysis.findings)
        if (finding.weight != Weight::note) told.push_back(&finding);
    if (told.empty()) return no_fault_words(analysis, evidence);
    // The bounds say how much at least; the named faults say what, and come first in a table.
    std::ranges::stable_partition(
        told, [](const Finding* finding) { return finding->kind != FindingKind::infeasible && finding->kind != FindingKind::outside_shares; });
    std::vector<Message> words{short_words(*told.front())};
    const auto other = std::ranges::find_if(told, [&](const Finding* finding) { return finding->kind != told.front()->kind; });
    if (other != told.end()) words.push_back(short_words(**other));
    return say_joined(words, ", ");
}

/// What two or three more readings would sharpen; empty where there are enough.
Message sharpening(const GaugeAnalysis& analysis, const GaugeEvidence& evidence) {
    if (evidence.record.run.kind != RunKind::drain || evidence.judgeable()) return {};
    if (evidence.energy.points.size() < 2)
        return say(phrase("gauge", "Read gauge and register together at the start, once in the middle and at the end."));
    if (analysis.basis == ErrorBasis::delivered_depth && analysis.share_bounds.empty())
        return say(phrase("gauge", "One reading of gauge and register between start and cut-off would hold the gauge against its shares."));
    if (analysis.basis == ErrorBasis::delivered_depth)
        return say(phrase("gauge", "Each further reading of gauge and register between start and cut-off holds the gauge to one more point."));
    return say(phrase("gauge", "A drain to cut-off would hold each of these readings against the energy that came out."));
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
    finding.sentence = say(phrase("gauge", "%1 at %2 stands alone: mistyped for %3? Without it nothing speaks against the gauge."), say_gauge(shown),
                           evidence.clock_at(candidate.point), say_gauge(candidate.meant_percent));
    finding.evidence = say(phrase("gauge", "a slip of the pen makes %1 of %2, which fits; amend the reading if it was mistyped"), say_gauge(shown),
                           say_gauge(candidate.meant_percent));
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
    return Quantity{
        "least_gauge_error_pt",
        "pt",
        off_pt,
        off_pt,
        {},
        Kind::at_least,
        worst ? say(phrase("gauge", "at %1, by the shares of energy and time gone, whatever the losses are"), evidence.clock_at(worst->point))
              : say(phrase("gauge", "by the shares of energy and time gone, whatever the losses are"))};
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
        analysis.line_reason = say(phrase("gauge", "a %1 run does not test the gauge against delivered energy"), say_run_kind(record.run.kind));
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
