// SPDX-License-Identifier: GPL-3.0-or-later
// The log's own points are unwrapped as a run of their own ("dense"); what the moments of the hand readings need of it becomes the track.
#include "measure/inside/log_track.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_energy.h"
#include "measure/inside/meter_parts.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>

namespace ullage {
namespace {

constexpr UtcMs minute_ms = 60'000;
constexpr UtcMs mark_reach_ms = 3 * minute_ms;
constexpr double least_square_steps = 20; ///< a mean load over fewer steps of a register is too rough to be squared
constexpr std::string_view of_log = "log:";

UtcMs end_of(const RunRecord& record, const RunScan& scan) {
    if (record.run.end == RunEnd::still_running) return latest_ms;
    if (record.trace->on_past_notes && !scan.cut_off_ms) return record.trace->points.back().time_ms;
    return scan.cut_off_ms.value_or(*scan.last_ms);
}

/// The log's register, and registers noted by hand where it says nothing, as the readings of a run.
class DenseRecord {
public:
    DenseRecord(const RunRecord& record, bool hand_agrees) : samples_(register_samples(*record.trace)) {
        record_.unit = record.unit;
        record_.meter = record.meter;
        record_.second_meter = record.second_meter;
        record_.run = record.run;
        record_.run.end = RunEnd::still_running;
        const std::vector<const Reading*> readings = readings_kept(record);
        auto next = readings.begin();
        for (const RegisterSample& sample : samples_) {
            while (next != readings.end() && (*next)->values.time_ms < sample.time_ms) ++next;
            Reading& point = add(sample.time_ms, std::string(of_log) + (next == readings.end() ? readings.back() : *next)->uuid);
            point.values.register_wh = sample.wh;
        }
        const Reading* before = nullptr;
        for (const Reading* reading : readings) {
            const auto mark = reading->values.mark;
            const bool of_register = mark == MarkKind::meter_zeroed || mark == MarkKind::meter_swapped;
            const bool unlogged = hand_agrees && is_unlogged(reading->values.time_ms);
            if (of_register && !unlogged) add_mark(*reading, before);
            if (unlogged && (reading->values.register_wh || of_register)) {
                Reading& point = add(reading->values.time_ms, reading->uuid);
                point.values.register_wh = reading->values.register_wh;
                if (of_register) point.values.mark = mark;
            }
            before = reading;
        }
        // A mark goes before what was read after it.
        std::ranges::stable_sort(record_.readings, {},
                                 [](const Reading& reading) { return std::pair(reading.values.time_ms, !reading.values.mark.has_value()); });
        for (std::size_t i = 0; i < record_.readings.size(); ++i) record_.readings[i].sequence = static_cast<long>(i) + 1;
    }

    [[nodiscard]] const RunRecord& record() const { return record_; }

private:
    Reading& add(UtcMs time_ms, std::string uuid) {
        Reading reading;
        reading.uuid = std::move(uuid);
        reading.values.time_ms = time_ms;
        record_.readings.push_back(std::move(reading));
        return record_.readings.back();
    }

    bool is_unlogged(UtcMs time_ms) const {
        const auto next = std::ranges::lower_bound(samples_, time_ms, {}, &RegisterSample::time_ms);
        return next == samples_.end() || next == samples_.begin() || next->time_ms - (next - 1)->time_ms > bridged_by_hand_ms;
    }

    /// The mark just before the sample that follows the fall which it stands for; nowhere where the log's register does not fall.
    void add_mark(const Reading& reading, const Reading* before) {
        const UtcMs noted_ms = reading.values.time_ms;
        const UtcMs from_ms = (before == nullptr ? noted_ms : before->values.time_ms) - mark_reach_ms;
        std::optional<UtcMs> fall_ms;
        for (std::size_t i = 1; i < samples_.size(); ++i) {
            if (samples_[i].wh >= samples_[i - 1].wh || samples_[i].time_ms < from_ms || samples_[i - 1].time_ms > noted_ms + mark_reach_ms) continue;
            if (!fall_ms || std::abs(samples_[i].time_ms - noted_ms) < std::abs(*fall_ms - noted_ms)) fall_ms = samples_[i].time_ms;
        }
        if (fall_ms) add(*fall_ms, std::string(of_log) + reading.uuid).values.mark = reading.values.mark;
    }

    std::vector<RegisterSample> samples_;
    RunRecord record_;
};

/// The energy of the log, and what the track takes over from it.
struct Dense {
    LogCurve energy_wh, square_w2h;
    RegisterTrack track; ///< register corrections, segments, what is missing, and LogUse without its points
};

/// Squares of the mean loads over stretches in which the register moves far enough.
LogCurve register_squares(const LogCurve& energy_wh, double step_wh) {
    LogCurve squares{energy_wh.times_ms, std::vector<double>(energy_wh.values.size())};
    std::size_t from = 0;
    for (std::size_t i = 1; i < energy_wh.values.size(); ++i) {
        const double wh = energy_wh.values[i] - energy_wh.values[from];
        const bool last = i + 1 == energy_wh.values.size();
        if (wh < least_square_steps * step_wh && !last) continue;
        const double hours = hours_between(energy_wh.times_ms[from], energy_wh.times_ms[i]);
        const double watts = wh / hours;
        for (std::size_t k = from + 1; k <= i; ++k)
            squares.values[k] = squares.values[from] + watts * watts * hours_between(energy_wh.times_ms[from], energy_wh.times_ms[k]);
        from = i;
    }
    return squares;
}

std::optional<Dense> by_register(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    const HandCheck check = hand_check(record, options);
    // Where most of what was noted contradicts the log, its clock or the log itself is the wrong one.
    if (2 * (check.compared - check.agreeing) > check.compared) return std::nullopt;
    const DenseRecord made(record, check.agreeing > 0);
    Dense dense;
    dense.track = unwrap_register(made.record(), options);
    if (!dense.track.usable()) return std::nullopt;
    for (const RegisterPoint& point : dense.track.points) {
        if (!dense.energy_wh.times_ms.empty() && point.time_ms <= dense.energy_wh.times_ms.back()) continue;
        dense.energy_wh.times_ms.push_back(point.time_ms);
        dense.energy_wh.values.push_back(point.delivered_wh);
    }
    LogUse use;
    use.step_wh = register_step_wh(made.record());
    const double correction = typical_correction(record.meter);
    if (record.trace->has_power && gaps_within(*record.trace, *scan.first_ms, end_of(record, scan)).empty()) {
        dense.square_w2h = integrated_square(*record.trace);
        for (double& square : dense.square_w2h.values) square *= correction * correction;
    } else {
        dense.square_w2h = register_squares(dense.energy_wh, use.step_wh * correction);
    }
    std::erase_if(dense.track.register_corrections, [&use](const RegisterCorrection& register_correction) {
        const bool glitch = register_correction.kind == RegisterCorrectionKind::typing_error && register_correction.reading_uuid.starts_with(of_log);
        use.left_out += glitch ? 1 : 0;
        return glitch;
    });
    for (RegisterCorrection& register_correction : dense.track.register_corrections)
        if (register_correction.reading_uuid.starts_with(of_log)) {
            register_correction.reading_uuid.erase(0, of_log.size());
            register_correction.reason = "in the log: " + register_correction.reason;
        }
    dense.track.log = std::move(use);
    return dense;
}

/// The energy of an integrated power in true Wh, by what is stated of the meter at each power.
void correct_energy(const RunRecord& record, Dense& dense) {
    LogCurve& energy_wh = dense.energy_wh;
    for (std::size_t i = 0; i < energy_wh.values.size(); ++i)
        dense.track.points.push_back({no_reading, energy_wh.times_ms[i], 0, energy_wh.values[i]});
    apply_meters(record, {}, 0, dense.track);
    for (std::size_t i = 0; i < energy_wh.values.size(); ++i) energy_wh.values[i] = dense.track.points[i].delivered_wh;
}

Dense by_power(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    const RunTrace& trace = *record.trace;
    const double correction = typical_correction(record.meter);
    Dense dense;
    dense.energy_wh = integrated_energy(trace);
    dense.square_w2h = integrated_square(trace);
    correct_energy(record, dense);
    for (double& square : dense.square_w2h.values) square *= correction * correction;
    const IntegrationDoubt doubt = integration_doubt(trace);
    LogUse use;
    use.integrated = true;
    use.power_step_w = trace.power_step_w;
    use.u_sampling_wh = doubt.u_sampling_wh * correction;
    use.step_half_width_wh = doubt.step_half_width_wh * correction;
    dense.track.log = std::move(use);
    RegisterTrack& track = dense.track;
    const double moment_h = options.moment_doubt_min / 60;
    double missing_h = 0;
    long missing = 0;
    for (const PowerGap& gap : gaps_within(trace, *scan.first_ms, end_of(record, scan))) {
        const double hours = hours_between(gap.from_ms, gap.to_ms);
        if (hours <= complete_within_h) {
            track.short_gaps.push_back({hours, trace.peak_w * correction * (hours + moment_h)});
            continue;
        }
        missing_h += hours;
        ++missing;
    }
    if (missing > 0) {
        track.energy_may_be_missing = track.missing_inside = true;
        track.missing_reason = "the log has " + count_text(missing, "gap", "gaps") + " of " + duration_text(missing_h) +
                               " together, in which up to " + energy_text(trace.peak_w * correction * missing_h) +
                               " may have flowed at the highest power of " + fixed_text(trace.peak_w, 0) + " W";
    }
    return dense;
}

void note_missing(RegisterTrack& track, const std::string& clause) {
    track.energy_may_be_missing = true;
    track.missing_reason += (track.missing_reason.empty() ? "" : "; ") + clause;
}

void scale(MeterPart& part, double factor) {
    for (double* wh : {&part.register_wh, &part.delivered_wh, &part.limit_wh, &part.u_wh, &part.beyond_points_wh, &part.out_of_range_wh})
        *wh *= factor;
}

/// The gaps of the log's own track, as gaps between the noted moments; what was estimated before the first of them is in none.
void carry_gaps(const std::vector<RegisterPoint>& logged, RegisterTrack& track) {
    std::vector<MissingGap> carried;
    for (MissingGap gap : std::exchange(track.missing_gaps, {})) {
        if (gap.inside) {
            const UtcMs to_ms = logged[gap.point].time_ms;
            const auto at = std::ranges::lower_bound(track.points, to_ms, {}, &RegisterPoint::time_ms);
            if (at == track.points.begin() || at == track.points.end()) {
                track.missing_estimate_wh = std::max(0.0, track.missing_estimate_wh - gap.estimate_wh);
                continue;
            }
            gap.point = static_cast<std::size_t>(at - track.points.begin());
        }
        carried.push_back(gap);
    }
    track.missing_gaps = std::move(carried);
}

/// The track at the noted moments.
RegisterTrack at_noted_moments(const RunRecord& record, const RunScan& scan, const MeasureOptions& options, Dense dense) {
    RegisterTrack track = std::move(dense.track);
    LogUse& use = *track.log;
    const std::vector<RegisterPoint> logged = std::exchange(track.points, {});
    const LogCurve& energy_wh = dense.energy_wh;
    const UtcMs log_from_ms = energy_wh.times_ms.front(), log_to_ms = energy_wh.times_ms.back();
    const auto outside = static_cast<UtcMs>(complete_within_h * ms_per_hour);
    const RunTrace& trace = *record.trace;
    // After a power that ceased nothing flowed; what was noted after the cut-off is no part of the drain.
    const bool ceased = trace.has_power && trace.off_ms.has_value();
    const double doubt_ms = log_moment_doubt_ms(trace, options);
    const double total_h = hours_between(log_from_ms, log_to_ms);
    const double usual_w = total_h > 0 ? energy_wh.values.back() / total_h : 0;
    const double peak_w = trace.has_power ? trace.peak_w : usual_w;
    std::optional<double> start_wh, start_square;
    UtcMs covered_to_ms = log_from_ms;
    for (std::size_t i = 0; i < record.readings.size(); ++i) {
        const Reading& reading = record.readings[i];
        if (reading.withdrawn) continue;
        const UtcMs time_ms = reading.values.time_ms;
        if (time_ms < log_from_ms - outside || (time_ms > log_to_ms + outside && !ceased)) continue;
        const bool at_end = record.run.end == RunEnd::cut_off_seen && time_ms == scan.cut_off_ms.value_or(*scan.last_ms);
        const auto doubt = static_cast<UtcMs>(std::llround(doubt_ms));
        const UtcMs read_ms = at_end ? time_ms + doubt : time_ms;
        const double wh = energy_wh.at(read_ms);
        if (!start_wh) {
            start_wh = wh;
            start_square = dense.square_w2h.at(read_ms);
        }
        covered_to_ms = std::max(covered_to_ms, time_ms);
        const double shown_wh = track.points.empty() ? 0.0 : std::max(wh - *start_wh, track.points.back().delivered_wh);
        track.points.push_back({i, time_ms, wh, shown_wh});
        use.square_w2h.push_back(std::max(0.0, dense.square_w2h.at(read_ms) - *start_square));
        use.u_wh.push_back(std::hypot(energy_wh.u_between(read_ms), at_end ? 0.0 : energy_wh.u_moment(time_ms, doubt_ms)));
    }
    if (track.points.empty()) {
        track.missing_gaps.clear();
        return track;
    }
    if ((record.run.end == RunEnd::still_running || (trace.on_past_notes && !scan.cut_off_ms)) && log_to_ms > covered_to_ms) {
        const double last_wh = energy_wh.values.back();
        track.points.push_back({no_reading, log_to_ms, last_wh, std::max(last_wh - *start_wh, track.points.back().delivered_wh)});
        use.square_w2h.push_back(std::max(0.0, dense.square_w2h.at(log_to_ms) - *start_square));
        use.u_wh.push_back(0);
    }
    carry_gaps(logged, track);
    // The log may begin before the run and go on after it.
    const double logged_wh = energy_wh.values.back() - energy_wh.values.front();
    for (MeterPart& part : track.meters) scale(part, logged_wh > 0 ? track.total_wh() / logged_wh : 0);
    const auto short_gap = [&](double hours) { track.short_gaps.push_back({hours, peak_w * (hours + options.moment_doubt_min / 60)}); };
    const auto about = [&](double hours) { return " (" + duration_text(hours) + ", about " + energy_text(usual_w * hours) + " at the mean load)"; };
    if (*scan.first_ms < log_from_ms) {
        const double hours = hours_between(*scan.first_ms, log_from_ms);
        if (hours <= complete_within_h) short_gap(hours);
        else note_missing(track, "the log begins after the start" + about(hours));
    }
    const UtcMs end_ms = scan.cut_off_ms.value_or(*scan.last_ms);
    if (record.run.end != RunEnd::still_running && !ceased && end_ms > log_to_ms) {
        const double hours = hours_between(log_to_ms, end_ms);
        if (hours <= complete_within_h) short_gap(hours);
        else note_missing(track, "the log ends before the end of the run" + about(hours));
    }
    return track;
}

} // namespace

std::optional<RegisterTrack> log_track(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    if (!record.trace || record.trace->points.empty() || !scan.first_ms || !log_is_of_run_meter(record)) return std::nullopt;
    std::optional<Dense> dense;
    if (record.trace->has_register) dense = by_register(record, scan, options);
    else if (record.trace->has_power && scan.registers.size() < 2) dense = by_power(record, scan, options);
    if (!dense || !dense->energy_wh.usable()) return std::nullopt;
    RegisterTrack track = at_noted_moments(record, scan, options, std::move(*dense));
    if (!track.usable()) return std::nullopt;
    return track;
}

} // namespace ullage
