// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_analysis/pv_charge.h"

#include "model/meter_gain.h"
#include "numerics/monte_carlo.h"
#include "run_analysis/charge_run.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace ullage {

namespace {

constexpr double least_overlap = 0.5;    ///< of the shorter run
constexpr double least_stretch_h = 0.25; ///< a quarter of an hour: noted minutes then count for little
constexpr double most_step_share = 0.1;  ///< of a register step in the energy of a stretch, as in charge_run.h

struct PvRun {
    const RunRecord* record;
    const EnergyAnalysis* energy;

    [[nodiscard]] UtcMs first_ms() const { return energy->track.points.front().time_ms; }
    [[nodiscard]] UtcMs last_ms() const { return energy->track.points.back().time_ms; }
    /// Energy since the run's first reading; straight between readings. Wh.
    [[nodiscard]] double energy_wh(UtcMs time_ms) const {
        const auto& points = energy->track.points;
        const auto after = std::ranges::lower_bound(points, time_ms, {}, &RegisterPoint::time_ms);
        if (after == points.begin()) return points.front().delivered_wh;
        if (after == points.end()) return points.back().delivered_wh;
        const auto before = after - 1;
        const double share = static_cast<double>(time_ms - before->time_ms) / static_cast<double>(after->time_ms - before->time_ms);
        return before->delivered_wh + share * (after->delivered_wh - before->delivered_wh);
    }
};

bool overlap(const PvRun& a, const PvRun& b) {
    const double shared_ms = static_cast<double>(std::min(a.last_ms(), b.last_ms()) - std::max(a.first_ms(), b.first_ms()));
    const double shorter_ms = static_cast<double>(std::min(a.last_ms() - a.first_ms(), b.last_ms() - b.first_ms()));
    return shorter_ms > 0 && shared_ms > least_overlap * shorter_ms;
}

/// Half-width of a sum whose panels have these shares, each in a unit of its own: gains common within a meter, all else independent.
struct SharedGains {
    std::map<std::string, double> gain_of_meter;
    double independent_square = 0;
    bool limits_known = true;

    void add(const PvRun& run, double gain_half_width, double independent) {
        if (!run.record->meter || !error_limit_percent(*run.record->meter)) limits_known = false;
        gain_of_meter[run.record->meter ? run.record->meter->uuid.text() : run.record->run.uuid.text()] += gain_half_width;
        independent_square += independent * independent;
    }
    [[nodiscard]] double half_width() const {
        double largest = 0, square = independent_square;
        for (const auto& [meter, gain] : gain_of_meter) largest = std::max(largest, gain);
        bool taken = false;
        for (const auto& [meter, gain] : gain_of_meter) {
            if (gain == largest && !taken) taken = true;
            else square += gain * gain / 3;
        }
        return half_width_of_sum(largest, std::sqrt(square));
    }
};

Quantity total_energy(const std::vector<PvRun>& runs) {
    double sum_wh = 0;
    SharedGains gains;
    for (const PvRun& run : runs) {
        const Quantity& part = run.energy->delivered_wh;
        if (!part.value || part.kind != Kind::measured)
            return not_known("charged_wh", "Wh",
                             say(phrase("run_analysis", "energy may be missing in run %1: %2"), say_number(run.record->number), part.reason));
        sum_wh += *part.value;
        gains.add(run, run.energy->budget.gain_half_width_wh, run.energy->budget.independent_wh);
    }
    if (!gains.limits_known)
        return known("charged_wh", "Wh", sum_wh, std::nullopt, Kind::measured,
                     say(phrase("run_analysis", "without interval, as a meter's error limit is not stated")));
    return known("charged_wh", "Wh", sum_wh, gains.half_width(), Kind::measured, say(phrase("run_analysis", "the sum of the panels")));
}

Quantity total_peak(const std::vector<PvRun>& runs) {
    UtcMs from_ms = runs.front().first_ms(), to_ms = runs.front().last_ms();
    std::vector<UtcMs> moments;
    for (const PvRun& run : runs) {
        from_ms = std::max(from_ms, run.first_ms());
        to_ms = std::min(to_ms, run.last_ms());
        for (const RegisterPoint& point : run.energy->track.points) moments.push_back(point.time_ms);
    }
    std::erase_if(moments, [&](UtcMs moment) { return moment < from_ms || moment > to_ms; });
    std::ranges::sort(moments);
    double highest_w = 0, lower_w = 0;
    for (std::size_t a = 0, b = 1; b < moments.size(); ++b) {
        const double hours = static_cast<double>(moments[b] - moments[a]) / 3'600'000;
        if (hours < least_stretch_h) continue;
        double watts = 0;
        SharedGains gains;
        bool resolved = true;
        for (const PvRun& run : runs) {
            const double energy_wh = run.energy_wh(moments[b]) - run.energy_wh(moments[a]);
            resolved = resolved && run.energy->register_step_wh <= most_step_share * energy_wh;
            watts += energy_wh / hours;
            const double limit = run.record->meter ? error_limit_percent(*run.record->meter).value_or(0) / 100 : 0;
            gains.add(run, limit * energy_wh / hours, run.energy->register_step_wh / std::sqrt(6) / hours);
        }
        a = b;
        if (!resolved || watts <= highest_w) continue;
        highest_w = watts;
        lower_w = watts - (gains.limits_known ? gains.half_width() : 0);
    }
    if (highest_w <= 0)
        return not_known("peak_charge_w", "W", say(phrase("run_analysis", "the panels were not read together often enough to add their powers")));
    Quantity peak = known("peak_charge_w", "W", highest_w, std::nullopt, Kind::at_least,
                          say(phrase("run_analysis", "the highest sum of the panels' mean powers while all of them ran")));
    peak.lower = lower_w;
    return peak;
}

Message words_of_charge(const PvCharge& charge) {
    std::vector<Message> panels;
    for (const PanelShare& panel : charge.panels)
        panels.push_back(say(panel.panel.empty() ? phrase("run_analysis", "run %1: %2") : phrase("run_analysis", "run %1 (%3): %2"),
                             say_number(panel.run_number), say_quantity(panel.charged_wh, 0), panel.panel));
    const Message each = say_joined(panels, "; "), peak = say_quantity(charge.peak_charge_w, 0);
    if (panels.size() == 1) return say(phrase("run_analysis", "Charge from PV, %1, peak %2"), each, peak);
    return say_count(panels.size(),
                     phrases("run_analysis", "Charge from PV by %n panels together: %1, peak %2; %3", "Charge from PV by %n panel: %1, peak %2; %3"),
                     say_quantity(charge.charged_wh, 0), peak, each);
}

} // namespace

std::vector<PvCharge> pv_charges(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies) {
    std::vector<std::vector<PvRun>> groups;
    for (std::size_t r = 0; r < records.size(); ++r) {
        const Run& run = records[r]->run;
        if (run.kind != RunKind::charge || run.charge_source != ChargeSource::pv || energies[r].track.points.size() < 2) continue;
        const PvRun added{records[r], &energies[r]};
        const auto together = std::ranges::find_if(groups, [&added](const std::vector<PvRun>& group) {
            return std::ranges::any_of(group, [&added](const PvRun& other) { return overlap(other, added); });
        });
        if (together != groups.end()) together->push_back(added);
        else groups.push_back({added});
    }
    std::vector<PvCharge> charges;
    for (const std::vector<PvRun>& group : groups) {
        PvCharge& charge = charges.emplace_back();
        for (const PvRun& run : group) {
            const ChargeRun alone = analyse_charge(*run.record, *run.energy);
            charge.panels.push_back({run.record->run.uuid, run.record->number, run.record->run.load, alone.charged_wh, alone.peak_charge_w});
        }
        charge.charged_wh = group.size() == 1 ? charge.panels.front().charged_wh : total_energy(group);
        charge.peak_charge_w = group.size() == 1 ? charge.panels.front().peak_charge_w : total_peak(group);
        charge.sentence = words_of_charge(charge);
    }
    return charges;
}

} // namespace ullage
