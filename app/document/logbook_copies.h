// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/backup.h"

#include <QString>

namespace ullage {

/// Saves an automatic copy (store/backup.h), or any logbook, as a logbook of its own; the copy is only read. Any thread. Errors: those of
/// Logbook::open for looking and of Logbook::save_copy.
[[nodiscard]] Result<void> save_as_logbook(const QString& copy, const QString& target, const Clock& clock);

} // namespace ullage
