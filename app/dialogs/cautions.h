// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

namespace ullage {

/// What can hurt in this work, a sentence each. Shown where a run is started, while one is open, and in help.
[[nodiscard]] QStringList cautions();

/// The one line that stays in sight while a run is open.
[[nodiscard]] QString caution_line();

/// What results are not.
[[nodiscard]] QString specimen_line();

} // namespace ullage
