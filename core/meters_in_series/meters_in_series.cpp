// SPDX-License-Identifier: GPL-3.0-or-later
// Errors e1, e2 of the meters, relative: true = first (1 + e1) = second (1 + e2), so that to first order ratio - 1 = e1 - e2 = d.
#include "meters_in_series/meters_in_series.h"

#include "base/instant.h"
#include "base/number.h"
#include "measure/budget.h"
#include "measure/logged_energy.h"
#include "measure/register.h"
#include "model/meter_gain.h"
#include "numerics/distributions.h"

#include <algorithm>
#include <cmath>
#include <set>
#include <utility>

namespace ullage {

namespace {

constexpr double least_steps = 20;        ///< of each register, over a stretch
constexpr double between_displays_s = 10; ///< half-width of the time between reading one display and the other
constexpr double like_load_factor = 1.25;
constexpr double least_logged_h = 1; ///< of a stretch of two logs
constexpr double noted_within_s = 60;
constexpr double least_step_wh = 0.01; ///< of an integrated power, which has none

/// What both meters said between two readings.
struct Stretch {
    double hours = 0;
    double first_wh = 0, second_wh = 0;
    double first_variance = 0, second_variance = 0; ///< of the steps of registers or power, Wh2
    double ends_variance = 0;                       ///< of the seconds between one meter and the other at both ends, Wh2

    [[nodiscard]] double load_w() const { return first_wh / hours; }
};

/// The run as its second meter alone saw it.
RunRecord by_second_meter(const RunRecord& record) {
    RunRecord other = record;
    other.meter = std::exchange(other.second_meter, std::nullopt);
    other.trace.reset();
    for (Reading& reading : other.readings) reading.values.register_wh = reading.values.second_register_wh;
    return other;
}

RunRecord by_first_meter(const RunRecord& record) {
    RunRecord own = record;
    own.second_meter.reset();
    own.trace.reset();
    return own;
}

bool notes_both(const RunRecord& record) {
    if (!record.meter || !record.second_meter) return false;
    const auto swapped = [](const Reading& reading) { return !reading.withdrawn && reading.values.mark == MarkKind::meter_swapped; };
    if (std::ranges::any_of(record.readings, swapped)) return false;
    return std::ranges::count_if(record.readings, [](const Reading& reading) {
               return !reading.withdrawn && reading.values.register_wh && reading.values.second_register_wh;
           }) >= 2;
}

/// The readings at which a register did not simply go on.
void note_breaks(const RegisterTrack& track, std::set<ReadingId>& breaks) {
    for (const RegisterCorrection& correction : track.register_corrections)
        if (correction.kind == RegisterCorrectionKind::marked_zero || correction.kind == RegisterCorrectionKind::unmarked_reset)
            breaks.insert(correction.reading_uuid);
}

/// Stretches between readings of both registers, each long enough for both.
std::vector<Stretch> stretches_of(const RunRecord& record, const MeasureOptions& options) {
    const RunRecord own = by_first_meter(record), other = by_second_meter(record);
    const RegisterTrack first = unwrap_register(own, options), second = unwrap_register(other, options);
    const double first_step = register_step_wh(own) * typical_correction(own.meter),
                 second_step = register_step_wh(other) * typical_correction(other.meter);
    std::set<ReadingId> breaks;
    note_breaks(first, breaks);
    note_breaks(second, breaks);
    std::vector<Stretch> stretches;
    std::optional<std::pair<const RegisterPoint*, const RegisterPoint*>> from;
    auto at_second = second.points.begin();
    for (const RegisterPoint& point : first.points) {
        while (at_second != second.points.end() && at_second->reading < point.reading) ++at_second;
        if (at_second == second.points.end()) break;
        if (at_second->reading != point.reading) continue;
        if (!from || breaks.contains(record.readings[point.reading].uuid)) {
            from.emplace(&point, &*at_second);
            continue;
        }
        Stretch stretch;
        stretch.hours = hours_between(from->first->time_ms, point.time_ms);
        stretch.first_wh = point.delivered_wh - from->first->delivered_wh;
        stretch.second_wh = at_second->delivered_wh - from->second->delivered_wh;
        if (stretch.hours <= 0 || stretch.first_wh < least_steps * first_step || stretch.second_wh < least_steps * second_step) continue;
        stretch.first_variance = first_step * first_step / 6;
        stretch.second_variance = second_step * second_step / 6;
        // At both ends, each rectangular.
        stretch.ends_variance = 2 * std::pow(stretch.load_w() * between_displays_s / 3600, 2) / 3;
        stretches.push_back(stretch);
        from.emplace(&point, &*at_second);
    }
    return stretches;
}

/// Half of what a meter counts within the doubt of a moment, Wh.
double counted_within_wh(const LoggedEnergy& energy, UtcMs time_ms, double doubt_s) {
    const auto doubt_ms = static_cast<UtcMs>(std::llround(1000 * doubt_s));
    return (energy.at(time_ms + doubt_ms) - energy.at(time_ms - doubt_ms)) / 2;
}

/// Stretches of a log of one meter beside the log, or the notes, of another: an hour or more each, without a gap of either.
std::vector<Stretch> stretches_of(const LoggedEnergy& first, const LoggedEnergy& second) {
    const double doubt_s = std::max(clocks_apart_s(first.clock_u_s, second.clock_u_s), first.noted_by_hand ? noted_within_s : 0.0);
    std::vector<Stretch> stretches;
    std::optional<UtcMs> from_ms;
    for (const UtcMs time_ms : first.times_ms) {
        if (time_ms < second.times_ms.front() || time_ms > second.times_ms.back()) continue;
        if (!from_ms || first.has_gap(*from_ms, time_ms) || second.has_gap(*from_ms, time_ms)) {
            from_ms = time_ms;
            continue;
        }
        Stretch stretch;
        stretch.hours = hours_between(*from_ms, time_ms);
        if (stretch.hours < (first.noted_by_hand ? 0 : least_logged_h)) continue;
        stretch.first_wh = first.at(time_ms) - first.at(*from_ms);
        stretch.second_wh = second.at(time_ms) - second.at(*from_ms);
        if (stretch.hours <= 0 || stretch.first_wh < least_steps * std::max(first.step_wh, least_step_wh) ||
            stretch.second_wh < least_steps * std::max(second.step_wh, least_step_wh))
            continue;
        stretch.first_variance = first.variance_wh2(stretch.first_wh);
        stretch.second_variance = second.variance_wh2(stretch.second_wh);
        for (const UtcMs end_ms : {*from_ms, time_ms}) stretch.ends_variance += std::pow(counted_within_wh(second, end_ms, doubt_s), 2) / 3;
        stretches.push_back(stretch);
        from_ms = time_ms;
    }
    return stretches;
}

Message say_percent(double value) { return say_measure(value, 2, "%"); }

Message say_signed_percent(double value) { return say_digits((value < 0 ? "−" : "+") + fixed_text(std::abs(value), 2) + " %"); }

/// What the ratio and both limits leave of each meter's error.
void judge(const MetersInSeries& pair, SeriesLoad& load) {
    const double d = 100 * (*load.ratio.value - 1), half = 100 * *load.ratio.half_width();
    const Message said = say(phrase("meters_in_series", "At %1 W %2 says %3 of what %4 says (± %5)"), say_number(load.load_w, 0), pair.second.name,
                             say_percent(100 * *load.ratio.value), pair.first.name, say_percent(half));
    if (!load.first_limit_percent || !load.second_limit_percent) {
        load.sentence = say(phrase("meters_in_series", "%1; not every error limit is stated, so this cannot be held against them."), said);
        return;
    }
    const double a = *load.first_limit_percent, b = *load.second_limit_percent;
    load.contradiction = std::abs(d) - half > a + b;
    if (load.contradiction) {
        load.sentence = say(phrase("meters_in_series",
                                   "%1; their limits of ± %2 and ± %3 allow no more than %4 between them: at least one meter is outside its limit."),
                            said, say_percent(a), say_percent(b), say_percent(a + b));
        return;
    }
    load.first_error = ErrorRange{std::max(-a, d - half - b), std::min(a, d + half + b)};
    load.second_error = ErrorRange{std::max(-b, -d - half - a), std::min(b, -d + half + a)};
    const double left =
        load.first_error->high_percent - load.first_error->low_percent + load.second_error->high_percent - load.second_error->low_percent;
    if (left >= 2 * (a + b) * 0.99) {
        load.sentence = say(phrase("meters_in_series", "%1, as their limits allow."), said);
        return;
    }
    load.sentence =
        say(phrase("meters_in_series", "%1, as their limits allow; if both keep to them, the true energy lies %2 to %3 off what %4 says and %5 to %6 "
                                       "off what %7 says."),
            said, say_signed_percent(load.first_error->low_percent), say_signed_percent(load.first_error->high_percent), pair.first.name,
            say_signed_percent(load.second_error->low_percent), say_signed_percent(load.second_error->high_percent), pair.second.name);
}

SeriesLoad at_like_loads(const MetersInSeries& pair, const std::vector<Stretch>& stretches, double coverage) {
    SeriesLoad load;
    double hours = 0, first_variance = 0, second_variance = 0, ends_variance = 0;
    for (const Stretch& stretch : stretches) {
        hours += stretch.hours;
        load.first_wh += stretch.first_wh;
        load.second_wh += stretch.second_wh;
        first_variance += stretch.first_variance;
        second_variance += stretch.second_variance;
        ends_variance += stretch.ends_variance;
    }
    load.load_w = load.first_wh / hours;
    const double ratio = load.second_wh / load.first_wh;
    const double relative = std::sqrt(first_variance + ends_variance) / load.first_wh;
    const double u = ratio * std::hypot(relative, std::sqrt(second_variance) / load.second_wh);
    load.ratio =
        known("gain_ratio", "1", ratio, u * normal_quantile((1 + coverage) / 2), Kind::measured,
              say_count(stretches.size(), phrases("meters_in_series", "%n stretches with both meters read", "%n stretch with both meters read")));
    load.first_limit_percent = bounding_percent(gain_at(pair.first, load.load_w));
    load.second_limit_percent = bounding_percent(gain_at(pair.second, load.load_w));
    judge(pair, load);
    return load;
}

struct PairOfMeters {
    MetersInSeries result;
    std::vector<Stretch> stretches;
};

const std::string& key_of(const Meter& meter) { return meter.uuid.empty() ? meter.name : meter.uuid.text(); }

PairOfMeters& pair_of(const Meter& one, const Meter& another, bool& turned, std::vector<PairOfMeters>& pairs) {
    const std::string &a = key_of(one), &b = key_of(another);
    for (PairOfMeters& pair : pairs) {
        const std::string &first = key_of(pair.result.first), &second = key_of(pair.result.second);
        turned = a == second && b == first;
        if (turned || (a == first && b == second)) return pair;
    }
    turned = false;
    PairOfMeters& made = pairs.emplace_back();
    made.result.first = one;
    made.result.second = another;
    return made;
}

} // namespace

std::vector<MetersInSeries> meters_in_series(const UnitRuns& records, const MeasureOptions& options) {
    std::vector<PairOfMeters> pairs;
    const auto add = [&pairs](const RunId& run_uuid, const Meter& one, const Meter& another, const std::vector<Stretch>& stretches) {
        if (stretches.empty()) return;
        bool turned = false;
        PairOfMeters& pair = pair_of(one, another, turned, pairs);
        if (std::ranges::find(pair.result.run_uuids, run_uuid) == pair.result.run_uuids.end()) pair.result.run_uuids.push_back(run_uuid);
        for (Stretch stretch : stretches) {
            if (turned) {
                std::swap(stretch.first_wh, stretch.second_wh);
                std::swap(stretch.first_variance, stretch.second_variance);
            }
            pair.stretches.push_back(stretch);
        }
    };
    for (const RunRecord* record : records) {
        if (notes_both(*record)) add(record->run.uuid, *record->meter, *record->second_meter, stretches_of(*record, options));
        if (!record->meter || record->other_logs.empty()) continue;
        const std::optional<LoggedEnergy> own = logged_energy(*record, options);
        for (std::size_t log = 0; own && log < record->other_logs.size(); ++log) {
            const std::optional<Meter>& meter = record->other_logs[log].meter;
            if (!meter || key_of(*meter) == key_of(*record->meter)) continue;
            if (const auto other = logged_energy_of_other(*record, log, options))
                add(record->run.uuid, *record->meter, *meter, stretches_of(*own, *other));
        }
    }
    std::vector<MetersInSeries> found;
    for (PairOfMeters& pair : pairs) {
        std::ranges::sort(pair.stretches, {}, &Stretch::load_w);
        for (auto from = pair.stretches.begin(); from != pair.stretches.end();) {
            const auto to =
                std::find_if(from, pair.stretches.end(), [&](const Stretch& each) { return each.load_w() > like_load_factor * from->load_w(); });
            pair.result.loads.push_back(at_like_loads(pair.result, {from, to}, options.coverage));
            from = to;
        }
        found.push_back(std::move(pair.result));
    }
    return found;
}

} // namespace ullage
