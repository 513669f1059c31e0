// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/big_figures.h"

#include "style/numbers.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QFontMetricsF>
#include <QPainter>
#include <QStringList>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace ullage {

namespace {

constexpr double rest_of_value = 0.2;      ///< size of the small text against the digits'
constexpr double gap_of_value = 0.28;      ///< between figures side by side
constexpr double bare_air_of_value = 0.06; ///< above a figure without a note
constexpr double air_of_value = 0.26;      ///< above the digits of a line, where its note stands
constexpr double note_gap_of_value = 0.02;
constexpr int measured_px = 200; ///< the size at which widths are measured; they grow with it
constexpr int least_px = 8, least_small_px = 9;
constexpr int least_lines = 4; ///< of text that BigFiguresView needs to be high

QFont sized(QFont font, double px, bool bold) {
    font.setPixelSize(std::max(least_px, static_cast<int>(std::floor(px))));
    font.setBold(bold);
    font.setKerning(false); // digits keep their places
    return font;
}

QFont small_font(const QFont& font, int value_px) { return sized(font, std::max<double>(least_small_px, value_px * rest_of_value), false); }

double digit_height(const QFont& font) { return QFontMetricsF(font).tightBoundingRect(QStringLiteral("0")).height(); }

/// Width of a figure for each pixel of its font's size.
double relative_width(const BigFigure& figure, const QFont& font) {
    const QFont value = sized(font, measured_px, true);
    const double rest_px = QFontMetricsF(small_font(font, measured_px)).horizontalAdvance(QLatin1Char(' ') + figure.rest);
    const double note_px = QFontMetricsF(small_font(font, measured_px)).horizontalAdvance(figure.note);
    return std::max(QFontMetricsF(value).horizontalAdvance(figure.value) + rest_px, note_px) / measured_px;
}

/// "472.0" of Wh as "472": nobody reads tenths from across a workshop.
QString without_tenths(const QString& value, const QString& rest) {
    const auto point = value.indexOf(QLatin1Char('.'));
    if (point < 3 || rest.section(QLatin1Char(' '), -1) != QLatin1String("Wh")) return value;
    bool read = false;
    const double number = QString(value).remove(QChar(0x202F)).toDouble(&read);
    return read ? shown_number(number, 0) : value;
}

bool has_digit(const QString& word) {
    return std::ranges::any_of(word, [](QChar letter) { return letter.isDigit(); });
}

} // namespace

BigFigure big_figure_of(const StripFigure& figure) {
    QStringList words = figure.value.split(QLatin1Char(' ')), before;
    while (words.size() > 1 && !has_digit(words.front())) before << words.takeFirst();
    BigFigure big{without_tenths(words.takeFirst(), figure.rest), figure.rest, before.join(QLatin1Char(' '))};
    if (!words.isEmpty()) big.rest = words.join(QLatin1Char(' ')) + QLatin1Char(' ') + figure.rest;
    else if (figure.rest.startsWith(QChar(0x00B1))) {
        big.note = (big.note + QLatin1Char(' ') + figure.rest).trimmed();
        big.rest = figure.rest.section(QLatin1Char(' '), -1);
    }
    return big;
}

BigFigureLayout lay_out(const std::vector<BigFigure>& figures, const QRectF& room, const QFont& font) {
    BigFigureLayout layout;
    if (figures.empty() || room.isEmpty()) return layout;
    const double digit = digit_height(sized(font, measured_px, true)) / measured_px;
    std::vector<double> widths, heights;
    for (const BigFigure& figure : figures) {
        widths.push_back(relative_width(figure, font));
        heights.push_back(digit + (figure.note.isEmpty() ? bare_air_of_value : air_of_value));
    }
    const double gaps = static_cast<double>(figures.size() - 1);
    const double sum_width = std::accumulate(widths.begin(), widths.end(), 0.0), sum_height = std::accumulate(heights.begin(), heights.end(), 0.0);
    const double most_width = std::ranges::max(widths), most_height = std::ranges::max(heights);
    const double beside = std::min(room.width() / (sum_width + gaps * gap_of_value), room.height() / most_height);
    const double above = std::min(room.width() / most_width, room.height() / sum_height);
    layout.font_px = std::max(least_px, static_cast<int>(std::max(beside, above)));
    const double px = layout.font_px;
    layout.digit_px = digit_height(sized(font, px, true));
    // What is left over goes between them, so that the last ends at the far edge.
    const double spare_x = std::max(0.0, room.width() - sum_width * px), spare_y = std::max(0.0, room.height() - sum_height * px);
    double x = room.left(), y = room.top() + spare_y / (gaps + 2);
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (beside >= above) {
            layout.cells.emplace_back(x, room.top() + (room.height() - most_height * px) / 2, widths[i] * px, most_height * px);
            x += widths[i] * px + (gaps > 0 ? spare_x / gaps : 0);
        } else {
            layout.cells.emplace_back(room.left(), y, widths[i] * px, heights[i] * px);
            y += heights[i] * px + spare_y / (gaps + 2);
        }
    }
    return layout;
}

void paint_figures(QPainter& painter, const std::vector<BigFigure>& figures, const BigFigureLayout& layout, const QFont& font, const QColor& ink,
                   const QColor& soft) {
    const QFont large = sized(font, layout.font_px, true), small = small_font(font, layout.font_px);
    const QFontMetricsF small_metrics(small);
    for (std::size_t i = 0; i < layout.cells.size(); ++i) {
        const QRectF& cell = layout.cells[i];
        const double base = cell.bottom();
        painter.setFont(large);
        painter.setPen(ink);
        painter.drawText(QPointF(cell.left(), base), figures[i].value);
        const double value_px = QFontMetricsF(large).horizontalAdvance(figures[i].value + QLatin1Char(' ')) -
                                QFontMetricsF(large).horizontalAdvance(QLatin1Char(' ')) + small_metrics.horizontalAdvance(QLatin1Char(' '));
        painter.setFont(small);
        painter.setPen(soft);
        painter.drawText(QPointF(cell.left() + value_px, base), figures[i].rest);
        if (!figures[i].note.isEmpty())
            painter.drawText(QPointF(cell.left(), base - layout.digit_px - small_metrics.descent() - note_gap_of_value * layout.font_px),
                             figures[i].note);
    }
}

BigFiguresView::BigFiguresView(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("bigFigures"));
    setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Expanding);
}

void BigFiguresView::setFigures(const std::vector<BigFigure>& figures) {
    figures_ = figures;
    update();
}

bool BigFiguresView::shows() const { return height() >= least_lines * fontMetrics().height(); }

void BigFiguresView::paintEvent(QPaintEvent*) {
    if (!shows()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF room = QRectF(rect()).adjusted(spacing::page_margin_px, 0, -spacing::page_margin_px, -spacing::grid_px);
    const Palette& colours = current_palette();
    paint_figures(painter, figures_, lay_out(figures_, room, font()), font(), colours.ink, colours.soft);
}

void BigFiguresView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    emit roomChanged();
}

} // namespace ullage
