// SPDX-License-Identifier: GPL-3.0-or-later
#include "pages/run/log_view.h"

#include "base/number.h"
#include "charts/line_chart.h"
#include "pages/parts/page_parts.h"
#include "pages/run/log_list.h"
#include "services/log_follower.h"
#include "style/roles.h"
#include "style/spacing.h"
#include "style/words.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QVBoxLayout>

#include <fmt/format.h>

#include <tuple>
#include <utility>

namespace ullage {

namespace {

constexpr int figure_columns = 4;
constexpr int least_chart_lines = 10;

struct LoadFigure {
    QString name, value;
};

std::vector<LoadFigure> figures_of(const LoadStatistics& load) {
    const QLocale locale;
    const auto with = [&locale](double value, int decimals, const char* unit) {
        return QStringLiteral("%1 %2").arg(locale.toString(value, 'f', decimals), raw_text(unit));
    };
    std::vector<LoadFigure> figures = {{LogView::tr("mean"), with(load.mean_w, 1, "W")},
                                       {LogView::tr("peak"), with(load.peak_w, 1, "W")},
                                       {LogView::tr("a day of it"), with(load.daily_wh, 0, "Wh")},
                                       {LogView::tr("energy, power integrated"), with(load.energy_wh, 1, "Wh")}};
    if (load.register_wh) figures.push_back({LogView::tr("its register over the same times"), with(*load.register_wh, 1, "Wh")});
    if (load.cycle) {
        figures.push_back({LogView::tr("while on"), with(load.cycle->on_w, 1, "W")});
        figures.push_back({LogView::tr("while off"), with(load.cycle->off_w, 1, "W")});
        figures.push_back({LogView::tr("share of the time on"), with(100 * load.cycle->duty, 1, "%")});
        figures.push_back({LogView::tr("starts"), with(load.cycle->starts_per_hour, 2, "per h")});
    } else {
        figures.push_back({LogView::tr("switching"), LogView::tr("of one level")});
    }
    figures.push_back({LogView::tr("∫P² dt, for losses"), with(load.square_w2h, 0, "W²h")});
    figures.push_back({LogView::tr("time covered"), text_of(duration_text(load.covered_h))});
    if (load.gaps > 0)
        figures.push_back(
            {LogView::tr("gaps left out"),
             LogView::tr("%1 (%2, at most %3)").arg(load.gaps).arg(text_of(duration_text(load.gap_h)), with(load.gap_most_wh, 0, "Wh"))});
    return figures;
}

void clear_layout(QLayout& layout) {
    while (QLayoutItem* item = layout.takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

} // namespace

LogView::LogView(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), chart_(new LineChart(this)), empty_(new_paragraph("noLogLabel", Tone::soft)),
      error_(new_paragraph("logErrorLabel", Tone::fault)), logs_(new LogList(this)), figures_box_(new QWidget(this)),
      import_(new_button("importLogButton", tr("Import log…"))), appliance_(new_button("logApplianceButton", tr("Add to a load list…"))) {
    setObjectName(QStringLiteral("logView"));
    chart_->setObjectName(QStringLiteral("logChart"));
    empty_->setText(
        tr("No log of a meter in this run. A meter that logs can be read here: its register and power then go with the gauge readings that are "
           "noted by hand."));
    // At large text the figures need more room than a page has beside the readings.
    auto* content = new QWidget;
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    outer->addWidget(scrolling(*content, this));
    chart_->setMinimumHeight(fontMetrics().height() * least_chart_lines);
    chart_->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored); // takes what the figures leave
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(spacing::page_margin_px, spacing::grid_px, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(error_);
    column->addWidget(empty_);
    column->addWidget(chart_, 1);
    figures_ = new QGridLayout(figures_box_);
    figures_->setContentsMargins(0, 0, 0, 0);
    figures_->setVerticalSpacing(2);
    figures_->setHorizontalSpacing(spacing::page_margin_px);
    column->addWidget(figures_box_);
    column->addWidget(logs_);
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(import_);
    buttons->addWidget(appliance_);
    buttons->addStretch();
    column->addLayout(buttons);
    column->addStretch(0);
    error_->hide();
    connect(import_, &QPushButton::clicked, this, &LogView::importAsked);
    connect(appliance_, &QPushButton::clicked, this, &LogView::applianceAsked);
    connect(logs_, &LogList::withdrawAsked, this, &LogView::withdraw, Qt::QueuedConnection);
    connect(logs_, &LogList::followAsked, this, &LogView::followAsked);
    connect(chart_, &LineChart::visibleSpanChanged, this, &LogView::showSpan);
}

QWidget* LogView::chart() const { return chart_; }

void LogView::setRun(const QString& run_uuid) {
    run_uuid_ = utf8_of(run_uuid);
    if (isVisible()) look();
}

void LogView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    look();
    showLogs(); // following says nothing to a view out of sight
}

std::string LogView::markOf(const std::vector<Trace>& traces) const {
    const RunRecord* record = document_.run(run_uuid_);
    std::string mark = run_uuid_;
    for (const Trace& trace : traces) mark += fmt::format(" {} {} {} {}", trace.uuid, trace.samples, trace.rows_left_out, trace.started_anew);
    // The load's figures go from the first reading to the end of the run.
    if (record && !record->readings.empty() && !traces.empty())
        mark += fmt::format(" {} {} {}", record->readings.front().values.time_ms, record->readings.back().values.time_ms,
                            static_cast<int>(record->run.end));
    return mark;
}

void LogView::look() {
    if (!document_.run(run_uuid_)) return;
    const auto traces = document_.traces(run_uuid_);
    error_->hide();
    if (!traces) {
        error_->setText(text_of(traces.error().sentence()));
        error_->show();
        return;
    }
    if (markOf(traces.value()) == seen_) return;
    seen_ = markOf(traces.value());
    traces_ = traces.value();
    const bool any = !traces_.empty();
    for (QWidget* part : {static_cast<QWidget*>(chart_), static_cast<QWidget*>(logs_), figures_box_, static_cast<QWidget*>(appliance_)})
        part->setVisible(any);
    empty_->setVisible(!any);
    curve_.reset();
    showLogs();
    if (!any) return;
    const auto load = document_.load(run_uuid_);
    showLoad(load ? load.value() : std::nullopt);
    const UtcMs start_ms = document_.analysis(run_uuid_).energy.start_ms;
    auto curve = PowerCurve::of(document_, traces_, start_ms != 0 ? start_ms : traces_.front().first_ms);
    if (!load || !curve) {
        error_->setText(text_of((load ? curve.error() : load.error()).sentence()));
        error_->show();
        return;
    }
    curve_ = std::move(curve).value();
    showCurve();
}

void LogView::setFollower(LogFollower& follower) {
    follower_ = &follower;
    connect(follower_, &LogFollower::changed, this, [this](const QString& run) {
        if (utf8_of(run) == run_uuid_ && isVisible()) showLogs();
    });
    connect(logs_, &LogList::stopAsked, this, [this](const QString& trace) { follower_->stop(utf8_of(trace)); });
}

void LogView::showLogs() {
    if (const RunRecord* record = document_.run(run_uuid_))
        logs_->setLogs(traces_, record->run.time_zone, record->run.end == RunEnd::still_running, follower_);
}

void LogView::withdraw(int place) {
    if (place < 0 || place >= static_cast<int>(traces_.size())) return;
    const auto done = document_.withdrawTrace(traces_[static_cast<std::size_t>(place)]);
    if (done) return;
    error_->setText(text_of(done.error().sentence()));
    error_->show();
}

void LogView::showLoad(const std::optional<LoadStatistics>& load) {
    clear_layout(*figures_);
    appliance_->setVisible(load.has_value());
    if (!load) return;
    int place = 0;
    for (const LoadFigure& figure : figures_of(*load)) {
        auto* name = new QLabel(figure.name);
        auto* value = new QLabel(figure.value);
        set_text_style(*name, Tone::soft, TextSize::caption);
        set_text_style(*value, Tone::ink);
        for (QLabel* label : {name, value}) label->setWordWrap(true); // else the longest would hold the page wide
        value->setTextInteractionFlags(Qt::TextSelectableByMouse);
        const int row = 2 * (place / figure_columns), column = place % figure_columns;
        figures_->addWidget(name, row, column);
        figures_->addWidget(value, row + 1, column);
        ++place;
    }
}

void LogView::showCurve() {
    ChartContent content;
    content.description = tr("Power of the log against hours since the start");
    content.x.title = tr("hours since start");
    content.x.unit = QStringLiteral("h");
    content.y.title = tr("power / W");
    content.y.unit = QStringLiteral("W");
    content.y.include_zero = true;
    content.empty_text = tr("The log holds no power: its register counts, and stands in the readings' energy.");
    ChartSeries power;
    power.id = QStringLiteral("log_power");
    power.marker = Marker::none;
    power.colour = CurveColour::delivered;
    power.points = curve_->overview();
    if (!power.points.empty()) {
        content.x.minimum = power.points.front().x;
        content.x.maximum = power.points.back().x;
    }
    content.series.push_back(std::move(power));
    content_ = content;
    content_.series.front().points.clear();
    // A log that has only grown stays as it is looked at.
    const auto [from_h, to_h] = chart_->visibleSpan();
    const bool zoomed = curve_of_ == run_uuid_ + traces_.front().uuid && (from_h > whole_from_h_ || to_h < whole_to_h_);
    curve_of_ = run_uuid_ + traces_.front().uuid;
    showing_ = true; // what the chart says of its span meanwhile is known
    chart_->setContent(std::move(content));
    if (!zoomed) chart_->resetZoom();
    showing_ = false;
    if (zoomed) {
        showSpan(from_h, to_h);
        return;
    }
    std::tie(whole_from_h_, whole_to_h_) = chart_->visibleSpan();
}

void LogView::showSpan(double from_h, double to_h) {
    if (!curve_ || showing_) return;
    auto points = curve_->inView(document_, from_h, to_h);
    if (!points) {
        error_->setText(text_of(points.error().sentence()));
        error_->show();
        return;
    }
    ChartContent content = content_;
    content.series.front().points = std::move(points).value();
    showing_ = true;
    chart_->setContent(std::move(content));
    showing_ = false;
}

} // namespace ullage
