// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QStyledItemDelegate>

namespace ullage {

/// Paints the readings table: day headings over the whole width, doubtful readings on the doubt colour, derived values in a
/// lighter tone, left-out values struck through, a small pencil beside the time of amended readings, a
/// small camera at the end of the row of readings with photos and their number where there are several. Reads roles of
/// ReadingsModel only.
class ReadingsDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    /// Free space at either side of a cell's text, pixels; the same as that of the column heads.
    static constexpr int padding_px = 7;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    static void paintDay(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index);
    static void paintReading(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index);
};

} // namespace ullage
