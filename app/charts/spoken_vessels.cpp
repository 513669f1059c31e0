// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/spoken_vessels.h"

#include "charts/spoken_chart.h"
#include "charts/vessel_row.h"
#include "style/clauses.h"

#include <QAccessible>
#include <QAccessibleWidget>
#include <QHash>
#include <QPointer>

namespace ullage {
namespace {

int columns_of(const VesselRow& row) { return static_cast<int>(row.content().columns.size()); }

/// One vessel, which is no widget.
class VesselFace final : public QAccessibleInterface, public QAccessibleActionInterface {
public:
    VesselFace(VesselRow& row, int column) : row_(&row), column_(column) {}

    [[nodiscard]] bool isValid() const override { return row_ && column_ < columns_of(*row_); }
    [[nodiscard]] QObject* object() const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* parent() const override { return row_ ? QAccessible::queryAccessibleInterface(row_) : nullptr; }
    [[nodiscard]] QAccessibleInterface* child(int) const override { return nullptr; }
    [[nodiscard]] QAccessibleInterface* childAt(int, int) const override { return nullptr; }
    [[nodiscard]] int childCount() const override { return 0; }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface*) const override { return -1; }
    [[nodiscard]] QAccessible::Role role() const override { return QAccessible::ListItem; }
    [[nodiscard]] QRect rect() const override {
        if (!isValid()) return {};
        const QRect place = row_->columnPlace(column_).toAlignedRect();
        return {row_->mapToGlobal(place.topLeft()), place.size()};
    }
    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        if (!isValid()) return {};
        const VesselColumn& column = row_->content().columns[static_cast<std::size_t>(column_)];
        if (kind == QAccessible::Name) return column.name;
        return kind == QAccessible::Description ? joined_clauses(vessel_facts(column)) : QString();
    }
    void setText(QAccessible::Text, const QString&) override {}
    [[nodiscard]] QAccessible::State state() const override {
        QAccessible::State state;
        if (!isValid()) {
            state.invalid = 1;
            return state;
        }
        state.focusable = state.selectable = 1;
        state.selected = row_->current() == column_;
        state.focused = state.selected && row_->hasFocus();
        state.invisible = !row_->isVisible();
        return state;
    }
    [[nodiscard]] void* interface_cast(QAccessible::InterfaceType type) override {
        return type == QAccessible::ActionInterface ? static_cast<QAccessibleActionInterface*>(this) : nullptr;
    }
    [[nodiscard]] QStringList actionNames() const override { return {pressAction()}; }
    void doAction(const QString& name) override {
        if (isValid() && name == pressAction()) row_->choose(column_);
    }
    [[nodiscard]] QStringList keyBindingsForAction(const QString&) const override { return {}; }

private:
    QPointer<VesselRow> row_;
    int column_;
};

class VesselRowFace final : public QAccessibleWidget {
public:
    explicit VesselRowFace(VesselRow& row) : QAccessibleWidget(&row, QAccessible::Chart) {}
    ~VesselRowFace() override {
        for (const QAccessible::Id id : vessels_) QAccessible::deleteAccessibleInterface(id);
    }
    VesselRowFace(const VesselRowFace&) = delete;
    VesselRowFace& operator=(const VesselRowFace&) = delete;

    [[nodiscard]] QString text(QAccessible::Text kind) const override {
        return kind == QAccessible::Description ? spoken_figures(row().content()) : QAccessibleWidget::text(kind);
    }
    [[nodiscard]] int childCount() const override { return columns_of(row()); }
    [[nodiscard]] QAccessibleInterface* child(int column) const override {
        if (column < 0 || column >= childCount()) return nullptr;
        const auto known = vessels_.constFind(column);
        if (known != vessels_.constEnd()) return QAccessible::accessibleInterface(*known);
        auto* face = new VesselFace(row(), column);
        vessels_.insert(column, QAccessible::registerAccessibleInterface(face));
        return face;
    }
    [[nodiscard]] int indexOfChild(const QAccessibleInterface* face) const override {
        for (int column = 0; column < childCount(); ++column)
            if (child(column) == face) return column;
        return -1;
    }
    [[nodiscard]] QAccessibleInterface* childAt(int x, int y) const override {
        for (int column = 0; column < childCount(); ++column)
            if (child(column)->rect().contains(x, y)) return child(column);
        return nullptr;
    }
    [[nodiscard]] QAccessibleInterface* focusChild() const override { return row().hasFocus() ? child(row().current()) : nullptr; }

private:
    [[nodiscard]] VesselRow& row() const { return *static_cast<VesselRow*>(widget()); }

    mutable QHash<int, QAccessible::Id> vessels_; ///< by their columns; Qt asks a constant face for its parts
};

} // namespace

QAccessibleInterface* face_of_vessels(VesselRow& row) { return new VesselRowFace(row); }

void speak_vessel(VesselRow& row) {
    if (!row.hasFocus() || row.current() < 0) return;
    QAccessibleEvent focus(&row, QAccessible::Focus);
    focus.setChild(row.current());
    QAccessible::updateAccessibility(&focus);
}

} // namespace ullage
