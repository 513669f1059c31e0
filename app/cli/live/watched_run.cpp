// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/live/watched_run.h"

#include "base/number.h"
#include "formats/text/table_unicode.h"
#include "style/words.h"

#include <fmt/format.h>

namespace ullage {

std::string WatchedRun::name() const { return one_line(say(phrase("commands", "%1 run %2"), record.unit.name, say_number(record.number)).text()); }

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

Message say_sample(const TraceSample& sample) {
    std::vector<Message> parts;
    const auto add = [&parts](const std::optional<double>& value, int decimals, const Phrase& words) {
        if (value) parts.push_back(say(words, say_number(*value, decimals)));
    };
    add(sample.power_w, 1, phrase("commands", "%1 W"));
    add(sample.register_wh, 2, phrase("commands", "%1 Wh"));
    add(sample.voltage_v, 1, phrase("commands", "%1 V"));
    add(sample.current_a, 3, phrase("commands", "%1 A"));
    add(sample.gauge_percent, 0, phrase("commands", "%1 % on the gauge"));
    add(sample.output_w, 0, phrase("commands", "%1 W by the unit"));
    return say_joined(parts, ", ");
}

Message state_line(const WatchedRun& run) {
    const LiveState state = run.session->state();
    Message now = state.latest                               ? say_sample(*state.latest)
                  : state.link == LiveState::Link::connected ? say(phrase("commands", "connected, nothing has come yet"))
                                                             : say(phrase("commands", "nothing has come yet"));
    if (state.age_ms) now = say(phrase("commands", "%1, %2 s ago"), now, say_number(*state.age_ms / 1000));
    if (state.per_second) now = say(phrase("commands", "%1, %2 a second"), now, say_digits(fmt::format("{:.2g}", *state.per_second)));
    Message counts = say_count(state.taken, phrases("commands", "%n samples taken", "%n sample taken"));
    if (state.left_out + state.misunderstood > 0)
        counts = say(phrase("commands", "%1, %2 left out"), counts, say_number(state.left_out + state.misunderstood));
    if (state.lost > 0) counts = say(phrase("commands", "%1, %2 lost"), counts, say_number(state.lost));
    std::vector<Message> clauses{now, counts};
    if (state.clock_set) clauses.push_back(say(phrase("commands", "the machine's clock has been set, samples go on by the steady one")));
    for (const QString& words : {run.session->found(), state.trouble})
        if (!words.isEmpty()) clauses.emplace_back(utf8_of(words));
    return say(phrase("commands", "%1: %2"), run.name(), say_joined(clauses, "; "));
}

} // namespace ullage
