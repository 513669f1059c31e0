// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/live/watch_command.h"

#include "base/clock.h"
#include "cli/live/watched_run.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/opened_logbook.h"
#include "cli/text/runs_source.h"
#include "formats/text/table_unicode.h"
#include "style/words.h"

#include <QEventLoop>
#include <QTimer>

#include <algorithm>
#include <csignal>
#include <cstdlib>
#include <iostream>
#include <ostream>
#include <vector>

#include <termios.h>
#include <unistd.h>

namespace ullage {

namespace {

constexpr int look_every_ms = 200, settle_every_ms = 1000, say_every_ms = 60'000, try_every_ms = 1000;

volatile std::sig_atomic_t ended_by_signal = 0;
extern "C" void note_end(int) { ended_by_signal = 1; }

/// While it lives, SIGINT and SIGTERM are noted instead of ending the program, so that the last samples are written.
class EndSignals {
public:
    EndSignals() : before_int_(std::signal(SIGINT, note_end)), before_term_(std::signal(SIGTERM, note_end)) { ended_by_signal = 0; }
    ~EndSignals() {
        std::signal(SIGINT, before_int_);
        std::signal(SIGTERM, before_term_);
    }
    EndSignals(const EndSignals&) = delete;
    EndSignals& operator=(const EndSignals&) = delete;

private:
    void (*before_int_)(int);
    void (*before_term_)(int);
};

Result<LiveSource> stated_source(const WatchArguments& arguments) {
    LiveSource source;
    source.kind = kind_from(arguments.kind).value();
    source.address = arguments.address;
    source.station = arguments.station.value_or(source.station);
    source.interval_s = arguments.interval_s.value_or(source.kind == SourceKind::readout ? 10 : source.interval_s);
    source.tls = arguments.tls;
    source.user = arguments.user;
    if (source.kind == SourceKind::readout) source.line = {300, 7, 'E', 1}; // IEC 62056-21, 5.1: where each read-out begins
    if (!arguments.line.empty()) {
        const auto line = line_settings_from(arguments.line);
        if (!line) return line.error();
        source.line = line.value();
    }
    std::string lines;
    for (const std::string& line : arguments.read) lines += line + '\n';
    if (auto taken = take_fields(source, lines); !taken) return taken.error();
    if (auto good = check(source); !good) return good.error();
    return source;
}

/// Asked at the terminal, without being shown.
QString password_for(const LiveSource& source, std::ostream& err) {
    if (source.user.empty()) return {};
    if (const char* set = std::getenv("ULLAGE_SOURCE_PASSWORD")) return QString::fromLocal8Bit(set);
    termios shown{};
    if (::tcgetattr(STDIN_FILENO, &shown) != 0) return {}; // nobody can be asked
    termios hidden = shown;
    hidden.c_lflag &= ~static_cast<tcflag_t>(ECHO);
    err << one_line(say(phrase("commands", "Password of %1 at %2:"), source.user, source.address).text()) << ' ' << std::flush;
    (void)::tcsetattr(STDIN_FILENO, TCSANOW, &hidden);
    std::string line;
    std::getline(std::cin, line);
    (void)::tcsetattr(STDIN_FILENO, TCSANOW, &shown);
    err << '\n';
    return QString::fromLocal8Bit(QByteArray(line.data(), static_cast<qsizetype>(line.size())));
}

struct Wanted {
    RunRecord record;
    LiveSource source;
};

Result<std::vector<Wanted>> wanted_runs(Logbook& logbook, const WatchArguments& arguments) {
    const auto records = logbook.run_records();
    if (!records) return records.error();
    const auto kept = logbook.meter_sources();
    if (!kept) return kept.error();
    const auto source_of = [&kept](const RunRecord& record) -> Result<LiveSource> {
        const auto found = record.meter ? kept.value().find(record.meter->uuid) : kept.value().end();
        if (found == kept.value().end())
            return Error{Failure::not_found, say(phrase("commands", "no source is kept with the meter of this run")), one_line(record.unit.name),
                         say(phrase("commands", "state it with --kind, --address and --read; --keep keeps it"))};
        return source_from(found->second);
    };
    std::vector<Wanted> wanted;
    if (arguments.run) {
        const auto chosen = chosen_runs(addresses_of(records.value()), arguments.unit, arguments.run);
        if (!chosen) return chosen.error();
        if (chosen.value().size() > 1)
            return Error{Failure::bad_input, say(phrase("commands", "units of several makers have this name and run")), "--unit",
                         say(phrase("commands", "rename one of them"))};
        const RunRecord& record = *chosen.value().front();
        auto source = arguments.kind.empty() ? source_of(record) : stated_source(arguments);
        if (!source) return source.error();
        if (arguments.keep && !record.meter)
            return Error{Failure::refused, say(phrase("commands", "the run names no meter that could keep a source")), "--keep",
                         say(phrase("commands", "name its meter first, or leave --keep"))};
        wanted.push_back({record, std::move(source).value()});
        return wanted;
    }
    for (const RunRecord& record : records.value()) {
        if (record.run.end != RunEnd::still_running || !record.meter || !kept.value().contains(record.meter->uuid)) continue;
        auto source = source_of(record);
        if (!source) return source.error();
        wanted.push_back({record, std::move(source).value()});
    }
    if (wanted.empty())
        return Error{Failure::not_found, say(phrase("commands", "no running run has a meter with a source")), arguments.logbook,
                     say(phrase("commands", "name a run with --run, and its source with --kind"))};
    return wanted;
}

std::string event_line(const WatchedRun& run, const LiveEvent& event) {
    const std::string& zone = run.record.run.time_zone;
    const Message what = say_event(event.kind), at = format_iso8601(event.moment_ms, zone);
    if (event.by_ms - event.moment_ms > 2000)
        return line_of(say(phrase("commands", "%1: %2 at %3 (by %4): %5"), run.name(), what, at, format_iso8601(event.by_ms, zone), event.evidence));
    return line_of(say(phrase("commands", "%1: %2 at %3: %4"), run.name(), what, at, event.evidence));
}

/// The clocks of the sessions, for what the logbook itself dates and measures.
class SessionClock final : public Clock {
public:
    explicit SessionClock(const LiveClocks& clocks) : clocks_(clocks) {}
    [[nodiscard]] UtcMs now_ms() const override { return clocks_.wall_ms(); }
    [[nodiscard]] double running_s() const override { return static_cast<double>(clocks_.steady_ms()) / 1000; }

private:
    const LiveClocks& clocks_;
};

/// How far the samples of a run are in the logbook; empty where none is.
Message samples_standing(const WatchedRun& run) {
    if (!run.live || !run.live->trace()) return {};
    return say(phrase("commands", "the samples of %1 to %2 are in the logbook"), run.name(),
               format_iso8601(run.live->trace()->last_ms, run.record.run.time_zone));
}

/// The loop of all that is watched.
class Watch {
public:
    Watch(Logbook& logbook, const WatchArguments& arguments, std::ostream& out, std::ostream& err)
        : logbook_(logbook), arguments_(arguments), out_(out), err_(err) {}

    void add(std::unique_ptr<WatchedRun> run) {
        auto* raw = run.get();
        auto* session = raw->session.get();
        QObject::connect(session, &LiveSession::eventFound, session, [this, raw](const LiveEvent& event) {
            if (event.kind == LiveEventKind::output_off) raw->off = true;
            if (event.kind == LiveEventKind::output_back) raw->off = false;
            put(event_line(*raw, event));
        });
        QObject::connect(session, &LiveSession::stateChanged, session, [this, raw] { put(line_of(state_line(*raw))); });
        QObject::connect(session, &LiveSession::ended, session, [this, raw](const QString& why) {
            raw->ended = utf8_of(why);
            tell(err_, {say(phrase("commands", "%1: no longer read: %2"), raw->name(), raw->ended)});
            code_ = exit_bad_input;
        });
        runs_.push_back(std::move(run));
    }

    /// What is in the logbook, whoever hears of it.
    [[nodiscard]] Message standing() const {
        std::vector<Message> all;
        for (const auto& run : runs_)
            if (Message samples = samples_standing(*run); !samples.empty()) all.push_back(std::move(samples));
        if (arguments_.keep) all.push_back(say(phrase("commands", "the source is kept with the meter")));
        return say_joined(all, "; ");
    }

    int run() {
        const EndSignals signals_noted;
        QTimer look, settle, tell, limit;
        QObject::connect(&look, &QTimer::timeout, &loop_, [this] { lookAtEnd(); });
        QObject::connect(&settle, &QTimer::timeout, &loop_, [this] { settleAll(); });
        QObject::connect(&tell, &QTimer::timeout, &loop_, [this] {
            for (const auto& run : runs_)
                if (run->ended.empty()) put(line_of(state_line(*run)));
        });
        look.start(look_every_ms);
        settle.start(settle_every_ms);
        tell.start(arguments_.trial ? try_every_ms : say_every_ms);
        if (arguments_.for_s) {
            limit.setSingleShot(true);
            QObject::connect(&limit, &QTimer::timeout, &loop_, &QEventLoop::quit);
            limit.start(std::chrono::milliseconds(static_cast<long long>(std::min(*arguments_.for_s, 1e6) * 1000)));
        }
        for (const auto& run : runs_) {
            put(line_of(say(phrase("commands", "%1: reading %2"), run->name(), run->source.title())));
            run->session->start();
        }
        if (out_) loop_.exec();
        for (const auto& run : runs_) {
            const auto stopped = run->session->stop();
            if (!stopped) code_ = refuse(err_, with_done(stopped.error(), samples_standing(*run)));
            put(line_of(say(phrase("commands", "Ended. %1"), state_line(*run))));
        }
        const int printed = print({}, out_, err_, standing());
        return code_ == exit_good ? printed : code_;
    }

private:
    /// That it could not be written is told once, at the end, when the last samples are in the logbook.
    void put(const std::string& text) {
        if (!(out_ << text << std::flush)) loop_.quit();
    }
    void lookAtEnd() {
        const bool all_ended = std::ranges::all_of(runs_, [](const auto& run) { return !run->ended.empty(); });
        const bool all_off = std::ranges::all_of(runs_, [](const auto& run) { return run->off; });
        if (ended_by_signal != 0 || all_ended || (arguments_.until_off && all_off)) loop_.quit();
    }
    void settleAll() {
        if (const auto settled = logbook_.settle(); !settled && !std::exchange(settling_told_, true)) refuse(err_, settled.error());
    }

    Logbook& logbook_;
    const WatchArguments& arguments_;
    std::ostream &out_, &err_;
    std::vector<std::unique_ptr<WatchedRun>> runs_;
    QEventLoop loop_;
    int code_ = exit_good;
    bool settling_told_ = false;
};

} // namespace

int watch_command(const WatchArguments& arguments, std::ostream& out, std::ostream& err, const LiveClocks& clocks) {
    const SessionClock clock(clocks);
    std::vector<Message> notices;
    auto logbook = opened_logbook(arguments.logbook, arguments.trial ? OpenMode::read_only : OpenMode::record, clock, notices);
    if (!logbook) return refuse(err, logbook.error());
    tell(err, notices);
    const auto wanted = wanted_runs(logbook.value(), arguments);
    if (!wanted) return refuse(err, wanted.error());
    Watch watch(logbook.value(), arguments, out, err);
    for (const Wanted& one : wanted.value()) {
        const QString password = password_for(one.source, err);
        if (arguments.trial) {
            watch.add(try_run(one.record, one.source, password, clocks));
            continue;
        }
        auto run = watch_run(logbook.value(), one.record, one.source, password, clocks);
        if (!run) return refuse(err, run.error());
        if (arguments.keep)
            if (const auto kept = logbook.value().set_meter_source(one.record.meter->uuid, source_text(one.source)); !kept)
                return refuse(err, kept.error());
        watch.add(std::move(run).value());
    }
    const int printed = print(line_of(say(phrase("commands", "Reading; interrupt (Ctrl+C) to end"))), out, err, watch.standing());
    return printed == exit_good ? watch.run() : printed;
}

} // namespace ullage
