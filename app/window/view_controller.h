// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "window/controller.h"

#include <QPointer>

namespace ullage {

class HelpDialog;
class InstallationDialog;
enum class Theme;

/// How things look, pictures of what is in sight, and help.
class ViewController final : public Controller {
    Q_OBJECT
public:
    using Controller::Controller;

    void setTheme(Theme theme);
    void showCharts(bool shown);
    void largerText();
    void smallerText();
    void usualText();
    void copyShownPicture();
    void saveShownPicture();
    void showKeysAndWords();
    void showExample();
    void showMethod();
    void showCautions();
    void showAbout();
    void checkInstallation();
    /// The window of help, made when it is first asked for.
    [[nodiscard]] HelpDialog& help();

private:
    void setTextStep(int step);

    HelpDialog* help_ = nullptr;
    QPointer<InstallationDialog> installation_;
};

} // namespace ullage
