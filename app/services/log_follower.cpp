// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/log_follower.h"

#include "services/settings.h"
#include "style/words.h"

#include <QFileInfo>
#include <QScopedValueRollback>
#include <QStringList>

#include <algorithm>
#include <utility>
#include <vector>

namespace ullage {

namespace {

constexpr int look_every_ms = 1000;
constexpr qint64 most_looking_ms = 200; ///< at one log at once, so that the window stays quick
constexpr qint64 longest_pause_ms = 60'000;
constexpr qint64 pause_per_refresh = 20; ///< a window that needs 100 ms to show a change shows one in two seconds
constexpr UtcMs least_quiet_ms = 60'000;
constexpr UtcMs quiet_intervals = 10;
const QString kept_name = QStringLiteral("followedLogs");

QStringList kept_lines(const Settings& settings) { return settings.remembered(kept_name).split(QLatin1Char('\n'), Qt::SkipEmptyParts); }

bool lasting(const Error& error) {
    return error.failure == Failure::refused || error.failure == Failure::bad_input || error.failure == Failure::newer_version;
}

} // namespace

struct LogFollower::Followed {
    Trace trace;
    State state;
    std::optional<LogFollow> follow; ///< absent until the file has been found and read
    bool gained = false;             ///< not announced yet
};

LogFollower::LogFollower(Document& document, Settings& settings, QObject* parent) : QObject(parent), document_(document), settings_(settings) {
    timer_.setInterval(look_every_ms);
    connect(&timer_, &QTimer::timeout, this, &LogFollower::tick);
    connect(&document_, &Document::opened, this, &LogFollower::resume);
    connect(&document_, &Document::closed, this, &LogFollower::forgetAll);
    connect(&document_, &Document::readingsChanged, this, &LogFollower::dropWithdrawn);
    resume();
}

LogFollower::~LogFollower() = default;

void LogFollower::forgetAll() {
    logs_.clear();
    timer_.stop();
}

void LogFollower::resume() {
    forgetAll();
    if (!document_.isOpen() || document_.isLooking()) return;
    const QStringList lines = kept_lines(settings_);
    if (lines.isEmpty()) return;
    const auto traces = document_.traces({});
    if (!traces) return;
    for (const QString& line : lines) {
        const auto uuid = id_of<TraceId>(line.section(QLatin1Char('\t'), 0, 0));
        const auto trace = std::ranges::find(traces.value(), uuid, &Trace::uuid);
        if (trace == traces.value().end()) continue; // of another logbook
        Followed& log = logs_[uuid];
        log.trace = *trace;
        log.state.path = line.section(QLatin1Char('\t'), 1);
        log.state.grown_ms = document_.clock().now_ms();
    }
    if (!logs_.empty()) timer_.start(); // the window is shown before files are read
}

Result<void> LogFollower::follow(const Trace& trace, const QString& path) {
    auto begun = document_.beginFollow(trace, path, false);
    if (!begun) return begun.error();
    Followed log;
    for (bool more = true; more;) {
        const auto seen = document_.lookAtLog(begun.value());
        if (!seen) return seen.error();
        more = seen.value().more;
        log.gained = log.gained || seen.value().samples > 0 || seen.value().rows_left_out > 0;
    }
    log.trace = begun.value().trace();
    log.state.path = path;
    log.state.grown_ms = document_.clock().now_ms();
    log.follow = std::move(begun).value();
    logs_.insert_or_assign(trace.uuid, std::move(log));
    keepPath(trace.uuid, path);
    timer_.start();
    pause_ms_ = 0;
    announce();
    emit changed(RunId(trace.run_uuid));
    return {};
}

void LogFollower::stop(TraceId trace_uuid) {
    const auto at = logs_.find(trace_uuid);
    if (at == logs_.end()) return;
    const auto run = at->second.trace.run_uuid;
    pause_ms_ = 0;
    announce(); // what came last is shown too
    logs_.erase(trace_uuid);
    keepPath(trace_uuid, {});
    if (logs_.empty()) timer_.stop();
    emit changed(run);
}

std::optional<LogFollower::State> LogFollower::state(const TraceId& trace_uuid) const {
    const auto at = logs_.find(trace_uuid);
    return at == logs_.end() ? std::nullopt : std::optional(at->second.state);
}

int LogFollower::count() const { return static_cast<int>(logs_.size()); }

void LogFollower::keepPath(const TraceId& trace_uuid, const QString& path) {
    QStringList lines = kept_lines(settings_);
    const QString begin = raw_text(trace_uuid) + QLatin1Char('\t');
    lines.removeIf([&begin](const QString& line) { return line.startsWith(begin); });
    if (!path.isEmpty()) lines.append(begin + path);
    settings_.remember(kept_name, lines.join(QLatin1Char('\n')));
}

void LogFollower::dropWithdrawn(const RunId& run_uuid) {
    const auto standing = document_.traces(run_uuid);
    if (!standing) return;
    std::vector<TraceId> gone;
    for (const auto& [uuid, log] : logs_)
        if (log.trace.run_uuid == run_uuid && std::ranges::find(standing.value(), uuid, &Trace::uuid) == standing.value().end()) gone.push_back(uuid);
    for (const TraceId& uuid : gone) {
        logs_.at(uuid).gained = false;
        stop(uuid);
    }
}

void LogFollower::tick() {
    if (looking_ || document_.isImporting()) return;
    const QScopedValueRollback looking(looking_, true);
    std::vector<TraceId> uuids;
    for (const auto& [uuid, log] : logs_) uuids.push_back(uuid);
    for (const TraceId& uuid : uuids)
        if (const auto at = logs_.find(uuid); at != logs_.end()) lookAt(at->second);
    announce();
    for (const TraceId& uuid : uuids)
        if (const auto at = logs_.find(uuid); at != logs_.end()) judgeQuiet(at->second);
}

void LogFollower::lookAt(Followed& log) {
    const QString error_before = log.state.error;
    std::optional<Error> error;
    if (!log.follow) {
        auto begun = document_.beginFollow(log.trace, log.state.path, true);
        if (begun) log.follow = std::move(begun).value();
        else error = begun.error();
    }
    QElapsedTimer elapsed;
    elapsed.start();
    bool there = true;
    for (bool more = log.follow.has_value(); more && elapsed.elapsed() < most_looking_ms;) {
        const auto seen = document_.lookAtLog(*log.follow);
        if (!seen) {
            error = seen.error();
            break;
        }
        more = seen.value().more;
        there = seen.value().change != LogChange::vanished;
        if (seen.value().samples == 0 && seen.value().rows_left_out == 0) continue;
        log.trace = log.follow->trace();
        log.gained = true;
        if (seen.value().samples > 0) log.state.grown_ms = document_.clock().now_ms();
    }
    if (error && lasting(*error)) {
        end(log, *error);
        return;
    }
    log.state.error = error   ? text_of(error->sentence())
                      : there ? QString()
                              : tr("%1 is not there; waiting for the file").arg(shown_path(log.state.path));
    if (log.state.error != error_before) emit changed(RunId(log.trace.run_uuid));
}

void LogFollower::end(const Followed& log, const Error& why) {
    const QString file_name = text_of(log.trace.file_name);
    stop(log.trace.uuid);
    emit error(tr("%1 is no longer followed: %2").arg(file_name, text_of(why.sentence())));
}

void LogFollower::judgeQuiet(Followed& log) {
    const Trace& trace = log.trace;
    const UtcMs interval_ms = trace.samples > 1 ? (trace.last_ms - trace.first_ms) / (trace.samples - 1) : 0;
    const UtcMs silence_ms = document_.clock().now_ms() - log.state.grown_ms;
    const bool quiet = silence_ms > std::max(least_quiet_ms, quiet_intervals * interval_ms);
    if (quiet == log.state.quiet) return;
    log.state.quiet = quiet;
    const RunId run = trace.run_uuid;
    const RunRecord* record = document_.run(trace.run_uuid);
    if (quiet && record && record->run.end != RunEnd::still_running) {
        stop(trace.uuid);
        return;
    }
    emit changed(run);
    if (quiet && record)
        emit fellQuiet(run, tr("%1: its log %2 has had no new row for %3 min. Is the meter still logging?")
                                .arg(text_of(record->unit.name), text_of(trace.file_name), QString::number(silence_ms / 60'000)));
}

void LogFollower::announce() {
    if (since_announced_.isValid() && since_announced_.elapsed() < pause_ms_) return;
    std::vector<RunId> runs;
    for (auto& [uuid, log] : logs_)
        if (std::exchange(log.gained, false) && std::ranges::find(runs, log.trace.run_uuid) == runs.end()) runs.push_back(log.trace.run_uuid);
    if (runs.empty()) return;
    QElapsedTimer taken;
    taken.start();
    for (const RunId& run : runs) document_.announceGrowth(run);
    pause_ms_ = std::min(pause_per_refresh * taken.elapsed(), longest_pause_ms);
    since_announced_.start();
}

} // namespace ullage
