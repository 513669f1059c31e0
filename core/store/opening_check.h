// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage {

/// How a logbook was checked when it was opened.
struct OpeningCheck {
    bool full = false;  ///< from end to end: the file was not closed properly, comes from elsewhere, or was not seen for 30 days
    double seconds = 0; ///< that the full check took
};

} // namespace ullage
