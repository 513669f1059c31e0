// SPDX-License-Identifier: GPL-3.0-or-later
#include "delegates/quantity_delegate.h"

#include "models/quantity_cell.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QApplication>
#include <QPainter>

namespace ullage {

namespace {

constexpr int edge_px = spacing::grid_px;
constexpr int gap_px = 5;

} // namespace

QSize QuantityDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QFontMetrics value(option.font);
    const QFontMetrics interval(text_font(TextSize::caption));
    const auto interval_text = index.data(IntervalRole).toString();
    int width_px = value.horizontalAdvance(index.data().toString()) + 2 * edge_px;
    if (!interval_text.isEmpty()) width_px += gap_px + interval.horizontalAdvance(interval_text);
    return {width_px + 4, value.height() + 9};
}

void QuantityDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    QStyleOptionViewItem cell = option;
    initStyleOption(&cell, index);
    const auto interval = index.data(IntervalRole).toString();
    const bool soft = index.data(SoftRole).toBool();
    if (interval.isEmpty() && !soft) {
        QStyledItemDelegate::paint(painter, option, index);
        return;
    }
    const auto value = cell.text;
    cell.text.clear();
    const auto* style = cell.widget ? cell.widget->style() : QApplication::style();
    style->drawControl(QStyle::CE_ItemViewItem, &cell, painter, cell.widget);

    const auto& palette = current_palette();
    const auto small = text_font(TextSize::caption);
    painter->save();
    QRect place = option.rect.adjusted(edge_px, 0, -edge_px, 0);
    if (!interval.isEmpty()) {
        painter->setFont(small);
        painter->setPen(palette.soft);
        painter->drawText(place, Qt::AlignRight | Qt::AlignVCenter, interval);
        place.setRight(place.right() - QFontMetrics(small).horizontalAdvance(interval) - gap_px);
    }
    painter->setFont(cell.font);
    painter->setPen(soft ? palette.soft : palette.ink);
    painter->drawText(place, int(cell.displayAlignment), QFontMetrics(cell.font).elidedText(value, Qt::ElideRight, place.width()));
    painter->restore();
}

} // namespace ullage
