// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "comparison/fair_comparison.h"

#include <QAbstractTableModel>

#include <map>
#include <string>
#include <utility>
#include <vector>

namespace ullage {

/// Units against units: in each cell how much more or less the unit of the row has than that of the column, and whether they are clearly
/// different. The words say it; bold only helps.
class PairsModel final : public QAbstractTableModel {
    Q_OBJECT
public:
    explicit PairsModel(QObject* parent = nullptr);

    /// Every pair of the rows with these names, in the order of compare_pairs().
    void setPairs(const std::vector<std::string>& names, const std::vector<PairVerdict>& pairs);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role = Qt::DisplayRole) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;

private:
    std::vector<QString> names_;
    std::map<std::pair<int, int>, PairVerdict> pairs_; ///< first < second
};

} // namespace ullage
