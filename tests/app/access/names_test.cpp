// SPDX-License-Identifier: GPL-3.0-or-later
// What a screen reader says of every page, form and dialog.
#include "places.h"

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

TEST_F(AccessTest, every_control_has_a_name_and_a_role_that_tells_what_it_does) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        for (QWidget* control : controls_of(root)) {
            ++looked_at;
            auto* face = QAccessible::queryAccessibleInterface(control);
            if (!face) {
                complain(place, called(*control) + QStringLiteral(" is not in the tree"));
                continue;
            }
            const QString name = spoken_name(*control).trimmed();
            if (name.isEmpty()) complain(place, called(*control) + QStringLiteral(" has no name"));
            else if (is_for_developers(name) || name == control->objectName())
                complain(place, called(*control) + QStringLiteral(" is called ") + name);
            if (name.contains(QLatin1Char('<'))) complain(place, called(*control) + QStringLiteral(" has marks of text in its name: ") + name);
            const auto roles = fitting_roles(*control);
            const bool fits =
                roles.isEmpty() ? face->role() != QAccessible::Client && face->role() != QAccessible::NoRole : roles.contains(face->role());
            if (!fits) complain(place, called(*control) + QStringLiteral(" has the role ") + QString::number(face->role()));
        }
    });
    expect_none(looked_at, 1000);
}

TEST_F(AccessTest, every_area_that_scrolls_is_called_as_what_it_holds) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        for (auto* area : root.findChildren<QScrollArea*>()) {
            if (!area->isVisibleTo(&root) || area->window() != root.window()) continue;
            ++looked_at;
            const QString name = spoken_name(*area).trimmed();
            if (name.isEmpty()) complain(place, called(*area) + QStringLiteral(" has no name"));
            else if (is_for_developers(name) || name.contains(QLatin1Char('<')))
                complain(place, called(*area) + QStringLiteral(" is called ") + name);
        }
    });
    expect_none(looked_at, 40);
}

TEST_F(AccessTest, no_two_controls_of_a_page_or_form_are_called_alike) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        QHash<QString, QWidget*> known;
        for (QWidget* control : controls_of(root)) {
            auto* face = QAccessible::queryAccessibleInterface(control);
            if (!face) continue;
            ++looked_at;
            const QString key = QStringLiteral("%1, %2, %3").arg(face->role()).arg(spoken_name(*control), described_by(*control, root));
            if (known.contains(key)) complain(place, QStringLiteral("%1 is called as %2: %3").arg(called(*control), called(*known[key]), key));
            known.insert(key, control);
        }
    });
    expect_none(looked_at, 1000);
}

TEST_F(AccessTest, a_label_with_a_field_names_that_field) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        for (const auto* label : root.findChildren<QLabel*>()) {
            if (!label->isVisibleTo(&root) || !label->buddy()) continue;
            ++looked_at;
            const auto plain = [](QString text) {
                static const QRegularExpression marks(QStringLiteral("<[^>]*>|&"));
                return text.remove(marks).toLower().trimmed();
            };
            const QString words = plain(label->text()), name = plain(spoken_name(*label->buddy()));
            if (!name.contains(words)) complain(place, QStringLiteral("“%1” stands by a field called “%2”").arg(words, name));
        }
    });
    expect_none(looked_at, 60);
}

TEST_F(AccessTest, every_table_tells_its_rows_columns_and_heads) {
    int looked_at = 0;
    everywhere([&](QWidget& root, const QString& place) {
        for (auto* view : root.findChildren<QTableView*>()) {
            if (!view->isVisibleTo(&root) || !view->model() || view->model()->rowCount() == 0) continue;
            ++looked_at;
            auto* face = QAccessible::queryAccessibleInterface(view);
            auto* table = face ? face->tableInterface() : nullptr;
            if (!table) {
                complain(place, called(*view) + QStringLiteral(" is no table in the tree"));
                continue;
            }
            if (table->rowCount() != view->model()->rowCount() || table->columnCount() != view->model()->columnCount())
                complain(place, called(*view) + QStringLiteral(" has other rows or columns in the tree"));
            for (int column = 0; column < table->columnCount(); ++column)
                if (!view->isColumnHidden(column) && table->columnDescription(column).trimmed().isEmpty())
                    complain(place, QStringLiteral("%1: column %2 has no head").arg(called(*view)).arg(column + 1));
        }
    });
    expect_none(looked_at, 20);
}

} // namespace ullage::test
