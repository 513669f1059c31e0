// SPDX-License-Identifier: GPL-3.0-or-later
#include "sources/live_session.h"

#include "base/clock.h"
#include "style/words.h"

#include <cstdlib>
#include <ctime>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr int tick_every_ms = 250;
constexpr UtcMs recent_ms = 120'000;
constexpr std::size_t most_recent = 6000;
constexpr std::int64_t rate_over_ms = 10'000;
constexpr std::size_t most_arrivals = 600;
constexpr UtcMs noticed_clock_step_ms = 2000;

} // namespace

LiveClocks LiveClocks::of_machine() {
    return {[] { return SystemClock().now_ms(); },
            [] {
                // Unlike the monotonic clock it goes on while the machine sleeps (clock_gettime(2)).
                timespec now{};
                (void)clock_gettime(CLOCK_BOOTTIME, &now);
                return static_cast<std::int64_t>(now.tv_sec) * 1000 + now.tv_nsec / 1'000'000;
            }};
}

LiveSession::LiveSession(std::unique_ptr<SourceLink> link, LiveClocks clocks, QObject* parent)
    : QObject(parent), link_(std::move(link)), clocks_(std::move(clocks)) {
    tick_timer_.setInterval(tick_every_ms);
    connect(&tick_timer_, &QTimer::timeout, this, &LiveSession::tick);
    connect(link_.get(), &SourceLink::values, this, &LiveSession::take);
    connect(link_.get(), &SourceLink::connected, this, [this] {
        state_.link = LiveState::Link::connected;
        if (!write_failed_) state_.trouble.clear();
        emit stateChanged();
    });
    connect(link_.get(), &SourceLink::failed, this, [this](const QString& why) {
        // Said once, however often it is tried again.
        const bool news = state_.link != LiveState::Link::failing || state_.trouble != why;
        state_.link = LiveState::Link::failing;
        state_.trouble = why;
        if (news) emit stateChanged();
    });
}

LiveSession::~LiveSession() { (void)stop(); }

void LiveSession::recordInto(Sink sink, const std::optional<TraceSample>& last, std::optional<double> step_wh) {
    sink_ = std::move(sink);
    gate_ = SampleGate(last);
    detector_ = EventDetector(step_wh);
}

void LiveSession::setDetector(EventDetector detector) {
    detector_ = std::move(detector);
    (void)detector_.take_events();
}

void LiveSession::start() {
    tick_timer_.start();
    link_->start();
}

Result<void> LiveSession::stop() {
    tick_timer_.stop();
    link_->stop();
    return flush();
}

void LiveSession::take(const TraceSample& values, bool retained) {
    const std::int64_t steady_ms = clocks_.steady_ms();
    const auto sample = gate_.take({values, clocks_.wall_ms(), steady_ms, retained});
    if (!sample) return;
    last_steady_ms_ = steady_ms;
    arrivals_.push_back(steady_ms);
    if (arrivals_.size() > most_arrivals) arrivals_.pop_front();
    recent_.push_back(*sample);
    while (recent_.size() > most_recent || recent_.front().time_ms < sample->time_ms - recent_ms) recent_.pop_front();
    if (state_.link != LiveState::Link::connected || std::exchange(state_.silent, false)) {
        state_.link = LiveState::Link::connected;
        if (!write_failed_) state_.trouble.clear();
        emit stateChanged();
    }
    if (sink_) {
        batch_.add(*sample, steady_ms);
        detector_.take(*sample);
    }
    emit sampled(*sample);
    if (!sink_) return;
    tellEvents();
    if (batch_.due(steady_ms)) (void)flush();
}

void LiveSession::tellEvents() {
    for (const LiveEvent& event : detector_.take_events()) emit eventFound(event);
}

void LiveSession::tick() {
    const std::int64_t steady_ms = clocks_.steady_ms();
    if (const auto now_ms = gate_.time_at(steady_ms); now_ms && sink_) {
        detector_.look(*now_ms);
        for (const LiveEvent& event : detector_.take_events()) {
            if (event.kind == LiveEventKind::no_answer) {
                state_.silent = true;
                emit stateChanged();
            }
            emit eventFound(event);
        }
    }
    if (batch_.due(steady_ms)) (void)flush();
}

Result<void> LiveSession::flush() {
    if (!sink_ || batch_.samples().empty()) return {};
    const std::vector<TraceSample> samples(batch_.samples().begin(), batch_.samples().end());
    const long left_out = gate_.tally().left_out() + link_->misunderstood();
    const auto written = sink_(samples, left_out - left_out_written_);
    const std::int64_t steady_ms = clocks_.steady_ms();
    if (written) {
        left_out_written_ = left_out;
        batch_.written(samples.size(), steady_ms);
        if (std::exchange(write_failed_, false)) {
            state_.trouble.clear();
            emit stateChanged();
        }
        emit this->written();
        return {};
    }
    batch_.put_off(steady_ms);
    const QString why = text_of(written.error().sentence());
    if (written.error().failure == Failure::refused || written.error().failure == Failure::not_found) {
        sink_ = nullptr;
        tick_timer_.stop();
        link_->stop();
        emit ended(why);
        return written;
    }
    if (!std::exchange(write_failed_, true) || state_.trouble != why) {
        state_.trouble = why;
        emit stateChanged();
    }
    return written;
}

LiveState LiveSession::state() const {
    LiveState state = state_;
    const std::int64_t steady_ms = clocks_.steady_ms();
    if (!recent_.empty()) state.latest = recent_.back();
    if (last_steady_ms_) state.age_ms = steady_ms - *last_steady_ms_;
    if (arrivals_.size() > 1) {
        std::size_t within = 0;
        std::int64_t first_ms = arrivals_.back();
        for (auto at = arrivals_.rbegin(); at != arrivals_.rend() && steady_ms - *at <= rate_over_ms; ++at, ++within) first_ms = *at;
        if (within > 1 && arrivals_.back() > first_ms)
            state.per_second = 1000.0 * static_cast<double>(within - 1) / static_cast<double>(arrivals_.back() - first_ms);
    }
    state.taken = gate_.tally().taken;
    state.left_out = gate_.tally().left_out();
    state.misunderstood = link_->misunderstood();
    state.lost = batch_.lost();
    state.clock_set = std::abs(gate_.tally().clock_step_ms) > noticed_clock_step_ms;
    return state;
}

} // namespace ullage
