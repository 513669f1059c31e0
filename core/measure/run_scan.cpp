// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/run_scan.h"

#include <algorithm>

namespace ullage {
namespace {

class Scanner {
public:
    Scanner(const RunRecord& record, RunScan& scan)
        : scan_(scan), least_rise_pt_(2 * std::max(record.unit.gauge_step_percent, 1e-3)),
          is_drain_(record.run.kind == RunKind::drain || record.run.kind == RunKind::no_load_drain) {
        scan_.registers.reserve(record.readings.size());
        scan_.gauges.reserve(record.readings.size());
    }

    void take(std::size_t index, const Reading& reading) {
        const ReadingValues& values = reading.values;
        const bool after_the_end = is_drain_ && scan_.cut_off_ms && values.time_ms > *scan_.cut_off_ms;
        if (!after_the_end) take_moment(values.time_ms);
        if (reading.sequence < last_sequence_) scan_.entered_in_order = false;
        last_sequence_ = std::max(last_sequence_, reading.sequence);
        if (after_the_end) {
            take_after_the_end(index, values);
            return;
        }
        if (values.mark) take_mark(*values.mark, values.time_ms);
        if (values.gauge_percent) take_gauge(index, values.time_ms, *values.gauge_percent);
        scan_.row_after_register = !values.register_wh;
        if (values.register_wh) take_register(index, values.time_ms, *values.register_wh);
        else scan_.row_before_register = scan_.row_before_register || scan_.registers.empty();
    }

    void finish() {
        if (off_since_ms_) scan_.output_off.push_back({*off_since_ms_, *scan_.last_ms, false});
    }

private:
    void take_after_the_end(std::size_t index, const ReadingValues& values) {
        scan_.noted_after_the_end = true;
        if (!values.register_wh || pending_ || values.mark) return;
        const bool read_at_the_end = !scan_.registers.empty() && scan_.registers.back().time_ms == *scan_.cut_off_ms;
        if (!read_at_the_end) {
            scan_.row_after_register = false;
            scan_.register_read_late = index;
            scan_.registers.push_back({index, *scan_.cut_off_ms, *values.register_wh, 0});
        } else if (*values.register_wh > scan_.registers.back().register_wh) {
            scan_.register_went_on = index;
        }
    }

    void take_moment(UtcMs time_ms) {
        if (!scan_.first_ms) scan_.first_ms = time_ms;
        if (scan_.last_ms && *scan_.last_ms != time_ms) scan_.before_last_ms = scan_.last_ms;
        scan_.last_ms = time_ms;
    }

    void take_mark(MarkKind mark, UtcMs time_ms) {
        switch (mark) {
        case MarkKind::meter_zeroed:
        case MarkKind::meter_swapped:
            pending_ = mark;
            pending_ms_ = time_ms;
            break;
        case MarkKind::output_tripped:
            if (!off_since_ms_) off_since_ms_ = time_ms;
            break;
        case MarkKind::output_reset:
            if (off_since_ms_) scan_.output_off.push_back({*off_since_ms_, time_ms, true});
            off_since_ms_.reset();
            break;
        case MarkKind::cut_off:
            if (!scan_.cut_off_ms) scan_.cut_off_ms = time_ms;
            break;
        case MarkKind::load_changed: break;
        }
    }

    void take_gauge(std::size_t index, UtcMs time_ms, double percent) {
        if (!scan_.gauges.empty() && percent - scan_.gauges.back().gauge_percent >= least_rise_pt_)
            scan_.rises.push_back(
                {scan_.gauges.back().reading, index, scan_.gauges.back().time_ms, time_ms, scan_.gauges.back().gauge_percent, percent});
        PairedPoint point;
        point.reading = index;
        point.time_ms = time_ms;
        point.hours = hours_between(*scan_.first_ms, time_ms);
        point.gauge_percent = percent;
        scan_.gauges.push_back(point);
    }

    void take_register(std::size_t index, UtcMs time_ms, double register_wh) {
        if (!scan_.registers.empty() && !pending_) {
            const RegisterPoint& before = scan_.registers.back();
            if (before.time_ms == time_ms && before.register_wh == register_wh) {
                scan_.duplicates.push_back(index);
                return;
            }
        }
        if (pending_) scan_.marks.push_back({scan_.registers.size(), *pending_, pending_ms_});
        pending_.reset();
        scan_.registers.push_back({index, time_ms, register_wh, 0});
    }

    RunScan& scan_;
    double least_rise_pt_;
    bool is_drain_;
    long last_sequence_ = -1;
    std::optional<MarkKind> pending_;
    UtcMs pending_ms_ = 0;
    std::optional<UtcMs> off_since_ms_;
};

} // namespace

RunScan scan_run(const RunRecord& record) {
    RunScan scan;
    Scanner scanner(record, scan);
    for (std::size_t i = 0; i < record.readings.size(); ++i)
        if (!record.readings[i].withdrawn) scanner.take(i, record.readings[i]);
    scanner.finish();
    return scan;
}

} // namespace ullage
