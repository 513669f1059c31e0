// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/unit_runs_model.h"

#include "models/quantity_cell.h"
#include "style/words.h"

#include <algorithm>
#include <string_view>

namespace ullage {

namespace {

const Quantity* quantity_of(const RunAnalysis& analysis, int column) {
    switch (column) {
    case UnitRunsModel::DeliveredColumn: return &analysis.energy.delivered_wh;
    case UnitRunsModel::FractionColumn: return &analysis.energy.usable_fraction;
    case UnitRunsModel::LoadColumn: return &analysis.energy.mean_load_w;
    case UnitRunsModel::DurationColumn: return &analysis.energy.duration_h;
    default: return nullptr;
    }
}

/// Whether a run is among the drains that are taken together, or why not.
QString part_in_fit(const UnitFit& fit, const RunId& run_uuid) {
    const auto drain =
        std::find_if(fit.drains.begin(), fit.drains.end(), [&run_uuid](const DrainSummary& each) { return each.run_uuid == run_uuid; });
    if (drain == fit.drains.end()) return {};
    return drain->used ? UnitRunsModel::tr("One of the drains that are taken together")
                       : UnitRunsModel::tr("Not taken together with the other drains: %1").arg(text_of(drain->reason));
}

int fallback_decimals(int column) { return column == UnitRunsModel::FractionColumn || column == UnitRunsModel::DurationColumn ? 1 : 0; }

/// A figure in the unit of its column's head; energies in kWh carry that unit with them.
QVariant figure_data(const Quantity& quantity, int role, int column) {
    const Quantity shown = for_people(quantity);
    const bool in_kwh = shown.unit == "kWh";
    const QVariant data = quantity_data(shown, role, in_kwh ? 1 : fallback_decimals(column));
    const bool ends_cell =
        role == IntervalRole ? !data.toString().isEmpty() : role == Qt::DisplayRole && quantity_data(shown, IntervalRole, 1).toString().isEmpty();
    return in_kwh && ends_cell ? QVariant(data.toString() + QStringLiteral(" kWh")) : data;
}

} // namespace

UnitRunsModel::UnitRunsModel(const Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
    connect(&document, &Document::opened, this, &UnitRunsModel::rebuild);
    connect(&document, &Document::closed, this, &UnitRunsModel::rebuild);
    connect(&document, &Document::unitsChanged, this, &UnitRunsModel::rebuild);
    connect(&document, &Document::metersChanged, this, &UnitRunsModel::rebuild);
    connect(&document, &Document::runsChanged, this, &UnitRunsModel::rebuild);
    connect(&document, &Document::readingsChanged, this, &UnitRunsModel::runChanged);
}

void UnitRunsModel::setUnit(const UnitId& unit_uuid) {
    unit_uuid_ = unit_uuid;
    rebuild();
}

void UnitRunsModel::rebuild() {
    beginResetModel();
    runs_.clear();
    // An empty uuid would mean every unit's runs.
    if (!unit_uuid_.empty())
        for (const auto* record : document_.runs(unit_uuid_)) runs_.push_back(record->run.uuid);
    endResetModel();
}

void UnitRunsModel::runChanged(const RunId& run_uuid) {
    const auto found = std::find(runs_.begin(), runs_.end(), run_uuid);
    if (found == runs_.end()) return;
    const auto row = static_cast<int>(found - runs_.begin());
    emit dataChanged(index(row, 0), index(row, ColumnCount - 1));
}

int UnitRunsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(runs_.size()); }

int UnitRunsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant UnitRunsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const auto& uuid = runs_[static_cast<std::size_t>(index.row())];
    const auto* record = document_.run(uuid);
    if (!record) return {};
    if (role == UuidRole) return raw_text(uuid);
    if (role == OpenRole) return record->run.end == RunEnd::still_running;
    const auto& analysis = document_.analysis(uuid);
    if (const auto* quantity = quantity_of(analysis, index.column())) return figure_data(*quantity, role, index.column());
    if (role == Qt::ToolTipRole && index.column() == RunColumn) return part_in_fit(document_.unitFit(unit_uuid_), uuid);
    if (role != Qt::DisplayRole && role != Qt::ToolTipRole) return {};
    switch (index.column()) {
    case RunColumn: return text_of(run_title(*record, analysis.energy));
    case EndColumn: return text_of(say_run_end(record->run.end));
    case GaugeColumn: return text_of(analysis.gauge.verdict);
    default: return {};
    }
}

QVariant UnitRunsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) return {};
    const bool number = section >= DeliveredColumn && section <= DurationColumn;
    if (role == Qt::TextAlignmentRole) return int((number ? Qt::AlignRight : Qt::AlignLeft) | Qt::AlignVCenter);
    if (role != Qt::DisplayRole) return {};
    switch (section) {
    case RunColumn: return tr("run");
    case EndColumn: return tr("ended");
    case DeliveredColumn: return tr("delivered Wh");
    case FractionColumn: return tr("usable %");
    case LoadColumn: return tr("mean load W");
    case DurationColumn: return tr("duration h");
    case GaugeColumn: return tr("gauge");
    default: return {};
    }
}

} // namespace ullage
