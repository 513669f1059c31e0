// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/live_reader.h"

#include "services/settings.h"
#include "style/words.h"

#include <algorithm>
#include <limits>
#include <utility>

namespace ullage {

namespace {

constexpr int live_tick_ms = 1000;
constexpr qint64 longest_live_pause_ms = 60'000;
constexpr qint64 live_pause_per_refresh = 20; ///< a window that needs 100 ms to show a change shows one in two seconds
constexpr qsizetype most_dismissed = 500;
const QString read_runs_name = QStringLiteral("liveRuns");
const QString dismissed_name = QStringLiteral("dismissedEvents");

QString key_of(const RunId& run_uuid, const LiveEvent& event) {
    return QStringLiteral("%1 %2 %3").arg(raw_text(run_uuid)).arg(static_cast<int>(event.kind)).arg(event.moment_ms);
}

QString sentence_of(const RunRecord& record, const LiveEvent& event) {
    return LiveReader::tr("%1: %2 at %3. %4.")
        .arg(text_of(record.unit.name), text_of(say_event(event.kind)), text_of(clock_text(event.moment_ms, record.run.time_zone)),
             text_of(event.evidence));
}

} // namespace

struct LiveReader::Reading {
    RunId run_uuid;
    std::optional<LiveTrace> live;
    std::unique_ptr<LiveSession> session;
    bool gained = false;
};

LiveReader::LiveReader(Document& document, Settings& settings, QObject* parent, LiveClocks clocks)
    : QObject(parent), document_(document), settings_(settings), clocks_(std::move(clocks)) {
    timer_.setInterval(live_tick_ms);
    connect(&timer_, &QTimer::timeout, this, [this] {
        announce();
        std::vector<RunId> runs;
        for (const auto& [run, reading] : readings_) runs.push_back(run);
        for (const RunId& run : runs) emit changed(run); // the age of the last sample
    });
    connect(&document_, &Document::opened, this, &LiveReader::resume);
    connect(&document_, &Document::leaving, this, &LiveReader::forgetAll);
    connect(&document_, &Document::runsChanged, this, &LiveReader::endRunsThatEnded);
    connect(&document_, &Document::readingsChanged, this, &LiveReader::lookForEvents);
    resume();
}

LiveReader::~LiveReader() { forgetAll(); }

void LiveReader::forgetAll() {
    timer_.stop();
    auto ending = std::exchange(readings_, {}); // what is left is written by each session, and may be told of
    ending.clear();
    waiting_.clear();
    proposed_.clear();
    looked_.clear();
}

std::vector<RunId> LiveReader::keptRuns() const {
    std::vector<RunId> runs;
    for (const QString& line : settings_.remembered(read_runs_name).split(QLatin1Char('\n'), Qt::SkipEmptyParts)) runs.push_back(id_of<RunId>(line));
    return runs;
}

void LiveReader::keepRead(const RunId& run_uuid, bool read) {
    QStringList lines = settings_.remembered(read_runs_name).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.removeAll(raw_text(run_uuid));
    if (read) lines.append(raw_text(run_uuid));
    settings_.remember(read_runs_name, lines.join(QLatin1Char('\n')));
}

void LiveReader::resume() {
    forgetAll();
    if (!document_.isOpen()) return;
    if (document_.isLooking()) return beginLooking();
    for (const RunId& run : keptRuns()) {
        const RunRecord* record = document_.run(run);
        if (!record || record->run.end != RunEnd::still_running) continue; // of another logbook, or ended elsewhere
        const auto source = sourceOf(run);
        if (!source) continue;
        if (!source->user.empty()) {
            waiting_.insert(run);
            emit changed(run);
            emit waits(run);
        } else if (const auto started = start(run); !started) {
            emit error(text_of(started.error().sentence()));
        }
    }
}

std::optional<LiveSource> LiveReader::sourceOf(const RunId& run_uuid) const {
    const RunRecord* record = document_.run(run_uuid);
    if (!record || !record->meter) return std::nullopt;
    const auto sources = document_.meterSources();
    const auto found = sources.find(record->meter->uuid);
    if (found == sources.end()) return std::nullopt;
    auto source = source_from(found->second);
    return source ? std::optional(std::move(source).value()) : std::nullopt;
}

Result<void> LiveReader::start(const RunId& run_uuid, const QString& password) {
    const auto source = sourceOf(run_uuid);
    if (!source)
        return Error{Failure::not_found,
                     say(phrase("services", "no source is kept with the meter of this run")),
                     {},
                     say(phrase("services", "set one up on the page Meters"))};
    auto live = document_.beginLive(run_uuid, *source);
    if (!live) return live.error();
    const RunRecord* record = document_.run(run_uuid);
    const auto step_wh = record->meter ? record->meter->step_wh : std::nullopt;
    EventDetector detector(step_wh);
    const auto traces = document_.traces(run_uuid);
    if (!traces) return traces.error();
    for (const Trace& trace : traces.value()) {
        if (!is_live(trace)) continue;
        const auto read = document_.readSamples(trace.uuid, trace.first_ms, trace.last_ms, [&detector](std::span<const TraceSample> samples) {
            for (const TraceSample& sample : samples) detector.take(sample);
            return true;
        });
        if (!read) return read.error();
    }
    readProposals(run_uuid);

    auto reading = std::make_unique<Reading>();
    reading->run_uuid = run_uuid;
    reading->live.emplace(std::move(live).value());
    reading->session = std::make_unique<LiveSession>(SourceLink::make(*source, password), clocks_);
    Reading* const raw = reading.get();
    raw->session->recordInto(
        [this, raw](std::span<const TraceSample> samples, long left_out) { return document_.writeLive(*raw->live, samples, left_out); },
        raw->live->last_before(), step_wh);
    raw->session->setDetector(std::move(detector));
    connect(raw->session.get(), &LiveSession::written, this, [raw] { raw->gained = true; });
    connect(raw->session.get(), &LiveSession::stateChanged, this, [this, raw] { emit changed(RunId(raw->run_uuid)); });
    connect(raw->session.get(), &LiveSession::eventFound, this, [this, raw](const LiveEvent& event) { found(*raw, event); });
    connect(
        raw->session.get(), &LiveSession::ended, this,
        [this, run = run_uuid](const QString& why) {
            stop(run);
            emit error(tr("The meter is no longer read: %1").arg(why));
        },
        Qt::QueuedConnection); // it is within a call of the session
    readings_[run_uuid] = std::move(reading);
    waiting_.erase(run_uuid);
    keepRead(run_uuid, true);
    raw->session->start();
    timer_.start();
    emit changed(run_uuid);
    return {};
}

void LiveReader::stop(RunId run_uuid) {
    keepRead(run_uuid, false);
    waiting_.erase(run_uuid);
    if (const auto at = readings_.find(run_uuid); at != readings_.end()) {
        if (const auto stopped = at->second->session->stop(); !stopped && stopped.error().failure != Failure::refused)
            emit error(text_of(stopped.error().sentence()));
        readings_.erase(at);
        document_.announceGrowth(run_uuid);
    }
    if (readings_.empty()) timer_.stop();
    emit changed(run_uuid);
}

bool LiveReader::isReading(const RunId& run_uuid) const { return readings_.contains(run_uuid); }

bool LiveReader::waitsForPassword(const RunId& run_uuid) const { return waiting_.contains(run_uuid); }

std::optional<LiveState> LiveReader::state(const RunId& run_uuid) const {
    const auto at = readings_.find(run_uuid);
    return at == readings_.end() ? std::nullopt : std::optional(at->second->session->state());
}

void LiveReader::endRunsThatEnded() {
    std::vector<RunId> ended;
    for (const auto& [run, reading] : readings_) {
        const RunRecord* record = document_.run(run);
        if (!record || record->run.end != RunEnd::still_running) ended.push_back(run);
    }
    for (const RunId& run : ended) stop(run);
}

void LiveReader::found(Reading& reading, const LiveEvent& event) {
    const RunRecord* record = document_.run(reading.run_uuid);
    if (!record) return;
    if (mark_of(event.kind)) proposed_[reading.run_uuid].push_back(event);
    const RunId run = reading.run_uuid; // who is told may end the reading
    emit happened(run, sentence_of(*record, event), event.kind == LiveEventKind::output_off);
    emit changed(run);
}

void LiveReader::beginLooking() {
    for (const RunRecord* record : document_.runs()) {
        if (record->run.end != RunEnd::still_running || !sourceOf(record->run.uuid)) continue;
        looked_.try_emplace(record->run.uuid, Looked{EventDetector(record->meter->step_wh), std::numeric_limits<UtcMs>::min()});
        lookForEvents(record->run.uuid);
    }
}

void LiveReader::lookForEvents(const RunId& run_uuid) {
    const auto at = looked_.find(run_uuid);
    const RunRecord* record = document_.run(run_uuid);
    if (at == looked_.end() || !record) return;
    Looked& looked = at->second;
    const bool first = looked.up_to_ms == std::numeric_limits<UtcMs>::min(); // what happened before was told by who recorded it
    const auto traces = document_.traces(at->first);
    if (!traces) return;
    for (const Trace& trace : traces.value()) {
        if (!is_live(trace) || trace.last_ms <= looked.up_to_ms) continue;
        // What cannot be read now is read the next time.
        [[maybe_unused]] const auto read = document_.readSamples(trace.uuid, first ? trace.first_ms : looked.up_to_ms + 1, trace.last_ms,
                                                                 [&looked](std::span<const TraceSample> samples) {
                                                                     for (const TraceSample& sample : samples) looked.detector.take(sample);
                                                                     if (!samples.empty()) looked.up_to_ms = samples.back().time_ms;
                                                                     return true;
                                                                 });
    }
    for (const LiveEvent& event : looked.detector.take_events()) {
        if (const auto known = proposed_.find(at->first); known != proposed_.end() && !first && mark_of(event.kind)) known->second.push_back(event);
        if (!first && !is_marked(*record, event)) emit happened(run_uuid, sentence_of(*record, event), event.kind == LiveEventKind::output_off);
    }
    emit changed(run_uuid);
}

void LiveReader::readProposals(const RunId& run_uuid) const {
    auto events = document_.proposedEvents(run_uuid);
    if (!events) return;
    // A silence is no mark; the page says since when nothing came.
    std::erase_if(events.value(), [](const LiveEvent& event) { return !mark_of(event.kind); });
    proposed_[run_uuid] = std::move(events).value();
}

std::vector<LiveEvent> LiveReader::proposals(const RunId& run_uuid) const {
    const RunRecord* record = document_.run(run_uuid);
    if (!record) return {};
    if (!proposed_.contains(run_uuid)) readProposals(run_uuid);
    const QStringList dismissed = settings_.remembered(dismissed_name).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    std::vector<LiveEvent> events = proposed_[run_uuid];
    std::erase_if(events, [&](const LiveEvent& event) { return dismissed.contains(key_of(run_uuid, event)) || is_marked(*record, event); });
    return events;
}

Result<void> LiveReader::accept(const RunId& run_uuid, const LiveEvent& event) {
    const auto recorded = document_.record(run_uuid, reading_of(event));
    if (!recorded) return recorded.error();
    emit changed(run_uuid);
    return {};
}

void LiveReader::dismiss(const RunId& run_uuid, const LiveEvent& event) {
    QStringList lines = settings_.remembered(dismissed_name).split(QLatin1Char('\n'), Qt::SkipEmptyParts);
    lines.append(key_of(run_uuid, event));
    if (lines.size() > most_dismissed) lines = lines.mid(lines.size() - most_dismissed);
    settings_.remember(dismissed_name, lines.join(QLatin1Char('\n')));
    emit changed(run_uuid);
}

void LiveReader::announce() {
    if (since_announced_.isValid() && since_announced_.elapsed() < pause_ms_) return;
    if (document_.isImporting()) return;
    std::vector<RunId> runs;
    for (const auto& [run, reading] : readings_)
        if (std::exchange(reading->gained, false)) runs.push_back(run);
    if (runs.empty()) return;
    QElapsedTimer taken;
    taken.start();
    for (const RunId& run : runs) document_.announceGrowth(run);
    pause_ms_ = std::min(live_pause_per_refresh * taken.elapsed(), longest_live_pause_ms);
    since_announced_.start();
}

} // namespace ullage
