// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/pairs_model.h"

#include "style/numbers.h"
#include "style/words.h"

#include <QFont>

#include <algorithm>

namespace ullage {

namespace {

Quantity turned(Quantity difference) {
    if (difference.value) difference.value = -*difference.value;
    std::swap(difference.lower, difference.upper);
    if (difference.lower) difference.lower = -*difference.lower;
    if (difference.upper) difference.upper = -*difference.upper;
    return difference;
}

} // namespace

PairsModel::PairsModel(QObject* parent) : QAbstractTableModel(parent) {}

void PairsModel::setPairs(const std::vector<std::string>& names, const std::vector<PairVerdict>& pairs) {
    beginResetModel();
    names_.clear();
    pairs_.clear();
    for (const std::string& name : names) names_.push_back(text_of(name));
    auto pair = pairs.begin();
    for (int first = 0; first < static_cast<int>(names.size()); ++first)
        for (int second = first + 1; second < static_cast<int>(names.size()) && pair != pairs.end(); ++second)
            pairs_.emplace(std::pair(first, second), *pair++);
    endResetModel();
}

int PairsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(names_.size()); }
int PairsModel::columnCount(const QModelIndex& parent) const { return rowCount(parent); }

QVariant PairsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto found = pairs_.find(std::minmax(index.row(), index.column()));
    if (found == pairs_.end()) return role == Qt::TextAlignmentRole ? QVariant(int(Qt::AlignCenter)) : QVariant();
    const PairVerdict& pair = found->second;
    switch (role) {
    case Qt::DisplayRole: {
        if (!pair.difference.value) return tr("not comparable:\n%1").arg(text_of(pair.difference.reason));
        const Quantity own = index.row() < index.column() ? pair.difference : turned(pair.difference);
        const bool less = *own.value < 0;
        const QString size = shown_quantity(less ? turned(own) : own, 3).plain();
        return (less ? tr("%1 less") : tr("%1 more")).arg(size) + QLatin1Char('\n') + text_of(say_pair_verdict(pair));
    }
    case Qt::ToolTipRole: return text_of(pair.sentence);
    case Qt::TextAlignmentRole: return int(Qt::AlignCenter);
    case Qt::FontRole: {
        QFont font;
        font.setBold(pair.resolved);
        return font;
    }
    default: return {};
    }
}

QVariant PairsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (section < 0 || section >= rowCount()) return {};
    const QString& name = names_[static_cast<std::size_t>(section)];
    if (role == Qt::DisplayRole) return orientation == Qt::Horizontal ? tr("than %1").arg(name) : name;
    return {};
}

} // namespace ullage
