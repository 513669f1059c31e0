// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/bench/bench_panel.h"

#include "pages/parts/elided_label.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"

#include <QFontMetrics>
#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QPushButton>
#include <QVBoxLayout>

#include <vector>

namespace ullage {

namespace {

constexpr int edge_px = 6;
constexpr int comfortable_letters = 62;
constexpr int snooze_minutes = 10;

} // namespace

BenchPanel::BenchPanel(QWidget* parent)
    : QFrame(parent), unit_label_(new ElidedLabel(this, Qt::ElideMiddle)), about_label_(new QLabel), due_label_(new QLabel), keys_label_(new QLabel),
      face_(new BigFiguresView(this)), strip_(new ResultStrip(this, ResultStrip::Frame::none)), read_button_(new QPushButton(tr("Enter reading"))),
      rule_button_(new QPushButton(tr("Next reading…"))), snooze_button_(new QPushButton(tr("Snooze %1 min").arg(snooze_minutes))) {
    setObjectName(QStringLiteral("benchPanel"));
    make_panel(*this);
    unit_label_->setObjectName(QStringLiteral("benchUnitLabel"));
    about_label_->setObjectName(QStringLiteral("benchAboutLabel"));
    due_label_->setObjectName(QStringLiteral("benchDueLabel"));
    keys_label_->setObjectName(QStringLiteral("benchKeysLabel"));
    read_button_->setObjectName(QStringLiteral("benchReadButton"));
    rule_button_->setObjectName(QStringLiteral("benchRuleButton"));
    snooze_button_->setObjectName(QStringLiteral("benchSnoozeButton"));
    for (QLabel* label : {unit_label_, about_label_, due_label_, keys_label_}) label->setTextFormat(Qt::PlainText);
    set_text_style(*unit_label_, Tone::ink, TextSize::title);
    set_text_style(*about_label_, Tone::soft);
    set_text_style(*keys_label_, Tone::soft, TextSize::caption);
    about_label_->setWordWrap(true);
    for (QPushButton* button : {read_button_, rule_button_, snooze_button_}) button->setAutoDefault(false);
    connect(face_, &BigFiguresView::roomChanged, this, &BenchPanel::showFigures, Qt::QueuedConnection);
    connect(read_button_, &QPushButton::clicked, this, [this] { emit readingAsked(entry_.run_uuid); });
    connect(rule_button_, &QPushButton::clicked, this, [this] { emit ruleAsked(entry_.run_uuid); });
    connect(snooze_button_, &QPushButton::clicked, this, [this] { emit snoozeAsked(entry_.run_uuid, snooze_minutes); });

    auto* head = new QHBoxLayout;
    head->setSpacing(spacing::panel_gap_px);
    head->addWidget(unit_label_, 1);
    head->addWidget(due_label_);
    auto* buttons = new QHBoxLayout;
    buttons->setSpacing(spacing::grid_px);
    buttons->addWidget(read_button_);
    buttons->addWidget(snooze_button_);
    buttons->addWidget(rule_button_);
    buttons->addStretch();
    buttons->addWidget(keys_label_);
    const int inner_px = 14;
    auto* texts = new QVBoxLayout;
    texts->setContentsMargins(inner_px, spacing::panel_gap_px, inner_px, 0);
    texts->setSpacing(spacing::half_px);
    texts->addLayout(head);
    texts->addWidget(about_label_);
    auto* foot = new QVBoxLayout;
    foot->setContentsMargins(inner_px, 0, inner_px, spacing::panel_gap_px);
    foot->addLayout(buttons);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(edge_px, 1, 1, 1);
    column->setSpacing(spacing::half_px);
    column->addLayout(texts);
    column->addWidget(face_, 1);
    column->addWidget(strip_);
    column->addLayout(foot);
}

void BenchPanel::setEntry(const BenchEntry& entry) {
    entry_ = entry;
    unit_label_->setText(entry.unit);
    about_label_->setText(entry.about);
    keys_label_->setText(entry.keys);
    showFigures();
    // The mark before the words tells the state by its shape: a triangle calls, a ring waits.
    const auto mark = entry.overdue ? QStringLiteral("▲ ") : entry.counting ? QStringLiteral("○ ") : QString();
    due_label_->setText(mark + (entry.counting || entry.overdue ? entry.due : entry.asked ? tr("not due yet") : tr("no reminder")));
    due_label_->setToolTip(entry.due);
    make_chip(*due_label_, entry.overdue ? Chip::fault : Chip::note);
    snooze_button_->setVisible(entry.overdue);
    read_button_->setAccessibleName(tr("Enter reading of %1").arg(entry.unit));
    setAccessibleName(QStringLiteral("%1, %2, %3").arg(entry.unit, entry.about, entry.due));
    update();
}

void BenchPanel::showFigures() {
    if (entry_.figures.empty()) return;
    face_->setFigures({big_figure_of(entry_.figure("gauge")), big_figure_of(entry_.figure("delivered"))});
    auto told = entry_.figures;
    if (face_->shows())
        std::erase_if(told, [](const StripFigure& each) { return each.key == QLatin1String("gauge") || each.key == QLatin1String("delivered"); });
    strip_->setFigures(told);
}

int BenchPanel::comfortableWidth() { return QFontMetrics(text_font(TextSize::body)).averageCharWidth() * comfortable_letters; }

void BenchPanel::paintEvent(QPaintEvent* event) {
    QFrame::paintEvent(event);
    if (!entry_.overdue) return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(Qt::NoPen);
    painter.setBrush(current_palette().fault_ink);
    painter.drawRoundedRect(QRect(0, 0, edge_px, height()), edge_px / 2.0, edge_px / 2.0);
}

} // namespace ullage
