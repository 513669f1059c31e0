// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/live/watched_run.h"

#include "base/number.h"
#include "formats/text/table_unicode.h"
#include "style/words.h"

#include <fmt/format.h>

namespace ullage {

std::string WatchedRun::name() const { return one_line(fmt::format("{} run {}", record.unit.name, record.number)); }

Result<std::unique_ptr<WatchedRun>> watch_run(Logbook& logbook, const RunRecord& record, const LiveSource& source, const QString& password,
                                              const LiveClocks& clocks) {
    auto live = LiveTrace::begin(logbook, record.run.uuid, record.run.meter_uuid, source);
    if (!live) return live.error();
    auto run = try_run(record, source, password, clocks);
    run->live.emplace(std::move(live).value());
    const auto step_wh = record.meter ? record.meter->step_wh : std::nullopt;
    run->session->recordInto(
        [&logbook, raw = run.get()](std::span<const TraceSample> samples, long left_out) { return raw->live->write(logbook, samples, left_out); },
        run->live->last_before(), step_wh);
    // What the run says already is known: its pauses and its level, and whether it is off.
    EventDetector detector(step_wh);
    const auto traces = logbook.traces(record.run.uuid);
    if (!traces) return traces.error();
    for (const Trace& trace : traces.value()) {
        if (trace.withdrawn || !is_live(trace)) continue;
        const auto read = logbook.read_samples(trace.uuid, trace.first_ms, trace.last_ms, [&detector](std::span<const TraceSample> samples) {
            for (const TraceSample& sample : samples) detector.take(sample);
            return true;
        });
        if (!read) return read.error();
    }
    run->off = detector.output_off();
    run->session->setDetector(std::move(detector));
    return run;
}

std::unique_ptr<WatchedRun> try_run(const RunRecord& record, const LiveSource& source, const QString& password, const LiveClocks& clocks) {
    auto run = std::make_unique<WatchedRun>();
    run->record = record;
    run->source = source;
    run->session = std::make_unique<LiveSession>(SourceLink::make(source, password), clocks);
    return run;
}

std::string sample_text(const TraceSample& sample) {
    std::string text;
    const auto add = [&text](const std::optional<double>& value, int decimals, const char* unit) {
        if (value) text += (text.empty() ? "" : ", ") + fixed_text(*value, decimals) + ' ' + unit;
    };
    add(sample.power_w, 1, "W");
    add(sample.register_wh, 2, "Wh");
    add(sample.voltage_v, 1, "V");
    add(sample.current_a, 3, "A");
    add(sample.gauge_percent, 0, "% on the gauge");
    add(sample.output_w, 0, "W by the unit");
    return text;
}

std::string state_line(const WatchedRun& run) {
    const LiveState state = run.session->state();
    std::string text = run.name() + ": ";
    if (state.latest) text += sample_text(*state.latest);
    else text += state.link == LiveState::Link::connected ? "connected, nothing has come yet" : "nothing has come yet";
    if (state.age_ms) text += fmt::format(", {} s ago", *state.age_ms / 1000);
    if (state.per_second) text += fmt::format(", {:.2g} a second", *state.per_second);
    text += fmt::format("; {} taken", count_text(state.taken, "sample", "samples"));
    if (state.left_out + state.misunderstood > 0) text += fmt::format(", {} left out", state.left_out + state.misunderstood);
    if (state.lost > 0) text += fmt::format(", {} lost", state.lost);
    if (state.clock_set) text += "; the machine's clock has been set, samples go on by the steady one";
    if (!run.session->found().isEmpty()) text += "; " + utf8_of(run.session->found());
    if (!state.trouble.isEmpty()) text += "; " + utf8_of(state.trouble);
    return one_line(text);
}

} // namespace ullage
