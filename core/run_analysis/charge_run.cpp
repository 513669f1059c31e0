// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_analysis/charge_run.h"

#include "base/number.h"
#include "measure/load_steps.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double full_percent = 100;
constexpr double coarsest_step = 0.1; ///< of a step's energy, one register step

struct Power {
    UtcMs from_ms = 0, to_ms = 0;
    double watts = 0;
};

std::vector<Power> resolved_steps(const RunRecord& record, const EnergyAnalysis& energy) {
    std::vector<Power> steps;
    for (const LoadStep& step : load_steps(energy.track, record.run.end)) {
        const double wh = step.mean_w * hours_between(step.from_ms, step.to_ms);
        if (energy.register_step_wh <= coarsest_step * wh) steps.push_back({step.from_ms, step.to_ms, step.mean_w});
    }
    return steps;
}

void take_gauges(const RunRecord& record, ChargeRun& charge) {
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !reading.values.gauge_percent) continue;
        if (!charge.first_gauge_percent) charge.first_gauge_percent = reading.values.gauge_percent;
        charge.last_gauge_percent = reading.values.gauge_percent;
    }
    charge.ended_full = charge.last_gauge_percent && *charge.last_gauge_percent >= full_percent;
}

Quantity time_to_full(const RunRecord& record, const EnergyAnalysis& energy) {
    constexpr const char* key = "charge_time_h";
    std::optional<UtcMs> start_ms, below_ms, full_ms;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (!start_ms) start_ms = reading.values.time_ms;
        if (!reading.values.gauge_percent || full_ms) continue;
        (*reading.values.gauge_percent >= full_percent ? full_ms : below_ms) = reading.values.time_ms;
    }
    const double doubt_h = energy.options.moment_doubt_min / 60;
    if (!full_ms) {
        Quantity duration = energy.duration_h;
        duration.key = key;
        if (!duration.value) return duration;
        duration.kind = Kind::at_least;
        duration.upper.reset();
        duration.reason = say(phrase("run_analysis", "no reading shows the gauge full"));
        return duration;
    }
    if (!below_ms) return not_known(key, "h", say(phrase("run_analysis", "the gauge shows full from the first reading on")));
    const double lower_h = hours_between(*start_ms, *below_ms) - doubt_h, upper_h = hours_between(*start_ms, *full_ms) + doubt_h;
    return known(key, "h", (lower_h + upper_h) / 2, (upper_h - lower_h) / 2, Kind::bracket,
                 say(phrase("run_analysis", "full was reached between the last reading below it and the first that shows it")));
}

Quantity peak_power(const RunRecord& record, const std::vector<Power>& steps) {
    double highest_w = 0;
    bool noted = false;
    for (const Power& step : steps) highest_w = std::max(highest_w, step.watts);
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.meter_w && *reading.values.meter_w > highest_w) {
            highest_w = *reading.values.meter_w;
            noted = true;
        }
    if (highest_w <= 0)
        return not_known("peak_charge_w", "W", say(phrase("run_analysis", "no power is noted, and no two register readings lie far enough apart")));
    const double limit = record.meter ? error_limit_percent(*record.meter).value_or(0) / 100 : 0;
    Quantity peak = known("peak_charge_w", "W", highest_w, std::nullopt, Kind::at_least,
                          noted ? say(phrase("run_analysis", "the highest that the meter showed at a reading"))
                                : say(phrase("run_analysis", "the highest mean between two register readings")));
    peak.lower = highest_w * (1 - 0.95 * limit);
    if (limit <= 0)
        peak.reason = say_joined({peak.reason, say(phrase("run_analysis", "without interval, as the meter's error limit is not stated"))}, "; ");
    return peak;
}

void find_taper(const RunRecord& record, const std::vector<Power>& steps, ChargeRun& charge) {
    charge.taper_h = not_known("taper_h", "h", say(phrase("run_analysis", "fewer than three stretches between register readings resolve the power")));
    if (steps.size() < 3) return;
    double highest_w = 0;
    for (const Power& step : steps) highest_w = std::max(highest_w, step.watts);
    std::size_t first = steps.size();
    while (first > 0 && steps[first - 1].watts < taper_share * highest_w) --first;
    if (first == steps.size()) {
        charge.taper_h = known("taper_h", "h", 0, std::nullopt, Kind::measured,
                               say(phrase("run_analysis", "no taper: the last stretch is within 10 % of the highest power; it has no interval")));
        return;
    }
    const double longest_h = hours_between(first > 0 ? steps[first - 1].from_ms : steps[first].from_ms, steps.back().to_ms);
    const double shortest_h = hours_between(steps[first].to_ms, steps.back().to_ms);
    charge.taper_h = known("taper_h", "h", hours_between(steps[first].from_ms, steps.back().to_ms), std::nullopt, Kind::bracket,
                           say(phrase("run_analysis", "power below 90 % of its highest, %1 W, until the end"), say_number(highest_w, 0)));
    charge.taper_h.lower = shortest_h;
    charge.taper_h.upper = longest_h;
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.gauge_percent && reading.values.time_ms <= steps[first].from_ms)
            charge.taper_gauge_percent = reading.values.gauge_percent;
}

Message say_charged(const Run& run, const Quantity& charged_wh) {
    const Message energy = say_quantity(charged_wh, 0);
    if (!run.charge_source) return say(phrase("run_analysis", "From a source that is not stated: %1 in"), energy);
    return *run.charge_source == ChargeSource::pv ? say(phrase("run_analysis", "From the PV input: %1 in"), energy)
                                                  : say(phrase("run_analysis", "From the wall: %1 in"), energy);
}

Message sentence_of(const Run& run, const ChargeRun& charge) {
    std::vector<Message> parts{say_charged(run, charge.charged_wh)};
    if (charge.first_gauge_percent && charge.last_gauge_percent)
        parts.push_back(say(phrase("run_analysis", "gauge %1 to %2 %"), say_digits(exact_text(*charge.first_gauge_percent)),
                            say_digits(exact_text(*charge.last_gauge_percent))));
    const Message time = say_quantity(charge.charge_time_h, 1);
    if (charge.charge_time_h.value) parts.push_back(charge.ended_full ? say(phrase("run_analysis", "%1 to full"), time) : time);
    return say_joined(parts, ", ") + ".";
}

} // namespace

ChargeRun analyse_charge(const RunRecord& record, const EnergyAnalysis& energy) {
    ChargeRun charge;
    charge.charged_wh = energy.delivered_wh;
    charge.charged_wh.key = "charged_wh";
    take_gauges(record, charge);
    charge.charge_time_h = time_to_full(record, energy);
    charge.mean_charge_w = energy.mean_load_w;
    charge.mean_charge_w.key = "mean_charge_w";
    const std::vector<Power> steps = resolved_steps(record, energy);
    charge.peak_charge_w = peak_power(record, steps);
    find_taper(record, steps, charge);
    charge.sentence = sentence_of(record.run, charge);
    return charge;
}

} // namespace ullage
