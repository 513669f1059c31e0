// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"

namespace ullage {

/// What leaving the program means while tests run: what stops, what remains, and which readings nobody will call for. Submitted, it is to be left.
class LeaveForm final : public FormDialog {
    Q_OBJECT
public:
    /// `tests`: a line for each running test, "Osk 1200, drain: next reading in 12 min". `logs_followed`: how many logs are followed now;
    /// `awake`: the machine is kept awake now.
    LeaveForm(const QStringList& tests, int logs_followed, bool awake, QWidget* parent = nullptr);

protected:
    void read() override {}
};

} // namespace ullage
