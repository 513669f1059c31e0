// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/readings_model.h"

#include "base/number.h"

#include <algorithm>
#include <iterator>

namespace ullage {

ReadingsModel::ReadingsModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
    connect(&document, &Document::readingsChanged, this, [this](const QString& run) {
        if (run == run_uuid_) refresh();
    });
    connect(&document, &Document::photosChanged, this, [this](const QString& run) {
        if (run != run_uuid_) return;
        countPhotos();
        if (!rows_.empty()) emit dataChanged(index(0, ReadingsRow::remark), index(rowCount() - 1, ReadingsRow::remark));
    });
    for (auto signal : {&Document::runsChanged, &Document::unitsChanged, &Document::metersChanged, &Document::opened,
                        &Document::closed})
        connect(&document, signal, this, &ReadingsModel::refresh);
}

void ReadingsModel::setRun(const QString& runUuid) {
    if (runUuid == run_uuid_) return;
    beginResetModel();
    run_uuid_ = runUuid;
    countPhotos();
    rows_.clear();
    if (const RunRecord* record = document_.run(runUuid.toStdString())) {
        rows_ = readings_rows(*record, document_.analysis(runUuid.toStdString()));
        time_zone_ = record->run.time_zone;
    }
    endResetModel();
}

void ReadingsModel::countPhotos() {
    photo_counts_.clear();
    const auto photos = document_.photos(run_uuid_.toStdString());
    // Where they cannot be read the strip of photos says so.
    if (!photos) return;
    for (const Photo& photo : photos.value())
        if (photo.reading_uuid) ++photo_counts_[QString::fromStdString(*photo.reading_uuid)];
}

void ReadingsModel::refresh() {
    std::vector<ReadingsRow> fresh;
    if (const RunRecord* record = document_.run(run_uuid_.toStdString())) {
        fresh = readings_rows(*record, document_.analysis(run_uuid_.toStdString()));
        time_zone_ = record->run.time_zone;
    }
    const auto same = [](const ReadingsRow& a, const ReadingsRow& b) { return a.uuid == b.uuid && a.day == b.day; };
    const auto head = std::mismatch(rows_.begin(), rows_.end(), fresh.begin(), fresh.end(), same);
    const auto first = static_cast<int>(head.first - rows_.begin());
    const int shorter = static_cast<int>(std::min(rows_.size(), fresh.size()));
    int tail = 0; // rows at the end that stay
    while (tail < shorter - first && same(rows_[rows_.size() - 1 - static_cast<std::size_t>(tail)],
                                          fresh[fresh.size() - 1 - static_cast<std::size_t>(tail)]))
        ++tail;
    const int old_end = static_cast<int>(rows_.size()) - tail;
    const int new_end = static_cast<int>(fresh.size()) - tail;
    if (old_end > first) {
        beginRemoveRows({}, first, old_end - 1);
        rows_.erase(rows_.begin() + first, rows_.begin() + old_end);
        endRemoveRows();
    }
    if (new_end > first) {
        beginInsertRows({}, first, new_end - 1);
        rows_.insert(rows_.begin() + first, fresh.begin() + first, fresh.begin() + new_end);
        endInsertRows();
    }
    rows_ = std::move(fresh);
    if (!rows_.empty()) emit dataChanged(index(0, 0), index(rowCount() - 1, ReadingsRow::column_count - 1));
}

int ReadingsModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(rows_.size());
}

int ReadingsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ReadingsRow::column_count; }

QVariant ReadingsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const ReadingsRow& row = rows_[static_cast<std::size_t>(index.row())];
    const ReadingsRow::Cell& cell = row.cells[index.column()];
    const auto counted = index.column() == ReadingsRow::remark ? photo_counts_.find(row.uuid) : photo_counts_.end();
    const int photos = counted == photo_counts_.end() ? 0 : counted->second;
    const QString photo_words = photos == 0 ? QString() : QString::fromStdString(count_text(photos, "photo", "photos"));
    switch (role) {
    case Qt::DisplayRole: return cell.text;
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::AlignVCenter | (index.column() == ReadingsRow::time || index.column() == ReadingsRow::remark
                                                           ? Qt::AlignLeft
                                                           : Qt::AlignRight));
    case Qt::ToolTipRole:
        if (index.column() == ReadingsRow::time && row.amended) return history(row.uuid);
        if (photos > 0) return cell.hint.isEmpty() ? photo_words : cell.hint + QLatin1Char('\n') + photo_words;
        return cell.hint.isEmpty() ? QVariant() : QVariant(cell.hint);
    case Qt::AccessibleTextRole:
        if (photos > 0) return cell.text.isEmpty() ? photo_words : cell.text + QStringLiteral(", ") + photo_words;
        return row.amended && index.column() == ReadingsRow::time ? cell.text + QStringLiteral(", amended") : cell.text;
    case DayRole: return !row.day.isEmpty();
    case UuidRole: return row.uuid;
    case EmphasisRole: return static_cast<int>(cell.emphasis);
    case DoubtfulRole: return row.doubtful;
    case AmendedRole: return row.amended;
    case PhotosRole: return photos;
    default: return {};
    }
}

QString ReadingsModel::history(const QString& reading_uuid) const {
    const auto versions = document_.history(reading_uuid.toStdString());
    if (!versions) return QString::fromStdString(versions.error().sentence());
    return history_lines(versions.value(), time_zone_).join(QLatin1Char('\n'));
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ReadingsRow::column_count) return {};
    static const char* const titles[ReadingsRow::column_count] = {"time", "gauge\n%", "register\nWh", "delivered\nWh", "load\nW", "error\npt",
                                                    "remark"};
    static const char* const hints[ReadingsRow::column_count] = {"local time of the run",
                                                   "what the unit's own gauge showed",
                                                   "what the meter's register showed",
                                                   "corrected energy since the first register reading",
                                                   "mean load since the register reading before",
                                                   "gauge error in percentage points",
                                                   "marks and remarks"};
    const RunRecord* record = document_.run(run_uuid_.toStdString());
    const bool charge = record != nullptr && record->run.kind == RunKind::charge;
    if (charge && section == ReadingsRow::delivered && role == Qt::DisplayRole) return tr("energy in\nWh");
    if (charge && section == ReadingsRow::load && role == Qt::DisplayRole) return tr("power\nW");
    if (role == Qt::DisplayRole) return QString::fromUtf8(titles[section]);
    if (role == Qt::ToolTipRole) return QString::fromUtf8(hints[section]);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::AlignVCenter |
                                   (section == ReadingsRow::time || section == ReadingsRow::remark ? Qt::AlignLeft : Qt::AlignRight));
    return {};
}

Qt::ItemFlags ReadingsModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    return uuidAt(index.row()).isEmpty() ? Qt::ItemIsEnabled : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

int ReadingsModel::rowOf(const QString& readingUuid) const {
    if (readingUuid.isEmpty()) return -1;
    const auto found = std::ranges::find(rows_, readingUuid, &ReadingsRow::uuid);
    return found == rows_.end() ? -1 : static_cast<int>(found - rows_.begin());
}

QString ReadingsModel::uuidAt(int row) const {
    return row >= 0 && row < rowCount() ? rows_[static_cast<std::size_t>(row)].uuid : QString();
}

} // namespace ullage
