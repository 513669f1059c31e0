// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QObject>

#include <functional>
#include <map>
#include <set>

class QTabWidget;
class QWidget;

namespace ullage {

/// Brings the pages of tabs up to date only when they come to the front: what nobody looks at costs nothing.
class LateTabs final : public QObject {
public:
    /// `tabs` must outlive this.
    LateTabs(QTabWidget& tabs, QObject* parent);

    /// `fill` brings `page`, which is or becomes one of the tabs, up to date.
    void add(QWidget& page, std::function<void()> fill);
    /// What they show is about to change: nothing is filled before refill().
    void hold();
    /// What they show has changed: fills the page in front now, each other one when it comes to the front.
    void refill();

private:
    void fillFront();

    QTabWidget& tabs_;
    std::map<const QWidget*, std::function<void()>> fills_;
    std::set<const QWidget*> stale_;
    bool held_ = false;
};

} // namespace ullage
