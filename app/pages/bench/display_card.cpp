// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/display_card.h"

#include "style/spacing.h"
#include "style/words.h"

#include <QFontMetricsF>
#include <QMouseEvent>
#include <QPainter>
#include <QStringList>

#include <algorithm>

namespace ullage {

namespace {

// Sizes in units of the card, see DisplayCard::unit().
constexpr double units_high = 20, units_wide = 30;
constexpr double least_unit_px = 15, least_units_high = 15;
constexpr double margin = 0.8, head_text = 1.35, small_text = 0.8, foot_value = 1.45, between = 0.45, bar_height = 0.5;
constexpr double line_of_text = 1.25; ///< height of a line against its text

QFont card_font(const QFont& font, double px, bool bold) {
    QFont sized = font;
    sized.setPixelSize(std::max(9, static_cast<int>(px)));
    sized.setBold(bold);
    return sized;
}

QString elided(const QFont& font, const QString& text, double width_px, Qt::TextElideMode mode = Qt::ElideRight) {
    return QFontMetricsF(font).elidedText(text, mode, std::max(0.0, width_px));
}

double foot_height(double unit) { return unit * ((2 * small_text + foot_value) * line_of_text + between + bar_height); }

} // namespace

DisplayCard::DisplayCard(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("displayCard"));
    setCursor(Qt::PointingHandCursor);
}

void DisplayCard::setEntry(const BenchEntry& entry) {
    entry_ = entry;
    const StripFigure &gauge = entry.figure("gauge"), &delivered = entry.figure("delivered");
    setAccessibleName(QStringList{entry.unit, gauge.label, gauge.value, gauge.rest, delivered.label, delivered.value, delivered.rest,
                                  entry.cut_off_label, entry.cut_off_in, tr("next reading"), entry.due}
                          .join(QLatin1Char(' ')));
    update();
}

void DisplayCard::setColours(const Palette& colours) {
    colours_ = colours;
    update();
}

double DisplayCard::unit() const {
    // On a small card the words stay readable, and the digits get what is left.
    return std::max(std::min(height() / units_high, width() / units_wide), std::min(least_unit_px, height() / least_units_high));
}

std::vector<BigFigure> DisplayCard::figures() const { return {big_figure_of(entry_.figure("gauge")), big_figure_of(entry_.figure("delivered"))}; }

BigFigureLayout DisplayCard::figureLayout() const {
    const double u = unit(), top = u * (margin + head_text * line_of_text), bottom = height() - u * (margin + 1.5 * between) - foot_height(u);
    return lay_out(figures(), QRectF(u * margin, top, width() - 2 * u * margin, std::max(1.0, bottom - top)), font());
}

void DisplayCard::paintEvent(QPaintEvent*) {
    if (entry_.figures.empty()) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(entry_.overdue ? colours_.fault_ink : colours_.line, entry_.overdue ? 3 : 1));
    painter.setBrush(colours_.panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5), spacing::radius_px, spacing::radius_px);
    paintHead(painter);
    paint_figures(painter, figures(), figureLayout(), font(), colours_.ink, colours_.soft);
    paintFoot(painter);
}

void DisplayCard::paintHead(QPainter& painter) const {
    const double u = unit();
    QRectF line(u * margin, u * margin * 0.6, width() - 2 * u * margin, u * head_text * line_of_text);
    if (entry_.number <= most_bench_keys) {
        const QFont key = card_font(font(), u * head_text * 0.8, true);
        const double side = line.height();
        const QRectF box(line.right() - side, line.top(), side, side);
        painter.setPen(QPen(colours_.soft, 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRoundedRect(box, spacing::small_radius_px, spacing::small_radius_px);
        painter.setFont(key);
        painter.setPen(colours_.ink);
        painter.drawText(box, Qt::AlignCenter, QString::number(entry_.number));
        line.setRight(box.left() - u * between);
    }
    const QFont name = card_font(font(), u * head_text, true), small = card_font(font(), u * small_text, false);
    const QStringList told{entry_.since.isEmpty() ? tr("%1, no reading yet").arg(entry_.kind) : entry_.kind + QLatin1Char(' ') + entry_.since,
                           entry_.age};
    QString about = told.join(QStringLiteral(" · "));
    if (entry_.age.isEmpty()) about = told.front();
    // The name gives way in its middle, where units of one maker differ least; what stands beside it keeps a third of the line.
    const double about_px = std::min(QFontMetricsF(small).horizontalAdvance(about), line.width() * 0.5);
    const QString shown = elided(name, entry_.unit, line.width() - about_px - u * between, Qt::ElideMiddle);
    painter.setFont(name);
    painter.setPen(colours_.ink);
    painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, shown);
    const double used = QFontMetricsF(name).horizontalAdvance(shown) + u * between;
    painter.setFont(small);
    painter.setPen(colours_.soft);
    painter.drawText(line.adjusted(used, 0, 0, 0), Qt::AlignLeft | Qt::AlignVCenter, elided(small, about, line.width() - used));
}

void DisplayCard::paintFoot(QPainter& painter) const {
    const double u = unit();
    const QRectF room(u * margin, height() - u * margin - foot_height(u), width() - 2 * u * margin, foot_height(u) - u * (bar_height + between));
    const QRectF left(room.left(), room.top(), room.width() * 0.54, room.height()), right = room.adjusted(room.width() * 0.57, 0, 0, 0);
    if (!entry_.cut_off_in.isEmpty()) {
        paintTelling(painter, left, entry_.cut_off_label, entry_.cut_off_in, entry_.cut_off_at, false);
    } else if (const auto& peak = entry_.figures[entry_.figures.size() - 2]; peak.key == QLatin1String("peak")) {
        paintTelling(painter, left, peak.label, peak.value, peak.rest, false);
    }
    const QString due = entry_.overdue    ? QStringLiteral("▲ ") + tr("look now")
                        : entry_.counting ? entry_.due
                        : entry_.asked    ? tr("not due yet")
                                          : tr("no reminder");
    const QString detail = entry_.overdue    ? entry_.due
                           : entry_.counting ? tr("at %1", "a time of day").arg(entry_.due_at)
                           : entry_.asked    ? entry_.due
                                             : QString();
    paintTelling(painter, right, tr("next reading"), due, detail, entry_.overdue);
    if (!entry_.due_share) return;
    const QRectF track(2, height() - u * bar_height - 2, width() - 4, u * bar_height);
    painter.setPen(Qt::NoPen);
    painter.setBrush(colours_.line);
    painter.drawRect(track);
    painter.setBrush(entry_.overdue ? colours_.fault_ink : colours_.good);
    painter.drawRect(QRectF(track.left(), track.top(), track.width() * *entry_.due_share, track.height()));
}

void DisplayCard::paintTelling(QPainter& painter, const QRectF& room, const QString& label, const QString& value, const QString& detail,
                               bool alarm) const {
    const double u = unit();
    const QFont small = card_font(font(), u * small_text, false), large = card_font(font(), u * foot_value, true);
    QRectF line(room.left(), room.top(), room.width(), u * small_text * line_of_text);
    const auto write = [&](const QFont& font, const QColor& colour, const QString& text) {
        painter.setFont(font);
        painter.setPen(colour);
        painter.drawText(line, Qt::AlignLeft | Qt::AlignVCenter, elided(font, text, line.width()));
    };
    write(small, colours_.soft, label);
    line = QRectF(room.left(), line.bottom(), room.width(), u * foot_value * line_of_text);
    write(large, alarm ? colours_.fault_ink : colours_.ink, value);
    line = QRectF(room.left(), line.bottom(), room.width(), u * small_text * line_of_text);
    write(small, colours_.soft, detail);
}

void DisplayCard::mouseReleaseEvent(QMouseEvent* event) {
    QWidget::mouseReleaseEvent(event);
    if (rect().contains(event->pos())) emit readingAsked(entry_.run_uuid);
}

} // namespace ullage
