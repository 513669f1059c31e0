// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/unit/claims_view.h"

#include "base/number.h"
#include "claims/decision_rule.h"
#include "formats/text/quantity_title.h"
#include "pages/parts/page_parts.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QEvent>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QVBoxLayout>

namespace ullage {

namespace {

QString shown(const Quantity& quantity) {
    return quantity.kind == Kind::not_known ? QStringLiteral("–") : shown_quantity(quantity, quantity_decimals(quantity.key)).plain().toHtmlEscaped();
}

/// Told by sign and word, not only by colour.
QString verdict_cell(ClaimVerdict verdict, const Palette& palette) {
    const QString word = text_of(say_claim_verdict(verdict));
    switch (verdict) {
    case ClaimVerdict::holds: return QStringLiteral("<span style='color:%1'>✓ %2</span>").arg(palette.good.name(), word);
    case ClaimVerdict::does_not_hold: return QStringLiteral("<b style='color:%1'>✕ %2</b>").arg(palette.fault_ink.name(), word);
    case ClaimVerdict::not_reached: return QStringLiteral("<span style='color:%1'>▽ %2</span>").arg(palette.ink.name(), word);
    case ClaimVerdict::not_decided:
    case ClaimVerdict::not_tested: return QStringLiteral("<span style='color:%1'>? %2</span>").arg(palette.soft.name(), word);
    }
    return word;
}

QString claims_html(const UnitClaims& claims) {
    const Palette& palette = current_palette();
    QString html = QStringLiteral("<table width='100%' cellspacing='0' cellpadding='4'><tr style='color:%1'><td>%2</td><td align='right'>%3</td>"
                                  "<td align='right'>%4</td><td>%5</td><td>%6</td></tr>")
                       .arg(palette.soft.name(), tr("claim"), tr("claimed"), tr("measured"), tr("verdict"), tr("evidence"));
    for (const ClaimCheck& check : claims.checks)
        html += QStringLiteral("<tr><td>%1</td><td align='right'>%2</td><td align='right'>%3</td><td>%4</td><td style='color:%5'>%6</td></tr>")
                    .arg(text_of(check.title), text_of(say_claimed(check)), shown(check.measured), verdict_cell(check.verdict, palette),
                         palette.soft.name(), text_of(check.evidence).toHtmlEscaped());
    return html +
           QStringLiteral("</table><p style='color:%1'>%2</p>").arg(palette.soft.name(), text_of(decision_rule_text(claims.options)).toHtmlEscaped());
}

QString draw_words(const QString& name, const StandingDraw& draw, const QString& currency) {
    if (draw.draw_w.kind == Kind::not_known) return tr("%1: not known: %2.").arg(name, text_of(draw.draw_w.reason));
    QString words = tr("%1: %2 (%3), %4 a day, %5 a month")
                        .arg(name, shown_quantity(draw.draw_w, 1).plain(), text_of(say_kind(draw.draw_w.kind)),
                             shown_quantity(draw.per_day_wh, 0).plain(), shown_quantity(draw.per_month_wh, 0).plain());
    if (draw.cost_per_day)
        words += tr("; %1 %3 a day, %2 %3 a month, %4")
                     .arg(shown_number(draw.cost_per_day, 3), shown_number(draw.cost_per_month, 2), currency, text_of(draw.basis));
    return words + tr("; %1.").arg(text_of(draw.draw_w.reason));
}

} // namespace

ClaimsView::ClaimsView(QWidget* parent)
    : QWidget(parent), table_(new_paragraph("claimsTableLabel", Tone::ink)), round_trip_(new_paragraph("roundTripLabel", Tone::ink)),
      draws_(new_paragraph("ownDrawLabel", Tone::ink)), error_(new_paragraph("priceErrorLabel", Tone::fault, TextSize::caption)),
      price_(new QLineEdit) {
    setObjectName(QStringLiteral("claimsView"));
    table_->setTextFormat(Qt::RichText);
    for (QLabel* label : {round_trip_, draws_, error_}) label->setTextFormat(Qt::PlainText);
    price_->setObjectName(QStringLiteral("kwhPriceEdit"));
    price_->setPlaceholderText(tr("0.30"));
    price_->setMaximumWidth(110);
    price_->setAccessibleName(tr("price of a kWh"));
    auto* head = new QLabel(tr("What the unit takes for itself"));
    set_text_style(*head, Tone::soft, TextSize::group);
    auto* asked = new QLabel(tr("Price of a &kWh"));
    set_text_style(*asked, Tone::soft, TextSize::caption);
    asked->setBuddy(price_);
    auto* line = new QHBoxLayout;
    line->setSpacing(spacing::grid_px);
    line->addWidget(head);
    line->addStretch();
    line->addWidget(asked);
    line->addWidget(price_);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(spacing::panel_gap_px, spacing::grid_px, spacing::panel_gap_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(table_);
    column->addWidget(round_trip_);
    column->addLayout(line);
    column->addWidget(error_);
    column->addWidget(draws_);
    column->addStretch();
    error_->hide();
    connect(price_, &QLineEdit::textChanged, this, [this] {
        const bool wrong = !price_->text().trimmed().isEmpty() && !kwhPrice();
        set_wrong(*price_, wrong);
        error_->setText(wrong ? tr("The price of a kWh is no number of 0 or more; enter it like 0.30.") : QString());
        error_->setVisible(wrong);
        emit priceChanged();
    });
}

std::optional<double> ClaimsView::kwhPrice() const {
    const Result<double> price = parse_number(utf8_of(price_->text().trimmed()));
    return price && price.value() >= 0 ? std::optional(price.value()) : std::nullopt;
}

void ClaimsView::setKwhPriceText(const QString& text) {
    if (price_->text() != text) price_->setText(text);
}

QString ClaimsView::kwhPriceText() const { return price_->text(); }

void ClaimsView::setClaims(const UnitClaims& claims, const QString& currency) {
    claims_ = claims;
    currency_ = currency;
    showClaims();
}

void ClaimsView::showClaims() {
    table_->setText(claims_html(claims_));
    QStringList trip{text_of(claims_.round_trip.sentence)};
    if (claims_.round_trip.efficiency.value) {
        trip << text_of(claims_.round_trip.boundary);
        const QString reason = text_of(claims_.round_trip.efficiency.reason);
        trip << reason.left(1).toUpper() + reason.mid(1) + QLatin1Char('.');
    }
    QString said = trip.join(QLatin1Char(' '));
    for (const PvCharge& charge : claims_.pv_charges) said += QLatin1Char('\n') + text_of(charge.sentence) + QLatin1Char('.');
    round_trip_->setText(said);
    draws_->setText(draw_words(tr("Output on"), claims_.draws.output_on, currency_) + QLatin1Char('\n') +
                    draw_words(tr("Output off"), claims_.draws.output_off, currency_));
}

void ClaimsView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (event->type() == QEvent::StyleChange) showClaims();
}

} // namespace ullage
