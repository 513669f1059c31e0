// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/pv_chart.h"

#include "style/numbers.h"
#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

ChartSeries curve(const char* id, const QString& name, CurveColour colour, const std::vector<PvCurvePoint>& points,
                  std::optional<double> PvCurvePoint::*part) {
    ChartSeries series;
    series.id = QLatin1String(id);
    series.name = name;
    series.colour = colour;
    series.marker = Marker::none;
    for (const PvCurvePoint& point : points)
        if (point.*part) series.points.push_back({point.cell_c, *(point.*part)});
    return series;
}

} // namespace

ChartContent pv_chart(const PvSheet& sheet, const PvLimits& limits, const PvCheck& check) {
    ChartContent content;
    content.description = tr("Voltage of the string against cell temperature, with the limits of the PV input");
    content.x.title = tr("cell temperature / °C");
    content.x.unit = QStringLiteral("°C");
    content.y.title = tr("string voltage / V");
    content.y.unit = QStringLiteral("V");
    content.y.minimum = 0.0;
    content.empty_text = tr("State Voc of the module to see the voltage of the string.");
    const std::vector<PvCurvePoint> points = pv_curve(sheet);
    double top_v = std::max(limits.max_v.value_or(0), limits.start_v.value_or(0));
    for (const PvCurvePoint& point : points) top_v = std::max({top_v, point.voc_v.value_or(0), point.vmp_v.value_or(0)});
    content.y.maximum = 1.12 * std::max(top_v, 1.0);
    content.series = {curve("voc", tr("open circuit"), CurveColour::delivered, points, &PvCurvePoint::voc_v),
                      curve("vmp", tr("maximum power"), CurveColour::gauge_implied, points, &PvCurvePoint::vmp_v)};
    std::erase_if(content.series, [](const ChartSeries& series) { return series.points.empty(); });
    if (content.series.empty()) return content;
    if (check.verdict == PvVerdict::over_voltage_when_cold) {
        ChartSeries danger;
        danger.id = QStringLiteral("danger");
        danger.name = tr("danger: %1 V").arg(shown_number(check.cold_voc_v, 1));
        danger.colour = CurveColour::vermilion;
        danger.marker = Marker::diamond;
        danger.line = CurveLine::none;
        danger.points = {{*sheet.coldest_c, *check.cold_voc_v}};
        danger.notes = {tr("above the limit when cold")};
        content.series.push_back(danger);
    }
    if (limits.max_v) content.horizontal_lines.push_back({*limits.max_v, tr("limit %1 V").arg(shown_number(limits.max_v, 0))});
    if (limits.start_v) content.horizontal_lines.push_back({*limits.start_v, tr("start %1 V").arg(shown_number(limits.start_v, 0))});
    if (limits.max_v && limits.start_v && *limits.start_v < *limits.max_v)
        content.horizontal_bands.push_back({*limits.start_v, *limits.max_v, tr("PV input works")});
    if (sheet.coldest_c) content.vertical_lines.push_back({*sheet.coldest_c, tr("coldest"), CurveColour::accent});
    if (check.hot_cell_c) content.vertical_lines.push_back({*check.hot_cell_c, tr("hottest"), CurveColour::vermilion});
    return content;
}

} // namespace ullage
