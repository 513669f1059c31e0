// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sources/live_session.h"

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

namespace ullage {

struct WatchArguments {
    std::string logbook;
    std::string unit; ///< empty with `run` absent: every running run whose meter has a source
    std::optional<int> run;
    std::string kind; ///< empty: the source kept with the meter
    std::string address;
    std::vector<std::string> read; ///< fields, a line each
    std::optional<int> station;
    std::string line;
    std::optional<double> interval_s;
    bool tls = false;
    std::string user;
    bool keep = false;           ///< keeps a source that is stated here with the meter
    bool trial = false;          ///< shows what comes, records nothing
    bool until_off = false;      ///< ends when every output has been told to be off
    std::optional<double> for_s; ///< ends after so long
};
/// Reads live sources into running runs and says what it finds, until it is interrupted (SIGINT, SIGTERM). Returns an exit code. A password is asked
/// at the terminal, or taken from the variable ULLAGE_SOURCE_PASSWORD; it goes nowhere. Samples get their times by `clocks`.
[[nodiscard]] int watch_command(const WatchArguments& arguments, std::ostream& out, std::ostream& err,
                                const LiveClocks& clocks = LiveClocks::of_machine());

} // namespace ullage
