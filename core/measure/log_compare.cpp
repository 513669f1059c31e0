// SPDX-License-Identifier: GPL-3.0-or-later
#include "base/number.h"
#include "base/quantity.h"
#include "measure/budget.h"
#include "measure/inside/log_check.h"
#include "measure/inside/log_energy.h"
#include "measure/inside/log_track.h"
#include "model/meter_gain.h"

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

namespace ullage {
namespace {

/// Integrated power against a register over the same samples. Both are the same meter's: what differs beyond steps and sampling is its power or its
/// counting.
Message integration_sentence(const RunTrace& trace, const RegisterTrack& track, double step_wh, double energy_wh, double u_moments_wh) {
    const double register_wh = track.total_wh();
    if (register_wh <= 0 || energy_wh <= 0) return {};
    const IntegrationDoubt doubt = integration_doubt(trace);
    const double u_wh = std::hypot(doubt.u_sampling_wh, doubt.step_half_width_wh / std::sqrt(3.0), step_wh / std::sqrt(6.0));
    const double half_wh = 2 * (u_wh + u_moments_wh);
    const double difference = energy_wh / register_wh - 1;
    const Phrase by_log = difference < 0 ? phrase("measure", "Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % less")
                                         : phrase("measure", "Its integrated power gives %1 ± %2 Wh where its register says %3 Wh: %4 % more");
    const Phrase by_hand = difference < 0
                               ? phrase("measure", "Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % less")
                               : phrase("measure", "Its integrated power gives %1 ± %2 Wh where the register noted by hand says %3 Wh: %4 % more");
    const Message compared = say(track.log ? by_log : by_hand, say_number(energy_wh, 1), say_number(half_wh, 1), say_number(register_wh, 1),
                                 say_number(100 * std::abs(difference), std::abs(difference) < 0.0995 ? 1 : 0));
    return std::abs(energy_wh - register_wh) <= half_wh
               ? say(phrase("measure", "%1, which steps and sampling explain."), compared)
               : say(phrase("measure", "%1, more than steps and sampling explain; the meter's power and its counting differ."), compared);
}

/// Each of a few, with its moments; of many how many there are and the longest.
Message gaps_sentence(const std::vector<PowerGap>& gaps, const std::string& zone) {
    constexpr std::size_t most_listed = 5;
    const auto moments = [&zone](const PowerGap& gap) {
        return say(phrase("measure", "%1 to %2"), clock_text(gap.from_ms, zone), clock_text(gap.to_ms, zone));
    };
    if (gaps.size() > most_listed) {
        const auto longest = std::ranges::max_element(gaps, {}, [](const PowerGap& gap) { return gap.to_ms - gap.from_ms; });
        return say_count(gaps.size(),
                         phrases("measure", "Nothing was logged for %n stretches, the longest from %1; the register counts what flowed meanwhile.",
                                 "Nothing was logged for %n stretch, the longest from %1; the register counts what flowed meanwhile."),
                         moments(*longest));
    }
    std::vector<Message> all;
    for (const PowerGap& gap : gaps) all.push_back(moments(gap));
    return say(phrase("measure", "Nothing was logged from %1; the register counts what flowed meanwhile."), say_list(all));
}

/// What the log's register says beside those noted by hand.
void compare_by_hand(const RunRecord& record, const MeasureOptions& options, RegisterTrack& track, std::vector<Message>& sentences) {
    const HandCheck check = hand_check(record, options);
    if (check.compared > 0)
        sentences.push_back(say_count(
            check.compared,
            check.agreeing == 1
                ? phrases("measure", "%1 of %n registers noted by hand agrees with the log.", "%1 of %n register noted by hand agrees with the log.")
                : phrases("measure", "%1 of %n registers noted by hand agree with the log.", "%1 of %n register noted by hand agree with the log."),
            say_number(check.agreeing)));
    if (!track.log && check.compared > check.agreeing)
        sentences.push_back(say(phrase("measure", "Most do not: the clock of the log is off, or it is the log of something else. It was not used.")));
    if (!track.log) return;
    for (const auto& [reading, log_wh] : check.differing)
        track.register_corrections.push_back({RegisterCorrectionKind::against_log,
                                              reading->uuid,
                                              say(phrase("measure", "%1 Wh was noted, the log says %2; the log was used"),
                                                  say_digits(exact_text(*reading->values.register_wh)), say_energy(log_wh)),
                                              {}});
}

/// Its integrated power beside the register, or what it did not log; nothing where neither can be told.
Message compare_power(const RunRecord& record, const MeasureOptions& options, const RegisterTrack& track) {
    const RunTrace& trace = *record.trace;
    if (!trace.has_power || !track.usable()) return {};
    if (const auto gaps = gaps_within(trace, track.points.front().time_ms, track.points.back().time_ms); !gaps.empty())
        return track.log && !track.log->integrated ? gaps_sentence(gaps, record.run.time_zone) : Message();
    const LogCurve energy_wh = integrated_energy(trace);
    const double correction = typical_correction(record.meter);
    if (!energy_wh.usable() || (track.log && track.log->integrated)) return {};
    if (track.points.front().time_ms < energy_wh.times_ms.front() || track.missing_inside) return {};
    const UtcMs from_ms = track.points.front().time_ms, to_ms = std::min(track.points.back().time_ms, energy_wh.times_ms.back());
    const auto doubt = static_cast<UtcMs>(std::llround(log_moment_doubt_ms(trace, options)));
    const bool cut_off = track.log && record.run.end == RunEnd::cut_off_seen;
    const double from_wh = energy_wh.at(from_ms) * correction, to_wh = energy_wh.at(cut_off ? to_ms + doubt : to_ms) * correction;
    // Registers noted by hand stand for moments in doubt; the log's own stand beside its power.
    const auto u_at = [&](UtcMs time_ms) { return energy_wh.u_moment(time_ms, static_cast<double>(doubt)); };
    const double u_moments_wh = track.log ? 0 : std::hypot(u_at(from_ms), u_at(to_ms));
    return integration_sentence(trace, track, track.log ? track.log->step_wh : register_step_wh(record), to_wh - from_wh, u_moments_wh);
}

} // namespace

Message compare_with_log(const RunRecord& record, const MeasureOptions& options, RegisterTrack& track) {
    if (!record.trace || record.trace->points.empty()) return {};
    if (!log_is_of_run_meter(record))
        return say(phrase("measure",
                          "The log is of another meter than the run names, so that delivered energy is based on registers noted by hand; name "
                          "the log's meter as that of the run to use it."));
    std::vector<Message> sentences;
    if (track.log && track.log->integrated) sentences.push_back(say(phrase("measure", "Delivered energy is the integrated power of the log.")));
    else if (track.log) sentences.push_back(say(phrase("measure", "Delivered energy is that of the log's register at the noted moments.")));
    else if (track.usable()) sentences.push_back(say(phrase("measure", "Delivered energy is based on registers noted by hand.")));
    if (track.log)
        for (const TakenOver& taken : track.log->taken_over)
            sentences.push_back(say(taken.name.empty()
                                        ? phrase("measure", "From %1 to %2 it says nothing, and the log of another meter stands in with %3.")
                                        : phrase("measure", "From %1 to %2 it says nothing, and the log of %4 stands in with %3."),
                                    clock_text(taken.from_ms, record.run.time_zone), clock_text(taken.to_ms, record.run.time_zone),
                                    say_energy(taken.part.delivered_wh), taken.name));
    if (record.trace->has_register) compare_by_hand(record, options, track, sentences);
    if (track.log && track.log->left_out > 0)
        sentences.push_back(say_count(track.log->left_out, phrases("measure", "%n values of its register fitted nothing and were left out.",
                                                                   "%n value of its register fitted nothing and was left out.")));
    if (const Message power = compare_power(record, options, track); !power.empty()) sentences.push_back(power);
    return say_joined(sentences, " ");
}

} // namespace ullage
