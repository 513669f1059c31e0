// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"

#include <QAbstractTableModel>

#include <string>

namespace ullage {

/// The meters of the logbook with what their data sheets state. Follows the document.
class MetersModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    enum Column { NameColumn, StepColumn, LimitColumn, SpanColumn, CorrectionColumn, RunsColumn, RemarkColumn, ColumnCount };
    enum Role { UuidRole = Qt::UserRole + 1 }; ///< QString

    explicit MetersModel(const Document& document, QObject* parent = nullptr);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    /// Row of a meter, -1 when it is not there.
    [[nodiscard]] int rowOf(const MeterId& uuid) const;

private:
    void rebuild();

    const Document& document_;
    int rows_ = 0; ///< as announced, which the document may be ahead of while it changes
};

} // namespace ullage
