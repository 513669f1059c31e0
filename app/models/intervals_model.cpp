// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/intervals_model.h"

#include "base/number.h"
#include "gauge/evidence.h"
#include "style/words.h"

namespace ullage {

namespace {

QString number(const std::optional<double>& value, int decimals) { return value ? text_of(say_number(*value, decimals)) : QString(QChar(0x2013)); }

} // namespace

void IntervalsModel::setRun(const RunRecord& record, const RunAnalysis& analysis) {
    beginResetModel();
    rows_.clear();
    const auto& points = analysis.energy.points;
    const std::string& zone = record.run.time_zone;
    for (const IntervalRow& interval : analysis.energy.intervals) {
        const PairedPoint& from = points[interval.from];
        const PairedPoint& to = points[interval.to];
        Row row;
        row.readings = {reading_uuid_at(record, from), reading_uuid_at(record, to)};
        row.cells[SpanColumn] = tr("%1 to %2").arg(raw_text(clock_text(from.time_ms, zone)), raw_text(clock_text(to.time_ms, zone)));
        row.cells[HoursColumn] = number(interval.hours, 2);
        row.cells[PointsColumn] = text_of(say_digits(exact_text(interval.gauge_drop_pt)));
        row.cells[ImpliedColumn] = number(interval.gauge_implied_wh, 0);
        row.cells[DeliveredColumn] = number(interval.delivered_wh, 0);
        row.cells[RatioColumn] = number(interval.ratio, 2);
        row.cells[MeanColumn] = number(interval.mean_w, 0);
        row.cells[PerPointColumn] = number(interval.wh_per_point, 1);
        rows_.push_back(std::move(row));
    }
    endResetModel();
}

void IntervalsModel::clear() {
    beginResetModel();
    rows_.clear();
    endResetModel();
}

int IntervalsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }

int IntervalsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ColumnCount; }

QVariant IntervalsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const Row& row = rows_[static_cast<std::size_t>(index.row())];
    const QString& text = row.cells[index.column()];
    switch (role) {
    case Qt::DisplayRole: return text;
    case Qt::TextAlignmentRole: return QVariant::fromValue(Qt::AlignVCenter | (index.column() == SpanColumn ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::ToolTipRole:
        if (text != QString(QChar(0x2013))) return {};
        return index.column() == ImpliedColumn ? tr("not known: the unit's rated energy is not stated")
               : index.column() == MeanColumn  ? tr("not known: no time lies between the two readings")
                                               : tr("not known: the gauge did not move, or the rated energy is not stated");
    case ReadingsRole: return QVariant::fromValue(row.readings);
    default: return {};
    }
}

QVariant IntervalsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ColumnCount) return {};
    static const char* const titles[ColumnCount] = {QT_TR_NOOP("interval"),    QT_TR_NOOP("time\nh"),       QT_TR_NOOP("gauge\npt"),
                                                    QT_TR_NOOP("implied\nWh"), QT_TR_NOOP("delivered\nWh"), QT_TR_NOOP("ratio"),
                                                    QT_TR_NOOP("mean\nW"),     QT_TR_NOOP("Wh per\npt")};
    static const char* const hints[ColumnCount] = {QT_TR_NOOP("from one paired reading to the next"),
                                                   QT_TR_NOOP("hours between the two"),
                                                   QT_TR_NOOP("percentage points that the gauge fell"),
                                                   QT_TR_NOOP("rated energy x gauge drop"),
                                                   QT_TR_NOOP("corrected energy at the socket"),
                                                   QT_TR_NOOP("delivered / gauge-implied energy"),
                                                   QT_TR_NOOP("mean load"),
                                                   QT_TR_NOOP("delivered energy for each point that the gauge fell")};
    if (role == Qt::DisplayRole) return tr(titles[section]);
    if (role == Qt::ToolTipRole) return tr(hints[section]);
    if (role == Qt::TextAlignmentRole) return QVariant::fromValue(Qt::AlignVCenter | (section == SpanColumn ? Qt::AlignLeft : Qt::AlignRight));
    return {};
}

} // namespace ullage
