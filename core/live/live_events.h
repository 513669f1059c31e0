// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "base/message.h"
#include "model/reading.h"
#include "model/trace.h"

#include <cstddef>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

enum class LiveEventKind { output_off, output_back, load_changed, meter_restarted, register_zero, no_answer };

/// What samples say has happened: a mark to be proposed, never one that is set by itself.
struct LiveEvent {
    LiveEventKind kind = LiveEventKind::output_off;
    UtcMs moment_ms = 0;               ///< of the sample that it is noted to
    UtcMs by_ms = 0;                   ///< the sample by which it had happened: a bracket where these lie apart
    std::optional<double> register_wh; ///< at the moment
    Message evidence;                  ///< numbers and durations in words; moments are the fields above

    bool operator==(const LiveEvent&) const = default;
};

/// "output off", "output back", "load changed", "meter restarted", "register back at 0", "no answer".
[[nodiscard]] Message say_event(LiveEventKind kind);
/// The mark that is proposed: cut-off, output reset, load changed, meter zeroed (a restart too: the register goes on from another value); none where
/// the meter gave no answer.
[[nodiscard]] std::optional<MarkKind> mark_of(LiveEventKind kind);

/// Finds events in samples as they come, or in those of a trace that is read again: the same samples give the same events. Memory does not grow.
///
/// Off: power at or below a twentieth of the mean power of the samples that are on (as core/model/run_trace.h has it), and at or below that for
/// longer than 1.5 of the longest pause that the load has made so far (two minutes until it has made one, never less than one), while the register
/// rises by no more than a step. It is noted to the last sample with power. Without power: the register still for four of its longest times between
/// steps, and five minutes. Changed: two minutes steady within 10 % at a level that differs from the one before by more than 15 % and 10 W. A level
/// that has been there twice is the load's own cycle. Own rules; common practice, no source.
class EventDetector {
public:
    /// `step_wh`: of the register, where it is known.
    explicit EventDetector(std::optional<double> step_wh = std::nullopt);

    void take(const TraceSample& sample);
    /// The present of the samples' clock: after a minute, and ten usual intervals, without a sample there is no answer.
    void look(UtcMs now_ms);
    /// What has been found since the last call, in order of finding.
    [[nodiscard]] std::vector<LiveEvent> take_events();
    /// Off was found, and not back since.
    [[nodiscard]] bool output_off() const { return off_told_; }
    [[nodiscard]] std::optional<UtcMs> last_ms() const { return last_ms_; }

private:
    struct Minute {
        UtcMs begin_ms = 0;
        double sum_w = 0, low_w = 0, high_w = 0;
        long samples = 0;
    };
    struct Level {
        double power_w;
        int visits;
    };
    void judge_gap(const TraceSample& sample);
    void judge_register(const TraceSample& sample);
    void judge_power(const TraceSample& sample);
    void judge_still_register(const TraceSample& sample);
    void judge_level(const TraceSample& sample);
    void settle_minute();
    [[nodiscard]] double gap_limit_ms() const;
    void add(LiveEventKind kind, UtcMs moment_ms, UtcMs by_ms, std::optional<double> register_wh, const Message& evidence);

    std::vector<LiveEvent> events_;
    double step_wh_;
    std::optional<UtcMs> last_ms_;
    std::vector<double> intervals_ms_; ///< the first 64
    double usual_interval_ms_ = 1000;
    bool silence_told_ = false;

    std::optional<double> register_wh_;
    UtcMs risen_ms_ = 0; ///< of the sample by which the register rose last
    double longest_still_ms_ = 0;
    long rises_ = 0;

    bool any_power_ = false, on_ = false, off_told_ = false;
    double on_sum_w_ = 0;
    long on_samples_ = 0;
    UtcMs last_on_ms_ = 0, first_off_ms_ = 0;
    std::optional<double> on_register_wh_, off_register_wh_; ///< at the last sample with power; the least since
    double longest_pause_ms_ = 0;

    Minute minute_;
    std::optional<double> steady_w_;           ///< mean of the last whole minute, where that was steady
    std::optional<double> level_w_;            ///< the load as it stands
    UtcMs at_level_ms_ = 0, off_level_ms_ = 0; ///< the last sample near the level, and the first after it
    std::vector<Level> levels_;
};

} // namespace ullage
