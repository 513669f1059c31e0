// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QApplication;

namespace ullage {

class Settings;

/// Puts theme and text size of the settings on the application. The size counts from the desktop's own font, as it was
/// at the first call.
void apply_appearance(QApplication& application, const Settings& settings);

} // namespace ullage
