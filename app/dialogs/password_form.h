// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "dialogs/form_dialog.h"

class QCheckBox;

namespace ullage {

/// Asks the password of a source that has a user; it is handed on, and kept by the desktop where that is wished.
class PasswordForm final : public FormDialog {
    Q_OBJECT
public:
    /// `no_store`: why the desktop cannot keep it; empty where it can.
    PasswordForm(const QString& user, const QString& address, const QString& no_store, QWidget* parent = nullptr);
    [[nodiscard]] QString password() const;
    /// The desktop is to keep it.
    [[nodiscard]] bool keeps() const;

protected:
    void read() override {}

private:
    QLineEdit* password_;
    QCheckBox* keep_;
};

} // namespace ullage
