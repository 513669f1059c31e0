// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "measure/budget.h"

#include <QAbstractTableModel>

namespace ullage {

/// The uncertainty budget of a delivered energy, one row a source with its share of the combined variance. Below the source stands its sensitivity,
/// below the shape its type and degrees of freedom.
class BudgetModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { SourceColumn, ShapeColumn, CorrelationColumn, StandardColumn, ShareColumn, ColumnCount };
    enum Role { ShareRole = Qt::UserRole + 1 }; ///< double: the share, 0 to 1

    using QAbstractTableModel::QAbstractTableModel;

    void setBudget(Budget budget);
    [[nodiscard]] const Budget& budget() const { return budget_; }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    Budget budget_;
};

} // namespace ullage
