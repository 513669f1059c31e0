// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/late_tabs.h"

#include <QTabWidget>

#include <utility>

namespace ullage {

LateTabs::LateTabs(QTabWidget& tabs, QObject* parent) : QObject(parent), tabs_(tabs) {
    connect(&tabs_, &QTabWidget::currentChanged, this, &LateTabs::fillFront);
}

void LateTabs::add(QWidget& page, std::function<void()> fill) {
    fills_[&page] = std::move(fill);
    stale_.insert(&page);
}

void LateTabs::hold() { held_ = true; }

void LateTabs::refill() {
    held_ = false;
    for (const auto& [page, fill] : fills_) stale_.insert(page);
    fillFront();
}

void LateTabs::fillFront() {
    const QWidget* front = tabs_.currentWidget();
    if (!held_ && stale_.erase(front) > 0) fills_.at(front)();
}

} // namespace ullage
