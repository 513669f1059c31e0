// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/trace_text.h"

#include "base/number.h"
#include "cli/text/command_parts.h"
#include "formats/text/table_unicode.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t shown_samples = 5, shown_rows = 10, shown_gaps = 10;

std::string sample_text(const TraceSample& sample, const std::string& zone) {
    std::vector<Message> parts{format_iso8601(sample.time_ms, zone)};
    const auto add = [&parts](const std::optional<double>& value, const Phrase& words) {
        if (value) parts.push_back(say(words, say_digits(exact_text(*value))));
    };
    add(sample.register_wh, phrase("commands", "%1 Wh"));
    add(sample.power_w, phrase("commands", "%1 W"));
    add(sample.voltage_v, phrase("commands", "%1 V"));
    add(sample.current_a, phrase("commands", "%1 A"));
    add(sample.gauge_percent, phrase("commands", "%1 % gauge"));
    add(sample.output_w, phrase("commands", "%1 W by the unit"));
    return say_joined(parts, "  ");
}

} // namespace

std::string preview_text(const TracePreview& preview, const std::string& zone) {
    const TraceDetection& detection = preview.detection;
    std::string text = line_of(say(phrase("commands", "Read as: %1"), say_layout(detection)));
    for (const Message& note : detection.notes) text += line_of(say(phrase("commands", "Note: %1"), note));
    for (const LayoutQuestion& question : detection.questions) {
        const std::vector<Message> choices(question.choices.begin(), question.choices.end());
        text += line_of(choices.empty() ? say(phrase("commands", "Open: %1"), question.words)
                                        : say(phrase("commands", "Open: %1 (%2?)"), question.words, say_alternatives(choices)));
    }
    for (std::size_t i = 0; i < std::min(shown_samples, preview.samples.size()); ++i) text += "  " + sample_text(preview.samples[i], zone) + '\n';
    if (preview.samples.empty())
        for (std::size_t i = 0; i < std::min(shown_samples, preview.rows.size()); ++i) {
            std::string row;
            for (const std::string& cell : preview.rows[i]) row += (row.empty() ? "" : " | ") + cell;
            text += "  " + one_line(row) + '\n';
        }
    return text;
}

std::string tally_text(const TraceTally& tally, const std::string& zone) {
    std::vector<Message> clauses{say_count(tally.rows, phrases("commands", "%n rows: %1 taken, %2 left out", "%n row: %1 taken, %2 left out"),
                                           say_number(tally.taken), say_number(tally.left_out()))};
    if (tally.interval_s) clauses.push_back(say(phrase("commands", "usually %1 s apart"), say_digits(exact_text(*tally.interval_s))));
    std::string text = line_of(say_joined(clauses, "; "));
    for (std::size_t t = 0; t < row_troubles; ++t) {
        const auto trouble = static_cast<RowTrouble>(t);
        if (tally.count(trouble) == 0 || trouble == RowTrouble::gap) continue;
        text += "  " + line_of(say(leaves_out(trouble) ? phrase("commands", "%1 left out: %2") : phrase("commands", "%1 taken with a doubt: %2"),
                                   say_number(tally.count(trouble)), say_trouble(trouble)));
        std::size_t shown = 0;
        for (const SkippedRow& row : tally.skipped_rows)
            if (row.trouble == trouble && shown++ < shown_rows)
                text += "    " + line_of(say(phrase("commands", "line %1: %2"), say_number(row.line), row.text));
    }
    if (tally.count(RowTrouble::gap) > 0) {
        text += "  " + line_of(say_count(tally.count(RowTrouble::gap), phrases("commands", "%n gaps longer than %1 s", "%n gap longer than %1 s"),
                                         say_digits(exact_text(tally.gap_limit_s))));
        for (std::size_t g = 0; g < std::min(shown_gaps, tally.gaps.size()); ++g)
            text += "    " + line_of(say(phrase("commands", "from %1 to %2"), format_iso8601(tally.gaps[g].from_ms, zone),
                                         format_iso8601(tally.gaps[g].to_ms, zone)));
    }
    return text;
}

std::string load_text(const LoadStatistics& load) {
    std::string text = '\n' + line_of(say(phrase("commands", "Load by the log")));
    const auto add = [&text](const Message& words) { text += "  " + line_of(words); };
    add(say(phrase("commands", "mean %1 W, peak %2 W over %3; %4 Wh a day"), say_number(load.mean_w, 1), say_number(load.peak_w, 1),
            duration_text(load.covered_h), say_number(load.daily_wh, 0)));
    if (load.cycle)
        add(say(phrase("commands", "on %1 W, off %2 W; on for %3 % of the time, %4 starts an hour"), say_number(load.cycle->on_w, 1),
                say_number(load.cycle->off_w, 1), say_number(100 * load.cycle->duty, 1), say_number(load.cycle->starts_per_hour, 2)));
    add(say(phrase("commands", "power integrated: %1 Wh; its square: %2 W²h"), say_number(load.energy_wh, 1), say_number(load.square_w2h, 0)));
    if (load.register_wh && *load.register_wh > 0)
        add(say(phrase("commands", "register of the same times: %1 Wh; integrated power is %2 % of it"), say_number(*load.register_wh, 1),
                say_number(100 * load.energy_wh / *load.register_wh, 2)));
    if (load.gaps > 0)
        add(say_count(load.gaps,
                      phrases("commands", "%n gaps (%1) left out, in which at most %2 Wh may have flowed",
                              "%n gap (%1) left out, in which at most %2 Wh may have flowed"),
                      duration_text(load.gap_h), say_number(load.gap_most_wh, 0)));
    return text;
}

} // namespace ullage
