// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/trace_text.h"

#include "base/number.h"
#include "formats/text/table_unicode.h"

#include <fmt/format.h>

#include <algorithm>

namespace ullage {

namespace {

constexpr std::size_t shown_samples = 5, shown_rows = 10, shown_gaps = 10;

std::string sample_text(const TraceSample& sample, const std::string& zone) {
    std::string text = format_iso8601(sample.time_ms, zone);
    const auto add = [&text](const std::optional<double>& value, const char* unit) {
        if (value) text += fmt::format("  {} {}", exact_text(*value), unit);
    };
    add(sample.register_wh, "Wh");
    add(sample.power_w, "W");
    add(sample.voltage_v, "V");
    add(sample.current_a, "A");
    add(sample.gauge_percent, "% gauge");
    add(sample.output_w, "W by the unit");
    return text;
}

} // namespace

std::string preview_text(const TracePreview& preview, const std::string& zone) {
    const TraceDetection& detection = preview.detection;
    std::string text = one_line("Read as: " + say_layout(detection).text()) + '\n';
    for (const Message& note : detection.notes) text += one_line("Note: " + note.text()) + '\n';
    for (const LayoutQuestion& question : detection.questions) {
        std::string choices;
        for (const std::string& choice : question.choices) choices += (choices.empty() ? " (" : " or ") + choice;
        text += one_line("Open: " + question.words.text() + (choices.empty() ? "" : choices + "?)")) + '\n';
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
    std::string text = fmt::format("{}: {} taken, {} left out", count_text(tally.rows, "row", "rows"), tally.taken, tally.left_out());
    if (tally.interval_s) text += fmt::format("; usually {} s apart", exact_text(*tally.interval_s));
    text += '\n';
    for (std::size_t t = 0; t < row_troubles; ++t) {
        const auto trouble = static_cast<RowTrouble>(t);
        if (tally.count(trouble) == 0 || trouble == RowTrouble::gap) continue;
        text +=
            fmt::format("  {} {}: {}\n", tally.count(trouble), leaves_out(trouble) ? "left out" : "taken with a doubt", say_trouble(trouble).text());
        std::size_t shown = 0;
        for (const SkippedRow& row : tally.skipped_rows)
            if (row.trouble == trouble && shown++ < shown_rows) text += one_line(fmt::format("    line {}: {}", row.line, row.text)) + '\n';
    }
    if (tally.count(RowTrouble::gap) > 0) {
        text += fmt::format("  {} longer than {} s\n", count_text(tally.count(RowTrouble::gap), "gap", "gaps"), exact_text(tally.gap_limit_s));
        for (std::size_t g = 0; g < std::min(shown_gaps, tally.gaps.size()); ++g)
            text += fmt::format("    from {} to {}\n", format_iso8601(tally.gaps[g].from_ms, zone), format_iso8601(tally.gaps[g].to_ms, zone));
    }
    return text;
}

std::string load_text(const LoadStatistics& load) {
    std::string text = "\nLoad by the log\n";
    text += fmt::format("  mean {} W, peak {} W over {}; {} Wh a day\n", fixed_text(load.mean_w, 1), fixed_text(load.peak_w, 1),
                        duration_text(load.covered_h), fixed_text(load.daily_wh, 0));
    if (load.cycle)
        text += fmt::format("  on {} W, off {} W; on for {} % of the time, {} starts an hour\n", fixed_text(load.cycle->on_w, 1),
                            fixed_text(load.cycle->off_w, 1), fixed_text(100 * load.cycle->duty, 1), fixed_text(load.cycle->starts_per_hour, 2));
    text += fmt::format("  power integrated: {} Wh; its square: {} W²h\n", fixed_text(load.energy_wh, 1), fixed_text(load.square_w2h, 0));
    if (load.register_wh && *load.register_wh > 0)
        text += fmt::format("  register of the same times: {} Wh; integrated power is {} % of it\n", fixed_text(*load.register_wh, 1),
                            fixed_text(100 * load.energy_wh / *load.register_wh, 2));
    if (load.gaps > 0)
        text += fmt::format("  {} ({}) left out, in which at most {} Wh may have flowed\n", count_text(load.gaps, "gap", "gaps"),
                            duration_text(load.gap_h), fixed_text(load.gap_most_wh, 0));
    return text;
}

} // namespace ullage
