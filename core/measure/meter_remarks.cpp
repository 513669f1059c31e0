// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/meter_remarks.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/inside/meter_parts.h"

#include <algorithm>

namespace ullage {

namespace {

Message say_watts(double w) { return say_measure(w, w < 10 ? 1 : 0, "W"); }
Message say_exact_watts(double w) { return say_digits(exact_text(w) + " W"); }

Message range_words(const Meter& meter) {
    const Message low = say_exact_watts(meter.range_low_w.value_or(0));
    return meter.range_high_w ? say(phrase("measure", "%1 to %2"), low, say_exact_watts(*meter.range_high_w))
                              : say(phrase("measure", "%1 and more"), low);
}

Message loads_of(const MeterPart& part) {
    const Message low = say_watts(part.lowest_w.value_or(0)), high = say_watts(part.highest_w.value_or(0));
    return low == high ? low : say(phrase("measure", "%1 to %2"), low, high);
}

bool is_all(double wh, const MeterPart& part) { return wh >= part.delivered_wh * (1 - 1e-9); }

bool is_outside(const Meter& meter, double w) { return w < meter.range_low_w.value_or(0) || (meter.range_high_w && w > *meter.range_high_w); }

/// Powers that the first meter showed.
void add_shown(const RunRecord& record, std::vector<Message>& remarks) {
    if (!record.meter || (!record.meter->range_low_w && !record.meter->range_high_w)) return;
    const auto beyond = std::ranges::count_if(record.readings, [&](const Reading& reading) {
        return !reading.withdrawn && reading.values.meter_w && *reading.values.meter_w > 0 && is_outside(*record.meter, *reading.values.meter_w);
    });
    if (beyond > 0)
        remarks.push_back(say_count(beyond,
                                    phrases("measure", "Meter %1 showed a power outside its range of %2 in %n readings.",
                                            "Meter %1 showed a power outside its range of %2 in %n reading."),
                                    record.meter->name, range_words(*record.meter)));
}

void add_part(const Meter& meter, const MeterPart& part, std::vector<Message>& remarks) {
    const Message all = say_energy(part.delivered_wh);
    if (part.out_of_range_wh > 0)
        remarks.push_back(
            is_all(part.out_of_range_wh, part)
                ? say(phrase("measure", "Meter %1: all energy flowed outside its range of %2 (loads were %3), where its error is not limited."),
                      meter.name, range_words(meter), loads_of(part))
                : say(phrase("measure", "Meter %1: %4 of %5 flowed outside its range of %2 (loads were %3), where its error is not limited."),
                      meter.name, range_words(meter), loads_of(part), say_energy(part.out_of_range_wh), all));
    if (part.beyond_points_wh <= 0) return;
    const Message first = say_exact_watts(meter.points.front().load_w), last = say_exact_watts(meter.points.back().load_w);
    remarks.push_back(
        is_all(part.beyond_points_wh, part)
            ? say(phrase("measure",
                         "Meter %1: all energy flowed outside its certificate's loads of %2 to %3 (loads were %4); the nearest point was taken."),
                  meter.name, first, last, loads_of(part))
            : say(phrase("measure",
                         "Meter %1: %5 of %6 flowed outside its certificate's loads of %2 to %3 (loads were %4); the nearest point was taken."),
                  meter.name, first, last, loads_of(part), say_energy(part.beyond_points_wh), all));
}

void add_validity(const RunRecord& record, const Meter& meter, UtcMs start_ms, std::vector<Message>& remarks) {
    if (meter.certificate.valid_until.empty() || record.readings.empty()) return;
    // Dates of this form are in order of time as texts.
    if (format_iso8601(start_ms, record.run.time_zone).substr(0, 10) > meter.certificate.valid_until)
        remarks.push_back(
            say(phrase("measure", "The certificate of meter %1 was valid until %2, before this run."), meter.name, meter.certificate.valid_until));
}

} // namespace

std::vector<Message> meter_remarks(const RunRecord& record, const RegisterTrack& track, UtcMs start_ms) {
    std::vector<Message> remarks;
    for (const MeterPart& part : track.meters)
        if (const Meter* meter = meter_of(record, part)) add_part(*meter, part, remarks);
    add_shown(record, remarks);
    for (const auto* meter : {&record.meter, &record.second_meter})
        if (*meter) add_validity(record, **meter, start_ms, remarks);
    return remarks;
}

} // namespace ullage
