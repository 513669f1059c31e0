// SPDX-License-Identifier: GPL-3.0-or-later
#include "delegates/tree_row_delegate.h"

#include "charts/vessel.h"
#include "models/logbook_tree_model.h"
#include "style/palette.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QAbstractItemView>
#include <QApplication>
#include <QPainter>

namespace ullage {

namespace {

using Row = LogbookTreeModel::Row;

constexpr int row_edge_px = spacing::page_margin_px; // from the pane's edge to the text of heads and meters
constexpr int highlight_edge_px = 10;                // from the pane's edge to the mark of the selected row
constexpr int run_indent_px = 42;
constexpr int dot_px = 8;
const QSize vessel_size(16, 24);

Row kind_of(const QModelIndex& index) { return static_cast<Row>(index.data(LogbookTreeModel::RowRole).toInt()); }

int text_left(Row kind) {
    switch (kind) {
    case Row::unit: return row_edge_px + vessel_size.width() + 2 * spacing::grid_px;
    case Row::run: return run_indent_px;
    default: return row_edge_px;
    }
}

VesselData vessel_of(const QModelIndex& index) {
    VesselData vessel;
    vessel.rated_wh = index.data(LogbookTreeModel::RatedRole).toDouble();
    const auto filled = index.data(LogbookTreeModel::FilledRole);
    if (filled.isValid()) vessel.delivered_wh = filled.toDouble();
    return vessel;
}

/// A pointed flag with the word "due" at the row's end: word and shape tell it, colour only helps. Gives the flag's left edge.
int paint_flag(QPainter& painter, const QRect& mark) {
    const auto& palette = current_palette();
    const QFont font = text_font(TextSize::small);
    const QFontMetrics metrics(font);
    const auto word = TreeRowDelegate::tr("due");
    const int point_px = metrics.height() / 2;
    const QRect body(mark.right() - spacing::half_px - metrics.horizontalAdvance(word) - spacing::grid_px, mark.center().y() - metrics.height() / 2,
                     metrics.horizontalAdvance(word) + spacing::grid_px, metrics.height() + 1);
    painter.setPen(Qt::NoPen);
    painter.setBrush(palette.fault_ink);
    painter.drawPolygon(
        QPolygon({QPoint(body.left() - point_px, body.center().y()), body.topLeft(), body.topRight(), body.bottomRight(), body.bottomLeft()}));
    painter.setPen(palette.fault);
    painter.setFont(font);
    painter.drawText(body, Qt::AlignCenter, word);
    return body.left() - point_px;
}

QFont font_of(Row kind) {
    switch (kind) {
    case Row::section: return text_font(TextSize::group);
    case Row::hint: return text_font(TextSize::caption);
    default: return text_font(TextSize::body);
    }
}

} // namespace

QSize TreeRowDelegate::sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const {
    // Rows span the pane whatever they say, and a run's title costs its analysis.
    if (const QFont font = QApplication::font(); font != measured_font_) {
        measured_font_ = font;
        heights_px_.clear();
    }
    const Row kind = kind_of(index);
    if (const auto known = heights_px_.find(static_cast<int>(kind)); known != heights_px_.end()) return {0, known->second};
    int height_px = QFontMetrics(font_of(kind)).height();
    switch (kind) {
    case Row::section: height_px += spacing::group_gap_px; break;
    case Row::unit: height_px = qMax(vessel_size.height(), height_px) + spacing::grid_px; break;
    case Row::bench: height_px += 2 * spacing::grid_px; break;
    default: height_px += 11;
    }
    heights_px_.emplace(static_cast<int>(kind), height_px);
    return {0, height_px};
}

void TreeRowDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    const auto& palette = current_palette();
    const auto kind = kind_of(index);
    // The row's place in the view does not matter: rows span the pane and indent by their kind.
    const auto* view = qobject_cast<const QAbstractItemView*>(option.widget);
    QRect row = option.rect;
    if (view) {
        row.setLeft(0);
        row.setRight(view->viewport()->width() - 1);
    }
    painter->save();
    painter->setRenderHint(QPainter::Antialiasing);

    const auto mark = row.adjusted(highlight_edge_px, 1, -highlight_edge_px, -1);
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    const bool pointed = option.state.testFlag(QStyle::State_MouseOver) && index.flags().testFlag(Qt::ItemIsSelectable);
    if (selected || pointed) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(selected ? palette.selection : blended(palette.selection, palette.ground, 0.5));
        painter->drawRoundedRect(mark, spacing::small_radius_px, spacing::small_radius_px);
    }
    if (option.state.testFlag(QStyle::State_HasFocus) && option.state.testFlag(QStyle::State_KeyboardFocusChange)) {
        painter->setPen(palette.accent);
        painter->setBrush(Qt::NoBrush);
        painter->drawRoundedRect(QRectF(mark).adjusted(0.5, 0.5, -0.5, -0.5), spacing::small_radius_px, spacing::small_radius_px);
    }

    QRect text = row;
    text.setLeft(text_left(kind));
    text.setRight(mark.right() - spacing::half_px);
    if (kind == Row::section) text.setTop(row.bottom() - QFontMetrics(font_of(kind)).height() - spacing::grid_px);
    if (kind == Row::unit) {
        const QRect place(row_edge_px, row.center().y() - vessel_size.height() / 2, vessel_size.width(), vessel_size.height());
        vessel_icon(vessel_of(index)).paint(painter, place);
    }
    if (index.data(LogbookTreeModel::OverdueRole).toBool()) {
        text.setRight(paint_flag(*painter, mark) - spacing::half_px);
    } else if (index.data(LogbookTreeModel::OpenRole).toBool()) {
        painter->setPen(Qt::NoPen);
        painter->setBrush(palette.good);
        painter->drawEllipse(QRectF(mark.right() - dot_px - 6, row.center().y() - dot_px / 2.0 + 0.5, dot_px, dot_px));
        text.setRight(mark.right() - 2 * dot_px - 2);
    }
    const bool quiet = kind == Row::section || kind == Row::hint || (kind == Row::run && !selected);
    painter->setPen(kind == Row::hint ? palette.accent : quiet ? palette.soft : palette.ink);
    QFont font = font_of(kind);
    font.setUnderline(kind == Row::hint); // it is a link
    painter->setFont(font);
    // Names differ at their ends, runs by their day and their load; most of them are drains.
    const QFontMetrics metrics(font);
    QString shown = index.data().toString();
    const QString usual = text_of(say_run_kind(RunKind::drain)) + QLatin1Char(' ');
    if (kind == Row::run && metrics.horizontalAdvance(shown) > text.width() && shown.startsWith(usual)) shown.remove(0, usual.size());
    shown = metrics.elidedText(shown, Qt::ElideMiddle, text.width());
    painter->drawText(text, Qt::AlignLeft | Qt::AlignVCenter, shown);
    painter->restore();
}

} // namespace ullage
