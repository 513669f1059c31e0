// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "services/installation_check.h"

#include <QDialog>

#include <functional>

class QLabel;
class QTextBrowser;

namespace ullage {

/// What the check of the installation found, as a table that can be copied as text. Work goes on beside it.
class InstallationDialog final : public QDialog {
    Q_OBJECT
public:
    using Check = std::function<QList<InstallationRow>()>;
    /// `check` is done at once, and again when that is asked for.
    explicit InstallationDialog(Check check, QWidget* parent = nullptr);

private:
    void look();
    void showRows();

    Check check_;
    QList<InstallationRow> rows_;
    QLabel* sentence_;
    QTextBrowser* table_;
};

} // namespace ullage
