// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

class QLabel;

namespace ullage {

/// A line above the page that says that others took the open logbook's file away or changed it, and offers to save what is open under another
/// name. It stays until another logbook is open.
class DisplacedBar final : public QWidget {
    Q_OBJECT
public:
    explicit DisplacedBar(QWidget* parent = nullptr);

    void tell(const QString& sentence);
    void dismiss();

signals:
    void saveAsked();

private:
    QLabel* words_;
};

} // namespace ullage
