// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/json/quantity_json.h"
#include "unit/unit_analysis.h"

namespace ullage {

/// {unit, sentence, quantities: [{key, unit_label, value, lower, upper, unit, kind, reason}], drains: [{run, title, used,
/// reason, hours, delivered_wh, mean_load_w, residual_wh}], predictions: [{load_w, within_tested_loads, deliverable_wh,
/// usable_fraction, run_time_h}], next_run: {load_w, expected_run_time_h, shrink_factor, sentence}, drift: {change_wh_per_day,
/// statistic, p_value, threshold, significant, sentence}, gauge_drift: {verdict, curve_shift_pt, lead, threshold, comparisons:
/// [{earlier_run, later_run, earlier_wh_per_gauge_point, later_wh_per_gauge_point, wh_per_gauge_point, energy: {change_percent,
/// statistic, p_value, significant}, curve: {shift_pt, half_width_pt, depth_percent, resolution_pt, chi_square,
/// degrees_of_freedom, p_value, adjusted_p_value, common_depths, moved}}], sentence}}. The three of a prediction,
/// change_wh_per_day, change_percent and curve_shift_pt are quantities: {value, lower, upper, unit, kind, reason}. `lead` is a
/// place in `comparisons` or null. Numbers of a drain that is not used, and of a next run that would not help, are null.
[[nodiscard]] Json unit_analysis_json(const UnitAnalysis& analysis);

} // namespace ullage
