// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/accounts_view.h"

#include "pages/parts/page_parts.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/theme.h"
#include "style/words.h"

#include <QBoxLayout>
#include <QEvent>
#include <QFrame>
#include <QGridLayout>
#include <QLabel>

#include <algorithm>

namespace ullage {

namespace {

constexpr int edge_px = 3;

QLabel* new_label(QWidget* parent, const QString& name, bool wraps = false) {
    auto* label = new QLabel(parent);
    label->setObjectName(name);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(wraps);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

void colour_edge(QFrame& edge, const QColor& colour) {
    QPalette palette = edge.palette();
    palette.setColor(QPalette::Window, colour);
    edge.setPalette(palette);
}

} // namespace

AccountsView::AccountsView(QWidget* parent)
    : QWidget(parent), sides_(new QBoxLayout(QBoxLayout::LeftToRight)), right_(addPanel("right", tr("If the gauge is right"))),
      wrong_(addPanel("wrong", tr("If the gauge is wrong"))), decision_(new_panel(this)),
      decides_(new_label(decision_, QStringLiteral("accountsDecideLabel"), true)),
      idle_hour_(new_label(decision_, QStringLiteral("accountsIdleHourLabel"), true)) {
    setObjectName(QStringLiteral("accountsView"));
    setAccessibleName(tr("Gauge right, gauge wrong"));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(spacing::grid_px);
    column->setSizeConstraint(QLayout::SetNoConstraint);
    sides_->setSpacing(spacing::panel_gap_px);
    sides_->addWidget(right_.frame, 1);
    sides_->addWidget(wrong_.frame, 1);
    column->addLayout(sides_);
    auto* line = new QVBoxLayout(decision_);
    line->setContentsMargins(14, spacing::grid_px, 14, spacing::grid_px);
    line->setSpacing(2);
    line->addWidget(decides_);
    line->addWidget(idle_hour_);
    column->addWidget(decision_);
    // Smaller where it must: the page puts it into a tab then, and it must not keep a window large.
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Maximum);
    applyFonts();
}

AccountsView::Panel AccountsView::addPanel(const char* name, const QString& title) {
    Panel panel;
    const QString prefix = QString::fromLatin1(name);
    panel.frame = new_panel(this);
    panel.frame->setObjectName(prefix + QStringLiteral("AccountPanel"));
    auto* column = new QVBoxLayout(panel.frame);
    column->setContentsMargins(1, 1, 1, spacing::grid_px);
    column->setSpacing(spacing::half_px);
    panel.edge = new QFrame(panel.frame);
    panel.edge->setFixedHeight(edge_px);
    panel.edge->setAutoFillBackground(true);
    column->addWidget(panel.edge);
    auto* inner = new QVBoxLayout;
    inner->setContentsMargins(14, spacing::half_px, 14, 0);
    inner->setSpacing(spacing::half_px);
    column->addLayout(inner);
    panel.title = new_label(panel.frame, prefix + QStringLiteral("AccountTitle"));
    panel.title->setText(title);
    inner->addWidget(panel.title);
    auto* grid = new QGridLayout;
    grid->setHorizontalSpacing(spacing::panel_gap_px);
    grid->setVerticalSpacing(0);
    for (std::size_t i = 0; i < panel.figures.size(); ++i) {
        Figure& figure = panel.figures[i];
        const QString which = prefix + QStringLiteral("Account") + QString::number(i + 1);
        figure.label = new_label(panel.frame, which + QStringLiteral("Label"));
        figure.value = new_label(panel.frame, which + QStringLiteral("Value"));
        figure.note = new_label(panel.frame, which + QStringLiteral("Note"), true);
        const int at = static_cast<int>(i);
        grid->addWidget(figure.label, 0, at);
        grid->addWidget(figure.value, 1, at);
        grid->addWidget(figure.note, 2, at, Qt::AlignTop);
        grid->setColumnStretch(at, 1);
    }
    inner->addLayout(grid);
    panel.sentence = new_label(panel.frame, prefix + QStringLiteral("AccountSentence"), true);
    inner->addWidget(panel.sentence);
    column->addStretch();
    return panel;
}

void AccountsView::fill(Panel& panel, const TwoAccounts& accounts, const GaugeAccount& account, const Run& run, UtcMs now_ms) {
    panel.ruled_out = account.ruled_out;
    const auto figures = account_figures(accounts, account, run, std::max(now_ms, accounts.from_ms));
    for (std::size_t i = 0; i < panel.figures.size(); ++i) {
        Figure& figure = panel.figures[i];
        figure.label->setText(text_of(figures[i].label));
        figure.value->setText(text_of(figures[i].value));
        figure.note->setText(text_of(figures[i].note));
        figure.note->setVisible(!figures[i].note.empty());
    }
    panel.sentence->setText(account.ruled_out ? tr("Ruled out: %1").arg(text_of(account.evidence)) : text_of(account.sentence));
    panel.frame->setAccessibleName(panel.title->text() + QStringLiteral(": ") + panel.sentence->text());
}

void AccountsView::setAccounts(const TwoAccounts& accounts, const Run& run, UtcMs now_ms) {
    fill(right_, accounts, accounts.right, run, now_ms);
    fill(wrong_, accounts, accounts.wrong, run, now_ms);
    decides_->setText(tr("What decides: %1").arg(text_of(accounts.decides)));
    idle_hour_->setText(text_of(accounts.idle_hour));
    idle_hour_->setVisible(!accounts.idle_hour.empty());
    decision_->setVisible(!accounts.decides.empty());
    applyFonts();
    arrangeSides();
}

void AccountsView::applyFonts() {
    for (Panel* panel : {&right_, &wrong_}) {
        const Tone tone = panel->ruled_out ? Tone::soft : Tone::ink;
        set_text_style(*panel->title, tone, TextSize::group);
        set_text_style(*panel->sentence, tone, TextSize::body);
        for (const Figure& figure : panel->figures) {
            set_text_style(*figure.label, Tone::soft, TextSize::caption);
            set_text_style(*figure.value, tone, TextSize::figure);
            set_text_style(*figure.note, Tone::soft, TextSize::caption);
            QFont font = figure.value->font();
            font.setStrikeOut(panel->ruled_out);
            figure.value->setFont(font);
        }
    }
    set_text_style(*decides_, Tone::ink, TextSize::body);
    set_text_style(*idle_hour_, Tone::soft, TextSize::body);
    colour_edge(*right_.edge, right_.ruled_out ? current_palette().line : current_palette().gauge_implied);
    colour_edge(*wrong_.edge, wrong_.ruled_out ? current_palette().line : current_palette().delivered);
}

bool AccountsView::besideFits(int width) const {
    int wanted = spacing::panel_gap_px;
    for (const Panel* panel : {&right_, &wrong_}) {
        int line = 28 + 2 * spacing::panel_gap_px;
        for (const Figure& figure : panel->figures) line += std::max(figure.label->sizeHint().width(), figure.value->sizeHint().width());
        wanted += line;
    }
    return wanted <= width;
}

int AccountsView::heightIn(int width) const {
    const bool beside = besideFits(width);
    const int panel_width = beside ? (width - spacing::panel_gap_px) / 2 : width;
    const auto height_of = [](const QFrame* frame, int w) {
        const QLayout* layout = frame->layout();
        return layout->hasHeightForWidth() ? layout->totalHeightForWidth(w) : layout->totalSizeHint().height();
    };
    const int right = height_of(right_.frame, panel_width), wrong = height_of(wrong_.frame, panel_width);
    int height = beside ? std::max(right, wrong) : right + wrong + spacing::panel_gap_px;
    if (!decision_->isHidden()) height += spacing::grid_px + height_of(decision_, width);
    return height;
}

QSize AccountsView::sizeHint() const {
    const int wide = std::max(width(), minimumSizeHint().width());
    return {wide, heightIn(wide)};
}

QSize AccountsView::minimumSizeHint() const {
    int widest = 0;
    for (const Panel* panel : {&right_, &wrong_}) {
        int line = 28 + 2 * spacing::panel_gap_px;
        for (const Figure& figure : panel->figures) line += std::max(figure.label->sizeHint().width(), figure.value->sizeHint().width());
        widest = std::max(widest, line);
    }
    return {widest, right_.title->sizeHint().height()};
}

void AccountsView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    arrangeSides();
}

void AccountsView::setScrolled(bool scrolled) {
    scrolled_ = scrolled;
    arrangeSides();
}

void AccountsView::arrangeSides() {
    sides_->setDirection(besideFits(width()) ? QBoxLayout::LeftToRight : QBoxLayout::TopToBottom);
    setMinimumHeight(scrolled_ ? heightIn(width()) : 0);
    updateGeometry();
}

void AccountsView::changeEvent(QEvent* event) {
    QWidget::changeEvent(event);
    if (right_.sentence->text().isEmpty()) return; // nothing is told yet
    if (event->type() == QEvent::StyleChange || event->type() == QEvent::PaletteChange) {
        applyFonts();
        arrangeSides();
    }
}

} // namespace ullage
