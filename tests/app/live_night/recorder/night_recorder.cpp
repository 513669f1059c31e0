// SPDX-License-Identifier: GPL-3.0-or-later
// `ullage watch LOGBOOK`, sixty times as fast: `ullage_night_recorder LOGBOOK BEGIN_MS STARTED_MS`. At STARTED_MS of the machine's monotonic clock
// the drain's own clock stood at BEGIN_MS.
#include "app/sources/drain_truth.h"
#include "cli/live/watch_command.h"

#include <QCoreApplication>

#include <ctime>
#include <iostream>
#include <string>

int main(int argc, char** argv) {
    using namespace ullage;
    if (argc != 4) return 2;
    const QCoreApplication application(argc, argv);
    const UtcMs begin_ms = std::stoll(argv[2]), started_ms = std::stoll(argv[3]);
    const auto drain_ms = [started_ms] {
        timespec now{};
        (void)clock_gettime(CLOCK_MONOTONIC, &now);
        const double real_ms = static_cast<double>(now.tv_sec) * 1000 + static_cast<double>(now.tv_nsec) / 1e6 - static_cast<double>(started_ms);
        return static_cast<std::int64_t>(test::DrainTruth::speed * real_ms);
    };
    WatchArguments arguments;
    arguments.logbook = argv[1];
    return watch_command(arguments, std::cout, std::cerr, {[=] { return begin_ms + drain_ms(); }, drain_ms});
}
