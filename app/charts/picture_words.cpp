// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/picture_words.h"

#include "base/version.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QApplication>
#include <QFontMetricsF>
#include <QPainter>

#include <vector>

namespace ullage {

namespace {

constexpr double most_share = 0.4; ///< of the height, for words
constexpr double title_size = 1.15, small_size = 0.88;

struct WordLine {
    QString text;
    QFont font;
    QColor colour;
};

QFont sized(QFont font, double factor) {
    if (font.pixelSize() > 0) font.setPixelSize(qMax(1, qRound(font.pixelSize() * factor)));
    else font.setPointSizeF(font.pointSizeF() * factor);
    return font;
}

double height_of(const std::vector<WordLine>& lines, double width) {
    double height = 0;
    for (const WordLine& line : lines)
        height += QFontMetricsF(line.font).boundingRect(QRectF(0, 0, width, 1e6), Qt::TextWordWrap, line.text).height();
    return height;
}

void paint_lines(QPainter& painter, const std::vector<WordLine>& lines, QRectF place) {
    for (const WordLine& line : lines) {
        painter.setFont(line.font);
        painter.setPen(line.colour);
        QRectF taken;
        painter.drawText(place, Qt::TextWordWrap, line.text, &taken);
        place.setTop(place.top() + height_of({line}, place.width()));
    }
}

template <class Content>
QString subject_of(const Content& content) {
    if constexpr (requires { content.subject; }) return content.subject;
    else return {};
}

template <class Content>
QString key_of_content(const Content& content) {
    if constexpr (requires { content.key; }) return content.key;
    else return {};
}

} // namespace

QRectF paint_picture_words(QPainter& painter, const QRectF& area, const PictureContent& content, const PictureSpec& spec) {
    const QFont font = spec.font.value_or(QApplication::font());
    QFont bold = sized(font, title_size);
    bold.setBold(true);
    std::vector<WordLine> above, below;
    const auto add = [](std::vector<WordLine>& lines, const QString& text, const QFont& font_of_line, const QColor& colour) {
        if (!text.isEmpty()) lines.push_back({text, font_of_line, colour});
    };
    add(above, std::visit([](const auto& any) { return any.description; }, content), bold, spec.palette.ink);
    add(above, std::visit([](const auto& any) { return subject_of(any); }, content), font, spec.palette.soft);
    const QFont small = sized(font, small_size);
    const QString key = std::visit([](const auto& any) { return key_of_content(any); }, content);
    add(below, key, small, spec.palette.soft);
    add(below, spec.source, small, spec.palette.soft);
    const double margin = spacing::grid_px;
    const QRectF inner = area.adjusted(margin, margin, -margin, -margin);
    const auto too_high = [&] { return height_of(above, inner.width()) + height_of(below, inner.width()) > most_share * area.height(); };
    if (too_high() && !key.isEmpty()) below.erase(below.begin());
    if (too_high()) return area;
    const double top = height_of(above, inner.width()), bottom = height_of(below, inner.width());
    painter.save();
    paint_lines(painter, above, inner);
    paint_lines(painter, below, QRectF(inner.left(), inner.bottom() - bottom, inner.width(), bottom));
    painter.restore();
    return area.adjusted(0, above.empty() ? 0 : top + margin, 0, below.empty() ? 0 : -(bottom + margin));
}

QString picture_source(UtcMs now_ms, const std::string& zone, const std::string& publisher) {
    const QString made = tr("%1; made with Ullage %2").arg(text_of(date_text(now_ms, zone)), text_of(program_version()));
    return publisher.empty() ? made : text_of(publisher) + QStringLiteral(", ") + made;
}

} // namespace ullage
