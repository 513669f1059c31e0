// SPDX-License-Identifier: GPL-3.0-or-later
#include "delegates/readings_delegate.h"

#include "models/readings_model.h"
#include "style/icons.h"
#include "style/roles.h"
#include "style/theme.h"

#include <QPainter>

namespace ullage {

void ReadingsDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    painter->save();
    if (index.data(ReadingsModel::DayRole).toBool()) paintDay(*painter, option, index);
    else paintReading(*painter, option, index);
    painter->restore();
}

void ReadingsDelegate::paintDay(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) {
    const Palette& palette = current_palette();
    if (index.row() > 0) {
        painter.setPen(palette.line);
        painter.drawLine(option.rect.topLeft(), option.rect.topRight());
    }
    painter.setFont(text_font(TextSize::caption));
    painter.setPen(palette.soft);
    painter.drawText(option.rect.adjusted(padding_px, 0, -padding_px, 0), Qt::AlignVCenter | Qt::AlignLeft, index.data().toString());
}

void ReadingsDelegate::paintReading(QPainter& painter, const QStyleOptionViewItem& option, const QModelIndex& index) {
    const Palette& palette = current_palette();
    if (index.data(ReadingsModel::DoubtfulRole).toBool()) painter.fillRect(option.rect, palette.doubt);
    if (option.state.testFlag(QStyle::State_Selected)) painter.fillRect(option.rect, palette.selection);

    const auto emphasis = static_cast<ReadingsModel::Emphasis>(index.data(ReadingsModel::EmphasisRole).toInt());
    const bool remark = index.column() == ReadingsRow::remark;
    QFont font = text_font(remark ? TextSize::caption : TextSize::body);
    font.setStrikeOut(emphasis == ReadingsModel::Emphasis::left_out);
    painter.setFont(font);
    painter.setPen(emphasis == ReadingsModel::Emphasis::plain ? palette.ink : palette.soft);
    QRect inner = option.rect.adjusted(padding_px, 0, -padding_px, 0);
    const QFontMetrics metrics(font);
    if (const int photos = index.data(ReadingsModel::PhotosRole).toInt(); photos > 0) {
        const int side = metrics.ascent() + 3;
        const QString count = photos > 1 ? QString::number(photos) : QString();
        const int needed = side + (count.isEmpty() ? 0 : metrics.horizontalAdvance(count) + 3);
        painter.drawText(inner, Qt::AlignVCenter | Qt::AlignRight, count);
        glyph_icon(Glyph::photo, GlyphTone::accent).paint(&painter, QRect(inner.right() + 1 - needed, inner.center().y() - side / 2, side, side));
        inner.setRight(inner.right() - needed - padding_px);
    }
    const QString text = metrics.elidedText(index.data().toString(), Qt::ElideRight, inner.width());
    const int alignment = index.data(Qt::TextAlignmentRole).toInt();
    painter.drawText(inner, alignment | Qt::TextSingleLine, text);

    if (index.column() == ReadingsRow::time && index.data(ReadingsModel::AmendedRole).toBool()) {
        const int side = metrics.ascent();
        const QRect sign(inner.left() + metrics.horizontalAdvance(text) + 4, inner.center().y() - side / 2, side, side);
        glyph_icon(Glyph::amend, GlyphTone::soft).paint(&painter, sign);
    }
}

QSize ReadingsDelegate::sizeHint(const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const QFontMetrics metrics(text_font(TextSize::body));
    Q_UNUSED(option)
    return {metrics.horizontalAdvance(index.data().toString()) + 2 * padding_px, metrics.height() + 9};
}

} // namespace ullage
