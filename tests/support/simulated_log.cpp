// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/simulated_log.h"

#include "model/gauge_thinner.h"
#include "model/trace_thinner.h"

#include <algorithm>
#include <cmath>

namespace ullage::test {

std::vector<TraceSample> simulated_log(const RunSetup& setup, const SimulatedRun& run, const LogSetup& log, std::uint64_t seed) {
    const Discharge discharge(run.truth.physics, setup.load, setup.start_depth * run.truth.physics.battery_wh);
    const double gain = 1 + log.gain_error_percent.value_or(run.truth.gain_error_percent) / 100;
    const double correction = setup.meter ? setup.meter->meter.correction : 1;
    const double end_h = std::min(discharge.end_hours(), run.truth.output_on_h);
    Random random(seed);
    std::vector<TraceSample> samples;
    double zeroed_wh = -random.uniform(0, log.register_step_wh) - log.register_start_wh;
    auto zeroing = log.zeroed_h.begin();
    for (double s = -log.before_s + random.uniform(0, log.interval_s); s <= end_h * 3600 + log.after_s;
         s += log.interval_s * (1 + random.uniform(-log.jitter, log.jitter))) {
        const double hours = s / 3600;
        if (std::ranges::any_of(log.gaps_h, [hours](const auto& gap) { return hours > gap.first && hours < gap.second; })) continue;
        const DischargeState state = discharge.at(std::clamp(hours, 0.0, end_h));
        const double metered_wh = state.delivered_wh * gain / correction;
        if (zeroing != log.zeroed_h.end() && hours >= *zeroing) zeroed_wh = discharge.at(*zeroing++).delivered_wh * gain / correction;
        TraceSample sample;
        sample.time_ms = setup.start_ms + std::llround(1000 * (s - log.behind_s));
        if (log.with_register) sample.register_wh = std::floor((metered_wh - zeroed_wh) / log.register_step_wh) * log.register_step_wh;
        const double watts = hours < 0 || hours >= end_h ? 0 : state.load_w * gain / correction;
        if (log.with_power) sample.power_w = std::round(watts / log.power_step_w) * log.power_step_w;
        samples.push_back(sample);
    }
    return samples;
}

std::vector<TraceSample> simulated_gauge_log(const RunSetup& setup, const SimulatedRun& run, const GaugeLogSetup& log, std::uint64_t seed) {
    const Discharge discharge(run.truth.physics, setup.load, setup.start_depth * run.truth.physics.battery_wh);
    GaugeLaw law = setup.gauge;
    law.noise_pt = log.flicker_pt;
    const SimulatedGauge gauge(law, run.truth.physics, discharge);
    const double end_h = std::min(discharge.end_hours(), run.truth.output_on_h);
    Random random(seed);
    std::vector<TraceSample> samples;
    long dropped = 0;
    for (double s = random.uniform(0, log.interval_s) - 60; s <= end_h * 3600 + log.after_s; s += log.interval_s) {
        const double hours = s / 3600;
        if (std::ranges::any_of(log.gaps_h, [hours](const auto& gap) { return hours > gap.first && hours < gap.second; })) continue;
        TraceSample sample;
        sample.time_ms = setup.start_ms + std::llround(1000 * (s - log.behind_s));
        sample.gauge_percent = gauge.shown_percent(std::clamp(hours, 0.0, end_h), random);
        if (random.uniform(0, 1) < log.drop_outs) {
            const long sort = dropped++ % 3;
            sample.gauge_percent = sort == 0 ? 0 : 255;
            if (sort == 2) sample.gauge_percent.reset();
        }
        const DischargeState state = discharge.at(std::clamp(hours, 0.0, end_h));
        sample.output_w = hours < 0 || hours >= end_h ? 0 : std::round(state.load_w * (1 + log.output_error));
        samples.push_back(sample);
    }
    return samples;
}

void give_gauge_log(RunRecord& record, std::vector<TraceSample> samples, UtcMs offset_ms, double offset_u_s) {
    for (TraceSample& sample : samples) sample.time_ms += offset_ms;
    GaugeThinner thinner;
    thinner.take(samples);
    record.gauge_log = thinner.finish();
    if (record.gauge_log) record.gauge_log->offset_u_s = offset_u_s;
}

namespace {

std::optional<RunTrace> thinned(const RunRecord& record, const std::vector<TraceSample>& samples, double offset_u_s) {
    Trace about;
    about.samples = static_cast<std::int64_t>(samples.size());
    about.first_ms = samples.front().time_ms;
    about.last_ms = samples.back().time_ms;
    TraceThinner thinner(record.readings, record.run.end, about.first_ms, about.last_ms, gap_limit_s({&about, 1}));
    std::vector<TraceSample> within = samples;
    std::erase_if(within, [&thinner](const TraceSample& sample) { return sample.time_ms < thinner.from_ms() || sample.time_ms > thinner.to_ms(); });
    thinner.take(within);
    std::optional<RunTrace> trace = thinner.finish();
    if (trace) trace->offset_u_s = offset_u_s;
    return trace;
}

} // namespace

void give_log(RunRecord& record, const std::vector<TraceSample>& samples, double offset_u_s) { record.trace = thinned(record, samples, offset_u_s); }

void give_other_log(RunRecord& record, const Meter& meter, const std::vector<TraceSample>& samples, double offset_u_s) {
    std::optional<RunTrace> trace = thinned(record, samples, offset_u_s);
    if (!trace) return;
    trace->meter_uuid = meter.uuid;
    record.other_logs.push_back({meter, std::move(*trace)});
}

} // namespace ullage::test
