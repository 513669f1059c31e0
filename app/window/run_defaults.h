// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/start_form.h"
#include "document/document.h"
#include "report/report_look.h"

namespace ullage {

class Settings;

/// The last run of each unit, from the logbook; the default meter, each unit's kind of run and each kind's reminders, from the settings. `unit_uuid`
/// stays empty.
[[nodiscard]] RunDefaults run_defaults(const Settings& settings, const Document& document);

/// Keeps kind and reminders of a run that was started.
void keep_run_defaults(Settings& settings, const RunStart& start);

/// The reminders that a new run of this kind begins with: as last used or set, else usual_rule().
[[nodiscard]] ReadingRule default_rule(const Settings& settings, RunKind kind);
void keep_default_rule(Settings& settings, RunKind kind, const ReadingRule& rule);

/// The meter of the open logbook that a new run begins with, from the settings: kept with the meter, so that copies of a logbook have it too.
[[nodiscard]] std::optional<MeterId> default_meter(const Settings& settings, const Document& document);
void keep_default_meter(Settings& settings, const Document& document, const std::optional<MeterId>& meter);

/// Who publishes: what the open logbook states; where it states nothing, name and licence as last set for any.
[[nodiscard]] Publisher publisher_of(const Settings& settings, const Document& document);
/// Keeps who publishes in the open logbook, and name and licence for others. Errors: as Document::setPublisher.
[[nodiscard]] Result<void> keep_publisher(Settings& settings, Document& document, const Publisher& publisher);

/// The paper of reports: as set, else that of the desktop's region.
[[nodiscard]] Paper chosen_paper(const Settings& settings);

} // namespace ullage
