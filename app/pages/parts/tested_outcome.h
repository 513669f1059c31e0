// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace ullage {

/// What a run tests and what came of it, in words.
struct TestedOutcome {
    QString what;     ///< "usable fraction, measured", "sustained output"
    QString outcome;  ///< in large figures
    QString sentence; ///< the reason below; may be empty
    QString details;  ///< more for a tool tip; may be empty
};

} // namespace ullage
