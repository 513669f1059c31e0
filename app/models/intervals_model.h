// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "run_analysis/run_analysis.h"

#include <QAbstractTableModel>
#include <QStringList>

#include <vector>

namespace ullage {

/// The interval table of one run: what happened between neighbouring readings of gauge and register. Parts that cannot be
/// formed are shown as a dash with the reason as tool tip.
class IntervalsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { SpanColumn, HoursColumn, PointsColumn, ImpliedColumn, DeliveredColumn, RatioColumn, MeanColumn, PerPointColumn, ColumnCount };
    enum Role { ReadingsRole = Qt::UserRole + 1 }; ///< std::vector<ReadingId>: the readings at both ends

    using QAbstractTableModel::QAbstractTableModel;

    void setRun(const RunRecord& record, const RunAnalysis& analysis);
    void clear();

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    struct Row {
        QString cells[ColumnCount];
        std::vector<ReadingId> readings;
    };
    std::vector<Row> rows_;
};

} // namespace ullage
