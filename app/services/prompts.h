// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QStringList>

class QWidget;

namespace ullage {

/// Asks the person at the screen for files. Injected, so that tests answer without dialogs.
class Prompts {
public:
    virtual ~Prompts() = default;

    /// Files to read, in the order shown; empty when the person thinks better of it. `filter` as QFileDialog takes it.
    virtual QStringList filesToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter, bool several) = 0;
    /// A folder to read; empty when the person thinks better of it.
    virtual QString folderToOpen(QWidget* parent, const QString& title, const QString& folder) = 0;
    /// A file to write; empty when the person thinks better of it. `suggested` is a path or a bare name. Whether a file
    /// of that name may be replaced is asked only with `may_replace`; otherwise the writer refuses it in its own words.
    virtual QString fileToSave(QWidget* parent, const QString& title, const QString& suggested, const QString& filter, const QString& suffix,
                               bool may_replace) = 0;
};

/// Asks by dialog.
class DialogPrompts final : public Prompts {
public:
    QStringList filesToOpen(QWidget* parent, const QString& title, const QString& folder, const QString& filter, bool several) override;
    QString folderToOpen(QWidget* parent, const QString& title, const QString& folder) override;
    QString fileToSave(QWidget* parent, const QString& title, const QString& suggested, const QString& filter, const QString& suffix,
                       bool may_replace) override;
};

} // namespace ullage
