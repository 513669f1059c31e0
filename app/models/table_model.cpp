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

/// The unit of a column whose title does not carry it (prices): that of its cells where they agree.
QString unit_of_cells(const Table& table, std::size_t column) {
    std::string unit;
    for (const auto& row : table.rows) {
        const auto* quantity = std::get_if<Quantity>(&row[column]);
        if (!quantity || quantity->unit == unit) continue;
        if (!unit.empty()) return {};
        unit = quantity->unit;
    }
    return raw_text(unit);
}

} // namespace

TableModel::TableModel(QObject* parent) : QAbstractTableModel(parent) {}

void TableModel::setTable(Table table) {
    beginResetModel();
    table_ = std::move(table);
    cell_units_.clear();
    for (std::size_t column = 0; column < table_.columns.size(); ++column) cell_units_.push_back(unit_of_cells(table_, column));
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
    const TableColumn& column = table_.columns[static_cast<std::size_t>(index.column())];
    const TableCell& cell = table_.rows[static_cast<std::size_t>(index.row())][static_cast<std::size_t>(index.column())];
    if (const auto* quantity = std::get_if<Quantity>(&cell)) {
        const QVariant shown = quantity_data(*quantity, role, column.decimals);
        const bool own_unit =
            role == Qt::DisplayRole && column.unit.empty() && quantity->value && cell_units_[static_cast<std::size_t>(index.column())].isEmpty();
        return own_unit ? QVariant(shown.toString() + QLatin1Char(' ') + text_of(quantity->unit)) : shown;
    }
    const QString text = text_of(std::get<std::string>(cell));
    if (role == Qt::DisplayRole || role == Qt::ToolTipRole || role == SortRole) return text;
    if (role == Qt::TextAlignmentRole) return int(Qt::AlignLeft | Qt::AlignVCenter);
    return {};
}

QVariant TableModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= columnCount()) return {};
    const TableColumn& column = table_.columns[static_cast<std::size_t>(section)];
    if (role == Qt::TextAlignmentRole) return int((column.content == TableColumn::Content::text ? Qt::AlignLeft : Qt::AlignRight) | Qt::AlignVCenter);
    if (role == Qt::DisplayRole) {
        const QString title = in_short_lines(text_of(column.title));
        const QString unit = column.unit.empty() ? cell_units_[static_cast<std::size_t>(section)] : text_of(column.unit);
        return unit.isEmpty() || unit == QLatin1String("1") ? title : title + QLatin1Char('\n') + unit;
    }
    return {};
}

} // namespace ullage
