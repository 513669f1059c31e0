// SPDX-License-Identifier: GPL-3.0-or-later
#include "models/readings_model.h"

#include "base/number.h"
#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>
#include <utility>

namespace ullage {

ReadingsModel::ReadingsModel(Document& document, QObject* parent) : QAbstractTableModel(parent), document_(document) {
    connect(&document, &Document::readingsChanged, this, [this](const RunId& run) {
        if (run == run_uuid_) refresh();
    });
    connect(&document, &Document::photosChanged, this, [this](const RunId& run) {
        if (run != run_uuid_) return;
        countPhotos();
        if (rows_.size() > 0) emit dataChanged(index(0, ReadingsRow::remark), index(rowCount() - 1, ReadingsRow::remark));
    });
    for (auto signal : {&Document::runsChanged, &Document::unitsChanged, &Document::metersChanged, &Document::opened, &Document::closed})
        connect(&document, signal, this, &ReadingsModel::refresh);
}

void ReadingsModel::setRun(const RunId& runUuid) {
    if (runUuid == run_uuid_) return;
    beginResetModel();
    run_uuid_ = runUuid;
    countPhotos();
    rows_ = freshRows();
    put_together_.reset();
    endResetModel();
}

void ReadingsModel::setWithdrawnShown(bool shown) {
    if (shown == withdrawn_shown_) return;
    beginResetModel();
    withdrawn_shown_ = shown;
    rows_ = freshRows();
    put_together_.reset();
    endResetModel();
}

bool ReadingsModel::isWithdrawn(int row) const { return row >= 0 && row < rowCount() && rows_.isWithdrawn(static_cast<std::size_t>(row)); }

void ReadingsModel::countPhotos() {
    photo_counts_.clear();
    const auto photos = document_.photos(run_uuid_);
    // Where they cannot be read the strip of photos says so.
    if (!photos) return;
    for (const Photo& photo : photos.value())
        if (photo.reading_uuid) ++photo_counts_[*photo.reading_uuid];
}

ReadingsRows ReadingsModel::freshRows() {
    const auto record = document_.sharedRun(run_uuid_);
    if (!record) return {};
    time_zone_ = record->run.time_zone;
    const RunAnalysis& analysis = document_.analysis(record->run.uuid);
    expected_wh_.reset();
    const auto forecast = record->run.end == RunEnd::still_running ? document_.casebook().forecast_at_last_reading(record->run.uuid) : nullptr;
    if (const auto whole = expected_whole(*record, analysis.energy, forecast.get())) expected_wh_ = whole->estimate_wh;
    return {record, analysis, expected_wh_, withdrawn_shown_};
}

void ReadingsModel::refresh() {
    ReadingsRows fresh = freshRows();
    put_together_.reset();
    const std::size_t shorter = std::min(rows_.size(), fresh.size());
    std::size_t first = 0, tail = 0; // rows at the beginning and at the end that stay
    while (first < shorter && ReadingsRows::same(rows_, first, fresh, first)) ++first;
    while (tail < shorter - first && ReadingsRows::same(rows_, rows_.size() - 1 - tail, fresh, fresh.size() - 1 - tail)) ++tail;
    const std::size_t old_end = rows_.size() - tail, new_end = fresh.size() - tail;
    if (old_end > first) {
        beginRemoveRows({}, static_cast<int>(first), static_cast<int>(old_end) - 1);
        rows_.erase(first, old_end);
        endRemoveRows();
    }
    if (new_end > first) {
        beginInsertRows({}, static_cast<int>(first), static_cast<int>(new_end) - 1);
        rows_ = std::move(fresh);
        put_together_.reset();
        endInsertRows();
    } else {
        rows_ = std::move(fresh);
        put_together_.reset();
    }
    if (rows_.size() > 0) emit dataChanged(index(0, 0), index(rowCount() - 1, ReadingsRow::column_count - 1));
}

const ReadingsRow& ReadingsModel::rowAt(int row) const {
    const auto at = static_cast<std::size_t>(row);
    if (put_together_ != at) {
        row_ = rows_.row(at);
        put_together_ = at;
    }
    return row_;
}

int ReadingsModel::rowCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : static_cast<int>(rows_.size()); }

int ReadingsModel::columnCount(const QModelIndex& parent) const { return parent.isValid() ? 0 : ReadingsRow::column_count; }

QVariant ReadingsModel::data(const QModelIndex& index, int role) const {
    if (!checkIndex(index, CheckIndexOption::IndexIsValid)) return {};
    const ReadingsRow& row = rowAt(index.row());
    const ReadingsRow::Cell& cell = row.cells[index.column()];
    const auto counted = index.column() == ReadingsRow::remark ? photo_counts_.find(row.uuid) : photo_counts_.end();
    const int photos = counted == photo_counts_.end() ? 0 : counted->second;
    const QString photo_words = photos == 0 ? QString() : text_of(say_count(photos, phrases("ullage", "%n photos", "%n photo")));
    switch (role) {
    case Qt::DisplayRole: return cell.text;
    case Qt::TextAlignmentRole:
        return QVariant::fromValue(Qt::AlignVCenter |
                                   (index.column() == ReadingsRow::time || index.column() == ReadingsRow::remark ? Qt::AlignLeft : Qt::AlignRight));
    case Qt::ToolTipRole:
        if (index.column() == ReadingsRow::time && row.amended) return history(row.uuid);
        if (photos > 0) return cell.hint.isEmpty() ? photo_words : cell.hint + QLatin1Char('\n') + photo_words;
        return cell.hint.isEmpty() ? QVariant() : QVariant(cell.hint);
    case Qt::AccessibleTextRole:
        if (photos > 0) return cell.text.isEmpty() ? photo_words : cell.text + QStringLiteral(", ") + photo_words;
        return row.amended && index.column() == ReadingsRow::time ? tr("%1, amended").arg(cell.text) : cell.text;
    case DayRole: return !row.day.isEmpty();
    case UuidRole: return raw_text(row.uuid);
    case EmphasisRole: return static_cast<int>(cell.emphasis);
    case DoubtfulRole: return row.doubtful;
    case AmendedRole: return row.amended;
    case PhotosRole: return photos;
    default: return {};
    }
}

QString ReadingsModel::history(const ReadingId& reading_uuid) const {
    const auto versions = document_.history(reading_uuid);
    if (!versions) return text_of(versions.error().sentence());
    return history_lines(versions.value(), time_zone_).join(QLatin1Char('\n'));
}

QVariant ReadingsModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || section < 0 || section >= ReadingsRow::column_count) return {};
    static const char* const titles[ReadingsRow::column_count] = {QT_TR_NOOP("time"),          QT_TR_NOOP("gauge\n%"), QT_TR_NOOP("register\nWh"),
                                                                  QT_TR_NOOP("delivered\nWh"), QT_TR_NOOP("load\nW"),  QT_TR_NOOP("error\npt"),
                                                                  QT_TR_NOOP("remark")};
    static const char* const hints[ReadingsRow::column_count] = {
        QT_TR_NOOP("local time of the run"),
        QT_TR_NOOP("what the unit's own gauge showed"),
        QT_TR_NOOP("what the meter's register showed"),
        QT_TR_NOOP("corrected energy since the first register reading"),
        QT_TR_NOOP("mean load since the register reading before"),
        QT_TR_NOOP("gauge less the share that is left of what the drain delivers from full to cut-off, in percentage points"),
        QT_TR_NOOP("marks and remarks")};
    const RunRecord* record = document_.run(run_uuid_);
    const bool charge = record != nullptr && record->run.kind == RunKind::charge;
    if (charge && section == ReadingsRow::delivered && role == Qt::DisplayRole) return tr("energy in\nWh");
    if (charge && section == ReadingsRow::load && role == Qt::DisplayRole) return tr("power\nW");
    if (expected_wh_ && section == ReadingsRow::error) {
        const QString whole = shown_number(*expected_wh_, 0);
        if (role == Qt::DisplayRole) return tr("error, pt\nif %1 Wh").arg(whole);
        if (role == Qt::ToolTipRole)
            return tr("gauge less what is then left, in percentage points: of the %1 Wh that this drain is expected to deliver to its cut-off")
                .arg(whole);
    }
    if (role == Qt::DisplayRole) return tr(titles[section]);
    if (role == Qt::ToolTipRole) return tr(hints[section]);
    if (role == Qt::TextAlignmentRole)
        return QVariant::fromValue(Qt::AlignVCenter |
                                   (section == ReadingsRow::time || section == ReadingsRow::remark ? Qt::AlignLeft : Qt::AlignRight));
    return {};
}

Qt::ItemFlags ReadingsModel::flags(const QModelIndex& index) const {
    if (!index.isValid()) return Qt::NoItemFlags;
    return uuidAt(index.row()).empty() ? Qt::ItemIsEnabled : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

int ReadingsModel::rowOf(const ReadingId& readingUuid) const {
    if (readingUuid.empty()) return -1;
    const auto found = rows_.rowOf(readingUuid);
    return found ? static_cast<int>(*found) : -1;
}

ReadingId ReadingsModel::uuidAt(int row) const { return row >= 0 && row < rowCount() ? rows_.uuidAt(static_cast<std::size_t>(row)) : ReadingId(); }

} // namespace ullage
