// SPDX-License-Identifier: GPL-3.0-or-later
// Every control is reached by Tab alone, in the order in which it is read.
#include "looks.h"

#include <QAbstractScrollArea>
#include <QAction>
#include <QButtonGroup>
#include <QRadioButton>
#include <QScrollArea>

#include <algorithm>

namespace ullage::test {
namespace {

/// Whether Tab should come to it: of radio buttons that belong together it comes to the chosen one.
bool wants_tab(const QWidget& control) {
    if (!control.isEnabled() || control.focusProxy() || (control.focusPolicy() & Qt::TabFocus) == 0) return false;
    const auto* radio = qobject_cast<const QRadioButton*>(&control);
    return !radio || radio->isChecked();
}

/// Once one of several choices has been come to, Tab passes by the others.
bool an_arrow_leads_to(const QAbstractButton& choice) {
    if (!choice.group() || !choice.group()->exclusive()) return false;
    const QList<QAbstractButton*> choices = choice.group()->buttons();
    return std::ranges::any_of(choices, [](const QAbstractButton* each) { return (each->focusPolicy() & Qt::TabFocus) != 0; });
}

/// Where `widget` stands; what scrolls stands where its frame does, so that it can be held against what is outside.
QRect place_of(const QWidget& widget, const QWidget& other, const QWidget& root) {
    const QWidget* standing = &widget;
    for (const QWidget* above = widget.parentWidget(); above && above != &root; above = above->parentWidget())
        if (qobject_cast<const QAbstractScrollArea*>(above) && !above->isAncestorOf(&other)) standing = above;
    return {standing->mapTo(&root, QPoint(0, 0)), standing->size()};
}

/// Whether somebody who reads in rows, or column by column, comes to `next` after `before`.
bool reads_on(const QRect& before, const QRect& next) {
    const int overlap = qMin(before.bottom(), next.bottom()) - qMax(before.top(), next.top());
    const bool one_row = overlap > qMin(before.height(), next.height()) / 2;
    if (one_row) return next.left() >= before.left();
    return next.top() >= before.top() || next.left() >= before.right();
}

} // namespace

void look_at_what_tab_comes_to(Place& place, Complaints& complaints) {
    const auto& visited = place.tabbed_through();
    for (const QWidget* control : controls_of(place.root)) {
        if (!wants_tab(*control)) continue;
        complaints.looked_at_one();
        if (!visited.contains(control))
            complaints.add(place.name, QStringLiteral("%1 is not reached between %2 and %3")
                                           .arg(called(*control), visited.isEmpty() ? QString() : called(*visited.first()),
                                                visited.isEmpty() ? QString() : called(*visited.last())));
    }
}

void look_at_what_tab_passes_by(Place& place, Complaints& complaints) {
    for (QWidget* control : controls_of(place.root)) {
        const auto* button = qobject_cast<const QAbstractButton*>(control);
        if (!control->isEnabled() || (control->focusPolicy() & Qt::TabFocus) != 0) continue;
        if (!button && control->focusPolicy() == Qt::NoFocus) continue; // nothing to operate
        if (button && an_arrow_leads_to(*button)) continue;
        complaints.looked_at_one();
        if (control->objectName() == QStringLiteral("moreButton") && place.root.findChild<QAction*>(QStringLiteral("chooseMarkAction")))
            continue; // does the same
        if (!button || button->shortcut().isEmpty()) complaints.add(place.name, called(*control) + QStringLiteral(" has no key"));
    }
}

void look_at_order_of_tab(Place& place, Complaints& complaints) {
    const auto& visited = place.tabbed_through();
    QStringList back;
    for (qsizetype n = 0; n < visited.size(); ++n) {
        complaints.looked_at_one();
        const QWidget &before = *visited[n], &next = *visited[(n + 1) % visited.size()];
        // What lies within something that scrolls comes after it.
        if (!before.isAncestorOf(&next) && !reads_on(place_of(before, next, place.root), place_of(next, before, place.root)))
            back << called(before) + QStringLiteral(" -> ") + called(next);
    }
    // Once it goes from the end to the beginning.
    if (back.size() > 1) complaints.add(place.name, QStringLiteral("goes back from ") + back.join(QStringLiteral(" and from ")));
}

} // namespace ullage::test
