// SPDX-License-Identifier: GPL-3.0-or-later
#include "cli/text/follow_command.h"

#include "base/number.h"
#include "cli/text/command_parts.h"
#include "cli/text/commands.h"
#include "cli/text/trace_text.h"
#include "formats/text/table_unicode.h"
#include "trace/log_follow.h"

#include <fmt/format.h>
#include <utility>

#include <chrono>
#include <csignal>
#include <ostream>
#include <thread>

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

std::string left_out_text(std::int64_t rows) {
    return rows == 0 ? std::string() : fmt::format(", {} left out", count_text(static_cast<long>(rows), "row", "rows"));
}

std::string state_text(const LogFollow& follow, const std::string& zone) {
    const Trace& trace = follow.trace();
    return one_line(fmt::format("{}: {} to {}{}", trace.file_name, count_text(static_cast<long>(trace.samples), "sample", "samples"),
                                format_iso8601(trace.last_ms, zone), left_out_text(trace.rows_left_out))) +
           '\n';
}

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

int follow_trace(Logbook& logbook, const Trace& trace, const FollowArguments& arguments, std::ostream& out, std::ostream& err) {
    Result<LogFollow> begun = LogFollow::begin(logbook, trace, arguments.path, true);
    if (!begun) return refuse(err, begun.error());
    LogFollow& follow = begun.value();
    const Interrupts interrupts;
    if (const int code = print("Following the log; interrupt (Ctrl+C) to end\n", out, err); code != exit_good) return code;
    auto grown_at = Steady::now(), said_at = grown_at - say_every;
    bool gone = false;
    bool settling_told = false;
    while (interrupted == 0) {
        const Result<FollowLook> seen = look_at_all(follow, logbook);
        if (!seen) {
            (void)print(state_text(follow, arguments.zone), out, err);
            return refuse(err, seen.error());
        }
        const LogChange change = seen.value().change;
        const auto now = Steady::now();
        std::string said;
        if (change == LogChange::started_anew) said = "The log was begun anew; it is read from its beginning\n";
        if ((change == LogChange::vanished) != gone) {
            gone = !gone;
            said = gone ? "The log is not there; waiting for it\n" : "The log is there again\n";
        }
        if (seen.value().samples > 0 || seen.value().rows_left_out > 0) {
            grown_at = now;
            if (now - said_at >= say_every) said += state_text(follow, arguments.zone);
        }
        if (!said.empty()) {
            said_at = now;
            if (const int code = print(said, out, err); code != exit_good) return code;
        }
        if (arguments.quiet_s && std::chrono::duration<double>(now - grown_at).count() >= *arguments.quiet_s) break;
        // At the latest a second after they came the rows are in the file itself.
        if (const auto settled = logbook.settle(); !settled && !std::exchange(settling_told, true)) refuse(err, settled.error());
        std::this_thread::sleep_for(look_every);
    }
    return print("Ended. " + state_text(follow, arguments.zone), out, err);
}

int take_rest(Logbook& logbook, const Trace& trace, const std::string& path, const std::string& zone, std::ostream& out, std::ostream& err) {
    Result<LogFollow> begun = LogFollow::begin(logbook, trace, path, false);
    if (!begun) return refuse(err, begun.error());
    const Interrupts interrupts;
    const Result<FollowLook> seen = look_at_all(begun.value(), logbook);
    if (!seen) {
        (void)print(state_text(begun.value(), zone), out, err); // what was taken before stays
        return refuse(err, seen.error());
    }
    return print(fmt::format("The run has this log already; {} added{}\n",
                             count_text(static_cast<long>(seen.value().samples), "new sample", "new samples"),
                             left_out_text(seen.value().rows_left_out)) +
                     state_text(begun.value(), zone),
                 out, err);
}

} // namespace ullage
