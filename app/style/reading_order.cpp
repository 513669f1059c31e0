// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/reading_order.h"

#include <QAbstractSpinBox>
#include <QComboBox>
#include <QFormLayout>
#include <QGridLayout>
#include <QMainWindow>
#include <QScrollArea>
#include <QSet>
#include <QSplitter>
#include <QStackedWidget>
#include <QTabBar>
#include <QTabWidget>

#include <algorithm>
#include <utility>

namespace ullage {
namespace {

constexpr const char* keeps_order = "keepsTabOrder";

class TabWalk {
public:
    void into(QWidget* part) {
        if (!part || part->isHidden() || part->isWindow() || seen_.contains(part)) return;
        seen_ << part;
        if ((part->focusPolicy() & Qt::TabFocus) != 0 && !part->focusProxy()) order_ << part;
        inside(*part);
    }
    void inside(QWidget& part) {
        if (part.property(keeps_order).toBool()) return asGiven(part);
        if (qobject_cast<QComboBox*>(&part) || qobject_cast<QAbstractSpinBox*>(&part) || qobject_cast<QTabBar*>(&part)) return;
        if (auto* splitter = qobject_cast<QSplitter*>(&part)) {
            for (int n = 0; n < splitter->count(); ++n) into(splitter->widget(n));
        } else if (auto* tabs = qobject_cast<QTabWidget*>(&part)) {
            into(tabs->tabBar());
            into(tabs->currentWidget());
        } else if (auto* stack = qobject_cast<QStackedWidget*>(&part)) {
            into(stack->currentWidget());
        } else if (auto* area = qobject_cast<QScrollArea*>(&part)) {
            into(area->widget());
        } else if (auto* window = qobject_cast<QMainWindow*>(&part)) {
            into(window->centralWidget());
        } else if (part.layout()) {
            inside(*part.layout());
        }
        rest(part);
    }
    [[nodiscard]] const QList<QWidget*>& order() const { return order_; }

private:
    /// The items of a layout by row and column: grids and forms need not have been filled in that order.
    void inside(QLayout& layout) {
        QList<QLayoutItem*> items;
        for (int n = 0; n < layout.count(); ++n) items << layout.itemAt(n);
        if (auto* grid = qobject_cast<QGridLayout*>(&layout)) {
            const auto cell = [grid](const QLayoutItem* item) {
                int row = 0, column = 0, rows = 0, columns = 0;
                grid->getItemPosition(grid->indexOf(item), &row, &column, &rows, &columns);
                return std::pair(row, column);
            };
            std::ranges::stable_sort(items, {}, cell);
        } else if (auto* form = qobject_cast<QFormLayout*>(&layout)) {
            const auto cell = [form](QLayoutItem* item) {
                int row = 0;
                QFormLayout::ItemRole role = QFormLayout::LabelRole;
                form->getItemPosition(form->indexOf(item), &row, &role);
                return std::pair(row, role);
            };
            std::ranges::stable_sort(items, {}, cell);
        }
        for (QLayoutItem* item : items) {
            if (item->widget()) into(item->widget());
            else if (item->layout()) inside(*item->layout());
        }
    }
    /// What no layout holds, from top to bottom.
    void rest(QWidget& part) {
        QList<QWidget*> others;
        for (QObject* child : part.children())
            if (auto* widget = qobject_cast<QWidget*>(child); widget && !seen_.contains(widget)) others << widget;
        std::ranges::stable_sort(others, {}, [](const QWidget* widget) { return std::pair(widget->y(), widget->x()); });
        for (QWidget* widget : others) into(widget);
    }
    void asGiven(QWidget& part) {
        for (QWidget* next = part.nextInFocusChain(); next != &part; next = next->nextInFocusChain())
            if (part.isAncestorOf(next) && (next->focusPolicy() & Qt::TabFocus) != 0 && !next->focusProxy() && next->isVisible()) order_ << next;
    }

    QList<QWidget*> order_;
    QSet<QWidget*> seen_;
};

} // namespace

bool move_as_read(QWidget& window, bool next) {
    TabWalk walk;
    walk.inside(window);
    QList<QWidget*> order;
    for (QWidget* widget : walk.order())
        if (widget->isEnabled()) order << widget;
    const qsizetype at = order.indexOf(window.focusWidget());
    if (at < 0) return false;
    const qsizetype to = (at + (next ? 1 : order.size() - 1)) % order.size();
    order[to]->setFocus(next ? Qt::TabFocusReason : Qt::BacktabFocusReason);
    return true;
}

void keep_tab_order(QWidget& part) { part.setProperty(keeps_order, true); }

} // namespace ullage
