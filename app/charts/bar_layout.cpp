// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/bar_layout.h"

#include "style/numbers.h"
#include "style/spacing.h"

#include <QFontMetricsF>

#include <algorithm>
#include <cmath>

namespace ullage {
namespace {

using spacing::grid_px;
using spacing::half_px;

QString text_of_value(const ChartBar& bar, const BarContent& content, double step) {
    if (!bar.value_text.isEmpty()) return bar.value_text;
    if (!bar.value || !std::isfinite(*bar.value)) return shown_number(std::nullopt, 0);
    if (bar.lower && bar.upper && *bar.upper > *bar.lower) {
        const double below = *bar.value - *bar.lower;
        const double above = *bar.upper - *bar.value;
        const double half_width = (below + above) / 2;
        const ValueText text = shown_value(bar.value, half_width, content.axis.unit, 0);
        // "±" would be a lie about an interval that is not symmetric; the error bar shows that one.
        if (std::fabs(above - below) <= 0.1 * half_width) return text.plain();
        return ValueText{text.value, {}, text.unit}.plain();
    }
    const QString digits = tick_text(*bar.value, step / 10);
    return content.axis.unit.isEmpty() ? digits : digits + QLatin1Char(' ') + content.axis.unit;
}

double far_end(const ChartBar& bar) {
    const double value = bar.value.value_or(0);
    return std::max({value, bar.upper.value_or(value), 0.0});
}

TickScale value_scale(const BarContent& content, int most) {
    double lo = 0; // a bar starts at zero
    double hi = 0;
    const auto take = [&](std::optional<double> value) {
        if (value && std::isfinite(*value)) {
            lo = std::min(lo, *value);
            hi = std::max(hi, *value);
        }
    };
    for (const ChartBar& bar : content.bars)
        for (const auto& value : {bar.value, bar.lower, bar.upper}) take(value);
    for (const ChartHorizontalBand& band : content.bands) {
        take(band.lower);
        take(band.upper);
    }
    take(content.axis.minimum);
    take(content.axis.maximum);
    if (lo == hi) hi = 1;
    return linear_ticks(lo, hi, most, true);
}

} // namespace

double BarLayout::pixelX(double value) const { return plot.left() + (value - scale.minimum) / (scale.maximum - scale.minimum) * plot.width(); }

double BarLayout::rowMiddle(std::size_t row) const { return plot.top() + row_height * (static_cast<double>(row) + 0.5); }

BarLayout bar_layout(const BarContent& content, const ChartLook& look, const QSizeF& size) {
    const QFontMetricsF names(look.font);
    const QFontMetricsF small(axis_font(look));
    BarLayout layout;
    double name_width = 0;
    for (const ChartBar& bar : content.bars)
        name_width = std::max({name_width, names.horizontalAdvance(bar.name), small.horizontalAdvance(bar.note)});
    double value_width = 0;
    for (const ChartBar& bar : content.bars) value_width = std::max(value_width, names.horizontalAdvance(text_of_value(bar, content, 1)));
    const double name_room = size.width() * 0.72 - value_width - 5 * grid_px;
    name_width = std::min(name_width + 2, std::clamp(name_room, size.width() * 0.2, size.width() * 0.36));
    const bool named_band =
        std::any_of(content.bands.begin(), content.bands.end(), [](const ChartHorizontalBand& band) { return !band.label.isEmpty(); });
    const double left = half_px + name_width + grid_px + half_px;
    const double top = grid_px + (named_band ? small.height() : 0);
    const double bottom = half_px + 2 + small.height() + (content.axis.title.isEmpty() ? half_px : small.height() + 2) + half_px;
    const double height = std::max(16.0, size.height() - top - bottom);
    double width = std::max(40.0, size.width() - left - 3 * grid_px);
    for (int round = 0; round < 2; ++round) {
        layout.plot = QRectF(left, top, width, height);
        layout.scale = value_scale(content, std::max(2, static_cast<int>(width / (small.height() * 4))));
        width = std::max(40.0, size.width() - left - 3 * grid_px);
        layout.value_texts.clear();
        for (const ChartBar& bar : content.bars) {
            layout.value_texts.push_back(text_of_value(bar, content, layout.scale.step));
            const double share = (layout.pixelX(far_end(bar)) - left) / layout.plot.width();
            const double room = size.width() - left - 2 * grid_px - half_px - names.horizontalAdvance(layout.value_texts.back());
            if (share > 0.02) width = std::min(width, room / share);
        }
        width = std::max({width, 40.0, size.width() * 0.25});
        layout.plot.setWidth(width);
    }
    layout.row_height = content.bars.empty() ? height : height / static_cast<double>(content.bars.size());
    layout.notes = layout.row_height >= names.height() + small.height();
    return layout;
}

} // namespace ullage
