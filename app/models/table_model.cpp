// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/table_model.h"

#include "models/quantity_cell.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

constexpr qsizetype head_line_length = 8;

/// A long title on two lines, broken where both come out shortest, so that columns are as wide as their numbers.
QString in_short_lines(const QString& title) {
    if (title.size() <= head_line_length) return title;
    qsizetype best = -1;
    for (qsizetype i = title.indexOf(QLatin1Char(' ')); i >= 0; i = title.indexOf(QLatin1Char(' '), i + 1))
        if (best < 0 || std::max(i, title.size() - i) < std::max(best, title.size() - best)) best = i;
    return best < 0 ? title : title.left(best) + QLatin1Char('\n') + title.mid(best + 1);
}

} // namespace

TableModel::TableModel(QObject* parent) : QAbstractTableModel(parent) {}

void TableModel::setTable(Table table) {
    beginResetModel();
    table_ = std::move(table);
    shown_ = shown_columns(table_);
    endResetModel();
}

int TableModel::columnOf(const std::string& key) const {
    for (std::size_t i = 0; i < table_.columns.size(); ++i)
        if (table_.columns[i].key == key) return static_cast<int>(i);
    return -1;
}

int TableModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(table_.rows.size()); }

int TableModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(table_.columns.size()); }

QVariant TableModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto at = static_cast<std::size_t>(index.column());
    const ShownColumn& shown = shown_[at];
    const TableCell& cell = table_.rows[static_cast<std::size_t>(index.row())][at];
    if (const auto* quantity = std::get_if<Quantity>(&cell)) {
        const Quantity in_column = in_shown_column(*quantity, shown);
        const QVariant data = quantity_data(in_column, role, shown.column.decimals);
        const bool own_unit = role == Qt::DisplayRole && shown.column.unit.empty() && quantity->value;
        return own_unit ? QVariant(data.toString() + QLatin1Char(' ') + text_of(quantity->unit)) : data;
    }
    // Views ask for many roles of each cell: the words are made for those that want them.
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole || role == SortRole) return text_of(std::get<Message>(cell));
    if (role == Qt::TextAlignmentRole) return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    const TableColumn& column = shown_[static_cast<std::size_t>(section)].column;
    if (role == Qt::TextAlignmentRole) return int((column.content == TableColumn::Content::text ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (role == Qt::DisplayRole) {
        const QString title = in_short_lines(text_of(column.title));
        const QString unit = text_of(column.unit);
        return unit.isEmpty() || unit == QLatin1String("1") ? title : title + QLatin1Char('\n') + unit;
    }
    return {};
}

} // namespace ullage
