// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStringList>
#include <QWidget>

class QHBoxLayout;

namespace ullage {

class UnitComparer;

/// Names the logbooks whose units stand beside those of the open one, each with a button that leaves it out again. Hidden where there is none.
class OtherLogbooksLine final : public QWidget {
    Q_OBJECT
public:
    explicit OtherLogbooksLine(UnitComparer& comparer, QWidget* parent = nullptr);

signals:
    void removeAsked(const QString& path);

private:
    void showLogbooks();

    UnitComparer& comparer_;
    QHBoxLayout* line_;
    QWidget* names_ = nullptr;
};

} // namespace ullage
