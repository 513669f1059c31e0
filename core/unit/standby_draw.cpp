// SPDX-License-Identifier: GPL-3.0-or-later
#include "unit/standby_draw.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {

namespace {

constexpr double hours_per_day = 24, days_per_month = 365.25 / 12;
constexpr double standby_full_percent = 100;

struct GaugeFall {
    double drop_pt = 0, hours = 0, first_percent = 0, last_percent = 0;
};

/// From the first to the last reading of the gauge.
std::optional<GaugeFall> gauge_fall(const RunRecord& record) {
    const Reading *first = nullptr, *last = nullptr;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn || !reading.values.gauge_percent) continue;
        if (!first) first = &reading;
        last = &reading;
    }
    if (!first || last->values.time_ms <= first->values.time_ms) return std::nullopt;
    return GaugeFall{*first->values.gauge_percent - *last->values.gauge_percent, hours_between(first->values.time_ms, last->values.time_ms),
                     *first->values.gauge_percent, *last->values.gauge_percent};
}

Quantity by_gauge(const char* key, const RunRecord& record) {
    const auto fall = gauge_fall(record);
    if (!fall) return not_known(key, "W", say(phrase("unit", "run %1 has no two gauge readings"), say_number(record.number)));
    const double rated_wh = record.unit.rated_energy_wh.value_or(0);
    if (rated_wh <= 0) return not_known(key, "W", say(phrase("unit", "the rated energy of the unit is not stated")));
    const double step = record.unit.gauge_step_percent;
    // Two readings of the gauge, each good to half a step: triangular.
    const double half_pt = step * (1 - std::sqrt(0.05));
    const double watts_per_pt = rated_wh / 100 / fall->hours;
    const Message reason = say(phrase("unit", "run %1: the gauge fell from %2 to %3 % in %4 h; assumes an accurate gauge and the rated energy"),
                               say_number(record.number), say_digits(exact_text(fall->first_percent)), say_digits(exact_text(fall->last_percent)),
                               say_number(fall->hours, 1));
    Quantity draw = known(key, "W", fall->drop_pt * watts_per_pt, half_pt * watts_per_pt, Kind::projected, reason);
    if (draw.lower && *draw.lower < 0) draw.lower = 0;
    return draw;
}

bool starts_full(const RunRecord& record) {
    const auto fall = gauge_fall(record);
    return record.run.started_full.value_or(fall && fall->first_percent >= standby_full_percent);
}

/// The charge after a standby from full, back to full: its energy over the time that the unit stood.
std::optional<Quantity> by_recharge(const RunRecord& standby, const EnergyAnalysis& stood, const RunRecord& charge, const EnergyAnalysis& energy) {
    if (charge.run.kind != RunKind::charge || !starts_full(standby) || energy.track.energy_may_be_missing || !energy.delivered_wh.value)
        return std::nullopt;
    std::optional<double> last_gauge;
    for (const Reading& reading : charge.readings)
        if (!reading.withdrawn && reading.values.gauge_percent) last_gauge = reading.values.gauge_percent;
    const double hours = hours_between(stood.start_ms, energy.start_ms);
    if (!last_gauge || *last_gauge < standby_full_percent || hours <= 0) return std::nullopt;
    const Quantity& in = energy.delivered_wh;
    std::optional<double> half;
    if (const auto half_wh = in.half_width()) half = *half_wh / hours;
    return known("standby_draw_w", "W", *in.value / hours, half, Kind::measured,
                 say(phrase("unit", "run %1 put back what %2 h of standing (run %3) had taken; at the meter, the charging loss inside"),
                     say_number(charge.number), say_number(hours, 1), say_number(standby.number)));
}

Quantity scaled(const Quantity& draw, const char* key, double hours) {
    Quantity made = draw;
    made.key = key;
    made.unit = "Wh";
    for (auto* part : {&made.value, &made.lower, &made.upper})
        if (*part) *part = **part * hours;
    return made;
}

void complete(StandingDraw& draw, bool at_charger, const RoundTrip& trip, const std::optional<EnergyPrice>& price) {
    draw.per_day_wh = scaled(draw.draw_w, "own_wh_per_day", hours_per_day);
    draw.per_month_wh = scaled(draw.draw_w, "own_wh_per_month", hours_per_day * days_per_month);
    if (!draw.draw_w.value) return;
    double factor = 1;
    if (at_charger) draw.basis = say(phrase("unit", "as metered before the charger"));
    else if (trip.efficiency.value && *trip.efficiency.value > 0) {
        factor = 1 / *trip.efficiency.value;
        draw.basis = say(phrase("unit", "with the loss of the round trip"));
    } else draw.basis = say(phrase("unit", "without the charging loss, which is not known"));
    if (!price) return;
    draw.cost_per_day = *draw.per_day_wh.value / 1000 * factor * price->per_kwh;
    draw.cost_per_month = *draw.per_month_wh.value / 1000 * factor * price->per_kwh;
}

} // namespace

StandingDraws own_draws(const UnitRuns& records, const std::vector<EnergyAnalysis>& energies, const UnitFit& fit, const RoundTrip& trip,
                        const std::optional<EnergyPrice>& price) {
    StandingDraws draws;
    draws.output_on.draw_w = fit.no_load_draw_w;
    draws.output_off.draw_w =
        not_known("standby_draw_w", "W",
                  say(phrase("unit", "no standby run: leave the unit full with its output off for days, reading the gauge, then charge it")));
    bool at_charger = false;
    for (std::size_t r = 0; r < records.size(); ++r) {
        if (records[r]->run.kind == RunKind::no_load_drain && !fit.no_load_draw_w.value)
            draws.output_on.draw_w = by_gauge("no_load_draw_w", *records[r]);
        if (records[r]->run.kind != RunKind::standby) continue;
        std::optional<Quantity> recharge;
        if (r + 1 < records.size()) recharge = by_recharge(*records[r], energies[r], *records[r + 1], energies[r + 1]);
        if (!recharge && at_charger) continue; // a metered answer goes before a later one of the gauge
        at_charger = recharge.has_value();
        draws.output_off.draw_w = recharge ? *recharge : by_gauge("standby_draw_w", *records[r]);
    }
    complete(draws.output_on, false, trip, price);
    complete(draws.output_off, at_charger, trip, price);
    return draws;
}

} // namespace ullage
