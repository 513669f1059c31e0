// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"

namespace ullage {

/// Asks the password of a source that has a user; it is handed on and kept nowhere.
class PasswordForm final : public FormDialog {
    Q_OBJECT
public:
    PasswordForm(const QString& user, const QString& address, QWidget* parent = nullptr);
    [[nodiscard]] QString password() const;

protected:
    void read() override {}

private:
    QLineEdit* password_;
};

} // namespace ullage
