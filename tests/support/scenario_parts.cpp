// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/scenario_parts.h"

#include <chrono>
#include <string>

namespace ullage::test {

namespace {

/// Minutes after midnight of "23:30".
int minutes_of(std::string_view clock) {
    const auto digit = [clock](std::size_t i) { return clock[i] - '0'; };
    return (digit(0) * 10 + digit(1)) * 60 + digit(3) * 10 + digit(4);
}

} // namespace

CompanyUnit osk_1200() {
    CompanyUnit unit;
    unit.claims.uuid = UnitId("0d5c1f0a-6b0e-4f57-9a51-0c1a7f3e1200");
    unit.claims.name = "Osk 1200";
    unit.claims.maker = "Vennlow Hus";
    unit.claims.rated_energy_wh = 1200;
    unit.claims.rated_output_w = 1000;
    unit.claims.peak_output_w = 2000;
    unit.claims.charge_time_h = 3.5;
    unit.claims.price = 665;
    unit.claims.paid_price = 589;
    unit.claims.tags = {"projector", "tent"};
    unit.claims.currency = "EUR";
    unit.claims.mass_kg = 14.2;
    unit.physics = {.battery_wh = 1101, .p0_w = 15.3, .a = 1.09, .b_per_w = 1e-5};
    return unit;
}

CompanyUnit pelm_900() {
    CompanyUnit unit;
    unit.claims.uuid = UnitId("7b3e9d54-21c8-4d0f-8e66-5f4a2b9c0900");
    unit.claims.name = "Pelm 900";
    unit.claims.maker = "Drubbel & Quay";
    unit.claims.rated_energy_wh = 900;
    unit.claims.rated_output_w = 600;
    unit.claims.price = 495;
    unit.claims.tags = {"lent", "tent"};
    unit.claims.currency = "EUR";
    unit.claims.mass_kg = 11.6;
    unit.physics = {.battery_wh = 809, .p0_w = 42.6, .a = 1.12, .b_per_w = 1e-5};
    unit.gauge.bend_pt = 9;
    unit.gauge.ends_at_percent = 9;
    return unit;
}

CompanyUnit tarrow_2k() {
    CompanyUnit unit;
    unit.claims.uuid = UnitId("c2f8a610-93d7-4b1e-b0c4-e7d18a5f2000");
    unit.claims.name = "Tarrow 2k";
    unit.claims.model = "Tarrow 2k";
    unit.claims.maker = "Ostrelle Works";
    unit.claims.rated_energy_wh = 2000;
    unit.claims.rated_output_w = 1800;
    unit.claims.pv_max_v = 60;
    unit.claims.pv_max_a = 15;
    unit.claims.pv_max_w = 500;
    unit.claims.pv_start_v = 12;
    unit.claims.price = 998;
    unit.claims.paid_price = 749.5;
    unit.claims.tags = {"projector"};
    unit.claims.currency = "EUR";
    unit.claims.mass_kg = 21.8;
    unit.physics = {.battery_wh = 1860, .p0_w = 9.9, .a = 1.1, .b_per_w = 5e-6};
    return unit;
}

MeterSetup socket_meter_a() {
    MeterSetup meter;
    meter.meter.uuid = MeterId("4e9b7a32-58f1-4c6d-a2b7-1d0c9e8f0001");
    meter.meter.name = "Socket meter A";
    meter.meter.step_wh = 1;
    meter.meter.limit_percent = 1;
    meter.meter.span_wh = 99'999;
    meter.gain_error_percent = 0.4;
    meter.start_wh = 2257;
    return meter;
}

MeterSetup socket_meter_b() {
    MeterSetup meter;
    meter.meter.uuid = MeterId("4e9b7a32-58f1-4c6d-a2b7-1d0c9e8f0002");
    meter.meter.name = "Socket meter B";
    meter.meter.step_wh = 1;
    meter.meter.limit_percent = 2;
    meter.meter.span_wh = 99'999;
    meter.gain_error_percent = -0.9;
    meter.start_wh = 41'276;
    return meter;
}

UtcMs may_2027(int day, int hour, int minute) {
    using namespace std::chrono;
    const sys_days date = year{2027} / May / std::chrono::day(static_cast<unsigned>(day));
    const auto local = date.time_since_epoch() + hours(hour) + minutes(minute);
    return duration_cast<milliseconds>(local - hours(2)).count();
}

std::vector<PlannedReading> plan_of(std::string_view start_clock, const std::vector<Note>& notes) {
    std::vector<PlannedReading> plan;
    const int start = minutes_of(start_clock);
    int before = start;
    int days = 0;
    for (const Note& note : notes) {
        const int now = minutes_of(note.clock);
        if (now < before) ++days;
        before = now;
        const auto has = [&note](char part) { return note.parts.find(part) != std::string_view::npos; };
        PlannedReading reading;
        reading.hours = (days * 24 * 60 + now - start) / 60.0;
        reading.gauge = has('g');
        reading.meter_register = has('r');
        reading.meter_w = has('m');
        reading.display_w = has('d');
        if (has('L')) reading.mark = MarkKind::load_changed;
        reading.remark = std::string(note.remark);
        plan.push_back(reading);
    }
    return plan;
}

} // namespace ullage::test
