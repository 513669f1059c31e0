// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/start_form.h"
#include "document/document.h"

namespace ullage {

class Settings;

/// The last run of each unit, from the logbook; each unit's kind of run and each kind's reminders as last chosen, from the settings. `unit_uuid`
/// stays empty.
[[nodiscard]] RunDefaults run_defaults(const Settings& settings, const Document& document);

/// Keeps kind and reminders of a run that was started.
void keep_run_defaults(Settings& settings, const RunStart& start);

} // namespace ullage
