// SPDX-License-Identifier: GPL-3.0-or-later
#include "style/spoken_areas.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QLabel>
#include <QScrollArea>
#include <QScrollBar>
#include <QTabWidget>

namespace ullage {
namespace {

/// As set_text_style() marks it.
bool is_heading(const QLabel& label) {
    const QString size = label.property("textSize").toString();
    return size == QLatin1String("title") || size == QLatin1String("group");
}

QString title_of_tab(const QWidget& page) {
    for (const QWidget* above = page.parentWidget(); above; above = above->parentWidget())
        if (const auto* tabs = qobject_cast<const QTabWidget*>(above)) {
            const int at = tabs->indexOf(&page);
            return at < 0 ? QString() : tabs->tabText(at).remove(QLatin1Char('&'));
        }
    return {};
}

QString first_heading(const QWidget& within) {
    for (const auto* label : within.findChildren<QLabel*>())
        if (!label->text().isEmpty() && label->isVisibleTo(&within) && is_heading(*label)) return label->text();
    return {};
}

class AreaFace final : public QAccessibleWidget {
public:
    explicit AreaFace(QScrollArea& area) : QAccessibleWidget(&area, QAccessible::Grouping) {}
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Name ? area_name(area()) : QAccessibleWidget::text(kind);
    }
    [[nodiscard]] int childCount() const override { return static_cast<int>(parts().size()); }
    [[nodiscard]] QAccessibleInterface* child(int n) const override {
        return n >= 0 && n < childCount() ? QAccessible::queryAccessibleInterface(parts()[n]) : nullptr;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* face) const override {
        for (int n = 0; n < childCount(); ++n)
            if (child(n) == face) return n;
        return -1;
    }

private:
    [[nodiscard]] QScrollArea& area() const { return *static_cast<QScrollArea*>(widget()); }
    /// The viewport and those bars that are in use.
    [[nodiscard]] QList<QWidget*> parts() const {
        QList<QWidget*> found{area().viewport()};
        for (QScrollBar* bar : {area().horizontalScrollBar(), area().verticalScrollBar()})
            if (bar->isVisible()) found << bar->parentWidget();
        return found;
    }
};

QAccessibleInterface* face_of_area(const QString&, QObject* object) {
    auto* area = qobject_cast<QScrollArea*>(object);
    return area ? new AreaFace(*area) : nullptr;
}

} // namespace

QString area_name(const QScrollArea& area) {
    if (!area.accessibleName().isEmpty()) return area.accessibleName();
    if (area.widget() && !area.widget()->accessibleName().isEmpty()) return area.widget()->accessibleName();
    if (const QString title = title_of_tab(area); !title.isEmpty()) return title;
    for (const QWidget* around = &area; around; around = around->parentWidget()) {
        if (!around->accessibleName().isEmpty()) return around->accessibleName();
        if (const QString heading = first_heading(*around); !heading.isEmpty()) return heading;
    }
    return area.window()->windowTitle();
}

void speak_scroll_areas() {
    static const bool once = (QAccessible::installFactory(face_of_area), true);
    Q_UNUSED(once);
}

} // namespace ullage
