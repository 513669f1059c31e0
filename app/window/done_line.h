// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace ullage {

/// The last thing that was done to the logbook, in a few words with a button that takes it back: "Recorded 88 %, 2033 Wh   Undo". It goes when the
/// step is undone, and when another logbook is opened.
class DoneLine final : public QWidget {
    Q_OBJECT
public:
    /// The document must outlive it.
    explicit DoneLine(Document& document, QWidget* parent = nullptr);

    [[nodiscard]] QString words() const; ///< empty when nothing is said

private:
    void say(const QString& words);
    void clear();

    Document& document_;
    QLabel* words_label_;
    QPushButton* undo_button_;
    int said_at_ = -1; ///< index of the undo stack after the step
};

} // namespace ullage
