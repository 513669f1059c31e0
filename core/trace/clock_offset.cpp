// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/clock_offset.h"

#include "base/number.h"
#include "measure/budget.h"
#include "model/gauge_thinner.h"
#include "trace/inside/clock_evidence.h"
#include "trace/trace_import.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>

namespace ullage {
namespace {

constexpr UtcMs minute_ms = 60'000;
constexpr UtcMs minute_doubt_ms = minute_ms, second_doubt_ms = 15'000;
constexpr double log_doubt_ms = 5'000; ///< half-width of what two clocks drift apart over a run
constexpr UtcMs most_step_ms = 2 * minute_ms;
constexpr double least_trace_step_w = 5, least_trace_step_share = 0.2;
constexpr double most_step_ratio = 1.5; ///< of a step that two instruments see
constexpr std::size_t most_trace_steps = 200;
constexpr long least_log_steps = 4;
constexpr UtcMs most_offset_ms = 48 * 60 * minute_ms;

/// Offsets under which one hand reading or mark agrees with something in the log.
struct Vote {
    std::size_t voter = 0;
    UtcMs from_ms = 0, to_ms = 0;

    [[nodiscard]] double centre_ms() const { return static_cast<double>(from_ms) + static_cast<double>(to_ms - from_ms) / 2; }
    [[nodiscard]] double u_ms() const { return static_cast<double>(to_ms - from_ms) / std::sqrt(12.0); }
};

struct Election {
    long agreeing = 0;
    bool unique = true; ///< no other offset has as many
    UtcMs from_ms = 0, to_ms = 0;
};

/// The offsets on which most voters agree, each counting once however many of its votes overlap.
Election elect(const std::vector<Vote>& votes, std::size_t voters) {
    struct End {
        UtcMs at_ms = 0;
        int turn = 0; ///< 1 begins, -1 ends
        std::size_t voter = 0;
    };
    std::vector<End> ends;
    for (const Vote& vote : votes) {
        ends.push_back({vote.from_ms, 1, vote.voter});
        ends.push_back({vote.to_ms, -1, vote.voter});
    }
    std::ranges::sort(ends, [](const End& a, const End& b) { return a.at_ms != b.at_ms ? a.at_ms < b.at_ms : a.turn > b.turn; });
    std::vector<int> active(voters);
    Election best;
    long agreeing = 0;
    bool rising_best = false;
    for (const End& end : ends) {
        int& count = active[end.voter];
        count += end.turn;
        if (end.turn > 0 && count == 1) {
            ++agreeing;
            if (agreeing > best.agreeing) {
                best = {agreeing, true, end.at_ms, end.at_ms};
                rising_best = true;
            } else if (agreeing == best.agreeing && end.at_ms > best.to_ms + 2 * minute_doubt_ms) {
                best.unique = false;
            }
        } else if (end.turn < 0 && count == 0) {
            if (rising_best) best.to_ms = end.at_ms;
            rising_best = false;
            --agreeing;
        }
    }
    return best;
}

/// 12 min 5 s as "0:12:05".
std::string span_text(double seconds) {
    const auto whole = static_cast<long>(std::llround(std::abs(seconds)));
    return fmt::format("{}:{:02}:{:02}", whole / 3600, whole / 60 % 60, whole % 60);
}

class Estimate {
public:
    explicit Estimate(const RunRecord& record) {
        bool to_the_minute = true;
        for (const Reading& reading : record.readings) {
            if (reading.withdrawn) continue;
            if (!first_ms_) first_ms_ = reading.values.time_ms;
            to_the_minute = to_the_minute && reading.values.time_ms % minute_ms == 0;
            if (reading.values.register_wh) registers_.push_back(&reading.values);
            if (reading.values.gauge_percent) gauges_.push_back(&reading.values);
            if (reading.values.mark && is_step(*reading.values.mark)) marks_.push_back(&reading.values);
            if (reading.values.mark == MarkKind::cut_off && !cut_off_ms_) cut_off_ms_ = reading.values.time_ms;
        }
        doubt_ms_ = to_the_minute ? minute_doubt_ms : second_doubt_ms;
        if (record.trace) note_trace_steps(record.trace->points);
        std::vector<double> values_wh;
        for (const ReadingValues* values : registers_) values_wh.push_back(*values->register_wh);
        crossings_.emplace(values_wh, register_step_wh(record));
    }

    void take(std::span<const TraceSample> samples) {
        crossings_->take(samples);
        gauge_.take(samples);
        steps_.take(samples);
    }

    Result<ClockOffset> result() {
        if (const auto found = by_register()) return *found;
        const std::optional<ClockOffset> gauge = by_gauge();
        if (const auto found = by_log_steps(gauge)) return *found;
        if (gauge) return *gauge;
        if (const auto found = by_steps()) return *found;
        if (const auto found = by_cut_off()) return *found;
        return Error{
            Failure::refused,
            registers_.empty() && marks_.empty() && gauges_.empty()
                ? say(phrase("trace", "the offset of the log's clock cannot be estimated: no register, gauge or mark was noted by hand"))
                : say(phrase("trace", "the offset of the log's clock cannot be estimated: neither its register or gauge nor steps of its power fit "
                                      "the hand readings at one offset")),
            {},
            say(phrase("trace", "give the offset, or note register readings or load changes by hand"))};
    }

private:
    static bool is_step(MarkKind mark) {
        return mark == MarkKind::load_changed || mark == MarkKind::output_tripped || mark == MarkKind::output_reset || mark == MarkKind::cut_off;
    }

    static bool fits(MarkKind mark, double change_w) {
        if (mark == MarkKind::load_changed) return true;
        return (mark == MarkKind::output_reset) == (change_w > 0);
    }

    Vote vote(std::size_t voter, UtcMs noted_ms, UtcMs log_from_ms, UtcMs log_to_ms) const {
        return {voter, noted_ms - doubt_ms_ - log_to_ms, noted_ms + doubt_ms_ - log_from_ms};
    }

    std::optional<ClockOffset> by_register() const {
        std::vector<Vote> votes;
        std::vector<char> crossed(registers_.size());
        for (const Crossing& crossing : crossings_->crossings()) {
            votes.push_back(vote(crossing.reading, registers_[crossing.reading]->time_ms, crossing.from_ms, crossing.to_ms));
            crossed[crossing.reading] = 1;
        }
        return elected(votes, registers_.size(), static_cast<long>(std::ranges::count(crossed, 1)), OffsetBasis::register_crossings);
    }

    /// Every time that the log showed a noted value; a value noted where the log's gauge was fractional counts within half a point.
    std::optional<ClockOffset> by_gauge() {
        const std::optional<GaugeLog> log = gauge_.finish();
        if (!log || log->steps.empty()) return std::nullopt;
        std::vector<Vote> votes;
        std::vector<char> shown(gauges_.size());
        for (std::size_t g = 0; g < gauges_.size(); ++g)
            for (std::size_t s = 1; s < log->steps.size(); ++s) {
                const GaugeStep &before = log->steps[s - 1], &after = log->steps[s];
                const double high = std::max(before.to_percent, after.from_percent), low = std::min(before.to_percent, after.from_percent);
                const double value = *gauges_[g]->gauge_percent;
                if (value > high + 0.5 || value < low - 0.5) continue;
                votes.push_back(vote(g, gauges_[g]->time_ms, before.from_ms, after.to_ms));
                shown[g] = 1;
            }
        return elected(votes, gauges_.size(), static_cast<long>(std::ranges::count(shown, 1)), OffsetBasis::gauge_values);
    }

    void note_trace_steps(const std::vector<TracePoint>& points) {
        const TracePoint* before = nullptr;
        for (const TracePoint& point : points) {
            if (!point.power_w) continue;
            if (before != nullptr && point.time_ms - before->time_ms <= most_step_ms) {
                const double change_w = *point.power_w - *before->power_w;
                const double larger_w = std::max(std::abs(*point.power_w), std::abs(*before->power_w));
                if (std::abs(change_w) >= std::max(least_trace_step_w, least_trace_step_share * larger_w))
                    trace_steps_.push_back({before->time_ms, point.time_ms, change_w});
            }
            before = &point;
        }
        if (trace_steps_.size() <= most_trace_steps) return;
        std::vector<PowerStep> spread;
        for (std::size_t k = 0; k < most_trace_steps; ++k) spread.push_back(trace_steps_[k * (trace_steps_.size() - 1) / (most_trace_steps - 1)]);
        trace_steps_ = std::move(spread);
    }

    /// Steps of this log's power at steps of the other one's that are alike; near an offset that is known roughly, where one is.
    std::optional<ClockOffset> by_log_steps(const std::optional<ClockOffset>& near) const {
        std::vector<Vote> votes;
        std::vector<char> met(trace_steps_.size());
        for (std::size_t t = 0; t < trace_steps_.size(); ++t)
            for (const PowerStep& step : steps_.steps()) {
                const PowerStep& known = trace_steps_[t];
                const double ratio = step.change_w / known.change_w;
                if (!(ratio > 1 / most_step_ratio && ratio < most_step_ratio)) continue;
                const Vote vote{t, known.from_ms - step.to_ms, known.to_ms - step.from_ms};
                const auto reach = near ? static_cast<UtcMs>(4000 * near->u_s) : most_offset_ms, middle = near ? near->offset_ms : 0;
                if (vote.to_ms < middle - reach || vote.from_ms > middle + reach) continue;
                votes.push_back(vote);
                met[t] = 1;
            }
        const auto tried = static_cast<long>(std::ranges::count(met, 1));
        if (tried < least_log_steps) return std::nullopt;
        return elected(votes, trace_steps_.size(), tried, OffsetBasis::log_steps);
    }

    std::optional<ClockOffset> by_steps() const {
        std::vector<Vote> votes;
        for (std::size_t m = 0; m < marks_.size(); ++m)
            for (const PowerStep& step : steps_.steps())
                if (fits(*marks_[m]->mark, step.change_w) && std::abs(marks_[m]->time_ms - step.to_ms) <= most_offset_ms)
                    votes.push_back(vote(m, marks_[m]->time_ms, step.from_ms, step.to_ms));
        return elected(votes, marks_.size(), static_cast<long>(marks_.size()), OffsetBasis::load_steps);
    }

    std::optional<ClockOffset> by_cut_off() const {
        if (!cut_off_ms_) return std::nullopt;
        const auto fall = steps_.last_fall((*cut_off_ms_ - *first_ms_) / 2);
        if (!fall) return std::nullopt;
        const Vote only = vote(0, *cut_off_ms_, fall->from_ms, fall->to_ms);
        return told({only}, {1, true, only.from_ms, only.to_ms}, 1, OffsetBasis::cut_off);
    }

    std::optional<ClockOffset> elected(const std::vector<Vote>& votes, std::size_t voters, long tried, OffsetBasis basis) const {
        const Election election = elect(votes, voters);
        if (election.agreeing < 2 || !election.unique || 2 * election.agreeing <= tried) return std::nullopt;
        return told(votes, election, tried, basis);
    }

    ClockOffset told(const std::vector<Vote>& votes, const Election& election, long tried, OffsetBasis basis) const {
        const UtcMs middle_ms = election.from_ms + (election.to_ms - election.from_ms) / 2;
        double weights = 0, sum_ms = 0;
        for (const Vote& vote : votes) {
            if (vote.from_ms > middle_ms || vote.to_ms < middle_ms) continue;
            const double weight = 1 / (vote.u_ms() * vote.u_ms());
            weights += weight;
            // About the middle, as epoch times squared away would lose digits.
            sum_ms += weight * (vote.centre_ms() - static_cast<double>(middle_ms));
        }
        ClockOffset offset;
        offset.offset_ms = std::clamp<UtcMs>(middle_ms + std::llround(sum_ms / weights), election.from_ms, election.to_ms);
        const double common_ms = basis == OffsetBasis::log_steps ? log_doubt_ms : static_cast<double>(doubt_ms_) / 2;
        offset.u_s = std::hypot(1 / std::sqrt(weights), common_ms / std::sqrt(3.0)) / 1000;
        offset.basis = basis;
        offset.matched = election.agreeing;
        offset.tried = tried;
        const double seconds = static_cast<double>(offset.offset_ms) / 1000;
        const bool ahead = seconds < 0;
        const Phrase by_log = ahead ? phrase("trace", "The log's clock is %1 ahead of that of the meter's log, ±%2: %3")
                                    : phrase("trace", "The log's clock is %1 behind that of the meter's log, ±%2: %3");
        const Phrase by_hand = ahead ? phrase("trace", "The log's clock is %1 ahead of the hand readings, ±%2: %3")
                                     : phrase("trace", "The log's clock is %1 behind the hand readings, ±%2: %3");
        offset.sentence = say(basis == OffsetBasis::log_steps ? by_log : by_hand, span_text(seconds), span_text(2 * offset.u_s), say_basis(offset));
        return offset;
    }

    static Message say_basis(const ClockOffset& offset) {
        const Message matched = say_number(offset.matched), tried = say_number(offset.tried);
        switch (offset.basis) {
        case OffsetBasis::register_crossings:
            return say(phrase("trace", "its register passed %1 of the %2 values noted by hand at the noted moments"), matched, tried);
        case OffsetBasis::log_steps: return say(phrase("trace", "its power changed at %1 of %2 steps of the power in that log"), matched, tried);
        case OffsetBasis::gauge_values:
            return say(phrase("trace", "its gauge showed %1 of the %2 values noted by hand at the noted moments"), matched, tried);
        case OffsetBasis::load_steps: return say(phrase("trace", "its power changed at %1 of %2 marks"), matched, tried);
        case OffsetBasis::cut_off: return say(phrase("trace", "its power fell for the last time at the cut-off"));
        }
        return {};
    }

    UtcMs doubt_ms_ = minute_doubt_ms;
    std::vector<const ReadingValues*> registers_, gauges_, marks_;
    std::vector<PowerStep> trace_steps_; ///< of the log that the run has already
    GaugeThinner gauge_;
    std::optional<UtcMs> first_ms_, cut_off_ms_;
    std::optional<CrossingFinder> crossings_;
    StepFinder steps_;
};

} // namespace

Result<ClockOffset> estimate_clock_offset(const std::string& path, const TraceLayout& layout, const TraceReadOptions& options,
                                          const RunRecord& record) {
    TraceReadOptions as_written = options;
    as_written.offset_ms = 0;
    as_written.offset_u_s.reset();
    Estimate estimate(record);
    const Result<TraceTally> read = stream_trace(path, layout, as_written, [&estimate](std::span<const TraceSample> samples) {
        estimate.take(samples);
        return Result<void>();
    });
    if (!read) return read.error();
    Result<ClockOffset> found = estimate.result();
    if (found) return found;
    Error error = found.error();
    error.where = path;
    return error;
}

} // namespace ullage
