// SPDX-License-Identifier: GPL-3.0-or-later
#include "dialogs/password_form.h"

#include <QCheckBox>
#include <QLineEdit>

namespace ullage {

PasswordForm::PasswordForm(const QString& user, const QString& address, const QString& no_store, QWidget* parent)
    : FormDialog(tr("Password"), tr("Read live"), parent), keep_(new QCheckBox(tr("&Keep in the desktop's secret store"))) {
    setObjectName(QStringLiteral("passwordForm"));
    const QString whose = tr("The password of %1 at %2. The logbook never holds it.").arg(user.toHtmlEscaped(), address.toHtmlEscaped());
    addParagraph(QStringLiteral("passwordHelp"),
                 no_store.isEmpty() ? whose : whose + QLatin1Char(' ') + tr("It is asked for each time: %1.").arg(no_store.toHtmlEscaped()));
    password_ = addLine(QStringLiteral("password"), tr("&Password"));
    password_->setEchoMode(QLineEdit::Password);
    addField(QStringLiteral("keepPassword"), QString(), keep_);
    keep_->setObjectName(QStringLiteral("keepPasswordCheck"));
    setLineShown(keep_, no_store.isEmpty());
    password_->setFocus();
}

QString PasswordForm::password() const { return password_->text(); }

bool PasswordForm::keeps() const { return keep_->isChecked(); }

} // namespace ullage
