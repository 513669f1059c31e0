// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table_printed.h"

#include <QAbstractTableModel>
#include <QString>

#include <vector>

namespace ullage {

/// A table on the screen that is the very table which every export writes. Quantity cells carry the roles of
/// models/quantity_cell.h; heads have the unit on a second line.
class TableModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit TableModel(QObject* parent = nullptr);

    void setTable(Table table);
    [[nodiscard]] const Table& table() const { return table_; }
    /// Column of a key; -1 when there is none.
    [[nodiscard]] int columnOf(const std::string& key) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Table table_;
    std::vector<ShownColumn> shown_; ///< its columns as people read them
};

} // namespace ullage
