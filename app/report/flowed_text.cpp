// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/flowed_text.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QTextCharFormat>

#include <algorithm>

namespace ullage {

FlowedText::FlowedText(const QString& text, const QFont& font, QPaintDevice& device, double width, bool right, const QList<TextAccent>& accents)
    : layout_(std::make_unique<QTextLayout>(text, font, &device)) {
    QTextOption option(right ? Qt::AlignRight : Qt::AlignLeft);
    option.setWrapMode(QTextOption::WrapAtWordBoundaryOrAnywhere);
    layout_->setTextOption(option);
    QList<QTextLayout::FormatRange> ranges;
    for (const TextAccent& accent : accents) {
        QTextLayout::FormatRange range;
        range.start = accent.from;
        range.length = accent.length;
        if (accent.colour.isValid()) range.format.setForeground(accent.colour);
        if (accent.bold) range.format.setFontWeight(QFont::Bold);
        ranges << range;
    }
    layout_->setFormats(ranges);
    layout_->beginLayout();
    double y = 0;
    for (QTextLine line = layout_->createLine(); line.isValid(); line = layout_->createLine()) {
        line.setLineWidth(width);
        line.setPosition({0, y});
        y += line.height();
    }
    layout_->endLayout();
}

double FlowedText::height(int from, int to) const {
    double sum = 0;
    for (int n = from; n < to; ++n) sum += layout_->lineAt(n).height();
    return sum;
}

int FlowedText::linesWithin(int from, double room) const {
    int to = from;
    while (to < lines() && height(from, to + 1) <= room) ++to;
    return to - from;
}

void FlowedText::draw(QPainter& painter, const QPointF& place, int from, int to, const QColor& colour) const {
    if (from >= to) return;
    painter.setPen(colour);
    const double above = layout_->lineAt(from).y();
    for (int n = from; n < to; ++n) layout_->lineAt(n).draw(&painter, place - QPointF(0, above));
}

TextWidths text_widths(const QString& text, const QFont& font, QPaintDevice& device) {
    const QFontMetricsF metrics(font, &device);
    TextWidths widths;
    widths.whole = metrics.horizontalAdvance(text);
    for (const QString& word : text.split(QLatin1Char(' '))) widths.word = std::max(widths.word, metrics.horizontalAdvance(word));
    return widths;
}

} // namespace ullage
