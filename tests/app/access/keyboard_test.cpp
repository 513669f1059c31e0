// SPDX-License-Identifier: GPL-3.0-or-later
// Every control is reached by Tab alone, in the order in which it is read.
#include "places.h"

#include <QAbstractScrollArea>
#include <QRadioButton>
#include <QScrollArea>

namespace ullage::test {
namespace {

/// What Tab goes through from `first` until it comes back, in order.
QList<QWidget*> tabbed_through(QWidget& root) {
    QList<QWidget*> visited;
    root.activateWindow();
    QApplication::processEvents();
    if (!QApplication::focusWidget() || QApplication::focusWidget()->window() != &root) root.setFocus();
    constexpr int most = 400;
    for (int turn = 0; turn < most; ++turn) {
        QWidget* at = QApplication::focusWidget();
        if (!at) at = &root;
        QTest::keyClick(at, Qt::Key_Tab);
        QWidget* now = QApplication::focusWidget();
        if (!now || now->window() != &root || (!visited.isEmpty() && now == visited.first())) break;
        if (visited.contains(now)) break; // a circle that leaves some out
        visited << now;
    }
    return visited;
}

/// Whether Tab should come to it: of radio buttons that belong together it comes to the chosen one.
bool wants_tab(const QWidget& control) {
    if (!control.isEnabled() || control.focusProxy() || (control.focusPolicy() & Qt::TabFocus) == 0) return false;
    const auto* radio = qobject_cast<const QRadioButton*>(&control);
    return !radio || radio->isChecked();
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

TEST_F(AccessTest, tab_comes_to_every_control) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        (void)tabbed_through(root); // the first time rows get chosen, and buttons can then be used
        const auto visited = tabbed_through(root);
        for (const QWidget* control : controls_of(root)) {
            if (!wants_tab(*control)) continue;
            ++looked_at;
            if (!visited.contains(control))
                complain(place, QStringLiteral("%1 is not reached between %2 and %3")
                                    .arg(called(*control), visited.isEmpty() ? QString() : called(*visited.first()),
                                         visited.isEmpty() ? QString() : called(*visited.last())));
        }
    });
    expect_none(looked_at, 500);
}

TEST_F(AccessTest, what_tab_passes_by_has_a_key_of_its_own) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        for (QWidget* control : controls_of(root)) {
            const auto* button = qobject_cast<const QAbstractButton*>(control);
            if (!control->isEnabled() || (control->focusPolicy() & Qt::TabFocus) != 0) continue;
            if (!button && control->focusPolicy() == Qt::NoFocus) continue; // nothing to operate
            ++looked_at;
            if (control->objectName() == QStringLiteral("moreButton") && window->action(QStringLiteral("chooseMarkAction")))
                continue; // does the same
            if (!button || button->shortcut().isEmpty()) complain(place, called(*control) + QStringLiteral(" has no key"));
        }
    });
    expect_none(looked_at, 1);
}

TEST_F(AccessTest, tab_goes_on_as_one_reads) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        (void)tabbed_through(root);
        const auto visited = tabbed_through(root);
        looked_at += static_cast<int>(visited.size());
        QStringList back;
        for (qsizetype n = 0; n < visited.size(); ++n) {
            const QWidget &before = *visited[n], &next = *visited[(n + 1) % visited.size()];
            // What lies within something that scrolls comes after it.
            if (!before.isAncestorOf(&next) && !reads_on(place_of(before, next, root), place_of(next, before, root)))
                back << called(before) + QStringLiteral(" -> ") + called(next);
        }
        // Once it goes from the end to the beginning.
        if (back.size() > 1) complain(place, QStringLiteral("goes back from ") + back.join(QStringLiteral(" and from ")));
    });
    expect_none(looked_at, 500);
}

} // namespace ullage::test
