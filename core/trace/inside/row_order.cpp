// SPDX-License-Identifier: GPL-3.0-or-later
#include "trace/inside/row_order.h"

#include <algorithm>

namespace ullage {
namespace {

constexpr std::size_t most_listed = 100;

bool earlier(const TraceSample& sample, UtcMs time_ms) { return sample.time_ms < time_ms; }

} // namespace

Result<std::optional<RowTrouble>> RowOrder::take(const TraceSample& sample) {
    if (pending_.empty() ? !handed_ || sample.time_ms > handed_->time_ms : sample.time_ms > pending_.back().time_ms) {
        pending_.push_back(sample);
        if (pending_.size() < kept + block) return std::optional<RowTrouble>();
        if (auto handed = hand_over(block); !handed) return handed.error();
        return std::optional<RowTrouble>();
    }
    const auto twice = [&sample](const TraceSample& other) {
        return std::optional(other == sample ? RowTrouble::duplicate : RowTrouble::same_moment);
    };
    if (handed_ && sample.time_ms == handed_->time_ms) return twice(*handed_);
    if (handed_ && sample.time_ms < handed_->time_ms) return std::optional(RowTrouble::out_of_order);
    const auto place = std::lower_bound(pending_.begin(), pending_.end(), sample.time_ms, earlier);
    if (place->time_ms == sample.time_ms) return twice(*place);
    if (pending_.end() - place > static_cast<std::ptrdiff_t>(kept)) return std::optional(RowTrouble::out_of_order);
    pending_.insert(place, sample);
    return std::optional(RowTrouble::swapped);
}

Result<void> RowOrder::hand_over(std::size_t count) {
    const std::span<const TraceSample> samples(pending_.data(), count);
    for (const TraceSample& sample : samples) {
        if (handed_) watch(handed_->time_ms, sample.time_ms);
        else tally_.first_ms = sample.time_ms;
        handed_ = sample;
    }
    tally_.last_ms = handed_ ? handed_->time_ms : 0;
    if (auto taken = sink_(samples); !taken) return taken;
    pending_.erase(pending_.begin(), pending_.begin() + static_cast<std::ptrdiff_t>(count));
    return {};
}

Result<void> RowOrder::hand_over_all() { return pending_.empty() ? Result<void>() : hand_over(pending_.size()); }

Result<void> RowOrder::finish() {
    if (auto handed = hand_over_all(); !handed) return handed;
    if (!limit_settled_) settle_limit();
    return {};
}

void RowOrder::watch(UtcMs from, UtcMs to) {
    if (limit_settled_) {
        judge({from, to});
        return;
    }
    first_intervals_.push_back({from, to});
    if (first_intervals_.size() == watched) settle_limit();
}

void RowOrder::settle_limit() {
    limit_settled_ = true;
    if (!first_intervals_.empty()) {
        std::vector<double> seconds;
        for (const TraceGap& interval : first_intervals_) seconds.push_back(static_cast<double>(interval.to_ms - interval.from_ms) / 1000);
        const auto middle = seconds.begin() + static_cast<std::ptrdiff_t>(seconds.size() / 2);
        std::nth_element(seconds.begin(), middle, seconds.end());
        tally_.interval_s = *middle;
    }
    tally_.gap_limit_s = gap_limit_s_.value_or(std::max(60.0, 10 * tally_.interval_s.value_or(0)));
    for (const TraceGap& interval : first_intervals_) judge(interval);
}

void RowOrder::judge(const TraceGap& interval) {
    if (static_cast<double>(interval.to_ms - interval.from_ms) <= 1000 * tally_.gap_limit_s) return;
    ++tally_.counts[static_cast<std::size_t>(RowTrouble::gap)];
    if (tally_.gaps.size() < most_listed) tally_.gaps.push_back(interval);
}

} // namespace ullage
