// SPDX-License-Identifier: GPL-3.0-or-later
#include "claims/claims.h"

#include "base/number.h"
#include "base/quantity.h"
#include "claims/decision_rule.h"
#include "measure/usable.h"
#include "run_analysis/run_analysis.h"

#include <algorithm>

namespace ullage {

namespace {

Message run_words(const RunRecord& record, const EnergyAnalysis& energy) {
    return say(phrase("claims", "Run %1, %2"), say_number(record.number), run_title(record, energy));
}

/// What a drain, or several, delivered from full to cut-off; `which` opens the sentence.
Message delivered_by(const Message& which) { return say(phrase("claims", "%1: delivered at the socket from full to cut-off at this load."), which); }

ClaimCheck claim(const char* key, const Phrase& title, const char* unit, std::optional<double> claimed, const Phrase& untested) {
    ClaimCheck check;
    check.key = key;
    check.title = say(title);
    check.unit = unit;
    check.claimed = claimed;
    check.measured = not_known(key, unit, say(untested));
    check.evidence = say(phrase("claims", "Not tested: %1."), say(untested));
    return check;
}

/// What falls short of a claim that the energy inside (or the sun) may still keep is "not reached".
ClaimVerdict verdict_at_least(const ClaimCheck& check, ClaimVerdict short_of_it, const MeasureOptions& options) {
    switch (decide_at_least(check.measured, *check.claimed, options)) {
    case Decision::holds: return ClaimVerdict::holds;
    case Decision::does_not_hold: return short_of_it;
    case Decision::not_decided: break;
    }
    return ClaimVerdict::not_decided;
}

class Checker {
public:
    Checker(const Unit& unit, const UnitRuns& records, const std::vector<EnergyAnalysis>& energies, const UnitFit& fit,
            const std::vector<PvCharge>& pv_charges, const MeasureOptions& options)
        : unit_(unit), records_(records), energies_(energies), fit_(fit), pv_charges_(pv_charges), options_(options) {}

    std::vector<ClaimCheck> checks() const {
        return {rated_energy(), output(RunKind::sustained_output), output(RunKind::peak_output), charge_time(), pv_power()};
    }

private:
    ClaimCheck rated_energy() const {
        ClaimCheck check = claim("rated_energy_wh", phrase("claims", "rated energy"), "Wh", unit_.rated_energy_wh,
                                 phrase("claims", "there is no drain from full to cut-off with its energy known"));
        if (!fit_.repeats.empty()) {
            const RepeatMean& mean = fit_.repeats.front();
            check.measured = mean.delivered_wh;
            for (const std::size_t place : mean.drains) check.run_uuids.push_back(fit_.drains[place].run_uuid);
            const DrainSummary& latest = fit_.drains[mean.drains.back()];
            check.evidence = delivered_by(mean.count() == 1 ? say(phrase("claims", "Run %1, %2"), say_number(latest.run_number), latest.title)
                                                            : begin_sentence(mean.delivered_wh.reason));
        } else {
            latest_full_drain(check);
        }
        if (!check.measured.value || !check.claimed) return check;
        check.verdict = verdict_at_least(check, ClaimVerdict::not_reached, options_);
        if (check.verdict == ClaimVerdict::not_reached)
            check.evidence = say_joined({check.evidence, say(phrase("claims", "What the battery holds inside is not measured."))}, " ");
        return check;
    }

    /// Without a drain whose energy is whole: the latest of which something is known.
    void latest_full_drain(ClaimCheck& check) const {
        for (std::size_t r = 0; r < records_.size(); ++r) {
            if (!is_full_drain(*records_[r]) || !energies_[r].delivered_wh.value) continue;
            check.measured = energies_[r].delivered_wh;
            check.run_uuids = {records_[r]->run.uuid};
            check.evidence = delivered_by(run_words(*records_[r], energies_[r]));
        }
    }

    ClaimCheck output(RunKind kind) const {
        const bool peak = kind == RunKind::peak_output;
        ClaimCheck check = peak ? claim("peak_output_w", phrase("claims", "peak output"), "W", unit_.peak_output_w,
                                        phrase("claims", "there is no peak-output run with a known load"))
                                : claim("rated_output_w", phrase("claims", "rated output"), "W", unit_.rated_output_w,
                                        phrase("claims", "there is no sustained-output run with a known load"));
        int best = -1;
        std::vector<Message> held, failed;
        for (std::size_t r = 0; r < records_.size(); ++r) {
            if (records_[r]->run.kind != kind) continue;
            const OutputRun run = analyse_output(*records_[r], energies_[r]);
            if (!run.deciding) continue;
            ClaimCheck by_run = check;
            by_run.measured = run.steps[*run.deciding].watts;
            by_run.measured.key = check.key;
            by_run.run_uuids = {records_[r]->run.uuid};
            by_run.evidence = say_joined({run_words(*records_[r], energies_[r]), run.sentence}, ": ");
            by_run.verdict = output_verdict(run, by_run);
            if (by_run.verdict == ClaimVerdict::holds) held.push_back(by_run.evidence);
            if (by_run.verdict == ClaimVerdict::does_not_hold) failed.push_back(by_run.evidence);
            if (says_more(by_run.verdict) < best) continue;
            best = says_more(by_run.verdict);
            check = std::move(by_run);
        }
        if (!held.empty() && !failed.empty()) {
            check.verdict = ClaimVerdict::not_decided;
            check.evidence = say_joined({say(phrase("claims", "Runs disagree.")), held.back(), failed.back()}, " ");
        }
        return check;
    }

    /// Which of several output runs is shown: one that decides before one that does not.
    static int says_more(ClaimVerdict verdict) {
        switch (verdict) {
        case ClaimVerdict::does_not_hold: return 4;
        case ClaimVerdict::holds: return 3;
        case ClaimVerdict::not_decided: return 2;
        case ClaimVerdict::not_reached: return 1;
        case ClaimVerdict::not_tested: break;
        }
        return 0;
    }

    ClaimVerdict output_verdict(const OutputRun& run, const ClaimCheck& check) const {
        switch (run.outcome) {
        case OutputOutcome::held:
            // It held a step whose load may have been the claimed one; that it was decides the interval.
            return check.claimed && decide_at_least(check.measured, *check.claimed, options_) == Decision::holds ? ClaimVerdict::holds
                                                                                                                 : ClaimVerdict::not_decided;
        case OutputOutcome::tripped:
            // That it tripped at a load within the claim decides the interval too.
            return !run.beyond_claim && check.claimed && decide_at_most(check.measured, *check.claimed, options_) == Decision::holds
                       ? ClaimVerdict::does_not_hold
                       : ClaimVerdict::not_decided;
        case OutputOutcome::not_reached: return ClaimVerdict::not_reached;
        case OutputOutcome::not_known: break;
        }
        return ClaimVerdict::not_tested;
    }

    /// From the unit's cut-off, or from a gauge that shows no more than one step.
    bool from_empty(std::size_t r, const ChargeRun& charge) const {
        const bool after_cut_off = r > 0 && records_[r - 1]->run.kind != RunKind::charge &&
                                   (records_[r - 1]->run.end == RunEnd::cut_off_seen || records_[r - 1]->run.end == RunEnd::found_off);
        return after_cut_off || (charge.first_gauge_percent && *charge.first_gauge_percent <= unit_.gauge_step_percent);
    }

    ClaimCheck charge_time() const {
        ClaimCheck check = claim("charge_time_h", phrase("claims", "charge time"), "h", unit_.charge_time_h,
                                 phrase("claims", "there is no charge from cut-off to full that is not from PV"));
        std::vector<Message> evidence;
        std::optional<Quantity> sum;
        for (std::size_t r = 0; r < records_.size(); ++r) {
            if (records_[r]->run.kind != RunKind::charge || records_[r]->run.charge_source == ChargeSource::pv) continue;
            const ChargeRun charge = analyse_charge(*records_[r], energies_[r]);
            const Quantity& time = charge.charge_time_h;
            if (!from_empty(r, charge) || time.kind != Kind::bracket || !time.value || !time.lower || !time.upper) continue;
            if (!sum) sum = time;
            else
                for (auto part : {&Quantity::value, &Quantity::lower, &Quantity::upper}) *((*sum).*part) += *(time.*part);
            check.run_uuids.push_back(records_[r]->run.uuid);
            evidence.push_back(say_joined({run_words(*records_[r], energies_[r]), charge.sentence}, ": "));
        }
        if (sum) {
            for (auto part : {&Quantity::value, &Quantity::lower, &Quantity::upper}) *((*sum).*part) /= static_cast<double>(evidence.size());
            check.measured = *sum;
            check.evidence = evidence.back();
            if (evidence.size() > 1)
                check.evidence = say(phrase("claims", "Mean of %1 charges. The latest: %2"), say_number(evidence.size()), evidence.back());
        }
        if (!check.measured.value || !check.claimed) return check;
        const Decision decision = decide_at_most(check.measured, *check.claimed, options_);
        check.verdict = decision == Decision::holds           ? ClaimVerdict::holds
                        : decision == Decision::does_not_hold ? ClaimVerdict::does_not_hold
                                                              : ClaimVerdict::not_decided;
        return check;
    }

    ClaimCheck pv_power() const {
        ClaimCheck check = claim("pv_max_w", phrase("claims", "power of the PV input"), "W", unit_.pv_max_w,
                                 phrase("claims", "there is no charge from PV with a known power"));
        for (const PvCharge& charge : pv_charges_) {
            const Quantity& peak = charge.peak_charge_w;
            if (!peak.value || (check.measured.value && *check.measured.value >= *peak.value)) continue;
            check.measured = peak;
            check.run_uuids.clear();
            for (const PanelShare& panel : charge.panels) check.run_uuids.push_back(panel.run_uuid);
            check.evidence = say(phrase("claims", "%1. Peak: %2; the sun may have given no more."), charge.sentence, peak.reason);
        }
        if (!check.measured.value || !check.claimed) return check;
        // Nobody looked between two readings: what was seen reached the claim, or did not.
        check.verdict = verdict_at_least(check, ClaimVerdict::not_reached, options_);
        if (check.measured.kind == Kind::at_least && check.verdict == ClaimVerdict::not_decided) check.verdict = ClaimVerdict::not_reached;
        return check;
    }

    const Unit& unit_;
    const UnitRuns& records_;
    const std::vector<EnergyAnalysis>& energies_;
    const UnitFit& fit_;
    const std::vector<PvCharge>& pv_charges_;
    const MeasureOptions& options_;
};

} // namespace

std::string_view claim_verdict_text(ClaimVerdict verdict) {
    switch (verdict) {
    case ClaimVerdict::holds: return "holds";
    case ClaimVerdict::does_not_hold: return "does not hold";
    case ClaimVerdict::not_reached: return "not reached";
    case ClaimVerdict::not_decided: return "not decided by this meter";
    case ClaimVerdict::not_tested: return "not tested";
    }
    return "not tested";
}

Message say_claim_verdict(ClaimVerdict verdict) {
    switch (verdict) {
    case ClaimVerdict::holds: return say(phrase("claims", "holds"));
    case ClaimVerdict::does_not_hold: return say(phrase("claims", "does not hold"));
    case ClaimVerdict::not_reached: return say(phrase("claims", "not reached"));
    case ClaimVerdict::not_decided: return say(phrase("claims", "not decided by this meter"));
    case ClaimVerdict::not_tested: break;
    }
    return say(phrase("claims", "not tested"));
}

Message say_claimed(const ClaimCheck& check) {
    if (!check.claimed) return say(phrase("claims", "not stated"));
    const bool in_kwh = shown_unit(check.key, check.unit, *check.claimed).unit == "kWh";
    return in_kwh ? say_energy(*check.claimed) : say_digits(exact_text(*check.claimed) + ' ' + check.unit);
}

UnitClaims check_claims(const Unit& unit, const UnitRuns& records, const UnitFit& fit, const std::optional<EnergyPrice>& price) {
    const MeasureOptions& options = fit.options;
    std::vector<EnergyAnalysis> energies;
    for (const RunRecord* record : records) energies.push_back(analyse_energy(*record, options));
    UnitClaims claims;
    claims.options = options;
    claims.pv_charges = pv_charges(records, energies);
    claims.checks = Checker(unit, records, energies, fit, claims.pv_charges, options).checks();
    // The energy of one panel of several is not what the unit took.
    for (const PvCharge& charge : claims.pv_charges)
        for (std::size_t r = 0; r < records.size() && charge.panels.size() > 1; ++r)
            if (std::ranges::count(charge.panels, records[r]->run.uuid, &PanelShare::run_uuid) > 0) energies[r].track.energy_may_be_missing = true;
    claims.round_trip = round_trip(records, energies, options);
    claims.draws = own_draws(records, energies, fit, claims.round_trip, price);
    return claims;
}

} // namespace ullage
