// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>
#include <QTabWidget>

namespace ullage::test {

/// The part of `page` of this name, with the tab that it stands in brought to the front, as a person does who wants to see it. Null where there is
/// none.
template <class Part>
Part* in_front(const QWidget& page, const QString& name) {
    auto* part = page.findChild<Part*>(name);
    if (!part) return nullptr;
    for (auto* tabs : page.findChildren<QTabWidget*>())
        for (int tab = 0; tab < tabs->count(); ++tab)
            if (tabs->widget(tab) == part || tabs->widget(tab)->isAncestorOf(part)) tabs->setCurrentIndex(tab);
    return part;
}

} // namespace ullage::test
