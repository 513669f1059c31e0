// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulator_run.h"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <utility>

namespace ullage::test {

namespace {

/// A row to write, or (without `planned`) a moment at which something happens unnoticed.
struct Event {
    double true_hours = 0;
    UtcMs noted_ms = 0;
    std::optional<PlannedReading> planned;
    const FaultSetup* fault = nullptr;
    bool last = false;
};

bool is_marked(FaultKind kind) { return kind == FaultKind::reset_with_mark || kind == FaultKind::swap_with_mark; }

bool is_swap(FaultKind kind) { return kind == FaultKind::swap_with_mark || kind == FaultKind::swap_without_mark; }

/// Lays out when everything happens and writes the rows while it does.
class Bench {
public:
    Bench(const RunSetup& setup, std::uint64_t seed)
        : setup_(setup), random_(seed), identifiers_(~seed), physics_(with_repeatability()),
          discharge_(physics_, setup.load, setup.start_depth * physics_.battery_wh), gauge_(setup.gauge, physics_, discharge_),
          end_hours_(last_reading_hours(setup.tester, gauge_, discharge_)) {
        if (!setup.meter) return;
        meter_.emplace(*setup.meter, 0, random_);
        first_gain_error_percent_ = meter_->gain_error_percent();
    }

    SimulatedRun run() {
        fill_head();
        for (const Event& event : events()) play(event);
        fill_faults();
        fill_truth();
        return std::move(result_);
    }

private:
    SimulatedUnit with_repeatability() {
        SimulatedUnit unit = setup_.physics;
        unit.battery_wh *= 1 + random_.normal(setup_.repeatability_percent) / 100;
        return unit;
    }

    /// The moment that the tester notes, and the true one.
    void set_moment(Event& event, double hours) {
        const double step_ms = setup_.tester.moment_step_s * 1000;
        const double exact_ms = hours * ms_per_hour;
        const double noted_ms = step_ms > 0 ? std::round(exact_ms / step_ms) * step_ms : std::round(exact_ms);
        event.noted_ms = setup_.start_ms + static_cast<UtcMs>(noted_ms);
        event.true_hours = (noted_ms + random_.uniform(-0.5, 0.5) * step_ms) / ms_per_hour;
    }

    std::vector<Event> events() {
        std::vector<Event> events;
        Event first;
        first.noted_ms = setup_.start_ms;
        first.planned.emplace();
        first.planned->meter_w = first.planned->display_w = setup_.tester.first_with_powers;
        first.planned->remark = setup_.tester.first_remark;
        Event last = last_event();
        // Where the unit is found off, the last round before it found it on.
        const double on_until_hours = std::min(end_hours_, discharge_.end_hours());
        for (PlannedReading& planned : readings_to_take(setup_.tester, gauge_, on_until_hours, random_)) {
            Event event;
            set_moment(event, planned.hours);
            // The tester changes the load, then reads.
            if (planned.mark == MarkKind::load_changed) event.true_hours = hours_between(setup_.start_ms, event.noted_ms) + 1.0 / 3600;
            event.planned = std::move(planned);
            events.push_back(std::move(event));
        }
        for (const FaultSetup& fault : setup_.faults) add_fault(events, fault);
        const auto outside = [&first, &last, on_until_hours](const Event& event) {
            return event.noted_ms <= first.noted_ms || event.noted_ms >= last.noted_ms || event.true_hours >= on_until_hours;
        };
        std::erase_if(events, outside);
        std::stable_sort(events.begin(), events.end(), [](const Event& a, const Event& b) { return a.true_hours < b.true_hours; });
        events.insert(events.begin(), std::move(first));
        events.push_back(std::move(last));
        return events;
    }

    Event last_event() {
        Event last;
        set_moment(last, end_hours_);
        // What is left of the rounding to whole minutes must not undo that the unit was seen to go off.
        last.true_hours = end_hours_;
        last.last = true;
        last.planned.emplace();
        last.planned->remark = setup_.tester.last_remark;
        if (setup_.tester.end == RunEnd::cut_off_seen && discharge_.reaches_cut_off()) last.planned->mark = MarkKind::cut_off;
        if (setup_.tester.end == RunEnd::found_off) {
            last.planned->gauge = false; // its display is dark
            last.planned->meter_w = true;
        }
        return last;
    }

    void add_fault(std::vector<Event>& events, const FaultSetup& fault) {
        Event event;
        set_moment(event, fault.hours);
        event.fault = &fault;
        if (is_marked(fault.kind)) {
            if (fault.read_before) {
                Event before = event;
                before.fault = nullptr;
                before.planned.emplace();
                events.push_back(std::move(before));
            }
            event.planned.emplace();
            event.planned->gauge = false;
            event.planned->mark = fault.kind == FaultKind::reset_with_mark ? MarkKind::meter_zeroed : MarkKind::meter_swapped;
            event.planned->remark = fault.remark;
        }
        events.push_back(std::move(event));
    }

    void play(const Event& event) {
        const DischargeState state = discharge_.at(event.true_hours);
        if (event.fault != nullptr && meter_) strike(*event.fault, state, event.true_hours);
        if (event.planned) write(event, state);
    }

    void strike(const FaultSetup& fault, const DischargeState& state, double hours) {
        // One slip at a time: a second one before the next reading would spoil nothing.
        if (fault.kind == FaultKind::typing_error && pending_slip_) return;
        PlantedFault planted;
        planted.kind = fault.kind;
        planted.hours = hours;
        planted.unread_wh = state.delivered_wh; // less what had been read, once the readings are known
        if (fault.kind == FaultKind::typing_error) {
            pending_slip_ = result_.truth.faults.size();
            slip_least_wh_ = fault.least_wh;
        } else if (is_swap(fault.kind) && fault.new_meter) {
            meter_.emplace(*fault.new_meter, state.delivered_wh, random_);
            if (is_marked(fault.kind)) result_.record.second_meter = fault.new_meter->meter; // whoever marks a swap says to which meter
        } else {
            meter_->zero(state.delivered_wh);
        }
        result_.truth.faults.push_back(planted);
    }

    void write(const Event& event, const DischargeState& state) {
        const PlannedReading& planned = *event.planned;
        auto& readings = result_.record.readings;
        // Within a minute the order of the notes may not be that of the true moments, but nobody writes time backwards.
        const UtcMs noted_ms = readings.empty() ? event.noted_ms : std::max(event.noted_ms, readings.back().values.time_ms);
        Reading reading;
        reading.uuid = ReadingId(identifiers_.uuid());
        reading.sequence = static_cast<long>(readings.size()) + 1;
        reading.values.time_ms = noted_ms;
        reading.values.mark = planned.mark;
        reading.values.remark = planned.remark;
        const bool off = event.last && discharge_.reaches_cut_off() && event.true_hours >= discharge_.end_hours();
        if (planned.gauge) reading.values.gauge_percent = gauge_.shown_percent(event.true_hours, random_);
        if (planned.meter_register && meter_) reading.values.register_wh = noted_register(state, readings.size(), off);
        if (planned.meter_w && meter_) reading.values.meter_w = meter_->power_w(state.load_w);
        if (planned.display_w) reading.values.display_w = in_steps(state.load_w * (1 + setup_.tester.display_error_percent / 100), 1, Steps::rounded);
        readings.push_back(std::move(reading));
        result_.truth.readings.push_back({event.true_hours, state.delivered_wh, 100 * (1 - state.drawn_wh / physics_.battery_wh),
                                          gauge_.exact_percent(event.true_hours), state.load_w});
    }

    double noted_register(const DischargeState& state, std::size_t place, bool off) {
        const double shown_wh = meter_->register_wh(state.delivered_wh);
        if (!pending_slip_ || off) return shown_wh;
        PlantedFault& planted = result_.truth.faults[*pending_slip_];
        pending_slip_.reset();
        planted.before = planted.after = place;
        planted.right_wh = shown_wh;
        planted.noted_wh = mistyped(shown_wh, slip_least_wh_, random_);
        return planted.noted_wh;
    }

    /// Finds the readings around each fault; drops a slip that found no reading to spoil.
    void fill_faults() {
        auto& faults = result_.truth.faults;
        const auto& readings = result_.record.readings;
        if (pending_slip_) faults.erase(faults.begin() + static_cast<std::ptrdiff_t>(*pending_slip_));
        for (PlantedFault& fault : faults) {
            if (fault.kind != FaultKind::typing_error) {
                // The row of a marked fault is at its moment, after a row of the same moment that was read before it.
                for (std::size_t i = 0; i < readings.size(); ++i) {
                    if (!readings[i].values.register_wh) continue;
                    const double hours = result_.truth.readings[i].hours;
                    const bool own_row = readings[i].values.mark == MarkKind::meter_zeroed || readings[i].values.mark == MarkKind::meter_swapped;
                    const bool is_after = hours > fault.hours || (hours == fault.hours && own_row);
                    if (is_after) {
                        fault.after = i;
                        break;
                    }
                    fault.before = i;
                }
                fault.unread_wh -= result_.truth.readings[fault.before].delivered_wh;
            } else {
                fault.unread_wh = 0;
            }
            fault.from_ms = readings[fault.before].values.time_ms;
            fault.to_ms = readings[fault.after].values.time_ms;
        }
    }

    void fill_head() {
        RunRecord& record = result_.record;
        record.unit = setup_.unit;
        if (record.unit.uuid.empty()) record.unit.uuid = UnitId(identifiers_.uuid());
        if (setup_.meter) {
            record.meter = setup_.meter->meter;
            if (record.meter->uuid.empty()) record.meter->uuid = MeterId(identifiers_.uuid());
            record.run.meter_uuid = record.meter->uuid;
        }
        record.run.uuid = RunId(identifiers_.uuid());
        record.run.unit_uuid = record.unit.uuid;
        record.run.kind = setup_.kind;
        record.run.started_full = setup_.start_depth <= 0;
        record.run.end = setup_.tester.end;
        if (setup_.tester.end == RunEnd::cut_off_seen) record.run.end_noticed_within_min = setup_.tester.noticed_within_min;
        record.run.load = setup_.load_words;
        record.run.ambient_c = setup_.ambient_c;
        record.run.time_zone = setup_.time_zone;
        record.run.created_ms = setup_.start_ms;
        record.number = setup_.number;
    }

    void fill_truth() {
        RunTruth& truth = result_.truth;
        const DischargeState state = discharge_.at(end_hours_);
        truth.physics = physics_;
        truth.deliverable_wh = physics_.deliverable_wh();
        truth.no_load_draw_w = physics_.no_load_draw_w();
        truth.curvature_per_w = physics_.curvature_per_w();
        truth.delivered_wh = state.delivered_wh;
        truth.output_on_h = state.hours;
        truth.squared_w2h = state.squared_w2h;
        truth.cut_off_hours = discharge_.end_hours();
        truth.cut_off = discharge_.reaches_cut_off() && end_hours_ >= truth.cut_off_hours;
        truth.full_drain_wh = discharge_.nodes().back().delivered_wh;
        truth.gauge_at_cut_off_percent = gauge_.exact_percent(truth.cut_off_hours);
        truth.gain_error_percent = first_gain_error_percent_;
        if (setup_.start_depth <= 0 && setup_.unit.rated_energy_wh) truth.usable_fraction = truth.full_drain_wh / *setup_.unit.rated_energy_wh;
        truth.stuck = gauge_.stuck_spans();
        truth.lingers_from_hours = gauge_.lingers_from_hours();
    }

    const RunSetup& setup_;
    Random random_;
    Random identifiers_; ///< apart, so that they do not move the physics
    SimulatedUnit physics_;
    Discharge discharge_;
    SimulatedGauge gauge_;
    double end_hours_ = 0;
    std::optional<SimulatedMeter> meter_;
    double first_gain_error_percent_ = 0;
    std::optional<std::size_t> pending_slip_;
    double slip_least_wh_ = 0;
    SimulatedRun result_;
};

} // namespace

SimulatedRun simulate_run(const RunSetup& setup, std::uint64_t seed) { return Bench(setup, seed).run(); }

} // namespace ullage::test
