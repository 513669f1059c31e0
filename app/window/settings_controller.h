// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

namespace ullage {

class SettingsDialog;
enum class Theme;

/// The one dialog of settings: fills it, shows the look at once, and keeps what was accepted.
class SettingsController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void showSettings();

signals:
    void changed(); ///< the look, or anything that stands in a menu too

private:
    void look(Theme theme, int text_step); ///< puts it on the program, where it is another
    void keep(SettingsDialog& dialog);
};

} // namespace ullage
