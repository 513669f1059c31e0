// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/pv/pv_verdict.h"

#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"
#include "style/wrapped_label.h"

#include <QEvent>
#include <QLabel>
#include <QPainter>
#include <QPainterPath>
#include <QVBoxLayout>

#include <cmath>
#include <numbers>

namespace ullage {

namespace {

constexpr int sign_px = 56, danger_border_px = 4;

QPolygonF regular(int corners, const QPointF& centre, double radius, double turn) {
    QPolygonF polygon;
    for (int i = 0; i < corners; ++i) {
        const double angle = turn + 2 * std::numbers::pi * i / corners;
        polygon << centre + radius * QPointF(std::cos(angle), std::sin(angle));
    }
    return polygon;
}

void paint_sign(QPainter& painter, PvVerdict verdict, const QRectF& place, const Palette& palette) {
    const QPointF centre = place.center();
    const double radius = place.width() / 2;
    painter.setRenderHint(QPainter::Antialiasing);
    const auto bar = [&](double top, double bottom, const QColor& colour) {
        painter.setPen(QPen(colour, radius / 5, Qt::SolidLine, Qt::RoundCap));
        painter.drawLine(centre + QPointF(0, top * radius), centre + QPointF(0, bottom * radius));
        painter.drawPoint(centre + QPointF(0, (bottom + 0.34) * radius));
    };
    switch (verdict) {
    case PvVerdict::over_voltage_when_cold:
    case PvVerdict::over_short_circuit:
        painter.setPen(Qt::NoPen);
        painter.setBrush(palette.fault_ink);
        painter.drawPolygon(regular(8, centre, radius, std::numbers::pi / 8));
        bar(-0.5, 0.14, palette.fault);
        return;
    case PvVerdict::ask_before_connecting:
    case PvVerdict::too_close:
    case PvVerdict::too_low_when_hot:
    case PvVerdict::not_known:
        painter.setPen(QPen(palette.doubt_ink, 3, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.setBrush(Qt::NoBrush);
        painter.drawPolygon(regular(3, centre + QPointF(0, radius / 5), radius - 1, -std::numbers::pi / 2));
        bar(-0.25, 0.2, palette.doubt_ink);
        return;
    case PvVerdict::clips: {
        const QRectF disc = place.adjusted(4, 4, -4, -4);
        painter.setPen(QPen(palette.accent, 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(disc);
        painter.setBrush(palette.accent);
        painter.drawPie(disc, 180 * 16, 180 * 16);
        return;
    }
    case PvVerdict::fits:
        painter.setPen(QPen(palette.good, 3));
        painter.setBrush(Qt::NoBrush);
        painter.drawEllipse(place.adjusted(4, 4, -4, -4));
        painter.setPen(QPen(palette.good, 5, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
        painter.drawPolyline(
            QPolygonF{{centre + QPointF(-0.38, 0.02) * radius, centre + QPointF(-0.08, 0.32) * radius, centre + QPointF(0.42, -0.3) * radius}});
        return;
    }
}

QLabel* words(const char* name) {
    auto* label = new WrappedLabel;
    label->setObjectName(QString::fromLatin1(name));
    label->setTextFormat(Qt::PlainText);
    label->letBeMarked();
    return label;
}

} // namespace

PvVerdictView::PvVerdictView(QWidget* parent)
    : QFrame(parent), title_(words("pvVerdictLabel")), sentence_(words("pvHeadlineLabel")), suggestion_(words("pvSuggestionLabel")) {
    setObjectName(QStringLiteral("pvVerdictPanel"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(sign_px + 2 * spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->setSpacing(spacing::half_px);
    for (QLabel* label : {title_, sentence_, suggestion_}) column->addWidget(label);
    setMinimumHeight(sign_px + 2 * spacing::page_margin_px);
    setUnreadable();
}

void PvVerdictView::setCheck(const PvCheck& check) {
    QString title = text_of(check.verdict_text);
    title = is_danger(check.verdict) ? tr("DANGER: %1").arg(title) : title.left(1).toUpper() + title.mid(1);
    suggestion_->setText(text_of(check.suggestion));
    showVerdict(check.verdict, title, text_of(check.headline));
}

void PvVerdictView::setUnreadable() {
    suggestion_->clear();
    showVerdict(PvVerdict::not_known, tr("Not known"), tr("Do not connect yet: a field cannot be read."));
}

void PvVerdictView::showVerdict(PvVerdict verdict, const QString& title, const QString& sentence) {
    verdict_ = verdict;
    title_->setText(title);
    sentence_->setText(sentence);
    suggestion_->setVisible(!suggestion_->text().isEmpty());
    setAccessibleName(title + QStringLiteral(". ") + sentence);
    applyTones();
    update();
}

void PvVerdictView::applyTones() {
    const bool danger = is_danger(verdict_);
    set_text_style(*title_, danger ? Tone::fault : verdict_ == PvVerdict::fits ? Tone::good : Tone::ink, TextSize::title);
    set_text_style(*sentence_, danger ? Tone::fault : Tone::ink);
    set_text_style(*suggestion_, danger ? Tone::ink : Tone::soft);
}

void PvVerdictView::paintEvent(QPaintEvent*) {
    const Palette& palette = current_palette();
    const bool danger = is_danger(verdict_);
    const bool doubt = !danger && verdict_ != PvVerdict::clips && verdict_ != PvVerdict::fits;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double border = danger ? danger_border_px : 1;
    painter.setPen(QPen(danger ? palette.fault_ink : doubt ? palette.doubt_ink : palette.line, border));
    painter.setBrush(danger ? palette.fault : doubt ? palette.doubt : palette.panel);
    painter.drawRoundedRect(QRectF(rect()).adjusted(border / 2, border / 2, -border / 2, -border / 2), spacing::radius_px, spacing::radius_px);
    paint_sign(painter, verdict_, QRectF(spacing::page_margin_px, (height() - sign_px) / 2.0, sign_px, sign_px), palette);
}

void PvVerdictView::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::StyleChange) update();
}

} // namespace ullage
