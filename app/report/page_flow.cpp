// SPDX-License-Identifier: GPL-3.0-or-later
#include "report/page_flow.h"

#include <QCoreApplication>
#include <QFontMetricsF>
#include <QPainter>
#include <QPdfWriter>

#include <algorithm>

namespace ullage {

namespace {

constexpr double side_mm = 18, top_mm = 20, bottom_mm = 20, line_mm = 10; ///< line_mm: head and foot from the edge

double points(PrintSize size) {
    switch (size) {
    case PrintSize::title: return 18;
    case PrintSize::chapter: return 13;
    case PrintSize::section: return 10.5;
    case PrintSize::figure: return 15;
    case PrintSize::body: return 9;
    case PrintSize::small: return 7.5;
    }
    return 9;
}

} // namespace

PageFlow::PageFlow(QPdfWriter& writer, QPainter* painter, QString running, QString foot, int total_pages, const PageFit& fit)
    : writer_(writer), painter_(painter), running_(std::move(running)), foot_(std::move(foot)), total_pages_(total_pages), fit_(fit),
      left_(mm(side_mm)), width_(writer.width() - 2 * mm(side_mm)), top_(mm(top_mm)) {
    beginPage();
}

void PageFlow::beginPage() {
    y_ = top_;
    bottom_ = writer_.height() - mm(bottom_mm) - (page_ == fit_.short_page ? mm(fit_.short_by_mm) : 0);
    headAndFoot();
}

double PageFlow::mm(double length_mm) const { return length_mm * writer_.resolution() / 25.4; }

QFont PageFlow::font(PrintSize size) const {
    QFont font(QStringLiteral("DejaVu Sans"));
    font.setPointSizeF(points(size));
    font.setHintingPreference(QFont::PreferNoHinting);
    font.setBold(size == PrintSize::title || size == PrintSize::chapter || size == PrintSize::section || size == PrintSize::figure);
    return font;
}

QPaintDevice& PageFlow::device() const { return writer_; }

void PageFlow::gap(double length_mm) {
    if (y_ > top_) y_ = std::min(y_ + mm(length_mm) * fit_.gaps, bottom_);
}

void PageFlow::ensure(double height) {
    if (height > room() && y_ > top_) newPage();
}

void PageFlow::newPage() {
    ++page_;
    if (painter_) writer_.newPage();
    beginPage();
}

void PageFlow::text(const QString& text, PrintSize size, const QColor& colour, double indent, const QList<TextAccent>& accents) {
    const FlowedText flowed(text, font(size), writer_, width_ - indent, false, accents);
    for (int from = 0; from < flowed.lines();) {
        int count = flowed.linesWithin(from, room());
        if (count == 0 && y_ > top_) {
            newPage();
            continue;
        }
        count = std::max(count, 1);
        if (painter_) flowed.draw(*painter_, {left_ + indent, y_}, from, from + count, colour);
        y_ += flowed.height(from, from + count);
        from += count;
    }
}

void PageFlow::rule(double thickness_mm) {
    if (painter_) painter_->fillRect(QRectF(left_, y_, width_, mm(thickness_mm)), palette().line);
    y_ += mm(thickness_mm);
}

void PageFlow::headAndFoot() {
    if (!painter_) return;
    const QFont small = font(PrintSize::small);
    const QColor soft = palette().soft;
    const auto line = [&](const QString& text, double y, bool right) {
        const QString whole = QFontMetricsF(small, &writer_).elidedText(text, Qt::ElideRight, width_ * 0.75);
        FlowedText(whole, small, writer_, width_, right).draw(*painter_, {left_, y}, 0, 1, soft);
    };
    if (page_ > 1) line(running_, mm(line_mm), false);
    const double foot_y = writer_.height() - mm(line_mm) - QFontMetricsF(small, &writer_).height();
    line(foot_, foot_y, false);
    line(QCoreApplication::translate("report", "page %1 of %2").arg(page_).arg(total_pages_), foot_y, true);
}

} // namespace ullage
