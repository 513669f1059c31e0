// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/tables/table.h"
#include "sizing/sizing.h"

#include <cstddef>
#include <optional>
#include <string>

namespace ullage {

/// The units of a sizing: unit, maker, rated_wh, basis, days_of_autonomy, lasts_h, run_time_h, days_output_left_on, units_least, units_sure, output,
/// peak, units_by_rule, remark.
[[nodiscard]] Table sizing_table(const Sizing& sizing);

/// The months whose sun is stated, of one unit or of each: unit, month, array_w, sun_hours, daily_wh, need_wh, margin_wh, array_to_load. Without
/// units of the list alone.
[[nodiscard]] Table sizing_months_table(const Sizing& sizing, std::optional<std::size_t> unit = {});

/// PV array and battery by the published rules, step by step, likewise: unit, step, value, from.
[[nodiscard]] Table sizing_rules_table(const Sizing& sizing, std::optional<std::size_t> unit = {});

/// State of charge hour by hour: unit, hour, with_pv_percent, without_pv_percent.
[[nodiscard]] Table sizing_course_table(const Sizing& sizing);

/// All of it as text for a terminal; the courses as sentences.
[[nodiscard]] std::string sizing_text(const Sizing& sizing);

/// {"program", "version", "format_version", "load_list", "totals", "choices", "units": [{unit, basis, quantities, units_needed: {least, sure,
/// reason}, output, peak, units_by_rule, remarks, needs, course}], "list_needs", "remarks", "cautions"}; see resources/help/json.md.
[[nodiscard]] std::string sizing_json(const Sizing& sizing);

/// What the course of one unit says: when it falls empty without and with PV, from when on it repeats, what is then not served or left over each day.
/// Empty without a course.
[[nodiscard]] Message course_sentence(const Sizing& sizing, std::size_t unit);

/// "1 day", "2.5 days".
[[nodiscard]] Message say_days(double days);

} // namespace ullage
