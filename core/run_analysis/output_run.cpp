// SPDX-License-Identifier: GPL-3.0-or-later
#include "run_analysis/output_run.h"

#include "base/number.h"
#include "model/meter_gain.h"
#include "numerics/monte_carlo.h"

#include <algorithm>
#include <cmath>
#include <iterator>

namespace ullage {

namespace {

using End = OutputStep::End;

constexpr double coarsest_hold_step = 0.05; ///< of a step's energy, one register step

Message say_span(double hours) {
    if (hours <= 0) return say(phrase("run_analysis", "less than a minute"));
    return hours < 1 ? say_measure(60 * hours, 0, "min") : say_measure(hours, 1, "h");
}

/// Readings of one step, in order of time; the last may carry the mark that ended it.
struct OutputSpan {
    std::vector<const Reading*> readings;
    End end = End::run_ended;
    bool ended_by_mark = false;
};

std::vector<OutputSpan> spans(const RunRecord& record, OutputRun& run) {
    std::vector<OutputSpan> all;
    OutputSpan open;
    bool on = true;
    const auto close = [&](End end, bool by_mark) {
        open.end = end;
        open.ended_by_mark = by_mark;
        if (!open.readings.empty()) all.push_back(open);
        open = {};
    };
    for (const Reading& reading : record.readings) {
        if (reading.withdrawn) continue;
        const auto mark = reading.values.mark;
        if (mark == MarkKind::output_tripped || mark == MarkKind::cut_off) {
            if (mark == MarkKind::output_tripped) ++run.trips;
            if (!on) continue;
            open.readings.push_back(&reading);
            close(mark == MarkKind::output_tripped ? End::tripped : End::cut_off, true);
            on = false;
            continue;
        }
        if (mark == MarkKind::output_reset) {
            ++run.resets;
            on = true;
        }
        if (!on) continue;
        if (mark == MarkKind::load_changed && !open.readings.empty()) {
            open.readings.push_back(&reading);
            close(End::load_changed, true);
        }
        open.readings.push_back(&reading);
    }
    const bool running = record.run.end == RunEnd::still_running;
    if (on) close(running ? End::still_running : End::run_ended, false);
    return all;
}

std::optional<double> delivered_at(const RegisterTrack& track, UtcMs time_ms) {
    // Of several points of one moment the last.
    const auto after = std::ranges::upper_bound(track.points, time_ms, {}, &RegisterPoint::time_ms);
    if (after == track.points.begin() || std::prev(after)->time_ms != time_ms) return std::nullopt;
    return std::prev(after)->delivered_wh;
}

struct Stretch {
    double wh = 0, hours = 0;
};

/// The longest stretch within the span between two register readings.
std::optional<Stretch> metered(const OutputSpan& span, const RegisterTrack& track) {
    std::optional<double> first, last;
    UtcMs from_ms = 0, to_ms = 0;
    for (const Reading* reading : span.readings) {
        const auto wh = delivered_at(track, reading->values.time_ms);
        if (!wh || (!track.log && !reading->values.register_wh)) continue;
        if (!first) {
            first = wh;
            from_ms = reading->values.time_ms;
        }
        last = wh;
        to_ms = reading->values.time_ms;
    }
    if (!first || to_ms <= from_ms) return std::nullopt;
    return Stretch{*last - *first, hours_between(from_ms, to_ms)};
}

/// Watts that the meter showed while the step stood.
std::vector<double> noted_watts(const OutputSpan& span) {
    std::vector<double> noted;
    for (std::size_t i = 0; i < span.readings.size(); ++i) {
        const ReadingValues& values = span.readings[i]->values;
        // The row of a changed load shows the new load, so it does not tell of the step that it ends.
        const bool of_next = i + 1 == span.readings.size() && i > 0 && span.end == End::load_changed;
        if (values.meter_w && *values.meter_w > 0 && !of_next) noted.push_back(*values.meter_w);
    }
    return noted;
}

/// Load and the standard uncertainty of everything but the meter's gain.
struct Load {
    double watts = 0, u_w = 0;
    Message basis;
};

std::optional<Load> by_register(const OutputSpan& span, const EnergyAnalysis& energy) {
    const auto stretch = metered(span, energy.track);
    if (!stretch || energy.register_step_wh > coarsest_hold_step * stretch->wh) return std::nullopt;
    const double watts = stretch->wh / stretch->hours;
    const double u_step = energy.register_step_wh / std::sqrt(6.0) / stretch->hours;
    // Two noted moments, each rectangular.
    const double u_moments = watts * energy.options.moment_doubt_min / 60 * std::sqrt(2.0 / 3) / stretch->hours;
    return Load{watts, std::hypot(u_step, u_moments), say(phrase("run_analysis", "energy over time"))};
}

std::optional<Load> by_notes(const std::vector<double>& noted) {
    if (noted.empty()) return std::nullopt;
    double sum = 0;
    for (const double watts : noted) sum += watts;
    const auto [low, high] = std::ranges::minmax_element(noted);
    return Load{sum / static_cast<double>(noted.size()), (*high - *low) / std::sqrt(12.0),
                say_count(noted.size(), phrases("run_analysis", "%n notes of watts; the meter's limit of energy is taken for that of power",
                                                "%n note of watts; the meter's limit of energy is taken for that of power"))};
}

Quantity load_of(const OutputSpan& span, const RunRecord& record, const EnergyAnalysis& energy) {
    constexpr const char* key = "step_load_w";
    const std::vector<double> noted = noted_watts(span);
    const std::optional<Load> metered_load = by_register(span, energy), noted_load = by_notes(noted);
    if (!metered_load && !noted_load)
        return not_known(key, "W", say(phrase("run_analysis", "the step has neither watts noted nor energy that its register resolves")));
    // One note says nothing of what came between, so it stands back unless the step is too short for energy over time.
    const bool notes_tell = noted_load && (!metered_load || ((noted.size() > 1 || metered_load->u_w > coarsest_hold_step * metered_load->watts) &&
                                                             noted_load->u_w < metered_load->u_w));
    const Load& load = notes_tell ? *noted_load : *metered_load;
    std::optional<double> half;
    if (const auto limit_percent = record.meter ? error_limit_percent(*record.meter) : std::nullopt)
        half = half_width_of_sum(load.watts * *limit_percent / 100, load.u_w, energy.options.coverage);
    return known(key, "W", load.watts, half, Kind::measured,
                 half ? load.basis
                      : say_joined({load.basis, say(phrase("run_analysis", "no interval, as the meter's error limit is not stated"))}, "; "));
}

OutputStep step_of(const OutputSpan& span, const RunRecord& record, const EnergyAnalysis& energy) {
    OutputStep step;
    step.from_h = hours_between(energy.start_ms, span.readings.front()->values.time_ms);
    step.to_h = hours_between(energy.start_ms, span.readings.back()->values.time_ms);
    step.end = span.end;
    step.watts = load_of(span, record, energy);
    std::optional<double> first, last;
    for (const Reading* reading : span.readings)
        if (reading->values.gauge_percent) {
            if (!first) first = reading->values.gauge_percent;
            last = reading->values.gauge_percent;
        }
    if (first) step.gauge_used_pt = *first - *last;
    return step;
}

bool higher(const OutputStep& a, const OutputStep& b) { return a.watts.value.value_or(0) > b.watts.value.value_or(0); }

void decide(const RunRecord& record, OutputRun& run) {
    const double least_h = record.run.kind == RunKind::sustained_output ? sustained_hold_h : 0;
    const bool sustained = record.run.kind == RunKind::sustained_output;
    std::optional<std::size_t> held, tripped, beyond, highest;
    for (std::size_t s = 0; s < run.steps.size(); ++s) {
        const OutputStep& step = run.steps[s];
        if (!step.watts.value) continue;
        if (!highest || higher(step, run.steps[*highest])) highest = s;
        if (!run.claimed_w) continue;
        const double upper = step.watts.upper.value_or(*step.watts.value), lower = step.watts.lower.value_or(*step.watts.value);
        const bool reaches = upper >= *run.claimed_w;
        // A peak is claimed for a moment: one that stood between two readings was carried, whatever came after.
        const bool stood = step.hours() > 0 && step.hours() >= least_h && (step.end != End::tripped || !sustained);
        if (reaches && stood && (!held || step.hours() > run.steps[*held].hours())) held = s;
        if (step.end != End::tripped) continue;
        if (lower > *run.claimed_w) beyond = s;
        else if (!(reaches && stood)) tripped = s;
    }
    if (!highest) {
        run.sentence = say(phrase("run_analysis", "No step of this run has a known load: note the watts, or the register at both ends of a step."));
        return;
    }
    const auto load = [&](std::size_t s) { return say_quantity(run.steps[s].watts, 0); };
    const auto span = [&](std::size_t s) { return say_span(run.steps[s].hours()); };
    if (!run.claimed_w) {
        run.deciding = highest;
        run.sentence = say(phrase("run_analysis", "The claim is not stated; the highest load was %1 for %2."), load(*highest), span(*highest));
        return;
    }
    const Message claim = say_digits(exact_text(*run.claimed_w) + " W");
    if (tripped) {
        run.outcome = OutputOutcome::tripped;
        run.deciding = tripped;
        run.sentence = say(phrase("run_analysis", "Tripped at %1 after %2; %3 are claimed."), load(*tripped), span(*tripped), claim);
    } else if (held) {
        run.outcome = OutputOutcome::held;
        run.deciding = held;
        std::vector<Message> sentences{say(phrase("run_analysis", "Held %1 for %2; %3 are claimed."), load(*held), span(*held), claim)};
        if (*run.steps[*held].watts.value < *run.claimed_w)
            sentences.push_back(say(phrase("run_analysis", "The claim lies within the uncertainty.")));
        if (beyond) sentences.push_back(say(phrase("run_analysis", "It tripped at %1, above the claim."), load(*beyond)));
        run.sentence = say_joined(sentences, " ");
    } else if (beyond) {
        run.outcome = OutputOutcome::tripped;
        run.deciding = beyond;
        run.beyond_claim = true;
        run.sentence = say(phrase("run_analysis", "Tripped at %1, above the %2 claimed; a load at the claim was not held long enough to tell."),
                           load(*beyond), claim);
    } else {
        run.outcome = OutputOutcome::not_reached;
        run.deciding = highest;
        const bool too_short = run.steps[*highest].watts.upper.value_or(*run.steps[*highest].watts.value) >= *run.claimed_w;
        run.sentence =
            say(too_short ? phrase("run_analysis", "Not reached: the highest load was %1 for %2; %3 are claimed, to be held for %4 min at least.")
                          : phrase("run_analysis", "Not reached: the highest load was %1 for %2; %3 are claimed."),
                load(*highest), span(*highest), claim, say_number(60 * sustained_hold_h, 0));
    }
}

} // namespace

std::string_view output_end_text(End end) {
    switch (end) {
    case End::load_changed: return "load changed";
    case End::tripped: return "tripped";
    case End::cut_off: return "cut-off";
    case End::run_ended: return "run ended";
    case End::still_running: return "still running";
    }
    return "run ended";
}

std::string_view output_outcome_text(OutputOutcome outcome) {
    switch (outcome) {
    case OutputOutcome::held: return "held";
    case OutputOutcome::tripped: return "tripped";
    case OutputOutcome::not_reached: return "not reached";
    case OutputOutcome::not_known: return "not known";
    }
    return "not known";
}

Message say_output_end(End end) {
    switch (end) {
    case End::load_changed: return say(phrase("run_analysis", "load changed"));
    case End::tripped: return say(phrase("run_analysis", "tripped"));
    case End::cut_off: return say(phrase("run_analysis", "cut-off"));
    case End::run_ended: return say(phrase("run_analysis", "run ended"));
    case End::still_running: return say(phrase("run_analysis", "still running"));
    }
    return say(phrase("run_analysis", "run ended"));
}

Message say_output_outcome(OutputOutcome outcome) {
    switch (outcome) {
    case OutputOutcome::held: return say(phrase("run_analysis", "held"));
    case OutputOutcome::tripped: return say(phrase("run_analysis", "tripped"));
    case OutputOutcome::not_reached: return say(phrase("run_analysis", "not reached"));
    case OutputOutcome::not_known: return say(phrase("run_analysis", "not known"));
    }
    return say(phrase("run_analysis", "not known"));
}

OutputRun analyse_output(const RunRecord& record, const EnergyAnalysis& energy) {
    OutputRun run;
    run.claimed_w = record.run.kind == RunKind::peak_output ? record.unit.peak_output_w : record.unit.rated_output_w;
    for (const OutputSpan& span : spans(record, run)) run.steps.push_back(step_of(span, record, energy));
    decide(record, run);
    return run;
}

} // namespace ullage
