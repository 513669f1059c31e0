// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader says of every page, form and dialog.
#include "looks.h"

#include <QAbstractItemView>
#include <QAbstractSpinBox>
#include <QAccessible>
#include <QComboBox>
#include <QGraphicsView>
#include <QLabel>
#include <QPlainTextEdit>
#include <QProgressBar>
#include <QRegularExpression>
#include <QScrollArea>
#include <QTabBar>
#include <QTableView>
#include <QTextEdit>

namespace ullage::test {
namespace {

/// "nameEdit", "line_view": a name that is for developers.
bool is_for_developers(const QString& name) {
    static const QRegularExpression pattern(QStringLiteral("^([a-z]+([A-Z][a-z]*)+|[a-z]+(_[a-z]+)+|Q[A-Z][A-Za-z]+)$"));
    return pattern.match(name).hasMatch();
}

/// The roles that tell what a control does; empty for one of our own, whose role only has to say something.
QList<QAccessible::Role> fitting_roles(const QWidget& widget) {
    if (qobject_cast<const QLineEdit*>(&widget) || qobject_cast<const QPlainTextEdit*>(&widget) || qobject_cast<const QTextEdit*>(&widget))
        return {QAccessible::EditableText, QAccessible::StaticText}; // that which is only read is no field
    if (qobject_cast<const QComboBox*>(&widget)) return {QAccessible::ComboBox};
    if (qobject_cast<const QAbstractSpinBox*>(&widget)) return {QAccessible::SpinBox};
    if (qobject_cast<const QAbstractButton*>(&widget))
        return {QAccessible::Button,     QAccessible::CheckBox,       QAccessible::RadioButton,
                QAccessible::ButtonMenu, QAccessible::ButtonDropDown, QAccessible::Link};
    if (qobject_cast<const QAbstractItemView*>(&widget)) return {QAccessible::Table, QAccessible::Tree, QAccessible::List};
    if (qobject_cast<const QTabBar*>(&widget)) return {QAccessible::PageTabList};
    if (qobject_cast<const QProgressBar*>(&widget)) return {QAccessible::ProgressBar};
    if (qobject_cast<const QGraphicsView*>(&widget) || widget.inherits("ullage::VesselRow")) return {QAccessible::Chart};
    return {};
}

/// The nearest thing around `widget` that has a name of its own.
QString described_by(const QWidget& widget, const QWidget& root) {
    for (QWidget* above = widget.parentWidget(); above && above != &root; above = above->parentWidget())
        if (!above->accessibleName().isEmpty()) return above->accessibleName();
    return {};
}

} // namespace

void look_at_names_and_roles(Place& place, Complaints& complaints) {
    for (QWidget* control : controls_of(place.root)) {
        complaints.looked_at_one();
        auto* face = QAccessible::queryAccessibleInterface(control);
        if (!face) {
            complaints.add(place.name, called(*control) + QStringLiteral(" is not in the tree"));
            continue;
        }
        const QString name = spoken_name(*control).trimmed();
        if (name.isEmpty()) complaints.add(place.name, called(*control) + QStringLiteral(" has no name"));
        else if (is_for_developers(name) || name == control->objectName())
            complaints.add(place.name, called(*control) + QStringLiteral(" is called ") + name);
        if (name.contains(QLatin1Char('<'))) complaints.add(place.name, called(*control) + QStringLiteral(" has marks of text in its name: ") + name);
        const auto roles = fitting_roles(*control);
        const bool fits = roles.isEmpty() ? face->role() != QAccessible::Client && face->role() != QAccessible::NoRole : roles.contains(face->role());
        if (!fits) complaints.add(place.name, called(*control) + QStringLiteral(" has the role ") + QString::number(face->role()));
    }
}

void look_at_scrolling_areas(Place& place, Complaints& complaints) {
    for (auto* area : place.root.findChildren<QScrollArea*>()) {
        if (!area->isVisibleTo(&place.root) || area->window() != place.root.window()) continue;
        complaints.looked_at_one();
        const QString name = spoken_name(*area).trimmed();
        if (name.isEmpty()) complaints.add(place.name, called(*area) + QStringLiteral(" has no name"));
        else if (is_for_developers(name) || name.contains(QLatin1Char('<')))
            complaints.add(place.name, called(*area) + QStringLiteral(" is called ") + name);
    }
}

void look_for_one_name_twice(Place& place, Complaints& complaints) {
    QHash<QString, QWidget*> known;
    for (QWidget* control : controls_of(place.root)) {
        auto* face = QAccessible::queryAccessibleInterface(control);
        if (!face) continue;
        complaints.looked_at_one();
        const QString key = QStringLiteral("%1, %2, %3").arg(face->role()).arg(spoken_name(*control), described_by(*control, place.root));
        if (known.contains(key)) complaints.add(place.name, QStringLiteral("%1 is called as %2: %3").arg(called(*control), called(*known[key]), key));
        known.insert(key, control);
    }
}

void look_at_labels_of_fields(Place& place, Complaints& complaints) {
    for (const auto* label : place.root.findChildren<QLabel*>()) {
        if (!label->isVisibleTo(&place.root) || !label->buddy()) continue;
        complaints.looked_at_one();
        const auto plain = [](QString text) {
            static const QRegularExpression marks(QStringLiteral("<[^>]*>|&"));
            return text.remove(marks).toLower().trimmed();
        };
        const QString words = plain(label->text()), name = plain(spoken_name(*label->buddy()));
        if (!name.contains(words)) complaints.add(place.name, QStringLiteral("“%1” stands by a field called “%2”").arg(words, name));
    }
}

void look_at_tables(Place& place, Complaints& complaints) {
    for (auto* view : place.root.findChildren<QTableView*>()) {
        if (!view->isVisibleTo(&place.root) || !view->model() || view->model()->rowCount() == 0) continue;
        complaints.looked_at_one();
        auto* face = QAccessible::queryAccessibleInterface(view);
        auto* table = face ? face->tableInterface() : nullptr;
        if (!table) {
            complaints.add(place.name, called(*view) + QStringLiteral(" is no table in the tree"));
            continue;
        }
        if (table->rowCount() != view->model()->rowCount() || table->columnCount() != view->model()->columnCount())
            complaints.add(place.name, called(*view) + QStringLiteral(" has other rows or columns in the tree"));
        for (int column = 0; column < table->columnCount(); ++column)
            if (!view->isColumnHidden(column) && table->columnDescription(column).trimmed().isEmpty())
                complaints.add(place.name, QStringLiteral("%1: column %2 has no head").arg(called(*view)).arg(column + 1));
    }
}

} // namespace ullage::test
