// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/meter_remarks.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/inside/meter_parts.h"

#include <algorithm>
#include <utility>

namespace ullage {

namespace {

std::string sentence(std::string clause) {
    clause.front() = static_cast<char>(clause.front() - 'a' + 'A'); // each begins with a word of ours
    return clause + '.';
}

std::string watts(double w) { return fixed_text(w, w < 10 ? 1 : 0) + " W"; }

std::string range_words(const Meter& meter) {
    const std::string low = exact_text(meter.range_low_w.value_or(0)) + " W";
    return meter.range_high_w ? low + " to " + exact_text(*meter.range_high_w) + " W" : low + " and more";
}

std::string loads_words(const MeterPart& part) {
    const double low = part.lowest_w.value_or(0), high = part.highest_w.value_or(0);
    return "loads were " + (watts(low) == watts(high) ? watts(low) : watts(low) + " to " + watts(high));
}

std::string energy_words(double wh, const MeterPart& part) {
    return wh >= part.delivered_wh * (1 - 1e-9) ? "all energy" : energy_text(wh) + " of " + energy_text(part.delivered_wh);
}

bool is_outside(const Meter& meter, double w) { return w < meter.range_low_w.value_or(0) || (meter.range_high_w && w > *meter.range_high_w); }

/// Powers that the first meter showed.
void add_shown(const RunRecord& record, std::vector<std::string>& remarks) {
    if (!record.meter || (!record.meter->range_low_w && !record.meter->range_high_w)) return;
    const auto beyond = std::ranges::count_if(record.readings, [&](const Reading& reading) {
        return !reading.withdrawn && reading.values.meter_w && *reading.values.meter_w > 0 && is_outside(*record.meter, *reading.values.meter_w);
    });
    if (beyond > 0)
        remarks.push_back("meter " + record.meter->name + " showed a power outside its range of " + range_words(*record.meter) + " in " +
                          count_text(static_cast<long>(beyond), "reading", "readings"));
}

void add_part(const Meter& meter, const MeterPart& part, std::vector<std::string>& remarks) {
    if (part.out_of_range_wh > 0)
        remarks.push_back("meter " + meter.name + ": " + energy_words(part.out_of_range_wh, part) + " flowed outside its range of " +
                          range_words(meter) + " (" + loads_words(part) + "), where its error is not limited");
    if (part.beyond_points_wh > 0)
        remarks.push_back("meter " + meter.name + ": " + energy_words(part.beyond_points_wh, part) + " flowed outside its certificate's loads of " +
                          exact_text(meter.points.front().load_w) + " W to " + exact_text(meter.points.back().load_w) + " W (" + loads_words(part) +
                          "); the nearest point was taken");
}

void add_validity(const RunRecord& record, const Meter& meter, UtcMs start_ms, std::vector<std::string>& remarks) {
    if (meter.certificate.valid_until.empty() || record.readings.empty()) return;
    // Dates of this form are in order of time as texts.
    if (format_iso8601(start_ms, record.run.time_zone).substr(0, 10) > meter.certificate.valid_until)
        remarks.push_back("the certificate of meter " + meter.name + " was valid until " + meter.certificate.valid_until + ", before this run");
}

} // namespace

std::vector<std::string> meter_remarks(const RunRecord& record, const RegisterTrack& track, UtcMs start_ms) {
    std::vector<std::string> remarks;
    for (const MeterPart& part : track.meters)
        if (const Meter* meter = meter_of(record, part)) add_part(*meter, part, remarks);
    add_shown(record, remarks);
    for (const auto* meter : {&record.meter, &record.second_meter})
        if (*meter) add_validity(record, **meter, start_ms, remarks);
    for (std::string& remark : remarks) remark = sentence(std::move(remark));
    return remarks;
}

} // namespace ullage
