// SPDX-License-Identifier: GPL-3.0-or-later
#include "chart_content/sizing_chart.h"

#include "style/words.h"

#include <algorithm>

namespace ullage {

namespace {

using CoursePart = double CoursePoint::*;

ChartSeries course_curve(const char* id, const QString& name, CurveColour colour, CurveLine line, const ChargeCourse& course, CoursePart middle,
                         CoursePart lower, CoursePart upper) {
    ChartSeries series;
    series.id = QLatin1String(id);
    series.name = name;
    series.colour = colour;
    series.marker = Marker::none;
    series.line = line;
    for (const CoursePoint& point : course.points) {
        series.points.push_back({point.hour, point.*middle});
        series.band.push_back({point.hour, point.*lower, point.*upper});
    }
    return series;
}

} // namespace

ChartContent sizing_chart(const Sizing& sizing, std::size_t unit) {
    ChartContent content;
    content.description = tr("State of charge by the hour, with PV and without");
    content.x.title = tr("time since midnight / h");
    content.x.unit = QStringLiteral("h");
    content.y.title = tr("charge remaining / %");
    content.y.unit = QStringLiteral("%");
    content.y.minimum = 0.0;
    content.y.maximum = 105.0;
    content.empty_text = tr("Choose a unit whose energy is known or stated.");
    if (unit >= sizing.courses.size() || !sizing.courses[unit]) return content;
    const ChargeCourse& course = *sizing.courses[unit];
    content.x.minimum = 0.0;
    content.x.maximum = course.points.back().hour;
    content.series = {course_curve("withoutPv", tr("without PV"), CurveColour::gauge_implied, CurveLine::dashed, course,
                                   &CoursePoint::without_pv_percent, &CoursePoint::without_pv_lower_percent, &CoursePoint::without_pv_upper_percent),
                      course_curve("withPv", tr("with PV"), CurveColour::delivered, CurveLine::solid, course, &CoursePoint::with_pv_percent,
                                   &CoursePoint::with_pv_lower_percent, &CoursePoint::with_pv_upper_percent)};
    const double half_night_h = sizing.totals.night_h / 2;
    for (double midnight_h = 0; half_night_h > 0 && midnight_h <= course.points.back().hour; midnight_h += 24)
        content.regions.push_back({std::max(0.0, midnight_h - half_night_h), std::min(course.points.back().hour, midnight_h + half_night_h),
                                   midnight_h == 24 ? tr("night") : QString(), RegionRole::grey});
    return content;
}

} // namespace ullage
