// SPDX-License-Identifier: GPL-3.0-or-later
// The log's own points are unwrapped as a run of their own ("dense").
#include "measure/inside/dense_log.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/log_check.h"
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

/// What a sample of the log has for an identifier: that of the note beside it, marked.
ReadingId of_log_at(const ReadingId& note) { return ReadingId(std::string(of_log) + note.text()); }
bool is_of_log(const ReadingId& reading) { return reading.text().starts_with(of_log); }

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
            Reading& point = add(sample.time_ms, of_log_at((next == readings.end() ? readings.back() : *next)->uuid));
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
    Reading& add(UtcMs time_ms, ReadingId uuid) {
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
        if (fall_ms) add(*fall_ms, of_log_at(reading.uuid)).values.mark = reading.values.mark;
    }

    std::vector<RegisterSample> samples_;
    RunRecord record_;
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

/// Whether all registers noted by hand stand before the log and it may go on from the last of them: it begins no lower, and no higher than half more
/// than its highest power (its mean, where it holds none) would have brought by then. So a start that was noted some minutes before the log began is
/// no gap, and the register of another meter is not taken for this one.
bool leads_to_log(const RunRecord& record, const MeasureOptions& options) {
    constexpr double most_over_peak = 1.5;
    const std::vector<RegisterSample> samples = register_samples(*record.trace);
    if (samples.size() < 2) return false;
    const Reading* last = nullptr;
    for (const Reading* reading : readings_kept(record)) {
        if (!reading->values.register_wh) continue;
        if (reading->values.time_ms >= samples.front().time_ms) return false;
        last = reading;
    }
    if (last == nullptr) return false;
    const double log_h = hours_between(samples.front().time_ms, samples.back().time_ms);
    const double mean_w = log_h > 0 ? (samples.back().wh - samples.front().wh) / log_h : 0;
    const double most_w = record.trace->has_power ? record.trace->peak_w : mean_w;
    const double hours = hours_between(last->values.time_ms, samples.front().time_ms) + options.moment_doubt_min / 60;
    const double step_wh = register_step_wh(record);
    const double risen_wh = samples.front().wh - *last->values.register_wh;
    return risen_wh >= -step_wh && risen_wh <= most_over_peak * most_w * hours + step_wh;
}

std::optional<DenseLog> by_register(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    const HandCheck check = hand_check(record, options);
    // Where most of what was noted contradicts the log, its clock or the log itself is the wrong one.
    if (2 * (check.compared - check.agreeing) > check.compared) return std::nullopt;
    const DenseRecord made(record, check.agreeing > 0 || leads_to_log(record, options));
    DenseLog dense;
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
    if (record.trace->has_power && gaps_within(*record.trace, *scan.first_ms, log_end_of(record, scan)).empty()) {
        dense.square_w2h = integrated_square(*record.trace);
        for (double& square : dense.square_w2h.values) square *= correction * correction;
    } else {
        dense.square_w2h = register_squares(dense.energy_wh, use.step_wh * correction);
    }
    std::erase_if(dense.track.register_corrections, [&use](const RegisterCorrection& register_correction) {
        const bool glitch = register_correction.kind == RegisterCorrectionKind::typing_error && is_of_log(register_correction.reading_uuid);
        use.left_out += glitch ? 1 : 0;
        return glitch;
    });
    for (RegisterCorrection& register_correction : dense.track.register_corrections)
        if (is_of_log(register_correction.reading_uuid)) {
            register_correction.reading_uuid = ReadingId(register_correction.reading_uuid.text().substr(of_log.size()));
            register_correction.reason = say(phrase("measure", "in the log: %1"), register_correction.reason);
        }
    dense.track.log = std::move(use);
    return dense;
}

/// The energy of an integrated power in true Wh, by what is stated of the meter at each power.
void correct_energy(const RunRecord& record, DenseLog& dense) {
    LogCurve& energy_wh = dense.energy_wh;
    for (std::size_t i = 0; i < energy_wh.values.size(); ++i)
        dense.track.points.push_back({no_reading, energy_wh.times_ms[i], 0, energy_wh.values[i]});
    apply_meters(record, {}, 0, dense.track);
    for (std::size_t i = 0; i < energy_wh.values.size(); ++i) energy_wh.values[i] = dense.track.points[i].delivered_wh;
}

DenseLog by_power(const RunRecord& record, const RunScan& scan) {
    const RunTrace& trace = *record.trace;
    const double correction = typical_correction(record.meter);
    DenseLog dense;
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
    dense.open_gaps = gaps_within(trace, *scan.first_ms, log_end_of(record, scan));
    return dense;
}

} // namespace

UtcMs log_end_of(const RunRecord& record, const RunScan& scan) {
    if (record.run.end == RunEnd::still_running) return latest_ms;
    if (record.trace->on_past_notes && !scan.cut_off_ms) return record.trace->points.back().time_ms;
    return scan.cut_off_ms.value_or(*scan.last_ms);
}

std::optional<DenseLog> dense_log(const RunRecord& record, const RunScan& scan, const MeasureOptions& options) {
    std::optional<DenseLog> dense;
    if (record.trace->has_register) dense = by_register(record, scan, options);
    else if (record.trace->has_power && scan.registers.size() < 2) dense = by_power(record, scan);
    if (!dense || !dense->energy_wh.usable()) return std::nullopt;
    return dense;
}

void note_open_gaps(const RunRecord& record, const MeasureOptions& options, DenseLog& dense) {
    const double correction = typical_correction(record.meter), moment_h = options.moment_doubt_min / 60;
    const double peak_w = record.trace->peak_w;
    double missing_h = 0;
    long missing = 0;
    for (const PowerGap& gap : dense.open_gaps) {
        const double hours = hours_between(gap.from_ms, gap.to_ms);
        if (hours <= complete_within_h) {
            dense.track.short_gaps.push_back({hours, peak_w * correction * (hours + moment_h)});
            continue;
        }
        missing_h += hours;
        ++missing;
    }
    if (missing == 0) return;
    dense.track.energy_may_be_missing = dense.track.missing_inside = true;
    dense.track.missing_reason =
        say_count(missing,
                  phrases("measure", "the log has %n gaps of %1 together, in which up to %2 may have flowed at the highest power of %3 W",
                          "the log has %n gap of %1 together, in which up to %2 may have flowed at the highest power of %3 W"),
                  duration_text(missing_h), say_energy(peak_w * correction * missing_h), say_number(peak_w, 0));
}

} // namespace ullage
