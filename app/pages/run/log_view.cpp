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

#include <QApplication>
#include <QEvent>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLocale>
#include <QPushButton>
#include <QScrollArea>
#include <QVBoxLayout>

#include <fmt/format.h>

#include <algorithm>
#include <iterator>
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

/// Charts above one another that take what room there is, and where texts wrap never less than they need.
class ChartsBox final : public QWidget {
public:
    ChartsBox(std::vector<QWidget*> charts, QWidget* parent) : QWidget(parent), charts_(std::move(charts)) {
        auto* column = new QVBoxLayout(this);
        column->setContentsMargins(0, 0, 0, 0);
        for (QWidget* chart : charts_) column->addWidget(chart, 1);
        setSizePolicy(QSizePolicy::Expanding, QSizePolicy::MinimumExpanding);
    }
    [[nodiscard]] QSize sizeHint() const override {
        const auto shown = std::ranges::count_if(charts_, [](const QWidget* chart) { return !chart->isHidden(); });
        return {0, static_cast<int>(shown) * fontMetrics().height() * least_chart_lines};
    }
    [[nodiscard]] QSize minimumSizeHint() const override { return sizeHint(); }
    [[nodiscard]] bool hasHeightForWidth() const override { return false; } // else that of the charts' texts would count alone

private:
    std::vector<QWidget*> charts_;
};

/// Widens an axis to what a curve spans.
void span_also(const std::vector<ChartPoint>& points, AxisSpec& axis) {
    if (points.empty()) return;
    axis.minimum = std::min(axis.minimum.value_or(points.front().x), points.front().x);
    axis.maximum = std::max(axis.maximum.value_or(points.back().x), points.back().x);
}

void clear_layout(QLayout& layout) {
    while (QLayoutItem* item = layout.takeAt(0)) {
        delete item->widget();
        delete item;
    }
}

} // namespace

LogView::LogView(Document& document, QWidget* parent)
    : QWidget(parent), document_(document), chart_(new LineChart(this)), gauge_chart_(new LineChart(this)),
      empty_(new_paragraph("noLogLabel", Tone::soft)), error_(new_paragraph("logErrorLabel", Tone::fault)), logs_(new LogList(this)),
      figures_box_(new QWidget(this)), import_(new_button("importLogButton", tr("Import log…"))),
      appliance_(new_button("logApplianceButton", tr("Add to a load list…"))) {
    setObjectName(QStringLiteral("logView"));
    chart_->setObjectName(QStringLiteral("logChart"));
    gauge_chart_->setObjectName(QStringLiteral("gaugeLogChart"));
    empty_->setText(
        tr("No log in this run. A meter that logs can be read here: its register and power then go with the gauge readings that are noted by "
           "hand. So can a log of the unit's gauge."));
    // At large text the figures need more room than a page has beside the readings.
    auto* content = new QWidget;
    auto* outer = new QVBoxLayout(this);
    outer->setContentsMargins(0, 0, 0, 0);
    area_ = scrolling(*content, this);
    outer->addWidget(area_);
    for (LineChart* chart : {chart_, gauge_chart_}) chart->setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Ignored);
    auto* column = new QVBoxLayout(content);
    column->setContentsMargins(spacing::page_margin_px, spacing::grid_px, spacing::page_margin_px, spacing::grid_px);
    column->setSpacing(spacing::grid_px);
    column->addWidget(error_);
    column->addWidget(empty_);
    charts_box_ = new ChartsBox({chart_, gauge_chart_}, content);
    column->addWidget(charts_box_, 1);
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
    connect(gauge_chart_, &LineChart::visibleSpanChanged, this, &LogView::showGaugeSpan);
}

QWidget* LogView::chart() const { return chart_; }

void LogView::setRun(const RunId& run_uuid) {
    run_uuid_ = run_uuid;
    if (isVisible()) look();
}

void LogView::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    look();
    showLogs(); // following says nothing to a view out of sight
}

std::string LogView::markOf(const std::vector<Trace>& traces) const {
    const RunRecord* record = document_.run(run_uuid_);
    std::string mark = run_uuid_.text();
    for (const Trace& trace : traces) mark += fmt::format(" {} {} {} {}", trace.uuid.text(), trace.samples, trace.rows_left_out, trace.started_anew);
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
    for (QWidget* part : {static_cast<QWidget*>(chart_), charts_box_, static_cast<QWidget*>(logs_), figures_box_, static_cast<QWidget*>(appliance_)})
        part->setVisible(any);
    empty_->setVisible(!any);
    curves_.clear();
    gauge_.reset();
    gauge_chart_->hide();
    showLogs();
    if (!any) return;
    const auto load = document_.load(run_uuid_);
    showLoad(load ? load.value() : std::nullopt);
    const UtcMs start_ms = document_.analysis(run_uuid_).energy.start_ms;
    const auto read = readCurves(start_ms != 0 ? start_ms : traces_.front().first_ms);
    if (!load || !read) {
        error_->setText(text_of((load ? read.error() : load.error()).sentence()));
        error_->show();
        return;
    }
    chart_->setVisible(!curves_.empty());
    showCurve();
    showGauge();
    // What has been laid out while out of sight is measured anew, so that it scrolls where it needs more room.
    QApplication::postEvent(area_, new QEvent(QEvent::LayoutRequest));
}

/// The power by each meter, what the unit says of its output, and its gauge.
Result<void> LogView::readCurves(UtcMs origin_ms) {
    const RunRecord* record = document_.run(run_uuid_);
    const std::optional<MeterId> own = record ? record->run.meter_uuid : std::nullopt;
    std::vector<std::pair<std::optional<MeterId>, std::vector<Trace>>> by_meter;
    std::vector<Trace> with_output, with_gauge;
    for (const Trace& trace : traces_) {
        if (trace.has(holds_output)) with_output.push_back(trace);
        if (trace.has(holds_gauge)) with_gauge.push_back(trace);
        if (!trace.has(holds_meter)) continue;
        const auto meter = trace.meter_uuid ? trace.meter_uuid : own;
        const auto known = std::ranges::find_if(by_meter, [&meter](const auto& group) { return group.first == meter; });
        if (known == by_meter.end()) by_meter.emplace_back(meter, std::vector{trace});
        else known->second.push_back(trace);
    }
    std::ranges::stable_partition(by_meter, [&own](const auto& group) { return group.first == own; });
    const auto add = [&](const QString& id, const QString& name, CurveColour colour, const std::vector<Trace>& traces,
                         std::optional<double> TraceSample::*value) -> Result<void> {
        auto curve = PowerCurve::of(document_, traces, origin_ms, value);
        if (!curve) return curve.error();
        Drawn drawn;
        drawn.series.id = id;
        drawn.series.name = name;
        drawn.series.marker = Marker::none;
        drawn.series.colour = colour;
        drawn.curve = std::move(curve).value();
        curves_.push_back(std::move(drawn));
        return {};
    };
    constexpr CurveColour colours[] = {CurveColour::delivered, CurveColour::good, CurveColour::sky, CurveColour::accent};
    for (std::size_t m = 0; m < by_meter.size(); ++m) {
        const auto& [uuid, traces] = by_meter[m];
        const Meter* meter = uuid ? document_.meter(*uuid) : nullptr;
        const QString id = m == 0 ? QStringLiteral("log_power") : QStringLiteral("log_power_%1").arg(m + 1);
        const bool alone = by_meter.size() == 1 && with_output.empty();
        const QString name = alone ? QString() : meter ? text_of(meter->name) : tr("meter");
        if (auto added = add(id, name, colours[m % std::size(colours)], traces, &TraceSample::power_w); !added) return added;
    }
    if (!with_output.empty())
        if (auto added = add(QStringLiteral("log_output"), tr("the unit says"), CurveColour::vermilion, with_output, &TraceSample::output_w); !added)
            return added;
    if (with_gauge.empty()) return {};
    // What no gauge shows is left out of the drawing too.
    auto gauge = PowerCurve::of(document_, with_gauge, origin_ms, &TraceSample::gauge_percent, 100);
    if (!gauge) return gauge.error();
    gauge_ = std::move(gauge).value();
    return {};
}

void LogView::setFollower(LogFollower& follower) {
    follower_ = &follower;
    connect(follower_, &LogFollower::changed, this, [this](const RunId& run) {
        if (run == run_uuid_ && isVisible()) showLogs();
    });
    connect(logs_, &LogList::stopAsked, this, [this](const TraceId& trace) { follower_->stop(trace); });
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
    content_ = content;
    for (const Drawn& drawn : curves_) {
        content_.series.push_back(drawn.series);
        ChartSeries series = drawn.series;
        series.points = drawn.curve.overview();
        for (ChartContent* each : {&content, &content_}) span_also(series.points, each->x);
        content.series.push_back(std::move(series));
    }
    // A log that has only grown stays as it is looked at.
    const auto [from_h, to_h] = chart_->visibleSpan();
    const bool zoomed = curve_of_ == traces_.front().uuid && (from_h > whole_from_h_ || to_h < whole_to_h_);
    curve_of_ = traces_.front().uuid;
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
    if (curves_.empty() || showing_) return;
    ChartContent content = content_;
    for (std::size_t c = 0; c < curves_.size(); ++c) {
        auto points = curves_[c].curve.inView(document_, from_h, to_h);
        if (!points) {
            error_->setText(text_of(points.error().sentence()));
            error_->show();
            return;
        }
        content.series[c].points = std::move(points).value();
    }
    showing_ = true;
    chart_->setContent(std::move(content));
    showing_ = false;
}

void LogView::showGauge() {
    gauge_chart_->setVisible(gauge_.has_value());
    charts_box_->updateGeometry();
    if (!gauge_) return;
    ChartContent content;
    content.description = tr("Gauge of the unit by its log against hours since the start");
    content.x.title = tr("hours since start");
    content.x.unit = QStringLiteral("h");
    content.y.title = tr("gauge / %");
    content.y.unit = QStringLiteral("%");
    content.y.minimum = 0;
    content.y.maximum = 100;
    content.empty_text = tr("The log holds no number in its column of the gauge.");
    ChartSeries series;
    series.id = QStringLiteral("log_gauge");
    series.marker = Marker::none;
    series.colour = CurveColour::gauge_implied;
    series.steps = true;
    gauge_content_ = content;
    gauge_content_.series.push_back(series);
    series.points = gauge_->overview();
    for (ChartContent* each : {&content, &gauge_content_}) span_also(series.points, each->x);
    content.series.push_back(std::move(series));
    showing_ = true;
    gauge_chart_->setContent(std::move(content));
    gauge_chart_->resetZoom();
    showing_ = false;
}

void LogView::showGaugeSpan(double from_h, double to_h) {
    if (!gauge_ || showing_) return;
    auto points = gauge_->inView(document_, from_h, to_h);
    if (!points) {
        error_->setText(text_of(points.error().sentence()));
        error_->show();
        return;
    }
    ChartContent content = gauge_content_;
    content.series.front().points = std::move(points).value();
    showing_ = true;
    gauge_chart_->setContent(std::move(content));
    showing_ = false;
}

} // namespace ullage
