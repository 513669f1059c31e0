// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "style/palette.h"

#include <QObject>

class QApplication;

namespace ullage {

/// What the user chose; `system` follows the desktop where it tells, and is light where it does not.
enum class Theme { system, light, dark };

/// Tells everything that paints itself that the palette in force has changed. Lives as long as the program.
class ThemeNotifier : public QObject {
    Q_OBJECT

public:
    /// The one notifier. Main thread only.
    static ThemeNotifier& instance();

signals:
    void themeChanged();

protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

private:
    ThemeNotifier() = default;
};

/// All of apply_theme() but its style sheet. A window that is built before the style sheet is there costs far less: Qt styles a part anew, with all
/// that is in it, each time that it gets a parent.
void prepare_theme(QApplication& application, Theme theme);

/// Puts the program's look (Fusion with our palette and style sheet) on `application` and announces it. May be called
/// again at any time, to switch the theme or after the application's font has changed.
void apply_theme(QApplication& application, Theme theme);

/// The theme last applied; `system` before any was.
[[nodiscard]] Theme current_theme();

/// The palette in force; light before a theme was applied.
[[nodiscard]] const Palette& current_palette();

/// Whether the desktop says that it is dark. False where it does not say.
[[nodiscard]] bool desktop_is_dark();

} // namespace ullage
