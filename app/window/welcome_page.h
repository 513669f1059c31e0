// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QLabel;
class QPushButton;
class QVBoxLayout;

namespace ullage {

/// What a newcomer sees: what the program does, its three steps, and the way to begin. With a logbook open that holds
/// no unit yet it offers the first step itself.
class WelcomePage final : public QWidget {
    Q_OBJECT
public:
    explicit WelcomePage(QWidget* parent = nullptr);

    void setLogbookOpen(bool open);
    void setRecentFiles(const QStringList& files);

signals:
    void newLogbookAsked();
    void openLogbookAsked();
    void sampleLogbookAsked();
    void recentFileAsked(const QString& path);
    void addUnitAsked();
    void addMeterAsked();
    void importAsked();

private:
    QWidget* makeSteps();
    QWidget* makeButtons();

    QLabel* lead_;
    QList<QPushButton*> without_logbook_, with_logbook_;
    QWidget* recent_;
    QVBoxLayout* recent_list_;
    bool open_ = false;
    bool any_recent_ = false;
};

} // namespace ullage
