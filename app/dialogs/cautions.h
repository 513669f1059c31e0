// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "model/run.h"

#include <QString>
#include <QStringList>

namespace ullage {

/// What can hurt in this work, a sentence each. Shown where a run is started, while one is open, and in help.
[[nodiscard]] QStringList cautions();

/// The cautions of one kind of run: first what is special to it, then the general ones that apply.
[[nodiscard]] QStringList cautions(RunKind kind);

/// The one line that stays in sight while a run is open.
[[nodiscard]] QString caution_line();

/// What results are not.
[[nodiscard]] QString specimen_line();

} // namespace ullage
