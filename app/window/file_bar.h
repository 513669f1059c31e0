// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage {

class WrappedLabel;

/// A line above the page that says why nothing is recorded into the open logbook, and offers what can be done: others took its file away or changed
/// it, or another program records into it. It stays until that is over, or another logbook is open.
class FileBar final : public QWidget {
    Q_OBJECT
public:
    explicit FileBar(QWidget* parent = nullptr);

    /// What is open can be saved under another name.
    void tellDisplaced(const QString& sentence);
    /// The logbook is open for looking; `record_offered`: it could be opened for recording.
    void tellLooking(const QString& sentence, bool record_offered);
    void dismiss();

signals:
    void saveAsked();
    void recordAsked();

private:
    void tell(const QString& chip, const QString& sentence, QPushButton* offered);

    QLabel* chip_;
    WrappedLabel* words_;
    QPushButton *save_, *record_;
};

} // namespace ullage
