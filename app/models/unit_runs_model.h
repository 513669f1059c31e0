// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QAbstractTableModel>

#include <string>
#include <vector>

namespace ullage {

/// The runs of one unit with their key figures. Follows the document.
class UnitRunsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { RunColumn, EndColumn, DeliveredColumn, FractionColumn, LoadColumn, DurationColumn, GaugeColumn, ColumnCount };
    enum Role {
        UuidRole = Qt::UserRole + 1, ///< QString: the run
        OpenRole,                    ///< bool: still running
    };

    explicit UnitRunsModel(const Document& document, QObject* parent = nullptr);

    /// Shows another unit's runs; an unknown unit has none.
    void setUnit(const UnitId& unit_uuid);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    void rebuild();
    void runChanged(const RunId& run_uuid);

    const Document& document_;
    UnitId unit_uuid_;
    std::vector<RunId> runs_;
};

} // namespace ullage
