// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/logbook.h"

#include <functional>
#include <iosfwd>
#include <optional>
#include <string>

namespace ullage {

struct FollowArguments {
    std::string path;
    std::optional<double> quiet_s; ///< ends when the log has gained nothing for so long; absent: goes on until it is interrupted
    std::string zone;              ///< of the times that are said
};

/// Follows the log of a trace (see LogFollow) and says now and then how far it has got, until the log is quiet, the program is interrupted (SIGINT,
/// SIGTERM) or following cannot go on. Returns an exit code.
[[nodiscard]] int follow_trace(Logbook& logbook, const Trace& trace, const FollowArguments& arguments, std::ostream& out, std::ostream& err);

/// What stands of a log that was to be followed further: how far its samples are in the logbook.
[[nodiscard]] Message say_no_longer_followed(const Trace& trace, const std::string& zone);

/// Takes what a file has more than the trace that it continues, and ends. Returns an exit code.
[[nodiscard]] int take_rest(Logbook& logbook, const Trace& trace, const std::string& path, const std::string& zone, std::ostream& out,
                            std::ostream& err);

} // namespace ullage
