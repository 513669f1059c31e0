// SPDX-License-Identifier: GPL-3.0-or-later
#include "gauge/evidence.h"

#include "base/number.h"

#include <algorithm>
#include <cmath>

namespace ullage {

bool GaugeEvidence::judgeable() const { return energy.points.size() >= 4 && fall_pt >= 5 * step_pt && delivered_wh > 0 && hours > 0; }

GaugeEvidence::Fall GaugeEvidence::honest_fall(std::size_t from, std::size_t to) const {
    const PairedPoint& a = energy.points[from];
    const PairedPoint& b = energy.points[to];
    const double by_energy = fall_pt * (b.delivered_wh - a.delivered_wh) / delivered_wh;
    const double by_time = fall_pt * (b.hours - a.hours) / hours;
    return {std::min(by_energy, by_time), std::max(by_energy, by_time), by_energy};
}

double GaugeEvidence::u_fall_pt(std::size_t from, std::size_t to) const {
    const double u_wh = std::sqrt(std::pow(energy.points[from].u_pairing_wh, 2) + std::pow(energy.points[to].u_pairing_wh, 2) +
                                  register_step_wh * register_step_wh / 6);
    return fall_pt * u_wh / delivered_wh;
}

const ReadingId& reading_uuid_at(const RunRecord& record, const PairedPoint& point) {
    if (point.reading != no_reading) return record.readings[point.reading].uuid;
    const Reading* last = nullptr;
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        if (last != nullptr && reading.values.time_ms > point.time_ms) break;
        last = &reading;
    }
    static const ReadingId none;
    return last == nullptr ? none : last->uuid;
}

const ReadingId& GaugeEvidence::reading_uuid(std::size_t point) const { return reading_uuid_at(record, energy.points[point]); }

std::vector<ReadingId> GaugeEvidence::reading_uuids(std::size_t from, std::size_t to) const {
    std::vector<ReadingId> uuids;
    const std::size_t count = std::min(to - from + 1, most_uuids);
    uuids.reserve(count);
    for (std::size_t k = 0; k < count; ++k) {
        const ReadingId& uuid = reading_uuid(count < 2 ? from : from + k * (to - from) / (count - 1));
        if (uuids.empty() || uuids.back() != uuid) uuids.push_back(uuid); // several points of a log stand by one note
    }
    return uuids;
}

std::string GaugeEvidence::clock_at(std::size_t point) const { return clock_text(energy.points[point].time_ms, record.run.time_zone); }

GaugeEvidence gather_evidence(const RunRecord& record, const EnergyAnalysis& energy, const MeasureOptions& options) {
    GaugeEvidence evidence{record, energy, options};
    evidence.step_pt = std::max(record.unit.gauge_step_percent, 1e-3);
    evidence.register_step_wh = energy.register_step_wh;
    if (energy.points.size() >= 2) {
        const PairedPoint& first = energy.points.front();
        const PairedPoint& last = energy.points.back();
        evidence.fall_pt = first.gauge_percent - last.gauge_percent;
        evidence.delivered_wh = last.delivered_wh - first.delivered_wh;
        evidence.hours = last.hours - first.hours;
    }
    return evidence;
}

Message say_points(double points) {
    if (points < 3 && points != std::round(points)) return say(phrase("gauge", "%1 points"), say_number(points, 1));
    return say_count(static_cast<long>(std::nearbyint(points)), phrases("gauge", "%n points", "%n point"));
}

Message say_gauge(double percent) { return say_digits(exact_text(std::round(percent * 100) / 100) + " %"); }

} // namespace ullage
