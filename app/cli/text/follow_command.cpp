// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/follow_command.h"

#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/trace_text.h"
#include "trace/log_follow.h"

#include <chrono>
#include <csignal>
#include <ostream>
#include <thread>
#include <utility>

namespace ullage {

namespace {

using Steady = std::chrono::steady_clock;

constexpr auto look_every = std::chrono::milliseconds(500);
constexpr auto say_every = std::chrono::minutes(1);

volatile std::sig_atomic_t interrupted = 0;

extern "C" void note_interrupt(int) { interrupted = 1; }

/// While it lives, SIGINT and SIGTERM are noted instead of ending the program within a transaction.
class Interrupts {
public:
    Interrupts() : before_int_(std::signal(SIGINT, note_interrupt)), before_term_(std::signal(SIGTERM, note_interrupt)) { interrupted = 0; }
    ~Interrupts() {
        std::signal(SIGINT, before_int_);
        std::signal(SIGTERM, before_term_);
    }
    Interrupts(const Interrupts&) = delete;
    Interrupts& operator=(const Interrupts&) = delete;

private:
    void (*before_int_)(int);
    void (*before_term_)(int);
};

/// The clause, with the rows that were left out behind it where there are any.
Message with_left_out(const Message& taken, std::int64_t rows) {
    return rows == 0 ? taken : say_count(rows, phrases("commands", "%1, %n rows left out", "%1, %n row left out"), taken);
}

Message say_state(const LogFollow& follow, const std::string& zone) {
    const Trace& trace = follow.trace();
    return with_left_out(say_count(trace.samples, phrases("commands", "%1: %n samples to %2", "%1: %n sample to %2"), trace.file_name,
                                   format_iso8601(trace.last_ms, zone)),
                         trace.rows_left_out);
}

Message say_taken(const Trace& trace, const std::string& zone) {
    return say(phrase("commands", "the samples to %1 are in the logbook"), format_iso8601(trace.last_ms, zone));
}

std::string state_text(const LogFollow& follow, const std::string& zone) { return line_of(say_state(follow, zone)); }

/// Looks until there is no more.
Result<FollowLook> look_at_all(LogFollow& follow, Logbook& logbook) {
    FollowLook sum;
    for (bool more = true; more && interrupted == 0;) {
        const Result<FollowLook> seen = follow.look(logbook);
        if (!seen) return seen.error();
        more = seen.value().more;
        sum.samples += seen.value().samples;
        sum.rows_left_out += seen.value().rows_left_out;
        if (sum.change == LogChange::none || seen.value().change == LogChange::started_anew) sum.change = seen.value().change;
    }
    return sum;
}

} // namespace

Message say_no_longer_followed(const Trace& trace, const std::string& zone) {
    return say_joined({say_taken(trace, zone), say(phrase("commands", "the log is no longer followed"))}, "; ");
}

int follow_trace(Logbook& logbook, const Trace& trace, const FollowArguments& arguments, std::ostream& out, std::ostream& err) {
    Result<LogFollow> begun = LogFollow::begin(logbook, trace, arguments.path, true);
    if (!begun) return refuse(err, begun.error());
    LogFollow& follow = begun.value();
    const Interrupts interrupts;
    if (const int code = print(line_of(say(phrase("commands", "Following the log; interrupt (Ctrl+C) to end"))), out, err,
                               say_no_longer_followed(follow.trace(), arguments.zone));
        code != exit_good)
        return code;
    auto grown_at = Steady::now(), said_at = grown_at - say_every;
    bool gone = false;
    bool settling_told = false;
    while (interrupted == 0) {
        const Result<FollowLook> seen = look_at_all(follow, logbook);
        if (!seen) {
            const Message but = say_no_longer_followed(follow.trace(), arguments.zone);
            (void)print(state_text(follow, arguments.zone), out, err, but);
            return refuse(err, with_done(seen.error(), but));
        }
        const LogChange change = seen.value().change;
        const auto now = Steady::now();
        std::string said;
        if (change == LogChange::started_anew) said = line_of(say(phrase("commands", "The log was begun anew; it is read from its beginning")));
        if ((change == LogChange::vanished) != gone) {
            gone = !gone;
            said =
                line_of(gone ? say(phrase("commands", "The log is not there; waiting for it")) : say(phrase("commands", "The log is there again")));
        }
        if (seen.value().samples > 0 || seen.value().rows_left_out > 0) {
            grown_at = now;
            if (now - said_at >= say_every) said += state_text(follow, arguments.zone);
        }
        if (!said.empty()) {
            said_at = now;
            if (const int code = print(said, out, err, say_no_longer_followed(follow.trace(), arguments.zone)); code != exit_good) return code;
        }
        if (arguments.quiet_s && std::chrono::duration<double>(now - grown_at).count() >= *arguments.quiet_s) break;
        // At the latest a second after they came the rows are in the file itself.
        if (const auto settled = logbook.settle(); !settled && !std::exchange(settling_told, true)) refuse(err, settled.error());
        std::this_thread::sleep_for(look_every);
    }
    return print(line_of(say(phrase("commands", "Ended. %1"), say_state(follow, arguments.zone))), out, err,
                 say_taken(follow.trace(), arguments.zone));
}

int take_rest(Logbook& logbook, const Trace& trace, const std::string& path, const std::string& zone, std::ostream& out, std::ostream& err) {
    Result<LogFollow> begun = LogFollow::begin(logbook, trace, path, false);
    if (!begun) return refuse(err, begun.error());
    const Interrupts interrupts;
    const Result<FollowLook> seen = look_at_all(begun.value(), logbook);
    if (!seen) {
        const Message but = say_taken(begun.value().trace(), zone); // what was taken before stays
        (void)print(state_text(begun.value(), zone), out, err, but);
        return refuse(err, with_done(seen.error(), but));
    }
    const Message added = with_left_out(say_count(seen.value().samples, phrases("commands", "The run has this log already; %n new samples added",
                                                                                "The run has this log already; %n new sample added")),
                                        seen.value().rows_left_out);
    return print(line_of(added) + state_text(begun.value(), zone), out, err, say_taken(begun.value().trace(), zone));
}

} // namespace ullage
