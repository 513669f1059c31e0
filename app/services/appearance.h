// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QApplication;

namespace ullage {

class Settings;

/// Text size, colours and style of the settings, for building the first window with; apply_appearance() completes it.
void prepare_appearance(QApplication& application, const Settings& settings);

/// Puts theme and text size of the settings on the application. The size counts from the desktop's own font, as it was
/// at the first call.
void apply_appearance(QApplication& application, const Settings& settings);

} // namespace ullage
