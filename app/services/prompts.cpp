// SPDX-License-Identifier: GPL-3.0-or-later
#include "services/prompts.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QWidget>

namespace ullage {

QStringList DialogPrompts::filesToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter, bool several) {
    if (several) return QFileDialog::getOpenFileNames(parent, title, folder, filter);
    const auto file = QFileDialog::getOpenFileName(parent, title, folder, filter);
    return file.isEmpty() ? QStringList() : QStringList{file};
}

QString DialogPrompts::folderToOpen(QWidget* parent, const QString& title, const QString& folder) {
    return QFileDialog::getExistingDirectory(parent, title, folder);
}

QString DialogPrompts::fileToSave(QWidget* parent, const QString& title, const QString& suggested, const QString& filter, const QString& suffix,
                                  bool may_replace) {
    QFileDialog dialog(parent, title, QString(), filter);
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setFileMode(QFileDialog::AnyFile);
    dialog.setDefaultSuffix(suffix);
    dialog.setOption(QFileDialog::DontConfirmOverwrite, !may_replace);
    const QFileInfo file(suggested);
    if (file.isAbsolute()) dialog.setDirectory(file.absolutePath());
    dialog.selectFile(file.fileName());
    const bool chosen = dialog.exec() == QDialog::Accepted && !dialog.selectedFiles().isEmpty();
    if (parent != nullptr) parent->activateWindow(); // without a window manager the keyboard does not come back by itself
    return chosen ? dialog.selectedFiles().constFirst() : QString();
}

} // namespace ullage
