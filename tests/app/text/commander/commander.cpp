// SPDX-License-Identifier: GPL-3.0-or-later
// Commands on a disk that fails, for the tests to watch.
//   ullage_commander FAULT N run COMMAND ARGUMENT…           a command of the program
//   ullage_commander FAULT N follow LOGBOOK RUN LOG          follows a log that gains rows; after each look prints "kept" and the samples in the
//   trace
// FAULT: "killed" (SIGKILL in the N-th action on the disk, opening included), "full" (the disk is full from then on) or "none". Every line is written
// at once, so that what a person would have seen is known.
#include "base/clock.h"
#include "cli/text/commands.h"
#include "core/store/faulty_disk.h"
#include "trace/log_follow.h"
#include "trace/trace_import.h"

#include <fmt/format.h>

#include <fstream>
#include <iostream>
#include <optional>
#include <string>
#include <unistd.h>
#include <vector>

namespace {

using namespace ullage;

constexpr int looks = 6, rows_a_look = 25;
constexpr UtcMs first_ms = 1'810'310'400'000, step_ms = 10'000;

void say(const std::string& line) { std::cout << line << '\n' << std::flush; }

int problem(const Error& error) {
    say(error.sentence());
    return exit_bad_input;
}

void add_rows(const std::string& path, int& rows) {
    std::ofstream log(path, std::ios::app);
    for (int i = 0; i < rows_a_look; ++i, ++rows) log << format_iso8601(first_ms + rows * step_ms, "UTC") << ',' << rows << ",60\n";
}

int follow(test::FaultyDisk& disk, const std::string& path, const std::string& run, const std::string& log) {
    const SystemClock clock;
    int rows = 0;
    std::ofstream(log) << "time,Wh,W\n";
    add_rows(log, rows);
    Result<Logbook> logbook = Logbook::open(path, OpenMode::record, clock);
    if (!logbook) return problem(logbook.error());
    const TraceReadOptions options;
    const Result<TracePreview> preview = preview_trace(log, {}, {}, options);
    if (!preview) return problem(preview.error());
    const Result<ImportedTrace> imported = import_trace(logbook.value(), log, RunId(run), std::nullopt, preview.value().detection, options);
    if (!imported) return problem(imported.error());
    say(fmt::format("kept {}", imported.value().trace.samples));
    Result<LogFollow> following = LogFollow::begin(logbook.value(), imported.value().trace, log, true);
    if (!following) return problem(following.error());
    disk.begin_step("look");
    for (int look = 0; look < looks; ++look) {
        add_rows(log, rows);
        for (bool more = true; more;) {
            const Result<FollowLook> seen = following.value().look(logbook.value());
            if (!seen) return problem(seen.error());
            more = seen.value().more;
        }
        say(fmt::format("kept {}", following.value().trace().samples));
    }
    return exit_good;
}

} // namespace

int main(int count, char** words) {
    if (count < 5) return exit_usage;
    const std::string fault = words[1], task = words[3];
    test::FaultyDisk disk;
    disk.set_fault(fault, std::stol(words[2]));
    std::cout << std::unitbuf;
    disk.begin_step("import");
    const int code = task == "run" ? run_command(std::vector<std::string>(words + 4, words + count), text_commands(), std::cout, std::cout)
                     : task == "follow" && count > 6 ? follow(disk, words[4], words[5], words[6])
                                                     : exit_usage;
    disk.say_end(code);
    return code;
}
