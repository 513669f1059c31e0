// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/password_form.h"

#include <QLineEdit>

namespace ullage {

PasswordForm::PasswordForm(const QString& user, const QString& address, QWidget* parent) : FormDialog(tr("Password"), tr("Read live"), parent) {
    setObjectName(QStringLiteral("passwordForm"));
    addParagraph(QStringLiteral("passwordHelp"),
                 tr("The password of %1 at %2. It is kept nowhere.").arg(user.toHtmlEscaped(), address.toHtmlEscaped()));
    password_ = addLine(QStringLiteral("password"), tr("&Password"));
    password_->setEchoMode(QLineEdit::Password);
    password_->setFocus();
}

QString PasswordForm::password() const { return password_->text(); }

} // namespace ullage
