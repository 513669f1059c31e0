// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/parts/result_strip.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

ResultStrip::ResultStrip(QWidget* parent, Frame frame) : QFrame(parent), grid_(new QGridLayout(this)) {
    setObjectName(QStringLiteral("resultStrip"));
    setAccessibleName(tr("The run in figures"));
    if (frame == Frame::panel) make_panel(*this);
    grid_->setContentsMargins(0, 0, 0, 0);
    grid_->setSpacing(0);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Fixed);
}

ResultStrip::Cell ResultStrip::addCell() {
    Cell cell;
    cell.frame = new QFrame(this);
    cell.label = new QLabel(cell.frame);
    cell.value = new QLabel(cell.frame);
    cell.rest = new QLabel(cell.frame);
    auto* column = new QVBoxLayout(cell.frame);
    column->setContentsMargins(14, spacing::grid_px + 2, spacing::grid_px, spacing::grid_px + 2);
    column->setSpacing(2);
    column->addWidget(cell.label);
    auto* line = new QHBoxLayout;
    line->setSpacing(6);
    line->addWidget(cell.value, 0, Qt::AlignBaseline);
    line->addWidget(cell.rest, 0, Qt::AlignBaseline);
    line->addStretch();
    column->addLayout(line);
    for (QLabel* label : {cell.label, cell.value, cell.rest}) label->setTextFormat(Qt::PlainText);
    applyFonts(cell);
    return cell;
}

void ResultStrip::applyFonts(const Cell& cell) {
    set_text_style(*cell.label, Tone::soft, TextSize::caption);
    set_text_style(*cell.value, cell.alarm ? Tone::fault : Tone::ink, TextSize::figure);
    set_text_style(*cell.rest, Tone::soft, TextSize::caption);
}

int ResultStrip::widthIn(int columns) const {
    int wanted = 0;
    for (int column = 0; column < columns; ++column) {
        int widest = 0;
        for (std::size_t i = static_cast<std::size_t>(column); i < cells_.size(); i += static_cast<std::size_t>(columns))
            widest = std::max(widest, cells_[i].frame->sizeHint().width());
        wanted += widest;
    }
    return wanted;
}

void ResultStrip::setFigures(const std::vector<StripFigure>& figures) {
    while (cells_.size() > figures.size()) {
        delete cells_.back().frame;
        cells_.pop_back();
    }
    while (cells_.size() < figures.size()) {
        cells_.push_back(addCell());
        columns_ = 0;
    }
    for (std::size_t i = 0; i < figures.size(); ++i) {
        const StripFigure& figure = figures[i];
        Cell& cell = cells_[i];
        cell.label->setText(figure.label);
        cell.value->setText(figure.value);
        cell.value->setObjectName(figure.key + QStringLiteral("FigureLabel"));
        cell.rest->setText(figure.rest);
        cell.rest->setObjectName(figure.key + QStringLiteral("RestLabel"));
        cell.rest->setVisible(!figure.rest.isEmpty());
        if (cell.alarm != figure.alarm) {
            cell.alarm = figure.alarm;
            applyFonts(cell);
        }
        cell.frame->setToolTip(figure.hint);
        cell.frame->setAccessibleName(QStringLiteral("%1: %2 %3").arg(figure.label, figure.value, figure.rest));
    }
    arrange();
}

QSize ResultStrip::minimumSizeHint() const {
    int widest = 0;
    for (const Cell& cell : cells_) widest = std::max(widest, cell.frame->sizeHint().width());
    return {widest, QFrame::minimumSizeHint().height()};
}

void ResultStrip::arrange() {
    if (cells_.empty()) return;
    const int count = static_cast<int>(cells_.size());
    // Full lines only: six cells stand in 6, 3 x 2, 2 x 3 or one below the other. Before the strip has been given its width, one line: a tower
    // would enlarge the window.
    int columns = count;
    while (placed_ && columns > 1 && (count % columns != 0 || widthIn(columns) > width())) --columns;
    if (columns != columns_) {
        for (int i = 0; i < count; ++i) grid_->addWidget(cells_[static_cast<std::size_t>(i)].frame, i / columns, i % columns);
        for (int i = 0; i < count; ++i) grid_->setColumnStretch(i, i < columns ? 1 : 0);
        columns_ = columns;
    }
    update();
}

void ResultStrip::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    QPainter painter(this);
    painter.setPen(current_palette().line);
    for (const Cell& cell : cells_) {
        const QRect place = cell.frame->geometry();
        if (place.left() > 1) painter.drawLine(place.left(), place.top(), place.left(), place.bottom());
        if (place.top() > 1) painter.drawLine(place.left(), place.top(), place.right(), place.top());
    }
}

void ResultStrip::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    placed_ = true;
    arrange();
}

bool ResultStrip::event(QEvent* event) {
    // Another text size changes what the cells need without changing the strip's own size.
    if (event->type() == QEvent::LayoutRequest) arrange();
    return QFrame::event(event);
}

void ResultStrip::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() != QEvent::StyleChange) return;
    for (const Cell& cell : cells_) applyFonts(cell);
}

} // namespace ullage
