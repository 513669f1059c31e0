// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/tables/late/table_xlsx_chart.h"

#include "base/message.h"

#include <xlsxwriter.h>

#include <algorithm>

namespace ullage {

namespace {

constexpr lxw_color_t delivered_blue = 0x0072B2;
constexpr lxw_color_t ink = 0x1D2730;

lxw_chart_series* add_series(lxw_chart* chart, const ChartSource& source, std::size_t column, const Message& name) {
    lxw_chart_series* series = chart_add_series(chart, nullptr, nullptr);
    const auto last = static_cast<lxw_row_t>(source.last_row);
    const auto at = static_cast<lxw_col_t>(column);
    chart_series_set_values(series, source.sheet.c_str(), 1, at, last, at);
    if (source.category) {
        const auto category = static_cast<lxw_col_t>(*source.category);
        chart_series_set_categories(series, source.sheet.c_str(), 1, category, last, category);
    }
    chart_series_set_name(series, name.text().c_str());
    lxw_chart_line none{};
    none.none = 1;
    chart_series_set_line(series, &none);
    return series;
}

void set_marker(lxw_chart_series* series, uint8_t type, uint8_t size, lxw_color_t colour) {
    chart_series_set_marker_type(series, type);
    chart_series_set_marker_size(series, size);
    lxw_chart_fill fill{};
    fill.color = colour;
    chart_series_set_marker_fill(series, &fill);
    lxw_chart_line line{};
    line.color = colour;
    chart_series_set_marker_line(series, &line);
}

} // namespace

void add_interval_chart(lxw_workbook* book, lxw_worksheet* sheet, const ChartSource& source, std::size_t row) {
    lxw_chart* chart = workbook_add_chart(book, LXW_CHART_LINE);
    if (!chart) return;
    set_marker(add_series(chart, source, source.value, say(phrase("tables", "value"))), LXW_CHART_MARKER_CIRCLE, 9, delivered_blue);
    // The library's dashes are no names of the format, so the caps of the bar are plus signs.
    set_marker(add_series(chart, source, source.lower, say(phrase("tables", "lower"))), LXW_CHART_MARKER_PLUS, 7, ink);
    set_marker(add_series(chart, source, source.upper, say(phrase("tables", "upper"))), LXW_CHART_MARKER_PLUS, 7, ink);
    lxw_chart_line bar{};
    bar.color = ink;
    bar.width = 1.5F;
    chart_set_high_low_lines(chart, &bar);
    chart_show_blanks_as(chart, LXW_CHART_BLANKS_AS_GAP);
    chart_legend_set_position(chart, LXW_CHART_LEGEND_NONE);
    chart_title_set_name(chart, say(phrase("tables", "%1, value and interval"), source.title).text().c_str());
    chart_axis_set_name(chart->y_axis, source.title.c_str());
    if (!source.below_zero) chart_axis_set_min(chart->y_axis, 0);

    lxw_chart_options size{};
    // 480 x 288 pixels at scale 1: wider for many rows, within a screen.
    size.x_scale = std::clamp(static_cast<double>(source.last_row) / 8.0, 1.25, 3.0);
    size.y_scale = 1.25;
    worksheet_insert_chart_opt(sheet, static_cast<lxw_row_t>(row), 0, chart, &size);
}

} // namespace ullage
