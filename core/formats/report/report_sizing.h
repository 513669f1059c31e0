// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "formats/report/report_content.h"
#include "formats/sheets/pv_sheet_text.h"
#include "sizing/sizing.h"

#include <string_view>

namespace ullage {

/// Report of a sizing: summary, units, state of charge over three days (a picture for each unit, key report_picture_key("course", unit uuid)), PV
/// array and battery by rule, months, the load list, assumptions, method, cautions.
[[nodiscard]] Report sizing_report(const Sizing& sizing, const ReportOptions& options);

/// Key of the drawing in a report of a PV check.
inline constexpr std::string_view report_pv_key = "pv";

/// Report of a PV input check: verdict, comparisons, drawing, what was stated, assumptions, cautions.
[[nodiscard]] Report pv_report(const PvSheetText& sheet, const PvCheck& check, const ReportOptions& options);

} // namespace ullage
