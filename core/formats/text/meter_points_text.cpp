// SPDX-License-Identifier: GPL-3.0-or-later
#include "formats/text/meter_points_text.h"

#include "base/number.h"
#include "formats/text/inside/key_values.h"

#include <algorithm>

namespace ullage {

namespace {

using sheet::number_in;
using sheet::wrong;

std::vector<std::string_view> pieces_of(std::string_view text, std::string_view separators) {
    std::vector<std::string_view> pieces;
    while (true) {
        const auto start = text.find_first_not_of(separators);
        if (start == std::string_view::npos) return pieces;
        text.remove_prefix(start);
        const auto length = std::min(text.find_first_of(separators), text.size());
        pieces.push_back(text.substr(0, length));
        text.remove_prefix(length);
    }
}

Result<MeterPoint> point_from(std::string_view text) {
    const auto numbers = pieces_of(text, " \t\r");
    if (numbers.size() < 2 || numbers.size() > 4)
        return wrong(say(phrase("text", "`%1` is no point of correction"), trimmed(text)),
                     say(phrase("text", "give load, correction, U and k, like `100 0.998 0.3 2; 500 1.001 0.25 2`")));
    const NumberRange ranges[] = {load_range, correction_range, meter_limit_range, coverage_factor_range};
    std::optional<double> values[4];
    for (std::size_t i = 0; i < numbers.size(); ++i) {
        const Result<double> number = number_in(numbers[i], ranges[i]);
        if (!number) return number.error();
        values[i] = number.value();
    }
    return MeterPoint{*values[0], *values[1], values[2], values[3]};
}

} // namespace

std::string meter_points_text(const std::vector<MeterPoint>& points) {
    std::string text;
    for (const MeterPoint& point : points) {
        text += (text.empty() ? "" : "; ") + exact_text(point.load_w) + " " + exact_text(point.correction);
        if (!point.expanded_u_percent) continue;
        text += " " + exact_text(*point.expanded_u_percent);
        if (point.coverage_k) text += " " + exact_text(*point.coverage_k);
    }
    return text;
}

Result<std::vector<MeterPoint>> meter_points_from(std::string_view text) {
    std::vector<MeterPoint> points;
    for (const std::string_view piece : pieces_of(text, ";\n")) {
        if (trimmed(piece).empty()) continue;
        const Result<MeterPoint> point = point_from(piece);
        if (!point) return point.error();
        points.push_back(point.value());
    }
    if (auto good = check_count({}, phrases("formats", "there are %n points of correction", "there is %n point of correction"), points.size(),
                                most_meter_points);
        !good)
        return good.error();
    std::ranges::stable_sort(points, {}, &MeterPoint::load_w);
    const auto twice = std::ranges::adjacent_find(points, {}, &MeterPoint::load_w);
    if (twice != points.end())
        return wrong(say(phrase("text", "the load %1 W stands twice"), say_digits(exact_text(twice->load_w))),
                     say(phrase("text", "state each load once")));
    return points;
}

} // namespace ullage
