// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_analysis/round_trip.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/usable.h"
#include "model/meter_gain.h"
#include "numerics/distributions.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <map>

namespace ullage {

namespace {

constexpr double cycle_full_percent = 100;
constexpr double least_span_pt = 20;

struct GaugeEnds {
    double first = 0, last = 0;
};

std::optional<GaugeEnds> gauge_ends(const RunRecord& record) {
    std::optional<GaugeEnds> ends;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !reading.values.gauge_percent) continue;
        if (!ends) ends = GaugeEnds{*reading.values.gauge_percent, 0};
        ends->last = *reading.values.gauge_percent;
    }
    return ends;
}

bool ended_by_cut_off(const RunRecord& record) { return record.run.end == RunEnd::cut_off_seen || record.run.end == RunEnd::found_off; }
bool delivers(const RunRecord& record) { return record.run.kind != RunKind::charge; }

/// Energy known and whole, over some time.
bool counts(const RunRecord& record, const EnergyAnalysis& energy) {
    return record.run.end != RunEnd::still_running && energy.track.usable() && !energy.track.energy_may_be_missing && energy.track.total_wh() > 0;
}

bool charged_full(const RunRecord& record) {
    const auto ends = gauge_ends(record);
    return record.run.kind == RunKind::charge && ends && ends->last >= cycle_full_percent;
}

/// Energy that went in after the gauge first showed full: of the top-up, or of a unit that feeds itself while its charger stays plugged in. None of
/// what a register step may hide.
double after_full_wh(const RunRecord& record, const EnergyAnalysis& energy) {
    for (const PairedPoint& point : energy.points)
        if (point.gauge_percent >= cycle_full_percent) {
            const double wh = energy.track.total_wh() - point.delivered_wh;
            return wh > 2 * energy.register_step_wh * typical_correction(record.meter) ? wh : 0;
        }
    return 0;
}

/// Down to empty: by cut-off, or by a gauge that shows no more than a step.
bool begins_empty(const RunRecord& charge) {
    const auto ends = gauge_ends(charge);
    return ends && ends->first <= std::max(charge.unit.gauge_step_percent, 1.0);
}

UtcMs last_ms(const RunRecord& record) {
    UtcMs last = 0;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn) last = reading.values.time_ms;
    return last;
}

/// Which meter measured a run; empty where none is stated. Two meters of one run share their errors with no other.
std::string meter_key(const RunRecord& record, const EnergyAnalysis& energy) {
    if (energy.track.meters.size() > 1) return "run " + record.run.uuid.text();
    return record.run.meter_uuid.value_or(MeterId()).text();
}

class Finder {
public:
    Finder(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies) : records_(records), energies_(energies), used_(records.size()) {}

    std::vector<RoundTripCycle> cycles() {
        for (std::size_t c = 0; c < records_.size(); ++c) {
            if (records_[c]->run.kind != RunKind::charge || !counts(*records_[c], energies_[c])) continue;
            const bool before = c > 0, after = c + 1 < records_.size();
            const bool from_cut_off = before && ended_by_cut_off(*records_[c - 1]) && delivers(*records_[c - 1]);
            // A charge that came first, with the gauge at its bottom, began as empty as that gauge can tell.
            const double u_begin = from_cut_off ? 0 : std::max(records_[c]->unit.gauge_step_percent, 1.0) / 100 / std::sqrt(3.0);
            if (charged_full(*records_[c]) && (from_cut_off || begins_empty(*records_[c])) && after && drained(c + 1))
                add(c, c + 1,
                    from_cut_off ? say(phrase("run_analysis", "from cut-off to full and back"))
                                 : say(phrase("run_analysis", "from empty by its gauge to full and back")),
                    u_begin);
            else if (charged_full(*records_[c]) && before && drained(c - 1))
                add(c, c - 1, say(phrase("run_analysis", "from full to cut-off and back")), 0);
            else if (!(before && equal_ends(c, c - 1)) && after) (void)equal_ends(c, c + 1);
        }
        return found_;
    }

private:
    [[nodiscard]] bool drained(std::size_t d) const { return !used_[d] && is_full_drain(*records_[d]) && counts(*records_[d], energies_[d]); }

    bool equal_ends(std::size_t c, std::size_t d) {
        if (used_[d] || records_[d]->run.kind != RunKind::drain || !counts(*records_[d], energies_[d])) return false;
        const auto charge = gauge_ends(*records_[c]), drain = gauge_ends(*records_[d]);
        if (!charge || !drain || drain->first - drain->last < least_span_pt) return false;
        const double step = records_[c]->unit.gauge_step_percent;
        if (std::abs(charge->first - drain->last) >= step / 2 || std::abs(charge->last - drain->first) >= step / 2) return false;
        // Two ends, each the difference of two readings with the gauge's step.
        const double u_ends = step / std::sqrt(3.0) / (drain->first - drain->last);
        add(c, d,
            say(phrase("run_analysis", "from %1 to %2 % and back by the gauge"), say_digits(exact_text(drain->last)),
                say_digits(exact_text(drain->first))),
            u_ends);
        return true;
    }

    void add(std::size_t c, std::size_t d, const Message& ends, double u_ends) {
        RoundTripCycle cycle;
        cycle.charge_uuid = records_[c]->run.uuid;
        cycle.drain_uuid = records_[d]->run.uuid;
        cycle.charge_number = records_[c]->number;
        cycle.drain_number = records_[d]->number;
        cycle.charged_wh = energies_[c].track.total_wh();
        cycle.delivered_wh = energies_[d].track.total_wh();
        cycle.u_charged_wh = energies_[c].budget.independent_wh;
        cycle.u_delivered_wh = energies_[d].budget.independent_wh;
        cycle.u_ends = u_ends;
        cycle.charge_meter = meter_key(*records_[c], energies_[c]);
        cycle.drain_meter = meter_key(*records_[d], energies_[d]);
        cycle.charge_limit_percent = energies_[c].budget.gain_percent;
        cycle.drain_limit_percent = energies_[d].budget.gain_percent;
        cycle.charge_w = energies_[c].mean_load_w.value.value_or(0);
        cycle.drain_w = energies_[d].mean_load_w.value.value_or(0);
        if (records_[c]->meter) cycle.charge_load_part_wh = load_part_percent(*records_[c]->meter).value_or(0) / 100 * cycle.charged_wh;
        if (records_[d]->meter) cycle.drain_load_part_wh = load_part_percent(*records_[d]->meter).value_or(0) / 100 * cycle.delivered_wh;
        cycle.after_full_wh = after_full_wh(*records_[c], energies_[c]);
        cycle.source = records_[c]->run.charge_source;
        cycle.ends = ends;
        const std::size_t first = std::min(c, d), second = std::max(c, d);
        cycle.between_h = std::max(0.0, hours_between(last_ms(*records_[first]), energies_[second].start_ms));
        used_[c] = used_[d] = true;
        found_.push_back(std::move(cycle));
    }

    const UnitRuns& records_;
    const std::vector<EnergyAnalysis>& energies_;
    std::vector<bool> used_;
    std::vector<RoundTripCycle> found_;
};

bool states_both_meters(const RoundTripCycle& cycle) { return !cycle.charge_meter.empty() && !cycle.drain_meter.empty(); }

struct MeterShare {
    double share = 0; ///< of the delivered less of the charged energy
    std::optional<double> limit_percent;
};

/// Absent where a meter that counts has no stated limit, or is not stated itself: two meters that nobody named may be two.
std::optional<double> half_width(const std::vector<RoundTripCycle>& cycles, double charged_wh, double delivered_wh, const MeasureOptions& options) {
    if (!std::ranges::all_of(cycles, states_both_meters)) return std::nullopt;
    std::map<std::string, MeterShare> meters;
    double variance = 0, repeats = 0;
    for (const RoundTripCycle& cycle : cycles) {
        repeats += std::pow(options.repeatability_percent / 100 * cycle.delivered_wh / delivered_wh, 2);
        meters[cycle.drain_meter].share += cycle.delivered_wh / delivered_wh;
        meters[cycle.drain_meter].limit_percent = cycle.drain_limit_percent;
        meters[cycle.charge_meter].share -= cycle.charged_wh / charged_wh;
        meters[cycle.charge_meter].limit_percent = cycle.charge_limit_percent;
        variance += std::pow(cycle.u_delivered_wh / delivered_wh, 2) + std::pow(cycle.u_charged_wh / charged_wh, 2) +
                    std::pow(cycle.u_ends * cycle.delivered_wh / delivered_wh, 2) + std::pow(cycle.after_full_wh / charged_wh, 2) / 12;
        // One meter cancels only in what is common to both powers.
        if (cycle.charge_meter == cycle.drain_meter && are_unlike_loads(cycle.charge_w, cycle.drain_w))
            variance += (std::pow(cycle.drain_load_part_wh / delivered_wh, 2) + std::pow(cycle.charge_load_part_wh / charged_wh, 2)) / 3;
    }
    double largest = 0;
    for (const auto& [uuid, meter] : meters) {
        if (std::abs(meter.share) < 1e-12) continue;
        if (!meter.limit_percent) return std::nullopt;
        const double part = std::abs(meter.share) * *meter.limit_percent / 100;
        variance += std::pow(std::min(part, largest), 2) / 3;
        largest = std::max(largest, part);
    }
    constexpr double unlimited = std::numeric_limits<double>::infinity();
    double freedom = unlimited;
    if (options.repeatability_source == RepeatabilitySource::pooled && options.repeatability_degrees > 0) {
        const UncertaintyPart parts[] = {{std::sqrt(variance), unlimited}, {std::sqrt(repeats), static_cast<double>(options.repeatability_degrees)}};
        freedom = effective_degrees_of_freedom(parts).value_or(unlimited);
    }
    const double normal_sd =
        std::sqrt(variance + repeats) * coverage_factor(options.coverage, freedom) / coverage_factor(options.coverage, unlimited);
    return delivered_wh / charged_wh * half_width_of_sum(largest, normal_sd, options.coverage);
}

Message boundary_words(const std::vector<RoundTripCycle>& cycles) {
    const auto all = [&](std::optional<ChargeSource> source) {
        return std::ranges::all_of(cycles, [&](const auto& each) { return each.source == source; });
    };
    double between_h = 0;
    for (const RoundTripCycle& cycle : cycles) between_h += cycle.between_h;
    return say(
        all(ChargeSource::wall) ? phrase("run_analysis", "From AC at the wall to AC at the socket; the charger, the unit's own draw and %1 h of "
                                                         "standing between the runs are inside.")
        : all(ChargeSource::pv) ? phrase("run_analysis", "From DC at the PV input to AC at the socket; the charger, the unit's own draw and %1 h of "
                                                         "standing between the runs are inside.")
                                : phrase("run_analysis", "From the charging meter (its place is not stated for every charge) to AC at the socket; "
                                                         "the charger, the unit's own draw and %1 h of standing between the runs are inside."),
        say_number(between_h, 1));
}

/// Of what the meters have in common.
Message gains_words(const std::vector<RoundTripCycle>& cycles) {
    const std::string& meter = cycles.front().charge_meter;
    const bool one_meter = !meter.empty() && std::ranges::all_of(cycles, [&](const RoundTripCycle& each) {
        return each.charge_meter == meter && each.drain_meter == meter;
    });
    const bool unlike = std::ranges::any_of(cycles, [](const auto& each) { return are_unlike_loads(each.charge_w, each.drain_w); });
    if (one_meter && unlike)
        return say(phrase("run_analysis", "one meter measured both, so the part of its error that is common to both powers cancels"));
    if (one_meter) return say(phrase("run_analysis", "one meter measured both, so its gain cancels"));
    if (!std::ranges::all_of(cycles, states_both_meters))
        return say(phrase("run_analysis", "no meter is stated for a charge or a drain, so no gain cancels"));
    return say(phrase("run_analysis", "different meters, so their gains do not cancel"));
}

/// What the efficiency rests on, clause by clause. `after_full`: energy taken after the gauge first showed full, Wh.
Message efficiency_reason(const std::vector<RoundTripCycle>& cycles, bool has_interval, double after_full, const MeasureOptions& options) {
    std::vector<Message> clauses{say_count(cycles.size(),
                                           cycles.size() > 1
                                               ? phrases("run_analysis", "%n closed cycles, %1 and others", "%n closed cycle, %1 and others")
                                               : phrases("run_analysis", "%n closed cycles, %1", "%n closed cycle, %1"),
                                           cycles.front().ends)};
    if (std::ranges::any_of(cycles, [](const auto& each) { return each.u_ends > 0; }))
        clauses.push_back(say(phrase("run_analysis", "assumes that equal gauge readings mean equal energy stored")));
    clauses.push_back(gains_words(cycles));
    if (!has_interval && std::ranges::all_of(cycles, states_both_meters))
        clauses.push_back(say(phrase("run_analysis", "no interval, as the error limit of a meter is not stated")));
    if (has_interval)
        clauses.push_back(
            say(phrase("run_analysis", "full and cut-off are taken to repeat within %1 %"), say_number(options.repeatability_percent, 2)));
    if (after_full > 0)
        clauses.push_back(
            say(phrase("run_analysis", "up to %1 went in after the gauge first showed full, to top up or to feed the unit itself, which "
                                       "is not known: it lies between both"),
                say_energy(after_full)));
    return say_joined(clauses, "; ");
}

} // namespace

RoundTrip round_trip_of(std::vector<RoundTripCycle> cycles, const MeasureOptions& options) {
    constexpr const char* key = "round_trip_efficiency";
    RoundTrip trip;
    trip.cycles = std::move(cycles);
    if (trip.cycles.empty()) {
        trip.efficiency = not_known(
            key, "1",
            say(phrase("run_analysis", "no closed cycle: charge to full after a cut-off with the energy metered, and drain to cut-off again")));
        trip.sentence = say(phrase("run_analysis", "Round trip not known: %1."), trip.efficiency.reason);
        return trip;
    }
    double charged_wh = 0, delivered_wh = 0, after_full = 0;
    for (const RoundTripCycle& cycle : trip.cycles) {
        charged_wh += cycle.charged_wh;
        delivered_wh += cycle.delivered_wh;
        after_full += cycle.after_full_wh;
    }
    const auto half = half_width(trip.cycles, charged_wh, delivered_wh, options);
    // Half of it is left out, the other half allowed for in the interval.
    trip.efficiency = known(key, "1", delivered_wh / (charged_wh - after_full / 2), half, after_full > 0 ? Kind::bracket : Kind::measured,
                            efficiency_reason(trip.cycles, half.has_value(), after_full, options));
    trip.boundary = boundary_words(trip.cycles);
    trip.sentence = say(phrase("run_analysis", "Round trip %1: %2 out of %3 in."), say_quantity(trip.efficiency, 3), say_energy(delivered_wh),
                        say_energy(charged_wh));
    return trip;
}

RoundTrip round_trip(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies, const MeasureOptions& options) {
    return round_trip_of(Finder(records, energies).cycles(), options);
}

} // namespace ullage
