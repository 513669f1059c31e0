// SPDX-License-Identifier: GPL-3.0-or-later
#include "forecast/accounts.h"

#include "base/number.h"
#include "base/quantity.h"
#include "forecast/inside/outlook.h"
#include "forecast/inside/what_is_left.h"
#include "gauge/feasibility.h"
#include "gauge/share_bounds.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace ullage {
namespace {

constexpr double least_wrong_share = 0.02; ///< of the posterior
constexpr double least_idle_gap_pt = 1.0;  ///< falls in an hour without load that a reading can tell apart
constexpr double least_account_steps = 2;

struct Range {
    double low = 0, high = 0;
    void take(double value) {
        low = std::min(low, value);
        high = std::max(high, value);
    }
};

Quantity bracket(std::string key, std::string unit, const Range& range, Message reason = {}) {
    Quantity result = known(std::move(key), std::move(unit), (range.low + range.high) / 2, std::nullopt, Kind::bracket, std::move(reason));
    result.lower = range.low;
    result.upper = range.high;
    return result;
}

Quantity middle_of(std::string key, std::string unit, const Spread& spread) {
    Quantity result = known(std::move(key), std::move(unit), spread.middle, std::nullopt, Kind::projected,
                            say(phrase("forecast", "middle 95 % of what remains possible")));
    result.lower = spread.lower;
    result.upper = spread.upper;
    return result;
}

/// "26", "26 to 31".
Message say_span(const Range& range) {
    if (fixed_text(range.low, 0) == fixed_text(range.high, 0)) return say_number(range.low, 0);
    return say(phrase("forecast", "%1 to %2"), say_number(range.low, 0), say_number(range.high, 0));
}

Range range_of(const Quantity& quantity, double factor = 1) { return {factor * quantity.lower.value_or(0), factor * quantity.upper.value_or(0)}; }

class Accounts {
public:
    Accounts(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options)
        : record_(record), energy_(energy), options_(options),
          outlook_(outlook_of(record, energy, unit_fit, options)), setup_{record, unit_fit,    outlook_.loads, outlook_.trend,
                                                                          true,   seen_on_h(), options},
          load_w_(outlook_.loads.recent_w()) {}

    TwoAccounts tell() {
        TwoAccounts accounts;
        accounts.told = true;
        accounts.from_ms = outlook_.base_ms;
        tell_right(accounts.right);
        tell_wrong(accounts.wrong);
        if (!accounts.right.ruled_out && !accounts.wrong.ruled_out) tell_what_decides(accounts);
        return accounts;
    }

private:
    [[nodiscard]] double seen_on_h() const {
        UtcMs last_ms = outlook_.base_ms;
        for (const Reading& reading : record_.readings)
            if (!reading.withdrawn) last_ms = std::max(last_ms, reading.values.time_ms);
        return hours_between(outlook_.base_ms, last_ms);
    }

    void tell_right(GaugeAccount& account) {
        const TrendPoint &first = outlook_.trend.points.front(), &last = outlook_.trend.points.back();
        const double step_pt = record_.unit.gauge_step_percent, rated_wh = *record_.unit.rated_energy_wh;
        const double from_percent = outlook_.trend.started_full ? 100 : first.gauge_percent;
        const double used = (from_percent - last.gauge_percent) / 100;
        const double doubt = (step_pt / 2 + charge_for_energy_pt) / 100;
        const double since_wh = outlook_.trend.started_full ? 0 : first.delivered_wh;
        const double since_h = outlook_.trend.started_full ? 0 : first.on_hours;
        const double wh = last.delivered_wh - since_wh, hours = last.on_hours - since_h;
        const double most_wh = *outlook_.trend.most_wh;
        std::optional<Range> fraction, draw, left, to_come;
        for (const double off : {-doubt, 0.0, doubt}) {
            const double u = used + off, f = last.gauge_percent / 100 - off;
            if (u <= 0) continue;
            const double least_e = std::max(wh / u, least_of_label * rated_wh);
            // Labels err: a battery that holds somewhat more than its label allows is no impossible one.
            if (least_e > softly_up_to * most_wh) continue;
            for (const double e : {least_e, std::max(least_e, most_wh)}) {
                const double draw_w = hours > 0 ? std::max(0.0, (u * e - wh) / hours) : 0;
                const double since_last_wh =
                    outlook_.trend.end.delivered_wh - last.delivered_wh + draw_w * (outlook_.trend.end.on_hours - last.on_hours);
                const double left_wh = std::max(0.0, std::max(0.0, f) * e - since_last_wh);
                const double hours_left = load_w_ + draw_w > 0 ? left_wh / (load_w_ + draw_w) : 0;
                const double come_wh = hours_left * load_w_;
                const double whole_wh = (outlook_.trend.end.delivered_wh - since_wh + come_wh) / std::max(from_percent / 100, 1e-9);
                const auto take = [](std::optional<Range>& range, double value) {
                    if (range) range->take(value);
                    else range = Range{value, value};
                };
                take(fraction, whole_wh / rated_wh);
                take(draw, draw_w);
                take(left, hours_left);
                take(to_come, come_wh);
            }
        }
        account.gauge_error_pt = bracket("gauge_error_pt", "pt", {-100 * doubt, 100 * doubt});
        const GaugeFeasibility bound = gauge_feasibility(record_, energy_, options_);
        const double error_pt = bound.least_error_pt.value.value_or(0);
        if (!fraction) {
            account.ruled_out = true;
            account.evidence = say(phrase("forecast", "%1 for %2 points would be a battery of over %3 % of its label"), say_energy(wh),
                                   say_number(100 * used, 0), say_number(100 * softly_up_to * options_.most_of_label, 0));
        } else if (error_pt > share_tolerance_pt(step_pt)) {
            account.ruled_out = true;
            account.evidence = bound.sentence;
        }
        if (!fraction) {
            account.usable_fraction = not_known("usable_fraction", "1", account.evidence);
            account.no_load_draw_w = not_known("no_load_draw_w", "W", account.evidence);
            account.to_come_wh = not_known("to_come_wh", "Wh", account.evidence);
            account.hours_left = not_known("hours_left", "h", account.evidence);
            account.sentence = say(phrase("forecast", "Not possible: %1."), account.evidence);
            return;
        }
        const Message words = say(phrase("forecast", "if the gauge is right, at this load"));
        account.usable_fraction = bracket("usable_fraction", "1", *fraction, words);
        account.no_load_draw_w = bracket("no_load_draw_w", "W", *draw, words);
        account.to_come_wh = bracket("to_come_wh", "Wh", *to_come, words);
        account.hours_left = bracket("hours_left", "h", *left, words);
        const bool as_promised = wh / used / rated_wh > 1 - right_within_pt / 100;
        const Message came = say(as_promised ? phrase("forecast", "%1 for %2 points is about what the label promises.")
                                             : phrase("forecast", "Only %1 came out for the %2 points shown."),
                                 say_energy(wh), say_number(100 * used, 0));
        const Message takes = draw->high < 0.5 ? say(phrase("forecast", "Nothing is left that the unit could take for itself."))
                                               : say(phrase("forecast", "The unit would take %1 W for itself while your load takes %2 W."),
                                                     say_span(*draw), say_number(load_w_, 0));
        account.sentence = came + " " + takes;
    }

    void tell_wrong(GaugeAccount& account) {
        const auto fit = by_earlier_drains(setup_);
        const std::vector<LeftWeight> lefts = fit ? around(*fit) : lefts_by_trend(setup_);
        double all = 0, wrong = 0;
        std::vector<double> weights, errors;
        WeightedValues error_values, fractions, to_come;
        for (const LeftWeight& left : lefts) {
            const double from = outlook_.trend.started_full ? 1 : outlook_.trend.points.front().gauge_percent / 100;
            const double error_pt = gauge_error_at_last_pt(outlook_.trend, left);
            const double weight = std::abs(error_pt) > right_within_pt ? left.weight : 0;
            const double come_wh = left.left_wh * (load_w_ > 0 ? load_w_ / (load_w_ + left.draw.no_load_w) : 0);
            all += left.weight;
            wrong += weight;
            weights.push_back(weight);
            error_values.emplace_back(error_pt, weight);
            to_come.emplace_back(come_wh, weight);
            fractions.emplace_back((outlook_.trend.end.delivered_wh + come_wh) / std::max(from, 1e-9) / *record_.unit.rated_energy_wh, weight);
        }
        const double coverage = options_.coverage;
        const auto error = spread_of(std::move(error_values), coverage), fraction = spread_of(std::move(fractions), coverage),
                   come = spread_of(std::move(to_come), coverage);
        const auto hours = spread_by(hours_of(setup_, lefts), coverage, [&](std::size_t i) { return weights[i]; });
        account.no_load_draw_w = not_known("no_load_draw_w", "W", say(phrase("forecast", "a gauge that is wrong tells nothing of it")));
        if (!error || !fraction || !come || !hours || wrong < least_wrong_share * all) {
            account.ruled_out = true;
            account.evidence = say(phrase("forecast", "label, energy and the readings so far leave less than 2 % for it"));
            for (auto [quantity, key, unit] : {std::tuple{&account.usable_fraction, "usable_fraction", "1"},
                                               {&account.gauge_error_pt, "gauge_error_pt", "pt"},
                                               {&account.to_come_wh, "to_come_wh", "Wh"},
                                               {&account.hours_left, "hours_left", "h"}})
                *quantity = not_known(key, unit, account.evidence);
            account.sentence = say(phrase("forecast", "Hardly possible: %1."), account.evidence);
            return;
        }
        account.usable_fraction = middle_of("usable_fraction", "1", *fraction);
        account.gauge_error_pt = middle_of("gauge_error_pt", "pt", *error);
        account.to_come_wh = middle_of("to_come_wh", "Wh", *come);
        account.hours_left = middle_of("hours_left", "h", *hours);
        const Message to_come_wh = say_span({come->lower, come->upper});
        if (error->upper < 0)
            account.sentence =
                say(phrase("forecast", "Most of it would still be inside: %1 Wh to come. The gauge would have run ahead by %2 points and "
                                       "must slow down."),
                    to_come_wh, say_span({-error->upper, -error->lower}));
        else if (error->lower > 0)
            account.sentence =
                say(phrase("forecast", "Less would be inside than it shows: %1 Wh to come. The gauge would lag by %2 points and must hurry."),
                    to_come_wh, say_span({error->lower, error->upper}));
        else
            account.sentence = say(phrase("forecast", "%1 Wh would be to come. The gauge may show up to %2 points too much or %3 points too little."),
                                   to_come_wh, say_number(error->upper, 0), say_number(-error->lower, 0));
    }

    /// A moment of a running drain by the clock.
    [[nodiscard]] Message clock_at(double hours) const {
        const auto at_ms = outlook_.base_ms + static_cast<UtcMs>(std::llround(hours * ms_per_hour));
        const Message clock = clock_text(at_ms, record_.run.time_zone);
        return hours >= 20 ? say_joined({say_day(at_ms, record_.run.time_zone), clock}, " ") : clock;
    }

    /// What is told of moments: by the clock of a running drain, of a stopped one in hours yet to run.
    [[nodiscard]] Message at_moments(const Phrase& by_clock, const Phrase& in_hours, const std::vector<double>& hours) const {
        const bool running = record_.run.end == RunEnd::still_running;
        std::vector<Message> moments;
        for (const double h : hours) moments.push_back(running ? clock_at(h) : say_number(h, h < 10 ? 1 : 0));
        return say(running ? by_clock : in_hours, std::move(moments));
    }

    void tell_what_decides(TwoAccounts& accounts) {
        const Range right = range_of(accounts.right.hours_left), wrong = range_of(accounts.wrong.hours_left);
        double look_h = right.high;
        if (wrong.low > right.high) {
            accounts.decides = at_moments(
                phrase("forecast", "Look at %1. Gauge right: the output is off. Gauge wrong: it is still on."),
                phrase("forecast", "Look at %1 h further on at this load. Gauge right: the output is off. Gauge wrong: it is still on."), {look_h});
        } else if (wrong.high < right.low) {
            look_h = wrong.high;
            accounts.decides = at_moments(
                phrase("forecast", "Look at %1. Gauge right: the output is still on. Gauge wrong: it is off."),
                phrase("forecast", "Look at %1 h further on at this load. Gauge right: the output is still on. Gauge wrong: it is off."), {look_h});
        } else if (wrong.low < right.low) {
            look_h = right.low;
            accounts.decides = at_moments(
                phrase("forecast", "Off before %1: the gauge shows too much. Still on at %2: it shows too little."),
                phrase("forecast", "Off before %1 h further on at this load: the gauge shows too much. Still on at %2 h further on at this load: it "
                                   "shows too little."),
                {right.low, right.high});
        } else {
            accounts.decides =
                at_moments(phrase("forecast", "Look at %1. Still on then: the gauge shows too little."),
                           phrase("forecast", "Look at %1 h further on at this load. Still on then: the gauge shows too little."), {look_h});
        }
        if (record_.run.end == RunEnd::still_running)
            accounts.decide_from_ms = outlook_.base_ms + static_cast<UtcMs>(std::llround(look_h * ms_per_hour));
        tell_idle_hour(accounts);
    }

    /// An hour with the output on and nothing connected costs an accurate gauge 100·P*/E*.
    void tell_idle_hour(TwoAccounts& accounts) {
        const Range draw = range_of(accounts.right.no_load_draw_w);
        const double low_pt = 100 * draw.low / *outlook_.trend.most_wh;
        const double high_pt = 100 * draw.high / *outlook_.trend.most_wh;
        const double step_pt = record_.unit.gauge_step_percent;
        if (low_pt < std::max(least_idle_gap_pt, step_pt)) return;
        accounts.idle_hour = say(phrase("forecast", "Or take the load off for an hour and leave the output on. Gauge right: it falls by %1 points. "
                                                    "Gauge wrong: it hardly moves."),
                                 say_span({low_pt, high_pt}));
    }

    const RunRecord& record_;
    const EnergyAnalysis& energy_;
    const MeasureOptions& options_;
    Outlook outlook_;
    CutOffSetup setup_;
    double load_w_;
};

/// Why the kind of run is not told twice; empty for a drain.
Message no_drain_to_account_for(RunKind kind) {
    switch (kind) {
    case RunKind::drain: break;
    case RunKind::no_load_drain: return say(phrase("forecast", "a no-load drain run does not test the gauge against energy"));
    case RunKind::charge: return say(phrase("forecast", "a charge run does not test the gauge against energy"));
    case RunKind::sustained_output: return say(phrase("forecast", "a sustained output run does not test the gauge against energy"));
    case RunKind::peak_output: return say(phrase("forecast", "a peak output run does not test the gauge against energy"));
    case RunKind::standby: return say(phrase("forecast", "a standby run does not test the gauge against energy"));
    }
    return {};
}

Message why_not(const RunRecord& record, const EnergyAnalysis& energy) {
    if (Message reason = no_drain_to_account_for(record.run.kind); !reason.empty()) return reason;
    if (record.run.end != RunEnd::still_running && record.run.end != RunEnd::stopped_by_tester)
        return say(phrase("forecast", "the run ended by cut-off: its shares of energy and time tell more"));
    if (!record.unit.rated_energy_wh) return say(phrase("forecast", "the rated energy of the unit is not stated"));
    if (!energy.track.usable()) return say(phrase("forecast", "fewer than two register readings"));
    if (energy.track.missing_inside) return energy.track.missing_reason;
    if (energy.points.size() < 2) return say(phrase("forecast", "the gauge and the register have not been read together twice yet"));
    const double fall_pt = energy.points.front().gauge_percent - energy.points.back().gauge_percent;
    if (fall_pt < least_account_steps * record.unit.gauge_step_percent)
        return say(phrase("forecast", "the gauge has not fallen by %1 points yet"),
                   say_digits(exact_text(least_account_steps * record.unit.gauge_step_percent)));
    if (energy.track.total_wh() <= 0) return say(phrase("forecast", "nothing has been delivered yet"));
    return {};
}

} // namespace

TwoAccounts two_accounts(const RunRecord& record, const EnergyAnalysis& energy, const UnitFit& unit_fit, const MeasureOptions& options) {
    TwoAccounts accounts;
    accounts.reason = why_not(record, energy);
    if (!accounts.reason.empty()) return accounts;
    return Accounts(record, energy, unit_fit, options).tell();
}

} // namespace ullage
