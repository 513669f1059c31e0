// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "document/document.h"
#include "models/readings_rows.h"

#include <QAbstractTableModel>

#include <map>
#include <vector>

namespace ullage {

/// The readings of one run with what was derived at each, under a row for each local day. Withdrawn readings are left out until they are asked for.
/// Follows the document: rows that stay keep their place, so that selection and scrolling survive a new reading.
class ReadingsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    using Column = ReadingsRow::Column;
    using Emphasis = ReadingsRow::Emphasis;
    enum Role {
        DayRole = Qt::UserRole + 1, ///< bool: the row heads a day
        UuidRole,                   ///< QString: the reading; empty in a day row
        EmphasisRole,               ///< int, an Emphasis
        DoubtfulRole,               ///< bool: a finding about this stretch of the gauge names the reading
        AmendedRole,                ///< bool: the reading was changed after it was entered
        PhotosRole,                 ///< int: how many photos the reading has; for the column of remarks, else 0
    };
    explicit ReadingsModel(Document& document, QObject* parent = nullptr);

    /// Shows another run; an unknown one shows nothing.
    void setRun(const RunId& runUuid);
    /// Withdrawn readings too, struck out in their places; at first not.
    void setWithdrawnShown(bool shown);
    [[nodiscard]] bool isWithdrawn(int row) const;

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

    /// Row of a reading, -1 when it is not shown.
    [[nodiscard]] int rowOf(const ReadingId& readingUuid) const;
    [[nodiscard]] bool isDay(int row) const { return rows_.isDay(static_cast<std::size_t>(row)); }
    /// The reading of a row; empty in a day row.
    [[nodiscard]] ReadingId uuidAt(int row) const;

private:
    void refresh();
    [[nodiscard]] ReadingsRows freshRows();
    [[nodiscard]] const ReadingsRow& rowAt(int row) const;
    void countPhotos();
    [[nodiscard]] QString history(const ReadingId& reading_uuid) const;

    Document& document_;
    RunId run_uuid_;
    std::string time_zone_;
    std::optional<double> expected_wh_; ///< of a running drain: what it should deliver from full to its cut-off
    bool withdrawn_shown_ = false;
    ReadingsRows rows_;
    mutable std::optional<std::size_t> put_together_; ///< the row that `row_` holds: a view asks for one cell after the other
    mutable ReadingsRow row_;
    std::map<ReadingId, int> photo_counts_;
};

} // namespace ullage
