// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the check of the installation, a function each.
#pragma once

#include "services/installation_check.h"

namespace ullage {

void check_versions(QList<InstallationRow>& rows);
void check_text_and_pictures(QList<InstallationRow>& rows, const Settings& settings, const QString& paper);
void check_places(QList<InstallationRow>& rows, const Settings& settings, const QString& logbooks);
void check_desktop(QList<InstallationRow>& rows, const Settings& settings);

/// A path with ~ for the person's own folder.
[[nodiscard]] QString path_from_home(const QString& path);

} // namespace ullage
