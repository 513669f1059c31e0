// SPDX-License-Identifier: GPL-3.0-or-later
// The cautions of core/formats/text/safety_words.h in the language of the person at the screen.
#pragma once

#include "model/run.h"

#include <QString>
#include <QStringList>

namespace ullage {

/// What can hurt in this work, a sentence each. Shown in help.
[[nodiscard]] QStringList cautions();

/// The cautions of one kind of run, shown where it is started: first what is special to it, then the general ones that apply.
[[nodiscard]] QStringList cautions(RunKind kind);

/// The one line that stays in sight while a run is open.
[[nodiscard]] QString caution_line();

/// What results are not: as a sentence, and as the line that stays in sight.
[[nodiscard]] QString specimen_sentence();
[[nodiscard]] QString specimen_line();

} // namespace ullage
