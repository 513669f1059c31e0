// SPDX-License-Identifier: GPL-3.0-or-later
#include "measure/register.h"

#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/meter_parts.h"
#include "measure/inside/missing_energy.h"
#include "measure/inside/register_path.h"
#include "measure/run_scan.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

constexpr double bounded_missing_share = 0.25; ///< of the delivered energy: more than that bounds nothing worth saying

constexpr std::size_t least_means = 3; ///< that show how far a load varies
constexpr double least_above_means = 0.05, most_above_means = 0.30;

constexpr double load_window_h = 10.0 / 60.0; ///< over less the noted minute blurs a mean load

Message say_wh(double wh) { return say_digits(exact_text(std::round(wh * 1000) / 1000) + " Wh"); }

/// Readings entered after one of a later moment.
std::vector<RegisterCorrection> late_entries(const RunRecord& record) {
    std::vector<RegisterCorrection> register_corrections;
    long lowest_after = -1;
    for (std::size_t i = record.readings.size(); i-- > 0;) {
        const Reading& reading = record.readings[i];
        if (reading.withdrawn) continue;
        if (lowest_after >= 0 && reading.sequence > lowest_after)
            register_corrections.push_back({RegisterCorrectionKind::late_entry,
                                            reading.uuid,
                                            say(phrase("measure", "entered after readings of later moments; put in its place by its time")),
                                            {}});
        lowest_after = lowest_after < 0 ? reading.sequence : std::min(lowest_after, reading.sequence);
    }
    std::ranges::reverse(register_corrections);
    return register_corrections;
}

class Unwrapper {
public:
    Unwrapper(const RunRecord& record, const std::vector<RegisterNode>& nodes, const PathRules& rules, RegisterTrack& track)
        : record_(record), nodes_(nodes), rules_(rules), track_(track) {}

    /// Returns the points that a swapped meter began with.
    std::vector<std::size_t> walk(const std::vector<PathNode>& path) {
        track_.points.reserve(path.size());
        std::size_t before = 0;
        for (std::size_t k = 0; k < path.size(); ++k) {
            const std::size_t from = k == 0 ? 0 : before + 1;
            for (std::size_t left_out = from; left_out < path[k].node; ++left_out) add_typing_error(left_out);
            take(path[k], k == 0 ? nullptr : &nodes_[before], before);
            before = path[k].node;
        }
        for (std::size_t left_out = path.empty() ? 0 : before + 1; left_out < nodes_.size(); ++left_out) add_typing_error(left_out);
        return std::move(swaps_);
    }

private:
    const Reading& reading_of(const RegisterNode& node) const { return record_.readings[node.reading]; }

    void add_typing_error(std::size_t index) {
        const RegisterNode& node = nodes_[index];
        track_.register_corrections.push_back(
            {RegisterCorrectionKind::typing_error,
             reading_of(node).uuid,
             say(phrase("measure", "%1 fits neither its neighbours nor a reset; left out as a typing error"), say_wh(node.register_wh)),
             {}});
    }

    const RegisterNode& marked_node(std::size_t from, std::size_t to) const {
        std::size_t k = to;
        while (k > from + 1 && !nodes_[k].mark) --k;
        return nodes_[k];
    }

    /// Leads to the point that is about to be taken.
    void note_gap(double hours, double counted_wh) {
        track_.missing_inside = true;
        track_.missing_gaps.push_back({hours, counted_wh, true, track_.points.size()});
    }

    std::optional<double> missing_between(UtcMs from, UtcMs to) {
        const double hours = hours_between(from, to);
        const double estimate_wh = rules_.usual_w * hours;
        if (hours <= complete_within_h || estimate_wh < rules_.step_wh / 2) {
            track_.short_gaps.push_back({hours, 0});
            return std::nullopt;
        }
        note_gap(hours, 0);
        note_missing(say(phrase("measure", "energy between %1 and %2 (about %3 Wh at the usual load) is not in the register"), moment(from),
                         moment(to), say_number(estimate_wh, estimate_wh < 10 ? 1 : 0)),
                     track_);
        return estimate_wh;
    }

    Message moment(UtcMs time_ms) const {
        return say_joined({say_day(time_ms, record_.run.time_zone), clock_text(time_ms, record_.run.time_zone)}, " ");
    }

    void take(const PathNode& kept, const RegisterNode* before, std::size_t before_index) {
        const RegisterNode& node = nodes_[kept.node];
        double gained_wh = 0;
        switch (kept.step) {
        case Step::first:
            track_.segments = 1;
            if (node.register_wh == 0) track_.zero_starts = 1;
            break;
        case Step::plain: gained_wh = node.register_wh - before->register_wh; break;
        case Step::rollover:
            gained_wh = node.register_wh - before->register_wh + rules_.span_wh.value_or(0);
            add({RegisterCorrectionKind::rollover,
                 reading_of(node).uuid,
                 say(phrase("measure", "the register fell from %1 to %2, which its span of %3 explains"), say_wh(before->register_wh),
                     say_wh(node.register_wh), say_wh(rules_.span_wh.value_or(0))),
                 {}});
            break;
        case Step::reset:
            gained_wh = node.register_wh;
            start_segment(true);
            add({RegisterCorrectionKind::unmarked_reset, reading_of(node).uuid,
                 say(phrase("measure", "the register fell from %1 to %2 without a mark; read as a reset, since the load after it is believable"),
                     say_wh(before->register_wh), say_wh(node.register_wh)),
                 missing_by_reset(*before, node)});
            break;
        case Step::zeroed: {
            const RegisterNode& marked = marked_node(before_index, kept.node);
            gained_wh = node.register_wh;
            start_segment(true);
            // Marked in the row of what it showed afterwards, it happened some time since the row before.
            const bool since_then = marked.mark_ms == node.time_ms && node.register_wh > 0;
            add({RegisterCorrectionKind::marked_zero, reading_of(node).uuid,
                 since_then
                     ? say(phrase("measure", "the meter was zeroed by %1 and had counted %2 since"), moment(marked.mark_ms), say_wh(node.register_wh))
                     : say(phrase("measure", "the meter was zeroed at %1"), moment(marked.mark_ms)),
                 since_then ? missing_by_reset(*before, node) : missing_between(before->time_ms, marked.mark_ms)});
            break;
        }
        case Step::swapped: {
            const RegisterNode& marked = marked_node(before_index, kept.node);
            start_segment(false);
            swaps_.push_back(track_.points.size());
            add({RegisterCorrectionKind::marked_swap, reading_of(node).uuid,
                 say(phrase("measure", "another meter took over at %1; its register starts at %2"), moment(marked.mark_ms), say_wh(node.register_wh)),
                 missing_between(before->time_ms, node.time_ms)});
            break;
        }
        }
        const double so_far_wh = track_.points.empty() ? 0.0 : track_.points.back().delivered_wh;
        track_.points.push_back({node.reading, node.time_ms, node.register_wh, so_far_wh + gained_wh});
    }

    std::optional<double> missing_by_reset(const RegisterNode& before, const RegisterNode& node) {
        // The register counts anew from somewhere in the gap: what flowed before that is lost, at most the rest of the gap.
        const double hours = hours_between(before.time_ms, node.time_ms);
        if (hours <= complete_within_h) {
            track_.short_gaps.push_back({hours, 0});
            return std::nullopt;
        }
        const double gap_wh = rules_.usual_w * hours;
        const double estimate_wh = std::max(0.0, gap_wh - node.register_wh);
        note_gap(hours, node.register_wh);
        note_missing(say(phrase("measure", "energy before the reset between %1 and %2 (about %3 Wh at the usual load) is not in the register"),
                         moment(before.time_ms), moment(node.time_ms), say_number(estimate_wh, estimate_wh < 10 ? 1 : 0)),
                     track_);
        return estimate_wh;
    }

    void start_segment(bool from_zero) {
        ++track_.segments;
        if (from_zero) ++track_.zero_starts;
    }

    void add(RegisterCorrection register_correction) { track_.register_corrections.push_back(std::move(register_correction)); }

    const RunRecord& record_;
    const std::vector<RegisterNode>& nodes_;
    const PathRules& rules_;
    RegisterTrack& track_;
    std::vector<std::size_t> swaps_;
};

std::vector<RegisterNode> register_nodes(const RunScan& scan) {
    std::vector<RegisterNode> nodes;
    nodes.reserve(scan.registers.size());
    for (const RegisterPoint& point : scan.registers) nodes.push_back({point.reading, point.time_ms, point.register_wh, {}, 0});
    for (const RegisterMark& mark : scan.marks) {
        nodes[mark.node].mark = mark.mark;
        nodes[mark.node].mark_ms = mark.mark_ms;
    }
    return nodes;
}

/// The energy of a register that only grows, as it says.
void accumulate(RegisterTrack& track) {
    if (track.points.empty()) return;
    track.segments = 1;
    track.zero_starts = track.points.front().register_wh == 0 ? 1 : 0;
    for (std::size_t i = 1; i < track.points.size(); ++i) {
        const RegisterPoint& before = track.points[i - 1];
        track.points[i].delivered_wh = before.delivered_wh + (track.points[i].register_wh - before.register_wh);
    }
}

/// What the register showed once the output was off.
void say_after_the_end(const RunRecord& record, const RunScan& scan, RegisterTrack& track) {
    const auto clock = [&](std::size_t reading) { return clock_text(record.readings[reading].values.time_ms, record.run.time_zone); };
    const auto shown = [&](std::size_t reading) { return say_wh(*record.readings[reading].values.register_wh); };
    if (scan.register_read_late)
        track.register_corrections.push_back(
            {RegisterCorrectionKind::after_the_end,
             record.readings[*scan.register_read_late].uuid,
             say(phrase("measure", "%1 was read at %2, after the cut-off; taken as what the register showed then, as no "
                                   "reading of it stands there"),
                 shown(*scan.register_read_late), clock(*scan.register_read_late)),
             {}});
    if (scan.register_went_on)
        track.register_corrections.push_back(
            {RegisterCorrectionKind::after_the_end,
             record.readings[*scan.register_went_on].uuid,
             say(phrase("measure", "the register went on to %1 by %2, after the cut-off; nothing after the end counts"),
                 shown(*scan.register_went_on), clock(*scan.register_went_on)),
             {}});
}

/// Energy before the first and after the last register reading of the run.
void check_ends(const RunRecord& record, const RunScan& scan, const PathRules& rules, RegisterTrack& track) {
    if (track.points.empty()) return;
    const auto note = [&](UtcMs from, UtcMs to, bool row_without_register, const Phrase& words) {
        const double hours = hours_between(from, to);
        if (hours <= 0 && !row_without_register) return;
        if (hours <= complete_within_h || rules.usual_w * hours < rules.step_wh / 2) {
            track.short_gaps.push_back({hours, 0});
            return;
        }
        track.missing_gaps.push_back({hours, 0, false});
        note_missing(say(words, duration_text(hours), say_energy(rules.usual_w * hours)), track);
    };
    note(*scan.first_ms, track.points.front().time_ms, scan.row_before_register,
         phrase("measure", "the register was first read after the start (%1, about %2 at the usual load)"));
    if (record.run.end != RunEnd::still_running)
        note(track.points.back().time_ms, *scan.last_ms, scan.row_after_register,
             phrase("measure", "the register was last read before the end (%1, about %2 at the usual load)"));
}

/// Mean loads over load_window_h, or between two readings that lie farther apart, W; of a shorter run over the whole of it. Those over a time in
/// which energy may be missing are left out.
struct MeanLoads {
    double lowest_w = 0, highest_w = 0;
    std::size_t count = 0;
};

MeanLoads mean_loads(const RegisterTrack& track, double limit_w) {
    MeanLoads loads;
    std::size_t from = 0;
    const std::vector<RegisterPoint>& points = track.points;
    auto gap = track.missing_gaps.begin();
    for (std::size_t i = 1; i < points.size(); ++i) {
        while (gap != track.missing_gaps.end() && (!gap->inside || gap->point < i)) ++gap;
        if (gap != track.missing_gaps.end() && gap->point == i) {
            from = i;
            continue;
        }
        const double hours = hours_between(points[from].time_ms, points[i].time_ms);
        const bool whole_run = from == 0 && i + 1 == points.size();
        if (hours <= 0 || (hours < load_window_h && !whole_run)) continue;
        const double watts = std::min(limit_w, (points[i].delivered_wh - points[from].delivered_wh) / hours);
        loads.highest_w = std::max(loads.highest_w, watts);
        loads.lowest_w = loads.count == 0 ? watts : std::min(loads.lowest_w, watts);
        ++loads.count;
        from = i;
    }
    return loads;
}

void fill_short_gaps(const PathRules& rules, RegisterTrack& track) {
    if (track.short_gaps.empty()) return;
    const double load_w = mean_loads(track, rules.limit_w).highest_w;
    for (ShortGap& gap : track.short_gaps) gap.most_wh = load_w * (gap.hours + rules.moment_doubt_h);
}

/// What a load took at most between readings whose means are these, W.
double most_load_w(const RunRecord& record, const MeanLoads& loads, double limit_w) {
    const double spread = loads.highest_w > 0 ? (loads.highest_w - loads.lowest_w) / loads.highest_w : 0;
    const double more = loads.count < least_means ? most_above_means : std::clamp(spread, least_above_means, most_above_means);
    double most_w = std::min(limit_w, (1 + more) * loads.highest_w);
    for (const Reading& reading : record.readings)
        if (!reading.withdrawn && reading.values.meter_w) most_w = std::max(most_w, *reading.values.meter_w);
    return most_w;
}

/// Missing energy lies between 0 and gap × the most that the load took: worth saying while that is little beside the rest.
void bound_missing(const RunRecord& record, const PathRules& rules, RegisterTrack& track) {
    // Without an interval there is nothing to widen.
    if (!track.energy_may_be_missing || !track.usable() || !std::ranges::all_of(track.meters, &MeterPart::is_stated)) return;
    const double correction = typical_correction(record.meter);
    const double most_w = most_load_w(record, mean_loads(track, rules.limit_w), rules.limit_w);
    double most_wh = 0;
    for (const MissingGap& gap : track.missing_gaps) most_wh += std::max(0.0, most_w * gap.hours - correction * gap.counted_wh);
    if (!(most_w > 0) || most_wh > bounded_missing_share * track.total_wh()) return;
    track.missing_most_wh = most_wh;
    for (MissingGap& gap : track.missing_gaps) {
        if (!gap.inside) continue;
        gap.estimate_wh = correction * std::max(0.0, std::min(rules.usual_w, most_w) * gap.hours - gap.counted_wh);
        track.missing_estimate_wh += gap.estimate_wh;
        for (std::size_t i = gap.point; i < track.points.size(); ++i) track.points[i].delivered_wh += gap.estimate_wh;
    }
}

} // namespace

std::string_view register_correction_text(RegisterCorrectionKind kind) {
    switch (kind) {
    case RegisterCorrectionKind::marked_zero: return "meter zeroed";
    case RegisterCorrectionKind::marked_swap: return "meter swapped";
    case RegisterCorrectionKind::rollover: return "rollover";
    case RegisterCorrectionKind::unmarked_reset: return "reset without a mark";
    case RegisterCorrectionKind::typing_error: return "typing error";
    case RegisterCorrectionKind::duplicate: return "entered twice";
    case RegisterCorrectionKind::late_entry: return "entered late";
    case RegisterCorrectionKind::against_log: return "differs from the log";
    case RegisterCorrectionKind::after_the_end: return "after the end";
    }
    return "";
}

Message say_register_correction(RegisterCorrectionKind kind) {
    switch (kind) {
    case RegisterCorrectionKind::marked_zero: return say(phrase("measure", "meter zeroed"));
    case RegisterCorrectionKind::marked_swap: return say(phrase("measure", "meter swapped"));
    case RegisterCorrectionKind::rollover: return say(phrase("measure", "rollover"));
    case RegisterCorrectionKind::unmarked_reset: return say(phrase("measure", "reset without a mark"));
    case RegisterCorrectionKind::typing_error: return say(phrase("measure", "typing error"));
    case RegisterCorrectionKind::duplicate: return say(phrase("measure", "entered twice"));
    case RegisterCorrectionKind::late_entry: return say(phrase("measure", "entered late"));
    case RegisterCorrectionKind::against_log: return say(phrase("measure", "differs from the log"));
    case RegisterCorrectionKind::after_the_end: return say(phrase("measure", "after the end"));
    }
    return {};
}

double believable_load_w(const Unit& unit, const MeasureOptions& options) {
    if (!unit.rated_output_w || *unit.rated_output_w <= 0) return options.fallback_limit_w;
    return std::max(1.3 * *unit.rated_output_w, unit.peak_output_w.value_or(0));
}

RegisterTrack unwrap_register(const RunRecord& record, RunScan& scan, const MeasureOptions& options) {
    RegisterTrack track;
    PathRules rules;
    rules.limit_w = believable_load_w(record.unit, options);
    rules.step_wh = register_step_wh(record);
    rules.moment_doubt_h = options.moment_doubt_min / 60.0;
    if (record.meter) rules.span_wh = record.meter->span_wh;
    rules.usual_w = usual_load_w(scan.registers, scan.marks, rules);

    if (only_grows(scan.registers, scan.marks, rules)) {
        track.points = std::move(scan.registers);
        accumulate(track);
        apply_meters(record, {}, rules.step_wh, track);
    } else {
        const std::vector<RegisterNode> nodes = register_nodes(scan);
        apply_meters(record, Unwrapper(record, nodes, rules, track).walk(plausible_path(nodes, rules)), rules.step_wh, track);
    }
    for (const std::size_t reading : scan.duplicates)
        track.register_corrections.push_back({RegisterCorrectionKind::duplicate,
                                              record.readings[reading].uuid,
                                              say(phrase("measure", "the same moment and register were entered twice; counted once")),
                                              {}});
    if (!scan.entered_in_order)
        for (RegisterCorrection& register_correction : late_entries(record)) track.register_corrections.push_back(std::move(register_correction));
    say_after_the_end(record, scan, track);
    check_ends(record, scan, rules, track);
    fill_short_gaps(rules, track);
    bound_missing(record, rules, track);
    return track;
}

RegisterTrack unwrap_register(const RunRecord& record, const MeasureOptions& options) {
    RunScan scan = scan_run(record);
    return unwrap_register(record, scan, options);
}

} // namespace ullage
