// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace ullage {

/// How a logbook that is open for looking stands to its file.
enum class CopyAge {
    present, ///< the file says the same
    waiting, ///< more is recorded, and will be in the file within seconds
    outdated ///< the file says something else, or has gone
};

} // namespace ullage
