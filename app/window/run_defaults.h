// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/start_form.h"
#include "document/document.h"

namespace ullage {

class Settings;

/// The choices of last time, from the settings: meter, load, zone, each unit's kind of run, each kind's reminders. A meter that is no longer in
/// the logbook is left out; `unit_uuid` stays empty.
[[nodiscard]] RunDefaults run_defaults(const Settings& settings, const Document& document);

/// Keeps the choices of a run that was started. The load of a no-load drain is not kept.
void keep_run_defaults(Settings& settings, const RunStart& start);

} // namespace ullage
