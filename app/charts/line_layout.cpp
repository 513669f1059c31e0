// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/line_layout.h"

#include "charts/label_layout.h"
#include "style/spacing.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>
#include <limits>

namespace ullage {
namespace {

using spacing::grid_px;
using spacing::half_px;

// More than these make a large chart busy without making it easier to read.
constexpr int most_ticks_x = 12;
constexpr int most_ticks_y = 8;

struct Span {
    double lo = std::numeric_limits<double>::infinity();
    double hi = -std::numeric_limits<double>::infinity();

    void take(double value, bool logarithmic) {
        if (!std::isfinite(value) || (logarithmic && value <= 0)) return;
        lo = std::min(lo, value);
        hi = std::max(hi, value);
    }
    [[nodiscard]] bool valid() const { return lo <= hi; }
};

Span x_span(const ChartContent& content, const QSet<QString>& hidden) {
    Span span;
    const bool log = content.x.logarithmic;
    for (const ChartSeries& series : content.series) {
        if (hidden.contains(group_of(series))) continue;
        for (const ChartPoint& point : series.points) span.take(point.x, log);
        for (const ChartBandPoint& point : series.band) span.take(point.x, log);
    }
    for (const ChartRegion& region : content.regions) {
        span.take(region.from, log);
        span.take(region.to, log);
    }
    for (const ChartVerticalLine& line : content.vertical_lines) span.take(line.value, log);
    return span;
}

Span y_span(const ChartContent& content, const QSet<QString>& hidden) {
    Span span;
    const bool log = content.y.logarithmic;
    for (const ChartSeries& series : content.series) {
        if (hidden.contains(group_of(series))) continue;
        for (const ChartPoint& point : series.points) span.take(point.y, log);
        for (const ChartBandPoint& point : series.band) {
            span.take(point.lower, log);
            span.take(point.upper, log);
        }
    }
    for (const ChartHorizontalLine& line : content.horizontal_lines) span.take(line.value, log);
    for (const ChartHorizontalBand& band : content.horizontal_bands) {
        span.take(band.lower, log);
        span.take(band.upper, log);
    }
    return span;
}

TickScale ticks_of(const AxisSpec& axis, double lo, double hi, int most, bool widen) {
    if (axis.logarithmic) return log_ticks(lo, hi, most, widen);
    return axis.unit == QLatin1String("h") ? hour_ticks(lo, hi, most, widen) : linear_ticks(lo, hi, most, widen);
}

// The scale of one axis without zoom. `headroom`: free share above the highest value, so that no mark touches the rim.
TickScale whole_scale(const AxisSpec& axis, Span span, int most, double headroom) {
    if (!span.valid()) span = axis.logarithmic ? Span{1, 10} : Span{0, 1};
    if (axis.include_zero && !axis.logarithmic) {
        span.lo = std::min(span.lo, 0.0);
        span.hi = std::max(span.hi, 0.0);
    }
    const double wide = span.hi - span.lo;
    if (!axis.logarithmic && headroom > 0) {
        if (span.hi != 0) span.hi += headroom * wide;
        if (span.lo < 0) span.lo -= headroom * wide;
    }
    const double lo = axis.minimum.value_or(span.lo);
    const double hi = axis.maximum.value_or(span.hi);
    TickScale scale = ticks_of(axis, lo, hi, most, true);
    if (axis.minimum && *axis.minimum < scale.maximum && !(axis.logarithmic && *axis.minimum <= 0)) scale.minimum = *axis.minimum;
    if (axis.maximum && *axis.maximum > scale.minimum) scale.maximum = *axis.maximum;
    std::erase_if(scale.values, [&scale](double value) {
        const double slack = 1e-9 * (scale.maximum - scale.minimum);
        return value < scale.minimum - slack || value > scale.maximum + slack;
    });
    return scale;
}

double widest_text(const TickScale& scale, const QFontMetricsF& metrics) {
    double width = 0;
    for (const double value : scale.values) width = std::max(width, metrics.horizontalAdvance(tick_text(value, scale.step)));
    return width;
}

// Where the visible part of a curve ends, in values; absent when none of it is in view.
std::optional<ChartPoint> visible_end(const ChartSeries& series, const LineLayout& layout) {
    const auto past =
        std::upper_bound(series.points.begin(), series.points.end(), layout.x.maximum, [](double x, const ChartPoint& point) { return x < point.x; });
    const auto placed = [&layout](const ChartPoint& point) { return layout.axes.map(point.x, point.y).has_value(); };
    if (series.line != CurveLine::none && past != series.points.end() && past != series.points.begin()) {
        // The curve leaves through the right edge.
        const ChartPoint& before = *std::prev(past);
        if (placed(*past) && placed(before) && past->x > before.x) {
            const double share = (layout.x.maximum - before.x) / (past->x - before.x);
            return ChartPoint{layout.x.maximum, series.steps ? before.y : before.y + share * (past->y - before.y)};
        }
    }
    for (auto at = past; at != series.points.begin();) {
        --at;
        if (at->x < layout.x.minimum) return std::nullopt;
        if (placed(*at)) return *at;
    }
    return std::nullopt;
}

struct Wish {
    ChartLabel label;
    double width = 0;
};

// Names of curves and lines with the places that they would like; texts not yet shortened.
std::vector<Wish> wanted_labels(const ChartContent& content, const ChartLook& look, const LineLayout& layout, const QSet<QString>& hidden,
                                const QFontMetricsF& metrics) {
    std::vector<Wish> wishes;
    const auto add = [&](const QString& group, const QString& text, QPointF anchor, QColor colour, bool off) {
        anchor.setY(std::clamp(anchor.y(), layout.plot.top(), layout.plot.bottom()));
        wishes.push_back({{group, text, {}, anchor, colour, off}, metrics.horizontalAdvance(text)});
    };
    for (const ChartSeries& series : content.series) {
        if (series.name.isEmpty()) continue;
        const bool off = hidden.contains(group_of(series));
        if (const auto end = visible_end(series, layout))
            add(group_of(series), series.name, {layout.pixelX(end->x), layout.pixelY(end->y)},
                off ? look.palette.soft : curve_colour(series.colour, look.palette), off);
    }
    for (const ChartHorizontalLine& line : content.horizontal_lines)
        if (!line.label.isEmpty()) add({}, line.label, {layout.plot.right(), layout.pixelY(line.value)}, look.palette.soft, false);
    for (const ChartHorizontalBand& band : content.horizontal_bands)
        if (!band.label.isEmpty()) add({}, band.label, {layout.plot.right(), layout.pixelY((band.lower + band.upper) / 2)}, look.palette.soft, false);
    return wishes;
}

// `head`: height at the plot's top that belongs to the names of vertical lines.
void place_labels(std::vector<Wish> wishes, LineLayout& layout, const QSizeF& size, const QFontMetricsF& metrics, double head) {
    std::vector<LabelPlace> places;
    for (const Wish& wish : wishes) places.push_back({wish.label.anchor.y(), metrics.height()});
    const std::vector<double> middles =
        spread_labels(places, layout.plot.top() + (head > 0 ? head : -metrics.height() / 2), layout.plot.bottom() + metrics.height() / 2);
    for (std::size_t n = 0; n < wishes.size(); ++n) {
        ChartLabel& label = wishes[n].label;
        const double width = std::min(wishes[n].width, size.width() * 0.4);
        const double left = std::min(label.anchor.x() + grid_px + 2, size.width() - half_px - width);
        label.place = QRectF(left, middles[n] - metrics.height() / 2, width + 1, metrics.height());
        label.text = metrics.elidedText(label.text, Qt::ElideRight, width + 1);
        layout.labels.push_back(label);
    }
}

} // namespace

const QString& group_of(const ChartSeries& series) { return series.group.isEmpty() ? series.id : series.group; }

double LineLayout::pixelX(double value) const {
    const bool log = axes.x_logarithmic;
    const auto place = [log](double v) { return log ? std::log10(v) : v; };
    const double at = log && value <= 0 ? place(x.minimum) : place(value);
    return plot.left() + (at - place(x.minimum)) / (place(x.maximum) - place(x.minimum)) * plot.width();
}

double LineLayout::pixelY(double value) const {
    const bool log = axes.y_logarithmic;
    const auto place = [log](double v) { return log ? std::log10(v) : v; };
    const double at = log && value <= 0 ? place(y.minimum) : place(value);
    return plot.bottom() - (at - place(y.minimum)) / (place(y.maximum) - place(y.minimum)) * plot.height();
}

double LineLayout::valueX(double pixel) const {
    const double share = (pixel - plot.left()) / plot.width();
    if (axes.x_logarithmic) return x.minimum * std::pow(x.maximum / x.minimum, share);
    return x.minimum + share * (x.maximum - x.minimum);
}

QRectF LineLayout::axisWindow() const {
    const auto place = [](bool log, double value) { return log ? std::log10(value) : value; };
    return {QPointF(place(axes.x_logarithmic, x.minimum), place(axes.y_logarithmic, y.minimum)),
            QPointF(place(axes.x_logarithmic, x.maximum), place(axes.y_logarithmic, y.maximum))};
}

QTransform LineLayout::toPixels() const {
    const QRectF window = axisWindow();
    const double across = plot.width() / window.width(), up = -plot.height() / window.height();
    return {across, 0, 0, up, plot.left() - across * window.left(), plot.bottom() - up * window.top()};
}

LineLayout line_layout(const ChartContent& content, const ChartLook& look, const QSizeF& size, const std::optional<ChartWindow>& window,
                       const QSet<QString>& hidden) {
    const QFontMetricsF metrics(axis_font(look));
    const double line = metrics.height();
    LineLayout layout;
    layout.axes = {content.x.logarithmic, content.y.logarithmic};
    layout.empty = std::all_of(content.series.begin(), content.series.end(), [](const ChartSeries& series) { return series.points.empty(); });

    const double top = grid_px + line / 2;
    const double bottom = half_px + 2 + line + (content.x.title.isEmpty() ? half_px : line + 2) + half_px;
    const double height = std::max(24.0, size.height() - top - bottom);
    const int most_y = std::clamp(static_cast<int>(height / (line * 2.6)), 2, most_ticks_y);
    layout.y = whole_scale(content.y, y_span(content, hidden), most_y, 0.04);

    const double left = half_px + (content.y.title.isEmpty() ? 0 : line + half_px) + widest_text(layout.y, metrics) + grid_px;
    const Span span = x_span(content, hidden);
    double width = std::max(40.0, size.width() - left - 2 * grid_px);
    // The labels' room depends on where the curves end, the end on the scale, the scale on the room: two rounds settle it.
    for (int round = 0; round < 2; ++round) {
        layout.plot = QRectF(left, top, width, height);
        const int guess = std::clamp(static_cast<int>(width / (line * 3)), 2, most_ticks_x);
        const TickScale trial = whole_scale(content.x, span, guess, 0);
        const double label_width = std::max(widest_text(trial, metrics) * 1.6, line * 2.2);
        const int most_x = std::clamp(static_cast<int>(width / label_width), 2, most_ticks_x);
        layout.x = whole_scale(content.x, span, most_x, 0);
        layout.whole = {layout.x.minimum, layout.x.maximum};
        if (window) layout.x = ticks_of(content.x, window->from, window->to, most_x, false);
        const double all = size.width() - left - 2 * half_px;
        width = std::max(40.0, size.width() - left - 2 * grid_px);
        for (const Wish& wish : wanted_labels(content, look, layout, hidden, metrics)) {
            const double share = (wish.label.anchor.x() - layout.plot.left()) / layout.plot.width();
            const double room = all - grid_px - std::min(wish.width, size.width() * 0.4);
            if (share > 0.02) width = std::min(width, room / share);
        }
        width = std::max({width, 40.0, size.width() * 0.4});
        width = std::min(width, std::max(40.0, size.width() - left - 2 * grid_px));
        layout.plot.setWidth(width);
    }
    const bool named_vertical =
        std::any_of(content.vertical_lines.begin(), content.vertical_lines.end(), [](const ChartVerticalLine& at) { return !at.label.isEmpty(); });
    place_labels(wanted_labels(content, look, layout, hidden, metrics), layout, size, metrics, named_vertical ? line + 2 : 0);
    return layout;
}

std::optional<ChartWindow> zoomed_window(const ChartWindow& from, const ChartWindow& whole, double centre, double factor, double share,
                                         bool logarithmic) {
    const auto place = [logarithmic](double value) { return logarithmic ? std::log10(value) : value; };
    const auto value = [logarithmic](double at) { return logarithmic ? std::pow(10.0, at) : at; };
    const double whole_lo = place(whole.from);
    const double whole_hi = place(whole.to);
    const double middle = place(centre);
    double lo = middle + (place(from.from) - middle) * factor;
    double hi = middle + (place(from.to) - middle) * factor;
    const double width = std::clamp(hi - lo, (whole_hi - whole_lo) * 1e-4, whole_hi - whole_lo);
    if (width != hi - lo) {
        lo = (lo + hi - width) / 2;
        hi = lo + width;
    }
    lo = std::clamp(lo + share * width, whole_lo, whole_hi - width);
    hi = lo + width;
    if (width >= (whole_hi - whole_lo) * (1 - 1e-9)) return std::nullopt;
    return ChartWindow{value(lo), value(hi)};
}

} // namespace ullage
