// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFrame>

class QLabel;
class QProgressBar;
class QPushButton;

namespace ullage {

/// Says how far the comparison of many units is and lets it be stopped, or begun again. Hidden while there is nothing to say.
class ComparingBar final : public QFrame {
    Q_OBJECT
public:
    explicit ComparingBar(QWidget* parent = nullptr);

    void showProgress(int done, int of);
    /// Stopped with so many units to go.
    void showStopped(int waiting);

signals:
    void cancelAsked();
    void resumeAsked();

private:
    QLabel* words_;
    QProgressBar* progress_;
    QPushButton *cancel_, *resume_;
};

} // namespace ullage
