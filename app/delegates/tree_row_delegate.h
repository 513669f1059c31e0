// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QFont>
#include <QStyledItemDelegate>

#include <map>

namespace ullage {

/// Paints a row of the logbook tree: a small grey head for a section, a vessel beside a unit, a run in softer tone with
/// a dot while it is running, or the word "due" on a flag once its next reading is overdue. Reads the roles of LogbookTreeModel only.
class TreeRowDelegate final : public QStyledItemDelegate {
    Q_OBJECT
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const override;

private:
    mutable QFont measured_font_;           ///< the application's, by which the heights were measured
    mutable std::map<int, int> heights_px_; ///< by kind of row: a tree of thousands asks for all of them at once
};

} // namespace ullage
