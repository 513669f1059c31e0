// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/prompts.h"

#include <QString>
#include <QStringList>

namespace ullage::test {

/// Answers as a test has told it to; an answer that was not given is "no file".
class FakePrompts final : public Prompts {
public:
    QStringList filesToOpen(QWidget*, const QString&, const QString&, const QString&, bool) override { return to_open; }
    QString folderToOpen(QWidget*, const QString&, const QString&) override { return folder; }
    QString fileToSave(QWidget*, const QString&, const QString& suggestion, const QString&, const QString&, bool) override {
        suggested = suggestion;
        return to_save;
    }

    QStringList to_open;
    QString to_save;
    QString folder;
    QString suggested;
};

} // namespace ullage::test
