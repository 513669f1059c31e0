// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/budget_model.h"

#include "base/number.h"
#include "style/words.h"

#include <utility>

namespace ullage {

namespace {

bool is_number(int column) { return column == BudgetModel::StandardColumn || column == BudgetModel::ShareColumn; }

} // namespace

void BudgetModel::setBudget(Budget budget) {
    beginResetModel();
    budget_ = std::move(budget);
    endResetModel();
}

int BudgetModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(budget_.lines.size()); }

int BudgetModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant BudgetModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const BudgetLine& line = budget_.lines[static_cast<std::size_t>(index.row())];
    if (role == ShareRole) return line.share;
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::AlignVCenter | (is_number(index.column()) ? Qt::AlignRight : Qt::AlignLeft));
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
    case SourceColumn: return tr("%1\n%2").arg(text_of(line.source), text_of(say_sensitivity(line)));
    case ShapeColumn:
        return tr("%1\ntype %2, %3").arg(text_of(say_shape(line)), text_of(line.evaluation), text_of(say_freedom(line.degrees_of_freedom)));
    case CorrelationColumn: return text_of(say_correlation(line));
    case StandardColumn: return text_of(say_number(line.standard_wh, 2));
    case ShareColumn: return text_of(say_number(100 * line.share, 1));
    default: return {};
    }
}

QVariant BudgetModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) return {};
    static const char* const titles[ColumnCount] = {QT_TR_NOOP("source\nsensitivity"), QT_TR_NOOP("shape\ntype, freedom"), QT_TR_NOOP("correlation"),
                                                    QT_TR_NOOP("standard\nWh"), QT_TR_NOOP("share\n%")};
    if (role == Qt::DisplayRole) return tr(titles[section]);
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::AlignVCenter | (is_number(section) ? Qt::AlignRight : Qt::AlignLeft));
    return {};
}

} // namespace ullage
