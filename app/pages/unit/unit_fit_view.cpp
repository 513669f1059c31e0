// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/unit/unit_fit_view.h"

#include "charts/line_chart.h"
#include "formats/text/quantity_title.h"
#include "pages/parts/page_parts.h"
#include "style/numbers.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"
#include "style/wrapped_label.h"
#include "unit/gauge_drift_words.h"

#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QResizeEvent>
#include <QScrollArea>
#include <QStyle>
#include <QTabBar>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace ullage {

namespace {

constexpr int words_width_px = 296;
constexpr int chart_lines = 14; ///< of text, at least

} // namespace

UnitFitView::UnitFitView(QWidget* parent)
    : QFrame(parent), repeats_(new_paragraph("repeatsLabel", Tone::ink)), sentence_(new_paragraph("fitSentenceLabel", Tone::ink)),
      next_(new_paragraph("nextRunLabel", Tone::accent)), drift_(new_paragraph("driftLabel", Tone::soft)),
      gauge_drift_(new_paragraph("gaugeDriftLabel", Tone::soft)), off_chart_(new_paragraph("offChartLabel", Tone::soft, TextSize::caption)),
      unused_(new_paragraph("unusedRunsLabel", Tone::soft, TextSize::caption)), tabs_(new QTabWidget), usable_chart_(new LineChart),
      run_time_chart_(new LineChart), gauge_chart_(new LineChart) {
    setObjectName(QStringLiteral("unitFitPanel"));
    setAccessibleName(tr("What all drains say together"));
    make_panel(*this);
    usable_chart_->setObjectName(QStringLiteral("usableChart"));
    run_time_chart_->setObjectName(QStringLiteral("runTimeChart"));
    gauge_chart_->setObjectName(QStringLiteral("gaugeDriftChart"));
    tabs_->setObjectName(QStringLiteral("unitChartsTabs"));
    tabs_->setAccessibleName(tr("Charts of the unit"));
    tabs_->tabBar()->setExpanding(false);
    tabs_->addTab(usable_chart_, tr("Usable fraction"));
    tabs_->addTab(run_time_chart_, tr("Run time"));
    tabs_->addTab(gauge_chart_, tr("Gauge error"));
    row_ = new QHBoxLayout(this);
    row_->setContentsMargins(1, 1, 1, 1);
    row_->setSpacing(0);
    row_->addWidget(makeWords());
    row_->addWidget(tabs_, 1);
    keep_lines(*tabs_, chart_lines);
    tabs_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored); // the page shares out the room there is, rather than scroll for more
}

void UnitFitView::setStacked(bool stacked) {
    const auto direction = stacked ? QBoxLayout::TopToBottom : QBoxLayout::LeftToRight;
    if (row_->direction() == direction) return;
    row_->setDirection(direction);
    fitWords();
}

QWidget* UnitFitView::makeWords() {
    auto* side = new QWidget;
    auto* head = new QLabel(tr("What all drains say together"));
    set_text_style(*head, Tone::soft, TextSize::group);
    auto* figures = new QGridLayout;
    figures->setHorizontalSpacing(spacing::panel_gap_px);
    figures->setVerticalSpacing(2);
    figures->setColumnStretch(2, 1);
    draw_ = makeFigure(QStringLiteral("noLoadDraw"), tr("no-load draw"), *figures, 0);
    energy_ = makeFigure(QStringLiteral("noTimeCostEnergy"), tr("energy before own consumption"), *figures, 1);
    endurance_ = makeFigure(QStringLiteral("noLoadEndurance"), tr("idle run time"), *figures, 2);
    auto* column = new QVBoxLayout(side);
    column->setContentsMargins(spacing::page_margin_px, spacing::panel_gap_px, spacing::page_margin_px, spacing::panel_gap_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(head);
    column->addLayout(figures);
    for (QLabel* label : {repeats_, sentence_, next_, drift_, gauge_drift_, off_chart_, unused_}) column->addWidget(label);
    column->addStretch();
    // A low window must not squeeze the words onto one another.
    words_area_ = scrolling(*side, this);
    words_area_->setObjectName(QStringLiteral("unitFitScroll"));
    words_area_->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    return words_area_;
}

void UnitFitView::fitWords() {
    if (row_->direction() == QBoxLayout::TopToBottom) {
        words_area_->setMinimumWidth(0);
        words_area_->setMaximumWidth(QWIDGETSIZE_MAX);
        words_area_->setFixedHeight(words_area_->widget()->layout()->totalHeightForWidth(width() - 2));
        return;
    }
    words_area_->setMinimumHeight(0);
    words_area_->setMaximumHeight(QWIDGETSIZE_MAX);
    // Figures do not wrap, so the widest line of them sets the width.
    const int bar_px = style()->pixelMetric(QStyle::PM_ScrollBarExtent, nullptr, words_area_);
    words_area_->setFixedWidth(std::max(words_width_px, words_area_->widget()->minimumSizeHint().width() + bar_px));
}

void UnitFitView::resizeEvent(QResizeEvent* event) {
    QFrame::resizeEvent(event);
    if (event->size().width() != event->oldSize().width()) fitWords();
}

void UnitFitView::showEvent(QShowEvent* event) {
    QFrame::showEvent(event);
    fitWords(); // only now the words have the size of text that they are shown with
}

void UnitFitView::changeEvent(QEvent* event) {
    QFrame::changeEvent(event);
    if (event->type() == QEvent::FontChange || event->type() == QEvent::StyleChange) fitWords();
}

UnitFitView::Figure UnitFitView::makeFigure(const QString& key, const QString& name, QGridLayout& grid, int row) {
    Figure figure{new QLabel(name), new QLabel, new QLabel, new WrappedLabel};
    figure.value->setObjectName(key + QStringLiteral("Label"));
    figure.interval->setObjectName(key + QStringLiteral("IntervalLabel"));
    figure.reason->setObjectName(key + QStringLiteral("ReasonLabel"));
    for (QLabel* label : {figure.value, figure.interval, figure.reason}) label->setTextFormat(Qt::PlainText);
    set_text_style(*figure.name, Tone::soft, TextSize::caption);
    set_text_style(*figure.interval, Tone::soft, TextSize::caption);
    set_text_style(*figure.reason, Tone::soft, TextSize::caption);
    grid.addWidget(figure.name, 2 * row, 0, Qt::AlignLeft | Qt::AlignBaseline);
    grid.addWidget(figure.value, 2 * row, 1, Qt::AlignRight | Qt::AlignBaseline);
    grid.addWidget(figure.interval, 2 * row, 2, Qt::AlignLeft | Qt::AlignBaseline);
    grid.addWidget(figure.reason, 2 * row + 1, 0, 1, 3);
    return figure;
}

void UnitFitView::fill(const Figure& figure, const Quantity& quantity, const QString& said) {
    const QString text = shown_quantity(quantity, quantity_decimals(quantity.key)).plain();
    const qsizetype sign = text.indexOf(QStringLiteral(" ±"));
    figure.value->setText(sign > 0 ? text.left(sign) : text);
    figure.interval->setText(sign > 0 ? text.mid(sign + 1) : QString());
    const bool known = quantity.kind != Kind::not_known;
    set_text_style(*figure.value, known ? Tone::ink : Tone::soft, sign > 0 ? TextSize::figure : TextSize::body);
    const QString reason = text_of(quantity.reason);
    for (QLabel* label : {figure.name, figure.value, figure.interval}) label->setToolTip(reason);
    // What is not plainly known has its reason below, unless the sentence says it already.
    const bool plain = quantity.kind == Kind::measured || quantity.kind == Kind::projected;
    figure.reason->setText(reason);
    figure.reason->setVisible(!plain && !reason.isEmpty() && !said.contains(reason));
}

void UnitFitView::setUnit(const UnitAnalysis& analysis, const std::vector<MeasuredDrain>& drains) {
    const UnitFit& fit = analysis.fit;
    const QString sentence = text_of(fit.sentence);
    fill(draw_, fit.no_load_draw_w, sentence);
    fill(energy_, fit.deliverable_at_no_time_cost_wh, sentence);
    fill(endurance_, fit.no_load_endurance_h, sentence);
    repeats_->setText(text_of(repeats_sentence(fit.repeats, fit.options)));
    repeats_->setVisible(!repeats_->text().isEmpty());
    sentence_->setText(sentence);
    next_->setText(text_of(analysis.next_run_sentence));
    drift_->setText(text_of(analysis.drift.sentence));
    QString gauge = text_of(analysis.gauge_drift.sentence);
    if (const auto& lead = analysis.gauge_drift.lead)
        gauge += QLatin1Char('\n') + text_of(wh_per_point_sentence(fit, analysis.gauge_drift.comparisons[*lead]));
    gauge_drift_->setText(gauge);
    off_chart_->setText(off_chart_text(fit));
    off_chart_->setVisible(!off_chart_->text().isEmpty());
    unused_->setText(unused_runs_text(fit));
    unused_->setVisible(!unused_->text().isEmpty());
    if (window()->isVisible()) fitWords(); // else once it is shown
    const bool rated = analysis.unit.rated_energy_wh.value_or(0) > 0;
    tabs_->setTabText(0, rated ? tr("Usable fraction") : tr("Deliverable energy"));
    const std::optional<double> next_w = analysis.next_run ? std::optional(analysis.next_run->load_w) : std::nullopt;
    usable_chart_->setContent(usable_chart(fit, analysis.unit, drains, next_w));
    run_time_chart_->setContent(run_time_chart(fit, analysis.unit, drains, next_w));
    gauge_chart_->setContent(gauge_drift_chart(fit, analysis.gauge_drift));
    for (LineChart* chart : {usable_chart_, run_time_chart_, gauge_chart_}) {
        chart->resetZoom();
        chart->setAccessibleName(chart->content().description);
    }
    if (isVisible()) fitWords();
}

QString unused_runs_text(const UnitFit& fit) {
    QStringList runs;
    for (const DrainSummary& drain : fit.drains)
        if (!drain.used && (drain.kind == RunKind::drain || drain.kind == RunKind::no_load_drain)) // of others nobody expects it
            runs << UnitFitView::tr("run %1, %2 (%3)").arg(drain.run_number).arg(text_of(drain.title), text_of(drain.reason));
    return runs.isEmpty() ? QString() : UnitFitView::tr("Not used here: %1.").arg(runs.join(QStringLiteral("; ")));
}

} // namespace ullage
