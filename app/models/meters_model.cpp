// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/meters_model.h"

#include "base/number.h"
#include "models/quantity_cell.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

QString stated(const std::optional<double>& value) { return value ? text_of(say_digits(exact_text(*value))) : MetersModel::tr("not stated"); }

} // namespace

MetersModel::MetersModel(const Document& document, QObject* parent)
    : QAbstractTableModel(parent), document_(document), rows_(static_cast<int>(document.meters().size())) {
    connect(&document, &Document::opened, this, &MetersModel::rebuild);
    connect(&document, &Document::closed, this, &MetersModel::rebuild);
    connect(&document, &Document::metersChanged, this, &MetersModel::rebuild);
    connect(&document, &Document::runsChanged, this, [this] {
        if (rows_ > 0) emit dataChanged(index(0, RunsColumn), index(rows_ - 1, RunsColumn));
    });
}

void MetersModel::rebuild() {
    beginResetModel();
    rows_ = static_cast<int>(document_.meters().size());
    endResetModel();
}

int MetersModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : rows_; }

int MetersModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant MetersModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto row = static_cast<std::size_t>(index.row());
    if (row >= document_.meters().size()) return {};
    const auto& meter = document_.meters()[row];
    if (role == UuidRole) return raw_text(meter.uuid);
    if (role == Qt::TextAlignmentRole && index.column() >= StepColumn && index.column() <= RunsColumn) return int(Qt::AlignRight | Qt::AlignVCenter);
    if (role == SoftRole)
        return (index.column() == StepColumn && !meter.step_wh) || (index.column() == LimitColumn && !meter.limit_percent) ||
               (index.column() == SpanColumn && !meter.span_wh);
    if (role == Qt::ToolTipRole && index.column() == LimitColumn && !meter.limit_percent)
        return tr("Without an error limit no interval can be given for delivered energy.");
    if (role != Qt::DisplayRole) return {};
    switch (index.column()) {
    case NameColumn: return text_of(meter.name);
    case StepColumn: return stated(meter.step_wh);
    case LimitColumn: return stated(meter.limit_percent);
    case SpanColumn: return stated(meter.span_wh);
    case CorrectionColumn: return meter.points.empty() ? text_of(say_digits(exact_text(meter.correction))) : tr("by load");
    case RunsColumn: {
        const auto runs = document_.runs();
        return static_cast<int>(std::count_if(runs.begin(), runs.end(), [&meter](const RunRecord* record) {
            return record->run.meter_uuid == meter.uuid || record->run.second_meter_uuid == meter.uuid;
        }));
    }
    case RemarkColumn: return text_of(meter.remark);
    default: return {};
    }
}

QVariant MetersModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) return {};
    const bool number = section >= StepColumn && section <= RunsColumn;
    if (role == Qt::TextAlignmentRole) return int((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case NameColumn: return tr("meter");
    case StepColumn: return tr("register step Wh");
    case LimitColumn: return tr("error limit ±%");
    case SpanColumn: return tr("register span Wh");
    case CorrectionColumn: return tr("correction");
    case RunsColumn: return tr("runs");
    case RemarkColumn: return tr("remark");
    default: return {};
    }
}

int MetersModel::rowOf(const MeterId& uuid) const {
    const auto& meters = document_.meters();
    const auto found = std::find_if(meters.begin(), meters.end(), [&uuid](const Meter& meter) { return meter.uuid == uuid; });
    return found == meters.end() ? -1 : static_cast<int>(found - meters.begin());
}

} // namespace ullage
